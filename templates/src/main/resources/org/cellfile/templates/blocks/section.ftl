<div class="section" id="section-${within(number, counted)}">
  <div class="heading">
    <#if block.tag?has_content><p class="section-tag">${block.tag}</p></#if>
    <h${depth}><span class="section-number">${within(number, counted)}</span>${block.title}</h${depth}>
  </div>
  <@blocks of=block.blocks number=within(number, counted) depth=(depth lt 6)?then(depth + 1, 6)/>
</div>
