/** What an instrument weighs, piece by piece, and where each piece has its middle. Grams, millimetres. */

import { insidePiecesOf, isWood } from '../box/inside-pieces.ts'
import { lidStuffOf } from '../loads/lid-loads.ts'
import { loadsOf } from '../loads/loads.ts'
import { slopeOf, woodOf } from '../loads/neck-pieces.ts'
import { lidStuffNamed } from '../neck/named-woods.ts'
import { halfWidthAt } from '../neck/neck.ts'
import { BARS, PANELS, type Wood } from '../neck/woods.ts'
import { area } from '../plane/index.ts'
import { notes } from '../quantity/notes.ts'
import { thingSolids } from '../solids/bodies.ts'
import type { Layout, Placed } from '../solve/layout.ts'
import { placedOn } from '../solve/on-face.ts'
import { neckVolume } from './neck-volume.ts'

export interface Piece {
  /** What it is: structure by its name, or the id of a thing. */
  readonly what: string
  /** Grams. */
  readonly mass: number
  /** Along the instrument, from the nut. */
  readonly x: number
  /** Where the number comes from. */
  readonly from: 'volume and density' | 'stated' | 'unit mass'
  /** The wood reckoned with, by its title. */
  readonly wood?: string
}

/** Densities are kg/mm³. */
const GRAMS = 1000

/** Density of music wire, kg/mm³, where a string's own mass is not known. ASTM A228 data sheet: 0.284 lb/in³. */
const STEEL_WIRE = 7861e-9

/** Everything that is known to weigh something, in the order in which it is built. Estimates: glue, finish, frets and screws are left out. */
export function piecesByWeight(layout: Layout): Piece[] {
  return [...boxPieces(layout), ...neckPieces(layout), ...fittings(layout)].filter((one) => one.mass > 0)
}

const wooden = (what: string, wood: Wood, volume: number, x: number): Piece => ({
  what,
  mass: Math.max(0, volume) * wood.density * GRAMS,
  x,
  from: 'volume and density',
  wood: wood.title,
})

const weighed = (what: string, mass: number, x: number): Piece => ({ what, mass, x, from: 'stated' })

function boxPieces(layout: Layout): Piece[] {
  const { box, panels, design, neck } = layout
  const stuff = lidStuffNamed(design.balance.walls, design.woods) ?? PANELS.plywood
  const plate = (face: 'lid' | 'base', wood: Wood) => {
    const { outline, bounds: extent, thickness, originX } = panels[face]
    const holes = placedOn(layout, face)
      .flatMap(({ openings }) => openings)
      .reduce((sum, hole) => sum + area(hole), 0)
    return wooden(face, wood, (area(outline) - holes) * thickness, originX + (extent.minX + extent.maxX) / 2)
  }
  const high = Math.max(0, box.wallTop - box.wallBottom)
  const slot = (face: string) => {
    const cut = neck.slots.find((one) => one.face === face)
    return cut ? cut.width * Math.min(cut.depth, high) : 0
  }
  const { walls, width, cornerRadius } = design.box
  const long = box.insideX1 - box.insideX0
  // Rounded corners lose the same at both ends; the side walls bear it.
  const round = (4 - Math.PI) * cornerRadius * cornerRadius * high
  const middle = (box.insideX0 + box.insideX1) / 2
  const side = (what: string, thick: number) => wooden(what, stuff, long * thick * high - round / 2, middle)
  return [
    plate('lid', lidStuffOf(design)),
    plate('base', stuff),
    wooden(
      'neck-end wall',
      stuff,
      (width * high - slot('neck-end-wall')) * walls.neckEnd,
      (box.x0 + box.insideX0) / 2,
    ),
    wooden(
      'tail-end wall',
      stuff,
      (width * high - slot('tail-end-wall')) * walls.tailEnd,
      (box.x1 + box.insideX1) / 2,
    ),
    side('bass wall', walls.bass),
    side('treble wall', walls.treble),
    ...insidePiecesOf(layout).map(({ piece, box: room }) =>
      isWood(piece)
        ? wooden(piece.id, stuff, piece.long * piece.wide * piece.tall, (room.minX + room.maxX) / 2)
        : weighed(piece.id, design.balance.hardware, (room.minX + room.maxX) / 2),
    ),
  ]
}

