/** The neck from head to tail: its plan, its heights stretch by stretch, its slots, and what the blank must give. */
import { slotRoom } from '../box/real-slot.ts'
import type { Design } from '../design/schema.ts'
import type { Bounds } from '../plane/index.ts'
import { inOrder } from '../quantity/in-order.ts'
import { steadyFilter } from '../quantity/steady.ts'
import type {
  BoxLayout,
  Layout,
  NeckCut,
  NeckLayout,
  NeckStretch,
  Placed,
  WallSlot,
} from '../solve/layout.ts'
import { faceHeight, headDepth, headOfBlank, onPlan } from './head-form.ts'
import { headCorners, headEdgesAt } from './headstock.ts'

/** Room around a pickup in the neck, on all sides and below. Common practice, no source. */
export const PICKUP_ROOM = 1

/** Half the width of the neck at x: the head's own, then the taper from nut to box, then straight. */
export function halfWidthAt(neck: Pick<NeckLayout, 'halfWidths'>, x: number): number {
  const points = neck.halfWidths
  let before = points[0]
  if (!before || x <= before.x) return before?.half ?? 0
  for (const point of points) {
    if (x <= point.x && point.x > before.x)
      return before.half + ((point.half - before.half) * (x - before.x)) / (point.x - before.x)
    before = point
  }
  return before.half
}

/** The two sides of the neck at x, bass and treble. */
export function sidesOfNeck(neck: Pick<NeckLayout, 'halfWidths'>, x: number): readonly [number, number] {
  const half = halfWidthAt(neck, x)
  const middle = middleAt(neck, x)
  return [middle - half, middle + half]
}

/** How far off the centreline the middle of the neck lies at x; only a head with slanted edges has any. */
function middleAt({ halfWidths }: Pick<NeckLayout, 'halfWidths'>, x: number): number {
  let before = halfWidths[0]
  if (!before || x <= before.x) return before?.middle ?? 0
  for (const point of halfWidths) {
    const [from, to] = [before.middle ?? 0, point.middle ?? 0]
    if (x <= point.x && point.x > before.x)
      return from + ((to - from) * (x - before.x)) / (point.x - before.x)
    before = point
  }
  return before.middle ?? 0
}

/** The least of a neck behind the nut: keeps the drawing a drawing where the box lies in front of it. */
const STUB = 1

/** A cut or stretch shorter than this is none: no saw could show it. */
const SHORTEST = 1e-3

/**
 * The x at which the neck ends inside or behind the box. A box so far up that its neck would end before the nut
 * (`neck-before-box` stops it) leaves a stub.
 */
export function neckEnd(neck: Design['neck'], box: BoxLayout): number {
  return Math.max(STUB, neck.ends === 'through the box' ? box.x1 + neck.tail : box.insideX0 + neck.tongue)
}

/**
 * Lays the neck out. `placed` are the things on the lid: those meant to stand over the neck cut a relief into it.
 * `saddleX` is where the saddle line falls; `nutBack` the back of the nut, where the slope of the head begins; `real` the box as surveyed.
 */
export function neckAt(
  design: Design,
  box: BoxLayout,
  placed: readonly Placed[],
  lidOrigin: number,
  saddleX: number,
  nutBack: number,
  real: Layout['real'] = null,
): NeckLayout {
  const { neck, headstock } = design
  const top = neck.rise
  const bottom = top - neck.thickness
  const x0 = onPlan(headstock, nutBack, headstock.length)
  const head = headOfBlank(design, nutBack)
  const x1 = neckEnd(neck, box)
  const halfWidths = halfWidthsOf(design, x0, x1, box.x0, nutBack)
  const cuts = [
    ...boxCuts(design, box, x1, top),
    ...overStrings(placed).flatMap((thing) => pickupCut(thing, lidOrigin, neck.width / 2, top)),
  ].flatMap((cut) => within(cut, Math.max(x0, nutBack), x1))
  const stretches = stretchesOf(design, box, { x0, x1, top, bottom }, nutBack, cuts)
  const inside = stretches.filter((one) => one.x1 > box.x0 && one.x0 < Math.min(box.x1, x1))
  const thinnest = inside.reduce<NeckStretch | undefined>(
    (least, one) => (!least || one.top - one.bottom < least.top - least.bottom ? one : least),
    undefined,
  )
  const through = neck.ends === 'through the box'
  return {
    x0,
    x1,
    top,
    bottom,
    halfWidths,
    stretches,
    cuts,
    thinnest: thinnest
      ? { left: thinnest.top - thinnest.bottom, x0: thinnest.x0, x1: thinnest.x1, of: thinnest.of }
      : { left: neck.thickness, x0: box.x0, x1: box.x1, of: 'neck' },
    slots: [
      slotIn(design, box, 'neck-end-wall', bottom, real),
      ...(through ? [slotIn(design, box, 'tail-end-wall', bottom, real)] : []),
    ],
    block: through ? null : blockOf(neck, box),
    needs: {
      total: x1 + head,
      headstock: head,
      scale: saddleX,
      behindSaddle: (through ? box.x1 : x1) - saddleX,
      tail: through ? neck.tail : 0,
    },
  }
}

