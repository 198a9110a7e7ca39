<#--
  Margins as bars, the least at the top. Bars to the right of the line are what is left, bars to the left what is missing; a bar
  to the left is white with a thick frame, so that it differs without colour.
    bars  tag of the safeguard, with the name of the place where that has a distance of its own; margin in millimetres; words
-->
<#import "/drawings/elevation.ftl" as e>
<#assign margins = data.bars?map(bar -> bar.margin)>
<#assign most = (margins + [0])?max least = (margins + [0])?min>
<#if most == least><#assign most = least + 1></#if>
<#-- Where a place of a safeguard is named beside it, its name needs room. -->
<#assign longest = data.bars?map(bar -> bar.tag?length)?max>
<#assign left = (longest gt 28)?then(250, 170) right = 540 row = 17 top = 10>
<#assign scale = (right - left) / (most - least)>
<#assign zero = left - least * scale>
<#assign high = top + row * data.bars?size + 8>
<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 640 ${high}" alt="${alternative}">
  <#list data.bars as bar>
    <#assign y = top + row * bar?index>
    <@e.text x=left - 10 y=y + 10.6 anchor="end" fit=left - 14>${bar.tag}</@e.text>
    <#assign from = [zero, zero + bar.margin * scale]?min long = [(bar.margin * scale)?abs, 0.8]?max>
    <#if bar.margin lt 0>
      <rect x="${e.n(from)}" y="${e.n(y + 2)}" width="${e.n(long)}" height="${row - 6}" fill="#fff" stroke="#000" stroke-width="1.6"/>
    <#else>
      <rect x="${e.n(from)}" y="${e.n(y + 2)}" width="${e.n(long)}" height="${row - 6}" fill="#666"/>
    </#if>
    <@e.text x=[zero, zero + bar.margin * scale]?max + 6 y=y + 10.6 fit=90 bold=bar.margin lt 0>${bar.words}</@e.text>
  </#list>
  <@e.line x1=zero y1=top - 4 x2=zero y2=high - 4 width=1.2/>
</svg>
