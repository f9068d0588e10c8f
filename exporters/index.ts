/** The only door of the exporters. */
export { type Bundle, type BundleOptions, makeBundle } from './bundle/bundle.ts'
export {
  type CutPart,
  cutPart,
  type Followed,
  followed,
  isCutPart,
  pathWords,
  type ToCut,
} from './cutting/cut-part.ts'
export {
  grainOf,
  isFromSheet,
  type NestedSheet,
  type Nesting,
  nested,
  stockOf,
  stuffOf,
} from './cutting/nest.ts'
export { type SheetFiles, sheetTemplates } from './cutting/sheets.ts'
export { testDesign, testPiece } from './cutting/test-piece.ts'
export { LAYER_TABLE, type LayerStyle, type LengthUnit, LINE_TYPES } from './drawing/layers.ts'
export { type DxfOptions, type DxfRelease, writeDxf, writeDxfSheet } from './dxf/writeDxf.ts'
export type { FitWishes } from './fit/fit-answer.ts'
export { fitCsv } from './fit/fit-table.ts'
export { carry, isCarried, readCarried } from './label/carried.ts'
export { labelPicture, writeLabelHtml, writeLabelSvg } from './label/label.ts'
export { packText, unpackText } from './label/packing.ts'
export { LABEL_SIZE } from './label/size.ts'
export * from './pdf/index.ts'
export { scheduleCsv } from './schedule/csv.ts'
export { buildSheet } from './sheet/build-sheet.ts'
export { everythingText, sheetFiles, tableFiles } from './sheet/files.ts'
export { FILLS, STROKES } from './sheet/html/picture-svg.ts'
export { writeSheetHtml } from './sheet/html/write-html.ts'
export { type PlannedMeasure, plannedMeasures } from './sheet/measures.ts'
export {
  type Block,
  type Column,
  type Section,
  type Sheet,
  type Step,
  type Table,
  tablesOf,
} from './sheet/model.ts'
export { type Picture, runsPath, type Shape } from './sheet/pictures/picture.ts'
export { type MadeSheet, printLabel, printSheet } from './sheet/printing.ts'
export { sourceOf } from './sheet/source.ts'
export { builtRows } from './sheet/tables/record.ts'
export type { SheetOptions } from './sheet-layout/facts.ts'
export type { SvgOptions } from './svg/page.ts'
export { SVG_PURPOSES, type SvgPurpose, type SvgWords } from './svg/purposes.ts'
export { writeSvg, writeSvgSheet } from './svg/writeSvg.ts'
export { cellText, headingOf, isFigure } from './tables/cells.ts'
export { writeCsv } from './tables/csv.ts'
export {
  TEMPLATE_FORMATS,
  type TemplateFile,
  type TemplateFormat,
  type TemplatesOptions,
  templates,
} from './templates.ts'
export { type DrawnWire, valueWords, type WiringDiagram, wireTable, wiringDiagram } from './wiring/diagram.ts'
export { wiringSvg } from './wiring/svg.ts'
export { slug } from './words/plain.ts'
