<#import "blocks.ftl" as write>
<#import "frame.ftl" as frame>
<html xmlns="http://www.w3.org/1999/xhtml" lang="${language}">
<head>
<title>${title}</title>
<style>
<#include "style/frame.css.ftl">
<#include "style/file.css.ftl">
<#include "style/form.css.ftl">
</style>
</head>
<body>
<@frame.running/>
<div class="form" id="form-${form.id}">
  <h1>${form.title}</h1>
  <p class="form-caution">${words["form.caution"]}</p>
  <@write.blocks of=form.blocks number="" depth=2/>
</div>
</body>
</html>
