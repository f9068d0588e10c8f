/**
 * How sheets of one part meet: where each is cut, what is glued on, and the marks that lie on one another.
 *
 * A sheet is cut along its left and lower edge where it has a neighbour there, and laid on the flap of that
 * neighbour. A mark is a cross in a small circle in the middle of the flap, which both sheets carry; one arm
 * reaches over the seam and can be seen running on when the sheets lie together.
 */
import type { Bounds, Point } from '../../geometry/index.ts'
import { FAINT, type Ink } from './ink.ts'
import { letterOf, type PartSheets, type Tile } from './plan.ts'
import type { Span } from './seams.ts'

const CUT = { colour: '#000000', width: 0.15 }
const EDGE_OF_NEXT = { colour: FAINT, width: 0.12, dashes: [2, 1.2] }
const MARK = { colour: '#000000', width: 0.12 }

/** Half the arm of a cross, radius of the circle round it, mm. */
const ARM = 4
const RING = 1.5
const LETTER = 2.8
const FLAP_WORDS = 2

/** From the end of a seam to its mark, mm. */
const INSET = 9

/** A place where two sheets meet: the seam runs along the other axis, the flap reaches `overlap` behind it. */
export interface JoinMark {
  readonly name: string
  readonly centre: Point
  /** Axis across the seam. */
  readonly across: 'x' | 'y'
  readonly seam: number
}

/** Two places along a seam, near its ends, and clear of the marks of the seams that cross it there. */
function twoPlaces({ from, to }: Span, overlap: number, crossed: readonly [start: boolean, end: boolean]) {
  const inset = (isCrossed: boolean) => Math.min(isCrossed ? overlap + INSET : INSET, (to - from) / 4)
  return [from + inset(crossed[0]), to - inset(crossed[1])]
}

/**
 * Every joining mark of a part, in its own coordinates, mm. Each lies wholly inside what both sheets show.
 *
 * @returns marks by rows from the top, then columns; their names are letters, each used once in a part
 */
export function joinMarks({ columns, rows }: PartSheets, overlap: number): JoinMark[] {
  const found: Omit<JoinMark, 'name'>[] = []
  for (const [rowIndex, row] of rows.entries()) {
    for (const column of columns.slice(1)) {
      for (const y of twoPlaces(row, overlap, [rowIndex < rows.length - 1, rowIndex > 0]))
        found.push({ centre: { x: column.from + overlap / 2, y }, across: 'x', seam: column.from })
    }
    // Rows run from the top; this one's lower edge is laid on the flap of the row below.
    if (rowIndex === rows.length - 1) continue
    for (const [index, column] of columns.entries()) {
      for (const x of twoPlaces(column, overlap, [index > 0, index < columns.length - 1]))
        found.push({ centre: { x, y: row.from + overlap / 2 }, across: 'y', seam: row.from })
    }
  }
  return found.map((mark, index) => ({ ...mark, name: letterOf(index).toLowerCase() }))
}

const holds = (box: Bounds, { x, y }: Point) => x > box.minX && x < box.maxX && y > box.minY && y < box.maxY

function drawMark(ink: Ink, { name, centre: { x, y }, across, seam }: JoinMark): void {
  const reach = across === 'x' ? x - seam + ARM : y - seam + ARM
  ink.lines(
    across === 'x'
      ? [
          [
            { x: x - reach, y },
            { x: x + ARM, y },
          ],
          [
            { x, y: y - ARM },
            { x, y: y + ARM },
          ],
        ]
      : [
          [
            { x: x - ARM, y },
            { x: x + ARM, y },
          ],
          [
            { x, y: y - reach },
            { x, y: y + ARM },
          ],
        ],
    MARK,
  )
  ink.contours([{ shape: 'circle', centre: { x, y }, radius: RING }], MARK)
  ink.words({ x: x + 1.6, y: y + 1.6 }, LETTER, name)
  // And on the side of the seam that stays in sight.
  const beside = across === 'x' ? { x: seam - 3.4, y: y + 0.9 } : { x: x + 0.9, y: seam - 3.2 }
  ink.words(beside, LETTER, name)
}

