import { describe, expect, test } from 'vitest'
import { centsOf, type Design, ratioOf, solve } from '../../../geometry/index.ts'
import { fretShare, fretsOf } from '../../../geometry/scale/frets.ts'
import { designOf } from '../../support/designs.ts'

const scale = (length: number, frets: Design['scale']['frets']) =>
  fretsOf({ ...designOf().scale, length, frets })
const equal = (length: number, count: number) => scale(length, { by: 'equal', count })
const shares = (frets: Design['scale']['frets']) => scale(1000, frets).map((fret) => fret.fromNut / 1000)

/** Every number within `tolerance` of its partner. */
function expectNear(found: readonly number[], wanted: readonly number[], tolerance: number) {
  expect(found).toHaveLength(wanted.length)
  found.forEach((value, index) => {
    expect(
      Math.abs(value - (wanted[index] ?? Number.NaN)),
      `number ${index + 1} of the table`,
    ).toBeLessThanOrEqual(tolerance)
  })
}

describe('equal temperament', () => {
  // J. Wolfe, "Note names, MIDI numbers and frequencies" (UNSW School of Physics, web page), formula section: the
  // ratio is printed as 1.059; the long form is the twelfth root of 2 (computed).
  test('one semitone is a ratio of 1.0594630943592953', () => {
    const [first] = equal(635, 1)
    expect(635 / (635 - (first?.fromNut ?? 0))).toBeCloseTo(1.0594630943592953, 12)
    expect(Math.abs(635 / (635 - (first?.fromNut ?? 0)) - 1.059)).toBeLessThan(0.0005)
  })

  // G. Byers, "Intonation" (research summary of American Lutherie 47, 1996), Fret Placement: each fret stands a
  // 17.817th of what is left behind the one before.
  test('each fret takes a 17.817th of what is left', () => {
    const frets = equal(635, 24)
    frets.forEach((fret, index) => {
      const left = 635 - (frets[index - 1]?.fromNut ?? 0)
      expect(Math.abs(left / fret.step - 17.817)).toBeLessThan(0.0005)
    })
  })

  // The same source, X_n = X_0 2^(-n/12) from the saddle; the table was computed from it to nine decimals.
  const FRACTIONS = [
    ...[
      0.056125687, 0.109101282, 0.159103585, 0.206299474, 0.250846462, 0.292893219, 0.332580073, 0.370039475,
    ],
    ...[0.405396442, 0.438768976, 0.470268453, 0.5, 0.528062844, 0.554550641, 0.579551792, 0.603149737],
    ...[0.625423231, 0.646446609, 0.666290036, 0.685019738, 0.702698221, 0.719384488, 0.735134226, 0.75],
  ]
  test('the first 24 frets as shares of the scale', () => {
    expectNear(shares({ by: 'equal', count: 24 }), FRACTIONS, 1e-9)
  })

  test('the first 20 frets of 635 mm, 25 in', () => {
    const table = [
      ...[35.6398, 69.2793, 101.0308, 131.0002, 159.2875, 185.9872, 211.1883, 234.9751, 257.4267, 278.6183],
      ...[298.6205, 317.5, 335.3199, 352.1397, 368.0154, 383.0001, 397.1438, 410.4936, 423.0942, 434.9875],
    ]
    expectNear(
      equal(635, 20).map((fret) => fret.fromNut),
      table,
      0.0005,
    )
  })

  test('the first 18 frets of 580 mm', () => {
    const table = [
      ...[32.5529, 63.2787, 92.2801, 119.6537, 145.4909, 169.8781, 192.8964, 214.6229, 235.1299],
      ...[254.486, 272.7557, 290.0, 306.2764, 321.6394, 336.14, 349.8268, 362.7455, 374.939],
    ]
    expectNear(
      equal(580, 18).map((fret) => fret.fromNut),
      table,
      0.0005,
    )
  })

  // "Intonation" (PJ Guitar, web page), paragraph on the 17.817 rule: fret 12 is exactly half way.
  test('the octave is half the scale, to the last digit', () => {
    expect(fretShare(1200)).toBe(0.5)
    for (const length of [580, 609.6, 635, 648, 0.1 + 0.2]) expect(length * fretShare(1200)).toBe(length / 2)
    expect(equal(635, 12)[11]?.fromNut).toBe(317.5)
  })

  test('twelve frets on, half of what was left is left, on any scale', () => {
    for (const length of [150, 381, 580, 635, 1300]) {
      const frets = equal(length, 36)
      for (let n = 0; n < 24; n++) {
        const left = length - (frets[n]?.fromNut ?? Number.NaN)
        expect(length - (frets[n + 12]?.fromNut ?? Number.NaN)).toBeCloseTo(left / 2, 9)
      }
    }
  })

  // Source as above: dividing by the rounded 17.817 again and again puts fret 12 of 635 mm 1.95 µm too far.
  test('is not reckoned by dividing again and again', () => {
    const divided = 635 * (1 - (1 - 1 / 17.817) ** 12)
    expect(Math.abs(divided - 317.50195)).toBeLessThan(2e-5)
    expect(divided - (equal(635, 12)[11]?.fromNut ?? 0)).toBeCloseTo(0.00195, 5)
  })

  // J. M. Barbour, "Tuning and Temperament" (1951), ch. III: the rule of 18 makes semitones of 98.9546 cents, and
  // twelve of them fall 12.545 cents short of the octave.
  test('nor by the rule of 18, which plays flat', () => {
    expect(centsOf(18 / 17)).toBeCloseTo(98.9546, 3)
    expect(12 * centsOf(18 / 17) - 1200).toBeCloseTo(-12.545, 2)
    const byRuleOf18 = 1 - (17 / 18) ** 12
    expect(Math.abs(byRuleOf18 - 0.4963637)).toBeLessThan(1e-6)
    expect(fretShare(12 * centsOf(18 / 17))).toBeCloseTo(byRuleOf18, 12)
  })

  // A. J. Ellis (1885), definition of the cent: half a millimetre on a fret of a 635 mm scale.
  test('half a millimetre astray is heard more the higher the fret', () => {
    const cents = [1, 5, 7, 12].map((n) => {
      const left = 635 - (equal(635, 12)[n - 1]?.fromNut ?? 0)
      return centsOf(left / (left - 0.5))
    })
    expectNear(cents, [1.4448, 1.8206, 2.0437, 2.7285], 0.001)
  })

  // Common practice, no source: a 24 in scale has its octave fret 12 in from the nut.
  test('a scale of 24 in has its octave 12 in from the nut', () => {
    expect(equal(24 * 25.4, 12)[11]?.fromNut).toBeCloseTo(12 * 25.4, 12)
  })
})

