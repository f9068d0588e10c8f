/** A face of the box with its dimensions, from the edges a tape can be hooked on. */
import {
  type Bounds,
  bounds,
  type Face,
  flipOf,
  formatLength,
  type Layout,
  type Operation,
  type Part,
  type Placed,
  type Point,
} from '../../../geometry/index.ts'
import { type Dimension, dimensions } from './dimensions.ts'
import {
  PICTURE_HEIGHT,
  PICTURE_WIDTH,
  type Picture,
  type Shape,
  scaled,
  scaleFor,
  segment,
  shifted,
  stroke,
  words,
} from './picture.ts'

/** More dimensions than these on one side are told in the table of places alone. */
const MOST_ALONG = 8
const MOST_ACROSS = 7

/** Room for dimensions: what rows take below or beside a part, and figures behind the edge. */
const ROOM_BELOW = 62
const ROOM_RIGHT = 54
const ROOM_LEFT = 16
const ROOM_ABOVE = 13

/** Nearer than this two lines are dimensioned as one, mm. */
const ONE_LINE = 0.05

/** A face with what stands on it, lettered. */
export interface Lettered {
  readonly placed: Placed
  readonly letter: string
}

/** What is dimensioned of one operation on the sheet: lines across x and y. */
function linesOf(operation: Operation, outline: Bounds): { x: number[]; y: number[] } {
  switch (operation.kind) {
    case 'drill':
      return { x: [operation.centre.x], y: [operation.centre.y] }
    case 'cut':
    case 'recess': {
      const at = bounds(operation.contour)
      const [left, right] = [at.minX < outline.minX, at.maxX > outline.maxX]
      const [low, high] = [at.minY < outline.minY, at.maxY > outline.maxY]
      // What opens at an edge is dimensioned by its sides, what lies inside by its middle.
      if (!(left || right || low || high))
        return { x: [(at.minX + at.maxX) / 2], y: [(at.minY + at.maxY) / 2] }
      return {
        x: [...(left ? [] : [at.minX]), ...(right ? [] : [at.maxX])],
        y: [...(low ? [] : [at.minY]), ...(high ? [] : [at.maxY])],
      }
    }
    case 'mark': {
      const at = bounds(operation.contour)
      return {
        x: at.maxX - at.minX < ONE_LINE ? [at.minX] : [],
        y: at.maxY - at.minY < ONE_LINE ? [at.minY] : [],
      }
    }
    default:
      return { x: [], y: [] }
  }
}

/** Each line once; more than `most` are thinned out by leaving away the smallest features, which come last. */
function distinct(values: readonly number[], most: number): number[] {
  const kept: number[] = []
  for (const value of values)
    if (kept.length < most && kept.every((one) => Math.abs(one - value) > ONE_LINE)) kept.push(value)
  return kept
}

/** How much of the face an operation takes: the large is dimensioned before the small. */
function sizeOf(operation: Operation): number {
  if (operation.kind === 'drill') return operation.diameter
  if (operation.kind === 'mark') return Number.POSITIVE_INFINITY
  if (operation.kind !== 'cut' && operation.kind !== 'recess') return 0
  const at = bounds(operation.contour)
  return Math.max(at.maxX - at.minX, at.maxY - at.minY)
}

const LOOKS: Partial<Record<Operation['kind'], 'outline' | 'hidden' | 'centre' | 'thin'>> = {
  cut: 'outline',
  recess: 'thin',
  mark: 'outline',
  datum: 'centre',
}

function drawn(operation: Operation, scale: number): Shape[] {
  switch (operation.kind) {
    case 'drill': {
      const { centre, diameter } = operation
      const at = { x: centre.x / scale, y: centre.y / scale }
      const arm = diameter / 2 / scale + 1
      return [
        stroke({ shape: 'circle', centre: at, radius: diameter / 2 / scale }, 'outline', 'paper'),
        segment({ x: at.x - arm, y: at.y }, { x: at.x + arm, y: at.y }, 'thin'),
        segment({ x: at.x, y: at.y - arm }, { x: at.x, y: at.y + arm }, 'thin'),
      ]
    }
    case 'cut':
    case 'recess':
    case 'mark': {
      const look = LOOKS[operation.kind] ?? 'thin'
      return [
        stroke(scaled(operation.contour, 1 / scale, 0, 0), look, operation.kind === 'cut' ? 'paper' : 'none'),
      ]
    }
    case 'datum':
      return /^(String|Centreline)/.test(operation.of)
        ? [stroke(scaled(operation.line, 1 / scale, 0, 0), operation.of === 'Centreline' ? 'centre' : 'thin')]
        : [stroke(scaled(operation.line, 1 / scale, 0, 0), 'hidden')]
    default:
      return []
  }
}

/** Recesses below openings, so that a step shows its hole. */
const ORDER: readonly Operation['kind'][] = ['datum', 'recess', 'cut', 'slot', 'mark', 'drill', 'note']

