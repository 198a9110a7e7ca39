<#--
  The runs of one stop test in the order they were made, so that a drift shows, with the values made from them as lines.
-->
<#import "/drawings/elevation.ftl" as e>
<#function figure value unit><#return value?string((unit == "s")?then("0.000#", "0.###")) + " " + unit></#function>
<#assign lines = []>
<#list [["mean", "mean"], ["highest", "highest"], ["meanPlus3s", "mean + 3 σ"], ["carried", "carried on"]] as known>
  <#if data[known[0]]??><#assign lines = lines + [{"value": data[known[0]], "words": known[1], "key": known[0]}]></#if>
</#list>
<#assign values = data.runs + lines?map(each -> each.value)>
<#assign least = values?min most = values?max>
<#if least == most><#assign least = least * 0.95 most = most * 1.05></#if>
<#if least == most><#assign most = most + 1></#if>
<#-- ticks at round figures, four to eight of them -->
<#assign step = 1>
<#list [0.0001, 0.0002, 0.0005, 0.001, 0.002, 0.005, 0.01, 0.02, 0.05, 0.1, 0.2, 0.5, 1, 2, 5, 10, 20, 50, 100, 200, 500, 1000, 2000, 5000, 10000] as candidate>
  <#if candidate gte (most - least) / 5><#assign step = candidate><#break></#if>
</#list>
<#assign digits = (step lt 0.001)?then("0.0000", (step lt 0.01)?then("0.000", (step lt 0.1)?then("0.00", (step lt 1)?then("0.0", "0"))))>
<#assign first = (least / step)?floor * step last = (most / step)?ceiling * step>
<#assign left = 62 right = 470 top = 34 bottom = 206>
<#function place value first last><#return 206 - (value - first) * 172 / (last - first)></#function>
<#assign count = data.runs?size>
<#assign pace = (right - left) / (count + 1)>
<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 640 250" alt="${alternative}">
  <@e.text x=left y=14 fit=570 bold=true>${data.title!""}</@e.text>
  <#list 0..((last - first) / step)?round as i>
    <#assign y = place(first + i * step, first, last)>
    <line x1="${left}" y1="${e.n(y)}" x2="${right}" y2="${e.n(y)}" stroke="#aaa" stroke-width="0.4"/>
    <@e.text x=left - 7 y=y + 3.6 anchor="end" fit=54>${(first + i * step)?string(digits)}</@e.text>
  </#list>
  <@e.text x=left - 7 y=top - 10 anchor="end">${data.unit}</@e.text>
  <@e.line x1=left y1=top x2=left y2=bottom width=1/>
  <@e.line x1=left y1=bottom x2=right y2=bottom width=1/>
  <#assign every = [1, 2, 5, 10, 20, 50, 100]?filter(each -> each gte count / 15)?first>
  <#list data.runs as run>
    <#assign x = left + pace * run?counter>
    <#if run?counter % every == 0 || count lte 15>
      <@e.line x1=x y1=bottom x2=x y2=bottom + 4/>
      <@e.text x=x y=bottom + 16 anchor="middle">${run?counter}</@e.text>
    </#if>
  </#list>
  <@e.text x=right y=bottom + 34 anchor="end">run, in the order made</@e.text>
  <#-- the lines; their words stand one under the other at the right and never closer than a line -->
  <#assign at = -100>
  <#list lines?sort_by("value")?reverse as each>
    <#assign y = place(each.value, first, last)>
    <#assign at = [[y, at + 14]?max, bottom - 14 * (lines?size - 1 - each?index)]?min>
    <#assign bold = each.key == "carried">
    <@e.line x1=left y1=y x2=right y2=y width=bold?then(1.8, 0.9) dash=(each.key == "mean")?then("2 2", (each.key == "meanPlus3s")?then("8 3 2 3", (each.key == "highest")?then("6 3", "")))/>
    <path d="M${right} ${e.n(y)} L${right + 6} ${e.n(y)} L${right + 14} ${e.n(at)}" fill="none" stroke="#000" stroke-width="0.5"/>
    <@e.text x=right + 18 y=at + 3.6 fit=148 bold=bold>${each.words} ${figure(each.value, data.unit)}</@e.text>
  </#list>
  <#list data.runs as run>
    <circle cx="${e.n(left + pace * run?counter)}" cy="${e.n(place(run, first, last))}" r="3" fill="#000" stroke="#fff" stroke-width="0.8"/>
  </#list>
</svg>
