import { describe, expect, test } from 'vitest'
import { area, bounds, type Part, partsOf, scheduleOf, solve } from '../../../geometry/index.ts'
import {
  alongFace,
  faceHeight,
  headDepth,
  headOfBlank,
  onPlan,
  windingAt,
} from '../../../geometry/neck/head-form.ts'
import { headOf } from '../../../geometry/neck/head-layout.ts'
import { scarfOf } from '../../../geometry/neck/scarf.ts'
import { designOf, type Stated } from '../../support/designs.ts'

const layoutWith = (headstock: Stated, more: Stated = {}) => solve(designOf({ headstock, ...more }))
const degrees = (radians: number) => (radians * 180) / Math.PI
const partOf = (parts: readonly Part[], id: string): Part => {
  const part = parts.find((one) => one.id === id)
  if (!part) throw new Error(`no part ${id}`)
  return part
}

describe('how far a string falls behind the nut', () => {
  // Worked out in a trade write-up for a straight head with 6.4 mm of drop: 9 degrees at 40 mm, 6 at 60, 4 at 90, 3 at 120.
  test.each([
    [40, 9],
    [60, 6],
    [90, 4],
    [120, 3],
  ])('at a post %i mm behind it', (firstPost, angle) => {
    const layout = layoutWith(
      { bassTuners: 1, trebleTuners: 0, firstPost, thickness: 12.6, postHeight: 6.5 },
      { neck: { thickness: 19 }, nut: { height: 1.5 }, board: { thickness: 5 }, strings: { count: 1 } },
    )
    const [string] = layout.strings
    const { z = 0, x = 0 } = string?.post?.winds ?? {}
    expect((string?.zAtNut ?? 0) - z).toBeCloseTo(6.4, 9)
    expect(degrees(Math.atan2(6.4, -x))).toBeCloseTo(angle, 0)
  })

  test('a step lowers every post by its own height', () => {
    const flat = layoutWith({ form: 'stepped', step: 0 })
    const lower = layoutWith({ form: 'stepped', step: 7 })
    lower.posts.forEach(({ winds }, index) => {
      expect((flat.posts[index]?.winds.z ?? 0) - winds.z).toBeCloseTo(7, 9)
    })
  })

  test('of a tilted head, a post falls with its way along the face', () => {
    // Nut 5 thick: 40 along the face behind it at 30 degrees is 20 down and 34.64 back.
    const layout = layoutWith({ form: 'scarfed', tiltDegrees: 30, firstPost: 45, postHeight: 0 })
    const [post] = layout.posts
    expect(layout.nut.x0).toBe(-5)
    expect(post?.x).toBeCloseTo(-5 - 40 * Math.cos(Math.PI / 6), 9)
    expect(post?.winds.z).toBeCloseTo(layout.neck.top - 20, 9)
  })
})

describe('heights and depths of the three forms', () => {
  const form = (headstock: Stated, neck: Stated = {}) =>
    designOf({ headstock, neck: { thickness: 19, rise: 2, ...neck } })

  test('a straight head lies lower by what is carved off, a stepped one by its step, a scarfed one by its slope', () => {
    expect(faceHeight(form({ form: 'straight', thickness: 14 }), -5, -60)).toBe(2 - 5)
    expect(faceHeight(form({ form: 'straight', thickness: 25 }), -5, -60)).toBe(2)
    expect(faceHeight(form({ form: 'stepped', step: 7 }), -5, -60)).toBe(2 - 7)
    const tilted = form({ form: 'scarfed', tiltDegrees: 30 })
    expect(faceHeight(tilted, -5, -65)).toBeCloseTo(2 - 60 / Math.sqrt(3), 9)
    // In front of the nut's back the neck is level, a hair from it as well.
    expect(faceHeight(tilted, -5, -5)).toBe(2)
    expect(faceHeight(tilted, -5, 3)).toBe(2)
    expect(faceHeight(tilted, -5, -5.3)).toBeCloseTo(2 - 0.3 / Math.sqrt(3), 9)
  })

  test('a step deeper than the neck leaves the head hanging on by less than can be seen', () => {
    const height = faceHeight(form({ form: 'stepped', step: 40 }), -5, -60)
    expect(height).toBeGreaterThan(2 - 19)
    expect(height).toBeLessThan(2 - 19 + 0.1)
  })

  test('wood is measured straight down: of a straight head no more than the neck has, of a tilted one more than its own', () => {
    expect(headDepth(form({ form: 'straight', thickness: 14 }))).toBe(14)
    expect(headDepth(form({ form: 'straight', thickness: 30 }))).toBe(19)
    expect(headDepth(form({ form: 'stepped', thickness: 14 }))).toBe(14)
    expect(headDepth(form({ form: 'scarfed', thickness: 12, tiltDegrees: 30 }))).toBeCloseTo(
      24 / Math.sqrt(3),
      9,
    )
  })

  test('a string winds square over the face: on a tilted head farther from the nut too', () => {
    const { x, z } = windingAt(form({ form: 'scarfed', tiltDegrees: 30, postHeight: 6 }), -5, -65)
    expect(x).toBeCloseTo(-65 - 3, 9)
    expect(z).toBeCloseTo(2 - 60 / Math.sqrt(3) + 3 * Math.sqrt(3), 9)
    expect(windingAt(form({ form: 'straight', thickness: 14, postHeight: 6 }), -5, -65)).toEqual({
      x: -65,
      z: 3,
    })
  })
})

