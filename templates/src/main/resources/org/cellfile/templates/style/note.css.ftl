/* One or two pages: smaller than the file, still read at a desk. */
.form p.text { font-size: 8pt; line-height: 1.3; }
.form table.grid td, .form table.grid th { font-size: 7.5pt; line-height: 1.25; padding-top: 0.5mm; padding-bottom: 0.5mm; }
.form .table { -fs-page-break-min-height: 20mm; margin-bottom: 2mm; }
.form .section { -fs-page-break-min-height: 24mm; margin-top: 3mm; }
.form table.grid { margin-bottom: 2mm; }
.form ul.points { font-size: 8pt; line-height: 1.3; }
table.write-in td { height: 6mm; }
/* Nothing follows it, and room below it would open another page. */
#note table.lines { margin-bottom: 0; }
#note table.write-in td:first-child p.printed:first-line { font-weight: normal; }
