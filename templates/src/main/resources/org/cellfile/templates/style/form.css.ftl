/* A form lies on a clipboard and is written on with a ballpoint: nothing is lower than 8 mm where somebody writes. */
<#assign letter = label.page == "Letter" across = form.wide>
@page {
  size: ${letter?then("letter", "A4")}<#if across> landscape</#if>;
  margin: 24mm 14mm 16mm 20mm;
  @bottom-left { content: element(footdraft); width: 100%; vertical-align: top; padding-top: 2.5mm; }
}
.band svg { width: 3.6mm; height: ${across?then(letter?then(175, 170), letter?then(239, 257))}mm; }
body { font-size: 9pt; line-height: 1.35; }
.form h1 { font-size: 17pt; font-weight: bold; line-height: 1.15; margin-bottom: 1.4mm; }
.form-caution { font-size: 8pt; line-height: 1.3; margin-bottom: 3mm; }
.form p.text, .form ul.points { max-width: none; margin-bottom: 2mm; }
.form .box { margin-top: 2mm; margin-bottom: 3mm; padding: 2mm 4mm 0.6mm 4mm; }
.form .box-title { margin-bottom: 1mm; }

/* Room that must be left on a page: never a head without rows, or a heading without text. */
.form * { -fs-page-break-min-height: 0; }
.form .table { -fs-page-break-min-height: 58mm; }
.form .section .table { -fs-page-break-min-height: 40mm; }
.form .section { -fs-page-break-min-height: 46mm; margin-top: 3mm; }
.form h2 { font-size: 11.5pt; }
.form .heading { margin-bottom: 1.6mm; }
.form table.facts { margin-bottom: 2.4mm; page-break-inside: avoid; }
.form table.facts th, .form table.facts td { padding-top: 0.6mm; padding-bottom: 0.6mm; }

table.write-in { width: 100%; table-layout: fixed; -fs-table-paginate: paginate; margin-bottom: 4mm; border: 0.8pt solid #000; }
table.write-in tr, table.lines tr { page-break-inside: avoid; }
table.write-in th { font-size: 8pt; font-weight: bold; line-height: 1.2; vertical-align: bottom; padding: 1mm 1.4mm; border: 0.5pt solid #000; border-bottom: 1pt solid #000; }
table.write-in th.about { font-size: 9pt; white-space: pre-line; border-bottom: 0.5pt solid #000; }
table.write-in td { height: 8mm; font-size: 8.5pt; line-height: 1.28; padding: 0.8mm 1.4mm; border: 0.5pt solid #000; }
table.write-in .figures { text-align: right; }
p.printed { white-space: pre-line; }
table.write-in td:first-child p.printed:first-line { font-weight: bold; }
p.unit { padding-top: 5mm; text-align: right; font-size: 8pt; }
p.choice { display: inline-block; white-space: nowrap; line-height: 1; margin: 0.5mm 2.4mm 0.7mm 0; }
.tick { display: inline-block; width: 4mm; height: 4mm; border: 0.8pt solid #000; margin-right: 0.6mm; vertical-align: middle; }

table.lines { width: 100%; table-layout: fixed; margin-bottom: 4mm; }
table.lines th, table.lines td { height: 8.4mm; vertical-align: bottom; font-size: 8.5pt; line-height: 1.2; padding: 0 2mm 0.6mm 0; }
table.lines td { border-bottom: 0.6pt solid #000; }
table.lines td.empty { border-bottom: none; }
table.lines th + td + th { padding-left: 4mm; }
table.lines p.unit { padding-top: 0; }
.form .signature { margin-top: 3mm; }
.form .signature-rule { margin-top: 11mm; }

/* Names and signatures take more; they stand on the first page with the remarks, the checks follow. */
#form-shift-check table.write-in td { height: 9.2mm; }
#form-shift-check .table { -fs-page-break-min-height: 48mm; }

/* The runs under one condition are compared with each other, and each stop is measured on a day of its own. */
#form-stop-time-measurement .table { page-break-inside: avoid; }
#form-stop-time-measurement .section + .section { page-break-before: always; }
