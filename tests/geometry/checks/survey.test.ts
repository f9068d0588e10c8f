/**
 * What the readings of a box say: do they make one, do they agree, is it square, does it rock.
 *
 * A rule of whole millimetres: each reading is good to half of one. The usual box is 240 by 180, its diagonals 300.
 */
import { describe, expect, test } from 'vitest'
import { check, sentenceOf, solve } from '../../../geometry/index.ts'
import { designOf, type Stated } from '../../support/designs.ts'
import { graded, to4, told } from './told.ts'

const SQUARE = {
  ...{ bass: [240], treble: [240], neckEnd: [180], tailEnd: [180] },
  ...{ diagonalFromBass: [300], diagonalFromTreble: [300] },
}
const surveyed = (survey: Stated, more: Stated = {}): Stated => ({ ...more, box: { survey } })
const saysOf = (rule: string, survey: Stated, more: Stated = {}) => told(rule, surveyed(survey, more))
const sentence = (rule: string, survey: Stated): string => {
  const layout = solve(designOf(surveyed(survey)))
  const finding = check(layout).find((one) => one.rule === rule)
  if (!finding) throw new Error(`${rule} says nothing`)
  return sentenceOf(finding, layout)
}
const ACROSS = 'plan (462.2, -90) to (702.2, 90)'

test('without readings nothing is said', () => {
  for (const rule of ['survey-makes-box', 'survey-agrees', 'out-of-square', 'box-twist'])
    expect(told(rule)).toEqual([])
})

describe('readings that make a box', () => {
  test('or make none', () => {
    expect(saysOf('survey-makes-box', SQUARE)).toEqual([`clear box: 1 of 1, ${ACROSS}`])
    // 240 + 180 is 420; the box is then drawn as it is stated.
    const long = { ...SQUARE, diagonalFromBass: [430] }
    expect(saysOf('survey-makes-box', long)).toEqual([`stop box: 0 of 1, ${ACROSS}`])
    expect(sentence('survey-makes-box', long)).toContain('is read 10.0 mm longer than')
    for (const rule of ['survey-agrees', 'out-of-square']) expect(saysOf(rule, long)).toEqual([])
  })
})

/**
 * Baarda's test: a reading may be off what the others say by 3.29 standard deviations (one chance in a thousand) over the
 * root of the share of it that the others control: of n readings of one side 1 - 1 / n.
 */
const allowed = (count: number) => (3.29 * 0.5) / Math.sqrt(1 - 1 / count)

describe('readings that agree', () => {
  test.each([
    [[240, 240.4], 'clear', 0.4, 2],
    [[240.4, 240], 'clear', 0.4, 2],
    [[240, 242.3], 'clear', 2.3, 2],
    [[240, 242.4], 'care', 2.4, 2],
    // The third is 0.6 more than the mean of the others, each of these only 0.3 less than theirs.
    [[240, 240, 240.6], 'clear', 0.6, 3],
    [[239.4, 240, 240], 'clear', 0.6, 3],
    [[240, 240, 240, 245], 'care', 5, 4],
    [[235, 240, 240, 240], 'care', 5, 4],
  ])('of one side %j', (bass, grade, off, count) => {
    const [line = ''] = saysOf('survey-agrees', { bass })
    expect(line.split(', plan')[0]).toBe(`${grade} box: ${off} of ${to4(allowed(count))}`)
  })

  test('one reading of each says nothing of them', () => {
    expect(saysOf('survey-agrees', { bass: [240], neckEnd: [180] })).toEqual([])
  })

  test('the reading that is off is named, and by how much', () => {
    expect(sentence('survey-agrees', { bass: [240, 240, 240, 245] })).toContain(
      'The bass side, read as 245.0 mm, seems 5.0 mm too long for the rest.',
    )
    expect(sentence('survey-agrees', { treble: [240, 240, 240, 235] })).toContain(
      'The treble side, read as 235.0 mm, seems 5.0 mm too short for the rest.',
    )
    expect(sentence('survey-agrees', { bass: [240, 245] })).toContain(
      'The readings of the bass side lie up to 5.0 mm off.',
    )
    // The worst of three is 0.4 off the mean of all.
    expect(sentence('survey-agrees', { bass: [240, 240, 240.6] })).toContain(
      'no reading is off by more than 0.40 mm',
    )
  })

  test('where it cannot be told which, all that may be are named', () => {
    expect(sentence('survey-agrees', { ...SQUARE, bass: [246] })).toContain(
      'which is off: the bass side, the treble side, the neck end, the tail end, the diagonal from neck-end bass or the diagonal from neck-end treble.',
    )
  })

  test('a slip of the pen is asked about', () => {
    const asked = (survey: Stated) => sentence('survey-agrees', { ...SQUARE, ...survey })
    expect(asked({ bass: [265.4] })).toContain(
      'The bass side was read as 265.4 mm; an inch less, 240.0 mm, would agree with the rest.',
    )
    expect(asked({ treble: [214.6] })).toContain(
      'The treble side was read as 214.6 mm; an inch more, 240.0 mm, would agree with the rest.',
    )
    expect(asked({ bass: [246] })).not.toContain('would agree')
  })

  test('a slip is told even where a shape had to be assumed', () => {
    // Sides that should be alike, an inch apart.
    // Doubted beyond six standard deviations: of each of the two half a graduation, 3 for sides that are taken to be alike.
    const line = (graduation: number) =>
      saysOf('survey-agrees', { bass: [265.4], treble: [240] }, { rule: { graduation } })[0]?.split(
        ', plan',
      )[0]
    expect(line(0)).toBe(`care box: 25.4 of ${to4(6 * Math.sqrt(0.5 ** 2 + 0.5 ** 2 + 3 ** 2))}`)
    expect(line(2)).toBe(`care box: 25.4 of ${to4(6 * Math.sqrt(1 + 1 + 3 ** 2))}`)
    expect(sentence('survey-agrees', { bass: [265.4], treble: [240] })).toContain(
      'The sides of the box differ by 25.4 mm.',
    )
  })
})

