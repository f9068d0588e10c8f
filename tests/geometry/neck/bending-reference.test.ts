/**
 * Bending against integration written out here, which shares nothing with the engine: `w'' = M / E I` summed over
 * thousands of short steps, the moment being the pull times the height of the strings over the bent axis, round after
 * round until the neck is still. Beam theory of any mechanics text (J. M. Gere and B. J. Goodno, "Mechanics of Materials",
 * ch. 9: moment-area and double integration).
 */
import { describe, expect, it, test } from 'vitest'
import { bendNeck, type NeckBow, type NeckHold, type NeckLoad } from '../../../geometry/neck/bending.ts'
import { plank } from '../../../geometry/neck/sections.ts'
import { pieceOf } from '../../../geometry/neck/span.ts'
import { expectShare, expectWithin } from '../../support/near.ts'

/** One stretch of stick: where it runs, how wide it is, its lower and upper face, and what it bears. */
interface Stick {
  readonly x0: number
  readonly x1: number
  readonly width: number
  readonly bottom: number
  readonly top: number
  readonly strength?: number
}

const STIFFNESS = 11_000

const piecesOf = (sticks: readonly Stick[]) =>
  sticks.map(({ x0, x1, width, bottom, top, strength = 60 }) =>
    pieceOf(x0, x1, [plank(width, bottom, top, { stiffness: STIFFNESS, strength })]),
  )

function bend(sticks: readonly Stick[], load: NeckLoad, hold: NeckHold, octave = 0): NeckBow {
  const reading = bendNeck(piecesOf(sticks), load, hold, octave)
  if (!reading.ok) throw new Error(reading.why)
  return reading
}

const STEPS = 3000

/** `w` at every step from a root to a far end, whose slope at the root is given; curvature is read in the middles. */
function integrated(from: number, to: number, slope: number, curvature: (x: number, w: number) => number) {
  const step = (to - from) / STEPS
  const heights = [0]
  let [w, turn] = [0, slope]
  for (let index = 0; index < STEPS; index++) {
    const bent = curvature(from + (index + 0.5) * step, w + (turn * step) / 2)
    w += turn * step + (bent * step * step) / 2
    turn += bent * step
    heights.push(w)
  }
  return (x: number) => {
    const at = Math.min(STEPS - 1e-9, Math.max(0, (x - from) / step))
    const [low, share] = [Math.floor(at), at - Math.floor(at)]
    return heights[low]! * (1 - share) + heights[low + 1]! * share
  }
}

/** The whole neck: between its walls a beam that both carry (the slope by shooting), before them a cantilever. */
function reference(
  sticks: readonly Stick[],
  { pull, nut, saddle }: NeckLoad,
  front: number,
  leaves: { readonly x: number; readonly z: number } | null,
) {
  const stickAt = (x: number) => sticks.find(({ x0, x1 }) => x0 <= x && x <= x1)!
  const axis = (x: number) => (stickAt(x).bottom + stickAt(x).top) / 2
  const stiff = (x: number) => {
    const { width, bottom, top } = stickAt(x)
    return (STIFFNESS * width * (top - bottom) ** 3) / 12
  }
  const between = (x: number, xa: number, za: number, xb: number, zb: number) =>
    za + ((zb - za) * (x - xa)) / (xb - xa)
  let rise = 0
  let inside = (_: number) => 0
  let outside = (_: number) => 0
  let turn = 0
  for (let round = 0; round < 40; round++) {
    const nutZ = nut.z + rise
    if (leaves) {
      const z = between(front, nut.x, nutZ, saddle.x, saddle.z)
      const bent = (x: number, w: number) =>
        (pull * (between(x, front, z, leaves.x, leaves.z) - axis(x) - w)) / stiff(x)
      // The far end must come down on its wall: two shots tell the slope, since the sum is a straight one in it.
      const miss = (slope: number) => integrated(front, leaves.x, slope, bent)(leaves.x)
      const slope = -miss(0) / (miss(1) - miss(0))
      inside = integrated(front, leaves.x, slope, bent)
      turn = -slope
    }
    // Outwards from the wall x runs down: the slope there has the other sign, and steps are negative.
    if (front === nut.x) continue
    outside = integrated(
      front,
      nut.x,
      -turn,
      (x, w) => (pull * (between(x, nut.x, nutZ, saddle.x, saddle.z) - axis(x) - w)) / stiff(x),
    )
    rise = outside(nut.x)
  }
  return { rise: (x: number) => (x <= front ? outside(x) : inside(x)), turn }
}

const hold = (front: number, back: number): NeckHold => ({ by: 'two walls', front, back })

