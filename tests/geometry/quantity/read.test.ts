import { describe, expect, it } from 'vitest'
import { readLength } from '../../../geometry/quantity/index.ts'
import { INCH_TABLE } from './inchTable.ts'

const mmOf = (text: string, assumed: 'mm' | 'inches') => {
  const reading = readLength(text, assumed)
  return reading.ok ? reading.mm : reading.sentence
}
const sentenceOf = (text: string, assumed: 'mm' | 'inches' = 'mm') => {
  const reading = readLength(text, assumed)
  return reading.ok ? `read as ${reading.mm} mm` : reading.sentence
}

// Millimetres beside each text follow from 1 in = 25.4 mm and 1 ft = 304.8 mm exactly
// (16 CFR 500.19; NIST SP 811, appendix B.8).

describe('readLength, one length', () => {
  it.each(INCH_TABLE)('%s is %d in is %d mm', (fraction, inches, mm) => {
    expect(mmOf(fraction, 'inches')).toBe(mm)
    expect(mmOf(`${fraction} in`, 'mm')).toBe(mm)
    expect(mmOf(`${inches}"`, 'mm')).toBe(mm)
    expect(mmOf(`-${fraction}`, 'inches')).toBe(-mm)
    if (fraction !== '1') expect(mmOf(`10-${fraction}`, 'inches')).toBeCloseTo(254 + mm, 10)
  })

  it.each([
    ['11-1/16"', 280.9875],
    ['11-1/16 in', 280.9875],
    ['11 1/16in', 280.9875],
    ['11 1/16 in.', 280.9875],
    ['11 1/16 Inches', 280.9875],
    ['11.0625in', 280.9875],
    ['7/16 in', 11.1125],
    ['1/2"', 12.7],
    ['281 mm', 281],
    ['  281mm ', 281],
    ['28.1cm', 281],
    ['28,1 mm', 28.1],
    ['0,125 in', 3.175],
    ['1234,567 mm', 1234.567],
    ['.281m', 281],
    ['281 millimetres', 281],
    ["2'", 609.6],
    ['2 ft', 609.6],
    ['2\' 3 1/2"', 698.5],
    ["2' 3 1/2", 698.5],
    ['2\'-3 1/2"', 698.5],
    ['2\'-3-1/2"', 698.5],
    ['2’3½”', 698.5],
    ['2′ 3½″', 698.5],
    ["2' 3 1/2''", 698.5],
    ['1 ft 3 in', 381],
    ['1 foot 3 inches', 381],
    ['11½"', 292.1],
    ['11-½"', 292.1],
    ['11 ½ in', 292.1],
    ['1⁄2 in', 12.7],
    ['+7/16 in', 11.1125],
    ['−7/16 in', -11.1125],
    ['-11-1/16"', -280.9875],
    ['- 1\' 3"', -381],
    ['10 m', 10_000],
    ['0 mm', 0],
    ['-0 in', 0],
    ['11 0/16 in', 279.4],
    ['5/2 in', 63.5],
  ])('%s is %d mm whatever is assumed', (text, mm) => {
    expect(mmOf(text, 'mm')).toBe(mm)
    expect(mmOf(text, 'inches')).toBe(mm)
  })

  it.each([
    ['281', 281, 7137.4],
    ['.5', 0.5, 12.7],
    ['5.', 5, 127],
    ['11 1/16', 11.0625, 280.9875],
    ['11½', 11.5, 292.1],
    ['½', 0.5, 12.7],
    ['¼', 0.25, 6.35],
    ['¾', 0.75, 19.05],
    ['⅛', 0.125, 3.175],
    ['⅜', 0.375, 9.525],
    ['⅝', 0.625, 15.875],
    ['⅞', 0.875, 22.225],
    ['-3/8', -0.375, -9.525],
  ])('%s is %d mm in millimetres and %d mm in inches', (text, inMm, inInches) => {
    expect(mmOf(text, 'mm')).toBe(inMm)
    expect(mmOf(text, 'inches')).toBe(inInches)
  })

  it('never answers minus nought', () => {
    for (const text of ['-0', '0 * -1', '1 - 1', '-(2 - 2) in'])
      expect(Object.is(mmOf(text, 'inches'), 0)).toBe(true)
  })
})

