<#import "/drawings/elevation.ftl" as e>
<#assign plan = e.plan(data, [])>
<#assign top = 58>
<@e.view data=data plan=plan alternative=alternative>
  <#if data.opening??>
  <@e.text x=4 y=top + 16 fit=118>open at trip ${e.mm(data.opening)}</@e.text>
  <path d="M${e.n(plan.guard - 6)} ${top + 12} L134 ${top + 12} L126 ${top + 12}" fill="none" stroke="#000" stroke-width="0.5"/>
  </#if>
  <#-- leaf seen edge on, with hinge side, handle and position switch -->
  <rect x="${e.n(plan.guard - 3)}" y="${top}" width="6" height="${e.floor - top - 4}" fill="#fff" stroke="#000" stroke-width="1.2"/>
  <rect x="${e.n(plan.guard - 6)}" y="${top + 8}" width="12" height="9" fill="#000"/>
  <rect x="${e.n(plan.guard - 9)}" y="${top + 92}" width="6" height="22" fill="#fff" stroke="#000" stroke-width="1"/>
  <@e.tag x=plan.guard y=top name=data.tag!"" side="left"/>
</@e.view>
