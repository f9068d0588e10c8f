import { describe, expect, test } from 'vitest'
import { type Adjusted, adjust, lengthOf } from '../../../../geometry/box/survey/adjust.ts'
import { DISTANCES, type Distance } from '../../../../geometry/box/survey/distances.ts'
import { inverseOf } from '../../../../geometry/box/survey/normal.ts'
import { meansOf, startOf } from '../../../../geometry/box/survey/observations.ts'
import { angleAt } from '../../../../geometry/box/survey/squareness.ts'
import { designOf } from '../../../support/designs.ts'

const BOX = designOf().box
const inDegrees = (radians: number) => (radians * 180) / Math.PI

/** Corners A, B, C, D of the sources stand for neck-end bass, tail-end bass, tail-end treble and neck-end treble. */
const NAMES = {
  AB: 'bass',
  BC: 'tailEnd',
  CD: 'treble',
  DA: 'neckEnd',
  AC: 'diagonalFromBass',
  BD: 'diagonalFromTreble',
} as const satisfies Record<string, Distance>
type Named = Partial<Record<keyof typeof NAMES, number>>

function adjusted(lengths: Named): Adjusted {
  const readings = Object.entries(lengths).map(([name, value]) => ({
    of: NAMES[name as keyof typeof NAMES],
    index: 0,
    value,
  }))
  const made = adjust(
    readings.map(({ of, value }) => ({ of, value, sigma: 1 })),
    startOf(meansOf(readings), BOX),
  )
  if (!made) throw new Error('the lengths determine no quadrilateral')
  return made
}

describe('four sides and one diagonal are the law of cosines twice', () => {
  test('triangles of 3, 4, 5 and 5, 12, 13 on a common side: the other diagonal squared is 210.6', () => {
    const { corners, redundancy } = adjusted({ AB: 4, BC: 3, CD: 12, DA: 13, AC: 5 })
    expect(lengthOf('diagonalFromTreble', corners) ** 2).toBeCloseTo(210.6, 8)
    expect(redundancy).toBe(0)
  })

  test('a found box, worked out by the law of cosines', () => {
    const { corners } = adjusted({ AB: 218.6, BC: 151.2, CD: 220.9, DA: 149.5, AC: 266.8 })
    expect(lengthOf('diagonalFromTreble', corners)).toBeCloseTo(265.714271, 5)
    const angles = [0, 1, 2, 3].map((index) => inDegrees(angleAt(corners, index)))
    for (const [index, angle] of [90.410133, 90.463574, 89.095775, 90.030518].entries())
      expect(angles[index]).toBeCloseTo(angle, 5)
    expect(angles.reduce((sum, one) => sum + one, 0)).toBeCloseTo(360, 9)
  })

  test('a triangle of sides 20, 25 and 18 has an angle of 52.4° (OpenStax, Algebra and Trigonometry, law of cosines, example 2)', () => {
    // cos is 549/900: the corner between 25 and 18, with a square's worth of box on the other side.
    const { corners } = adjusted({ AB: 25, DA: 18, BD: 20, BC: 18, CD: 25 })
    expect(inDegrees(angleAt(corners, 0))).toBeCloseTo(inDegrees(Math.acos(549 / 900)), 8)
    expect(inDegrees(angleAt(corners, 0))).toBeCloseTo(52.4, 1)
  })
})

/**
 * Six measured lengths of a braced quadrilateral, metres (a surveying textbook's trilateration example, 3.3). The adjusted lengths
 * were reckoned apart from this code, by the method of condition equations and by coordinates; from memory of both methods.
 */
const BRACED = { AB: 1525.456, BC: 2176.945, CD: 1697.435, DA: 2401.435, AC: 3073.845, BD: 2483.115 }
const BRACED_ADJUSTED = {
  AB: 1525.537,
  BC: 2177.0578,
  CD: 1697.5022,
  DA: 2401.5325,
  AC: 3073.7028,
  BD: 2483.0021,
}

describe('the braced quadrilateral of the textbooks', () => {
  const { corners, residuals, redundancies, standardized, redundancy, sum } = adjusted(BRACED)

  test('its adjusted lengths, with the least sum of squares', () => {
    for (const [name, wanted] of Object.entries(BRACED_ADJUSTED))
      expect(Math.abs(lengthOf(NAMES[name as keyof typeof NAMES], corners) - wanted)).toBeLessThan(2e-4)
    expect(Math.abs(sum - 0.066274)).toBeLessThan(2e-5)
  })

  test('its residuals: sides lengthen, diagonals shorten', () => {
    for (const [index, wanted] of [0.08103, 0.1128, 0.06722, 0.09748, -0.14222, -0.11286].entries())
      expect(Math.abs((residuals[index] ?? 0) - wanted)).toBeLessThan(3e-5)
  })

  test('redundancy numbers sum to the redundancy, and one condition makes all standardized residuals alike', () => {
    expect(redundancy).toBe(1)
    expect(redundancies.reduce((total, one) => total + one, 0)).toBeCloseTo(1, 9)
    const most = Math.max(...standardized.map(Math.abs))
    for (const one of standardized) expect(Math.abs(one) / most).toBeCloseTo(1, 3)
    expect(most ** 2).toBeCloseTo(sum, 3)
  })

  test('five of the lengths predict the sixth: 2482.52772', () => {
    const { BD: _left, ...five } = BRACED
    expect(lengthOf('diagonalFromTreble', adjusted(five).corners)).toBeCloseTo(2482.52772, 4)
  })
})

describe('normal equations', () => {
  test('an inverse is one', () => {
    const matrix = [
      [4, 1, 0.5],
      [1, 3, 0.2],
      [0.5, 0.2, 2],
    ]
    const inverse = inverseOf(matrix)
    for (let row = 0; row < 3; row++)
      for (let column = 0; column < 3; column++) {
        const product = matrix[row]?.reduce((sum, value, k) => sum + value * (inverse?.[k]?.[column] ?? 0), 0)
        expect(product).toBeCloseTo(row === column ? 1 : 0, 12)
      }
  })

  test('what was never measured has none: four sides alone leave a box that folds', () => {
    expect(
      inverseOf([
        [1, 1],
        [1, 1],
      ]),
    ).toBeNull()
    const sides = (['bass', 'treble', 'neckEnd', 'tailEnd'] as const).map((of) => ({
      of,
      value: 100,
      sigma: 1,
    }))
    expect(adjust(sides, startOf({}, BOX))).toBeNull()
  })

  test('every distance of the six belongs to the list', () => {
    expect(Object.values(NAMES).sort()).toEqual([...DISTANCES].sort())
  })
})
