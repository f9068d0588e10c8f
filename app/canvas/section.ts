/** The section along the centreline, under the plan on the same axis: x along, height up. */
import {
  endsOf,
  faceHeight,
  type Layout,
  type Placed,
  type Point,
  partsOf,
  scarfOf,
} from '../../geometry/index.ts'
import { paintBodiesInSection } from './bodies.ts'
import type { View } from './camera.ts'
import { movedFrame, toScreen } from './frame.ts'
import { paintInsideSection } from './kept.ts'
import { HIDDEN, type Looks, THICK, THIN } from './looks.ts'
import { dimension, type Pen, path, shape, slab, stroke, write } from './paint.ts'

export function paintSection(pen: Pen, looks: Looks, view: View, layout: Layout): void {
  const frame = view.section
  const { box, panels, neck, board, nut, saddle, design } = layout
  const cut = (fill: string) => ({ fill, stroke: looks.ink, width: THICK * 0.8 })
  const length = (face: 'lid' | 'base') => endsOf(layout, face)[1] - endsOf(layout, face)[0]
  slab(
    pen,
    frame,
    panels.base.originX,
    box.baseBottom,
    panels.base.originX + length('base'),
    box.baseTop,
    cut(looks.wall),
  )
  slab(pen, frame, box.x0, box.wallBottom, box.insideX0, box.wallTop, cut(looks.wall))
  slab(pen, frame, box.insideX1, box.wallBottom, box.x1, box.wallTop, cut(looks.wall))
  if (neck.block)
    slab(pen, frame, neck.block.minX, box.baseTop, neck.block.maxX, neck.bottom, {
      fill: looks.neck,
      stroke: looks.ink,
      width: THIN,
    })
  paintInsideSection(pen, looks, view, layout)
  // The neck's side as it is cut; on screen it faces the reader of the plan whichever hand.
  const side = partsOf(layout).find((part) => part.id === 'neck-side')
  if (side) shape(pen, frame, side.outline, cut(looks.neck))
  paintHeadSection(pen, looks, view, layout)
  slab(pen, frame, panels.lid.originX, box.lidBottom, panels.lid.originX + length('lid'), 0, cut(looks.lid))
  paintThingsInSection(pen, looks, view, layout)
  if (board && board.x1 > board.x0)
    slab(pen, frame, board.x0, board.bottom, board.x1, board.top, cut(looks.board))
  for (const fret of layout.frets) {
    if (!fret.onWood) continue
    const at = toScreen(frame, { x: fret.fromNut, y: layout.playingTop })
    const deep = Math.min(design.scale.slotDepth * frame.scale, 12)
    stroke(pen, at, { x: at.x, y: at.y + deep }, { stroke: looks.ink, width: THIN })
  }
  slab(pen, frame, nut.x0, nut.bottom, nut.x1, nut.top, { fill: looks.bone, stroke: looks.ink, width: THIN })
  slab(pen, frame, saddle.foot.minX, 0, saddle.foot.maxX, saddle.top, {
    fill: looks.accentSoft,
    stroke: looks.accent,
    width: THICK,
  })
  paintTailHoles(pen, looks, view, layout)
  paintString(pen, looks, view, layout)
}

/** What the things of a layout take from lid and base, and how deep they hang. */
export function paintThingsInSection(pen: Pen, looks: Looks, view: View, layout: Layout): void {
  for (const placed of layout.placed) paintUnder(pen, looks, view, layout, placed)
  paintBodiesInSection(pen, looks, view, layout)
}

/** Posts over the face of the head, and the line along which a scarfed one is glued on. */
function paintHeadSection(pen: Pen, looks: Looks, view: View, layout: Layout): void {
  const { design, nut, posts } = layout
  const scarf = scarfOf(design, nut.x0)
  if (scarf) path(pen, view.section, [scarf.top, scarf.bottom], { stroke: looks.ink, width: THIN })
  const half = design.headstock.post / 2
  for (const { x, winds } of posts) {
    const foot = { x, y: faceHeight(design, nut.x0, x) }
    const lean = { x: winds.x - foot.x, y: winds.z - foot.y }
    const tall = Math.hypot(lean.x, lean.y)
    if (tall <= 0) continue
    // As far above the string again as a winding needs.
    const up = { x: lean.x * (1 + OVER_STRING / tall), y: lean.y * (1 + OVER_STRING / tall) }
    const aside = { x: (lean.y / tall) * half, y: (-lean.x / tall) * half }
    const corners = [
      { x: foot.x - aside.x, y: foot.y - aside.y },
      { x: foot.x + aside.x, y: foot.y + aside.y },
      { x: foot.x + aside.x + up.x, y: foot.y + aside.y + up.y },
      { x: foot.x - aside.x + up.x, y: foot.y - aside.y + up.y },
    ]
    path(pen, view.section, [...corners, ...corners.slice(0, 1)], {
      fill: looks.steel,
      stroke: looks.ink,
      width: THIN,
    })
  }
}