function halfWidthsOf(design: Design, x0: number, x1: number, boxX0: number, nutBack: number) {
  const { neck, headstock } = design
  const atNut = neck.widthAtNut / 2
  const atBox = neck.width / 2
  const shoulder = Math.max(x0, nutBack - SHOULDER)
  const points = headWidths(headstock, x0, shoulder, nutBack)
  if (nutBack > shoulder) points.push({ x: nutBack, half: atNut })
  const taperEnd = Math.max(boxX0, 0)
  if (nutBack < 0) points.push({ x: 0, half: atNut })
  if (taperEnd > 0) points.push({ x: Math.min(taperEnd, x1), half: taperEnd <= x1 ? atBox : atNut })
  if (x1 > taperEnd) points.push({ x: x1, half: atBox })
  return points
}

type Widths = { x: number; half: number; middle?: number }[]

/** The head from its end to its shoulder, wherever one of its edges turns. */
function headWidths(headstock: Design['headstock'], x0: number, shoulder: number, nutBack: number): Widths {
  const half = headstock.width / 2
  if (headstock.postStep === 0)
    return shoulder > x0
      ? [
          { x: x0, half },
          { x: shoulder, half },
        ]
      : [{ x: x0, half }]
  const at = (along: number, x: number) => {
    const { bass, treble } = headEdgesAt(headstock, along)
    return { x, half: (treble - bass) / 2, middle: (treble + bass) / 2 }
  }
  const turns = headCorners(headstock)
    .reverse()
    .map((along) => at(along, onPlan(headstock, nutBack, along)))
    .filter(({ x }) => x > x0 && x < shoulder)
  return [at(headstock.length, x0), ...turns, ...(shoulder > x0 ? [{ x: shoulder, half }] : [])]
}

/** Length in which the head runs out to its own width behind the nut. A matter of looks. */
export const SHOULDER = 8

/** Notch for the lid and relief under it. */
function boxCuts(design: Design, box: BoxLayout, x1: number, top: number): NeckCut[] {
  const { neck, box: stated } = design
  const onWalls = stated.lid.fit === 'on the walls'
  const through = neck.ends === 'through the box'
  const { gap } = stated.lid
  const from = onWalls ? box.x0 - gap : box.insideX0
  const to = through ? (onWalls ? box.x1 + gap : box.insideX1) : x1
  const cuts: NeckCut[] = []
  if (top > box.lidBottom) cuts.push({ x0: from, x1: to, top: box.lidBottom, of: 'notch' })
  const reliefTop = box.lidBottom - neck.relief
  const reliefFrom = box.insideX0 + neck.reliefStart
  const reliefTo = through ? box.insideX1 - neck.reliefStart : x1
  if (neck.relief > 0 && top > reliefTop && reliefTo > reliefFrom)
    cuts.push({ x0: reliefFrom, x1: reliefTo, top: reliefTop, of: 'relief' })
  return cuts
}

/** What the neck loses to a pickup above it, if the two meet at all. */
const overStrings = steadyFilter(
  ({ face, kind, reach }: Placed) => face === 'lid' && kind.activeWidth !== undefined && reach > 0,
)

function pickupCut(thing: Placed, lidOrigin: number, half: number, top: number): NeckCut[] {
  const { minX, maxX, minY, maxY } = thing.bounds
  if (minY > half || maxY < -half) return []
  const floor = -thing.reach - PICKUP_ROOM
  if (floor >= top) return []
  return [
    {
      x0: lidOrigin + minX - PICKUP_ROOM,
      x1: lidOrigin + maxX + PICKUP_ROOM,
      top: floor,
      of: 'pickup relief',
      because: thing.thing.id,
    },
  ]
}

