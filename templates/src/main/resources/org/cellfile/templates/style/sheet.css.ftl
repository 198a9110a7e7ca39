/*
 * Sizes of type. A letter as high as 1/360 of the distance can be read there: an inch for 30 feet (Manual on Uniform Traffic Control
 * Devices 2009, 2A.13; from memory). A capital is 0.69 of the size of the type, so that
 *   title  36 pt: capitals of 8.7 mm, read from 3 m (8.3 mm are asked for);
 *   steps  14 pt: capitals of 3.4 mm, read from 1.2 m;
 *   the foot and the margins are read from close by: 9 pt at least.
 * Type is never set smaller to make more fit. On A3 and Tabloid it is larger by three tenths, and a little more of it fits; two languages take the room instead.
 */
<#assign pageWide = {"A4": 210, "Letter": 215.9, "A3": 297, "Tabloid": 279.4}[sheet.paper]
         pageHigh = {"A4": 297, "Letter": 279.4, "A3": 420, "Tabloid": 431.8}[sheet.paper]
         large = (pageHigh > 400)
         together = (sheet.languages?size > 1)
         larger = (large && !together)?then(1.3, 1)
         planWide = (larger gt 1)?then(78, 52)>
<#global bandHigh = ((pageHigh - 30) / 0.36)?floor>
@page {
  size: ${pageWide?c}mm ${pageHigh?c}mm;
  margin: 15mm 12mm 14mm 16mm;
  @top-center { content: element(head); width: 100%; vertical-align: bottom; padding-bottom: 2.5mm; }
  @bottom-left { content: element(footdraft); width: 100%; vertical-align: top; padding-top: 1.2mm; }
<#if draft>
  @left-top { content: element(band); vertical-align: top; text-align: left; padding-left: 8mm; }
</#if>
}
body { font-size: ${(14 * larger)?string('0.##')}pt; line-height: 1.15; }
.head, .head-id, .foot-draft { font-size: 9pt; line-height: 1.2; }
.head-row div { padding-bottom: 0.8mm; }
.head-logo { width: 16%; }
.head-logo svg, .head-logo img { display: block; }
<#if logo.svg?has_content || logo.png?has_content>.head-cell { width: 46%; } .head-state { width: 25%; } .head-page { width: 13%; }</#if>
.band svg { width: 3.6mm; height: ${(pageHigh - 30)?c}mm; }
.sheet { position: relative; height: ${(pageHigh - 32)?c}mm; }

.sheet h1 { font-size: ${(36 * larger)?string('0.##')}pt; line-height: 1.06; font-weight: bold; letter-spacing: -0.3pt; }
.place { font-size: ${(10 * larger)?string('0.##')}pt; margin-top: 0.8mm; margin-bottom: 0.8mm; }
.mark { font-weight: bold; }

.panel { display: table; width: 100%; table-layout: fixed; border-top: 1.6pt solid #000; padding-top: 0.8mm; margin-bottom: 0.8mm; page-break-inside: auto; }
.panel-emergency { border: 2.6pt solid #000; padding: 0.8mm 1.5mm 0.4mm 1.5mm; }
.sign { display: table-cell; width: 16mm; vertical-align: top; }
.sign svg { width: 13mm; height: 13mm; }
.panel p.meaning { float: right; font-size: 9pt; line-height: 1.1; margin: 1.4mm 0 0 3mm; }
.panel-words { display: table-cell; vertical-align: top; }
.panel h2 { font-size: 1.14em; line-height: 1.12; font-weight: bold; margin-bottom: 0.4mm; }
.panel p { margin-bottom: 0.3mm; }
.beside { display: table; width: 100%; table-layout: fixed; }
.beside-words { display: table-cell; vertical-align: top; }
.beside-plan { display: table-cell; width: ${planWide}mm; padding-left: 3mm; vertical-align: top; }
.plan { border-top: 1.6pt solid #000; padding-top: 0.8mm; page-break-inside: auto; }
.plan h2 { font-size: 1.14em; line-height: 1.12; font-weight: bold; margin-bottom: 1mm; }
.plan svg { display: block; }
.step { display: table; width: 100%; table-layout: fixed; }
.step p.number { display: table-cell; width: 1.2em; padding-right: 2.4mm; text-align: right; font-weight: bold; }
.step p.words { display: table-cell; padding-bottom: 0.3mm; }

/* Two languages: beside each other where the page is wide enough for that, else one below the other, the second behind a bar. */
.said { display: block; }
<#if large && together>
.said { display: inline-block; width: ${(97 / sheet.languages?size)?floor?c}%; vertical-align: top; padding-right: 1.5%; }
.panel h2 .said, .plan h2 .said { display: inline; padding: 0; }
.panel h2 .said + .said:before, .plan h2 .said + .said:before { content: " / "; }
<#else>
.said + .said { border-left: 2pt solid #000; padding-left: 2mm; margin-top: 0.3mm; font-weight: normal; }
</#if>

/* What reaches into the two millimetres above the line of the foot no longer fits either. */
#foot { position: absolute; bottom: 0; left: 0; width: 100%; padding-top: 2mm; }
.foot { display: table; width: 100%; table-layout: fixed; border-top: 1.6pt solid #000; padding-top: 1.2mm; }
.facts { display: table-cell; vertical-align: top; font-size: 9.5pt; line-height: 1.25; }
/* A module of the code is about half a millimetre: a hand-held camera reads it at arm's length (constructed, and tried). */
.code { display: table-cell; width: 34mm; vertical-align: top; text-align: right; }
.code svg { display: block; width: 30mm; height: 30mm; margin: -1.2mm 0 0 auto; }
.digest { font-family: "Liberation Mono"; font-weight: bold; }
.fact { display: inline-block; margin-right: 4mm; margin-bottom: 0.3mm; }
.fact .value { font-weight: bold; }
