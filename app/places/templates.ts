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
}

/** The files for some parts of an instrument. Rejects, with a sentence, where one cannot be written. */
export async function makeTemplates(layout: Layout, { format, dxfUnits, only }: Wanted): Promise<MadeFile[]> {
  const { templates } = await import('../../exporters/index.ts')
  const formats: readonly Format[] = format === 'both' ? ['svg', 'dxf'] : [format]
  return formats.flatMap((one) =>
    templates(partsOf(layout), { title: layout.design.title, formats: [one], dxfUnits, only }).map(
      (file) => ({ ...file, format: one }),
    ),
  )
}
