/**
 * A part turned into layers of contours and words: what both writers write, decided once.
 *
 * Here each operation finds its layer, every contour is looked at, what would be drawn twice is dropped,
 * and the layers are put in the order in which wood is worked: nothing comes after the outline, because
 * a part that is cut loose no longer lies still.
 */
import {
  type Bounds,
  bounds,
  type Contour,
  type Operation,
  type Part,
  type Point,
} from '../../geometry/index.ts'
import { isWritable, refuse } from '../numbers.ts'
import { plainLine } from '../words/plain.ts'
import { CAPITAL_HEIGHT, DESCENT, textWidth } from '../words/width.ts'
import { LAYER_TABLE, type LayerLabel, type LengthUnit, layerOf } from './layers.ts'
import { contourKey, contourSum, soundContour } from './soundContour.ts'

/** A line of words; `at` is the left end of its baseline, `height` that of its capitals, mm; `turn` radians. */
export interface Words {
  readonly at: Point
  readonly height: number
  readonly turn: number
  readonly text: string
}

export interface Layer extends LayerLabel {
  readonly contours: readonly Contour[]
  readonly words: readonly Words[]
}

export interface Drawing {
  readonly part: Part
  /** Layers with something on them, the outline's last. */
  readonly layers: readonly Layer[]
  /** The box of the outline alone, mm. */
  readonly outline: Bounds
  /** The box of everything drawn, words included, mm. */
  readonly extent: Bounds
}

/** Capitals lower than this cannot be read on paper, mm. */
const SMALLEST_CAPITALS = 1.5

/** The box around several boxes. Throws if there are none. */
export function around(boxes: readonly Bounds[]): Bounds {
  if (boxes.length === 0) throw new Error('There is nothing to put a box around.')
  let minX = Number.POSITIVE_INFINITY
  let minY = Number.POSITIVE_INFINITY
  let maxX = Number.NEGATIVE_INFINITY
  let maxY = Number.NEGATIVE_INFINITY
  for (const box of boxes) {
    minX = Math.min(minX, box.minX)
    minY = Math.min(minY, box.minY)
    maxX = Math.max(maxX, box.maxX)
    maxY = Math.max(maxY, box.maxY)
  }
  return { minX, minY, maxX, maxY }
}

/** The box that a line of words may fill, by the upper estimate of its width. */
export function wordsBox({ at, height, turn, text }: Words): Bounds {
  const size = height / CAPITAL_HEIGHT
  const width = textWidth(text, size)
  const down = -DESCENT * size
  const cos = Math.cos(turn)
  const sin = Math.sin(turn)
  const x = at.x + width * cos
  const y = at.y + width * sin
  return {
    minX: Math.min(at.x, x) - Math.max(down * sin, height * sin),
    minY: Math.min(at.y, y) + Math.min(down * cos, height * cos),
    maxX: Math.max(at.x, x) - Math.min(down * sin, height * sin),
    maxY: Math.max(at.y, y) + Math.max(down * cos, height * cos),
  }
}

/** How far a line may run from `at` before it leaves the box; infinite where it starts outside. */
function roomFor(at: Point, turn: number, box: Bounds): number {
  if (at.x < box.minX || at.x > box.maxX || at.y < box.minY || at.y > box.maxY)
    return Number.POSITIVE_INFINITY
  const cos = Math.cos(turn)
  const sin = Math.sin(turn)
  const alongX = cos > 1e-9 ? (box.maxX - at.x) / cos : cos < -1e-9 ? (box.minX - at.x) / cos : Infinity
  const alongY = sin > 1e-9 ? (box.maxY - at.y) / sin : sin < -1e-9 ? (box.minY - at.y) / sin : Infinity
  return Math.min(alongX, alongY)
}

/** The words of a note, smaller where they would run out of the part they stand on. */
function wordsOf(note: Operation & { kind: 'note' }, outline: Bounds): Words | undefined {
  if (!isWritable(note.at.x)) refuse(note.at.x, `x of the note of ${note.of}`)
  if (!isWritable(note.at.y)) refuse(note.at.y, `y of the note of ${note.of}`)
  if (!isWritable(note.turn)) refuse(note.turn, `Turn of the note of ${note.of}`)
  if (!isWritable(note.height)) refuse(note.height, `Height of the note of ${note.of}`)
  if (!(note.height > 0))
    throw new RangeError(`Height of the note of ${note.of} is ${note.height}: letters need some.`)
  const text = plainLine(note.text)
  if (text === '') return undefined
  const wanted = textWidth(text, note.height / CAPITAL_HEIGHT)
  const room = roomFor(note.at, note.turn, outline)
  const least = Math.min(SMALLEST_CAPITALS, note.height)
  const height = wanted <= room ? note.height : Math.max(least, (note.height * room) / wanted)
  return { at: note.at, height, turn: note.turn, text }
}