describe('a scarf', () => {
  const { headstock } = designOf({ headstock: { form: 'scarfed', tiltDegrees: 22 } })

  test('of a stick 19 mm thick sawn at 22 degrees has a slope of some 50 mm, as a builder measured', () => {
    const design = designOf({ neck: { thickness: 19 }, headstock: { form: 'scarfed', tiltDegrees: 22 } })
    expect(Math.round((scarfOf(design, -5)?.glued ?? 0) / 10) * 10).toBe(50)
  })

  test('lengths along its face and on the plan lead to each other', () => {
    for (const along of [0, 3, 5, 45, 150])
      expect(alongFace(headstock, -5, onPlan(headstock, -5, along))).toBeCloseTo(along, 9)
  })

  test('runs level over the nut and slopes right from its back', () => {
    const tilted = designOf({ headstock: { form: 'scarfed', tiltDegrees: 30 } }).headstock
    const slope = Math.sqrt(3) / 2
    for (const [along, x] of [
      [0, 0],
      [5, -5],
      [5.4, -5 - 0.4 * slope],
      [105, -5 - 100 * slope],
    ] as const) {
      expect(onPlan(tilted, -5, along)).toBeCloseTo(x, 9)
      expect(alongFace(tilted, -5, x)).toBeCloseTo(along, 9)
    }
    const straight = designOf({ headstock: { form: 'straight', tiltDegrees: 30 } }).headstock
    expect([onPlan(straight, -5, 105), alongFace(straight, -5, -105)]).toEqual([-105, 105])
  })

  test('has its bevel from top to bottom at its angle, begun where the head, as thick as it is, comes out flush', () => {
    const design = designOf({
      neck: { thickness: 20, rise: 3 },
      headstock: { form: 'scarfed', tiltDegrees: 30, thickness: 12 },
    })
    // 12 / sin 30 = 24 behind the nut's back at -5; 20 / tan 30 = 34.64 back to the bottom; 20 / sin 30 = 40 glued.
    expect(scarfOf(design, -5)).toEqual({
      top: { x: expect.closeTo(19, 9), y: 3 },
      bottom: { x: expect.closeTo(19 - 20 * Math.sqrt(3), 9), y: -17 },
      glued: expect.closeTo(40, 9),
    })
    expect(scarfOf(designOf({ headstock: { form: 'straight' } }), -5)).toBeNull()
  })

  test('takes its whole length of the blank where it is straight, or shorter than its nut is thick', () => {
    const blank = (headstock: Stated, nutBack: number) => headOfBlank(designOf({ headstock }), nutBack)
    expect(blank({ form: 'straight', length: 150 }, -5)).toBe(150)
    expect(blank({ form: 'stepped', length: 150 }, -5)).toBe(150)
    expect(blank({ form: 'scarfed', tiltDegrees: 30, thickness: 10, length: 20 }, -25)).toBe(20)
    // A little longer than the nut is thick it is sawn off like any other.
    const bevel = 10 * Math.tan(Math.PI / 12)
    expect(blank({ form: 'scarfed', tiltDegrees: 30, thickness: 10, length: 20 }, -19.5)).toBeCloseTo(
      22 - bevel,
      9,
    )
  })

  test('needs a little less of the blank than its length, and what the saw takes', () => {
    // The bevel at the end of the head is cut off the blank anyway: 10 / tan 30 less 10 / sin 30 is -10 tan 15.
    const design = designOf({ headstock: { form: 'scarfed', tiltDegrees: 30, thickness: 10, length: 150 } })
    expect(headOfBlank(design, -5)).toBeCloseTo(150 - 10 * Math.tan(Math.PI / 12) + 2, 9)
  })

  test('is two parts that make the neck as it is glued: their areas from the side are its own', () => {
    const layout = layoutWith(
      { form: 'scarfed', tiltDegrees: 15, thickness: 14, length: 150 },
      { neck: { thickness: 20, relief: 0, rise: 0 }, nut: { thickness: 5 } },
    )
    const whole = partOf(partsOf(layout), 'neck-side')
    const plate = partOf(partsOf(layout), 'headstock-side')
    const straight = partOf(
      partsOf(
        layoutWith(
          { length: 20, thickness: 40 },
          { neck: { thickness: 20, relief: 0, rise: 0 }, nut: { thickness: 5 } },
        ),
      ),
      'neck-side',
    )
    // The shaft: all behind the middle of its bevel, which lies at 14 / sin 15 - 5 - 10 / tan 15.
    const tilt = Math.PI / 12
    const middle = 14 / Math.sin(tilt) - 5 - 10 / Math.tan(tilt)
    const shaft = area(straight.outline) - 20 * (middle + 20)
    expect(area(whole.outline)).toBeCloseTo(shaft + area(plate.outline), 6)
    expect(partOf(partsOf(layout), 'headstock').thickness).toBe(14)
  })

  test('the head’s own part is true to size and bears the post holes; the neck’s does not', () => {
    const layout = layoutWith({ form: 'scarfed', tiltDegrees: 15, length: 150, firstPost: 45 })
    const head = partOf(partsOf(layout), 'headstock')
    const holes = head.operations.filter((one) => one.kind === 'drill')
    expect(bounds(head.outline).minX).toBe(-150)
    expect(holes.map(({ centre }) => Math.round(centre.x * 1e6) / 1e6)).toEqual([-45, -77, -45])
    expect(partOf(partsOf(layout), 'neck-top').operations.some((one) => one.of === 'Tuner post')).toBe(false)
  })
})

