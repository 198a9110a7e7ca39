<#import "/drawings/elevation.ftl" as e>
<#assign step = data.step!0 thick = 6>
<#assign plan = e.plan(data, [step])>
<#assign top = e.up(plan, step) - thick>
<#-- the mat ends at the zone at the latest; a width that cannot be drawn to scale takes its share -->
<#assign wide = plan.toScale?then((data.width!600) * plan.up, 80)>
<#assign inner = [plan.guard + [wide, 12]?max, e.zoneLeft - 2]?min>
<@e.view data=data plan=plan alternative=alternative>
  <#if step gt 0>
  <@e.heights plan=plan heights=[{"words": "step", "mm": step}] from=plan.guard side="left"/>
  <rect x="${e.n(plan.guard)}" y="${e.n(top + thick)}" width="${e.n(e.zoneLeft - plan.guard)}" height="${e.n(e.floor - top - thick)}" fill="#fff" stroke="#000" stroke-width="0.8"/>
  </#if>
  <#if data.width??>
  <#-- the width is told at the left below the floor and measured off there -->
  <@e.text x=4 y=268.4 fit=118>width ${e.mm(data.width)}</@e.text>
  <@e.line x1=126 y1=265 x2=inner y2=265 width=0.5/>
  <@e.line x1=plan.guard y1=e.floor + 8 x2=plan.guard y2=269 width=0.5/>
  <@e.line x1=inner y1=e.floor + 8 x2=inner y2=269 width=0.5/>
  <@e.line x1=plan.guard - 2.5 y1=267.5 x2=plan.guard + 2.5 y2=262.5 width=1/>
  <@e.line x1=inner - 2.5 y1=267.5 x2=inner + 2.5 y2=262.5 width=1/>
  </#if>
  <#-- cover, base, and what closes between them -->
  <rect x="${e.n(plan.guard)}" y="${e.n(top)}" width="${e.n(inner - plan.guard)}" height="${thick}" fill="#fff" stroke="#000" stroke-width="1"/>
  <#list 0..80 as i><#if plan.guard + i * 5 + 5 lt inner><@e.line x1=plan.guard + i * 5 + 1 y1=top + thick x2=plan.guard + i * 5 + 4.5 y2=top width=0.5/></#if></#list>
  <@e.line x1=plan.guard y1=top x2=inner y2=top width=2/>
  <@e.tag x=plan.guard y=top name=data.tag!"" side="left"/>
</@e.view>
