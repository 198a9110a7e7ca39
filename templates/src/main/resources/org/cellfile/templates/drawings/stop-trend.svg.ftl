<#--
  The stopping times of one stop by the day measured, the line of least squares with its confidence band, and the time allowed.
  What leaves the picture is cut off at its edge.
-->
<#import "/drawings/elevation.ftl" as e>
<#assign times = data.points?map(point -> point[1])>
<#assign known = times + [data.allowed!times[0], data.unworn!times[0]]>
<#assign span = known?max - known?min>
<#if span == 0><#assign span = known?max * 0.1></#if>
<#assign least = known?min - span * 0.15 most = known?max + span * 0.12>
<#-- ticks at round figures, four to eight of them -->
<#assign step = 1>
<#list [0.0001, 0.0002, 0.0005, 0.001, 0.002, 0.005, 0.01, 0.02, 0.05, 0.1, 0.2, 0.5, 1, 2, 5, 10, 20, 50, 100] as candidate>
  <#if candidate gte (most - least) / 6><#assign step = candidate><#break></#if>
</#list>
<#assign digits = (step lt 0.001)?then("0.0000", (step lt 0.01)?then("0.000", (step lt 0.1)?then("0.00", (step lt 1)?then("0.0", "0"))))>
<#assign left = 62 right = 612 top = 34 bottom = 206>
<#function across day><#return left + day * (right - left) / data.end></#function>
<#function up value><#return bottom - (value - least) * (bottom - top) / (most - least)></#function>
<#function drawable point><#return point[1] gte least && point[1] lte most></#function>
<#-- where the straight line leaves the picture -->
<#function cut from to>
  <#if drawable(to)><#return to></#if>
  <#local edge = (to[1] gt most)?then(most, least)>
  <#return [from[0] + (to[0] - from[0]) * (edge - from[1]) / (to[1] - from[1]), edge]>
</#function>
<#macro edge points>
  <#assign inside = points?filter(point -> drawable(point))>
  <#if inside?size gt 1>
  <polyline points="<#list inside as point>${e.n(across(point[0]))},${e.n(up(point[1]))} </#list>" fill="none" stroke="#000" stroke-width="0.9" stroke-dasharray="5 3"/>
  </#if>
</#macro>
<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 640 256" alt="${alternative}">
  <@e.text x=left y=14 fit=550 bold=true>${data.title}</@e.text>
  <#list ((least / step)?ceiling)..((most / step)?floor) as i>
    <#assign y = up(i * step)>
    <line x1="${left}" y1="${e.n(y)}" x2="${right}" y2="${e.n(y)}" stroke="#aaa" stroke-width="0.4"/>
    <@e.text x=left - 7 y=y + 3.6 anchor="end" fit=54>${(i * step)?string(digits)}</@e.text>
  </#list>
  <@e.text x=left - 7 y=top - 10 anchor="end">s</@e.text>
  <@e.line x1=left y1=top x2=left y2=bottom width=1/>
  <@e.line x1=left y1=bottom x2=right y2=bottom width=1/>
  <#assign every = [1, 2, 5, 10, 20, 50, 100]?filter(each -> each gte data.years?size / 12)?first>
  <#list data.years as year>
    <#assign x = across(year.x)>
    <@e.line x1=x y1=bottom x2=x y2=bottom + 4/>
    <#if year?counter % every == 0><@e.text x=x y=bottom + 16 anchor="middle">${year.words}</@e.text></#if>
  </#list>
  <@e.text x=right y=top - 10 anchor="end" fit=240>marks below: 1 January of each year</@e.text>
  <#if data.unworn??>
    <@e.line x1=left y1=up(data.unworn) x2=right y2=up(data.unworn) width=0.9 dash="8 3 2 3"/>
    <@e.text x=left + 6 y=up(data.unworn) - 4 fit=260>${data.unwornWords}</@e.text>
  </#if>
  <#if data.allowed??>
    <@e.line x1=left y1=up(data.allowed) x2=right y2=up(data.allowed) width=1.8/>
    <@e.text x=left + 6 y=up(data.allowed) + 12 fit=260 bold=true>${data.allowedWords}</@e.text>
  </#if>
  <#assign tail = cut(data.line[0], data.line[1])>
  <@e.line x1=across(data.line[0][0]) y1=up(data.line[0][1]) x2=across(tail[0]) y2=up(tail[1]) width=1/>
  <@edge points=data.upper/>
  <@edge points=data.lower/>
  <#if data.middle??>
    <#assign y = up(data.allowed)>
    <#assign first = across(data.earliest) last = across([data.latest, data.end]?min)>
    <@e.line x1=first y1=y x2=last y2=y width=4/>
    <@e.line x1=first y1=y x2=first y2=bottom width=0.7 dash="1 2"/>
    <@e.line x1=last y1=y x2=last y2=bottom width=0.7 dash="1 2"/>
    <path d="M${e.n(first)} ${bottom + 22} L${e.n(first)} ${bottom + 26} L${e.n(last)} ${bottom + 26} L${e.n(last)} ${bottom + 22}" fill="none" stroke="#000" stroke-width="0.8"/>
    <@e.text x=[[(first + last) / 2, left + 90]?max, right - 70]?min y=bottom + 39 anchor="middle" fit=170>${data.meetingWords}</@e.text>
  </#if>
  <#list data.points as point>
    <circle cx="${e.n(across(point[0]))}" cy="${e.n(up(point[1]))}" r="3.4" fill="#000" stroke="#fff" stroke-width="0.8"/>
  </#list>
</svg>
