/** A head laid out, against pencil and plane geometry: tangents by their defining property, room by plain sums. */
import { describe, expect, test } from 'vitest'
import { area, bounds, solve } from '../../../geometry/index.ts'
import { headDepth } from '../../../geometry/neck/head-form.ts'
import { type HeadPath, headOf, headOutline, type Tuner } from '../../../geometry/neck/head-layout.ts'
import { headRoomOf } from '../../../geometry/neck/head-room.ts'
import { headCorners, headEdgesAt, postsFor, postsOf } from '../../../geometry/neck/headstock.ts'
import { plank } from '../../../geometry/neck/sections.ts'
import { pieceOf, sectionAt } from '../../../geometry/neck/span.ts'
import { LONG_TERM } from '../../../geometry/neck/woods.ts'
import { designOf, type Stated } from '../../support/designs.ts'

// Two posts a side, 25 apart, 10 from the edges of a head 50 wide: at y = -15 and 15, x = -40 and -65.
const FOUR = {
  ...{ width: 50, length: 110, postEdge: 10, firstPost: 40, postSpacing: 25, bassTuners: 2, trebleTuners: 2 },
  ...{ postHole: 8, post: 6, bodyLong: 22, bodyIn: 5, knobWide: 14, knobFrom: 18, knobLong: 14, screws: 0 },
}
const layoutWith = (headstock: Stated = {}, more: Stated = {}) =>
  solve(
    designOf({
      headstock: { ...FOUR, ...headstock },
      strings: { count: 4, gauges: [1.2, 0.9, 0.6, 0.4], spanAtNut: 27 },
      ...more,
    }),
  )

describe('the way of a string to its post', () => {
  const shapes: readonly (readonly [string, Stated])[] = [
    ['two and two', {}],
    ['one row', { bassTuners: 4, trebleTuners: 0 }],
    ['the other row', { bassTuners: 0, trebleTuners: 4 }],
    ['thick posts in a slanted row', { post: 14, postStep: 4, stagger: 9, width: 70 }],
    ['tilted', { form: 'scarfed', tiltDegrees: 20 }],
  ]

  test.each(shapes)(
    '%s: touches the post square to its radius, with half the string between',
    (_, headstock) => {
      const { paths, tuners } = headOf(layoutWith(headstock))
      expect(paths).toHaveLength(4)
      for (const { from, to, gauge, tuner } of paths) {
        const { post } = tuners[tuner] as Tuner
        // Euclid III, 18: a tangent stands square to the radius where it touches.
        expect(Math.hypot(to.x - post.x, to.y - post.y)).toBeCloseTo(
          (headstock.post === 14 ? 7 : 3) + gauge / 2,
          9,
        )
        expect((to.x - post.x) * (to.x - from.x) + (to.y - post.y) * (to.y - from.y)).toBeCloseTo(0, 6)
        expect(from.x).toBe(0)
      }
    },
  )

  test.each(shapes)(
    '%s: runs on the side of the post that looks to the middle of the head',
    (_, headstock) => {
      const { paths, tuners } = headOf(layoutWith(headstock))
      for (const { from, to, tuner } of paths) {
        const { post, side } = tuners[tuner] as Tuner
        // Where the line passes the post, it lies nearer the other row.
        const y = from.y + ((to.y - from.y) * (post.x - from.x)) / (to.x - from.x)
        expect(side === 'bass' ? y - post.y : post.y - y).toBeGreaterThan(0)
      }
    },
  )

  test('begins where the string crosses the nut', () => {
    const layout = layoutWith()
    const starts = headOf(layout).paths.map(({ from }) => from.y)
    // 27 over all with equal gaps between the outer edges of 1.2, 0.9, 0.6 and 0.4, or equal centres: outermost both ways.
    expect(starts[0]).toBeCloseTo(layout.strings[0]?.yAtNut ?? Number.NaN, 12)
    expect([...starts].sort((a, b) => a - b)).toEqual(starts)
  })
})

