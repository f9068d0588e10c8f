/** The exporters, fetched when they are first wanted: a first look at a box does not need them. */
import { type Layout, partsOf } from '../../geometry/index.ts'

export type Format = 'svg' | 'dxf'

export interface MadeFile {
  readonly name: string
  readonly text: string
  readonly format: Format
}

export const TYPES: Readonly<Record<Format, string>> = { svg: 'image/svg+xml', dxf: 'image/vnd.dxf' }

export interface Wanted {
  readonly format: Format | 'both'
  readonly dxfUnits: 'mm' | 'inches'
  /** Ids of the parts. */
  readonly only: readonly string[]
  /** One sheet with all parts, or each part in a file of its own. */
  readonly gathered: boolean
}

/** How the exporters end the name of a sheet that holds all parts. */
const ALL_PARTS = /-all-parts\.[a-z]+$/

/** The files for some parts of an instrument. Rejects, with a sentence, where one cannot be written. */
export async function makeTemplates(
  layout: Layout,
  { format, dxfUnits, only, gathered }: Wanted,
): Promise<MadeFile[]> {
  const { templates } = await import('../../exporters/index.ts')
  const formats: readonly Format[] = format === 'both' ? ['svg', 'dxf'] : [format]
  const files = formats.flatMap((one) =>
    templates(partsOf(layout), { title: layout.design.title, formats: [one], dxfUnits, only }).map(
      (file) => ({ ...file, format: one }),
    ),
  )
  return only.length < 2 ? files : files.filter((file) => ALL_PARTS.test(file.name) === gathered)
}
