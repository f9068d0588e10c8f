/**
 * Lines that take hold of a thing while it is dragged, each with the name that is shown when it does.
 * Pure: places in the face's own frame in, places out. How strong the hold is on the screen is the caller's.
 */
import {
  artworkOf,
  edgesAt,
  type Face,
  type Layout,
  type Placed,
  type Point,
  stringAt,
} from '../../geometry/index.ts'
import { nameOf } from '../parts/say.ts'

export interface Line {
  readonly axis: 'x' | 'y'
  /** Where the centre of the thing comes to lie on that axis. */
  readonly at: number
  readonly name: string
}

export interface Held {
  readonly at: Point
  readonly lines: readonly Line[]
}

const SHARES: readonly (readonly [number, string])[] = [
  [1 / 4, 'a quarter of the scale from the saddle'],
  [1 / 2, 'half the scale from the saddle'],
  [3 / 4, 'three quarters of the scale from the saddle'],
]

/** Every line that could hold this thing near `at`; the thing itself and what follows it are left out. */
export function linesFor(layout: Layout, placed: Placed, at: Point, followers: ReadonlySet<string>): Line[] {
  const { face } = placed
  const plan = face === 'lid' || face === 'base'
  const edge = edgesAt(layout, face, at)
  const lines: Line[] = [
    {
      axis: 'x',
      at: plan ? (edge.minX + edge.maxX) / 2 : 0,
      name: plan ? 'middle of the face' : 'centreline of the wall',
    },
    plan
      ? { axis: 'y', at: 0, name: 'centreline' }
      : { axis: 'y', at: (edge.minY + edge.maxY) / 2, name: 'half way down the wall' },
    ...marginLines(edge, at),
  ]
  if (plan) lines.push(...planLines(layout, face, at))
  lines.push(...artworkLines(layout, placed, at))
  for (const other of layout.placed) {
    if (other.face !== face || other.thing.id === placed.thing.id || followers.has(other.thing.id)) continue
    const name = nameOf(other.thing.id, layout)
    lines.push({ axis: 'x', at: other.at.x, name: `in line with ${name}` })
    lines.push({ axis: 'y', at: other.at.y, name: `in line with ${name}` })
    if (plan) lines.push({ axis: 'y', at: -other.at.y, name: `mirror place of ${name}` })
    else lines.push({ axis: 'x', at: -other.at.x, name: `mirror place of ${name}` })
  }
  return lines
}

/** Where a thing just keeps the distance that a picture beside it asks for; over it nothing takes hold. */
function artworkLines(layout: Layout, placed: Placed, at: Point): Line[] {
  const { face, bounds, at: was } = placed
  const reach = {
    left: was.x - bounds.minX,
    right: bounds.maxX - was.x,
    low: was.y - bounds.minY,
    high: bounds.maxY - was.y,
  }
  return artworkOf(layout).flatMap(({ art, face: on, bounds: picture }): Line[] => {
    if (on !== face) return []
    const name = `${art.keep > 0 ? 'clear of' : 'beside'} ${nameOf(art.id, layout)}`
    const beside = at.y + reach.high > picture.minY - art.keep && at.y - reach.low < picture.maxY + art.keep
    const above = at.x + reach.right > picture.minX - art.keep && at.x - reach.left < picture.maxX + art.keep
    return [
      ...(beside
        ? [
            { axis: 'x', at: picture.minX - art.keep - reach.right, name } as const,
            { axis: 'x', at: picture.maxX + art.keep + reach.left, name } as const,
          ]
        : []),
      ...(above
        ? [
            { axis: 'y', at: picture.minY - art.keep - reach.high, name } as const,
            { axis: 'y', at: picture.maxY + art.keep + reach.low, name } as const,
          ]
        : []),
    ]
  })
}

/** Where the centre is as far from the nearer end edge as from the nearer side edge. */
function marginLines(edge: { minX: number; maxX: number; minY: number; maxY: number }, at: Point): Line[] {
  const across = Math.min(at.y - edge.minY, edge.maxY - at.y)
  const along = Math.min(at.x - edge.minX, edge.maxX - at.x)
  const name = 'equal margins to both edges'
  const fromHead = at.x - edge.minX <= edge.maxX - at.x
  const fromBass = at.y - edge.minY <= edge.maxY - at.y
  return [
    { axis: 'x', at: fromHead ? edge.minX + across : edge.maxX - across, name },
    { axis: 'y', at: fromBass ? edge.minY + along : edge.maxY - along, name },
  ]
}

function planLines(layout: Layout, face: Face, at: Point): Line[] {
  const { saddle, design, panels, strings, box } = layout
  const origin = panels[face].originX
  const edge = edgesAt(layout, face, at)
  const half = design.neck.width / 2
  const here = at.x + origin
  const under = here > 0 && here < saddle.x
  return [
    ...SHARES.map(
      ([share, name]): Line => ({ axis: 'x', at: saddle.x - share * design.scale.length - origin, name }),
    ),
    {
      axis: 'x',
      at: (saddle.x + box.insideX1) / 2 - origin,
      name: 'midway between saddle and tail-end wall',
    },
    { axis: 'x', at: (saddle.x + box.x0) / 2 - origin, name: 'midway between saddle and neck-end edge' },
    { axis: 'y', at: (half + edge.maxY) / 2, name: 'midway between neck and treble edge' },
    { axis: 'y', at: (-half + edge.minY) / 2, name: 'midway between neck and bass edge' },
    { axis: 'x', at: saddle.x - origin, name: 'on the saddle line' },
    ...(under
      ? strings.map(
          (string): Line => ({
            axis: 'y',
            at: stringAt(string, here, saddle.x),
            name: `under string ${string.number}`,
          }),
        )
      : []),
  ]
}

/**
 * The place after the nearest line of each axis, if one is within `reach` millimetres, has taken hold.
 * Equal margins hang on where the other axis came to rest, so they are asked last.
 */
export function hold(
  layout: Layout,
  placed: Placed,
  at: Point,
  reach: number,
  followers: ReadonlySet<string>,
): Held {
  const first = takeHold(
    linesFor(layout, placed, at, followers).filter((one) => !one.name.startsWith('equal')),
    at,
    reach,
  )
  if (first.lines.length === 2) return first
  const free = first.lines[0]?.axis === 'x' ? 'y' : 'x'
  const margins = linesFor(layout, placed, first.at, followers).filter(
    (one) => one.name.startsWith('equal') && one.axis === free,
  )
  const then = takeHold(margins, first.at, reach)
  return { at: then.at, lines: [...first.lines, ...then.lines] }
}

function takeHold(lines: readonly Line[], at: Point, reach: number): Held {
  const taken: Line[] = []
  const held = { ...at }
  for (const axis of ['x', 'y'] as const) {
    let best: Line | null = null
    for (const line of lines) {
      if (line.axis !== axis || Math.abs(line.at - at[axis]) > reach) continue
      if (!best || Math.abs(line.at - at[axis]) < Math.abs(best.at - at[axis]) - 1e-9) best = line
    }
    if (!best) continue
    held[axis] = best.at
    taken.push(best)
  }
  return { at: held, lines: taken }
}