describe('out of square', () => {
  /** Corner of a parallelogram of 240 and 180 whose one diagonal is so long: law of cosines. */
  const cosine = (diagonal: number) => (240 ** 2 + 180 ** 2 - diagonal ** 2) / (2 * 240 * 180)
  const leaning = (diagonal: number) => ({ ...SQUARE, diagonalFromTreble: [diagonal], diagonalFromBass: [] })

  test.each([296, 304])('of a box whose one diagonal is %d', (diagonal) => {
    const c = cosine(diagonal)
    const over = (240 * Math.abs(c)) / Math.sqrt(1 - c * c)
    const [line = ''] = saysOf('out-of-square', leaning(diagonal))
    expect(line).toMatch(`note box: ${to4(over)} of 1.5, plan (`)
    const grade = (outOfSquare: number) =>
      graded('out-of-square', surveyed(leaning(diagonal), { limits: { outOfSquare } }))
    expect(grade(over + 1e-4)).toEqual(['clear'])
    expect(grade(over - 1e-4)).toEqual(['note'])
  })

  test('is told with the corner that is worst, in degrees', () => {
    // A radian is 57.2958 degrees; its neighbour has as much more.
    const corner = Math.acos(cosine(296)) * 57.29578
    const said = sentence('out-of-square', leaning(296))
    expect(
      [corner.toFixed(2), (180 - corner).toFixed(2)].some((one) => said.includes(`corner has ${one}°`)),
    ).toBe(true)
  })
})

describe('twist of the walls', () => {
  const heights = (neckBass: number, neckTreble: number, tailBass: number, ...tailTreble: number[]) => ({
    heightNeckBass: [neckBass],
    heightNeckTreble: [neckTreble],
    heightTailBass: [tailBass],
    heightTailTreble: tailTreble,
  })

  test.each([
    // The fourth corner against 46 + 48 - 47.
    [48, 'clear box: 1 of 1', 'above'],
    [48.1, 'care box: 1.1 of 1', 'above'],
    [46, 'clear box: 1 of 1', 'below'],
    [45.9, 'care box: 1.1 of 1', 'below'],
  ])('with the fourth corner at %d', (height, line, side) => {
    expect(saysOf('box-twist', heights(47, 48, 46, height))).toEqual([`${line}, ${ACROSS}`])
    expect(sentence('box-twist', heights(47, 48, 46, height))).toContain(
      ` ${side} the plane of the other three`,
    )
  })

  test('is as sure as four readings of half a millimetre are', () => {
    // √(4 × 0.5²); with two readings of one corner √(3 × 0.5² + 0.5² / 2).
    expect(sentence('box-twist', heights(47, 48, 46, 49))).toContain('give or take 1.0 mm')
    expect(sentence('box-twist', heights(47, 48, 46, 49, 49))).toContain('give or take 0.9 mm')
  })

  test('takes all four corners', () => {
    expect(
      saysOf('box-twist', { heightNeckBass: [47], heightNeckTreble: [48], heightTailBass: [46] }),
    ).toEqual([])
    expect(saysOf('box-twist', SQUARE)).toEqual([])
  })
})