interface Extent {
  readonly x0: number
  readonly x1: number
  readonly top: number
  readonly bottom: number
}

/** Cuts the neck at every x where its top changes and keeps the deepest cut in each piece. */
function stretchesOf(
  design: Design,
  box: BoxLayout,
  neck: Extent,
  nutBack: number,
  cuts: readonly NeckCut[],
): NeckStretch[] {
  const { headstock } = design
  const headTop = faceHeight(design, nutBack, nutBack)
  const headBottom = headstock.form === 'straight' ? neck.bottom : headTop - headDepth(design)
  // A head shorter than its nut is thick has no slope.
  const slopeEnd = Math.max(neck.x0, nutBack)
  const slopeStart = Math.max(neck.x0, slopeEnd - (headstock.form === 'straight' ? headstock.ramp : 0))
  const stretches: NeckStretch[] = []
  const add = (
    x0: number,
    x1: number,
    top: number,
    of: NeckStretch['of'],
    because?: string,
    bottom = neck.bottom,
  ) => {
    if (x1 - x0 <= SHORTEST) return
    const before = stretches.at(-1)
    if (before && before.of === of && before.top === top && before.because === because)
      stretches[stretches.length - 1] = { ...before, x1 }
    else stretches.push({ x0, x1, top, bottom, of, ...(because ? { because } : {}) })
  }
  add(neck.x0, slopeStart, headTop, 'headstock', undefined, headBottom)
  add(slopeStart, slopeEnd, headTop, 'slope')
  const xs = new Set([slopeEnd, neck.x1])
  if (neck.x1 > box.x1 && box.x1 > slopeEnd) xs.add(box.x1)
  for (const cut of cuts) {
    xs.add(cut.x0)
    xs.add(cut.x1)
  }
  const edges = inOrder([...xs])
  edges.slice(1).forEach((to, index) => {
    const from = edges[index] ?? to
    const middle = (from + to) / 2
    const deepest = cuts
      .filter((cut) => cut.x0 < middle && middle < cut.x1)
      .reduce<NeckCut | undefined>((low, cut) => (!low || cut.top < low.top ? cut : low), undefined)
    const plain = middle > box.x1 ? 'tail' : 'neck'
    if (deepest && deepest.top < neck.top)
      add(from, to, Math.max(deepest.top, neck.bottom), deepest.of, deepest.because)
    else add(from, to, neck.top, plain)
  })
  return stretches
}

/** The part of a cut that lies on the neck behind the nut, if any does. */
function within(cut: NeckCut, from: number, to: number): NeckCut[] {
  const x0 = Math.max(cut.x0, from)
  const x1 = Math.min(cut.x1, to)
  return x1 - x0 > SHORTEST ? [{ ...cut, x0, x1 }] : []
}

function slotIn(
  design: Design,
  box: BoxLayout,
  face: WallSlot['face'],
  neckBottom: number,
  real: Layout['real'],
): WallSlot {
  const square = design.neck.width + design.neck.slotPlay
  const depth = Math.max(0, box.wallTop - neckBottom)
  if (real) {
    const room = slotRoom(real, face)
    const width = Math.min(square * room.widened, room.length)
    return {
      face,
      width,
      depth,
      wallLeftBelow: (room.height ?? box.wallTop - box.wallBottom) - depth,
      wallLeftBeside: Math.min(room.bass, room.treble) - width / 2,
    }
  }
  const width = square
  const besideBass = design.box.width / 2 - design.box.walls.bass - width / 2
  const besideTreble = design.box.width / 2 - design.box.walls.treble - width / 2
  return {
    face,
    width,
    depth,
    wallLeftBelow: box.wallTop - box.wallBottom - depth,
    wallLeftBeside: Math.min(besideBass, besideTreble),
  }
}

function blockOf(neck: Design['neck'], box: BoxLayout): Bounds {
  return {
    minX: box.insideX0,
    maxX: box.insideX0 + neck.blockLength,
    minY: -neck.blockWidth / 2,
    maxY: neck.blockWidth / 2,
  }
}