/**
 * Marks, edges of the next sheets and corners to cut away, in the part's own coordinates. Clip to the tile.
 *
 * @param marks all of the part, from `joinMarks`
 */
export function drawJoins(
  ink: Ink,
  sheets: PartSheets,
  tile: Tile,
  overlap: number,
  marks: readonly JoinMark[],
): void {
  const { shown } = tile
  const right = sheets.columns[tile.column + 1]
  const above = sheets.rows[tile.row - 1]
  const edges: [Point, Point][] = []
  if (right)
    edges.push([
      { x: right.from, y: shown.minY },
      { x: right.from, y: shown.maxY },
    ])
  if (above)
    edges.push([
      { x: shown.minX, y: above.from },
      { x: shown.maxX, y: above.from },
    ])
  ink.lines(edges, EDGE_OF_NEXT)
  const nameAt = (row: number, column: number) =>
    sheets.tiles.find((one) => one.row === row && one.column === column)?.name ?? ''
  if (right) {
    const words = `${nameAt(tile.row, tile.column + 1)} is glued on from here`
    ink.words({ x: right.from - 1, y: shown.minY + 1.5 }, FLAP_WORDS, words, { anchor: 'end', colour: FAINT })
  }
  if (above) {
    const words = `${nameAt(tile.row - 1, tile.column)} is glued on from here`
    const middle = (shown.minX + shown.maxX) / 2
    ink.words({ x: middle, y: above.from - 2.6 }, FLAP_WORDS, words, { anchor: 'middle', colour: FAINT })
  }
  if (right && above) {
    // Four sheets would lie on one another here.
    const [from, to] = [
      { x: shown.maxX - overlap, y: shown.maxY },
      { x: shown.maxX, y: shown.maxY - overlap },
    ]
    ink.lines([[from, to]], { ...CUT, dashes: [1, 0.8] })
  }
  for (const mark of marks) if (holds(shown, mark.centre)) drawMark(ink, mark)
}

/** The edges along which this sheet is cut, over the border of the tile, in its place on the paper. */
export function drawCutEdges(ink: Ink, sheets: PartSheets, tile: Tile, box: Bounds): void {
  const pairs: [Point, Point][] = []
  if (tile.column > 0) {
    pairs.push([
      { x: box.minX, y: box.minY },
      { x: box.minX, y: box.maxY },
    ])
    ink.words({ x: box.minX - 1.25, y: box.maxY + 3.6 }, 3.4, '✂', { turn: -Math.PI / 2 })
  }
  if (tile.row < sheets.rows.length - 1) {
    pairs.push([
      { x: box.minX, y: box.minY },
      { x: box.maxX, y: box.minY },
    ])
    ink.words({ x: box.minX - 3.6, y: box.minY - 1.25 }, 3.4, '✂')
  }
  ink.lines(pairs, CUT)
}

/** What is done with a sheet, in words. */
export function joinLine(sheets: PartSheets, tile: Tile): string {
  const { columns, rows, tiles } = sheets
  if (tiles.length === 1) return 'the whole part is on this sheet: cut nothing before the bars are measured'
  const name = (row: number, column: number) =>
    tiles.find((one) => one.row === row && one.column === column)?.name
  const laid = [
    ...(tile.column > 0 ? [`left edge, lay it on the flap of ${name(tile.row, tile.column - 1)}`] : []),
    ...(tile.row < rows.length - 1
      ? [`lower edge, lay it on the flap of ${name(tile.row + 1, tile.column)}`]
      : []),
  ]
  const flaps = [...(tile.column < columns.length - 1 ? ['right'] : []), ...(tile.row > 0 ? ['upper'] : [])]
  const cut =
    laid.length > 0 ? `cut along the ${laid.join('; along the ')}: letter on letter, cross on cross` : ''
  const kept = flaps.length > 0 ? `keep the ${flaps.join(' and ')} flap to glue on` : ''
  const corner = flaps.length === 2 ? 'cut its corner away at the slant' : ''
  const line = columns.length > 1 ? 'the long line through all sheets is to fold or join on' : ''
  return [cut, kept, corner, line].filter((text) => text !== '').join('; ')
}
