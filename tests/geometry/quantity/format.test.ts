import fc from 'fast-check'
import makerjs from 'makerjs'
import { describe, expect, it } from 'vitest'
import {
  formatAngle,
  formatFine,
  formatLength,
  formatShare,
  inchesToMm,
  mmToInches,
  readLength,
  roundedLength,
  stepOf,
  type Units,
  unitName,
} from '../../../geometry/quantity/index.ts'
import { INCH_TABLE } from './inchTable.ts'

const MM: Units = { display: 'mm', fraction: 16 }
const DECIMAL: Units = { display: 'inches', fraction: 0 }
const inFractions = (fraction: Units['fraction']): Units => ({ display: 'inches', fraction })
const ALL_UNITS: readonly Units[] = [MM, DECIMAL, ...([8, 16, 32, 64] as const).map(inFractions)]

describe('the inch', () => {
  // 16 CFR 500.19 and NIST SP 811, appendix B.8: 1 in = 25.4 mm exactly; 1 ft = 304.8 mm exactly.
  it('is 25.4 mm exactly, both ways', () => {
    expect(inchesToMm(1)).toBe(25.4)
    expect(inchesToMm(12)).toBe(304.8)
    expect(mmToInches(25.4)).toBe(1)
  })

  it.each(INCH_TABLE)('%s in is %d in is %d mm', (_, inches, mm) => {
    expect(inchesToMm(inches)).toBe(mm)
    expect(mmToInches(mm)).toBe(inches)
  })

  // Maker.js, a general-purpose drawing library, holds its own table of units.
  it('agrees with the conversion of a library', () => {
    const { Inch, Millimeter } = makerjs.unitType
    expect(inchesToMm(1)).toBeCloseTo(makerjs.units.conversionScale(Inch, Millimeter), 12)
  })
})

describe('formatLength in fractions of an inch', () => {
  it.each(INCH_TABLE)('shows %s at 1/64', (fraction, _, mm) => {
    expect(formatLength(mm, inFractions(64))).toBe(fraction)
    expect(formatLength(-mm, inFractions(64))).toBe(`−${fraction}`)
    expect(formatLength(mm + 254, inFractions(64))).toBe(fraction === '1' ? '11' : `10 ${fraction}`)
  })

  // Worked from the exact inch: n = mm × denominator / 25.4 rounded half up, error = n × 25.4 / denominator − mm.
  it.each([
    [281, 16, '11 1/16', 280.9875, -0.0125],
    [281, 32, '11 1/16', 280.9875, -0.0125],
    [281, 64, '11 1/16', 280.9875, -0.0125],
    [100, 16, '3 15/16', 100.0125, 0.0125],
    [100, 32, '3 15/16', 100.0125, 0.0125],
    [100, 64, '3 15/16', 100.0125, 0.0125],
    [35, 16, '1 3/8', 34.925, -0.075],
    [0.79375, 16, '1/16', 1.5875, 0.79375],
    [0.79375, 32, '1/32', 0.79375, 0],
    [25.3, 16, '1', 25.4, 0.1],
    [648, 64, '25 33/64', 648.096875, 0.096875],
  ] as const)('%d mm at 1/%d is %s, shown %d, off by %d', (mm, fraction, text, shownMm, errorMm) => {
    const rounded = roundedLength(mm, inFractions(fraction))
    expect(rounded.text).toBe(text)
    expect(rounded.shownMm).toBe(shownMm)
    expect(rounded.errorMm).toBeCloseTo(errorMm, 10)
  })

  it('shows nought without a fraction and without a sign', () => {
    for (const mm of [0, -0, 0.1, -0.1]) expect(formatLength(mm, inFractions(16))).toBe('0')
    expect(Object.is(roundedLength(-0.1, inFractions(16)).shownMm, 0)).toBe(true)
  })

  it('rounds a tie away from zero on both sides', () => {
    expect(formatLength(0.79375, inFractions(16))).toBe('1/16')
    expect(formatLength(-0.79375, inFractions(16))).toBe('−1/16')
    expect(formatLength(0.79, inFractions(16))).toBe('0')
  })
})

describe('formatLength in decimals', () => {
  it.each([
    [58, '58.0'],
    [58.04, '58.0'],
    [58.05, '58.1'],
    [-58.05, '−58.1'],
    [-0.04, '0.0'],
    [0.35, '0.4'],
    [1000.25, '1000.3'],
    [999.95, '1000.0'],
  ])('%d mm is shown as %s', (mm, text) => {
    expect(formatLength(mm, MM)).toBe(text)
  })

  it.each([
    [281, '11.063'], // 281 / 25.4 = 11.0629921…
    [25.4, '1.000'],
    [12.7, '0.500'],
    [-100, '−3.937'], // 100 / 25.4 = 3.9370078…
  ])('%d mm is shown as %s inches', (mm, text) => {
    expect(formatLength(mm, DECIMAL)).toBe(text)
  })

  // 0.15, 0.25 … 99.95: many of them are stored a little below the tie they are written as.
  it('rounds every written tie up to a hundred away from zero', () => {
    for (let tenths = 0; tenths < 1000; tenths += 1) {
      const written = `${Math.floor(tenths / 10)}.${tenths % 10}5`
      const up = `${Math.floor((tenths + 1) / 10)}.${(tenths + 1) % 10}`
      expect(formatLength(Number(written), MM), written).toBe(up)
    }
  })

  // 1.005 is stored as 1.00499999999999989…, 0.285 × 100 comes to 28.499999999999996.
  it('rounds ties as written, not as stored', () => {
    expect(formatLength(1.005, MM, { decimals: 2 })).toBe('1.01')
    expect(formatLength(-1.005, MM, { decimals: 2 })).toBe('−1.01')
    expect(formatShare(0.285)).toBe('29%')
    expect(formatLength(1.00499, MM, { decimals: 2 })).toBe('1.00')
  })

  it('takes decimals and a unit when asked', () => {
    expect(formatLength(58, MM, { unit: true })).toBe('58.0 mm')
    expect(formatLength(58.1234, MM, { decimals: 2 })).toBe('58.12')
    expect(formatLength(58.6, MM, { decimals: 0 })).toBe('59')
    expect(formatLength(281, DECIMAL, { decimals: 4, unit: true })).toBe('11.0630 in')
    expect(formatLength(281, inFractions(16), { unit: true })).toBe('11 1/16 in')
  })
})

