/** Designs made to break the rules about the head: ways of the strings, tuners, wood, joint. */
import type { Cases } from './case.ts'

type At = readonly [x: number, y: number]

/**
 * Where a line from a point touches a circle, as the plane geometry of school books has it: the foot of the polar, and from
 * there half a chord to the side where y is greater.
 */
function touch([nx, ny]: At, [px, py]: At, radius: number): At {
  const [dx, dy] = [nx - px, ny - py]
  const square = dx * dx + dy * dy
  const foot = (radius * radius) / square
  const chord = (radius * Math.sqrt(square - radius * radius)) / square
  const [one, other] = [1, -1].map(
    (sign): At => [px + foot * dx - sign * chord * dy, py + foot * dy + sign * chord * dx],
  ) as [At, At]
  return one[1] > other[1] ? one : other
}

/** From a point to the straight line through two others. */
const aside = ([x, y]: At, [ax, ay]: At, [bx, by]: At) =>
  Math.abs((bx - ax) * (ay - y) - (ax - x) * (by - ay)) / Math.hypot(bx - ax, by - ay)

// Posts of the bass row at (-45, -7) and (-77, -7), of the treble row at (-45, 7); the middle string, 0.6 thick, starts at (0, 0).
const gauges = { strings: { gauges: [0.9, 0.6, 0.4], spanAtNut: 24 } }
const past = (post: number) => {
  const way = touch([0, 0], [-77, -7], post / 2 + 0.3)
  const nearest = Math.min(aside([-45, -7], [0, 0], way), aside([-45, 7], [0, 0], way))
  return nearest - post / 2 - 0.3
}

/** The same with the farther post 20 farther out: at the nearer one the strings have changed sides. */
const crossed = () => {
  const [x, y] = touch([0, -12], [-45, -7], 3.45)
  const [farX, farY] = touch([0, 0], [-77, -27], 3.3)
  return (farY * x) / farX - y
}

export const HEAD: Cases = {
  'string-past-post': {
    holds: {},
    breaks: [
      {
        what: 'thick posts',
        design: { ...gauges, headstock: { post: 12 } },
        grade: 'care',
        measured: past(12),
      },
      {
        what: 'posts thicker than the way beside them',
        design: { ...gauges, headstock: { post: 16 } },
        grade: 'stop',
        measured: past(16),
      },
    ],
  },
  'strings-cross-at-head': {
    holds: {},
    breaks: [
      {
        what: 'a farther post farther out',
        design: { ...gauges, headstock: { postStep: -20 } },
        grade: 'stop',
        measured: crossed(),
      },
    ],
  },
  'tuner-knobs': {
    holds: {},
    breaks: [
      { what: 'knobs side by side', design: { headstock: { knobWide: 31 } }, grade: 'care', measured: 1 },
      { what: 'knobs in one', design: { headstock: { postSpacing: 12 } }, grade: 'stop', measured: -2 },
    ],
  },
  'knob-to-head': {
    holds: {},
    breaks: [
      { what: 'knobs at the edge', design: { headstock: { knobFrom: 14 } }, grade: 'care', measured: 2 },
      { what: 'knobs on the head', design: { headstock: { knobFrom: 10 } }, grade: 'stop', measured: -2 },
    ],
  },
  'tuners-apart': {
    holds: {},
    breaks: [
      { what: 'plates that touch', design: { headstock: { bodyIn: 7 } }, grade: 'care', measured: 0 },
      { what: 'plates over each other', design: { headstock: { bodyIn: 8 } }, grade: 'stop', measured: -2 },
    ],
  },
  'wood-in-head': {
    holds: { headstock: { screws: 2, bushing: 'let in' } },
    breaks: [
      // 14 - 11
      { what: 'wide holes', design: { headstock: { postHole: 11 } }, grade: 'care', measured: 3 },
      { what: 'holes in one', design: { headstock: { postHole: 14.5 } }, grade: 'stop', measured: -0.5 },
      // 5 - 4
      { what: 'holes at the edge', design: { headstock: { postEdge: 5 } }, grade: 'care', measured: 1 },
      {
        what: 'a wide bushing',
        design: { headstock: { bushing: 'let in', bushingHole: 11 } },
        grade: 'care',
        measured: 3,
      },
      // 5 - 0.75 - 4
      {
        what: 'screws at the post hole',
        design: { headstock: { screws: 1, screwAlong: 5 } },
        grade: 'care',
        measured: 0.25,
      },
      {
        what: 'screws beyond the edge',
        design: { headstock: { screws: 1, screwIn: -14 } },
        grade: 'stop',
        measured: -2.75,
      },
      // 14 - 13.5 and 14 - 15
      {
        what: 'deep pilot holes',
        design: { headstock: { screws: 1, screwDepth: 13.5 } },
        grade: 'care',
        measured: 0.5,
      },
      {
        what: 'bushings longer than the head is thick',
        design: { headstock: { bushing: 'let in', bushingDepth: 15 } },
        grade: 'stop',
        measured: -1,
      },
    ],
  },
  'scarf-glued': {
    holds: { headstock: { form: 'scarfed' } },
    breaks: [
      // 19 / sin 30
      {
        what: 'a steep scarf',
        design: { headstock: { form: 'scarfed', tiltDegrees: 30 } },
        grade: 'care',
        measured: 38,
      },
    ],
  },
  'head-from-blank': {
    holds: { headstock: { form: 'scarfed' } },
    breaks: [
      // 19 - 8 - 14
      { what: 'a step', design: { headstock: { form: 'stepped' } }, grade: 'note', measured: -3 },
      {
        what: 'a step below the neck',
        design: { headstock: { form: 'stepped', step: 20 } },
        grade: 'stop',
        measured: -15,
      },
      {
        what: 'a scarfed head thicker than its stick',
        design: { headstock: { form: 'scarfed', thickness: 25 } },
        grade: 'note',
        measured: -6,
      },
    ],
  },
}
