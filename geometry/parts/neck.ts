/** The neck as two parts, from the playing side and from the side, and the block it may end on. */

import { halfWidthAt, sidesOfNeck } from '../neck/neck.ts'
import { type Scarf, scarfOf } from '../neck/scarf.ts'
import { type Contour, type Point, polygon, rectangle } from '../plane/index.ts'
import type { FretLine, Layout, NeckCut } from '../solve/layout.ts'
import { postOperations } from './headstock.ts'
import { neckProfile, simplified, topAt } from './neck-profile.ts'
import { datum, drill, mark, note, RUN_OUT, recess } from './operations.ts'
import type { Operation, Part } from './part.ts'
import { blockViews, pilotsInSides, pilotsOnTop } from './pilots.ts'
import { flipContour, flipOperations } from './sheet-frame.ts'

/** Least length of a shaft that is drawn, mm. */
const STUB = 1

/** The blank from the playing side. */
export function neckTop(layout: Layout): Part {
  const { neck, design } = layout
  const flip = layout.up === 1 ? 'none' : 'y'
  const scarf = scarfOf(design, layout.nut.x0)
  const operations: Operation[] = [
    ...(scarf ? bevelLines(layout, scarf) : postOperations(layout, layout.posts)),
    ...tailHoles(layout),
    ...recesses(layout),
    ...pilotsOnTop(layout),
    ...(layout.board ? [] : fretOperations(layout, layout.frets)),
    ...(layout.zeroFret && !layout.board ? [] : [across(layout, 0, 'Zero line, front of the nut')]),
    datum({ x: shaftFrom(layout) ?? neck.x0, y: 0 }, { x: neck.x1, y: 0 }, 'Centreline'),
    ...faces(layout).flatMap(({ x, of }) =>
      between(x, neck.x0, neck.x1) ? [datumAcross(layout, x, of)] : [],
    ),
  ]
  return {
    id: 'neck-top',
    title: 'Neck, from the front',
    seen: 'from the playing side',
    mirrored: false,
    headEnd: 'left',
    hand: design.hand,
    thickness: design.neck.thickness,
    outline: flipContour(planOutline(layout), flip),
    operations: flipOperations(operations, flip),
  }
}

/** The blank from the side that lies nearest the reader of the plan, with every step in its top. */
export function neckSide(layout: Layout): Part {
  const { neck, design } = layout
  const scarf = scarfOf(design, layout.nut.x0)
  return {
    id: 'neck-side',
    title: 'Neck, from the side',
    seen: layout.up === 1 ? 'from the bass side' : 'from the treble side',
    mirrored: false,
    headEnd: 'left',
    hand: design.hand,
    thickness: design.neck.width,
    outline: polygon(neckProfile(layout)),
    operations: [
      ...faces(layout)
        .filter(({ x }) => between(x, neck.x0, neck.x1))
        .map(({ x, of }) => datum({ x, y: neck.bottom }, { x, y: topAt(layout, x) }, of)),
      ...(scarf ? [mark(scarf.top, scarf.bottom, 'Glued joint of the head')] : []),
      ...pilotsInSides(layout).near,
    ],
  }
}

/** The block under the tongue of a neck that ends inside the box. */
export function blockPart(layout: Layout): Part[] {
  const { block, bottom } = layout.neck
  const height = bottom - layout.box.baseTop
  if (!block || height <= 0) return []
  return blockViews(layout, {
    id: 'neck-block',
    title: 'Block under the neck',
    seen: 'from the playing side',
    mirrored: false,
    headEnd: 'left',
    hand: layout.design.hand,
    thickness: height,
    outline: rectangle(0, block.minY, block.maxX - block.minX, block.maxY),
    operations: [datum({ x: 0, y: 0 }, { x: block.maxX - block.minX, y: 0 }, 'Centreline')],
  })
}

/** Where the shaft is bevelled for a scarfed head. */
const bevelLines = (layout: Layout, { top, bottom }: Scarf): Operation[] =>
  top.x > bottom.x && top.x < layout.neck.x1 ? [across(layout, top.x, 'The bevel for the head begins')] : []

