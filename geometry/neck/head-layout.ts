/**
 * The head as it is laid out on its own face: outline, what each tuner takes up, and the way of each string to its post.
 *
 * Frame of the face: x is minus the length along it from the front of the nut, y across with the treble side positive. Of a
 * head that is not tilted that is the plan itself; `toPlan` brings a tilted one there.
 */

import type { Design } from '../design/schema.ts'
import { type Chain, type Circle, circle, type Point, polygon } from '../plane/index.ts'
import { notes } from '../quantity/notes.ts'
import type { Layout } from '../solve/layout.ts'
import { alongFace, onPlan } from './head-form.ts'
import { headCorners, headEdgesAt } from './headstock.ts'
import { SHOULDER } from './neck.ts'

/** One tuner in its place. */
export interface Tuner {
  readonly post: Point
  readonly side: 'bass' | 'treble'
  /** Unit vectors: the way to the next post on its side, and out of the head across that. */
  readonly along: Point
  readonly outward: Point
  /** The post itself, where the string winds. */
  readonly round: Circle
  /** The widest hole drilled for it. */
  readonly hole: Circle
  /** Plate or housing behind the head, and the knob beside it, each from its near end on; `null` where it has none. */
  readonly body: Chain | null
  readonly knob: Chain | null
  readonly screws: readonly Point[]
}

/** A string from the front of the nut to where it touches its post, on the inner side of it. */
export interface HeadPath {
  readonly index: number
  readonly number: number
  readonly gauge: number
  readonly from: Point
  readonly to: Point
  /** Index of its tuner. */
  readonly tuner: number
}

export interface HeadLayout {
  readonly outline: Chain
  readonly tuners: readonly Tuner[]
  readonly paths: readonly HeadPath[]
  /** A place on the face as it shows on the plan. */
  readonly toPlan: (at: Point) => Point
}

interface Known {
  readonly strings: Design['strings']
  readonly widthAtNut: number
  readonly nutBack: number
  readonly answer: HeadLayout
}

const known = notes<Design['headstock'], Known>()

/**
 * The head of a layout. Worked out when asked for and remembered as long as head, nut and strings stay as they are, so that a
 * drag of anything else costs nothing.
 * Example: `headOf(layout).paths[0].to` is where the bass string touches its post.
 */
export function headOf(layout: Layout): HeadLayout {
  const { headstock, strings, neck } = layout.design
  const nutBack = layout.nut.x0
  const before = known.get(headstock)
  if (
    before &&
    before.strings === strings &&
    before.widthAtNut === neck.widthAtNut &&
    before.nutBack === nutBack
  )
    return before.answer
  const answer = laidOut(layout)
  known.set(headstock, { strings, widthAtNut: neck.widthAtNut, nutBack, answer })
  return answer
}

function laidOut(layout: Layout): HeadLayout {
  const head = layout.design.headstock
  const nutBack = layout.nut.x0
  const tuners = layout.posts.map(({ x, y, side }) =>
    tunerAt(head, { x: -alongFace(head, nutBack, x), y }, side),
  )
  return {
    outline: headOutline(layout.design, nutBack),
    tuners,
    paths: pathsTo(layout, tuners),
    toPlan: ({ x, y }) => ({ x: onPlan(head, nutBack, -x), y }),
  }
}

/**
 * Outline of the head's face from its end to the back of the nut; `beyond` goes on past it by so much, as wide as the neck
 * is there, for the bevel of a scarf.
 */
export function headOutline({ headstock, neck }: Design, nutBack: number, beyond = 0): Chain {
  // A head shorter than its nut is thick is drawn as a stub.
  const from = Math.max(0, Math.min(-nutBack, headstock.length - 1))
  const shoulder = Math.min(headstock.length, from + SHOULDER)
  const behind = [...headCorners(headstock), headstock.length].filter((along) => along > shoulder)
  const atNut = neck.widthAtNut / 2
  const side = (which: 'bass' | 'treble'): Point[] => {
    const sign = which === 'bass' ? -1 : 1
    return [
      ...(beyond > 0 ? [{ x: -from + beyond, y: sign * atNut }] : []),
      { x: -from, y: sign * atNut },
      ...(shoulder > from ? [{ x: -shoulder, y: (sign * headstock.width) / 2 }] : []),
      ...behind.map((along) => ({ x: -along, y: headEdgesAt(headstock, along)[which] })),
    ]
  }
  return polygon([...side('treble'), ...side('bass').reverse()])
}

/** Narrower than this nothing is drawn: nobody could see it. Millimetres. */
const THINNEST = 1e-3

function tunerAt(head: Design['headstock'], post: Point, side: Tuner['side']): Tuner {
  const sign = side === 'bass' ? -1 : 1
  const long = Math.hypot(head.postSpacing, head.postStep)
  const along = { x: -head.postSpacing / long, y: (-sign * head.postStep) / long }
  // Square to that and out of the head: away from the other side.
  const outward = { x: -head.postStep / long, y: (sign * head.postSpacing) / long }
  const at = (a: number, b: number): Point => ({
    x: post.x + a * along.x + b * outward.x,
    y: post.y + a * along.y + b * outward.y,
  })
  // Counter-clockwise on either side of the head, so that the near end comes first.
  const box = (half: number, near: number, far: number): Chain | null => {
    const [from, to] = [sign * half, -sign * half]
    return half > THINNEST ? polygon([at(from, near), at(to, near), at(to, far), at(from, far)]) : null
  }
  const screw = (a: number) => at(a, -head.screwIn)
  const widest = head.bushing === 'let in' ? Math.max(head.postHole, head.bushingHole) : head.postHole
  return {
    post,
    side,
    along,
    outward,
    round: circle(post, head.post / 2),
    hole: circle(post, widest / 2),
    body: box(head.bodyLong / 2, -head.bodyIn, head.postEdge),
    knob: box(head.knobWide / 2, head.knobFrom, head.knobFrom + head.knobLong),
    screws: [screw(head.screwAlong), screw(-head.screwAlong)].slice(0, head.screws),
  }
}

/** Strings wind on the side of the post that looks to the middle of the head. Common practice. */
function pathsTo({ strings, posts }: Layout, tuners: readonly Tuner[]): HeadPath[] {
  return strings.flatMap(({ index, number, gauge, yAtNut, post }): HeadPath[] => {
    if (!post) return []
    const at = posts.findIndex(({ x, y }) => x === post.x && y === post.y)
    const tuner = tuners[at]
    if (!tuner) return []
    const from = { x: 0, y: yAtNut }
    const to = touching(from, tuner.post, tuner.round.radius + gauge / 2, tuner.side === 'bass' ? 1 : -1)
    return [{ index, number, gauge, from, to, tuner: at }]
  })
}

/** Where a line from a point touches a circle, on the side where y is greater (1) or less (-1). Plane geometry. */
function touching(from: Point, centre: Point, radius: number, side: 1 | -1): Point {
  const dx = centre.x - from.x
  const dy = centre.y - from.y
  const square = dx * dx + dy * dy
  if (square <= radius * radius) return centre
  // Sine and cosine of the angle between the way to the centre and the way to where it touches, times the former's length.
  const cos = Math.sqrt(square - radius * radius)
  const sin = dx < 0 ? -side * radius : side * radius
  return {
    x: from.x + ((dx * cos - dy * sin) / square) * cos,
    y: from.y + ((dx * sin + dy * cos) / square) * cos,
  }
}
