<#import "/drawings/elevation.ftl" as e>
<#-- room for the shroud above the actuators -->
<#assign plan = e.plan(data, [(data.actuators!0) * 1.1])>
<#assign y = e.up(plan, data.actuators!(plan.highest * 0.5))>
<#assign desk = [9, e.floor - y]?min>
<@e.view data=data plan=plan alternative=alternative>
  <#if data.actuators??><@e.heights plan=plan heights=[{"words": "actuators", "mm": data.actuators}] from=plan.guard - 11 side="left"/></#if>
  <#-- stand, desk, and the near actuator in its collar; the far one stands behind it -->
  <rect x="${e.n(plan.guard - 3)}" y="${e.n(y)}" width="6" height="${e.n([e.floor - y, 2]?max)}" fill="#fff" stroke="#000" stroke-width="0.8"/>
  <rect x="${e.n(plan.guard - 11)}" y="${e.n(y)}" width="22" height="${e.n(desk)}" fill="#fff" stroke="#000" stroke-width="1.2"/>
  <rect x="${e.n(plan.guard - 5)}" y="${e.n(y - 4)}" width="10" height="4" fill="#000"/>
  <#if data.shrouded??>
  <#-- the shroud closes the way from the actuators to the hazard -->
  <path d="M${e.n(plan.guard + 11)} ${e.n(y + desk)} L${e.n(plan.guard + 11)} ${e.n(y - 14)} L${e.n(plan.guard - 9)} ${e.n(y - 14)}" fill="none" stroke="#000" stroke-width="2.4"/>
  <@e.tag x=plan.guard y=y - 15 name=data.tag!"" side="left"/>
  <#else>
  <@e.tag x=plan.guard y=y - 4 name=data.tag!"" side="left"/>
  </#if>
</@e.view>
