/**
 * The words of SVG path data: letters and numbers, nothing else. Grammar after W3C SVG 2, "Path Data".
 */
import type { Point } from '../plane/index.ts'
import { printable } from '../quantity/printable.ts'

export type Segment =
  | { readonly kind: 'line'; readonly to: Point }
  | { readonly kind: 'cubic'; readonly c1: Point; readonly c2: Point; readonly to: Point }
  | {
      readonly kind: 'arc'
      readonly rx: number
      readonly ry: number
      /** Degrees, as the path says it. */
      readonly turn: number
      readonly large: boolean
      readonly sweep: boolean
      readonly to: Point
    }

export interface Subpath {
  readonly from: Point
  readonly segments: readonly Segment[]
  /** Ended with Z. */
  readonly closed: boolean
}

export type PathReading =
  | { readonly ok: true; readonly subpaths: readonly Subpath[] }
  | { readonly ok: false; readonly sentence: string }

/** More segments than these are refused: no curve for a saw has as many. */
export const MOST_SEGMENTS = 20000

const NUMBER = /[+-]?(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d+)?/y
const BETWEEN = /[\s,]*/y
const COUNTS: Readonly<Record<string, number>> = {
  M: 2,
  L: 2,
  H: 1,
  V: 1,
  C: 6,
  S: 4,
  Q: 4,
  T: 2,
  A: 7,
  Z: 0,
}

class Unread extends Error {}

/**
 * Reads path data into lines, cubic curves and elliptical arcs, in absolute places, y as the path has it (down).
 * Quadratic curves become cubic ones. A sentence where something else than letters and numbers stands in it.
 *
 * @example readPathData('M 0 0 L 10 0 L 0 10 Z') // one closed subpath of two lines
 */
export function readPathData(text: string): PathReading {
  try {
    return { ok: true, subpaths: new Reader(text).read() }
  } catch (error) {
    if (error instanceof Unread) return { ok: false, sentence: error.message }
    throw error
  }
}

class Reader {
  private at = 0
  private here: Point = { x: 0, y: 0 }
  private start: Point = { x: 0, y: 0 }
  /** The second handle of the curve before, for curves that go on smoothly. */
  private cubicHandle: Point | null = null
  private quadHandle: Point | null = null
  private segments: Segment[] = []
  private count = 0
  private readonly subpaths: Subpath[] = []

  constructor(private readonly text: string) {}

  read(): Subpath[] {
    this.skip()
    let letter = this.letter()
    if (letter === null || letter.toUpperCase() !== 'M')
      throw new Unread(
        `A path begins with M and a place; read “${printable(this.text.slice(0, 20).replace(/\s+/g, ' '))}”.`,
      )
    while (letter !== null) {
      this.command(letter)
      this.skip()
      if (this.at >= this.text.length) break
      const next = this.letter()
      if (next === null) throw this.unexpected()
      letter = next
    }
    this.end(false)
    return this.subpaths
  }

  private letter(): string | null {
    const one = this.text[this.at]
    if (one === undefined || !Object.hasOwn(COUNTS, one.toUpperCase())) return null
    this.at += 1
    return one
  }

  private unexpected(): Unread {
    const found = this.text[this.at]
    return new Unread(
      found === undefined
        ? 'The path ends in the middle of a place. It may be cut off.'
        : `At character ${this.at + 1} of the path stands ${JSON.stringify(printable(found))}; a letter of a path or a number is wanted.`,
    )
  }

  private skip(): void {
    BETWEEN.lastIndex = this.at
    BETWEEN.exec(this.text)
    this.at = BETWEEN.lastIndex
  }

  private startsNumber(): boolean {
    return /[-+.\d]/.test(this.text[this.at] ?? '')
  }

  private number(): number {
    this.skip()
    NUMBER.lastIndex = this.at
    const found = NUMBER.exec(this.text)
    if (!found) throw this.unexpected()
    this.at = NUMBER.lastIndex
    const value = Number(found[0])
    if (!Number.isFinite(value) || Math.abs(value) > 1e7)
      throw new Unread(`The path holds ${found[0]}, which is no place on a face.`)
    return value
  }

  /** The flags of an arc may stand without anything between them. */
  private flag(): boolean {
    this.skip()
    const one = this.text[this.at]
    if (one !== '0' && one !== '1') throw this.unexpected()
    this.at += 1
    return one === '1'
  }

  private command(letter: string): void {
    const absolute = letter === letter.toUpperCase()
    let kind = letter.toUpperCase()
    if (kind === 'Z') {
      this.end(true)
      return
    }
    do {
      this.one(kind, absolute)
      // More places after a first M are lines.
      if (kind === 'M') kind = 'L'
      this.skip()
    } while (this.startsNumber())
  }

  private place(absolute: boolean): Point {
    const x = this.number()
    const y = this.number()
    return absolute ? { x, y } : { x: this.here.x + x, y: this.here.y + y }
  }

  private one(kind: string, absolute: boolean): void {
    const { here } = this
    switch (kind) {
      case 'M':
        this.end(false)
        this.here = this.place(absolute)
        this.start = this.here
        break
      case 'L':
        this.add({ kind: 'line', to: this.place(absolute) })
        break
      case 'H':
        this.add({ kind: 'line', to: { x: this.number() + (absolute ? 0 : here.x), y: here.y } })
        break
      case 'V':
        this.add({ kind: 'line', to: { x: here.x, y: this.number() + (absolute ? 0 : here.y) } })
        break
      case 'C':
        this.cubic(this.place(absolute), this.place(absolute), this.place(absolute))
        break
      case 'S':
        this.cubic(this.beyond(this.cubicHandle), this.place(absolute), this.place(absolute))
        break
      case 'Q':
        this.quadratic(this.place(absolute), this.place(absolute))
        break
      case 'T':
        this.quadratic(this.beyond(this.quadHandle), this.place(absolute))
        break
      default: {
        const [rx, ry, turn] = [Math.abs(this.number()), Math.abs(this.number()), this.number()]
        const [large, sweep] = [this.flag(), this.flag()]
        this.add({ kind: 'arc', rx, ry, turn, large, sweep, to: this.place(absolute) })
        break
      }
    }
  }

  /** The handle before, mirrored in the place it led to. */
  private beyond(handle: Point | null): Point {
    const { here } = this
    return handle ? { x: 2 * here.x - handle.x, y: 2 * here.y - handle.y } : here
  }

  private cubic(c1: Point, c2: Point, to: Point): void {
    this.add({ kind: 'cubic', c1, c2, to })
    this.cubicHandle = c2
  }

  private quadratic(c: Point, to: Point): void {
    const { here } = this
    const third = (from: Point): Point => ({
      x: from.x + (2 / 3) * (c.x - from.x),
      y: from.y + (2 / 3) * (c.y - from.y),
    })
    this.add({ kind: 'cubic', c1: third(here), c2: third(to), to })
    this.quadHandle = c
  }

  private add(segment: Segment): void {
    this.count += 1
    if (this.count > MOST_SEGMENTS)
      throw new Unread(`The path has more than ${MOST_SEGMENTS} segments. Draw it simpler.`)
    this.segments.push(segment)
    this.here = segment.to
    this.cubicHandle = null
    this.quadHandle = null
  }

  private end(closed: boolean): void {
    if (this.segments.length > 0) this.subpaths.push({ from: this.start, segments: this.segments, closed })
    this.segments = []
    this.here = this.start
  }
}
