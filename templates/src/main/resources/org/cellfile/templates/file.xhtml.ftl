<#import "blocks.ftl" as write>
<#import "frame.ftl" as frame>
<html xmlns="http://www.w3.org/1999/xhtml" lang="${language}">
<head>
<title>${title}</title>
<style>
<#include "style/frame.css.ftl">
<#include "style/file.css.ftl">
</style>
<bookmarks>
<#if missing?has_content><bookmark name="${words['missing.title']}" href="#missing"/></#if>
<bookmark name="${words.contents}" href="#contents"/>
<#list chapters as chapter>
<bookmark name="${chapter?counter} ${chapter.title}" href="#chapter-${chapter.id}">
<#list write.sections(chapter.blocks) as section>
<bookmark name="${chapter?counter}.${section?counter} ${section.title}" href="#section-${chapter?counter}.${section?counter}"/>
</#list>
</bookmark>
</#list>
</bookmarks>
</head>
<body>
<@frame.running alone=false/>

<div class="cover">
  <p class="sort">${words['safety-file']}</p>
  <h1 class="cell">${label.cellName}</h1>
  <p class="cell-id">${label.cellId}</p>
  <table class="facts">
    <#list [["site", label.site], ["operator", label.operator], ["integrator", label.integrator], ["revision", label.revision], ["as-of", label.asOf]] as fact>
    <tr><th scope="row">${words["cover." + fact[0]]}</th><td>${fact[1]}</td></tr>
    </#list>
  </table>
  <#assign apart = missing?size gt 5>
  <div class="status<#if draft> status-draft</#if>">
    <#if draft>
    <p class="status-word">${words.draft}</p>
    <p>${frame.count()}. ${words[missing?has_content?then("status.marked", "status.marked-until-asked")]}</p>
    <#if apart>
    <p><a class="page-of" href="#missing" title="${words['missing.title']}">${words["status.listed"]}</a></p>
    <#elseif missing?has_content>
    <@missingList/>
    </#if>
    <#else>
    <p class="status-word">${words.released?cap_first}, ${words["as-of"]} ${label.asOf}</p>
    <p>${words[releasedBy?has_content?then("status.released-by", "status.released")]?replace("{0}", releasedBy)}</p>
    </#if>
  </div>
  <div class="cautions">
    <p class="cautions-title">${words["cautions.title"]}</p>
    <#list 1..3 as n><p>${words["cautions." + n]}</p></#list>
  </div>
</div>

<#if apart>
<div class="front">
  <h1 id="missing">${words["missing.title"]}</h1>
  <p class="intro">${words["missing.intro"]}</p>
  <@missingList/>
</div>
</#if>

<div class="front">
  <h1 id="contents">${words.contents}</h1>
  <#list chapters as chapter>
  <p class="contents-chapter"><a href="#chapter-${chapter.id}" title="${chapter.title}"><span class="n">${chapter?counter}</span>${chapter.title}</a></p>
  <#list write.sections(chapter.blocks) as section>
  <p class="contents-section"><a href="#section-${chapter?counter}.${section?counter}" title="${section.title}"><span class="n">${chapter?counter}.${section?counter}</span>${section.title}<#if section.tag?has_content> <span class="tag">${section.tag}</span></#if></a></p>
  </#list>
  </#list>
</div>

<#list chapters as chapter>
<div class="chapter" id="chapter-${chapter.id}">
  <h1><span class="chapter-number">${chapter?counter}</span>${chapter.title}</h1>
  <@write.blocks of=chapter.blocks number=chapter?counter?c depth=2/>
</div>
</#list>
</body>
</html>

<#macro missingList>
<#if !apart><div id="missing"></div></#if>
<ol class="missing">
<#list missing as finding>
  <li><p>${finding.sentence?cap_first}. <#if finding.help?has_content><span class="help">${finding.help?cap_first}.</span></#if></p><p class="where">${finding.where.file.path}:${finding.where.line}:${finding.where.column}</p></li>
</#list>
</ol>
</#macro>