/** Fret slots, or lines to see where a fretless neck is stopped, with their numbers. */
export function fretOperations(layout: Layout, frets: readonly FretLine[]): Operation[] {
  const { slotWidth, slotDepth } = layout.design.scale
  const operations: Operation[] = []
  for (const fret of frets) {
    if (!fret.onWood) continue
    const from = { x: fret.fromNut, y: fret.yBass }
    const to = { x: fret.fromNut, y: fret.yTreble }
    const of = fret.number === 0 ? 'Zero fret' : `Fret ${fret.number}`
    operations.push(
      layout.design.scale.fretless
        ? mark(from, to, of)
        : { kind: 'slot', from, to, width: slotWidth, depth: slotDepth, of },
    )
    const text = String(fret.number)
    operations.push(note({ x: fret.fromNut - 1.9 * text.length - 0.8, y: -1.2 }, text, of))
  }
  return operations
}

const between = (x: number, low: number, high: number) => x > low && x < high

/** Where the box meets the neck: lines to hold it against. */
function faces({ box, design }: Layout): { x: number; of: string }[] {
  return [
    { x: box.x0, of: 'Box, neck-end face' },
    { x: box.insideX0, of: 'Inside of the neck-end wall' },
    ...(design.neck.ends === 'through the box'
      ? [
          { x: box.insideX1, of: 'Inside of the tail-end wall' },
          { x: box.x1, of: 'Box, tail-end face' },
        ]
      : []),
  ]
}

const edges = (layout: Layout, x: number): [Point, Point] => {
  const half = halfWidthAt(layout.neck, x)
  return [
    { x, y: -half },
    { x, y: half },
  ]
}
const across = (layout: Layout, x: number, of: string) => mark(...edges(layout, x), of)
const datumAcross = (layout: Layout, x: number, of: string) => datum(...edges(layout, x), of)

/**
 * Where the bevel of a scarfed neck comes out at the bottom. Of a shaft that is all bevel a stub is left: the checks say what
 * is wrong, the drawing stays a drawing.
 */
function shaftFrom({ design, nut, neck }: Layout): number | undefined {
  const scarf = scarfOf(design, nut.x0)
  return scarf ? Math.min(scarf.bottom.x, neck.x1 - STUB) : undefined
}

/** From the front; of a scarfed neck the shaft alone, from where its bevel comes out at the bottom. */
function planOutline(layout: Layout): Contour {
  const { neck } = layout
  const from = shaftFrom(layout)
  const cornerAt = (sign: 1 | -1) =>
    [
      ...(from === undefined ? [] : [cutAt(layout, from)]),
      ...neck.halfWidths.filter(({ x }) => from === undefined || x > from),
    ].map(({ x, half, middle = 0 }) => ({ x, y: middle + sign * half }))
  return polygon(simplified([...cornerAt(-1), ...cornerAt(1).reverse()]))
}

/** Its width at a place where nothing turns. */
function cutAt({ neck }: Layout, x: number) {
  const [bass, treble] = sidesOfNeck(neck, x)
  return { x, half: (treble - bass) / 2, middle: (treble + bass) / 2 }
}

/** Cuts into the top as recesses; each runs out beyond the sides, the deeper the farther, so that no line repeats. */
function recesses(layout: Layout): Operation[] {
  const { neck, design } = layout
  const half = design.neck.width / 2
  const holds = (other: NeckCut, cut: NeckCut) =>
    other.x0 <= cut.x0 && other.x1 >= cut.x1 && other.top <= cut.top
  // Of cuts that are alike the first is made.
  const hidden = (cut: NeckCut, index: number) =>
    neck.cuts.some((other, at) => at !== index && holds(other, cut) && (at < index || !holds(cut, other)))
  return neck.cuts
    .filter((cut, index) => !hidden(cut, index) && cut.top < neck.top)
    .map((cut, index) => {
      const reach = half + RUN_OUT * (1 + index / 2)
      const depth = Math.min(neck.top - cut.top, design.neck.thickness)
      return recess(rectangle(cut.x0, -reach, cut.x1, reach), depth, capital(cut.of))
    })
}

const capital = (text: string) => text.charAt(0).toUpperCase() + text.slice(1)

function tailHoles(layout: Layout): Operation[] {
  const { tailpiece, neck } = layout.design
  if (tailpiece.at !== 'the tail of the neck' || neck.ends !== 'through the box') return []
  return layout.tailHoles.map(({ x, y }) => drill({ x, y }, tailpiece.diameter, 'String hole'))
}
