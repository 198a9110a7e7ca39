<div class="section" id="section-${number}.${counted}">
  <div class="heading">
    <#if block.tag?has_content><p class="section-tag">${block.tag}</p></#if>
    <h${depth}><span class="section-number">${number}.${counted}</span>${block.title}</h${depth}>
  </div>
  <@blocks of=block.blocks number=number + "." + counted depth=(depth lt 6)?then(depth + 1, 6)/>
</div>