function neckPieces(layout: Layout): Piece[] {
  const { neck, board, box, design, saddle } = layout
  const wood = woodOf(design.neck.wood, design)
  const whole = neckVolume(layout, neck.x0, neck.x1)
  const pieces = [wooden('neck', wood, whole.volume, whole.x)]
  const { bar } = design.neck
  if (bar.kind !== 'none') {
    const metal = bar.kind.startsWith('steel')
      ? BARS.steel
      : bar.kind.startsWith('carbon')
        ? BARS.carbon
        : BARS.aluminium
    const [from, to] = [Math.max(bar.from, neck.x0), Math.min(bar.to, neck.x1)]
    const section = bar.kind.endsWith('rod')
      ? (Math.PI / 4) * bar.width ** 2
      : bar.width * Math.min(bar.height, neck.top - neck.bottom)
    // What it weighs more than the wood it stands in.
    const more = { ...metal, density: Math.max(0, metal.density - wood.density) }
    pieces.push(wooden('bar', more, Math.max(0, to - from) * section, (from + to) / 2))
  }
  if (board) {
    const lump = neckVolume(
      { neck: { ...neck, stretches: [{ x0: board.x0, x1: board.x1, top: 1, bottom: 0, of: 'neck' }] } },
      board.x0,
      board.x1,
    )
    pieces.push(
      wooden('board', woodOf(design.board.wood, design), lump.volume * (board.top - board.bottom), lump.x),
    )
  }
  const { reinforcement, reinforcementLength } = design.headstock
  if (reinforcement > 0) {
    const slope = slopeOf(layout)
    const middle = (slope.x0 + slope.x1) / 2
    pieces.push(
      wooden('headstock', wood, reinforcement * reinforcementLength * 2 * halfWidthAt(neck, middle), middle),
    )
  }
  if (neck.block) {
    const { minX, maxX, minY, maxY } = neck.block
    const high = Math.max(0, Math.min(neck.bottom, box.lidBottom) - box.baseTop)
    pieces.push(wooden('neck block', wood, (maxX - minX) * (maxY - minY) * high, (minX + maxX) / 2))
  }
  const { brace } = design
  if (brace.height > 0) {
    const across = brace.runs === 'across'
    const long = across ? box.insideTreble - box.insideBass : box.insideX1 - box.insideX0
    const x = across ? saddle.x + brace.offset : (box.insideX0 + box.insideX1) / 2
    pieces.push(wooden('brace', woodOf(brace.wood, design), long * brace.height * brace.width, x))
  }
  return pieces
}

/** What is bought and weighed. */
function fittings(layout: Layout): Piece[] {
  const { design, posts, saddle, placed, panels, box, tailHoles } = layout
  const { balance } = design
  const middleOf = (xs: readonly number[]) => xs.reduce((sum, x) => sum + x, 0) / Math.max(xs.length, 1)
  const pieces = [
    weighed('tuners', balance.tuner * posts.length, middleOf(posts.map((one) => one.x))),
    weighed('saddle and nut', balance.saddleAndNut, saddle.x / 2),
    weighed('tailpiece', balance.tailpiece, tailHoles[0]?.x ?? box.x1),
    stringsPiece(layout),
  ]
  for (const { thing, kind, face, at } of placed) {
    const endWall = face === 'neck-end-wall' || face === 'tail-end-wall'
    const x = panels[face].originX + (endWall ? 0 : at.x)
    if (kind.activeWidth) pieces.push(weighed(thing.id, balance.pickup, x))
    else if (kind.group === 'Pickups and controls' || kind.group === 'Strings and fittings')
      pieces.push(weighed(thing.id, balance.hardware, x))
  }
  // What is glued in is of the brace's wood.
  const glued = woodOf(design.brace.wood, design)
  for (const { of, contour, from, to, box: room } of gluedIn(layout))
    pieces.push(wooden(of, glued, area(contour) * (to - from), (room.minX + room.maxX) / 2))
  pieces.push(weighed('ballast', balance.ballast, box.insideX1 - balance.ballastFromTail))
  return pieces
}

const ofWood = notes<Placed['thing'], boolean>()

/** Bodies of wood. Where no thing on the faces has any, which is remembered, nothing is worked out. */
function gluedIn(layout: Layout) {
  if (layout.placed.every(({ thing }) => ofWood.get(thing) === false)) return []
  const glued = thingSolids(layout).filter((one) => one.sort === 'wood')
  for (const { thing } of layout.placed)
    ofWood.set(
      thing,
      glued.some((one) => one.of === thing.id),
    )
  return glued
}

/** All strings as one piece, from post to hole. */
function stringsPiece(layout: Layout): Piece {
  const loads = loadsOf(layout).strings
  let mass = 0
  let moment = 0
  layout.strings.forEach((string, index) => {
    const from = string.post?.x ?? 0
    const to = string.tail?.x ?? layout.saddle.x
    const plain = (Math.PI / 4) * string.gauge ** 2 * STEEL_WIRE
    const own = (loads[index]?.body?.unitMass ?? plain) * (to - from) * GRAMS
    mass += own
    moment += (own * (from + to)) / 2
  })
  return { what: 'strings', mass, x: mass > 0 ? moment / mass : 0, from: 'unit mass' }
}
