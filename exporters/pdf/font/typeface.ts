/** The one typeface of the printed sheets: what it can write, how wide that comes out, and its PDF font. */
import { FONT_DATA } from './font-data.ts'
import { advanceOf, outlinesBySign, type Tables, tablesOf, unitsOf } from './sfnt.ts'

/** What remains of a line when signs that the typeface lacks are taken out. */
export interface Writable {
  readonly text: string
  /** Each sign left out, once, in order. */
  readonly missing: readonly string[]
}

/** A sign as the sheets write it. */
export interface Letter {
  readonly sign: string
  /** The number of its outline. */
  readonly outline: number
  /** The same as a PDF writes it: four hexadecimal digits. */
  readonly code: string
  /** Of its cell, in thousandths of the em, as a PDF counts it. */
  readonly width: number
}

/** A line in the letters of the sheets. */
export interface SetLine {
  readonly letters: readonly Letter[]
  /** The codes of its letters, one after another. */
  readonly codes: string
  /** In thousandths of the em. */
  readonly width: number
}

/** Signs that every kept font has. */
const ASCII = /^[ -~]*$/

export class Typeface {
  readonly tables: Tables
  readonly #outlines: ReadonlyMap<number, number>
  /** By their signs; found when first asked for. */
  readonly #letters = new Map<string, Letter>()
  readonly #set = new Map<string, SetLine>()
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
    if (ASCII.test(line)) return { text: line.replace(/ {2,}/g, ' ').trim(), missing: [] }
    const missing = new Set<string>()
    let text = ''
    for (const sign of line.normalize('NFC')) {
      if (this.has(sign)) text += sign
      else missing.add(sign)
    }
    return { text: text.replace(/ {2,}/g, ' ').trim(), missing: [...missing] }
  }

  /** A line as its outlines; remembered, as most words stand on several sheets. Throws for a sign that is lacking: `writable` comes first. */
  set(line: string): SetLine {
    const before = this.#set.get(line)
    if (before) return before
    const letters: Letter[] = []
    let codes = ''
    let width = 0
    for (const sign of line) {
      const letter = this.#letters.get(sign) ?? this.#letter(sign)
      letters.push(letter)
      codes += letter.code
      width += letter.width
    }
    const set = { letters, codes, width }
    this.#set.set(line, set)
    return set
  }

  #letter(sign: string): Letter {
    const outline = this.#outlines.get(sign.codePointAt(0) ?? -1)
    if (outline === undefined)
      throw new RangeError(`The sheet's letters have no "${sign}" (U+${sign.codePointAt(0)?.toString(16)}).`)
    const code = outline.toString(16).padStart(4, '0')
    const letter = { sign, outline, code, width: (advanceOf(this.tables, outline) * 1000) / this.#units }
    this.#letters.set(sign, letter)
    return letter
  }

  /** Width of a line, mm, at a size (the em) in mm. */
  width(line: string, size: number): number {
    return (this.set(line).width * size) / 1000
  }
}

/** What a text in base 64 (RFC 4648) stands for; as the platform does it at once, where it does. */
function fromBase64(text: string): Uint8Array {
  if (typeof Buffer !== 'undefined') return new Uint8Array(Buffer.from(text, 'base64'))
  const letters = atob(text)
  const bytes = new Uint8Array(letters.length)
  for (let at = 0; at < bytes.length; at++) bytes[at] = letters.charCodeAt(at)
  return bytes
}

let opened: Typeface | undefined

/** The typeface, unpacked once. */
export function openTypeface(): Typeface {
  opened ??= new Typeface(fromBase64(FONT_DATA))
  return opened
}
