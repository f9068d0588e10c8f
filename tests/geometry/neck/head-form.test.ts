import { describe, expect, test } from 'vitest'
import { area, bounds, type Part, partsOf, scheduleOf, solve } from '../../../geometry/index.ts'
import { alongFace, headOfBlank, onPlan } from '../../../geometry/neck/head-form.ts'
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
