/* Cover */
.cover { page-break-after: always; }
.sort { font-size: 11pt; margin-top: 16mm; }
h1.cell { font-size: 30pt; line-height: 1.12; font-weight: bold; margin-top: 3mm; }
.cell-id { font-family: "Liberation Mono"; font-size: 11pt; margin-top: 3mm; margin-bottom: 14mm; }
.status { border-top: 1.6pt solid #000; margin-top: 12mm; padding-top: 3.4mm; }
.status-word { font-weight: bold; font-size: 13pt; margin-bottom: 1.5mm; }
.cautions { border-top: 0.6pt solid #000; margin-top: 10mm; padding-top: 3.4mm; page-break-inside: avoid; }
.cautions p { margin-bottom: 2mm; font-size: 8.5pt; line-height: 1.4; }
.cautions p.cautions-title { font-weight: bold; }
a.page-of:after { content: " " target-counter(attr(href), page); }

/* Front matter */
.front { page-break-after: always; }
.front h1 { font-size: 20pt; font-weight: bold; line-height: 1.2; margin-bottom: 8mm; }
.intro { margin-bottom: 5mm; }
ol.missing { padding-left: 7mm; margin-top: 3mm; }
ol.missing li { margin-bottom: 2.4mm; page-break-inside: avoid; }
.where { font-family: "Liberation Mono"; font-size: 8pt; }
.contents-chapter { font-weight: bold; margin-top: 3.4mm; page-break-after: avoid; }
.contents-section { margin-top: 0.4mm; padding-left: 9mm; }
.contents-chapter .n { display: inline-block; width: 9mm; }
.contents-section .n { display: inline-block; width: 11mm; }
.contents-chapter a:after, .contents-section a:after { content: leader(dotted) target-counter(attr(href), page); font-weight: normal; }
.tag { font-family: "Liberation Mono"; font-size: 8.5pt; font-weight: normal; }

/* Chapters and sections */
.chapter { page-break-before: always; }
.chapter h1 { font-size: 20pt; font-weight: bold; line-height: 1.2; margin-bottom: 9mm; page-break-after: avoid; }
.chapter-number { display: inline-block; width: 14mm; }
.section { margin-top: 7mm; }
.heading { page-break-inside: avoid; page-break-after: avoid; margin-bottom: 2.6mm; }
.section-tag { font-family: "Liberation Mono"; font-size: 8.5pt; }
h2, h3, h4, h5, h6 { font-weight: bold; line-height: 1.25; }
h2 { font-size: 13pt; }
h3 { font-size: 11pt; }
h4, h5, h6 { font-size: 9.5pt; }
.section-number { padding-right: 3mm; }

/* Room that must be left on a page: never a head without rows, or a heading without text. The property is inherited. */
.chapter * { -fs-page-break-min-height: 0; }
.chapter .table { -fs-page-break-min-height: 36mm; }
.chapter .section { -fs-page-break-min-height: 32mm; }

/* Text */
p.text { margin-bottom: 2.6mm; max-width: 140mm; white-space: pre-line; orphans: 2; widows: 2; }
ul.points { margin-bottom: 3mm; padding-left: 5mm; max-width: 140mm; }
ul.points li { margin-bottom: 1mm; }

/* Facts */
table.facts { width: 100%; margin-bottom: 4mm; table-layout: fixed; }
table.facts tr { page-break-inside: avoid; }
table.facts th { width: 46mm; padding: 1.1mm 4mm 1.1mm 0; }
table.facts td { padding: 1.1mm 0; font-weight: bold; white-space: pre-line; }
.remark { font-weight: normal; font-size: 8.5pt; padding-left: 2mm; }

/* Tables */
.table.short { page-break-inside: avoid; }
.caption { font-weight: bold; margin-top: 3mm; margin-bottom: 1.4mm; page-break-after: avoid; }
table.grid, table.steps { width: 100%; table-layout: fixed; -fs-table-paginate: paginate; margin-bottom: 5mm; }
table.grid tr, table.steps tr { page-break-inside: avoid; }
table.grid th, table.steps th { font-size: 8pt; font-weight: bold; line-height: 1.3; vertical-align: bottom; padding: 1mm 3mm 1.2mm 0; border-bottom: 1pt solid #000; }
table.grid td, table.steps td { font-size: 8.5pt; line-height: 1.35; padding: 0.9mm 3mm 0.9mm 0; border-bottom: 0.4pt solid #777; white-space: pre-line; }
table.grid th.figures, table.grid td.figures, table.steps th.figures, table.steps td.figures { text-align: right; padding-right: 5mm; }

/* Workings */
.working { page-break-inside: avoid; border-top: 1.6pt solid #000; padding-top: 2mm; margin-top: 5mm; margin-bottom: 6mm; }
.working-tag { font-family: "Liberation Mono"; font-size: 8.5pt; }
.working-name { font-weight: bold; font-size: 10.5pt; }
.clause { font-weight: normal; font-size: 8.5pt; padding-left: 3mm; }
.sum { margin: 2.6mm 0 2.8mm 9mm; font-family: "Liberation Serif"; font-size: 12.5pt; line-height: 1.4; }
.step { padding-left: 6mm; }
.outcome { font-weight: bold; font-family: "Liberation Sans"; font-size: 11pt; margin-top: 0.6mm; }
table.steps { margin-bottom: 2.4mm; }
td.symbol { font-family: "Liberation Serif"; font-size: 10.5pt; }
td.position { font-family: "Liberation Mono"; font-size: 7.5pt; }
.to-tag { text-decoration: underline; }
.to-page { display: inline-block; white-space: nowrap; font-family: "Liberation Sans"; }
.to-page:before { content: "p. " target-counter(attr(href), page); }
ul.remarks { padding-left: 4mm; font-size: 8.5pt; margin-bottom: 2mm; }
.agreement { font-weight: bold; border-left: 2.4pt solid #000; padding-left: 2.6mm; }

/* Drawings */
.drawing { page-break-inside: avoid; margin-top: 3mm; margin-bottom: 5mm; }
.drawing svg { width: 160mm; }
.drawing-caption { font-size: 8.5pt; margin-top: 1.4mm; }

/* Boxes */
.box { border: 0.8pt solid #000; padding: 3mm 4mm 1.6mm 4mm; margin-top: 4mm; margin-bottom: 5mm; page-break-inside: avoid; }
.box-caution { border: 2.4pt solid #000; }
.box-deviation { border: 2.4pt double #000; }
.box table.facts { margin-bottom: 1mm; }
.box-title { font-weight: bold; margin-bottom: 1.6mm; page-break-after: avoid; }
.box-tone { text-transform: uppercase; letter-spacing: 0.6pt; padding-right: 3mm; }

/* Signatures */
.signature { page-break-inside: avoid; margin-top: 5mm; margin-bottom: 3mm; }
.signature-words { font-weight: bold; }
.signature-who { font-weight: normal; }
.signature-rule { margin-top: 13mm; }
.slot { display: inline-block; border-top: 0.6pt solid #000; font-size: 8pt; padding-top: 0.8mm; margin-right: 4mm; }
.slot-name { width: 54mm; }
.slot-date { width: 30mm; }
.slot-sign { width: 62mm; margin-right: 0; }

/* What is listed there is typed off, letter by letter: digests, lines that were signed, commands, paths. */
#chapter-signatures .section { page-break-inside: avoid; }
#chapter-signatures ul.points { font-family: "Liberation Mono"; font-size: 8pt; max-width: none; }
#chapter-signatures table.facts td { font-family: "Liberation Mono"; font-size: 8pt; font-weight: normal; }
#chapter-signatures table.facts th { width: 24mm; }
#chapter-signatures td .remark { font-family: "Liberation Sans"; }
#chapter-sources td.figures + td { font-family: "Liberation Mono"; font-size: 7.5pt; }

/* A safeguard's facts and its drawing are read together. */
#chapter-safeguards .section { page-break-inside: avoid; }

/* What holds in a mode and its plan are read together, and so are a distance and what it was made from. */
#chapter-plan .section { page-break-inside: avoid; }

/* The chain is read with what is told of it; what a subsystem was read from and its workings may part. */
#chapter-functions .section { page-break-inside: avoid; }
#chapter-subsystems .table.short { page-break-inside: auto; }
#chapter-risks table.facts th, #chapter-functions table.facts th, #chapter-subsystems table.facts th { width: 34mm; }
#chapter-risks table.facts th, #chapter-risks table.facts td, #chapter-functions table.facts th, #chapter-functions table.facts td { padding-top: 0.5mm; padding-bottom: 0.5mm; line-height: 1.32; }

/* A thing's key rows stay together, and with their heading. */
.chapter table.facts { page-break-inside: avoid; }
