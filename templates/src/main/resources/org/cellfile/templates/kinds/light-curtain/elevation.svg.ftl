<#import "/drawings/elevation.ftl" as e>
<#assign plan = e.plan(data, [data.upperEdge!0, data.lowerEdge!0])>
<#assign top = e.fieldTop(plan, data)>
<@e.view data=data plan=plan alternative=alternative>
  <@e.heights plan=plan heights=e.edges(data) from=plan.guard - 5 side="left"/>
  <@e.field plan=plan data=data beams=true/>
  <@e.tag x=plan.guard y=top name=data.tag!"" side="left"/>
</@e.view>
