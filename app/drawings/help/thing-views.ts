/** What things on a face look like, seen from outside and cut across: the outer side above. */
import {
  area,
  body,
  circle,
  type Drawing,
  dash,
  gap,
  hole,
  type Ink,
  line,
  metal,
  over,
  poly,
  rect,
  way,
} from './pen.ts'
import { face, faceSeen, plan } from './views.ts'

export const opening = over(faceSeen, hole(rect(26, 17, 44, 30)))
export const recess = over(face, hole(rect(28, 24, 40, 8)))
export const holed = over(face, hole(rect(40, 24, 16, 16)))

/** A control cut across: face from 32 to 40, body behind it, thread to 20, washer and nut, shaft to 5, knob as it goes on. */
export const mounted = over(
  body(rect(2, 32, 92, 8)),
  metal(rect(28, 40, 40, 15), rect(42, 20, 12, 20), rect(33, 29.5, 30, 2.5), rect(36, 24.5, 24, 5)),
)
export const control = over(mounted, metal(rect(45, 5, 6, 15)))
export const knobOn = over(
  body(rect(2, 40, 92, 8)),
  metal(rect(30, 48, 36, 10), rect(42, 34, 12, 14), rect(45, 16, 6, 18)),
  body(
    poly(
      30,
      8,
      66,
      8,
      66,
      36,
      58,
      36,
      58,
      32,
      51.6,
      32,
      51.6,
      16,
      44.4,
      16,
      44.4,
      32,
      38,
      32,
      38,
      36,
      30,
      36,
    ),
  ),
)

/** A face too thick for the thread, bored wider from one side. */
export const bored = {
  none: over(body(rect(2, 22, 92, 20)), hole(rect(42, 22, 12, 20))),
  'from inside': over(
    body(rect(2, 22, 92, 20)),
    hole(poly(42, 22, 54, 22, 54, 31, 66, 31, 66, 42, 30, 42, 30, 31, 42, 31)),
  ),
  'from outside': over(
    body(rect(2, 22, 92, 20)),
    hole(poly(30, 22, 66, 22, 66, 33, 54, 33, 54, 42, 42, 42, 42, 33, 30, 33)),
  ),
} as const

/** What stands behind a face, seen through it. */
export const behind = over(faceSeen, dash(rect(30, 20, 36, 24)), metal(circle(48, 32, 5)))

/** A round hole with a step around it that a ring lies on. */
export const rim = over(face, hole(poly(24, 24, 72, 24, 72, 31, 62, 31, 62, 40, 34, 40, 34, 31, 24, 31)))

/** A screw through a face into what lies behind: the point at 54. */
export const screwIn = (top: Ink) =>
  over(
    body(rect(2, 22, 92, 12), rect(20, 34, 56, 28)),
    hole(rect(43.5, 22, 9, 12)),
    metal(poly(45, 22, 51, 22, 51, 48, 48, 56, 45, 48)),
    top,
  )
export const countersunk = screwIn(metal(poly(38, 22, 58, 22, 51, 29, 45, 29)))
export const plateScrew = over(screwIn(metal(rect(22, 14, 52, 8), poly(40, 10, 56, 10, 54, 14, 42, 14))))
export const button = screwIn(
  metal(poly(36, 22, 60, 22, 60, 18, 53, 15, 53, 9, 58, 5, 38, 5, 43, 9, 43, 15, 36, 18)),
)

export const pickup = over(
  plan,
  hole(rect(56, 19, 12, 30)),
  line(...[26, 31, 37, 42].map((y) => way(0, y, 88, y))),
)

export const field = over(faceSeen, dash(circle(48, 32, 22)))
export const ring = (r: number, count: number, start = 0) =>
  Array.from({ length: count }, (_, i) => {
    const turn = start + (i * 2 * Math.PI) / count
    return circle(48 + r * Math.cos(turn), 32 + r * Math.sin(turn), 2.6)
  })
export const rings = hole(circle(48, 32, 2.6), ...ring(9, 6), ...ring(18, 12))
export const GOLDEN = Math.PI * (3 - Math.sqrt(5))
export const spiral = hole(
  ...Array.from({ length: 22 }, (_, i) => {
    const [r, turn] = [4.3 * Math.sqrt(i + 0.4), i * GOLDEN]
    return circle(48 + r * Math.cos(turn), 32 + r * Math.sin(turn), 2.2)
  }),
)
export const rows = (shift: number) =>
  hole(
    ...[-2, -1, 0, 1, 2].flatMap((row) =>
      [-2, -1, 0, 1, 2]
        .map((column) => [column * 9 + (row % 2 === 0 ? 0 : shift), row * 9] as const)
        .filter(([x, y]) => Math.hypot(x, y) < 20)
        .map(([x, y]) => circle(48 + x, 32 + y, 2.4)),
    ),
  )

export const grid = hole(
  ...[-18, -9, 0, 9, 18].flatMap((x) => [-18, -9, 0, 9, 18].map((y) => circle(48 + x, 32 + y, 2.4))),
)

export const hatch = over(faceSeen, line(rect(20, 12, 56, 40, 14)), hole(rect(28, 20, 40, 24, 6)))

export const plateSeen = over(
  faceSeen,
  metal(rect(32, 12, 32, 40, 5)),
  gap(circle(48, 20, 2.6), circle(48, 32, 2.6), circle(48, 44, 2.6)),
)

/** An outline of the builder's own. */
export const curve = poly(26, 34, 34, 22, 46, 26, 58, 18, 70, 30, 62, 44, 46, 40, 36, 46)

export const FACES = {
  lid: rect(30, 13, 36, 18),
  base: rect(30, 41, 36, 18),
  'neck-end-wall': rect(20, 13, 10, 18),
  'tail-end-wall': rect(66, 13, 10, 18),
  'bass-wall': rect(30, 31, 36, 10),
  'treble-wall': rect(30, 3, 36, 10),
} as const
/** Walls and base laid flat round the lid. */
export const foldedOut = over({ plan: true }, body(...Object.values(FACES)), body(rect(6, 19, 14, 6)))

/** Which face: the same for things and for what is kept or photographed. */
export const FACE: Drawing = {
  cases: Object.fromEntries(
    Object.entries(FACES).map(([name, outline]) => [name, over(foldedOut, area(outline))]),
  ),
}
