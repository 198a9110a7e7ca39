/* The type is large enough to be read from a metre away and is never set smaller to make more of it fit. */
@page {
  margin: 22mm 14mm 16mm 18mm;
  @bottom-left { content: element(footdraft); width: 100%; vertical-align: top; padding-top: 0.5mm; }
}
body { font-size: 13.5pt; line-height: 1.22; }
.sheet { position: relative; height: <#if label.page == "Letter">237mm<#else>255mm</#if>; }
.sheet h1 { font-size: 26pt; line-height: 1.08; font-weight: bold; }
.place { margin-top: 1mm; margin-bottom: 3mm; }
.panel { display: table; width: 100%; table-layout: fixed; border-top: 2pt solid #000; padding-top: 2.2mm; margin-bottom: 2mm; }
.sign { display: table-cell; width: 21mm; vertical-align: top; }
.sign svg { width: 16mm; height: 16mm; }
.panel-words { display: table-cell; vertical-align: top; }
.panel h2 { font-size: 16pt; line-height: 1.15; font-weight: bold; margin-bottom: 0.6mm; }
.panel p { margin-bottom: 0.5mm; }
.step { display: table; width: 100%; table-layout: fixed; margin-bottom: 0.4mm; }
.step p.number { display: table-cell; width: 9mm; font-weight: bold; font-size: 15pt; line-height: 1; vertical-align: baseline; }
.step p.words { display: table-cell; vertical-align: baseline; }
#foot { display: table; table-layout: fixed; position: absolute; bottom: 0; left: 0; width: 100%; border-top: 2pt solid #000; padding-top: 2mm; }
#foot > div { display: table-cell; vertical-align: top; }
/* A module of the code is about half a millimetre: a hand-held camera reads it at arm's length (constructed, and tried). */
.foot-code { width: 30mm; text-align: center; }
.foot-code svg { display: block; width: 29mm; height: 29mm; margin: -2mm -2mm -1mm auto; }
.foot-code p { font-size: 9pt; line-height: 1.2; text-align: right; }
.foot-code p.digest { font-family: "Liberation Mono"; font-weight: bold; font-size: 10pt; }
#foot table { width: 100%; table-layout: fixed; }
#foot th, #foot td { font-size: 9.5pt; padding: 0.35mm 1.5mm 0.35mm 0; line-height: 1.2; }
#foot th { width: 25mm; }
#foot th:first-child { width: 19mm; }
#foot th:first-child + td { width: 52mm; }
#foot table.displays th:first-child { width: 41mm; }
#foot table.displays th:first-child + td { width: auto; }
#foot td { font-weight: bold; }
#foot .remark { font-weight: normal; }
.band svg { width: 3.6mm; height: <#if label.page == "Letter">243mm<#else>261mm</#if>; }