describe('a stepped neck bends as the sum of its short steps does', () => {
  // Nothing begins at 0, so that a place taken for a length shows: the nut at 20, walls at 350 and 560.
  const sticks: readonly Stick[] = [
    { x0: -90, x1: 20, width: 44, bottom: -19, top: -6 },
    { x0: 20, x1: 185, width: 42, bottom: -21, top: 0 },
    { x0: 185, x1: 350, width: 46, bottom: -21, top: 0 },
    { x0: 350, x1: 455, width: 46, bottom: -21, top: -5 },
    { x0: 455, x1: 560, width: 46, bottom: -21, top: -8 },
    { x0: 560, x1: 640, width: 46, bottom: -21, top: -5 },
  ]
  const nut = { x: 20, z: 7 }
  const saddle = { x: 500, z: 16 }
  const [front, back] = [350, 560]

  test.each<[string, NeckLoad['anchor'], number]>([
    // The neck's axis at the back wall: half way between -21 and -8.
    ['held by the box: the pull leaves along the axis', null, -14.5],
    // Common angle down to a tail: 16 - 26 × 60 / 100 at the wall.
    ['held low on the tail', { x: 600, z: -10 }, 16 - (26 * 60) / 100],
    ['held level with the saddle', { x: 600, z: 16 }, 16],
    ['held above the saddle', { x: 620, z: 28 }, 16 + (12 * 60) / 120],
    ['held below the back of the neck', { x: 630, z: -40 }, 16 - (56 * 60) / 130],
    ['held before the back wall: at its own height', { x: 540, z: 3 }, 3],
    ['held at the back wall itself', { x: 560, z: -2 }, -2],
  ])('%s', (_, anchor, z) => {
    const load: NeckLoad = { pull: 300, nut, saddle, anchor }
    for (const octave of [260, 430]) {
      const found = bend(sticks, load, hold(front, back), octave)
      const wanted = reference(sticks, load, front, { x: back, z })
      const close = (value: number, expected: number) => expectWithin(value, expected, 2e-5)
      close(found.nutRise, wanted.rise(20))
      close(found.octaveRise, wanted.rise(octave))
      // Half way between nut and wall, under the chord between them; the wall does not move.
      close(found.bow, wanted.rise(20) / 2 - wanted.rise(185))
      // The strings rise by a share of the nut's rise that falls evenly to nothing at the saddle, 480 on.
      close(found.actionChange, (wanted.rise(20) * (500 - octave)) / 480 - wanted.rise(octave))
      expectWithin(found.turn, wanted.turn, 1e-7)
      for (const { x, rise } of found.curve()) close(rise, wanted.rise(x))
    }
  })

  it('draws its curve from nut to back wall, each place once', () => {
    const curve = bend(sticks, { pull: 300, nut, saddle, anchor: null }, hold(front, back), 260).curve()
    const xs = curve.map(({ x }) => x)
    expect([xs[0], xs.at(-1)]).toEqual([20, 560])
    expect(xs.slice(1).every((x, index) => x > xs[index]!)).toBe(true)
    for (const x of [185, 350, 455]) expect(xs).toContain(x)
    // Tenths of 330 before the wall and of 210 behind it: none is left out.
    for (const [index, x] of xs.slice(1).entries())
      expect(x - xs[index]!).toBeLessThanOrEqual(x <= 350 ? 33.001 : 21.001)
  })

  it('held fast by a block bends as a cantilever whose root stays level, whatever stands behind', () => {
    for (const anchor of [null, { x: 600, z: -10 }]) {
      const load: NeckLoad = { pull: 300, nut, saddle, anchor }
      const found = bend(sticks, load, { by: 'block', front: 350 }, 260)
      const wanted = reference(sticks, load, 350, null)
      expectWithin(found.nutRise, wanted.rise(20), 2e-5)
      expectWithin(found.bow, wanted.rise(20) / 2 - wanted.rise(185), 2e-5)
      expect(found.turn).toBe(0)
      // A fret over the block does not move.
      expect(bend(sticks, load, { by: 'block', front: 350 }, 420).octaveRise).toBe(0)
      const curve = found.curve()
      expect([curve[0]!.x, curve.at(-1)!.x, curve.at(-1)!.rise]).toEqual([20, 350, 0])
    }
  })

  it('with its nut right over the front wall bends between the walls only', () => {
    const load: NeckLoad = { pull: 300, nut: { x: 350, z: 7 }, saddle, anchor: null }
    const found = bend(sticks, load, hold(350, 560), 430)
    const wanted = reference(sticks.slice(3), load, 350, { x: 560, z: -14.5 })
    expect([found.nutRise, found.bow]).toEqual([0, 0])
    expectWithin(found.octaveRise, wanted.rise(430), 2e-5)
    const curve = found.curve()
    expect([curve[0], curve.at(-1)!.x]).toEqual([{ x: 350, rise: 0 }, 560])
  })

  it('a saddle behind the back wall leaves the anchor’s own height to pull at', () => {
    const load: NeckLoad = { pull: 300, nut, saddle: { x: 590, z: 16 }, anchor: { x: 620, z: -4 } }
    const found = bend(sticks, load, hold(front, back), 260)
    expectWithin(found.nutRise, reference(sticks, load, front, { x: back, z: -4 }).rise(20), 2e-5)
  })

  it('pulled without end or backwards is refused', () => {
    for (const pull of [-1, Number.POSITIVE_INFINITY])
      expect(() => bend(sticks, { pull, nut, saddle, anchor: null }, hold(front, back))).toThrow(
        `not ${pull}`,
      )
    // From nut to saddle, not from 0: 20 to 20 is no length.
    const none = { pull: 1, nut, saddle: { x: 20, z: 16 }, anchor: null }
    expect(() => bend(sticks, none, hold(front, back))).toThrow('from nut to saddle must be above 0, not 0')
  })
})