describe('frets by steps', () => {
  // "About extra frets" (Dark Hollow Dulcimers, instrument maker's article): the diatonic set with its half frets.
  const STEPS = [2, 4, 5, 7, 9, 10, 12, 14, 16, 17, 19, 21, 22, 24]
  // Its places as shares of the scale, computed by the formula of Byers.
  const TABLE = [
    ...[0.109101, 0.206299, 0.250846, 0.33258, 0.405396, 0.438769, 0.5],
    ...[0.554551, 0.60315, 0.625423, 0.66629, 0.702698, 0.719384, 0.75],
  ]
  test('the diatonic frets of a stick dulcimer', () => {
    expectNear(shares({ by: 'steps', list: STEPS }), TABLE, 6e-7)
  })

  test('its extra fret, six and a half, is the eleventh semitone', () => {
    expectNear(shares({ by: 'steps', list: [11] }), [0.470268], 6e-7)
  })

  test('are the frets of equal temperament with some left out', () => {
    const all = equal(635, 24)
    const some = scale(635, { by: 'steps', list: STEPS })
    expect(some.map((fret) => fret.fromNut)).toEqual(STEPS.map((step) => all[step - 1]?.fromNut))
    expect(some.map((fret) => fret.number)).toEqual(STEPS.map((_, index) => index + 1))
  })
})

