/**
 * Letters of single strokes, drawn on a grid of our own, for pens, engravers and whatever else has no fonts.
 *
 * Each letter is a list of strokes, each stroke a list of points of two digits: x from 0, and y with the baseline at
 * 2 and capitals up to 8. Only ASCII has letters; what else can be spelled plainly is, as on a DXF.
 */
import { type Chain, line, type Point } from '../../geometry/index.ts'
import type { Words } from '../drawing/drawing.ts'
import { plainAscii } from '../dxf/dxfWords.ts'

/** Heights of the grid, in its own steps. */
const BASELINE = 2
const CAPITALS = 6

/** Free space between letters, and the width of a blank, in steps of the grid. */
const GAP = 2
const BLANK = 3

const GLYPHS: Readonly<Record<string, string>> = {
  '!': '0804 0302',
  '"': '0806 2826',
  '#': '1713 3733 0646 0444',
  $: '473818070615354443321203 2921',
  '%': '0248 0818170708 3343423233',
  '&': '420617182837260403122244',
  "'": '0806',
  '(': '18060412',
  ')': '08161402',
  '*': '2723 0644 0446',
  '+': '2723 0545',
  ',': '121100',
  '-': '0535',
  '.': '0203',
  '/': '0248',
  '0': '183847433212030718',
  '1': '071812',
  '2': '0718384746020242',
  '3': '07183847463515 354443321203',
  '4': '32380444',
  '5': '4808053544433212',
  '6': '4738180703123243443505',
  '7': '084812',
  '8': '183847463515060718 1504031232434435',
  '9': '031232434738180706153546',
  ':': '0605 0302',
  ';': '1615 121100',
  '<': '370533',
  '=': '0646 0444',
  '>': '073503',
  '?': '0718384746252423 2221',
  '@': '4212030718384744 4434243545',
  A: '022842 0444',
  B: '02083847463505 3544433202',
  C: '4738180703123243',
  D: '02082846442202',
  E: '48080242 0535',
  F: '480802 0535',
  G: '47381807031232434525',
  H: '0208 4248 0545',
  I: '0222 1218 0828',
  J: '0312324348',
  K: '0208 480542',
  L: '080242',
  M: '0208254842',
  N: '02084248',
  O: '183847433212030718',
  P: '02083847463505',
  Q: '183847433212030718 2442',
  R: '02083847463505 2542',
  S: '473818070615354443321203',
  T: '0848 2822',
  U: '080312324348',
  V: '082248',
  W: '0812243248',
  X: '0248 0842',
  Y: '082548 2522',
  Z: '08480242',
  '[': '18080212',
  '\\': '0842',
  ']': '08181202',
  '^': '062846',
  _: '0141',
  '`': '0817',
  a: '3632 35260503122233',
  b: '08020516263533221203',
  c: '3526160503122233',
  d: '3832 35260503122233',
  e: '04343526160503122233',
  f: '281712 0626',
  g: '36312010 35260503122233',
  h: '0802 0516263532',
  i: '0602 0708',
  j: '161100 1718',
  k: '0802 360432',
  l: '080312',
  m: '0602 05162522 25364542',
  n: '0602 0516263532',
  o: '162635332212030516',
  p: '0600 0516263533221203',
  q: '3630 35260503122233',
  r: '0602 051626',
  s: '35261605142433221203',
  t: '18131222 0626',
  u: '0603122233 3632',
  v: '062246',
  w: '0612243246',
  x: '0642 0246',
  y: '0622 4600',
  z: '06360232',
  '{': '2817161504131222',
  '|': '0800',
  '}': '0817161524131202',
  '~': '05162536',
}

interface Glyph {
  readonly strokes: readonly (readonly Point[])[]
  readonly width: number
}

const EMPTY: Glyph = { strokes: [], width: BLANK }

const known = new Map<string, Glyph>()

function glyphOf(character: string): Glyph {
  const before = known.get(character)
  if (before !== undefined) return before
  const drawn = GLYPHS[character]
  const glyph = drawn === undefined ? EMPTY : read(drawn)
  known.set(character, glyph)
  return glyph
}

function read(drawn: string): Glyph {
  let width = 0
  const strokes = drawn.split(' ').map((stroke) => {
    const points: Point[] = []
    for (let index = 0; index + 1 < stroke.length; index += 2) {
      const x = Number(stroke[index])
      points.push({ x, y: Number(stroke[index + 1]) - BASELINE })
      width = Math.max(width, x)
    }
    return points
  })
  return { strokes, width }
}

/** Width of a line in single strokes, mm, for capitals of `height` mm. */
export function strokesWidth(text: string, height: number): number {
  const wide = [...plainAscii(text)].reduce((sum, one) => sum + glyphOf(one).width + GAP, -GAP)
  return (Math.max(0, wide) * height) / CAPITALS
}

/**
 * A line of words as open chains of single strokes, in the frame of the words themselves: `at` is the left end of the
 * baseline, `height` that of the capitals.
 *
 * @param words lengths in mm, `turn` in radians counter-clockwise with y up
 * @param room mm that the line may be long; it is drawn narrower where it would be longer
 * @example strokesOf({ at: { x: 0, y: 0 }, height: 3, turn: 0, text: 'L' })[0].vertices.length // 3
 */
export function strokesOf({ at, height, turn, text }: Words, room = Number.POSITIVE_INFINITY): Chain[] {
  const scale = height / CAPITALS
  const narrowed = scale * Math.min(1, room / Math.max(strokesWidth(text, height), 1e-9))
  const [cosine, sine] = [Math.cos(turn), Math.sin(turn)]
  const chains: Chain[] = []
  let pen = 0
  for (const character of plainAscii(text)) {
    const { strokes, width } = glyphOf(character)
    for (const points of strokes) {
      const vertices = points.map(({ x, y }) => {
        const [along, up] = [(pen + x) * narrowed, y * scale]
        return { x: at.x + along * cosine - up * sine, y: at.y + along * sine + up * cosine, bulge: 0 }
      })
      const [first, second] = vertices
      if (first === undefined || second === undefined) continue
      chains.push(vertices.length === 2 ? line(first, second) : { shape: 'chain', closed: false, vertices })
    }
    pen += width + GAP
  }
  return chains
}
