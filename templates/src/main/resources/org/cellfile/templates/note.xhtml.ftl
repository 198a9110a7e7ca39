<#import "blocks.ftl" as write>
<html xmlns="http://www.w3.org/1999/xhtml" lang="${language}">
<head>
<title>${form.title}, ${label.cellName}</title>
<style>
<#include "style/frame.css.ftl">
<#include "style/file.css.ftl">
<#include "style/form.css.ftl">
<#include "style/note.css.ftl">
</style>
</head>
<body>
<div class="head">
  <div class="head-row">
    <div class="head-cell"><span class="head-name">${label.cellName}</span> <span class="head-id">${label.cellId}</span></div>
    <div class="head-state"><span>${words["change-note"]}</span></div>
    <div class="head-page"><span>${words.page} </span><span class="page-number"></span><span> ${words.of} </span><span class="page-count"></span></div>
  </div>
</div>
<div class="foot-draft">${words["note.foot"]}</div>
<div class="form" id="note">
  <h1>${form.title}</h1>
  <@write.blocks of=form.blocks number="" depth=2/>
</div>
</body>
</html>