describe('frets by ratios and cents', () => {
  // H. von Helmholtz, transl. A. J. Ellis, "On the Sensations of Tone" (2nd English ed. 1885), App. XX; sizes to
  // four decimals computed from the definition of the cent.
  const INTERVALS = [
    ['16/15', 111.7313],
    ['10/9', 182.4037],
    ['9/8', 203.91],
    ['6/5', 315.6413],
    ['5/4', 386.3137],
    ['4/3', 498.045],
    ['45/32', 590.2237],
    ['64/45', 609.7763],
    ['3/2', 701.955],
    ['8/5', 813.6863],
    ['5/3', 884.3587],
    ['9/5', 1017.5963],
    ['15/8', 1088.2687],
    ['2/1', 1200],
    ['7/4', 968.8259],
    ['7/6', 266.8709],
  ] as const
  test.each(INTERVALS)('%s is %d cents', (ratio, cents) => {
    expect(Math.abs(centsOf(ratioOf(ratio)) - cents)).toBeLessThan(6e-5)
  })

  // "List of intervals in 5-limit just intonation" (encyclopaedia article, web page), interval table, as printed.
  test.each([
    ['81/80', 21.51],
    ['128/125', 41.06],
    ['25/24', 70.67],
    ['256/243', 90.22],
    ['135/128', 92.18],
    ['16/15', 111.73],
    ['27/25', 133.24],
    ['800/729', 160.9],
    ['10/9', 182.4],
    ['9/8', 203.91],
    ['256/225', 223.46],
    ['125/108', 253.08],
    ['75/64', 274.58],
  ] as const)('%s is printed as %d cents', (ratio, cents) => {
    expect(Math.abs(centsOf(ratioOf(ratio)) - cents)).toBeLessThan(0.006)
  })

  // Source as the table of intervals: equal temperament against just intervals, in cents.
  test.each([
    ['minor third', 3, '6/5', -15.6413],
    ['major third', 4, '5/4', 13.6863],
    ['fourth', 5, '4/3', 1.955],
    ['fifth', 7, '3/2', -1.955],
    ['minor sixth', 8, '8/5', -13.6863],
    ['major sixth', 9, '5/3', 15.6413],
  ] as const)('a tempered %s is off the just one', (_name, steps, ratio, cents) => {
    const [tempered] = scale(635, { by: 'steps', list: [steps] })
    const [just] = scale(635, { by: 'ratios', list: [ratio] })
    expect(Math.abs((tempered?.cents ?? 0) - (just?.cents ?? 0) - cents)).toBeLessThan(6e-5)
  })

  // A string stopped at 1/r of its length sounds r times as high: the places are 1 - 1/r, plain arithmetic.
  test('the just frets of a mixolydian scale', () => {
    const list = ['9/8', '5/4', '4/3', '3/2', '5/3', '16/9', '2/1']
    expectNear(shares({ by: 'ratios', list }), [0.111111, 0.2, 0.25, 0.333333, 0.4, 0.4375, 0.5], 6e-7)
  })

  test('a whole number is a ratio to one', () => {
    expect(ratioOf('2')).toBe(2)
    expect(ratioOf('3/2')).toBe(1.5)
    expect(ratioOf('3/0')).toBeNaN()
    expect(shares({ by: 'ratios', list: ['2', '4'] })).toEqual([0.5, 0.75])
  })

  test('hundreds of cents are semitones', () => {
    expect(shares({ by: 'cents', list: [200, 700, 1200] })).toEqual(shares({ by: 'steps', list: [2, 7, 12] }))
  })
})

describe('the list of frets', () => {
  test('each step is the way from the fret before, and all steps together are the last fret', () => {
    const frets = equal(635, 20)
    expect(frets.reduce((sum, fret) => sum + fret.step, 0)).toBeCloseTo(frets.at(-1)?.fromNut ?? 0, 9)
    for (const fret of frets) expect(fret.step).toBeGreaterThan(0)
  })

  test('an empty one is no frets', () => {
    expect(equal(635, 0)).toEqual([])
    expect(solve(designOf({ scale: { frets: { by: 'equal', count: 0 } } })).frets).toEqual([])
  })

  test('starts with a fret of number 0 where the string starts at a zero fret', () => {
    const { frets, zeroFret } = solve(designOf({ scale: { start: 'zero fret' } }))
    expect(zeroFret).toBe(true)
    expect(frets[0]).toMatchObject({ number: 0, fromNut: 0, step: 0, cents: 0 })
    expect(frets[1]).toMatchObject({ number: 1 })
    expect(frets).toHaveLength(19)
  })

  test('knows which frets are over the box and which have wood to stand in', () => {
    // Neck-end face at 635 - 172.8 = 462.2 mm; fret 24 is at 476.25, and a board to 440 ends before fret 21, 446.2.
    const stated = {
      scale: { frets: { by: 'equal', count: 24 } },
      board: { ends: 'at a length', length: 440 },
    }
    const { frets } = solve(designOf(stated))
    expect(frets.filter((fret) => fret.overBox).map((fret) => fret.number)).toEqual([23, 24])
    expect(frets.filter((fret) => !fret.onWood).map((fret) => fret.number)).toEqual([21, 22, 23, 24])
  })
})