describe('posts in a slanting row', () => {
  const layout = layoutWith({
    bassTuners: 3,
    trebleTuners: 0,
    width: 48,
    postEdge: 12,
    postSpacing: 25,
    postStep: 12,
  })

  test('stand each so far farther in, as far from their edge as the first', () => {
    expect(layout.posts.map(({ y }) => y)).toEqual([-12, 0, 12])
    const { outline } = headOf(layout)
    const edge = outline.vertices.filter(({ x }) => x < -44)
    const [first, last] = [45, 95].map((along) => edge.find(({ x, y }) => x === -along && y < 24))
    if (!first || !last) throw new Error('the edge has no corners')
    expect((last.y - first.y) / (last.x - first.x)).toBeCloseTo(-12 / 25, 9)
  })

  test('let strings as far apart run straight', () => {
    const straight = layoutWith(
      { bassTuners: 3, trebleTuners: 0, width: 48, postEdge: 12, postSpacing: 25, postStep: 12 },
      { strings: { count: 3, spanAtNut: 24, spanAtSaddle: 24 } },
    )
    for (const { sideAngleAtNut } of straight.strings) expect(sideAngleAtNut).toBeCloseTo(0, 9)
  })

  test('make the plan of the neck lopsided alike in its part and on the drawing', () => {
    const { minY, maxY } = bounds(partOf(partsOf(layout), 'neck-top').outline)
    expect([minY, maxY]).toEqual([-24, 24])
    // Behind the last post the bass edge runs straight at -24 + 2 × 12.
    expect(layout.neck.halfWidths[0]?.middle).toBeCloseTo(12, 9)
  })
})

describe('what is drilled', () => {
  test('screws from behind to their depth, a bushing from the front, each once in the schedule', () => {
    const layout = layoutWith({ screws: 2, screwDepth: 9, bushing: 'let in', bushingDepth: 7 })
    const rows = scheduleOf(layout).filter((one) => one.of.startsWith('Tuner'))
    const told = (of: string) => rows.filter((one) => one.of === of)
    expect(told('Tuner post').map(({ part, through }) => [part, through])).toEqual(
      Array(3).fill(['neck-top', true]),
    )
    expect(told('Tuner bushing').map(({ depth }) => depth)).toEqual([7, 7, 7])
    expect(told('Tuner screw').map(({ part, depth }) => [part, depth])).toEqual(
      Array(6).fill(['neck-top-inside', 9]),
    )
    // Bass tuners keep their screws on the bass side, though they are drilled from behind.
    expect(told('Tuner screw').filter(({ line }) => line.towards === 'bass')).toHaveLength(4)
  })

  test('nothing of the kind where none is stated', () => {
    const ids = partsOf(solve(designOf({}))).map((one) => one.id)
    expect(ids.filter((id) => /headstock|neck-top-inside/.test(id))).toEqual([])
  })
})

test('the head is laid out once, however its box is dragged', () => {
  const design = designOf({})
  const moved = { ...design, saddle: { ...design.saddle, place: { share: 0.6 } } }
  expect(headOf(solve(moved))).toBe(headOf(solve(design)))
})
