<#import "/drawings/elevation.ftl" as e>
<#assign plan = e.plan(data, [data.upperEdge!0, data.lowerEdge!0])>
<#assign top = e.up(plan, data.upperEdge!(plan.highest * 0.7)) bottom = e.up(plan, data.lowerEdge!(plan.highest * 0.15))>
<#assign edges = []>
<#if data.upperEdge??><#assign edges = edges + [{"words": "upper edge", "mm": data.upperEdge}]></#if>
<#if data.lowerEdge??><#assign edges = edges + [{"words": "lower edge", "mm": data.lowerEdge}]></#if>
<@e.view data=data plan=plan alternative=alternative>
  <@e.heights plan=plan heights=edges from=plan.guard - 5 side="left"/>
  <rect x="${e.n(plan.guard - 2)}" y="${e.n(top)}" width="4" height="${e.n(e.floor - top)}" fill="#fff" stroke="#000" stroke-width="0.8"/>
  <rect x="${e.n(plan.guard - 5)}" y="${e.n(top)}" width="10" height="${e.n([bottom - top, 4]?max)}" fill="#000"/>
  <#-- beams seen end on -->
  <#list 0..40 as i><#if top + 5 + i * 7 lt bottom - 3><circle cx="${e.n(plan.guard)}" cy="${e.n(top + 5 + i * 7)}" r="1.8" fill="#fff"/></#if></#list>
  <@e.tag x=plan.guard y=top name=data.tag!"" side="left"/>
</@e.view>
