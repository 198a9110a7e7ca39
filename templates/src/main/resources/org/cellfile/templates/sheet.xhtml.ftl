<#import "frame.ftl" as frame>
<#-- The small plan stands beside the last two parts: what must never be done and whom to call are short enough for that. -->
<#-- What is said stands once in each language, one below the other. -->
<#macro said texts>
<#list texts as text><span class="said said-${text?counter}" lang="${sheet.languages[text?index]}">${text}</span></#list>
</#macro>
<#-- A part with its sign. -->
<#macro headed panel>
<div class="panel panel-${panel.kind?lower_case}" data-part="${panel.title?join(" / ")}">
  <#local sign = panel.sign?lower_case?replace("_", "-")>
  <div class="sign"><#include "signs/" + sign + ".svg.ftl"></div>
  <div class="panel-words">
    <p class="meaning" data-beside="title">${words["meaning." + sign]}</p>
    <h2><@said panel.title/></h2>
    <#list panel.lines as line>
    <#if panel.numbered>
    <div class="step"><p class="number" data-beside="words">${line?counter}</p><p class="words"><@said line/></p></div>
    <#else>
    <p><@said line/></p>
    </#if>
    </#list>
  </div>
</div>
</#macro>
<html xmlns="http://www.w3.org/1999/xhtml" lang="${language}">
<head>
<title>${title}</title>
<style>
<#include "style/frame.css.ftl">
<#include "style/sheet.css.ftl">
<#if typefaces?has_content>
body { font-family: "Liberation Sans"<#list typefaces as tag, family>, "${family}"</#list>; }
<#list typefaces as tag, family>
.said[lang="${tag}"] { font-family: "${family}", "Liberation Sans"; }
</#list>
</#if>
</style>
</head>
<body>
<@frame.running english=(sheet.languages?join("") == "en") dated=false/>
<div class="sheet">
  <h1><@said sheet.title/></h1>
  <#if draft || sheet.marks?has_content || sheet.places?has_content>
  <p class="place"><#if draft><span class="draft-mark">${words["sheet.draft"]}</span> </#if><#list sheet.marks as mark><span class="mark"><#list mark as text><span lang="${sheet.languages[text?index]}">${text}</span><#sep> / </#list></span> </#list><#if sheet.places?has_content>${words["sheet.place"]}: <#list sheet.places as place><#list place as text><span lang="${sheet.languages[text?index]}">${text}</span><#sep> / </#list><#sep>; </#list></#if></p>
  </#if>
  <#assign plans = sheet.panels?filter(one -> one.drawings?has_content)
           parts = sheet.panels?filter(one -> !one.drawings?has_content)
           above = plans?has_content?then([parts?size - 2, 0]?max, parts?size)>
  <#list parts[0..<above] as part><@headed part/></#list>
  <#if plans?has_content>
  <div class="beside">
    <div class="beside-words"><#list parts[above..] as part><@headed part/></#list></div>
    <div class="beside-plan">
      <#list plans as plan>
      <div class="plan" data-part="${plan.title?join(" / ")}">
        <h2><@said plan.title/></h2>
        <#list plan.drawings as block><#assign data = block.data alternative = block.alternative planAcross = planWide><#include "/" + block.template></#list>
      </div>
      </#list>
    </div>
  </div>
  </#if>
  <div id="foot">
    <div class="foot">
      <div class="facts">
      <#list sheet.dates + sheet.foot + sheet.displays as fact>
      <p class="fact">${fact.label}: <span class="value">${fact.value}</span><#if fact.remark?has_content> ${fact.remark}</#if></p>
      </#list>
      <p class="fact">${words["sheet.digest"]}: <span class="digest">${digest}</span></p>
      </div>
      <div class="code">
        <svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${qr.size?c} ${qr.size?c}" alt="QR: ${codeText}"><path d="${qr.dark}" fill="#000"/></svg>
      </div>
    </div>
  </div>
</div>
</body>
</html>
