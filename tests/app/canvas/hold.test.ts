/** What takes hold of a thing while it is moved: centres, edges, mirror places and gaps of others, worked out by hand. */
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { gripOn } from '../../../app/canvas/hold/hold.ts'
import { type Layout, solve } from '../../../geometry/index.ts'
import { designOf } from '../../support/designs.ts'

const hole = (id: string, along: number, across: number, diameter: number) => ({
  kind: 'sound-hole',
  id,
  along,
  across,
  diameter,
})

/** A lid of 400 by 300 with a hole of 20 at (100, 60), called North; what is moved is a hole of 10. */
const few = solve(
  designOf({
    box: { length: 400, width: 300 },
    things: [hole('moved', 300, 90, 10), { ...hole('north', 100, 60, 20), name: 'North' }],
  }),
)

function holdAt(layout: Layout, x: number, y: number, reach: number, apart: readonly string[] = []) {
  const placed = layout.placed.find(({ thing }) => thing.id === 'moved')
  if (!placed) throw new Error('nothing is moved')
  return gripOn(layout, placed, new Set(apart)).hold({ x, y }, reach)
}

const linesOf = (x: number, y: number, reach = 1.5, apart: readonly string[] = []) =>
  holdAt(few, x, y, reach, apart).lines.map(({ axis, at, shows, name }) => ({ axis, at, shows, name }))

describe('another hole holds what is moved', () => {
  test.each([
    ['in line with it', 100.6, 100, 'x', 100, 100, 'in line with North'],
    ['as high as it', 227, 60.7, 'y', 60, 60, 'in line with North'],
    ['at its mirror place', 227, -59.2, 'y', -60, -60, 'mirror place of North'],
    // Its edge towards the tail is at 110, the radius of what is moved is 5.
    ['flush inside its edge', 105.8, 103, 'x', 105, 110, 'edge with North'],
    ['against its edge', 114.4, 103, 'x', 115, 110, 'edge with North'],
  ] as const)('%s', (_, x, y, axis, at, shows, name) => {
    expect(linesOf(x, y)).toContainEqual({ axis, at, shows, name })
    expect(holdAt(few, x, y, 1.5).at[axis]).toBe(at)
  })

  test('only within reach, and not at all while a key lets go', () => {
    const named = (reach: number) =>
      linesOf(100.6, 103, reach).filter(({ name }) => name === 'in line with North')
    expect(named(0.61)).toHaveLength(1)
    expect(named(0.59)).toHaveLength(0)
    expect(holdAt(few, 100.6, 103, 0)).toEqual({ at: { x: 100.6, y: 103 }, lines: [] })
  })

  test('not when it moves along', () => {
    expect(linesOf(100.6, 103, 1.5, ['north']).filter(({ name }) => name.includes('North'))).toEqual([])
  })
})

describe('among many holes', () => {
  const SIDE = 20
  const STEP = 18
  const others = Array.from({ length: SIDE * SIDE }, (_, index) =>
    hole(
      `other-${index}`,
      30 + STEP * (index % SIDE),
      -(SIDE / 2) * STEP + STEP * Math.floor(index / SIDE),
      6,
    ),
  )
  const many = solve(
    designOf({ box: { length: 460, width: 460 }, things: [hole('moved', 200, 90, 10), ...others] }),
  )
  const around = many.placed.filter(({ thing }) => thing.id !== 'moved')

  test('those near by hold no worse than if each were asked', () => {
    let held = 0
    fc.assert(
      fc.property(
        fc.double({ min: 40, max: 360, noNaN: true }),
        fc.double({ min: -150, max: 150, noNaN: true }),
        (x, y) => {
          const { at, lines } = holdAt(many, x, y, 2)
          const near = around.filter((one) => Math.hypot(one.at.x - x, one.at.y - y) < 15)
          for (const axis of ['x', 'y'] as const) {
            const [from, own] = [axis === 'x' ? x : y, 5]
            const places = near.flatMap((one) => [
              one.at[axis],
              ...[3, -3].flatMap((edge) => [one.at[axis] + edge + own, one.at[axis] + edge - own]),
            ])
            const best = Math.min(...places.map((place) => Math.abs(place - from)))
            const moved = Math.abs(at[axis] - from)
            expect(moved).toBeLessThanOrEqual(2)
            if (best > 2) continue
            held++
            expect(lines.some((line) => line.axis === axis)).toBe(true)
            expect(moved).toBeLessThanOrEqual(best + 1e-6)
          }
        },
      ),
    )
    expect(held).toBeGreaterThan(50)
  })

  test('what is equally near is named after the first of the list, whichever side it lies on', () => {
    const column = 30 + 5 * STEP
    const { lines } = holdAt(many, column + 0.4, 9, 1)
    const line = lines.find(({ axis }) => axis === 'x')
    expect(line?.at).toBe(column)
    const named = around.find(({ thing }) => line?.name.endsWith(thing.id.replace('-', ' ')))
    const alike = around.filter(({ at }) => Math.abs(at.x - column) < 1e-9 && Math.abs(at.y - 9) < 60)
    expect(alike.length).toBeGreaterThan(3)
    if (!named) throw new Error(`${line?.name} is not one of them`)
    expect(named.at.x).toBe(column)
    const places = alike.map((one) => around.indexOf(one))
    expect(around.indexOf(named)).toBeLessThanOrEqual(Math.min(...places))
  })
})
