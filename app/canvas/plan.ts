/** The plan from the front: box, lid, neck, board and frets. What stands on the lid is drawn over it. */
import {
  halfWidthAt,
  headOf,
  type Layout,
  type Point,
  sidesOfNeck,
  wallLinesOf,
} from '../../geometry/index.ts'
import { paintPhoto } from '../photo/lying.ts'
import type { View } from './camera.ts'
import { type Frame, movedFrame, toScreen } from './frame.ts'
import { paintArtwork, paintInside } from './kept.ts'
import { CENTRE, HIDDEN, type Looks, THICK, THIN } from './looks.ts'
import { disc, type Pen, path, shape, slab, stroke, write } from './paint.ts'

/** The lid's own frame on the plan. */
export const lidFrame = (view: View, layout: Layout): Frame =>
  movedFrame(view.plan, layout.panels.lid.originX, 0)

export function paintPlan(pen: Pen, looks: Looks, view: View, layout: Layout): void {
  paintNeck(pen, looks, view, layout)
  paintBox(pen, looks, view, layout)
  paintBoard(pen, looks, view, layout)
  paintHead(pen, looks, view, layout)
  const left = view.plan.ox + (Math.min(layout.neck.x0, layout.box.x0) - 8) * view.plan.scale
  const right = view.plan.ox + (Math.max(layout.neck.x1, layout.box.x1) + 8) * view.plan.scale
  stroke(
    pen,
    { x: left, y: view.plan.oy },
    { x: right, y: view.plan.oy },
    { stroke: looks.soft, width: THIN, dash: CENTRE },
  )
}

function paintNeck(pen: Pen, looks: Looks, view: View, layout: Layout): void {
  path(pen, view.plan, neckOutline(layout, layout.neck.x0, layout.neck.x1), {
    fill: looks.neck,
    stroke: looks.ink,
    width: THICK,
  })
}

/** The neck's plan between two places, closed. */
function neckOutline(layout: Layout, from: number, to: number): Point[] {
  const { neck } = layout
  const xs = [from, ...neck.halfWidths.map((one) => one.x).filter((x) => x > from && x < to), to]
  const side = (which: 0 | 1) => xs.map((x) => ({ x, y: sidesOfNeck(neck, x)[which] }))
  const points = [...side(0), ...side(1).reverse()]
  return points[0] ? [...points, points[0]] : points
}

function paintBox(pen: Pen, looks: Looks, view: View, layout: Layout): void {
  const { box, panels, neck, design } = layout
  const lid = lidFrame(view, layout)
  if (design.box.lid.fit === 'between the walls') {
    // The walls show all round, cut open where the neck passes.
    const outside = movedFrame(view.plan, panels.base.originX, 0)
    const full = design.box.base.fit === 'under the walls' ? panels.base.outline : null
    const wall = { fill: looks.wall, stroke: looks.ink, width: THICK }
    if (full) shape(pen, outside, full, wall)
    else shape(pen, view.plan, wallLinesOf(layout).outside, wall)
    for (const [from, to] of [
      [box.x0, box.insideX0],
      [box.insideX1, box.x1],
    ] as const) {
      const end = Math.min(to, neck.x1)
      if (end > from)
        path(pen, view.plan, neckOutline(layout, from, end), {
          fill: looks.neck,
          stroke: looks.ink,
          width: THIN,
        })
    }
  }
  shape(pen, lid, panels.lid.outline, { fill: looks.lid })
  paintPhoto(pen, lid, layout, 'lid')
  shape(pen, lid, panels.lid.outline, { stroke: looks.ink, width: THICK })
  paintArtwork(pen, looks, lid, layout, 'lid')
  paintInside(pen, looks, view, layout)
  const hidden = { stroke: looks.soft, width: THIN, dash: HIDDEN }
  const { inside } = wallLinesOf(layout)
  if (inside) shape(pen, view.plan, inside, hidden)
  const from = Math.max(neck.x0, box.x0)
  const to = Math.min(neck.x1, box.x1)
  if (to > from) path(pen, view.plan, neckOutline(layout, from, to), hidden)
  if (neck.block)
    slab(pen, view.plan, neck.block.minX, neck.block.minY, neck.block.maxX, neck.block.maxY, hidden)
}