/** The lines of an operation that is not a note, and whether they must close. */
function contourOf(operation: Exclude<Operation, { kind: 'note' }>): {
  contour: Contour
  mustClose: boolean
} {
  switch (operation.kind) {
    case 'cut':
    case 'recess':
      return { contour: operation.contour, mustClose: true }
    case 'drill':
      return {
        contour: { shape: 'circle', centre: operation.centre, radius: operation.diameter / 2 },
        mustClose: false,
      }
    case 'slot': {
      const vertices = [
        { ...operation.from, bulge: 0 },
        { ...operation.to, bulge: 0 },
      ]
      return { contour: { shape: 'chain', closed: false, vertices }, mustClose: false }
    }
    case 'mark':
      return { contour: operation.contour, mustClose: false }
    case 'datum':
      return { contour: operation.line, mustClose: false }
  }
}

const KIND_ORDER = new Map(LAYER_TABLE.map((style, index) => [style.kind, index]))

/** Compares layers by the order in which wood is worked: words first, outlines last. */
export function inWorkingOrder(a: LayerLabel, b: LayerLabel): number {
  const byKind = (KIND_ORDER.get(a.kind) ?? 0) - (KIND_ORDER.get(b.kind) ?? 0)
  return byKind !== 0 ? byKind : a.name < b.name ? -1 : a.name > b.name ? 1 : 0
}

/** A layer being filled. */
interface OpenLayer extends LayerLabel {
  /** The operation that opened it: the next of its kind and depth needs no look at names. */
  readonly first: Operation
  readonly contours: Contour[]
  /** Contours by their sums: only those of one sum can lie on one another. */
  readonly bySum: Map<number, Contour[]>
  readonly words: Words[]
}

/** Whether two operations are surely on one layer: of one kind, side, depth and width. */
function isSameWork(a: Operation, b: Operation): boolean {
  if (a.kind === 'cut' && b.kind === 'cut') return a.side === b.side
  if (a.kind === 'drill' && b.kind === 'drill') return a.depth === b.depth
  if (a.kind === 'recess' && b.kind === 'recess') return a.depth === b.depth
  if (a.kind === 'slot' && b.kind === 'slot') return a.depth === b.depth && a.width === b.width
  return a.kind === b.kind
}

function layerFor(operation: Operation, unit: LengthUnit, layers: OpenLayer[]): OpenLayer {
  for (const layer of layers) if (isSameWork(layer.first, operation)) return layer
  const label = layerOf(operation, unit)
  const named = layers.find((layer) => layer.name === label.name)
  if (named !== undefined) return named
  const opened = { ...label, first: operation, contours: [], bySum: new Map<number, Contour[]>(), words: [] }
  layers.push(opened)
  return opened
}

/** Adds a contour unless it lies on one that is there already. */
function addOnce({ contours, bySum }: OpenLayer, contour: Contour): void {
  const sum = contourSum(contour)
  const alike = bySum.get(sum)
  if (alike === undefined) bySum.set(sum, [contour])
  else {
    const key = contourKey(contour)
    if (alike.some((other) => contourKey(other) === key)) return
    alike.push(contour)
  }
  contours.push(contour)
}

/**
 * The layers of a part.
 *
 * @param part lengths in mm, y up, as seen from the face that `part.seen` names
 * @param unit the unit of the file, which shows in the names of layers that carry a depth
 * @returns layers in working order; a contour that lies on another of its layer (to 0.1 micrometre,
 *   wherever it starts and whichever way it runs) is left out
 * @throws when a contour is open where it must close, has no size, or a number is not finite
 */
export function drawPart(part: Part, unit: LengthUnit): Drawing {
  const what = `the outline of ${part.id}`
  const outlineContour = soundContour(part.outline, what, true)
  const outline = bounds(outlineContour)
  const layers: OpenLayer[] = []
  const boxes: Bounds[] = []
  const all: Operation[] = [
    { kind: 'cut', side: 'outside', contour: outlineContour, of: what },
    ...part.operations,
  ]
  for (const operation of all) {
    if (operation.kind === 'note') {
      const words = wordsOf(operation, outline)
      if (words === undefined) continue
      layerFor(operation, unit, layers).words.push(words)
      boxes.push(wordsBox(words))
      continue
    }
    const layer = layerFor(operation, unit, layers)
    const { contour, mustClose } = contourOf(operation)
    const sound = soundContour(contour, `${layer.name} of ${operation.of}`, mustClose)
    addOnce(layer, sound)
    boxes.push(bounds(sound))
  }
  const finished: Layer[] = layers.map(({ name, kind, meaning, contours, words }) => ({
    name,
    kind,
    meaning,
    contours,
    words,
  }))
  finished.sort(inWorkingOrder)
  return { part, layers: finished, outline, extent: around(boxes) }
}
