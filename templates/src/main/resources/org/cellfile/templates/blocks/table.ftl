<div class="table<#if block.rows?size lte 8> short</#if>">
<#if block.caption?has_content><p class="caption">${block.caption}</p></#if>
<table class="grid">
<colgroup><#list widths(block) as width><col style="width: ${width?string("0.##")}%"/></#list></colgroup>
<thead><tr>
<#list block.columns as column>
  <th scope="col"<#if column.figures> class="figures"</#if>>${column.title}</th>
</#list>
</tr></thead>
<tbody>
<#list block.rows as row>
  <tr><#list row as cell><td<#if block.columns[cell?index].figures> class="figures"</#if>>${together(cell)}</td></#list></tr>
<#else>
  <tr><td colspan="${block.columns?size}">${words["table.none"]}</td></tr>
</#list>
</tbody>
</table>
</div>
