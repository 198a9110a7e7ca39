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
<@frame.running/>
<div class="sheet">
  <h1><@said sheet.title/></h1>
  <#list sheet.marks as mark>
  <p class="mark"><@said mark/></p>
  </#list>
  <p class="place"><#if draft><span class="draft-mark">${words["sheet.draft"]}</span> </#if>${words["sheet.place"]}: <#list sheet.places as place><@said place/><#sep>; </#list></p>
  <#list sheet.panels as panel>
  <div class="panel" data-part="${panel.title?join(" / ")}">
    <div class="sign"><#include "signs/" + panel.kind?lower_case + ".svg.ftl"></div>
    <div class="panel-words">
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
  </#list>
  <div id="foot">
    <table>
    <#list sheet.foot as fact>
      <tr><th scope="row">${fact.label}</th><td>${fact.value}<#if fact.remark?has_content> <span class="remark">${fact.remark}</span></#if></td></tr>
    </#list>
    </table>
  </div>
</div>
</body>
</html>
