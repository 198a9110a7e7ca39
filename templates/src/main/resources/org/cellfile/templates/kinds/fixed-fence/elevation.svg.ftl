<#import "/drawings/elevation.ftl" as e>
<#assign plan = e.plan(data, [data.height!0, data.gapBelow!0])>
<#assign top = e.up(plan, data.height!(plan.highest * 0.9)) bottom = e.up(plan, data.gapBelow!(plan.highest * 0.06))>
<#assign edges = []>
<#if data.height??><#assign edges = edges + [{"words": "height", "mm": data.height}]></#if>
<#if data.gapBelow??><#assign edges = edges + [{"words": "gap below", "mm": data.gapBelow}]></#if>
<@e.view data=data plan=plan alternative=alternative>
  <@e.heights plan=plan heights=edges from=plan.guard - 4 side="left"/>
  <#-- post, and the mesh panel seen edge on -->
  <rect x="${e.n(plan.guard + 4)}" y="${e.n(top)}" width="5" height="${e.n(e.floor - top)}" fill="#fff" stroke="#000" stroke-width="0.8"/>
  <rect x="${e.n(plan.guard - 4)}" y="${e.n(top)}" width="8" height="${e.n([bottom - top, 2]?max)}" fill="#fff" stroke="#000" stroke-width="1"/>
  <#list 0..60 as i><#if top + 4 + i * 4 lt bottom><@e.line x1=plan.guard - 4 y1=top + 4 + i * 4 x2=plan.guard + 4 y2=top + i * 4 width=0.6/></#if></#list>
  <@e.tag x=plan.guard y=top name=data.tag!"" side="left"/>
</@e.view>
