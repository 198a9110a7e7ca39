<#-- Prints the blocks of a chapter. Each sort of block has a file of its own in blocks/, named after it. -->

<#-- The sections standing directly among the blocks; they are the ones the contents list. -->
<#function sections blocks>
  <#return blocks?filter(block -> block.is == "section")>
</#function>

<#-- The number of a section; in a form it stands within nothing that has one. -->
<#function within number counted><#return number?has_content?then(number + ".", "") + counted></#function>

<#-- A cell that breaks before a figure and not between it and its unit, nor between PL and its letter, or a clause and its number. -->
<#function together cell><#return cell?replace(r"(?<=[\d…]) (?=((mm|in|m?s|kg)(/s)?|h|min|1/h|1/year|years|points)(?![\w/]))|(?<=\bPL) (?=[a-e]\b)|(?<=\bcl\.) (?=\d)", "\xA0", "r")></#function>

<#--
  The widths of a table's columns in percent. The shares say how the room is divided; a column whose longest word would
  be broken gets what that word needs, and the others give it up.
-->
<#function widths table>
  <#local shares = 0 needed = 0 kept = 0 needs = []>
  <#list table.columns as column><#local shares = shares + column.share></#list>
  <#list table.columns as column>
    <#local longest = 0>
    <#list [column.title] + table.rows?map(row -> together(row[column?index])) as cell>
      <#list cell?word_list as word>
        <#-- a date should stay whole; a longer word may be broken at its hyphens -->
        <#local pieces = (word?length gt 14)?then(word?split("-"), [word])>
        <#local longest = ([longest] + pieces?map(piece -> piece?length))?max>
      </#list>
    </#list>
    <#-- a letter is about one per cent of the width of the page, the space beside it two or three -->
    <#local need = [longest * 1.06 + column.figures?then(3.2, 2), 22]?min share = column.share * 100 / shares>
    <#local needs = needs + [need] needed = needed + need>
    <#if need lt share><#local kept = kept + share - need></#if>
  </#list>
  <#if needed gte 100><#return needs?map(need -> need * 100 / needed)></#if>
  <#-- what the columns with room to spare keep of it -->
  <#local widths = []>
  <#list table.columns as column>
    <#local need = needs[column?index] share = column.share * 100 / shares>
    <#local widths = widths + [(need gte share)?then(need, need + (share - need) * (100 - needed) / kept)]>
  </#list>
  <#return widths>
</#function>

<#-- One place of a form: what stands there, room to write with its unit, squares to tick. -->
<#macro entry of>
<#if of.printed?has_content><p class="printed">${together(of.printed)}</p></#if>
<#if of.unit?has_content><p class="unit">${of.unit}</p></#if>
<#list of.choices as choice><p class="choice"><span class="tick"></span> ${choice}</p></#list>
</#macro>

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