/** How far a post stands over the string that winds on it, as it is drawn. Millimetres. */
const OVER_STRING = 3

/** The hole a thing makes in the lid, if the section meets it, and how deep it hangs. */
function paintUnder(pen: Pen, looks: Looks, view: View, layout: Layout, placed: Placed): void {
  if (placed.face !== 'lid' && placed.face !== 'base') return
  const frame = movedFrame(view.section, layout.panels[placed.face].originX, 0)
  const { minX, maxX, minY, maxY } = placed.bounds
  const met = minY <= 0 && maxY >= 0
  const [top, bottom] =
    placed.face === 'lid' ? [0, layout.box.lidBottom] : [layout.box.baseTop, layout.box.baseBottom]
  if (met && placed.openings.length > 0)
    slab(pen, frame, minX, top, maxX, bottom, { fill: looks.hole, stroke: looks.accent, width: THIN })
  if (placed.reach <= 0 || placed.kind.bodies) return
  const deepest = placed.face === 'lid' ? -placed.reach : layout.box.baseBottom + placed.reach
  slab(pen, frame, minX, placed.face === 'lid' ? 0 : layout.box.baseBottom, maxX, deepest, {
    stroke: met ? looks.accent : looks.soft,
    width: THIN,
    ...(met ? {} : { dash: HIDDEN }),
  })
}

function paintTailHoles(pen: Pen, looks: Looks, view: View, layout: Layout): void {
  const { tailHoles, neck, box, design } = layout
  const hole = tailHoles[0]
  if (!hole) return
  const hidden = { stroke: looks.soft, width: THIN, dash: HIDDEN }
  const half = design.tailpiece.diameter / 2
  if (design.tailpiece.at === 'the tail-end wall')
    slab(pen, view.section, box.insideX1, hole.z - half, box.x1, hole.z + half, hidden)
  else {
    const bottom = design.tailpiece.at === 'the lid' ? box.lidBottom : neck.bottom
    slab(pen, view.section, hole.x - half, hole.z, hole.x + half, bottom, hidden)
  }
}

/** The string nearest the middle, from post to hole. */
function paintString(pen: Pen, looks: Looks, view: View, layout: Layout): void {
  const string = layout.strings[Math.floor(layout.strings.length / 2)]
  if (!string) return
  const { saddle, posts } = layout
  const winds = (string.post ?? posts[0])?.winds
  const points: Point[] = [
    ...(winds ? [{ x: winds.x, y: winds.z }] : []),
    { x: layout.nut.x1, y: string.zAtNut },
    { x: saddle.x, y: string.zAtSaddle },
    ...(string.tail ? [{ x: string.tail.x, y: string.tail.z }] : []),
  ]
  path(pen, view.section, points, { stroke: looks.steel, width: 1.2 })
}

/** Heights that matter, in words: the saddle over the lid, the neck's thinnest. */
export function paintHeights(
  pen: Pen,
  looks: Looks,
  view: View,
  layout: Layout,
  say: (mm: number) => string,
): void {
  const { saddle, neck } = layout
  const top = toScreen(view.section, { x: saddle.x, y: saddle.top })
  write(
    pen,
    looks,
    `saddle ${say(saddle.top)}`,
    { x: top.x, y: top.y - 10 },
    { colour: looks.soft, size: 11, align: 'center', behind: looks.sheet },
  )
  const { left, x0, x1 } = neck.thinnest
  if (left <= 0 || left >= layout.design.neck.thickness) return
  const at = toScreen(view.section, { x: (x0 + x1) / 2, y: neck.bottom })
  if ((x1 - x0) * view.section.scale < 4 || (neck.bottom - layout.box.baseTop) * view.section.scale < 18)
    return
  const up = { x: at.x, y: at.y - left * view.section.scale }
  dimension(pen, up, at, looks.soft)
  write(
    pen,
    looks,
    `${say(left)} left`,
    { x: at.x, y: at.y + 14 },
    { colour: looks.soft, size: 11, align: 'center' },
  )
}
