/** The hole for the ground wire against whatever else is in and behind the tail-end wall. */
import { type Circle, clearance, gap, nearest, type Point } from '../../plane/index.ts'
import { behindFace, onFace, roomBetween, solidsNear } from '../../solids/index.ts'
import type { Layout } from '../../solve/layout.ts'
import { groundHoleOf } from '../../strings/ground-hole.ts'
import { gradeLeast, type Rule } from '../finding.ts'

const FACE = 'tail-end-wall'
/** Room for the wire to bend away behind the wall. Common practice, no source. */
const BEND = 5

interface Near {
  readonly mm: number
  readonly of: string
  readonly from: Point
  readonly to: Point
}

const nearer = (a: Near, b: Near): Near => (b.mm < a.mm ? b : a)

/** The least room around the hole: the wall's edge first, then what is cut in the wall, then what stands behind it. */
function tightest(layout: Layout, hole: Circle, grow: number): Near {
  const wall = layout.panels[FACE]
  const edge = clearance(hole, wall.outline)
  let near: Near = { mm: edge.distance, of: FACE, from: edge.from, to: edge.to }
  for (const { face, taken, thing } of layout.placed) {
    if (face !== FACE || !taken) continue
    near = nearer(near, { mm: gap(hole, taken), of: thing.id, ...places(hole, taken) })
  }
  const through = behindFace(
    layout,
    { of: 'ground wire', sort: 'hardware', face: FACE },
    hole,
    0,
    wall.thickness + BEND,
  )
  for (const other of solidsNear(layout, through.box, grow)) {
    // The wall is what it is bored through; a hole of a thing on it was measured above.
    if (other.of === FACE || (other.placed && other.face === FACE && other.sort !== 'fastener')) continue
    const { room, from, to } = roomBetween(through, other)
    near = nearer(near, {
      mm: room,
      of: other.of,
      from: onFace(layout, FACE, from),
      to: onFace(layout, FACE, to),
    })
  }
  return near
}

const places = (hole: Circle, taken: Parameters<typeof nearest>[1]) => {
  const { from, to } = nearest(hole, taken)
  return { from, to }
}

export const groundHoleClear: Rule = {
  name: 'ground-hole-clear',
  title: 'Ground wire hole clear of everything else',
  unit: 'mm',
  wants: 'least',
  limits: ['groundHoleClear'],
  mendedBy: ['tailpiece.groundHole'],
  measure(layout, limit) {
    const hole = groundHoleOf(layout)
    if (!hole) return []
    const wanted = limit('groundHoleClear')
    const { mm, of, from, to } = tightest(layout, hole, 2 * wanted)
    return [
      {
        about: ['tailpiece', 'ground wire', of],
        measured: mm,
        limit: wanted,
        grade: gradeLeast(mm, wanted, 0),
        where: { view: FACE, from, to },
        data: { of },
      },
    ]
  },
  words({ measured, limit, grade, data }, say, layout) {
    const of = String(data?.of)
    const named = layout.placed.some(({ thing }) => thing.id === of)
    const other = named ? say.thing(of) : say.thing(of).replaceAll('-', ' ')
    if (grade === 'stop')
      return `The hole for the ground wire runs into ${other} by ${say.length(-(measured ?? 0))}. Move that aside, or lead the wire another way and state no hole for it.`
    const left = `The hole for the ground wire leaves ${say.length(measured ?? 0)} to ${other}`
    return grade === 'clear' ? `${left}.` : `${left}; it wants ${say.length(limit ?? 0)}.`
  },
}
