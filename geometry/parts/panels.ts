/** Lid, base and walls as parts: what stands on them, the neck slots, and the lines to measure from. */

import { endsOf, wallLinesOf } from '../box/outlines.ts'
import type { Face } from '../kinds/kind.ts'
import { loadsOf } from '../loads/loads.ts'
import { type Contour, move, type Point, placePoint, rectangle, turn } from '../plane/index.ts'
import { formatLength } from '../quantity/index.ts'
import { notes } from '../quantity/notes.ts'
import type { Layout, Panel, Placed } from '../solve/layout.ts'
import { measuredOn } from '../solve/measures.ts'
import { placedOn } from '../solve/on-face.ts'
import { stringAt } from '../solve/solve.ts'
import { groundHoleOf } from '../strings/ground-hole.ts'
import { bevelLines } from './bevels.ts'
import { keptLines } from './kept.ts'
import { cut, datum, datumBox, drill, mark, note, RUN_OUT, recess, SHORTEST_LINE } from './operations.ts'
import type { Operation, Part } from './part.ts'
import { flipContour, flipOf, flipOperation, flipOperations, mirrorPart } from './sheet-frame.ts'

const TITLES: Record<Face, string> = {
  lid: 'Lid',
  base: 'Base',
  'neck-end-wall': 'Neck-end wall',
  'tail-end-wall': 'Tail-end wall',
  'bass-wall': 'Bass wall',
  'treble-wall': 'Treble wall',
}

/** One face of the box as a part, seen from outside. */
export function panelPart(layout: Layout, face: Face): Part {
  const panel = layout.panels[face]
  const flip = flipOf(face, layout.up)
  const operations = [
    ...placedOn(layout, face).flatMap((placed) => operationsOf(placed).outside),
    ...structure(layout, panel),
    ...(layout.design.measures.length > 0 ? measures(layout, face) : []),
    ...keptLines(layout, panel),
  ]
  return {
    id: face,
    title: TITLES[face],
    seen: 'from outside',
    mirrored: false,
    headEnd: headEnd(face, layout.up),
    hand: layout.design.hand,
    thickness: panel.thickness,
    outline: flipContour(panel.outline, flip),
    operations: flipOperations(operations, flip),
  }
}

/** Measures that the builder wants on the sheet: a line to measure from and its figure, never cut. */
function measures(layout: Layout, face: Face): Operation[] {
  return measuredOn(layout)
    .filter(({ measure, mm }) => measure.onSheets && measure.face === face && mm > SHORTEST_LINE)
    .flatMap(({ measure: { name }, from, to, mm }) => {
      const figure = formatLength(mm, layout.design.units, { unit: true })
      const text = name ? `${name} ${figure}` : figure
      const at = { x: (from.x + to.x) / 2 + 1, y: (from.y + to.y) / 2 + 1 }
      return [datum(from, to, 'Measure'), note(at, text, 'Measure')]
    })
}

function headEnd(face: Face, up: Layout['up']): Part['headEnd'] {
  if (face === 'neck-end-wall') return 'towards the viewer'
  if (face === 'tail-end-wall') return 'away from the viewer'
  return flipOf(face, up) === 'x' ? 'right' : 'left'
}

/**
 * The inner side of a face as a part of its own, where something is taken out there; seen from inside the box, so it
 * is the mirror image of the outer side. Holes through it are shown by their centres.
 */
export function insidePart(layout: Layout, face: Face): Part[] {
  const here = placedOn(layout, face).filter((placed) => operationsOf(placed).inside.length > 0)
  if (here.length === 0) return []
  const outside = panelPart(layout, face)
  const flip = flipOf(face, layout.up)
  const operations = here
    .flatMap((placed) => operationsOf(placed).inside)
    .map((one) => flipOperation(one, flip))
  const lines = outside.operations.filter((one) => one.kind === 'datum' && one.of === 'Centreline')
  const inside = mirrorPart({ ...outside, operations: [...operations, ...lines] })
  return [{ ...inside, id: `${face}-inside`, title: `${TITLES[face]}, inner side`, seen: 'from inside' }]
}

interface Done {
  readonly outside: readonly Operation[]
  readonly inside: readonly Operation[]
}

const done = notes<Placed, Done>()

/** What a thing does to its face, moved from its own frame to where it stands; remembered while it stands there. */
function operationsOf(placed: Placed): Done {
  const before = done.get(placed)
  if (before) return before
  const { thing, kind, at } = placed
  const of = thing.name || kind.title
  const angle = (thing.turnDegrees * Math.PI) / 180
  const put = (contour: Contour) => move(turn(contour, angle), at.x, at.y)
  const putPoint = (point: Point) => placePoint(point, { x: at.x, y: at.y, turn: angle, mirrored: false })
  const outside: Operation[] = []
  const inside: Operation[] = []
  for (const one of kind.operations(thing)) {
    if (one.kind === 'drill') outside.push(drill(one.at ? putPoint(one.at) : at, one.diameter, of, one.depth))
    else if (one.kind === 'cut') outside.push(cut(put(one.contour), of))
    else (one.from === 'inside' ? inside : outside).push(recess(put(one.contour), one.depth, of))
  }
  const operations = { outside, inside }
  done.set(placed, operations)
  return operations
}

