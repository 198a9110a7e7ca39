/* The type is large enough to be read from a metre away and is never set smaller to make more of it fit. */
@page { margin: 24mm 14mm 16mm 20mm; }
body { font-size: 14pt; line-height: 1.3; }
.sheet { position: relative; height: <#if label.page == "Letter">233mm<#else>251mm</#if>; }
.sheet h1 { font-size: 30pt; line-height: 1.08; font-weight: bold; }
.place { margin-top: 2mm; margin-bottom: 6mm; }
.panel { display: table; width: 100%; table-layout: fixed; border-top: 2pt solid #000; padding-top: 3.5mm; margin-bottom: 5mm; }
.sign { display: table-cell; width: 29mm; vertical-align: top; }
.sign svg { width: 22mm; height: 22mm; }
.panel-words { display: table-cell; vertical-align: top; }
.panel h2 { font-size: 19pt; line-height: 1.15; font-weight: bold; margin-bottom: 1.6mm; }
.panel p { margin-bottom: 1mm; }
.step { display: table; width: 100%; table-layout: fixed; margin-bottom: 1mm; }
.step p.number { display: table-cell; width: 10mm; font-weight: bold; font-size: 19pt; line-height: 1; vertical-align: baseline; }
.step p.words { display: table-cell; vertical-align: baseline; }
#foot { position: absolute; bottom: 0; left: 0; width: 100%; border-top: 2pt solid #000; padding-top: 2.5mm; }
#foot table { width: 100%; table-layout: fixed; }
#foot th, #foot td { font-size: 10pt; padding: 0.5mm 3mm 0.5mm 0; line-height: 1.25; }
#foot th { width: 48mm; }
#foot td { font-weight: bold; }
#foot .remark { font-weight: normal; }
.band svg { width: 3.6mm; height: <#if label.page == "Letter">239mm<#else>257mm</#if>; }
