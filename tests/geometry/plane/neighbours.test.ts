import { describe, expect, it } from 'vitest'
import type { Circle, Contour } from '../../../geometry/plane/index.ts'
import { bounds, circle, nearestGaps, neighbours, rectangle, stadium } from '../../../geometry/plane/index.ts'

const origin = { x: 0, y: 0 }

/** A field of holes, `n` in all, in rows 3 apart. */
function field(n: number): Circle[] {
  const row = Math.ceil(Math.sqrt(n))
  return Array.from({ length: n }, (_, i) => circle({ x: (i % row) * 3, y: Math.floor(i / row) * 3.1 }, 1))
}

describe('neighbours', () => {
  it('of no boxes finds nothing', () => {
    expect(neighbours([]).near({ minX: 0, minY: 0, maxX: 1, maxY: 1 }, 100)).toEqual([])
  })

  it('refuses a box that is not finite', () => {
    expect(() => neighbours([{ minX: 0, minY: Number.NaN, maxX: 1, maxY: 1 }])).toThrow('NaN')
  })

  it('finds boxes within the growth, touching ones too, in ascending order', () => {
    const boxes = [
      rectangle(20, 0, 21, 1),
      rectangle(5, 0, 6, 1),
      rectangle(0, 0, 1, 1),
      rectangle(3, 0, 4, 1),
    ].map(bounds)
    const index = neighbours(boxes)
    const unit = bounds(rectangle(0, 0, 1, 1))
    expect(index.near(unit)).toEqual([2])
    expect(index.near(unit, 2)).toEqual([2, 3])
    expect(index.near(unit, 4)).toEqual([1, 2, 3])
    expect(index.near(unit, 1.999)).toEqual([2])
    const stack = neighbours([rectangle(0, 3, 1, 4), rectangle(0, -4, 1, -2)].map(bounds))
    expect(stack.near(unit, 2)).toEqual([0, 1])
    expect(stack.near(unit, 1.999)).toEqual([])
  })
})

describe('neighbours of few boxes and of many', () => {
  it.each([1, 24, 25, 400])('of %d boxes finds those that asking one after another finds', (n) => {
    const boxes = field(n).map(bounds)
    const index = neighbours(boxes)
    for (const grow of [0, 1, 1.1, 7]) {
      for (const asked of [bounds(circle({ x: 4, y: 4 }, 1)), bounds(circle({ x: -5, y: 2 }, 3))]) {
        const expected = boxes.flatMap((box, i) => {
          const inX = box.maxX >= asked.minX - grow && box.minX <= asked.maxX + grow
          const inY = box.maxY >= asked.minY - grow && box.minY <= asked.maxY + grow
          return inX && inY ? [i] : []
        })
        expect(index.near(asked, grow)).toEqual(expected)
      }
    }
  })

  it('of many refuses one that is not finite, too', () => {
    const bad = { minX: 0, minY: 0, maxX: Number.POSITIVE_INFINITY, maxY: 1 }
    expect(() => neighbours([...field(30).map(bounds), bad])).toThrow('Infinity')
  })
})

describe('nearestGaps', () => {
  it('of nothing and of one alone', () => {
    expect(nearestGaps([], 5)).toEqual([])
    expect(nearestGaps([circle(origin, 1)], 5)).toEqual([null])
  })

  it('refuses a limit that is not a number', () => {
    expect(() => nearestGaps([], Number.NaN)).toThrow('NaN')
  })

  it('leaves out what is beyond the limit and keeps what is at it', () => {
    const pair = [circle(origin, 1), circle({ x: 5, y: 0 }, 1)]
    expect(nearestGaps(pair, 3)).toEqual([
      { other: 1, gap: 3 },
      { other: 0, gap: 3 },
    ])
    expect(nearestGaps(pair, 2.9)).toEqual([null, null])
    expect(nearestGaps(pair, Number.POSITIVE_INFINITY)[0]).toEqual({ other: 1, gap: 3 })
  })

  it('with a limit below 0 names overlaps only', () => {
    const row = [circle(origin, 1), circle({ x: 1, y: 0 }, 1), circle({ x: 9, y: 0 }, 1)]
    expect(nearestGaps(row, -0.5)).toEqual([{ other: 1, gap: -1 }, { other: 0, gap: -1 }, null])
  })

  it('of two equally near ones names the first in the list', () => {
    const row = [circle({ x: 10, y: 0 }, 1), circle(origin, 1), circle({ x: 5, y: 0 }, 1)]
    expect(nearestGaps(row, 10)[2]).toEqual({ other: 0, gap: 3 })
  })

  it('a near one round the corner is found although others have their middles nearer', () => {
    // A long slot: four small holes lie about its middle, the nearest wood is at its far end.
    const slot = stadium(origin, 200, 4)
    const holes = [-6, -2, 2, 6].map((x) => circle({ x, y: 8 }, 1))
    const end = circle({ x: 105, y: 0 }, 1)
    expect(nearestGaps([slot, ...holes, end], 50)[0]).toEqual({ other: 5, gap: expect.closeTo(4, 9) })
  })
})

describe('nearestGaps does work in step with the number of contours', () => {
  /** Holes that count how often any rule asks what shape they are. */
  function counted(holes: readonly Contour[]): {
    readonly contours: Contour[]
    readonly asked: () => number
  } {
    let asked = 0
    const contours = holes.map((hole) => {
      const { shape } = hole
      return Object.defineProperty({ ...hole }, 'shape', {
        get: () => {
          asked++
          return shape
        },
      }) as Contour
    })
    return { contours, asked: () => asked }
  }

  function work(holes: readonly Contour[], limit: number): number {
    const { contours, asked } = counted(holes)
    nearestGaps(contours, limit)
    return asked()
  }

  const plate = rectangle(-10, -10, 400, 400)

  it.each([
    ['a field of holes, limit 5', field, 5],
    ['a field of holes, no limit', field, Number.POSITIVE_INFINITY],
    ['a field of holes in one plate that holds them all', (n: number) => [plate, ...field(n)], 5],
    [
      'a heap of small holes and one far away',
      (n: number) => [
        ...field(n).map((hole) => circle({ x: hole.centre.x / 100, y: hole.centre.y / 100 }, 0.01)),
        circle({ x: 1000, y: 900 }, 1),
      ],
      Number.POSITIVE_INFINITY,
    ],
  ] as const)('%s: ten times the holes, about ten times the work', (_, make, limit) => {
    const few = work(make(1000), limit)
    const many = work(make(10000), limit)
    expect(few).toBeGreaterThan(1000)
    expect(many / few).toBeLessThan(12)
  })
})
