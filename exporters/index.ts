/** The only door of the exporters. */
export { LAYER_TABLE, type LayerStyle, type LengthUnit, LINE_TYPES } from './drawing/layers.ts'
export { type DxfOptions, writeDxf, writeDxfSheet } from './dxf/writeDxf.ts'
export { scheduleCsv } from './schedule/csv.ts'
export type { SheetOptions } from './sheet-layout/facts.ts'
export { writeSvg, writeSvgSheet } from './svg/writeSvg.ts'
export {
  TEMPLATE_FORMATS,
  type TemplateFile,
  type TemplateFormat,
  type TemplatesOptions,
  templates,
} from './templates.ts'
export { slug } from './words/plain.ts'
