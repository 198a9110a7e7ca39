<#-- How many things bar release, as a sentence without a full stop. -->
<#function count>
<#if missing?size == 0><#return words["status.none"]></#if>
<#return (missing?size == 1)?then(words["status.one"], words["status.many"]?replace("{0}", missing?size?c))>
</#function>
<#-- The plant's logo, on pages that have one; it was copied shape by shape or point by point when it was read. -->
<#macro mark>
<#if logo?? && (logo.svg?has_content || logo.png?has_content)>
<#local box = logo.box?split(" ")
        wide = [34, 7 * box[2]?number / box[3]?number]?min
        high = wide * box[3]?number / box[2]?number
        size = "width: " + wide?string("0.##") + "mm; height: " + high?string("0.##") + "mm">
<div class="head-logo"><#if logo.svg?has_content><svg xmlns="http://www.w3.org/2000/svg" viewBox="${logo.box}" alt="${label.operator}" style="${size}">${logo.svg?no_esc}</svg><#else><img src="data:image/png;base64,${logo.png}" alt="${label.operator}" style="${size}"/></#if></div>
</#if>
</#macro>
<#-- What stands in the margins of every page; on pages that are handed out by themselves with the first things that bar release,
     which are told in English and therefore stand on no page in another language; the day is left out where the foot of the page
     tells it in the manner of its language. -->
<#macro running alone=true english=true dated=true>
<div class="head">
  <div class="head-row">
    <@mark/><div class="head-cell"><span class="head-name">${words["cell-name"]!label.cellName}</span> <span class="head-id">${label.cellId}</span></div>
    <div class="head-state"><#if draft><span class="draft-mark">${words.draft}</span> </#if><span>${words.revision} ${label.revision}<#if !draft>, ${words.released}</#if></span></div>
    <div class="head-page"><span>${words.page} </span><span class="page-number"></span><span> ${words.of} </span><span class="page-count"></span></div>
  </div>
</div>
<#if draft>
<div class="band"><#include "drawings/draft-band.svg.ftl"></div>
<div class="foot-draft"><span class="draft-mark">${words.draft}</span> ${words["draft-notice"]}<#if dated>, ${words["as-of"]} ${label.asOf}</#if>. ${count()}<#if alone && inShort?has_content><#if english>: ${inShort}<#if !inShortAll>; ${words["status.all"]}</#if><#else>; ${words["status.all"]}</#if></#if>.</div>
<#else>
<div class="foot-draft">${words.released}<#if dated>, ${words["as-of"]} ${label.asOf}</#if></div>
</#if>
</#macro>
