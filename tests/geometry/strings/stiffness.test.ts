import { describe, expect, it } from 'vitest'
import { coreInertia, plainMass } from '../../../geometry/strings/mass.ts'
import {
  endShortening,
  inharmonicity,
  partialCents,
  stiffRatio,
} from '../../../geometry/strings/stiffness.ts'
import { tensionOf } from '../../../geometry/strings/tension.ts'
import { expectShare, expectWithin } from '../../support/near.ts'

const cents = (ratio: number) => 1200 * Math.log2(ratio)
const bend = (stiffness: number, diameter: number) => stiffness * coreInertia(diameter)

// H. Fletcher, "Normal Vibration Frequencies of a Stiff Piano String", J. Acoust. Soc. Am. 36, 203 (1964); also Fletcher
// and Rossing, "The Physics of Musical Instruments", 2nd ed., sec. 2.18. Numbers worked out from the formulas.
describe('a stiff string', () => {
  it.each([
    [0.254, 72.6, 1.4245e-5],
    [0.432, 72, 0.00012019],
    [0.61, 80, 0.00043003],
  ])('of %d mm under %d N has B = %d', (diameter, tension, expected) => {
    expectShare(inharmonicity(bend(206_800, diameter), tension, 635), expected, 5e-5)
  })

  it.each([
    [1, 110.0055, 0.08656],
    [2, 220.044, 0.34618],
    [4, 440.35186, 1.38388],
    [8, 882.81151, 5.5223],
  ])('has its partial %i at %d Hz, %d cents up', (partial, hertz, up) => {
    expectShare(partialCents(1e-4, partial), up, 5e-5)
    expectShare(partial * 110 * 2 ** (partialCents(1e-4, partial) / 1200), hertz, 5e-5)
  })

  it('is shortened by an end held fast', () => {
    expectShare(coreInertia(0.432), 0.00170964, 2e-5)
    expectShare(endShortening(bend(206_800, 0.432), 72), 2.216, 1e-4)
  })

  it('sounds a tenth of a cent up with free ends, twelve cents held fast', () => {
    const b = 0.000120192
    expectShare(cents(stiffRatio(b)), 0.10403, 5e-4)
    expectShare(cents(stiffRatio(b, 1)), 12.229, 5e-4)
    expect(cents(stiffRatio(b, 0.5))).toBeLessThan(cents(stiffRatio(b, 1)))
  })

  it('widens its octave at the twelfth fret', () => {
    const [open, half] = [635, 317.5].map((length) => inharmonicity(bend(206_800, 0.432), 72, length))
    expectShare(half!, 0.000480768, 5e-5)
    expectShare(partialCents(half!, 1) - partialCents(open!, 1), 0.31203, 2e-4)
  })

  it('that is not stiff is not sharp', () => {
    expect(stiffRatio(0, 1)).toBe(1)
    expect(partialCents(0, 9)).toBe(0)
    expect(endShortening(0, 70)).toBe(0)
    expect(() => inharmonicity(-1, 70, 635)).toThrow('a stiffness must be 0 or more, not -1')
  })
})

// R. W. Young, "Inharmonicity of Plain Wire Piano Strings", J. Acoust. Soc. Am. 24(3), 1952, abstract: cents are
// 3.4e13 n² d² / (ν² l⁴) in cgs units, with E / ρ of 25.5e10 cm²/s²; about 1.2 cents at the second mode of middle C.
describe("Young's formula", () => {
  const density = 7850e-9
  const modulus = 25.5e10 * 1e-4 * (density * 1e9) * 1e-6

  it('implies the modulus of steel', () => expectShare(modulus, 200_175, 1e-4))

  const byTheBook = (diameter: number, length: number, pitch: number, partial: number) =>
    (3.4e13 * partial ** 2 * (diameter / 10) ** 2) / (pitch ** 2 * (length / 10) ** 4)

  it.each([
    [1, 640, 261.6256, 2],
    [0.9, 400, 440, 1],
    [0.4318, 635, 196, 3],
  ])('of %d mm over %d mm at %d Hz, partial %i', (diameter, length, pitch, partial) => {
    const tension = tensionOf(plainMass(diameter, density), length, pitch)
    const b = inharmonicity(bend(modulus, diameter), tension, length)
    expectShare(partialCents(b, partial), byTheBook(diameter, length, pitch, partial), 0.005)
  })

  it('gives about 1.2 cents at middle C', () => {
    expectShare(byTheBook(1, 640, 261.6256, 2), 1.18429, 2e-5)
    const tension = tensionOf(plainMass(1, density), 640, 261.6256)
    expectWithin(partialCents(inharmonicity(bend(modulus, 1), tension, 640), 2), 1.2, 0.5)
  })
})