describe('readLength, sums', () => {
  // In inches: every bare number that is not a factor counts 25.4 mm.
  it.each([
    ['9 1/2 / 2', 4.75 * 25.4],
    ['9 1/2/2', 4.75 * 25.4],
    ['9 1/2 / 2 + 3mm', 4.75 * 25.4 + 3],
    ['3mm + 9 1/2 / 2', 4.75 * 25.4 + 3],
    ['2 * 11/16', 1.375 * 25.4],
    ['2 * 3mm', 6],
    ['3mm * 2', 6],
    ['281mm/2', 140.5],
    ['(3 + 1/2) in', 88.9],
    ['(3 + 1/2) cm', 35],
    ['2 * (3mm + 1)', 56.8],
    ['(1 + 2) * 3 mm', 9],
    ['11 - 1/16', 10.9375 * 25.4],
    ['11 – 1/16', 10.9375 * 25.4],
    ['11-1/16', 11.0625 * 25.4],
    ['11.0-1/16', 10.9375 * 25.4],
    ['1/2-1/4', 6.35],
    ['11" - 1/16"', 10.9375 * 25.4],
    ['20-3', 17 * 25.4],
    ['1 - 2 - 3', -4 * 25.4],
    ['8 / 2 * 3', 12 * 25.4],
    ['1 + 2 * 3', 7 * 25.4],
    ['6 / 1 1/2', 4 * 25.4],
    ['6 / (1/2)', 12 * 25.4],
    ['6 / 1/2', 12 * 25.4],
    ['6/½', 12 * 25.4],
    ['1/2/2', 6.35],
    ['1 / 2', 12.7],
    ['1/2.5', 0.4 * 25.4],
    ['3 * -2', -6 * 25.4],
    ['-(3 - 5)', 50.8],
    ['9 ÷ 2', 4.5 * 25.4],
    ['2\' 3" / 2', 342.9],
    ['2\' - 3"', 533.4],
    ['2\'-3"', 685.8],
    ["2' - 3 mm", 606.6],
    ["2'-3mm", 606.6],
    ['2\' + 15"', 990.6],
    ['20 m / 4', 5000],
    ['1/2 * 2mm + 3', 77.2],
    ['8*2-1/4', 18 * 25.4],
    ['2\' 11 15/16"', 575 * 1.5875],
  ])('%s in inches is %d mm', (text, mm) => {
    expect(mmOf(text, 'inches')).toBeCloseTo(mm, 9)
  })

  it('counts bare numbers as millimetres where those are assumed', () => {
    expect(mmOf('9 1/2 / 2 + 1 in', 'mm')).toBeCloseTo(30.15, 9)
    expect(mmOf('100 + 1/2"', 'mm')).toBeCloseTo(112.7, 9)
    expect(mmOf('2 * (100 - 3)', 'mm')).toBe(194)
  })
})

