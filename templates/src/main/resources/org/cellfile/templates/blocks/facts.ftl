<table class="facts">
<#list block.facts as fact>
  <tr><th scope="row">${fact.label}</th><td>${together(fact.value)}<#if fact.remark?has_content> <span class="remark">${together(fact.remark)}</span></#if></td></tr>
</#list>
</table>
