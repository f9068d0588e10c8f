import { describe, expect, it } from 'vitest'
import type { Circle } from '../../../geometry/plane/index.ts'
import { bounds, circle, neighbours, rectangle } from '../../../geometry/plane/index.ts'

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

  it('of many, too, finds those that touch and no others unless it is to grow', () => {
    // Squares of 1 in a row, every 2: between two of them, 1 is free.
    const boxes = Array.from({ length: 60 }, (_, i) => bounds(rectangle(2 * i, 0, 2 * i + 1, 1)))
    const index = neighbours(boxes)
    expect(index.near(boxes[30]!)).toEqual([30])
    expect(index.near(bounds(rectangle(61, 0, 62, 1)))).toEqual([30, 31])
    expect(index.near(boxes[30]!, 1)).toEqual([29, 30, 31])
  })

  it('of many refuses one that is not finite, too', () => {
    const bad = { minX: 0, minY: 0, maxX: Number.POSITIVE_INFINITY, maxY: 1 }
    expect(() => neighbours([...field(30).map(bounds), bad])).toThrow('Infinity')
  })
})
