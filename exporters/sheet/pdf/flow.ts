/** A text that flows over pages: what is drawn asks for room, and gets a new page where there is none. */
import { type Point, unbroken } from '../../../geometry/index.ts'
import { type PaperSize, POINTS } from '../../pdf/bind.ts'
import type { SetLine } from '../../pdf/font/typeface.ts'
import { FAINT, INK, Ink } from '../../pdf/ink.ts'
import type { Wording } from '../../pdf/words.ts'
import { plainLine } from '../../words/plain.ts'

/** White edge, mm: more than any usual printer leaves. */
const EDGE = 15
/** Height of the foot line over the lower edge. */
const FOOT = 8

/** Longest paragraph, and how much of it is looked at in one go. */
const LONGEST = 20_000
const MOST_AT_ONCE = 200

/** Distance of lines in ems. */
export const LEADING = 1.38

const RULE = { colour: INK, width: 0.13 } as const

export class Flow {
  readonly wording: Wording
  readonly used = new Set<SetLine>()
  readonly #size: PaperSize
  readonly #foot: string
  readonly #inks: Ink[] = []
  /** Where the next thing goes: the upper edge that is still free, from the lower edge of the paper. */
  #y = 0

  constructor(wording: Wording, size: PaperSize, foot: string) {
    this.wording = wording
    this.#size = size
    this.#foot = foot
    this.newPage()
  }

  get left(): number {
    return EDGE
  }

  get width(): number {
    return this.#size.width - 2 * EDGE
  }

  /** The tallest thing that a page holds. */
  get tallest(): number {
    return this.#size.height - 2 * EDGE
  }

  get y(): number {
    return this.#y
  }

  get ink(): Ink {
    const ink = this.#inks.at(-1)
    if (!ink) throw new Error('a flow has a page from the start')
    return ink
  }

  newPage(): void {
    this.#inks.push(new Ink(this.wording.typeface, this.used))
    this.#y = this.#size.height - EDGE
  }

  /** `true` where the page ends before `height`, and a new one was begun. Nothing higher than a page may be asked for. */
  need(height: number): boolean {
    if (this.#y - height >= EDGE + 1 || this.#y >= this.#size.height - EDGE) return false
    this.newPage()
    return true
  }

  down(by: number): void {
    this.#y -= by
  }

  /** A line of words at the cursor, which moves below it. */
  line(text: string, size: number, look: { readonly indent?: number; readonly faint?: boolean } = {}): void {
    const { indent = 0, faint = false } = look
    this.need(size * LEADING)
    this.down(size * LEADING)
    const at: Point = { x: this.left + indent, y: this.#y + size * 0.36 }
    const printable = this.wording.printable(text)
    if (printable !== '') this.ink.words(at, size, printable, { colour: faint ? FAINT : INK })
  }

  /** A paragraph, broken at spaces. Its lines are kept together where they are few. */
  paragraph(
    text: string,
    size: number,
    look: { readonly indent?: number; readonly faint?: boolean; readonly width?: number } = {},
  ): void {
    const { indent = 0, width = this.width - indent } = look
    const lines = this.broken(text, size, width)
    this.need(Math.min(lines.length, 4) * size * LEADING)
    for (const line of lines) this.line(line, size, look)
  }

  /** A text in lines no wider than `width`, mm. A word wider than that is broken where it must. */
  broken(text: string, size: number, width: number): string[] {
    const { typeface } = this.wording
    const lines: string[] = []
    const space = typeface.width(' ', size)
    let line = ''
    // Letters stand side by side, so a line is as wide as its words and the spaces between them.
    let wide = 0
    for (const word of unbroken(this.#printable(text)).split(' ')) {
      for (const piece of this.#pieces(word.replaceAll('\u00a0', ' '), size, width)) {
        const own = typeface.width(piece, size)
        if (line !== '' && wide + space + own <= width) {
          line = `${line} ${piece}`
          wide += space + own
        } else {
          if (line !== '') lines.push(line)
          line = piece
          wide = own
        }
      }
    }
    return line === '' ? lines : [...lines, line]
  }

  /** A text of any length as it can be printed: a line of a drawing is cut where it is long, a paragraph is not. */
  #printable(text: string): string {
    const pieces: string[] = []
    let piece = ''
    for (const word of plainLine(text, LONGEST).split(' ')) {
      if (piece !== '' && piece.length + word.length > MOST_AT_ONCE) {
        pieces.push(piece)
        piece = ''
      }
      piece = piece === '' ? word : `${piece} ${word}`
    }
    return [...pieces, piece].map((one) => this.wording.printable(one)).join(' ')
  }

  #pieces(word: string, size: number, width: number): string[] {
    const { typeface } = this.wording
    if (typeface.width(word, size) <= width) return [word]
    const pieces: string[] = []
    let piece = ''
    for (const sign of word) {
      if (piece !== '' && typeface.width(piece + sign, size) > width) {
        pieces.push(piece)
        piece = ''
      }
      piece += sign
    }
    return piece === '' ? pieces : [...pieces, piece]
  }

  /** A level line over the whole width at the cursor. */
  rule(width: number = RULE.width): void {
    const [from, to] = [
      { x: this.left, y: this.#y },
      { x: this.left + this.width, y: this.#y },
    ]
    this.ink.lines([[from, to]], { colour: INK, width })
  }

  /** The content of every page, foot and number on each. */
  finished(): string[] {
    const { height } = this.#size
    return this.#inks.map((ink, index) => {
      const size = 2.8
      const number = `${index + 1} / ${this.#inks.length}`
      const foot = this.wording.printable(this.#foot)
      const y = Math.min(FOOT, height)
      ink.words({ x: this.left, y }, size, foot, { colour: FAINT })
      ink.words({ x: this.left + this.width, y }, size, number, { colour: FAINT, anchor: 'end' })
      const page = new Ink(this.wording.typeface, this.used)
      page.within({ scale: { x: POINTS, y: POINTS } }, () => page.raw(ink.content))
      return page.content
    })
  }
}
