import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { type Reading, readLength } from '../../../geometry/quantity/index.ts'

const ASSUMED = ['mm', 'inches'] as const

/** Fuzz on texts made of what lengths are made of: a plain string hardly ever gets past the first letter. */
const PIECES = [
  ...[
    '0',
    '1',
    '2',
    '7',
    '11',
    '16',
    '281',
    '.5',
    ',',
    '.',
    '1,234',
    '/',
    '1/16',
    '½',
    '⅞',
    '-',
    '−',
    '+',
    '*',
  ],
  ...['(', ')', ' ', '\u00a0', '\t', 'mm', 'cm', 'm', 'in', 'ft', '"', "'", '″', '’', 'x', 'in.', '1e9'],
]
const nearlyLengths = fc.array(fc.constantFrom(...PIECES), { maxLength: 24 }).map((pieces) => pieces.join(''))

function proveSound(reading: Reading) {
  if (reading.ok) {
    expect(Number.isFinite(reading.mm)).toBe(true)
    expect(Math.abs(reading.mm)).toBeLessThanOrEqual(10_000)
  } else {
    expect(reading.sentence).toMatch(/^[^\p{C}]+\.$/u)
    expect(reading.sentence).not.toMatch(/NaN|undefined/)
    expect(reading.sentence.length).toBeLessThan(400)
  }
}

describe('readLength never throws and never answers nonsense', () => {
  it('on any string', () => {
    const strings = fc.oneof(
      fc.string({ maxLength: 300 }),
      fc.string({ unit: 'binary', maxLength: 60 }),
      fc
        .array(fc.integer({ min: 0, max: 0xffff }), { maxLength: 30 })
        .map((codes) => String.fromCharCode(...codes)),
    )
    fc.assert(
      fc.property(strings, fc.constantFrom(...ASSUMED), (text, assumed) => {
        fc.pre(!/NaN|undefined/.test(text))
        proveSound(readLength(text, assumed))
      }),
      { seed: 281, numRuns: 5000 },
    )
  })

  it('on strings made of the pieces of lengths, some of which are read', () => {
    let read = 0
    fc.assert(
      fc.property(nearlyLengths, fc.constantFrom(...ASSUMED), (text, assumed) => {
        const reading = readLength(text, assumed)
        if (reading.ok) read += 1
        proveSound(reading)
      }),
      { seed: 281, numRuns: 20_000 },
    )
    expect(read).toBeGreaterThan(200)
  })

  it('on brackets as deep as the longest text allows', () => {
    proveSound(readLength(`${'('.repeat(59)}1${')'.repeat(59)}`, 'mm'))
    expect(readLength(`${'('.repeat(59)}1${')'.repeat(59)}`, 'mm')).toEqual({ ok: true, mm: 1 })
    proveSound(readLength('('.repeat(120), 'mm'))
  })
})

/**
 * A slow and obvious model: sums built as trees, written out with brackets round everything, their value
 * worked out in whole 1/160ths of a millimetre … which any 1/16 in (25.4/16 mm = 254/160 mm) and any
 * tenth of a millimetre are.
 */
interface Sum {
  readonly text: string
  readonly parts160: number
}
const wholes = fc.integer({ min: 0, max: 40 })
const sixteenths = fc.integer({ min: 0, max: 15 })
const leaf: fc.Arbitrary<Sum> = fc.oneof(
  fc
    .tuple(wholes, fc.constantFrom(' mm', 'mm'))
    .map(([n, unit]) => ({ text: `${n}${unit}`, parts160: n * 160 })),
  fc.integer({ min: 0, max: 999 }).map((tenths) => ({ text: `${tenths / 10}mm`, parts160: tenths * 16 })),
  fc
    .tuple(wholes, sixteenths, fc.constantFrom(' ', '-'), fc.constantFrom('', ' in', '"', '″'))
    .map(([n, s, joint, unit]) => ({ text: `${n}${joint}${s}/16${unit}`, parts160: (n * 16 + s) * 254 })),
  fc
    .tuple(
      fc.integer({ min: 0, max: 3 }),
      fc.integer({ min: 0, max: 11 }),
      sixteenths,
      fc.constantFrom(' ', '-'),
    )
    .map(([feet, n, s, joint]) => ({
      text: `${feet}'${joint}${n} ${s}/16"`,
      parts160: (feet * 192 + n * 16 + s) * 254,
    })),
)
const { sum } = fc.letrec<{ sum: Sum }>((tie) => ({
  sum: fc.oneof(
    { maxDepth: 3, withCrossShrink: true },
    leaf,
    fc
      .tuple(tie('sum'), tie('sum'))
      .map(([a, b]) => ({ text: `${a.text} + ${b.text}`, parts160: a.parts160 + b.parts160 })),
    fc
      .tuple(tie('sum'), leaf)
      .map(([a, b]) => ({ text: `${a.text} - ${b.text}`, parts160: a.parts160 - b.parts160 })),
    fc
      .tuple(fc.integer({ min: 1, max: 4 }), tie('sum'))
      .map(([n, a]) => ({ text: `${n} * (${a.text})`, parts160: n * a.parts160 })),
    tie('sum').map((a) => ({ text: `-(${a.text})`, parts160: -a.parts160 })),
  ),
}))

describe('readLength against a slow and obvious model', () => {
  it('sums of lengths in mixed notation come to the same', () => {
    fc.assert(
      // A sum of bare inches stays bare until the end, so inches are assumed throughout.
      fc.property(sum, ({ text, parts160 }) => {
        fc.pre(text.length <= 120 && Math.abs(parts160) <= 1_600_000)
        const reading = readLength(text, 'inches')
        expect(reading).toMatchObject({ ok: true })
        if (reading.ok) expect(reading.mm).toBeCloseTo(parts160 / 160, 8)
      }),
      { seed: 254, numRuns: 3000 },
    )
  })

  it('space around a length, and the case of its unit, change nothing', () => {
    fc.assert(
      fc.property(leaf, fc.constantFrom(' ', '\t', '\u00a0', '\u2009'), ({ text }, space) => {
        const reading = readLength(text, 'inches')
        expect(readLength(`${space}${text}${space}`, 'inches')).toEqual(reading)
        expect(readLength(text.toUpperCase(), 'inches')).toEqual(reading)
      }),
      { seed: 254 },
    )
  })

  it('a minus in front turns the length round', () => {
    fc.assert(
      fc.property(leaf, fc.constantFrom('-', '−', '- '), ({ text }, minus) => {
        const there = readLength(text, 'inches')
        const back = readLength(`${minus}${text}`, 'inches')
        expect(there.ok && back.ok && there.mm + back.mm).toBe(0)
      }),
      { seed: 254 },
    )
  })
})
