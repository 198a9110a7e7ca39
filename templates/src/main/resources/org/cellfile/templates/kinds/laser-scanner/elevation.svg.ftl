<#import "/drawings/elevation.ftl" as e>
<#if data.upperEdge??>
<#assign plan = e.plan(data, [data.upperEdge, data.lowerEdge!0])>
<#assign top = e.fieldTop(plan, data)>
<@e.view data=data plan=plan alternative=alternative>
  <@e.heights plan=plan heights=e.edges(data) from=plan.guard - 9 side="left"/>
  <@e.field plan=plan data=data beams=false/>
  <#-- the scanner at the upper edge -->
  <#if !data.angle??>
  <rect x="${e.n(plan.guard - 9)}" y="${e.n(top - 14)}" width="18" height="14" fill="#000"/>
  <rect x="${e.n(plan.guard - 2)}" y="${e.n(top - 6)}" width="4" height="6" fill="#fff"/>
  </#if>
  <@e.tag x=plan.guard y=(data.angle??)?then(top, top - 14) name=data.tag!"" side="left"/>
</@e.view>
<#else>
<#assign plan = e.plan(data, [data.fieldHeight!0])>
<#assign y = e.up(plan, data.fieldHeight!(plan.highest * 0.12))>
<@e.view data=data plan=plan alternative=alternative>
  <#if data.fieldHeight??><@e.heights plan=plan heights=[{"words": "field height", "mm": data.fieldHeight}] from=plan.guard side="left"/></#if>
  <#-- the field, from its outer edge to the scanner at the foot of the zone -->
  <rect x="${e.n(plan.guard)}" y="${e.n(y - 2)}" width="${e.n(e.zoneLeft - 14 - plan.guard)}" height="4" fill="#fff" stroke="#000" stroke-width="0.8"/>
  <#list 0..60 as i><#if plan.guard + i * 6 + 4 lt e.zoneLeft - 16><@e.line x1=plan.guard + i * 6 + 2 y1=y + 2 x2=plan.guard + i * 6 + 5 y2=y - 2 width=0.5/></#if></#list>
  <@e.line x1=plan.guard y1=y - 9 x2=plan.guard y2=y + 9 width=2/>
  <rect x="${e.zoneLeft - 14}" y="${e.n(y - 9)}" width="14" height="18" fill="#000"/>
  <rect x="${e.zoneLeft - 14}" y="${e.n(y - 2)}" width="6" height="4" fill="#fff"/>
  <@e.tag x=plan.guard y=y - 4 name=data.tag!"" side="left"/>
</@e.view>
</#if>
