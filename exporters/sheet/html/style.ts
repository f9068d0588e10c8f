/** How the sheet looks, on screen and on A4 or Letter alike: no page size is stated, so the printer's paper counts. */

/** A text inside a CSS string: every sign but plain letters and figures by its number. */
export const cssString = (text: string): string =>
  `"${[...text].map((sign) => (/[A-Za-z0-9 ]/.test(sign) ? sign : `\\${(sign.codePointAt(0) ?? 32).toString(16)} `)).join('')}"`

/** @param foot what stands at the foot of every printed page, beside its number */
export const sheetStyle = (foot: string): string => `
@page {
  margin: 14mm 15mm 16mm;
  @bottom-left { content: ${cssString(foot)}; font: 8pt sans-serif; color: #4d4d4d; }
  @bottom-right { content: counter(page) " / " counter(pages); font: 8pt sans-serif; color: #4d4d4d; }
}
* { box-sizing: border-box; }
html { background: #ffffff; color: #1a1a1a; color-scheme: light; }
body {
  margin: 0 auto; padding: 10mm 5mm; max-width: 190mm;
  font: 9.5pt/1.4 "Liberation Sans", "Helvetica Neue", Arial, "DejaVu Sans", sans-serif;
  font-variant-numeric: tabular-nums;
}
h1 { margin: 0 0 3mm; font: 600 20pt/1.15 "Iowan Old Style", Palatino, Georgia, "Liberation Serif", serif; overflow-wrap: anywhere; }
h2 {
  margin: 9mm 0 3mm; padding-bottom: 1mm; border-bottom: 0.35mm solid #1a1a1a;
  font: 600 13pt/1.2 "Iowan Old Style", Palatino, Georgia, "Liberation Serif", serif; break-after: avoid;
}
h3, caption { font-weight: 600; font-size: 9.5pt; text-align: left; }
.head { display: grid; grid-template-columns: repeat(auto-fill, minmax(42mm, 1fr)); gap: 2mm 6mm; margin: 0 0 4mm; padding: 2.5mm 0; border-block: 0.35mm solid #1a1a1a; }
.head div { min-width: 0; }
dt { color: #4d4d4d; font-size: 7.5pt; }
dd { margin: 0; overflow-wrap: anywhere; }
figure { margin: 0 0 5mm; break-inside: avoid; }
figure svg { display: block; max-width: 100%; height: auto; }
figcaption, .note { break-before: avoid; margin: 1.2mm 0 0; color: #4d4d4d; font-size: 8.2pt; max-width: 150mm; }
table { border-collapse: collapse; margin: 0; max-width: 100%; }
.table { margin: 0 0 5mm; }
caption { padding: 0 0 1.2mm; break-after: avoid; }
thead { display: table-header-group; }
tr { break-inside: avoid; }
th, td { padding: 0.7mm 3mm 0.7mm 0; text-align: left; vertical-align: top; border-bottom: 0.13mm solid #b5b5b5; overflow-wrap: break-word; }
th.figure, td.figure { text-align: right; white-space: nowrap; }
thead th { color: #4d4d4d; font-weight: 400; font-size: 8pt; line-height: 1.2; vertical-align: bottom; white-space: normal !important; border-bottom: 0.35mm solid #1a1a1a; }
tbody tr:nth-child(5n) > * { border-bottom-color: #6b6b6b; }
.wide table { font-size: 8.4pt; }
.wide th, .wide td { padding-right: 2.2mm; }
td.whole { white-space: nowrap; }
.table.short { break-inside: avoid; }
.empty { width: 100%; }
.empty td { height: 7.5mm; }
.empty td, .empty th { white-space: nowrap; }
ol.steps { margin: 0; padding: 0; list-style: none; counter-reset: step; }
.steps li { position: relative; padding: 0 0 3.2mm 9mm; break-inside: avoid; counter-increment: step; max-width: 165mm; }
.steps li::before { content: counter(step); position: absolute; left: 0; font-weight: 600; }
.steps h3 { margin: 0; }
.steps p { margin: 0; }
.caution { margin-top: 1mm !important; padding-left: 3mm; border-left: 0.7mm solid #1a1a1a; }
.caution b { font-weight: 600; }
.checksum { margin-top: 8mm; color: #4d4d4d; font-size: 8.2pt; }
section > p { max-width: 165mm; overflow-wrap: anywhere; }
@media print { body { margin: 0; padding: 0; max-width: none; } }
@media screen and (max-width: 600px) { .table { overflow-x: auto; } }
`
