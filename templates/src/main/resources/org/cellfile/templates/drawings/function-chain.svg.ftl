<#--
  The chain of a safety function as a reliability block diagram. Subsystems stand in series, in as many rows as they need; in one
  built from parts its channels stand in parallel, and what tests it stands below with dashes.
    stages  place, tag, figures (lines of text), channels (each a list of boxes), equipment (boxes)
    a box   tag, figures
-->
<#import "/drawings/chain.ftl" as c>
<#assign chainRows = c.rows(data.stages)>
<#assign chainHigh = 0>
<#list chainRows as row><#assign chainHigh = chainHigh + row.high></#list>
<#-- the height is a whole number: the width and height of a drawing are read as such -->
<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 640 ${chainHigh?ceiling}" alt="${alternative}">
  <#assign chainTop = 0>
  <#list chainRows as row>
    <@c.row of=row top=chainTop first=row?is_first last=row?is_last/>
    <#assign chainTop = chainTop + row.high>
  </#list>
</svg>