describe('laws of rounding', () => {
  const lengths = fc.double({ min: -10_000, max: 10_000, noNaN: true })
  const units = fc.constantFrom(...ALL_UNITS)
  const options = fc.record(
    { unit: fc.boolean(), decimals: fc.integer({ min: 0, max: 4 }) },
    { requiredKeys: [] },
  )

  it('reading what is shown gives the shown length back, to the last digit', () => {
    fc.assert(
      fc.property(lengths, units, options, (mm, shownIn, how) => {
        const { text, shownMm } = roundedLength(mm, shownIn, how)
        fc.pre(Math.abs(shownMm) <= 10_000)
        expect(readLength(text, shownIn.display)).toEqual({ ok: true, mm: shownMm })
      }),
      { seed: 254, numRuns: 2000 },
    )
  })

  it('the error is what is shown less what is, and no more than half a step', () => {
    fc.assert(
      fc.property(lengths, units, (mm, shownIn) => {
        const { shownMm, errorMm } = roundedLength(mm, shownIn)
        const half = { mm: 0.05, inches: shownIn.fraction === 0 ? 0.0127 : 12.7 / shownIn.fraction }[
          shownIn.display
        ]
        expect(errorMm).toBe(shownMm - mm)
        expect(Math.abs(errorMm)).toBeLessThanOrEqual(half + 1e-8)
      }),
      { seed: 254, numRuns: 2000 },
    )
  })

  it('the mirrored length is shown the same but for the sign', () => {
    fc.assert(
      fc.property(lengths, units, (mm, shownIn) => {
        const bare = (text: string) => text.replace('−', '')
        expect(bare(formatLength(-mm, shownIn))).toBe(bare(formatLength(mm, shownIn)))
      }),
      { seed: 254 },
    )
  })

  it('showing what is shown changes nothing', () => {
    fc.assert(
      fc.property(lengths, units, (mm, shownIn) => {
        const once = roundedLength(mm, shownIn)
        expect(formatLength(once.shownMm, shownIn)).toBe(once.text)
      }),
      { seed: 254, numRuns: 2000 },
    )
  })
})

describe('misuse', () => {
  it.each([Number.NaN, Number.POSITIVE_INFINITY, -1e10])('refuses to show %d', (mm) => {
    for (const units of ALL_UNITS) expect(() => formatLength(mm, units)).toThrow(`${mm}`)
  })

  it('refuses decimals that are none', () => {
    expect(() => formatLength(1, MM, { decimals: 1.5 })).toThrow('1.5')
    expect(() => formatAngle(1, { decimals: -1 })).toThrow('-1')
    expect(() => formatShare(Number.NaN)).toThrow('NaN')
  })
})

describe('the user’s rule', () => {
  // Common practice of graduated rules, no source.
  it.each([
    [MM, 1, 'mm'],
    [DECIMAL, 0.254, 'in'],
    [inFractions(8), 3.175, 'in'],
    [inFractions(16), 1.5875, 'in'],
    [inFractions(32), 0.79375, 'in'],
    [inFractions(64), 0.396875, 'in'],
  ] as const)('%o steps by %d mm and is called %s', (units, step, name) => {
    expect(stepOf(units)).toBe(step)
    expect(unitName(units)).toBe(name)
  })
})

describe('what no rule shows', () => {
  // 1 in = 25.4 mm (NIST SP 811, appendix B): a string of .009 in is 0.2286 mm.
  it('goes to the hundredth of a millimetre or the thousandth of an inch, whatever fraction the rule has', () => {
    expect(formatFine(0.2286, MM)).toBe('0.23')
    for (const units of [DECIMAL, inFractions(8), inFractions(64)]) {
      expect(formatFine(0.2286, units)).toBe('0.009')
      expect(formatFine(-647.7, units, { unit: true })).toBe('−25.500 in')
    }
  })
})

describe('angles and shares', () => {
  // NIST SP 811, table 6: 1° = (π/180) rad; appendix B.8: 1 rad = 57.295 78°.
  it('shows radians as degrees', () => {
    expect(formatAngle(Math.PI / 12)).toBe('15.0°')
    expect(formatAngle(-Math.PI)).toBe('−180.0°')
    expect(formatAngle(-1e-6)).toBe('0.0°')
    expect(formatAngle(1, { decimals: 5 })).toBe('57.29578°')
  })

  it('shows shares of one as percentages', () => {
    expect(formatShare(0.625)).toBe('63%')
    expect(formatShare(0.625, { decimals: 1 })).toBe('62.5%')
    expect(formatShare(-0.02)).toBe('−2%')
    expect(formatShare(1.2)).toBe('120%')
  })
})
