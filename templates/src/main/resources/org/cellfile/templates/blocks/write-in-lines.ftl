<table class="lines">
<colgroup><col style="width: 21%"/><col style="width: 29%"/><col style="width: 21%"/><col style="width: 29%"/></colgroup>
<#list block.lines?chunk(2) as pair>
  <tr><#list pair as line><th scope="row">${line.label}</th><td><@entry of=line.entry/></td></#list><#if pair?size == 1><td class="empty" colspan="2"></td></#if></tr>
</#list>
</table>
