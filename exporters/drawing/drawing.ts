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
import { type CutPart, isCutPart } from '../cutting/cut-part.ts'
import { isWritable, refuse } from '../numbers.ts'
import { plainLine } from '../words/plain.ts'
import { CAPITAL_HEIGHT, DESCENT, textWidth } from '../words/width.ts'
import { LAYER_TABLE, type LayerLabel, type LengthUnit, layerOf, TABBED_OUTSIDE, tabLayer } from './layers.ts'
import { contourKey, contourMark, soundContour } from './soundContour.ts'

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

/** A box that grows. */
export type GrowingBox = { -readonly [side in keyof Bounds]: Bounds[side] }

/** A box of nothing, its sides the wrong way round. */
export function boxOfNothing(): GrowingBox {
  return {
    minX: Number.POSITIVE_INFINITY,
    minY: Number.POSITIVE_INFINITY,
    maxX: Number.NEGATIVE_INFINITY,
    maxY: Number.NEGATIVE_INFINITY,
  }
}

/** Makes a box hold another one, shifted by (x, y) mm. */
export function stretch(box: GrowingBox, other: Bounds, x = 0, y = 0): void {
  box.minX = Math.min(box.minX, other.minX + x)
  box.minY = Math.min(box.minY, other.minY + y)
  box.maxX = Math.max(box.maxX, other.maxX + x)
  box.maxY = Math.max(box.maxY, other.maxY + y)
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

/** The lines of an operation that is not a note. */
function contourOf(operation: Exclude<Operation, { kind: 'note' }>): Contour {
  switch (operation.kind) {
    case 'cut':
    case 'recess':
    case 'mark':
      return operation.contour
    case 'drill':
      return { shape: 'circle', centre: operation.centre, radius: operation.diameter / 2 }
    case 'slot': {
      const { from, to } = operation
      const vertices = [
        { x: from.x, y: from.y, bulge: 0 },
        { x: to.x, y: to.y, bulge: 0 },
      ]
      return { shape: 'chain', closed: false, vertices }
    }
    case 'datum':
      return operation.line
  }
}

const KIND_ORDER = new Map(LAYER_TABLE.map((style, index) => [style.kind, index]))

/** Compares layers by the order in which wood is worked: words first, outlines last. */
export function inWorkingOrder(a: LayerLabel, b: LayerLabel): number {
  if (a.name === b.name) return 0
  const byKind = (KIND_ORDER.get(a.kind) ?? 0) - (KIND_ORDER.get(b.kind) ?? 0)
  return byKind !== 0 ? byKind : a.name < b.name ? -1 : 1
}

/** What decides the layer of an operation: its kind and side, and its measures where it has any. */
interface Work {
  readonly work: Operation['kind'] | 'cut inside'
  readonly depth: number | 'through'
  readonly width: number
}

function workOf(operation: Operation): Work {
  const { kind } = operation
  const hasDepth = kind === 'drill' || kind === 'recess' || kind === 'slot'
  return {
    work: kind === 'cut' && operation.side === 'inside' ? 'cut inside' : kind,
    depth: hasDepth ? operation.depth : 0,
    width: kind === 'slot' ? operation.width : 0,
  }
}

/** A layer being filled, with the work that opened it. */
interface OpenLayer extends LayerLabel, Work {
  readonly contours: Contour[]
  /** The contours by their marks: only those of one mark can lie on one another. */
  readonly byMark: Map<number, Contour[]>
  readonly words: Words[]
}

function layerFor(operation: Operation, unit: LengthUnit, layers: OpenLayer[]): OpenLayer {
  const { work, depth, width } = workOf(operation)
  // The same work again needs no look at names, which are long in the making.
  for (const layer of layers) {
    if (layer.work === work && layer.depth === depth && layer.width === width) return layer
  }
  const { name, kind, meaning } = layerOf(operation, unit)
  const named = layers.find((layer) => layer.name === name)
  if (named !== undefined) return named
  const opened: OpenLayer = {
    name,
    kind,
    meaning,
    work,
    depth,
    width,
    contours: [],
    byMark: new Map(),
    words: [],
  }
  layers.push(opened)
  return opened
}

/** Adds a contour to a layer unless it lies on one that is there already. */
function addOnce({ contours, byMark }: OpenLayer, contour: Contour): void {
  const mark = contourMark(contour)
  const alike = byMark.get(mark)
  if (alike === undefined) byMark.set(mark, [contour])
  else {
    const key = contourKey(contour)
    if (alike.some((other) => contourKey(other) === key)) return
    alike.push(contour)
  }
  contours.push(contour)
}

/** Where tabs are left: a laser's outline in pieces, or beside a router's outline the lines along which it lifts. */
function withTabs(layers: readonly Layer[], cut: CutPart | undefined, unit: LengthUnit): readonly Layer[] {
  if (cut?.tabs == null) return layers
  const sound = (pieces: readonly Contour[]) =>
    pieces.map((piece) => soundContour(piece, `a piece of the outline of ${cut.id}`, false))
  if (cut.tabHeight !== null) {
    return [...layers, { ...tabLayer(cut.tabHeight, unit), contours: sound(cut.tabs.tabs), words: [] }]
  }
  const pieces: Layer = { ...TABBED_OUTSIDE, contours: sound(cut.tabs.between), words: [] }
  return [...layers.filter(({ kind }) => kind !== 'cut-outside'), pieces]
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
  const cut = isCutPart(part) ? part : undefined
  const outline = bounds(cut?.finished ?? outlineContour)
  const layers: OpenLayer[] = []
  const extent = boxOfNothing()
  const all: Operation[] = [
    { kind: 'cut', side: 'outside', contour: outlineContour, of: what },
    ...part.operations,
  ]
  for (const operation of all) {
    if (operation.kind === 'note') {
      const words = wordsOf(operation, outline)
      if (words === undefined) continue
      layerFor(operation, unit, layers).words.push(words)
      stretch(extent, wordsBox(words))
      continue
    }
    const layer = layerFor(operation, unit, layers)
    const mustClose = operation.kind === 'cut' || operation.kind === 'recess'
    const sound = soundContour(contourOf(operation), `${layer.name} of ${operation.of}`, mustClose)
    addOnce(layer, sound)
    stretch(extent, bounds(sound))
  }
  const finished: Layer[] = withTabs(layers, cut, unit).map(({ name, kind, meaning, contours, words }) => ({
    name,
    kind,
    meaning,
    contours,
    words,
  }))
  finished.sort(inWorkingOrder)
  return { part, layers: finished, outline, extent }
}
