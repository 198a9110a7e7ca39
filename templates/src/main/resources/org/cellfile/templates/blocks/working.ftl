<div class="working" id="working-${block.tag}">
  <p class="working-tag">${block.tag}</p>
  <p class="working-name">${block.name?cap_first}<#if block.clause?has_content><span class="clause">${block.clause}</span></#if></p>
  <div class="sum">
    <#-- a line is left out when it would say no more than the one after it -->
    <#if block.formula != block.symbol><p class="formula">${block.symbol} = ${block.formula}</p></#if>
    <#if block.figures?has_content && block.figures != block.formula && block.figures != block.result><p class="${(block.formula == block.symbol)?then("formula", "step")}"><#if block.formula == block.symbol>${block.symbol} </#if>= ${block.figures}</p></#if>
    <#if block.result?has_content>
    <#if block.rounded?has_content>
    <p class="step">= ${block.result}</p>
    <p class="outcome">${block.symbol} = ${block.rounded}</p>
    <#else>
    <p class="outcome">${block.symbol} = ${block.result}</p>
    </#if>
    <#else>
    <p class="outcome">${words["working.not-computed"]}</p>
    </#if>
  </div>
  <#if block.steps?has_content>
  <table class="steps">
    <colgroup><col style="width: 11%"/><col style="width: 19%"/><col style="width: 34%"/><col style="width: 36%"/></colgroup>
    <thead><tr><th scope="col">${words["working.symbol"]}</th><th scope="col" class="figures">${words["working.value"]}</th><th scope="col">${words["working.name"]}</th><th scope="col">${words["working.origin"]}</th></tr></thead>
    <tbody>
    <#list block.steps as step>
    <tr><td class="symbol">${step.symbol}</td><td class="figures">${step.value}</td><td>${step.name}</td><#assign tag = step.origin?remove_beginning("derived: ")><td<#if tag?matches(r"\S+")> class="position"</#if>><#if workings[tag]??><a href="#working-${tag}" title="${words['working.see']} ${tag}"><span class="to-tag">${tag}</span> <span class="to-page" href="#working-${tag}"></span></a><#else>${step.origin}</#if></td></tr>
    </#list>
    </tbody>
  </table>
  </#if>
  <#if block.remarks?has_content>
  <ul class="remarks">
  <#list block.remarks as remark>
    <li>${remark}</li>
  </#list>
  </ul>
  </#if>
  <#if block.agreement?has_content><p class="agreement">${block.agreement}</p></#if>
</div>