describe('the outline of the face', () => {
  test('ends where it is long enough, is as wide as stated, and begins at the back of the nut as wide as the neck', () => {
    const layout = layoutWith({}, { neck: { widthAtNut: 40 }, nut: { thickness: 5 } })
    const { outline } = headOf(layout)
    expect(bounds(outline)).toEqual({ minX: -110, maxX: -5, minY: -25, maxY: 25 })
    const atNut = outline.vertices.filter(({ x }) => x === -5).map(({ y }) => y)
    expect(atNut.sort((a, b) => a - b)).toEqual([-20, 20])
  })

  test('of a head as wide as its neck is a rectangle', () => {
    const layout = layoutWith({}, { neck: { widthAtNut: 50, width: 50 }, nut: { thickness: 5 } })
    expect(area(headOf(layout).outline)).toBeCloseTo(50 * 105, 9)
  })

  test('of slanted rows follows them: a post keeps its distance from the edge', () => {
    // Each post 3 farther in than the one before; the edge runs along the row from its first post to its last.
    const layout = layoutWith({ postStep: 3 })
    const { headstock } = layout.design
    for (const along of [40, 52.5, 65]) {
      const inwards = 3 * Math.min(1, Math.max(0, (along - 40) / 25))
      const { bass, treble } = headEdgesAt(headstock, along)
      expect([bass, treble].map(Math.abs)).toEqual(
        [25 - inwards, 25 - inwards].map((y) => expect.closeTo(y, 9)),
      )
    }
    expect(headCorners(headstock)).toEqual([40, 65])
    expect(headCorners({ ...headstock, postStep: 0 })).toEqual([])
  })

  test('corners come from the nut on, those of a staggered row between', () => {
    const { headstock } = layoutWith({ postStep: 1, stagger: 7 }).design
    expect(headCorners(headstock)).toEqual([40, 47, 65, 72])
  })
})

describe('a head whose edges run together', () => {
  // Posts 20 farther in each, 25 apart: the edges of a head 50 wide would meet after little more than one step.
  const meeting = (fields: Stated) => layoutWith({ postStep: 20, ...fields }).design.headstock

  test('keeps some wood between them, in the middle of where they would meet', () => {
    const { bass, treble } = headEdgesAt(meeting({}), 65)
    expect(treble - bass).toBeGreaterThan(0)
    expect((bass + treble) / 2).toBeCloseTo(0, 12)
  })

  test('with one row keeps its straight edge where it is', () => {
    const bassOnly = headEdgesAt(meeting({ bassTuners: 4, trebleTuners: 0 }), 100)
    expect(bassOnly.treble).toBe(25)
    expect(bassOnly.bass).toBeLessThan(25)
    const trebleOnly = headEdgesAt(meeting({ bassTuners: 0, trebleTuners: 4 }), 100)
    expect(trebleOnly.bass).toBe(-25)
    expect(trebleOnly.treble).toBeGreaterThan(-25)
    // What one row does the other does on the other side.
    expect(trebleOnly.treble).toBeCloseTo(-bassOnly.bass, 12)
  })
})

describe('strings and posts', () => {
  const sides = (count: number) =>
    postsFor(postsOf(layoutWith({ bassTuners: 4, trebleTuners: 4 }).design.headstock), count).map(
      (one) => one?.side,
    )

  test.each([
    [3, 2],
    [4, 2],
    [5, 3],
    [7, 4],
  ])(
    'of %i strings on rows with posts to spare %i go to the bass side, the odd one among them',
    (count, bass) => {
      expect(sides(count)).toEqual(
        Array.from({ length: count }, (_, index) => (index < bass ? 'bass' : 'treble')),
      )
    },
  )
})

test('a head that is planed from the neck is no thicker than the neck; a glued one is measured straight down', () => {
  const depth = (headstock: Stated) => headDepth(layoutWith(headstock, { neck: { thickness: 19 } }).design)
  expect(depth({ form: 'straight', thickness: 14 })).toBe(14)
  expect(depth({ form: 'straight', thickness: 30 })).toBe(19)
  expect(depth({ form: 'scarfed', thickness: 15, tiltDegrees: 30 })).toBeCloseTo(15 / (Math.sqrt(3) / 2), 9)
})

test('between two cuts a section runs straight from one end to the other', () => {
  // Plain bars 40 and 20 wide, 10 high, of 10 000 N/mm², from 100 to 300: E b h³ / 12 half way is that of 30.
  const bar = (width: number) => [plank(width, -10, 0, { stiffness: 10_000, strength: 1 })]
  const bendAt = (x: number) => sectionAt(pieceOf(100, 300, bar(40), bar(20)), x)?.bend
  for (const [x, width] of [
    [100, 40],
    [150, 35],
    [200, 30],
    [300, 20],
  ] as const)
    expect(bendAt(x)).toBeCloseTo((10_000 * width * 10 ** 3) / 12, 3)
})

