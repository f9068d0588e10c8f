import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { DRILL_SETS, drillsOf, stockDrill } from '../../../geometry/index.ts'

const NAMED = drillsOf('fractional, number and letter', 'inches')
const METRIC = drillsOf('metric', 'mm')
const inches = (size: string) => (NAMED.find((drill) => drill.size === size)?.diameter ?? Number.NaN) / 25.4

describe('sizes', () => {
  // ANSI/ASME B94.11M-1993 (R2019), Twist Drills, tables of number and letter sizes, inches; values from memory of the
  // standard, compared with a public table of the same 106 sizes.
  test.each([
    ['#1', 0.228],
    ['#7', 0.201],
    ['#21', 0.159],
    ['#29', 0.136],
    ['#36', 0.1065],
    ['#43', 0.089],
    ['#50', 0.07],
    ['#60', 0.04],
    ['#61', 0.039],
    ['#80', 0.0135],
    ['A', 0.234],
    ['F', 0.257],
    ['I', 0.272],
    ['Q', 0.332],
    ['U', 0.368],
    ['Z', 0.413],
  ])('%s is %f in', (size, diameter) => {
    expect(inches(size)).toBeCloseTo(diameter, 9)
  })

  test('80 numbers, 26 letters; a higher number is a smaller drill, a later letter a larger one', () => {
    const numbers = NAMED.filter((drill) => drill.series === 'number')
    const letters = NAMED.filter((drill) => drill.series === 'letter')
    expect([numbers.length, letters.length]).toEqual([80, 26])
    expect(numbers.map(({ size }) => Number(size.slice(1)))).toEqual(
      Array.from({ length: 80 }, (_, index) => 80 - index),
    )
    expect(letters.map(({ size }) => size).join('')).toBe('ABCDEFGHIJKLMNOPQRSTUVWXYZ')
  })

  // 16 CFR 500.19: 25.4 mm to the inch, exactly; so 1/64 in is 0.396875 mm.
  test('fractions go by sixty-fourths and stand in lowest terms', () => {
    const fractions = drillsOf('fractional', 'inches')
    expect(fractions[0]).toMatchObject({ size: '1/64', diameter: 0.396875 })
    expect(fractions.find(({ size }) => size === '3/32')?.diameter).toBe(2.38125)
    expect(fractions.find(({ size }) => size === '1/2')?.diameter).toBe(12.7)
    // A trade article on flat bits warns that 1-3/8 in is 34.925 mm, not the 35 mm of a hinge cup.
    expect(fractions.find(({ size }) => size === '1-3/8')?.diameter).toBe(34.925)
    expect(inches('E')).toBe(0.25)
  })

  // "Drill bit sizes", metric series of BS 328: steps of 0.05 mm to 2.95 mm, 0.1 mm from 3.0 mm.
  test('metric drills rise by 0.05 to 2.95 and by 0.1 from 3', () => {
    const sizes = METRIC.filter((drill) => drill.tool === 'twist drill').map(({ diameter }) => diameter)
    expect(sizes.slice(0, 3)).toEqual([1, 1.05, 1.1])
    expect(sizes.slice(38, 42)).toEqual([2.9, 2.95, 3, 3.1])
    expect(sizes.at(-1)).toBe(13)
    expect(METRIC.find(({ diameter }) => diameter === 2.4)?.size).toBe('2.4')
  })
})

describe('the drill to take', () => {
  test.each(DRILL_SETS)(
    'from the set “%s” it is never smaller than wanted by more than 0.02 mm, and none between does',
    (set) => {
      const stock = drillsOf(set, 'mm')
      fc.assert(
        fc.property(fc.double({ min: 0.2, max: 120, noNaN: true }), (wanted) => {
          const choice = stockDrill(wanted, stock)
          const enough = stock.filter(({ diameter }) => diameter >= wanted)
          if (!choice) {
            expect(enough).toEqual([])
            return
          }
          expect(choice.over).toBeGreaterThanOrEqual(-0.02 - 1e-12)
          expect(choice.drill.diameter).toBeLessThanOrEqual(enough[0]?.diameter ?? Number.POSITIVE_INFINITY)
        }),
      )
    },
  )

  test('a hole of 9.6 mm for a jack takes 9.6 mm, 25/64 in or letter V', () => {
    // 3/8 in is 9.525 mm and too small; 25/64 in is 9.9219; letter V is 0.377 in or 9.5758, smaller by more than 0.02.
    expect(stockDrill(9.6, METRIC)?.drill.size).toBe('9.6')
    expect(stockDrill(9.6, drillsOf('by the unit', 'inches'))?.drill.size).toBe('25/64')
    expect(stockDrill(9.6, NAMED)?.drill.size).toBe('W')
  })

  test('2.4 mm typed for 3/32 in is the size meant, and the little it lacks is told', () => {
    const choice = stockDrill(2.4, drillsOf('fractional', 'inches'))
    expect(choice?.drill.size).toBe('3/32')
    expect(choice?.over).toBeCloseTo(-0.01875, 9)
  })

  test('beyond the largest saw there is none', () => {
    expect(stockDrill(150, METRIC)).toBeNull()
  })

  test.each([0, -3, Number.NaN])('a hole of %f mm is misuse and named', (diameter) => {
    expect(() => stockDrill(diameter, METRIC)).toThrow(String(diameter))
  })
})
