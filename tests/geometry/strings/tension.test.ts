import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { plainMass, weighedMass } from '../../../geometry/strings/mass.ts'
import { lengthFor, pitchOf, tensionOf, unitMassFor, waveSpeed } from '../../../geometry/strings/tension.ts'
import { expectShare, expectWithin } from '../../support/near.ts'

/** kg/m of a textbook, as kg/mm. */
const perMetre = (mass: number) => mass * 1e-3
/** mm/s as m/s. */
const metres = (speed: number) => speed / 1000
const N_PER_LBF = 4.4482216152605

// OpenStax, University Physics, Volume 1 (Ling, Sanny, Moebs); section beside each.
describe('waves on a string', () => {
  it('sec. 16.3, example: high E at 56.4 N, and the low E that matches its speed', () => {
    expectWithin(metres(waveSpeed(perMetre(0.000309), 56.4)), 427.23, 0.006)
    // T = µ v² is the tension at which half a metre sounds v per second.
    expectWithin(tensionOf(perMetre(0.00578), 500, 427.23), 1055, 0.02)
  })

  it('sec. 16.6, example: 2 kg hung on 2 m', () => {
    const [mass, tension] = [perMetre(0.006), 2 * 9.8]
    expectShare(metres(waveSpeed(mass, tension)), 57.15, 6e-4)
    ;[14.29, 28.58, 42.87].forEach((hertz, index) => {
      expectShare((index + 1) * pitchOf(mass, 2000, tension), hertz, 6e-4)
    })
  })

  it('sec. 16.6, problem: 9 g on 3 m at 200 N', () => {
    const mass = weighedMass(0.009, 3000)
    expectShare(metres(waveSpeed(mass, 200)), 258.2, 2e-4)
    ;[43.03, 86.07, 129.1, 172.13].forEach((hertz, index) => {
      expectShare((index + 1) * pitchOf(mass, 3000, 200), hertz, 2e-4)
    })
  })

  it('sec. 16.6, problem: five antinodes', () => {
    const [mass, five] = [perMetre(0.005), 5 * pitchOf(perMetre(0.005), 3500, 90)]
    expectShare(metres(waveSpeed(mass, 90)), 134.16, 4e-3)
    expectShare(five, 95.83, 4e-3)
    expectShare(metres(waveSpeed(mass, 90)) / five, 1.4, 4e-3)
    expectShare(1 / five, 0.0104, 4e-3)
  })

  it('sec. 16.6, problem: the hundredth mode', () => {
    const hundredth = 100 * pitchOf(perMetre(0.0062), 3000, 20)
    expectShare(metres(waveSpeed(perMetre(0.0062), 20)), 56.8, 1e-3)
    expectShare(hundredth, 947, 1e-3)
    expectShare(metres(waveSpeed(perMetre(0.0062), 20)) / hundredth, 0.06, 1e-3)
  })

  it('sec. 17.5, problem: tension from a sixth mode of 2 kHz', () => {
    expectShare(tensionOf(perMetre(0.0065), 1500, 2000 / 6), 6500, 1e-9)
    expectShare(metres(waveSpeed(perMetre(0.0065), 6500)), 1000, 1e-9)
    expectShare(metres(waveSpeed(perMetre(0.0065), 6500)) / 2000, 0.5, 1e-9)
  })

  // The printed 15.75 m/s is a slip for 15.74.
  it('sec. 16.3, problem: copper wire from its radius', () => {
    const mass = plainMass(2.4, 8920e-9)
    expectShare(mass, perMetre(0.04), 0.01)
    expectShare(metres(waveSpeed(mass, 10)), 15.75, 0.01)
    expectWithin(metres(waveSpeed(mass, 10)), 15.742, 0.001)
  })

  it('sec. 16.3, problem: a pulse along 3 m', () => {
    const speed = metres(waveSpeed(weighedMass(0.005, 3000), 500))
    expectShare(speed, 547.723, 6e-4)
    expectShare(3 / speed, 0.00548, 6e-4)
  })

  it('sec. 16.3, questions: speed goes with the root of tension and against that of mass', () => {
    const speed = waveSpeed(perMetre(0.001), 100)
    expectShare(waveSpeed(perMetre(0.001), 200) / speed, Math.SQRT2, 5e-4)
    expectShare(waveSpeed(perMetre(0.001), 400) / speed, 2, 5e-4)
    expectShare(waveSpeed(perMetre(0.002), 100) / speed, Math.SQRT1_2, 5e-4)
  })

  it('sec. 16.6, problem: a cable with four and a half waves', () => {
    const speed = metres(waveSpeed(perMetre(0.02), 500))
    expectShare(speed, 158.11, 1.5e-3)
    expectShare(9 * pitchOf(perMetre(0.02), 20_000, 500), 35.61, 1.5e-3)
    expectShare(speed / (9 * pitchOf(perMetre(0.02), 20_000, 500)), 4.44, 1.5e-3)
  })

  it('sec. 16.3, problem: a piano string', () => {
    const speed = metres(waveSpeed(perMetre(0.012), 1000))
    expectShare(speed, 288.68, 5e-3)
    expectShare(speed / 393.88, 0.73, 5e-3)
  })

  it('sec. 17.6, problem: tenth modes at 120 and 130 N beat', () => {
    const [a, b] = [120, 130].map((tension) => 10 * pitchOf(perMetre(0.0065), 2000, tension))
    expectShare(metres(waveSpeed(perMetre(0.0065), 120)), 135.87, 3e-3)
    expectShare(metres(waveSpeed(perMetre(0.0065), 130)), 141.42, 3e-3)
    expectShare(b! - a!, 13.9, 3e-3)
  })

  it('sec. 17.6, problem: the eighteenth mode', () => {
    expectShare(metres(waveSpeed(perMetre(0.0062), 150)), 155.54, 1e-4)
    expectShare(18 * pitchOf(perMetre(0.0062), 1300, 150), 1076.83, 1e-4)
  })
})