describe('the weakest place', () => {
  // So stiff and so little pulled that it stays straight: stress is P / A + M (z - axis) / I, written out. One stretch in
  // seven is of weak stuff, so that it is sought there: head, two before the wall, two behind it, two of the tail.
  const ends = [-120, -30, 0, 150, 340, 420, 550, 575, 640]
  const sticks = (weak: number): Stick[] =>
    ends.slice(1).map((x1, index) => ({
      ...{ x0: ends[index]!, x1, width: 40, bottom: -20, top: 0 },
      strength: index === weak ? 0.5 : 60,
    }))
  const load: NeckLoad = {
    pull: 0.1,
    ...{
      nut: { x: 0, z: 5 },
      saddle: { x: 500, z: 14 },
      posts: { x: -100, z: -30 },
      anchor: { x: 620, z: -46 },
    },
  }
  /** Height of the pull where a stretch is bent most, by hand: lines through two places each. */
  const lines = {
    head: (x: number) => 5 + (35 * x) / 100,
    outside: (x: number) => 5 + (9 * x) / 500,
    // From 11.12 at the front wall to 14 - 60 × 50 / 120 = -11 at the back one.
    inside: (x: number) => 11.12 - (22.12 * (x - 340)) / 210,
    tail: (x: number) => 14 - (x - 500) / 2,
  }
  test.each<[string, number, number, keyof typeof lines]>([
    ['the head, where the string is lowest against it', 0, -100, 'head'],
    ['the head at the nut', 1, 0, 'head'],
    ['before the box, near the nut', 2, 150, 'outside'],
    ['before the box, at its wall', 3, 340, 'outside'],
    ['behind the front wall', 4, 340, 'inside'],
    ['before the back wall', 5, 420, 'inside'],
    ['the tail at its root', 6, 575, 'tail'],
    ['the tail at the anchor', 7, 620, 'tail'],
  ])('is %s', (_, weak, x, which) => {
    const { weakest } = bend(sticks(weak), load, hold(340, 550))
    expect(weakest.x).toBeCloseTo(x, 9)
    // Axis 10 below the top, 40 × 20 mm: A 800, I 26 667.
    const moment = 0.1 * (lines[which](x) + 10)
    const stress = (edge: number) => 0.1 / 800 + (moment * edge) / ((40 * 20 ** 3) / 12)
    const worst = Math.abs(stress(10)) >= Math.abs(stress(-10)) ? 10 : -10
    expectShare(weakest.stress, stress(worst), 1e-4)
    expectShare(weakest.share, Math.abs(stress(worst)) / 0.5, 1e-4)
    expect(weakest.height).toBe(worst - 10)
  })

  it('is the nut’s end of a stretch where the strings come down towards the saddle', () => {
    // 30 over the top at the nut and 5 at the saddle: the moment falls from the nut on.
    const down: NeckLoad = { pull: 0.1, nut: { x: 0, z: 30 }, saddle: { x: 500, z: 5 }, anchor: null }
    for (const [weak, x] of [
      [2, 0],
      [3, 150],
      [4, 340],
      [5, 420],
    ] as const) {
      const { weakest } = bend(sticks(weak), down, hold(340, 550))
      expect(weakest.x).toBe(x)
    }
  })

  it('is not looked for where the strings do not run: before the posts, behind the anchor, behind a block', () => {
    const far = (stick: readonly Stick[], more: Partial<NeckLoad>, how: NeckHold = hold(340, 550)) =>
      bend(stick, { ...load, ...more }, how).weakest.x
    // Of the head only what lies between posts and nut counts, of the tail only what lies before the anchor.
    expect(far(sticks(0), { posts: { x: -30, z: -30 } })).toBeGreaterThan(-30)
    expect(far(sticks(7), { anchor: { x: 575, z: -23.5 } })).toBeLessThanOrEqual(575)
    for (const weak of [6, 7])
      expect(far(sticks(weak), {}, { by: 'block', front: 340 })).toBeLessThanOrEqual(340)
    // Nor on a head of which nothing is known.
    const { posts: _, ...headless } = load
    expect(bend(sticks(0), headless, hold(340, 550)).weakest.x).toBeGreaterThanOrEqual(0)
  })

  it('is the wall itself, unstrained, where nothing pulls', () => {
    expect(bend(sticks(9), { ...load, pull: 0 }, hold(340, 550)).weakest).toEqual({
      ...{ x: 340, stress: 0, share: 0, height: 0 },
    })
  })
})
