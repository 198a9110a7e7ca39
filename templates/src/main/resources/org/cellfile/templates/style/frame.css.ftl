@page {
  size: <#if label.page == "Letter">letter<#else>A4</#if>;
  margin: 28mm 20mm 22mm 30mm;
  @top-center { content: element(head); width: 100%; vertical-align: bottom; padding-bottom: 6mm; }
  @bottom-left { content: element(footdraft); width: 100%; vertical-align: top; padding-top: 6mm; }
<#if draft>
  @left-top { content: element(band); vertical-align: top; text-align: left; padding-left: 12mm; }
</#if>
}
html, body { margin: 0; padding: 0; }
body { font-family: "Liberation Sans"; font-size: 9.5pt; line-height: 1.45; color: #000; word-wrap: break-word; }
p, ul, ol, li, h1, h2, h3, h4, h5, h6, table { margin: 0; padding: 0; font-size: inherit; font-weight: normal; }
a { color: #000; text-decoration: none; }
table { border-collapse: collapse; }
td, th { text-align: left; vertical-align: top; font-weight: normal; }

.head { position: running(head); font-size: 8pt; line-height: 1.3; }
.head-row { display: table; width: 100%; table-layout: fixed; border-bottom: 0.6pt solid #000; }
.head-row div { display: table-cell; vertical-align: bottom; padding-bottom: 1.6mm; }
.head-cell { width: 50%; text-align: left; }
.head-state { width: 33%; text-align: right; }
.head-page { width: 17%; text-align: right; }
.head-name { font-weight: bold; }
.head-id { font-family: "Liberation Mono"; font-size: 7.5pt; }
.page-number:before { content: counter(page); }
.page-count:before { content: counter(pages); }
.foot-draft { position: running(footdraft); font-size: 8pt; text-align: left; }
.draft-mark { background-color: #000; color: #fff; font-weight: bold; letter-spacing: 0.6pt; padding: 0.4mm 1.6mm; margin-right: 1.4mm; }
.band { position: running(band); }
.band svg, .drawing svg, .sign svg { display: block; }
.band svg { width: 3.6mm; height: <#if label.page == "Letter">229mm<#else>247mm</#if>; }
