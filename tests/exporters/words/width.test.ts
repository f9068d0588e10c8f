import { describe, expect, test } from 'vitest'
import { BOLD, fitLine, textWidth } from '../../../exporters/words/width.ts'

/**
 * The wider of DejaVu Sans 2.37 and Liberation Sans 2.1 for each character, share of the em, regular and bold;
 * read from the `hmtx` tables of the font files.
 */
const ADVANCES: readonly (readonly [character: string, regular: number, bold: number])[] = [
  ['i', 0.278, 0.343],
  [' ', 0.318, 0.348],
  ['.', 0.318, 0.38],
  ['f', 0.352, 0.435],
  ['(', 0.39, 0.457],
  ['!', 0.401, 0.456],
  ['t', 0.392, 0.478],
  ['r', 0.411, 0.493],
  ['s', 0.521, 0.595],
  ['a', 0.613, 0.675],
  ['n', 0.634, 0.712],
  ['g', 0.635, 0.716],
  ['0', 0.636, 0.696],
  ['w', 0.818, 0.924],
  ['m', 0.974, 1.042],
  ['E', 0.667, 0.683],
  ['R', 0.722, 0.77],
  ['H', 0.752, 0.837],
  ['O', 0.787, 0.85],
  ['Ö', 0.787, 0.85],
  ['M', 0.863, 0.995],
  ['W', 0.989, 1.103],
  ['×', 0.838, 0.838],
  ['+', 0.838, 0.838],
  ['%', 0.95, 1.002],
  ['½', 0.969, 1.035],
  ['@', 1.015, 1.0],
]

describe('textWidth', () => {
  test.each(ADVANCES)(
    '%j is never taken for narrower than two usual faces draw it',
    (character, regular, bold) => {
      expect(textWidth(character, 1)).toBeGreaterThanOrEqual(regular)
      expect(textWidth(character, 1) * BOLD).toBeGreaterThanOrEqual(bold)
      // Nor for so wide that words shrink for nothing.
      expect(textWidth(character, 1)).toBeLessThan(regular * 1.6)
    },
  )
})

describe('fitLine', () => {
  test('what fits stays as it is', () => {
    expect(fitLine('Lid', 5, 2, 100)).toEqual({ text: 'Lid', size: 5 })
  })

  test('what does not fit is set smaller', () => {
    const fitted = fitLine('Treble wall', 5, 2, 20)
    expect(fitted.text).toBe('Treble wall')
    expect(textWidth(fitted.text, fitted.size)).toBeCloseTo(20, 9)
  })

  test('what would become too small to read is cut and says so', () => {
    const fitted = fitLine('A title that goes on and on and on', 5, 2, 20)
    expect(fitted.size).toBe(2)
    expect(fitted.text).toMatch(/^A title .*\.\.\.$/)
    expect(textWidth(fitted.text, fitted.size)).toBeLessThanOrEqual(20)
  })
})
