<#import "/drawings/elevation.ftl" as e>
<#assign beams = [data.beam1!0, data.beam2!0, data.beam3!0, data.beam4!0]?filter(mm -> mm gt 0)>
<#-- room for the head of the column above the highest beam -->
<#assign plan = e.plan(data, [(beams + [0])?max * 1.06])>
<#assign top = e.up(plan, (beams?size gt 0)?then((beams + [0])?max, plan.highest * 0.5)) - 8>
<#assign rows = []>
<#list beams as mm><#assign rows = rows + [{"words": "beam " + mm?counter, "mm": mm}]></#list>
<@e.view data=data plan=plan alternative=alternative>
  <@e.heights plan=plan heights=rows from=plan.guard - 5 side="left"/>
  <#-- column, and the beams seen end on -->
  <rect x="${e.n(plan.guard - 3.5)}" y="${e.n(top)}" width="7" height="${e.n(e.floor - top)}" fill="#fff" stroke="#000" stroke-width="1"/>
  <#list beams as mm>
  <circle cx="${e.n(plan.guard)}" cy="${e.n(e.up(plan, mm))}" r="5" fill="#000"/>
  <circle cx="${e.n(plan.guard)}" cy="${e.n(e.up(plan, mm))}" r="1.8" fill="#fff"/>
  </#list>
  <@e.tag x=plan.guard y=top name=data.tag!"" side="left"/>
</@e.view>
