/** All files of an instrument, with their names. */
import type { Part } from '../geometry/index.ts'
import type { LengthUnit } from './drawing/layers.ts'
import { type DxfRelease, writeDxf, writeDxfSheet } from './dxf/writeDxf.ts'
import type { SheetOptions } from './sheet-layout/facts.ts'
import type { SvgPurpose, SvgWords } from './svg/purposes.ts'
import { writeSvg, writeSvgSheet } from './svg/writeSvg.ts'
import { slug } from './words/plain.ts'

export type TemplateFormat = 'svg' | 'dxf'

export const TEMPLATE_FORMATS: readonly TemplateFormat[] = ['svg', 'dxf']

export interface TemplatesOptions extends SheetOptions {
  readonly formats: readonly TemplateFormat[]
  /** The unit of numbers in a DXF; an SVG is always in millimetres. Millimetres unless stated. */
  readonly dxfUnits?: LengthUnit | undefined
  /** Release of a DXF: 2000 unless stated. */
  readonly dxfRelease?: DxfRelease | undefined
  /** What an SVG is for: print unless stated; and how it writes words. */
  readonly svgPurpose?: SvgPurpose | undefined
  readonly svgWords?: SvgWords | undefined
  /** Ids of the parts wanted; all of them unless stated. */
  readonly only?: readonly string[] | undefined
}

export interface TemplateFile {
  readonly name: string
  readonly text: string
}

function chosen(parts: readonly Part[], only: readonly string[] | undefined): readonly Part[] {
  const ids = new Set(parts.map((part) => slug(part.id, 'part')))
  if (ids.size < parts.length) {
    const all = parts.map((part) => part.id).join(', ')
    throw new Error(`Two parts would get one file name: their ids are ${all}.`)
  }
  if (only === undefined) return parts
  const unknown = only.filter((id) => !parts.some((part) => part.id === id))
  if (unknown.length > 0) {
    const known = parts.map((part) => part.id).join(', ')
    throw new Error(`There is no part "${unknown.join('", "')}": the parts are ${known}.`)
  }
  return parts.filter((part) => only.includes(part.id))
}

/**
 * The templates of an instrument: a file for each part in each format, and, of two parts or more, one sheet
 * with all of them.
 *
 * @param parts in the order in which the files are wanted
 * @param options title, formats, the unit of DXF numbers, and which parts
 * @returns names such as `tea-box-lid.svg` and `tea-box-all-parts.dxf` with their texts (UTF-8; a DXF is ASCII)
 * @throws when `only` names a part that is not there, or a format is unknown, or a part cannot be drawn
 * @example templates(parts, { title: 'Tea box', formats: ['svg', 'dxf'], dxfUnits: 'inches', only: ['lid'] })
 */
export function templates(parts: readonly Part[], options: TemplatesOptions): TemplateFile[] {
  const wanted = chosen(parts, options.only)
  const start = slug(options.title, 'template')
  const dxfOptions = { ...options, units: options.dxfUnits, release: options.dxfRelease }
  const svgOptions = { ...options, purpose: options.svgPurpose, words: options.svgWords }
  return options.formats.flatMap((format): TemplateFile[] => {
    if (!TEMPLATE_FORMATS.includes(format)) {
      throw new Error(`"${String(format)}" is not a format of a template: ${TEMPLATE_FORMATS.join(' or ')}.`)
    }
    const one = (part: Part) => (format === 'svg' ? writeSvg(part, svgOptions) : writeDxf(part, dxfOptions))
    const all = () =>
      format === 'svg' ? writeSvgSheet(wanted, svgOptions) : writeDxfSheet(wanted, dxfOptions)
    const files = wanted.map((part) => ({
      name: `${start}-${slug(part.id, 'part')}.${format}`,
      text: one(part),
    }))
    return wanted.length < 2 ? files : [...files, { name: `${start}-all-parts.${format}`, text: all() }]
  })
}