/** A letter beside each thing: in it where there is room, else at its upper right. */
function letters(things: readonly Lettered[], at: (placed: Placed) => Point, scale: number): Shape[] {
  return things.map(({ placed, letter }) => {
    const middle = at(placed)
    const half =
      (Math.min(placed.bounds.maxX - placed.bounds.minX, placed.bounds.maxY - placed.bounds.minY) /
        2 /
        scale) *
      0.7
    const off = half > 3.5 ? 1 : half + 1.2
    return words({ x: middle.x + off, y: middle.y + off }, letter, { bold: true })
  })
}

/** Where a thing's centre lies on the sheet of its face. */
function onSheet({ face, at }: Placed, up: Layout['up']): Point {
  const flip = flipOf(face as Face, up)
  return { x: flip === 'x' ? -at.x : at.x, y: flip === 'y' ? -at.y : at.y }
}

/**
 * A face as it is seen from outside, with the distances of everything on it from the edge at the head (on an end wall,
 * from its left edge) and from the lid-side edge, or on lid and base from the lower edge. Never throws for a part of a
 * valid design.
 */
export function facePicture(layout: Layout, part: Part, things: readonly Lettered[]): Picture {
  const { units } = layout.design
  const outline = bounds(part.outline)
  const long = outline.maxX - outline.minX
  const tall = outline.maxY - outline.minY
  const scale = Math.max(
    scaleFor(long, PICTURE_WIDTH - ROOM_LEFT - ROOM_RIGHT),
    scaleFor(tall, PICTURE_HEIGHT - ROOM_BELOW - ROOM_ABOVE),
  )
  const paper: Bounds = {
    minX: outline.minX / scale,
    maxX: outline.maxX / scale,
    minY: outline.minY / scale,
    maxY: outline.maxY / scale,
  }
  const worked = [...part.operations].sort((a, b) => sizeOf(b) - sizeOf(a))
  const found = worked.map((one) => linesOf(one, outline))
  const wall = part.id.endsWith('wall')
  const fromRight = part.headEnd === 'right'
  const datumX = fromRight ? outline.maxX : outline.minX
  const datumY = wall ? outline.maxY : outline.minY
  const say = (from: number, to: number) => formatLength(Math.abs(to - from), units)
  const dims = (values: readonly number[], datum: number, end: number, most: number): Dimension[] =>
    [
      ...distinct(
        values.filter((one) => Math.abs(one - end) > ONE_LINE),
        most - 1,
      ),
      end,
    ].map((one) => ({
      at: one / scale,
      text: say(datum, one),
    }))
  const count = (values: readonly number[]) => distinct(values, Number.POSITIVE_INFINITY).length
  const thinned =
    count(found.flatMap(({ x }) => x)) > MOST_ALONG - 1 ||
    count(found.flatMap(({ y }) => y)) > MOST_ACROSS - 1
  const endX = fromRight ? outline.minX : outline.maxX
  const endY = wall ? outline.minY : outline.maxY
  const along = dimensions(
    paper,
    'below',
    datumX / scale,
    dims(
      found.flatMap(({ x }) => x),
      datumX,
      endX,
      MOST_ALONG,
    ),
  )
  const across = dimensions(
    paper,
    'right',
    datumY / scale,
    dims(
      found.flatMap(({ y }) => y),
      datumY,
      endY,
      MOST_ACROSS,
    ),
  )
  const shapes = [
    stroke(scaled(part.outline, 1 / scale, 0, 0), 'outline', 'wood'),
    ...[...part.operations]
      .sort((a, b) => ORDER.indexOf(a.kind) - ORDER.indexOf(b.kind))
      .flatMap((one) => drawn(one, scale)),
    ...along.shapes,
    ...across.shapes,
    ...letters(
      things,
      (placed) => {
        const { x, y } = onSheet(placed, layout.up)
        return { x: x / scale, y: y / scale }
      },
      scale,
    ),
  ]
  const left = Math.max(fromRight ? 2 : along.before, 2) + 1
  const right = Math.max(across.reach, fromRight ? along.before : 0) + 6
  const below = Math.max(along.reach, wall ? 0 : across.before) + 1
  const above = Math.max(wall ? across.before : 0, 2) + 1
  const edge = fromRight ? 'right-hand' : 'left-hand'
  return {
    id: part.id,
    title: part.title,
    description: `${part.title}, seen ${part.seen}, with distances from its ${edge} edge and its ${wall ? 'lid-side' : 'lower'} edge.`,
    width: paper.maxX - paper.minX + left + right,
    height: paper.maxY - paper.minY + above + below,
    shapes: shifted(shapes, left - paper.minX, below - paper.minY),
    caption: `Seen ${part.seen}${headWords(part)}. Drawn 1 : ${scale}, dimensions in ${units.display === 'mm' ? 'mm' : 'inches'}.${thinned ? ' There was no room for every distance: the tables have them all.' : ''}`,
  }
}

function headWords({ headEnd }: Part): string {
  if (headEnd === 'left' || headEnd === 'right') return `, the head to the ${headEnd}`
  return headEnd === 'top' ? ', the head at the top' : `, the head ${headEnd}`
}
