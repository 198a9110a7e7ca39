<#assign shares = 0>
<#list block.columns as column><#assign shares = shares + column.share></#list>
<div class="table">
<table class="write-in">
<colgroup><#list block.columns as column><col style="width: ${(column.share * 100 / shares)?string("0.##")}%"/></#list></colgroup>
<thead>
<#-- part of the head, so that a page that comes loose tells what it is about -->
<#if block.caption?has_content><tr><th class="about" colspan="${block.columns?size}" scope="colgroup">${block.caption}</th></tr></#if>
<tr>
<#list block.columns as column>
  <th scope="col"<#if column.figures> class="figures"</#if>>${column.title}</th>
</#list>
</tr></thead>
<tbody>
<#list block.rows as row>
  <tr><#list row as cell><td<#if block.columns[cell?index].figures> class="figures"</#if>><@entry of=cell/></td></#list></tr>
</#list>
</tbody>
</table>
</div>
