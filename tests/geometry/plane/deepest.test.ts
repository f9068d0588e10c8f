/** The deepest place of hollow shapes, against a fine grid of places. */
import { describe, expect, test } from 'vitest'
import type { Chain } from '../../../geometry/plane/index.ts'
import {
  area,
  bounds,
  chain,
  deepest,
  depthAt,
  move,
  polygon,
  rectangle,
  turn,
} from '../../../geometry/plane/index.ts'

const sides = (...list: readonly (readonly [number, number])[]) => polygon(list.map(([x, y]) => ({ x, y })))

const shapes: readonly (readonly [string, Chain])[] = [
  ['a plate', rectangle(0, 0, 30, 20)],
  // Its middle lies in the hollow, so that it has to be looked for.
  ['a U', sides([0, 0], [40, 0], [40, 30], [32, 30], [32, 6], [8, 6], [8, 30], [0, 30])],
  ['an L with one arm wider', sides([0, 0], [60, 0], [60, 6], [14, 6], [14, 50], [0, 50])],
  [
    'a comb',
    sides(
      [0, 0],
      [50, 0],
      [50, 30],
      [44, 30],
      [44, 3],
      [30, 3],
      [30, 30],
      [20, 30],
      [20, 3],
      [4, 3],
      [4, 30],
      [0, 30],
    ),
  ],
  ['a strip', sides([0, 0], [200, 0], [200, 2], [0, 2])],
  [
    'a sickle',
    chain(
      [
        { x: -20, y: 0, bulge: 1 },
        { x: 20, y: 0, bulge: -0.6 },
      ],
      true,
    ),
  ],
  [
    'a plate with a round bay nearly through it',
    chain(
      [
        { x: 0, y: 0, bulge: 0 },
        { x: 60, y: 0, bulge: 0 },
        { x: 60, y: 24, bulge: 0 },
        { x: 52, y: 24, bulge: -1 },
        { x: 8, y: 24, bulge: 0 },
        { x: 0, y: 24, bulge: 0 },
      ],
      true,
    ),
  ],
]

describe.each(shapes)('%s', (_, shape) => {
  test('has it at nine tenths of the best of a fine grid or more, wherever it lies', () => {
    for (const one of [shape, move(shape, 500, -300), turn(move(shape, -700, 90), 0.7), turn(shape, -2)]) {
      const { minX, minY, maxX, maxY } = bounds(one)
      let best = 0
      for (let i = 1; i < 80; i++)
        for (let k = 1; k < 80; k++) {
          const place = { x: minX + ((maxX - minX) * i) / 80, y: minY + ((maxY - minY) * k) / 80 }
          best = Math.max(best, depthAt(place, one))
        }
      const depth = depthAt(deepest(one), one)
      expect(depth).toBeGreaterThanOrEqual(0.9 * best)
      // No circle is deeper than its own area allows.
      expect(Math.PI * depth * depth).toBeLessThanOrEqual(area(one))
      expect(deepest(one)).toBe(deepest(one))
    }
  })
})

test('the middle of a plate is taken as it is', () => {
  const { x, y } = deepest(rectangle(100, 50, 130, 70))
  expect(x).toBeCloseTo(115, 9)
  expect(y).toBeCloseTo(60, 9)
})
