import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { airResonance, conductanceOf, endsOf, SPEED_OF_SOUND } from '../../../geometry/sound/air.ts'
import { nextBit } from '../../../geometry/sound/bits.ts'

const round = (diameter: number, thickness: number) => ({
  area: (Math.PI * diameter ** 2) / 4,
  long: diameter,
  short: diameter,
  thickness,
})

/** A box of 220 × 150 × 60 inside: 1.98 litres. */
const BOX = 220 * 150 * 60

describe('a box with round holes', () => {
  // N. Fletcher and T. Rossing, "The Physics of Musical Instruments", 2nd ed. (1998), and Rayleigh, arts. 304–312;
  // values worked out from the formula with c = 343 m/s and both ends 16 r / 3 pi.
  test('one of 30 mm in 3 mm speaks at 193.328 Hz', () => {
    expect(airResonance(conductanceOf(round(30, 3)), BOX)).toBeCloseTo(193.328, 2)
  })

  // The same with the rounded 1.7 r of acoustics handbooks: three holes of 20 mm 266.319 Hz, 30 and 16 mm 235.71 Hz.
  test.each([
    ['three of 20 mm', [20, 20, 20], 266.319],
    ['one of 30 and one of 16 mm', [30, 16], 235.71],
  ])('%s come within a thousandth of what 1.7 r gives', (_, holes, hertz) => {
    const sum = holes.reduce((all, one) => all + conductanceOf(round(one, 3)), 0)
    expect(Math.abs(airResonance(sum, BOX) / hertz - 1)).toBeLessThan(1e-3)
  })

  test('the end of a hole is 0.85 of its radius, as printed for a flanged end (Jaouen and Chevillotte, 2018)', () => {
    expect(endsOf(round(2, 0)) / 2).toBeCloseTo(0.85, 2)
  })

  test('the speed of sound is that of air at 20 °C: 331 sqrt(1 + 20 / 273), University Physics 1, sec. 17.2', () => {
    expect(Math.abs(SPEED_OF_SOUND / 1000 - 331 * Math.sqrt(1 + 20 / 273))).toBeLessThan(0.5)
  })

  test('twice the volume sounds by the root of two lower, twice every size an octave lower', () => {
    const one = conductanceOf(round(30, 3))
    expect(airResonance(one, 2 * BOX) / airResonance(one, BOX)).toBeCloseTo(Math.SQRT1_2, 12)
    expect(airResonance(conductanceOf(round(60, 6)), 8 * BOX) / airResonance(one, BOX)).toBeCloseTo(0.5, 12)
  })
})

describe('a long hole', () => {
  /** Conductance of an ellipse in a thin wall: `pi a / K(e)`, the integral by a plain sum over the quarter turn. */
  function byIntegral(a: number, b: number): number {
    const steps = 4000
    let sum = 0
    for (let index = 0; index < steps; index++) {
      const angle = ((index + 0.5) / steps) * (Math.PI / 2)
      sum += 1 / Math.sqrt(1 - (1 - (b / a) ** 2) * Math.sin(angle) ** 2)
    }
    return (Math.PI * a) / ((sum * Math.PI) / 2 / steps)
  }

  // Rayleigh, "The Theory of Sound", vol. II, art. 306: an ellipse against the circle of its area (from memory).
  test.each([
    [20, 20],
    [20, 10],
    [30, 6],
    [40, 2],
  ])('of half axes %d and %d has ends shorter than the circle’s by the ratio of the conductances', (a, b) => {
    const hole = { area: Math.PI * a * b, long: 2 * a, short: 2 * b }
    const circle = { area: hole.area, long: 1, short: 1 }
    expect(endsOf(hole) / endsOf(circle)).toBeCloseTo((2 * Math.sqrt(a * b)) / byIntegral(a, b), 6)
  })

  test('never conducts less than a round one of its area, however it is turned', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 2, max: 200, noNaN: true }),
        fc.double({ min: 2, max: 200, noNaN: true }),
        (w, h) => {
          const area = (Math.PI / 4) * w * h
          const [long, short] = [Math.max(w, h), Math.min(w, h)]
          const hole = conductanceOf({ area, long, short, thickness: 4 })
          expect(hole).toBeGreaterThanOrEqual(
            conductanceOf({ area, long: 1, short: 1, thickness: 4 }) * (1 - 1e-12),
          )
        },
      ),
    )
  })
})

test('a wider rim lets the air move as if the wood were thinner, but never thinner than without it', () => {
  const plain = conductanceOf(round(25, 5))
  const stepped = conductanceOf({ ...round(25, 5), rim: { depth: 2, area: round(35, 0).area } })
  expect(stepped).toBeGreaterThan(plain)
  expect(stepped).toBeLessThan(conductanceOf(round(25, 3)))
})

test('what is nothing is refused with its value', () => {
  expect(() => airResonance(0, BOX)).toThrow('a conductance must be above 0, not 0')
  expect(() => endsOf({ area: Number.NaN, long: 1, short: 1 })).toThrow('NaN')
})

describe('the next bit', () => {
  // Bit sets as sold: common practice, no source.
  test.each([
    [25, 'larger', 'mm', 26],
    [25, 'smaller', 'mm', 24],
    [25.4, 'larger', 'inches', 28.575],
    [25.4, 'smaller', 'inches', 22.225],
    [12.7, 'larger', 'inches', 15.875],
    [0.9, 'smaller', 'mm', null],
    [102, 'larger', 'mm', null],
  ] as const)('from %d %s in %s is %s', (diameter, way, units, next) => {
    const found = nextBit(diameter, way, units)
    if (next === null) expect(found).toBeNull()
    else expect(found).toBeCloseTo(next, 9)
  })
})
