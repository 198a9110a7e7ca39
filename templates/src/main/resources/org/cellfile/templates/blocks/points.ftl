<ul class="points">
<#list block.items as item>
  <li>${item}</li>
</#list>
</ul>