describe('room on the head', () => {
  const room = (headstock: Stated = {}) => headRoomOf(layoutWith(headstock))

  test('is the spacing less what stands there', () => {
    expect(room().holes?.mm).toBeCloseTo(25 - 8, 9)
    expect(room().knobs?.mm).toBeCloseTo(25 - 14, 9)
    expect(room().bodies?.mm).toBeCloseTo(Math.min(25 - 22, 2 * (15 - 5)), 9)
    expect(room().holeToEdge?.mm).toBeCloseTo(10 - 8 / 2, 9)
    // A knob begins 18 from the post, the edge lies 10 from it.
    expect(room().knobToEdge?.mm).toBeCloseTo(18 - 10, 9)
  })

  test('of bodies is across the head where they reach far in, though the posts there stand farther apart', () => {
    // Rows 30 apart, bodies 14 in: 2 between them; along a row 25 - 22 = 3.
    const { bodies } = room({ bodyIn: 14 })
    expect(bodies?.mm).toBeCloseTo(2 * (15 - 14), 9)
    expect([bodies?.a, bodies?.b]).toEqual([1, 3])
    // The same along the row: 25 - 24 = 1, and corner to corner where one row stands 24 farther back: hypot(1, 2).
    expect(room({ bodyIn: 14, bodyLong: 24 }).bodies?.mm).toBeCloseTo(1, 9)
    expect(
      room({ bodyIn: 14, bodyLong: 23, stagger: 24, bassTuners: 1, trebleTuners: 1 }).bodies?.mm,
    ).toBeCloseTo(Math.hypot(1, 2), 9)
  })

  test('says between which it lies, as the trade counts', () => {
    const { holes, knobs, knobToEdge, holeToEdge, bodies } = room()
    const told = (tight: typeof holes) => tight && [tight.from, tight.to, tight.a, tight.b]
    const near = (x: number, y: number) => ({ x: expect.closeTo(x, 9), y: expect.closeTo(y, 9) })
    for (const one of [holes, bodies]) expect(told(one)).toEqual([near(-40, -15), near(-65, -15), 1, 2])
    // A knob begins 18 outwards of its post.
    expect(told(knobs)).toEqual([near(-40, -33), near(-65, -33), 1, 2])
    expect(told(knobToEdge)).toEqual([near(-40, -15), near(-40, -33), 1, 1])
    expect(told(holeToEdge)).toEqual([near(-40, -15), near(-40, -15), 1, 1])
    const { screws } = room({ screws: 2, screwAlong: 12, screwIn: 0, screwPilot: 1.5 })
    // The screw 12 nearer the nut, and the hole of its own post.
    expect(told(screws)).toEqual([near(-52, -15), near(-40, -15), 1, 1])
    const layout = layoutWith()
    const { passing, strings } = headRoomOf(layout)
    const { paths, tuners } = headOf(layout)
    const path = paths.find(({ number }) => number === passing?.a)
    expect(passing?.from).toEqual(tuners[(passing?.b ?? 0) - 1]?.post)
    expect(passing?.to).toEqual(path?.to)
    // Both places of the strings lie on the two that are named, straight across from each other.
    expect(strings?.from.x).toBe(strings?.to.x)
    for (const [number, place] of [
      [strings?.a, strings?.from],
      [strings?.b, strings?.to],
    ] as const) {
      const way = paths.find((one) => one.number === number)
      if (!way || !place) throw new Error('no such string')
      expect(place.y).toBeCloseTo(way.from.y + ((way.to.y - way.from.y) * place.x) / way.to.x, 9)
    }
  })

  test('from a knob beside the shoulder is to the corner where the edge begins', () => {
    // A knob 4 wide, 18 out of a post 6 behind the nut's edge: it ends 8 along, the edge begins at 13, and 8 lie between them.
    const layout = layoutWith(
      { firstPost: 6, postSpacing: 40, knobWide: 4, bassTuners: 1, trebleTuners: 1 },
      { nut: { thickness: 5, setback: 0 }, neck: { widthAtNut: 40 }, strings: { count: 2 } },
    )
    expect(headRoomOf(layout).knobToEdge?.mm).toBeCloseTo(Math.hypot(13 - 8, 18 - 10), 9)
  })

  test('a bushing let in takes the wider hole, a narrower one does not', () => {
    expect(room({ bushing: 'let in', bushingHole: 11 }).holes?.mm).toBeCloseTo(25 - 11, 9)
    expect(room({ bushing: 'let in', bushingHole: 7 }).holes?.mm).toBeCloseTo(25 - 8, 9)
  })

  test('of a pilot hole is to the nearer of the next hole and the edge', () => {
    expect(room().screws).toBeNull()
    // 12 along and 6 outwards of the post: 13 of the next post along 25, its hole 4, the pilot 0.75.
    const screws = { screws: 2, screwAlong: 12, screwIn: -6, screwPilot: 1.5 }
    const toHole = Math.min(Math.hypot(12, 6), Math.hypot(13, 6)) - 4 - 0.75
    const toEdge = 10 - 6 - 0.75
    expect(room(screws).screws?.mm).toBeCloseTo(Math.min(toHole, toEdge), 9)
    expect(room({ ...screws, screwIn: 0 }).screws?.mm).toBeCloseTo(12 - 4 - 0.75, 9)
  })

  test('between strings is the least of that at the nut and that at the nearer post', () => {
    const layout = layoutWith()
    const { paths } = headOf(layout)
    const at = (path: HeadPath, x: number) => path.from.y + ((path.to.y - path.from.y) * x) / path.to.x
    const gaps = paths.slice(1).flatMap((trebleward, index) =>
      paths.slice(0, index + 1).flatMap((bassward) => {
        const end = Math.max(bassward.to.x, trebleward.to.x)
        return [0, end].map((x) => at(trebleward, x) - at(bassward, x))
      }),
    )
    expect(headRoomOf(layout).strings?.mm).toBeCloseTo(Math.min(...gaps), 9)
    // Bass strings run together at the posts, so it is not the nut that is tightest.
    expect(headRoomOf(layout).strings?.from.x).toBeLessThan(0)
  })

  test('beside a post is from skin to skin', () => {
    const layout = layoutWith()
    const { paths, tuners } = headOf(layout)
    const ways = paths.flatMap(({ from, to, gauge, tuner }) =>
      tuners.flatMap(({ post, round }, index) => {
        if (index === tuner) return []
        const [dx, dy] = [to.x - from.x, to.y - from.y]
        const share = Math.min(
          1,
          Math.max(0, ((post.x - from.x) * dx + (post.y - from.y) * dy) / (dx * dx + dy * dy)),
        )
        return [
          Math.hypot(from.x + share * dx - post.x, from.y + share * dy - post.y) - round.radius - gauge / 2,
        ]
      }),
    )
    expect(headRoomOf(layout).passing?.mm).toBeCloseTo(Math.min(...ways), 9)
  })
})

