<#--
  Frequencies of dangerous failure as bars on a logarithmic scale, before the ranges of the performance levels. A bar that falls
  short is white with a thick frame, so that it differs without colour.
    ranges  letter of the level; upTo, the logarithm of its upper bound; the best level first
    bars    tag; place and bound, logarithms of the frequency and of the bound of the required level; frequency, reached, required
            as words; short
-->
<#import "/drawings/elevation.ftl" as e>
<#assign scaleLeft = 210 scaleRight = 480 lowest = -10 highest = -4 barRow = 18 barTop = 40>
<#function decade log>
  <#return scaleLeft + ([[log, lowest]?max, highest]?min - lowest) * (scaleRight - scaleLeft) / (highest - lowest)>
</#function>
<#assign barEnd = barTop + barRow * data.bars?size>
<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 640 ${barEnd + 24}" alt="${alternative}">
  <#assign from = scaleLeft>
  <#list data.ranges as range>
    <#assign to = decade(range.upTo)>
    <rect x="${e.n(from)}" y="22" width="${e.n(to - from)}" height="${barEnd - 22}" fill="${range?is_even_item?then("#e4e4e4", "#fff")}" stroke="#555" stroke-width="0.6"/>
    <@e.text x=(from + to) / 2 y=34 anchor="middle" fit=to - from bold=true>${range.letter}</@e.text>
    <#assign from = to>
  </#list>
  <@e.text x=scaleLeft y=14 fit=270>performance level</@e.text>
  <@e.text x=546 y=14 anchor="end" fit=62>PFH_D in 1/h</@e.text>
  <@e.text x=574 y=14 anchor="middle" fit=40>reached</@e.text>
  <@e.text x=619 y=14 anchor="middle" fit=42>required</@e.text>
  <#list data.bars as bar>
    <#assign y = barTop + barRow * bar?index>
    <@e.text x=scaleLeft - 8 y=y + 12 anchor="end" fit=scaleLeft - 10>${bar.tag}</@e.text>
    <#if bar.place??>
      <#assign long = [decade(bar.place) - scaleLeft, 0.8]?max>
      <rect x="${scaleLeft}" y="${y + 4}" width="${e.n(long)}" height="${barRow - 8}" <#if bar.short>fill="#fff" stroke="#000" stroke-width="1.6"<#else>fill="#666"</#if>/>
    </#if>
    <#if bar.bound??><@e.line x1=decade(bar.bound) y1=y + 1 x2=decade(bar.bound) y2=y + barRow - 1 width=3/></#if>
    <@e.text x=546 y=y + 12 anchor="end" fit=62>${bar.frequency}</@e.text>
    <@e.text x=574 y=y + 12 anchor="middle" bold=bar.short>${bar.reached}</@e.text>
    <@e.text x=619 y=y + 12 anchor="middle">${bar.required}</@e.text>
  </#list>
  <#list lowest..highest as log>
    <@e.line x1=decade(log) y1=barEnd x2=decade(log) y2=barEnd + 5/>
    <@e.text x=decade(log) y=barEnd + 17 anchor="middle" fit=40>1e${log}</@e.text>
  </#list>
</svg>