function paintBoard(pen: Pen, looks: Looks, view: View, layout: Layout): void {
  const { board, frets, nut, design } = layout
  if (board && board.x1 > board.x0)
    path(pen, view.plan, neckOutline(layout, board.x0, board.x1), {
      fill: looks.board,
      stroke: looks.ink,
      width: THICK * 0.8,
    })
  for (const fret of frets) {
    if (!fret.onWood) continue
    const zero = fret.number === 0
    path(
      pen,
      view.plan,
      [
        { x: fret.fromNut, y: fret.yBass },
        { x: fret.fromNut, y: fret.yTreble },
      ],
      { stroke: looks.ink, width: zero ? THICK : THIN, ...(design.scale.fretless ? { dash: [2, 2] } : {}) },
    )
  }
  fretNumbers(pen, looks, view, layout)
  const half = halfWidthAt(layout.neck, 0)
  slab(pen, view.plan, nut.x0, -half, nut.x1, half, { fill: looks.bone, stroke: looks.ink, width: THIN })
}

/** Two figures side by side and a space, pixels. */
const LEAST_APART = 19

/** Numbers beside the frets, as many as there is room for. */
function fretNumbers(pen: Pen, looks: Looks, view: View, layout: Layout): void {
  const low = (x: number) => halfWidthAt(layout.neck, x)
  const marked = (number: number) => number % 12 === 0 || [3, 5, 7, 9].includes(number % 12)
  const apart = LEAST_APART * looks.words
  const taken: number[] = []
  // Those that carry a position marker come first: a builder counts by them.
  for (const fret of [...layout.frets].sort((a, b) => Number(marked(b.number)) - Number(marked(a.number)))) {
    if (fret.number === 0 || !fret.onWood || fret.fromNut > layout.box.x0) continue
    const at = toScreen(view.plan, { x: fret.fromNut, y: -view.plan.up * low(fret.fromNut) })
    if (taken.some((x) => Math.abs(x - at.x) < apart)) continue
    taken.push(at.x)
    write(
      pen,
      looks,
      String(fret.number),
      { x: at.x, y: at.y + 12 },
      { colour: looks.soft, size: 10, align: 'center' },
    )
  }
}

/** Tuners: knobs beside the head, holes through it, plates and screws behind it as hidden lines, and their posts. */
function paintHead(pen: Pen, looks: Looks, view: View, layout: Layout): void {
  const { tuners, toPlan } = headOf(layout)
  const { headstock } = layout.design
  const hidden = { stroke: looks.soft, width: THIN, dash: HIDDEN }
  const closed = ({ vertices }: { readonly vertices: readonly Point[] }) =>
    [...vertices, ...vertices.slice(0, 1)].map(toPlan)
  for (const { post, hole, round, body, knob, screws } of tuners) {
    const at = toPlan(post)
    if (body) path(pen, view.plan, closed(body), hidden)
    if (knob) path(pen, view.plan, closed(knob), { fill: looks.bone, stroke: looks.soft, width: THIN })
    disc(pen, view.plan, at, hole.radius, { fill: looks.sheet, stroke: looks.accent, width: THICK * 0.8 })
    if (round.radius < hole.radius)
      disc(pen, view.plan, at, round.radius, { fill: looks.steel, stroke: looks.ink, width: THIN })
    for (const screw of screws) disc(pen, view.plan, toPlan(screw), headstock.screwPilot / 2, hidden)
  }
}

/** Strings, saddle and string holes: they lie over everything that is put on the lid. */
export function paintStrings(pen: Pen, looks: Looks, view: View, layout: Layout): void {
  const { saddle, strings, tailHoles, design } = layout
  slab(pen, view.plan, saddle.foot.minX, saddle.foot.minY, saddle.foot.maxX, saddle.foot.maxY, {
    fill: looks.accentSoft,
    stroke: looks.accent,
    width: THICK,
  })
  const { paths, toPlan } = headOf(layout)
  const winds = new Map(paths.map(({ index, to }) => [index, toPlan(to)]))
  for (const string of strings) {
    const post = winds.get(string.index)
    const points = [
      ...(post ? [post] : []),
      { x: 0, y: string.yAtNut },
      { x: saddle.x, y: string.yAtSaddle },
      ...(string.tail ? [string.tail] : []),
    ]
    path(pen, view.plan, points, {
      stroke: looks.steel,
      width: Math.max(0.9, Math.min(string.gauge * view.plan.scale, 3)),
    })
  }
  if (design.tailpiece.at === 'the tail-end wall') return
  for (const hole of tailHoles)
    disc(pen, view.plan, hole, Math.max(design.tailpiece.diameter / 2, 1.6 / view.plan.scale), {
      fill: looks.sheet,
      stroke: looks.accent,
      width: THICK * 0.8,
    })
}
