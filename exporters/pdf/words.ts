/** Words on a sheet: fitted by the real widths of the typeface, and remembered where some cannot be printed. */
import type { Point } from '../../geometry/index.ts'
import { plainLine } from '../words/plain.ts'
import type { Typeface } from './font/typeface.ts'
import type { Ink, Lettering } from './ink.ts'

/** What stands for a line of which nothing can be printed. */
export const UNPRINTABLE = '(not printable in these letters)'

/** Smallest em that can be read on paper, mm: capitals of 1.3 mm. */
const SMALLEST = 1.8

export class Wording {
  readonly typeface: Typeface
  /** Lines seen before: most stand on every sheet. */
  readonly #printed = new Map<string, string>()
  /** Signs that were left out, by the line they were left out of. */
  readonly #lost = new Map<string, readonly string[]>()

  constructor(typeface: Typeface) {
    this.typeface = typeface
  }

  /**
   * A line as it will be printed. Signs that the typeface lacks are left out and remembered; if no letter and no
   * figure is left of a line that had some, it says so instead.
   */
  printable(line: string): string {
    let printed = this.#printed.get(line)
    if (printed === undefined) {
      printed = this.#asPrinted(plainLine(line))
      this.#printed.set(line, printed)
    }
    return printed
  }

  #asPrinted(plain: string): string {
    const { text, missing } = this.typeface.writable(plain)
    if (missing.length === 0) return text
    this.#lost.set(plain, missing)
    return /[\p{L}\p{N}]/u.test(text) ? text : UNPRINTABLE
  }

  /** One sentence for each line that is not printed as it was written. */
  get cautions(): string[] {
    return [...this.#lost].map(([line, missing]) => {
      const shown = missing.slice(0, 8).join(' ')
      const more = missing.length > 8 ? ' and others' : ''
      return `"${line}" cannot be printed as it is written: the letters of the sheets (Latin, Greek, Cyrillic and the signs of the trade) have no ${shown}${more}. They are left out on paper.`
    })
  }

  /**
   * Writes a line, smaller or cut with an ellipsis where it is wider than its room.
   *
   * @param size the em wanted, mm
   * @param room mm
   * @returns the width it came out at, mm
   */
  write(ink: Ink, at: Point, size: number, line: string, room: number, look: Lettering = {}): number {
    let text = this.printable(line)
    if (text === '') return 0
    let width = this.typeface.width(text, size)
    let fitted = size
    if (width > room) {
      fitted = Math.max(Math.min(SMALLEST, size), (size * room) / width)
      const signs = [...text]
      while (signs.length > 1 && this.typeface.width(`${signs.join('')}…`, fitted) > room + 1e-6) {
        if (this.typeface.width(signs.join(''), fitted) <= room + 1e-6) break
        signs.pop()
      }
      if (signs.length < [...text].length) text = `${signs.join('').trimEnd()}…`
      width = this.typeface.width(text, fitted)
    }
    ink.words(at, fitted, text, look)
    return width
  }
}
