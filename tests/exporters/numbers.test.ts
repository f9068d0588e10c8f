import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { BULGE_DIGITS, lengthLabel, MILLIMETRE_DIGITS, numberText } from '../../exporters/numbers.ts'

describe('numberText', () => {
  test.each([
    [0.1 + 0.2, '0.3'],
    [1e-7, '0'],
    [-1e-9, '0'],
    [-0, '0'],
    [6e-7, '0.000001'],
    [300, '300'],
    [1200, '1200'],
    [-12.5, '-12.5'],
    [999999.999999, '999999.999999'],
    [1 / 3, '0.333333'],
  ])('%s is written as %s', (value, text) => {
    expect(numberText(value, 'A length')).toBe(text)
  })

  test.each([Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY, 1e6, -1e6, 1e21])(
    '%s is refused with its value and what it is',
    (value) => {
      expect(() => numberText(value, 'The radius of a hole')).toThrow(`The radius of a hole is ${value}`)
    },
  )

  test('what is not a number at all is refused as well', () => {
    expect(() => numberText(undefined as unknown as number, 'x of a point')).toThrow(
      'x of a point is undefined',
    )
    expect(() => numberText('5' as unknown as number, 'x of a point')).toThrow('x of a point is 5')
  })

  test('every number below a million comes back within half the last digit, plainly written', () => {
    fc.assert(
      fc.property(fc.double({ min: -999_999, max: 999_999, noNaN: true }), (value) => {
        const text = numberText(value, 'A length', MILLIMETRE_DIGITS)
        expect(text).toMatch(/^-?\d+(\.\d*[1-9])?$/)
        expect(text).not.toBe('-0')
        expect(Math.abs(Number(text) - value)).toBeLessThanOrEqual(0.5000001e-6)
      }),
    )
  })

  test('the short way writes what toFixed writes, also next to the middle between two last digits', () => {
    // ECMA-262, Number.prototype.toFixed: the exact value is rounded once, halves upwards in size.
    const byToFixed = (value: number, digits: number) => {
      const text = value
        .toFixed(digits)
        .replace(/(\.\d*?)0+$/, '$1')
        .replace(/\.$/, '')
      return text === '-0' ? '0' : text
    }
    const places = fc.constantFrom(0, 2, 3, 4, 6, 7, 8, 12, 15)
    const below = fc.double({ min: -999_999, max: 999_999, noNaN: true })
    const small = fc.double({ min: -1e-3, max: 1e-3, noNaN: true })
    const half = fc.tuple(fc.integer({ min: -999_999, max: 999_998 }), fc.integer({ min: -2, max: 2 }))
    fc.assert(
      fc.property(fc.oneof(below, small), places, (value, digits) => {
        expect(numberText(value, 'A length', digits)).toBe(byToFixed(value, digits))
      }),
      { numRuns: 2000 },
    )
    fc.assert(
      fc.property(half, places, ([whole, steps], digits) => {
        const middle = (whole + 0.5) / 10 ** digits
        const value = middle + steps * Number.EPSILON * middle
        expect(numberText(value, 'A length', digits)).toBe(byToFixed(value, digits))
      }),
      { numRuns: 2000 },
    )
  })

  test('a bulge keeps the rise of a 2 m arc to a nanometre', () => {
    const bulge = 0.1234567890123456
    const written = Number(numberText(bulge, 'A bulge', BULGE_DIGITS))
    expect(Math.abs(written - bulge) * 1000).toBeLessThan(1e-6)
  })
})

test('lengthLabel shows at least one decimal and no more than asked for', () => {
  expect(lengthLabel(3, 'depth')).toBe('3.0')
  expect(lengthLabel(0.58, 'width')).toBe('0.58')
  expect(lengthLabel(1.23456, 'width')).toBe('1.235')
})
