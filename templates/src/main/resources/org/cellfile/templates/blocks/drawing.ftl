<#-- The template of a drawing writes one whole svg element; it finds its figures in `data`, the text for its alt in `alternative`. -->
<#assign data = block.data alternative = block.alternative>
<div class="drawing">
  <#include "/" + block.template>
  <#if block.caption?has_content><p class="drawing-caption">${block.caption}</p></#if>
</div>