// M. Mersenne, "Harmonicorum Libri", 1636, in textbook form; density of music wire from a spring wire data sheet.
describe('tension', () => {
  it('of plain .010 in at E4 on 635 mm', () => {
    const tension = tensionOf(plainMass(0.254, 7861e-9), 635, 329.6276)
    expectShare(plainMass(0.254, 7861e-9), perMetre(0.000398323), 2e-5)
    expectShare(tension, 69.8055, 2e-5)
    expectShare(tension / N_PER_LBF, 15.6929, 2e-5)
  })

  it('of a plain G3 D3 G2 on 635 mm', () => {
    const set = [
      [0.33, 195.9977, 41.6586],
      [0.432, 146.8324, 40.067],
      [0.61, 97.9989, 35.5858],
    ] as const
    const tensions = set.map(([diameter, hertz]) => tensionOf(plainMass(diameter, 7861e-9), 635, hertz))
    for (const [index, [, , tension]] of set.entries()) expectShare(tensions[index]!, tension, 2e-5)
    expectShare(
      tensions.reduce((sum, one) => sum + one, 0),
      117.311,
      2e-5,
    )
  })

  it('gives the diameter of a nylon D3 of 80 N on 600 mm back', () => {
    const mass = unitMassFor(80, 600, 146.8324)
    expectShare(Math.sqrt((4 * mass) / (Math.PI * 1140e-9)), 1.69646, 2e-5)
  })

  const size = (min: number, max: number) => fc.double({ min, max, noNaN: true })

  it('grows with the square of pitch and of length, and in step with the mass', () => {
    fc.assert(
      fc.property(
        size(1e-7, 1e-5),
        size(200, 1300),
        size(30, 700),
        size(1.01, 3),
        (mass, length, pitch, times) => {
          const tension = tensionOf(mass, length, pitch)
          expectShare(tensionOf(mass, length, times * pitch), times * times * tension, 1e-12)
          expectShare(tensionOf(mass, times * length, pitch), times * times * tension, 1e-12)
          expectShare(tensionOf(times * mass, length, pitch), times * tension, 1e-12)
        },
      ),
    )
  })

  it('and pitch, mass and length undo each other', () => {
    fc.assert(
      fc.property(size(1e-7, 1e-5), size(200, 1300), size(30, 700), (mass, length, pitch) => {
        const tension = tensionOf(mass, length, pitch)
        expectShare(pitchOf(mass, length, tension), pitch, 1e-12)
        expectShare(unitMassFor(tension, length, pitch), mass, 1e-12)
        expectShare(lengthFor(mass, tension, pitch), length, 1e-12)
      }),
    )
  })

  it('throws for what is no string, with the value', () => {
    expect(() => tensionOf(0, 635, 100)).toThrow('a unit mass must be above 0, not 0')
    expect(() => tensionOf(1e-6, Number.NaN, 100)).toThrow('not NaN')
    expect(() => pitchOf(1e-6, 635, -1)).toThrow('a tension must be above 0, not -1')
    expect(() => lengthFor(1e-6, 70, Number.POSITIVE_INFINITY)).toThrow('not Infinity')
  })
})
