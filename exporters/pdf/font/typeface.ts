/** The one typeface of the printed sheets: what it can write, how wide that comes out, and its PDF font. */
import { unzlibSync } from 'fflate'
import { FONT_DATA } from './font-data.ts'
import { advanceOf, outlinesBySign, type Tables, tablesOf, unitsOf } from './sfnt.ts'

/** What remains of a line when signs that the typeface lacks are taken out. */
export interface Writable {
  readonly text: string
  /** Each sign left out, once, in order. */
  readonly missing: readonly string[]
}

export class Typeface {
  readonly tables: Tables
  readonly #outlines: ReadonlyMap<number, number>
  /** Widths in thousandths of the em, by the numbers of outlines; found when first asked for. */
  readonly #widths = new Map<number, number>()
  readonly #units: number

  constructor(file: Uint8Array) {
    this.tables = tablesOf(file)
    this.#outlines = outlinesBySign(this.tables)
    this.#units = unitsOf(this.tables)
  }

  /** Whether there is a letter for this sign. */
  has(sign: string): boolean {
    return this.#outlines.has(sign.codePointAt(0) ?? -1)
  }

  /**
   * A line as it can be written: accents joined to their letters where Unicode has such a letter, signs that are
   * lacking left out.
   *
   * @example typeface.writable('Tee 茶') // { text: 'Tee', missing: ['茶'] }
   */
  writable(line: string): Writable {
    const missing = new Set<string>()
    let text = ''
    for (const sign of line.normalize('NFC')) {
      if (this.has(sign)) text += sign
      else missing.add(sign)
    }
    return { text: text.replace(/ {2,}/g, ' ').trim(), missing: [...missing] }
  }

  /** Numbers of the outlines of a line. Throws for a sign that is lacking: `writable` comes first. */
  outlinesOf(line: string): number[] {
    return [...line].map((sign) => {
      const outline = this.#outlines.get(sign.codePointAt(0) ?? -1)
      if (outline === undefined) {
        throw new RangeError(
          `The sheet's letters have no "${sign}" (U+${sign.codePointAt(0)?.toString(16)}).`,
        )
      }
      return outline
    })
  }

  /** Width of an outline's cell in thousandths of the em, as a PDF counts it. */
  thousandths(outline: number): number {
    let width = this.#widths.get(outline)
    if (width === undefined) {
      width = (advanceOf(this.tables, outline) * 1000) / this.#units
      this.#widths.set(outline, width)
    }
    return width
  }

  /** Width of a line, mm, at a size (the em) in mm. */
  width(line: string, size: number): number {
    let sum = 0
    for (const outline of this.outlinesOf(line)) sum += this.thousandths(outline)
    return (sum * size) / 1000
  }
}

let opened: Typeface | undefined

/** The typeface, unpacked once. */
export function openTypeface(): Typeface {
  opened ??= new Typeface(unzlibSync(Uint8Array.from(atob(FONT_DATA), (letter) => letter.charCodeAt(0))))
  return opened
}