describe('a tuner in its place', () => {
  // Rows that slant by 7 in 24: 25 from post to post, ways of 0.96 and 0.28.
  const tunersOf = (more: Stated = {}) =>
    headOf(
      layoutWith({
        ...{ width: 70, postSpacing: 24, postStep: 7, screws: 2, screwAlong: 10, screwIn: 5, ...more },
      }),
    ).tuners
  const at = (tuner: Tuner, along: number, out: number) => {
    // Bass posts stand at negative y and come in towards positive y as they leave the nut.
    const side = tuner.side === 'bass' ? -1 : 1
    return [
      expect.closeTo(tuner.post.x - 0.96 * along - 0.28 * out, 9),
      expect.closeTo(tuner.post.y - side * 0.28 * along + side * 0.96 * out, 9),
    ]
  }
  const corners = (tuner: Tuner, half: number, near: number, far: number) =>
    [at(tuner, -half, near), at(tuner, half, near), at(tuner, half, far), at(tuner, -half, far)] as const
  /** As many corners as wanted, each once, whichever comes first and whichever way round. */
  const expectCorners = (found: Tuner['body'], wanted: readonly (readonly unknown[])[]) => {
    const places = found?.vertices.map(({ x, y }) => [x, y])
    expect(places).toHaveLength(wanted.length)
    for (const place of wanted) expect(places).toContainEqual(place)
  }

  test('has its body from so far inside the post to the edge, its knob from so far outside, square to the row', () => {
    const tuners = tunersOf()
    expect(tuners.map(({ side }) => side)).toEqual(['bass', 'bass', 'treble', 'treble'])
    for (const tuner of tuners) {
      expectCorners(tuner.body, corners(tuner, 11, -5, 10))
      expectCorners(tuner.knob, corners(tuner, 7, 18, 32))
      expect(tuner.screws.map(({ x, y }) => [x, y])).toEqual([at(tuner, 10, -5), at(tuner, -10, -5)])
      expect(tuner.round.radius).toBe(3)
    }
    expect(tunersOf({ screws: 1 })[0]?.screws).toHaveLength(1)
  })

  test('has no knob or body that is not wide', () => {
    const [bare] = tunersOf({ knobWide: 0, bodyLong: 0 })
    expect([bare?.knob, bare?.body]).toEqual([null, null])
  })
})

