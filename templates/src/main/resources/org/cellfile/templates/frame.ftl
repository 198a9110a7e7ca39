<#-- What stands in the margins of every page. -->
<#macro running kind>
<div class="head">
  <div class="head-row">
    <div class="head-cell"><span class="head-name">${label.cellName}</span> <span class="head-id">${label.cellId}</span></div>
    <div class="head-state"><#if draft><span class="draft-mark">${words.draft}</span> </#if><span>${words.revision} ${label.revision}<#if !draft>, ${words.released}</#if></span></div>
    <div class="head-page"><span>${words.page} </span><span class="page-number"></span><span> ${words.of} </span><span class="page-count"></span></div>
  </div>
</div>
<#if draft>
<div class="band"><#include "drawings/draft-band.svg.ftl"></div>
<div class="foot-draft"><span class="draft-mark">${words.draft}</span> ${words["draft-notice"]}, ${words["as-of"]} ${label.asOf}</div>
<#else>
<div class="foot-draft">${words["as-of"]} ${label.asOf}</div>
</#if>
</#macro>
