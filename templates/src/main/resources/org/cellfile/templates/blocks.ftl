<#-- Prints the blocks of a chapter. Each sort of block has a file of its own in blocks/, named after it. -->

<#-- The sections standing directly among the blocks; they are the ones the contents list. -->
<#function sections blocks>
  <#return blocks?filter(block -> block.is == "section")>
</#function>

<#--
  of      the blocks
  number  of the chapter or section they stand in
  depth   of a heading among them: 2 directly in a chapter
-->
<#macro blocks of number depth>
  <#local counted = 0>
  <#list of as block>
    <#if block.is == "section"><#local counted = counted + 1></#if>
    <#include "blocks/" + block.is + ".ftl">
  </#list>
</#macro>
