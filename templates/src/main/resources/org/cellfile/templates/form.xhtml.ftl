<#import "blocks.ftl" as write>
<#import "frame.ftl" as frame>
<html xmlns="http://www.w3.org/1999/xhtml" lang="${language}">
<head>
<title>${title}</title>
<style>
<#include "style/frame.css.ftl">
<#include "style/file.css.ftl">
<#include "style/form.css.ftl">
<#if typefaces?has_content>
body { font-family: <#list typefaces as tag, family>"${family}", </#list>"Liberation Sans"; }
</#if>
</style>
</head>
<body>
<@frame.running english=(language == "en")/>
<div class="form" id="form-${form.id}">
  <h1>${form.title}</h1>
  <p class="form-caution">${words["form.caution"]}</p>
  <@write.blocks of=form.blocks number="" depth=2/>
</div>
</body>
</html>