describe('readLength, what it refuses', () => {
  it.each([
    ['', 'Nothing is written here'],
    ['  \n ', 'such as 281 mm or 11 1/16 in'],
    ['12 parsecs', '“parsecs” is no unit of length known here'],
    ['constructor', '“constructor” is no unit'],
    ['1e3', '“e” is no unit'],
    ['Infinity', '“Infinity” is no unit'],
    ['NaN', '“NaN” is no unit'],
    ['3 # 4', '“#” has no place in a length'],
    ['50%', '“%” has no place'],
    ['😀', '“😀” has no place'],
    ['mm', 'no number stands before “mm”'],
    ['"11"', 'no number stands before “"”'],
    ['3 mm mm', '“mm” stands behind what already has a unit'],
    ['(3 mm) in', '“in” stands behind what already has a unit'],
    ['11 1 / 16', 'nothing says how “1” goes with'],
    ['2.5 1/2', 'nothing says how “1/2” goes with'],
    ['1 m 20 cm', 'nothing says how “20” goes with'],
    ['2(3)', 'nothing says how “(” goes with'],
    ['3 +', 'it stops where a number should follow'],
    ['(', 'it stops where a number should follow'],
    ['* 3', 'a number is missing before “*”'],
    ['--3', 'a number is missing before “-”'],
    ['()', 'a number is missing before “)”'],
    ['(3 + 4', 'a bracket is opened and never closed'],
    ['3 + 4)', 'a bracket closes that was never opened'],
    ['1/0', '1/0 divides by zero'],
    ['11 1/0', '1/0 divides by zero'],
    ['5 / 0', 'that divides by zero'],
    ['5 mm / (1 - 1)', 'that divides by zero'],
    ['0 / 0', 'that divides by zero'],
    ['2 in * 3 mm', 'a length times a length is an area'],
    ['30 mm / 5 mm', 'what is divided by a length is no length'],
    ['9 1/2 / 2 in', '(9 1/2 / 2) in'],
    ['1.2.3', '“1.2.3” is not one number'],
    ['1,234.5', 'as in 1234.5'],
    ['28,', '“28,” is not one number'],
    ['.', '“.” is not one number'],
    ['30 x 20 mm', '“x” stands between two sizes'],
    ['30 × 20 mm', '“×” stands between two sizes'],
    ['11 16/16', 'no mixed number'],
    ['11-17/16', 'no mixed number'],
  ])('%s: %s', (text, part) => {
    expect(sentenceOf(text)).toContain(part)
    expect(sentenceOf(text, 'inches')).toContain(part)
  })

  it.each([
    ['1,234', 'Write 1234 or 1.234, whichever is meant'],
    ['11 -1/16', 'Write 11 1/16 for the mixed number, 11 - 1/16 for the difference'],
    ['11- 1/16', 'Write 11 1/16 for the mixed number, 11 - 1/16 for the difference'],
    ['2\' -3"', 'Leave the minus out to add'],
    ['2\'- 3"', 'Leave the minus out to add'],
    ['2\' 15"', 'from 12 on they would make another foot'],
    ['2\' 12"', 'from 12 on they would make another foot'],
    ["1'234", 'from 12 on they would make another foot'],
    ['3mm/4/5', 'Write / (4/5) to divide by the fraction, or 4 / 5 to divide twice'],
    ['3/4/5/6', 'can be read two ways'],
  ])('asks about %s, which reads two ways', (text, part) => {
    expect(sentenceOf(text)).toContain(part)
  })

  it('asks about what no bench holds', () => {
    expect(sentenceOf('281 m')).toContain('that comes to 281 m, and 10 m is the longest taken here')
    expect(sentenceOf('1000', 'inches')).toContain('that comes to 25.4 m')
    expect(sentenceOf('1000', 'inches')).toContain('without one counts as inches')
    expect(sentenceOf('-10.01 m')).toContain('that comes to 10.01 m')
    expect(sentenceOf('9'.repeat(100))).toContain('more than 100 km')
    expect(sentenceOf(`${'9'.repeat(50)} / .${'0'.repeat(50)}1`)).toContain('more than 100 km')
  })

  it('says what was read, on one line and not at length', () => {
    expect(sentenceOf('12 parsecs')).toBe(
      '“12 parsecs”: “parsecs” is no unit of length known here. ' +
        'Use mm, cm, m, in or ft after a number, as in 281 mm or 11 1/16 in.',
    )
    expect(sentenceOf('3\n#\u0007 4')).toBe(
      '“3 #� 4”: “#” has no place in a length. Write it as 281 mm or 11 1/16 in.',
    )
    expect(sentenceOf('('.repeat(1_000_000))).toBe(
      `“${'('.repeat(40)}…”: that is more than a length needs. Write only the length, such as 281 mm or 11 1/16 in.`,
    )
  })
})