test('what lies on the face of a tilted head is brought to the plan', () => {
  const layout = layoutWith({ form: 'scarfed', tiltDegrees: 30 }, { nut: { thickness: 5 } })
  const { toPlan, tuners } = headOf(layout)
  for (const [index, { post }] of tuners.entries()) {
    const { x, y } = layout.posts[index]!
    expect(toPlan(post)).toEqual({ x: expect.closeTo(x, 9), y: expect.closeTo(y, 9) })
  }
  // 95 along the face, of which 5 lie over the nut: 90 of slope.
  expect(toPlan({ x: -95, y: 3 }).x).toBeCloseTo(-5 - 90 * Math.cos(Math.PI / 6), 9)
})

test('wood under a load for good keeps the share that timber design allows it', () => {
  // Load duration factors: 0.9 for a permanent load, 1.6 for ten minutes (NDS, table 2.3.2; from memory).
  expect(LONG_TERM).toBeCloseTo(0.9 / 1.6, 2)
})

describe('the outline of the face', () => {
  const { design, nut } = layoutWith(
    {},
    { neck: { width: 40, widthAtNut: 40 }, nut: { thickness: 5, setback: 0 } },
  )

  test('begins at the back of the nut, as wide as the neck is there', () => {
    const box = bounds(headOutline(design, nut.x0))
    expect([box.minX, box.maxX, box.minY, box.maxY]).toEqual([-110, -5, -25, 25])
  })

  test('keeps a millimetre of a head shorter than its nut is thick', () => {
    const short = layoutWith({ length: 20 }, { neck: { widthAtNut: 40 }, nut: { thickness: 30 } })
    const { vertices } = headOutline(short.design, -30)
    expect(bounds(headOutline(short.design, -30))).toEqual({ minX: -20, maxX: -19, minY: -25, maxY: 25 })
    expect(vertices.filter(({ x }) => x === -19).map(({ y }) => Math.abs(y))).toEqual([20, 20])
  })

  test('begins at the nut’s own edge where the nut has no back', () => {
    expect(bounds(headOutline(design, 0)).maxX).toBeCloseTo(0, 12)
    // Straight out from the neck's 40 to the head's 50 over the shoulder, then straight to the end.
    const byHand = 50 * 102 + 45 * 8
    expect(area(headOutline(design, 0))).toBeCloseTo(byHand, 9)
    expect(headOutline(design, 0).vertices).toHaveLength(6)
  })

  test('turns with its edges behind the shoulder only', () => {
    // Posts from 6 on: the row turns within the shoulder, which runs from 5 to 13, and again at 31.
    const near = layoutWith({ firstPost: 6, postStep: 3 }, { nut: { thickness: 5 } })
    const xs = new Set(headOutline(near.design, -5).vertices.map(({ x }) => x))
    expect([...xs].sort((a, b) => b - a)).toEqual([-5, -13, -31, -110])
  })

  test('goes on past it for the bevel of a scarf', () => {
    const { vertices } = headOutline(design, nut.x0, 12)
    expect(vertices.filter(({ x }) => x === 7).map(({ y }) => y)).toEqual([20, -20])
    expect(bounds(headOutline(design, nut.x0, 12)).minX).toBe(-110)
  })
})