function structure(layout: Layout, panel: Panel): Operation[] {
  const { minY, maxY } = panel.bounds
  if (panel.face === 'lid') return [...lidLines(layout, panel), ...tailHoles(layout, 'the lid', panel)]
  if (panel.face === 'base') {
    const [from, to] = endsOf(layout, 'base')
    return [datum({ x: from, y: 0 }, { x: to, y: 0 }, 'Centreline')]
  }
  return [
    datum({ x: 0, y: minY }, { x: 0, y: maxY }, 'Centreline'),
    ...neckSlot(layout, panel),
    ...(panel.face === 'tail-end-wall'
      ? [...tailHoles(layout, 'the tail-end wall', panel), ...groundHole(layout)]
      : []),
  ]
}

function lidLines(layout: Layout, panel: Panel): Operation[] {
  const { box, neck, saddle, strings, design } = layout
  const [minX, maxX] = endsOf(layout, 'lid')
  const here = (x: number) => x - panel.originX
  const half = design.neck.width / 2
  const neckTo = Math.min(here(neck.x1), maxX)
  // A lid let in between the walls ends at their inside: nothing to draw.
  const inside =
    design.box.lid.fit === 'between the walls'
      ? []
      : layout.real
        ? insideLines(layout, panel)
        : datumBox(
            here(box.insideX0),
            box.insideBass,
            here(box.insideX1),
            box.insideTreble,
            'Inside of the walls',
          )
  const from = Math.max(minX, here(0))
  const to = Math.min(saddle.along, maxX)
  return [
    ...(saddle.along > minX && saddle.along < maxX
      ? [
          mark(
            { x: saddle.along, y: saddle.foot.minY },
            { x: saddle.along, y: saddle.foot.maxY },
            'Saddle line',
          ),
          ...saddleRoom(layout, panel),
        ]
      : []),
    datum({ x: minX, y: 0 }, { x: maxX, y: 0 }, 'Centreline'),
    ...bevelLines(design.box.lid, panel),
    ...(neckTo - minX > SHORTEST_LINE
      ? [
          datum({ x: minX, y: -half }, { x: neckTo, y: -half }, 'Neck under the lid'),
          datum({ x: minX, y: half }, { x: neckTo, y: half }, 'Neck under the lid'),
        ]
      : []),
    ...inside,
    ...strings
      // A string on the centreline is drawn already.
      .filter((string) => to - from > SHORTEST_LINE && (string.yAtNut !== 0 || string.yAtSaddle !== 0))
      .map((string) =>
        datum(
          { x: from, y: stringAt(string, from + panel.originX, saddle.x) },
          { x: to, y: stringAt(string, to + panel.originX, saddle.x) },
          `String ${string.number}`,
        ),
      ),
  ]
}

/** Where a loose saddle must be free to stand, and the straight line on which it plays in tune by estimate. */
function saddleRoom(layout: Layout, panel: Panel): Operation[] {
  const { missing, saddle } = loadsOf(layout)
  if (missing) return []
  const { minX, maxX } = panel.bounds
  const { minY, maxY } = layout.saddle.foot
  const across = (x: number, of: string) => {
    const here = x - panel.originX
    return here > minX && here < maxX ? [datum({ x: here, y: minY }, { x: here, y: maxY }, of)] : []
  }
  const { line, band } = saddle
  const inTune = (y: number) => ({
    x: layout.design.scale.length + (line?.atCentre ?? 0) + Math.tan(line?.slant ?? 0) * y - panel.originX,
    y,
  })
  return [
    ...across(band.from, 'A loose saddle stands free from here'),
    ...across(band.to, 'A loose saddle stands free to here'),
    ...(line && [inTune(minY), inTune(maxY)].every(({ x }) => x > minX && x < maxX)
      ? [datum(inTune(minY), inTune(maxY), 'Saddle in tune, by estimate')]
      : []),
  ]
}

function insideLines(layout: Layout, panel: Panel): Operation[] {
  const { inside } = wallLinesOf(layout)
  const walls = inside && move(inside, -panel.originX, 0)
  return walls?.shape === 'chain' ? [{ kind: 'datum', line: walls, of: 'Inside of the walls' }] : []
}

function neckSlot(layout: Layout, panel: Panel): Operation[] {
  const slot = layout.neck.slots.find((one) => one.face === panel.face)
  if (!slot || slot.depth <= 0) return []
  // Of a box whose lid and base meet nothing is left of a wall; the checks say so, the drawing stays a drawing.
  const height = Math.max(layout.real ? slot.depth + slot.wallLeftBelow : -panel.bounds.minY, SHORTEST_LINE)
  const depth = past(slot.depth, height)
  const half = past(slot.width / 2, panel.bounds.maxX)
  return [cut(rectangle(-half, -depth, half, RUN_OUT), 'Neck slot')]
}

/** What reaches an edge is cut on beyond it: a line along the edge would be cut twice. */
const past = (reach: number, edge: number): number => (reach > edge - SHORTEST_LINE ? edge + RUN_OUT : reach)

/** The way of the wire that grounds the strings. */
function groundHole(layout: Layout): Operation[] {
  const hole = groundHoleOf(layout)
  return hole ? [drill(hole.centre, 2 * hole.radius, 'Ground wire')] : []
}

/** Holes for the strings, where they go through this face. */
function tailHoles(layout: Layout, at: Layout['design']['tailpiece']['at'], panel: Panel): Operation[] {
  if (layout.design.tailpiece.at !== at) return []
  return layout.tailHoles.map((hole) => {
    const centre =
      at === 'the lid'
        ? { x: hole.x - panel.originX, y: hole.y }
        : { x: hole.y, y: hole.z - layout.box.wallTop }
    return drill(centre, layout.design.tailpiece.diameter, 'String hole')
  })
}
