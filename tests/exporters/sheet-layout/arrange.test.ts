import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { arrange, type Size } from '../../../exporters/sheet-layout/arrange.ts'

const sizes = fc.array(
  fc.record({ width: fc.integer({ min: 1, max: 900 }), height: fc.integer({ min: 1, max: 300 }) }),
  { minLength: 1, maxLength: 15 },
)

/** True where two rectangles come nearer than the gap both ways. */
function tooNear(list: readonly Size[], places: readonly { x: number; y: number }[], gap: number): boolean {
  return list.some((a, i) =>
    list.some((b, j) => {
      const [p, q] = [places[i], places[j]]
      if (i >= j || p === undefined || q === undefined) return false
      const dx = Math.max(p.x - (q.x + b.width), q.x - (p.x + a.width))
      const dy = Math.max(p.y - (q.y + b.height), q.y - (p.y + a.height))
      return Math.max(dx, dy) < gap - 1e-6
    }),
  )
}

describe('arrange', () => {
  test('no two parts come nearer than the gap, and all lie on the sheet', () => {
    fc.assert(
      fc.property(sizes, (list) => {
        const { places, width, height } = arrange(list, 15)
        expect(places).toHaveLength(list.length)
        expect(tooNear(list, places, 15)).toBe(false)
        for (const [index, { x, y }] of places.entries()) {
          expect(x).toBeGreaterThanOrEqual(0)
          expect(y).toBeGreaterThanOrEqual(-1e-9)
          expect(x + (list[index]?.width ?? 0)).toBeLessThanOrEqual(width + 1e-9)
          expect(y + (list[index]?.height ?? 0)).toBeLessThanOrEqual(height + 1e-9)
        }
      }),
    )
  })

  test('the same parts always lie in the same places', () => {
    fc.assert(
      fc.property(sizes, (list) => {
        expect(arrange(list, 15)).toEqual(arrange([...list], 15))
      }),
    )
  })

  test('two that fit side by side do, and a third goes on the next shelf', () => {
    const size = { width: 10, height: 5 }
    expect(arrange([size, size, size], 2, 22)).toEqual({
      places: [
        { x: 0, y: 7 },
        { x: 12, y: 7 },
        { x: 0, y: 0 },
      ],
      width: 22,
      height: 12,
    })
  })

  test('a part wider than the shelf gets one to itself', () => {
    const { places } = arrange(
      [
        { width: 900, height: 40 },
        { width: 50, height: 30 },
      ],
      10,
      300,
    )
    expect(places).toEqual([
      { x: 0, y: 40 },
      { x: 0, y: 0 },
    ])
  })

  test('nothing, and what has no size, is refused', () => {
    expect(() => arrange([], 10)).toThrow('no part')
    expect(() => arrange([{ width: Number.NaN, height: 3 }], 10)).toThrow('NaN')
  })
})
