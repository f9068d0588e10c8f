/** The font of the printed sheets: which signs are kept of it, and the module they are kept in. */
import { readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import {
  cmapOf,
  fileOf,
  onlyOutlines,
  outlinesBySign,
  renumbered,
  tablesOf,
  withComponents,
} from '../../exporters/pdf/font/sfnt.ts'

/**
 * First and last code points of what is kept: the scripts whose letters stand one after another as they are, and
 * the signs of the trade. Scripts that join or reorder their letters would need shaping and are left out.
 */
const KEPT: readonly (readonly [first: number, last: number])[] = [
  [0x20, 0x7e],
  [0xa0, 0xac],
  [0xae, 0x24f],
  [0x259, 0x259],
  [0x2bc, 0x2bc],
  [0x2c6, 0x2dd],
  [0x370, 0x52f],
  [0x1e00, 0x1fff],
  [0x2010, 0x2027],
  [0x2030, 0x205e],
  [0x2070, 0x209c],
  [0x20a0, 0x20bf],
  [0x2100, 0x218f],
  [0x2190, 0x21ff],
  [0x2200, 0x2265],
  [0x2300, 0x2300],
  [0x25a0, 0x25cf],
  [0x2605, 0x2606],
  [0x2660, 0x266f],
  [0x2702, 0x2702],
  [0x2713, 0x2714],
]

/** The whole font as its package brings it. */
export function wholeFont(): Uint8Array {
  const where = createRequire(import.meta.url).resolve('dejavu-fonts-ttf/ttf/DejaVuSans.ttf')
  return new Uint8Array(readFileSync(where))
}

/** A font file with the signs kept, without what fits letters to a screen. */
export function keptFont(): Uint8Array {
  const tables = tablesOf(wholeFont())
  const outlines = outlinesBySign(tables)
  const kept = new Map<number, number>()
  for (const [first, last] of KEPT) {
    for (let sign = first; sign <= last; sign++) {
      const outline = outlines.get(sign)
      if (outline !== undefined && outline !== 0) kept.set(sign, outline)
    }
  }
  const only = onlyOutlines(tables, kept.values())
  const { tables: compact, numbers } = renumbered(only, withComponents(only, kept.values()))
  const cmap = cmapOf(new Map([...kept].map(([sign, outline]) => [sign, numbers.get(outline) ?? 0])))
  return fileOf(new Map([...compact, ['cmap', cmap]]))
}

/** The text of the module that holds the font, in base 64. */
export function fontModule(): string {
  const data = Buffer.from(keptFont()).toString('base64')
  return `/**
 * The letters and signs of the printed sheets, in base 64. Made by \`npm run font\`; not to be edited.
 *
 * @license
 * DejaVu Sans 2.37. Copyright (c) 2003 Bitstream, Inc. (Bitstream Vera), (c) 2006 Tavmjong Bah (Arev Fonts);
 * changes by the DejaVu fonts project are in the public domain. Use, copying, merging, embedding and distribution
 * are permitted free of charge by the font's licence, of which this notice is a part; provided "as is", without
 * warranty of any kind. The whole licence: LICENSE of the package dejavu-fonts-ttf.
 */
export const FONT_DATA =
  '${data}'
`
}
