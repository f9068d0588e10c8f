/** The exporters, fetched when they are first wanted: a first look at a box does not need them. */

import type { Nesting } from '../../exporters/index.ts'
import { type Layout, type Part, partsOf } from '../../geometry/index.ts'
import type { Choices } from './cutting/choices.ts'

export type Format = 'svg' | 'dxf'

export interface MadeFile {
  readonly name: string
  readonly text: string
  readonly format: Format
}

export const TYPES: Readonly<Record<Format, string>> = { svg: 'image/svg+xml', dxf: 'image/vnd.dxf' }

export interface Writing {
  readonly format: Format | 'both'
  readonly dxfUnits: 'mm' | 'inches'
  readonly choices: Choices
}

export interface Wanted extends Writing {
  /** Ids of the parts. */
  readonly only: readonly string[]
}

export interface Made {
  readonly files: readonly MadeFile[]
  /** What is left to be cut by hand, how full the sheets are. */
  readonly said: readonly string[]
}

/** How the exporters end the name of a sheet that holds all parts. */
const ALL_PARTS = /-all-parts\.[a-z]+$/

const exporters = () => import('../../exporters/index.ts')

const formatsOf = (format: Format | 'both'): readonly Format[] =>
  format === 'both' ? ['svg', 'dxf'] : [format]

const optionsOf = (layout: Layout, { format, dxfUnits, choices }: Writing) => ({
  title: layout.design.title,
  formats: formatsOf(format),
  dxfUnits,
  dxfRelease: choices.release,
  svgPurpose: choices.purpose,
  svgWords: choices.letters,
})

const withFormat = <File extends { readonly name: string; readonly text: string }>(files: readonly File[]) =>
  files.map((file): MadeFile => ({ ...file, format: file.name.endsWith('.dxf') ? 'dxf' : 'svg' }))

/** The files for some parts of an instrument. Rejects, with a sentence, where one cannot be written. */
export async function makeTemplates(layout: Layout, wanted: Wanted): Promise<Made> {
  const { templates, sheetTemplates } = await exporters()
  const { come, lines } = wanted.choices
  const { parts, said } = await partsToCut(layout, wanted.only, lines)
  const options = optionsOf(layout, wanted)
  if (come === 'laid out on stock') {
    const made = await sheetTemplates(parts, layout.design, options)
    if (!made.ok) throw new Error(made.sentences.join(' '))
    return { files: withFormat(made.files), said: [...said, ...made.said] }
  }
  const files = withFormat(templates(parts, options))
  if (parts.length < 2) return { files, said }
  return { files: files.filter((file) => ALL_PARTS.test(file.name) === (come === 'on one sheet')), said }
}

/** The parts wanted as they lie on sheets of stock. */
export async function nestedParts(
  layout: Layout,
  only: readonly string[],
  lines: Choices['lines'],
): Promise<Nesting> {
  const { nested, stockOf, grainOf, isFromSheet, stuffOf } = await exporters()
  const { parts } = await partsToCut(layout, only, lines)
  const { design } = layout
  const fromSheet = parts.filter(isFromSheet)
  if (fromSheet.length === 0) return { ok: false, sentences: ['No part that is chosen comes from a sheet.'] }
  return nested(
    fromSheet,
    stockOf(design),
    (part) => grainOf(part, design),
    (part) => stuffOf(part, design),
  )
}

/** The files of a test piece for stock of a thickness. Rejects, with a sentence, where it cannot be made. */
export async function makeTestPiece(
  layout: Layout,
  thickness: number,
  writing: Writing,
): Promise<readonly MadeFile[]> {
  const { testPiece, testDesign, cutPart, templates } = await exporters()
  const { process, cutter } = layout.design.cutting
  if (process === 'by hand') throw new Error('What is cut by hand needs no test piece.')
  const way = cutPart(testPiece(thickness, process, cutter), testDesign(layout.design))
  if (!way.ok) throw new Error(way.sentence)
  return withFormat(templates([way.part], optionsOf(layout, writing)))
}

/** Parts as their tools follow them, where a machine cuts and its paths are wanted. */
async function partsToCut(
  layout: Layout,
  only: readonly string[],
  lines: Choices['lines'],
): Promise<{ readonly parts: readonly Part[]; readonly said: readonly string[] }> {
  const { design } = layout
  const parts = partsOf(layout).filter((part) => only.includes(part.id))
  if (design.cutting.process === 'by hand' || lines === 'the parts as drawn') return { parts, said: [] }
  const { followed } = await exporters()
  const { parts: cut, byHand, wrong } = followed(parts, design)
  if (wrong.length > 0) throw new Error(wrong.join(' '))
  return { parts: cut, said: byHand }
}
