<#import "frame.ftl" as frame>
<#-- What is said stands once in each language, one below the other. -->
<#macro said texts>
<#list texts as text><span class="said said-${text?counter}" lang="${sheet.languages[text?index]}">${text}</span></#list>
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
  <#list sheet.panels as panel>
  <#if panel.drawings?has_content>
  <div class="plan" data-part="${panel.title?join(" / ")}">
    <h2><@said panel.title/></h2>
    <#list panel.drawings as block><#assign data = block.data alternative = block.alternative planAcross = pageWide - 28><#include "/" + block.template></#list>
  </div>
  <#else>
  <div class="panel panel-${panel.kind?lower_case}" data-part="${panel.title?join(" / ")}">
    <#assign sign = panel.sign?lower_case?replace("_", "-")>
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
  </#if>
  </#list>
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
