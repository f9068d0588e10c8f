import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { fretShare } from '../../../geometry/scale/frets.ts'
import {
  compensate,
  fretErrors,
  octaveSetback,
  type StringPath,
  setbackCents,
  type TunedString,
} from '../../../geometry/strings/compensation.ts'
import { usualStock } from '../../../geometry/strings/gauges.ts'
import { coreArea, coreInertia } from '../../../geometry/strings/mass.ts'
import { stiffRatio } from '../../../geometry/strings/stiffness.ts'
import { pullFromStretch, sharpening, stretchOf } from '../../../geometry/strings/stretch.ts'
import { expectShare, expectWithin } from '../../support/near.ts'

const SCALE = 635
const fret = (number: number, length = SCALE) => ({
  fromNut: length * fretShare(100 * number),
  cents: 100 * number,
})
const frets = Array.from({ length: 24 }, (_, index) => fret(index + 1))
const steel = (diameter: number, tension: number): TunedString => ({
  tension,
  stretch: 206_800 * coreArea(diameter),
  bend: 206_800 * coreInertia(diameter),
})
const path = (over: Partial<StringPath> = {}): StringPath => ({
  length: SCALE,
  nutHeight: 0.4,
  saddleHeight: 4,
  ...over,
})

// G. Byers, "Intonation" (research summary of American Lutherie 47, Fall 1996), Fret Placement: from the saddle,
// X_n = X_0 2^(-n/12).
describe('a setback by itself', () => {
  it.each([
    [1, 613.5183],
    [5, 486.9498],
    [12, 325],
  ])('leaves fret %i of 650 mm at %d from the bare saddle', (number, left) => {
    expectWithin(650 - fret(number, 650).fromNut, left, 0.001)
  })

  it.each([
    [1, -0.323187],
    [3, -1.02815],
    [5, -1.81909],
    [7, -2.70647],
    [12, -5.42707],
  ])('of 2 mm flattens fret %i by %d cents', (number, cents) => {
    expectShare(setbackCents(SCALE, fret(number).fromNut, 2), cents, 2e-5)
  })

  it('is what is left in the errors of a string without height or stiffness', () => {
    const limp = { tension: 70, stretch: 10_000, bend: 0 }
    const flat = path({ nutHeight: 0, saddleHeight: 0 })
    fretErrors(limp, flat, frets, 2).forEach((error, index) => {
      expectWithin(error, setbackCents(SCALE, frets[index]!.fromNut, 2), 1e-9)
    })
  })

  // Varieschi and Gower, as in stretch.test.ts, worked out: linear 0.90789, exact 0.90984 mm for 2.4752 cents.
  it('takes 2.4752 cents off the octave with 0.91 mm', () => {
    expectShare(octaveSetback(SCALE, 2.4752)!, 0.90984, 2e-5)
    expectShare((SCALE * 2.4752 * Math.LN2) / 1200, 0.90789, 2e-5)
    expect(octaveSetback(SCALE, 1200)).toBeNull()
  })
})

describe('errors before compensation', () => {
  // Stretch alone, as published (see stretch.test.ts), and the slant of the string, which lengthens what sounds.
  it.each([1, 3, 5, 7, 12])(
    'are those of the stretch at fret %i, but for the slant of the string',
    (number) => {
      const string = { ...steel(0.254, 72.6), bend: 0 }
      const [error] = fretErrors(string, path(), [fret(number)])
      const stretch = stretchOf(SCALE, fret(number).fromNut, 0.4, 4)
      const open = Math.hypot(SCALE, 3.6)
      const slant =
        1200 *
        Math.log2(
          (open / Math.hypot(SCALE - fret(number).fromNut, 4)) * ((SCALE - fret(number).fromNut) / SCALE),
        )
      expectWithin(error!, sharpening(72.6, pullFromStretch(string.stretch, stretch, SCALE)) + slant, 5e-4)
    },
  )

  it('are those of stiffness where there is no height, by either way of holding the ends', () => {
    for (const held of [0, 1]) {
      const string = steel(0.432, 72)
      const [error] = fretErrors(string, path({ nutHeight: 0, saddleHeight: 0, held }), [fret(12)])
      const b = (Math.PI ** 2 * string.bend) / (72 * SCALE ** 2)
      expectWithin(error!, 1200 * Math.log2(stiffRatio(4 * b, held) / stiffRatio(b, held)), 1e-9)
    }
  })

  it('grow with the square of the height and in step with E A over T', () => {
    const octave = [fret(12)]
    const at = (string: TunedString, height: number) =>
      fretErrors({ ...string, bend: 0 }, path({ nutHeight: height, saddleHeight: height }), octave)[0]!
    const slant = (height: number) => at({ ...steel(0.254, 72.6), stretch: 1e-9 }, height)
    const stretch = (string: TunedString, height: number) => at(string, height) - slant(height)
    const one = stretch(steel(0.254, 72.6), 0.5)
    expectShare(stretch(steel(0.254, 72.6), 1), 4 * one, 0.002)
    expectShare(stretch(steel(0.254, 36.3), 0.5), 2 * one, 0.002)
    expectShare(
      stretch({ ...steel(0.254, 72.6), stretch: 3 * steel(0.254, 72.6).stretch }, 0.5),
      3 * one,
      0.002,
    )
  })

  it('are less where string behind the saddle slides along', () => {
    const whole = fretErrors(steel(0.254, 72.6), path(), [fret(12)])[0]!
    const diluted = fretErrors(steel(0.254, 72.6), path({ sliding: 120 }), [fret(12)])[0]!
    expect(diluted).toBeLessThan(whole)
    // Varieschi and Gower, worked out: the stretch counts for 635 parts of 755.
    expectWithin((diluted + 0.14) / (whole + 0.14), 0.841, 0.02)
  })

  it('take a string lower than the crowns as one that lies on them', () => {
    const low = fretErrors(steel(0.254, 72.6), path({ nutHeight: -1, saddleHeight: -2 }), frets)
    expect(low).toEqual(fretErrors(steel(0.254, 72.6), path({ nutHeight: 0, saddleHeight: 0 }), frets))
  })
})

describe('compensate', () => {
  it('makes the octave true', () => {
    const { setback, before, after } = compensate(steel(0.432, 72), path(), frets)
    expect(before[11]!).toBeGreaterThan(5)
    expectWithin(after[11]!, 0, 1e-5)
    expect(setback!).toBeGreaterThan(0)
  })

  it('makes a low fret true as well where the nut may move', () => {
    const { nutSetback, after } = compensate(steel(0.432, 72), path(), frets, frets[0])
    expectWithin(after[0]!, 0, 1e-5)
    expectWithin(after[11]!, 0, 1e-5)
    expect(nutSetback).toBeGreaterThan(0)
    const saddleAlone = compensate(steel(0.432, 72), path(), frets).after
    const worst = (errors: readonly number[]) => Math.max(...errors.slice(0, 12).map(Math.abs))
    expect(worst(after)).toBeLessThan(worst(saddleAlone))
  })

  // Varieschi and Gower (as above) measured 14 to 64 cents uncompensated and within 8 compensated.
  it('leaves every fret of the usual strings within 8 cents', () => {
    for (const { name, body } of usualStock()) {
      const { setback, after } = compensate({ ...body, tension: 75 }, path(), frets.slice(0, 18))
      expect(setback, name).not.toBeNull()
      expect(Math.max(...after.map(Math.abs)), name).toBeLessThan(8)
    }
  })

  // Common practice, no source: plain .016 to .020 in need 2.5 to 4 mm, plain .009 to .013 in 1.5 to 2.5 mm and
  // wound .024 to .036 in 2 to 3.5 mm; here 2.2 mm of action and ends free to turn, which is the low end.
  it.each([
    ['.017', 71, 2.5, 4],
    ['.011', 70, 0.9, 2.5],
    ['.026w', 79, 1.5, 3.5],
    ['.036w', 66, 1.5, 3.5],
  ])('sets %s at %d N back by a usual amount', (name, tension, least, most) => {
    const { body } = usualStock().find((one) => one.name === name)!
    const { setback } = compensate({ ...body, tension }, path(), frets)
    expect(setback!).toBeGreaterThan(least)
    expect(setback!).toBeLessThan(most)
  })

  const size = (min: number, max: number) => fc.double({ min, max, noNaN: true })

  // "Fret positions and string parameters for fretted string instruments", J. Acoust. Soc. Am. 58, S131 (1975),
  // abstract: the string must be a little longer than the inverse rule says, by action, tension and elasticity.
  it('never sets a string forward that is pressed down, and nothing back that is neither high nor stiff', () => {
    fc.assert(
      fc.property(
        size(0.2, 0.6),
        size(40, 120),
        size(0, 1),
        size(0.5, 5),
        (diameter, tension, nut, saddle) => {
          const { setback } = compensate(
            steel(diameter, tension),
            path({ nutHeight: nut, saddleHeight: nut + saddle }),
            [],
          )
          expect(setback!).toBeGreaterThan(0)
        },
      ),
    )
    const limp = compensate({ ...steel(0.4, 70), bend: 0 }, path({ nutHeight: 0, saddleHeight: 0 }), frets)
    expectWithin(limp.setback!, 0, 1e-9)
    for (const error of limp.before) expectWithin(error, 0, 1e-9)
  })

  it('sets back less and less as height and stiffness go to nothing', () => {
    let last = Number.POSITIVE_INFINITY
    for (const part of [1, 0.5, 0.25, 0.1, 0.01]) {
      const string = { ...steel(0.432, 72), bend: steel(0.432, 72).bend * part }
      const { setback } = compensate(string, path({ nutHeight: 0.4 * part, saddleHeight: 4 * part }), [])
      expect(setback!).toBeLessThan(last)
      last = setback!
    }
    expect(last).toBeLessThan(0.01)
  })

  it('sets back further with more height, a stiffer or a slacker string', () => {
    const at = (string: TunedString, high: number) =>
      compensate(string, path({ saddleHeight: high }), []).setback!
    expect(at(steel(0.432, 72), 5)).toBeGreaterThan(at(steel(0.432, 72), 4))
    expect(at(steel(0.432, 60), 4)).toBeGreaterThan(at(steel(0.432, 72), 4))
    expect(at(steel(0.5, 72), 4)).toBeGreaterThan(at(steel(0.432, 72), 4))
  })

  it('says so where no setback would do', () => {
    const slack = compensate(steel(0.6, 0.5), path({ saddleHeight: 20 }), frets)
    expect(slack.setback).toBeNull()
    expect(slack.after).toBe(slack.before)
    for (const error of slack.before) expect(Number.isFinite(error)).toBe(true)
  })

  it('throws for a string that is none', () => {
    expect(() => compensate(steel(0.4, 0), path(), [])).toThrow('a tension must be above 0, not 0')
    expect(() => compensate(steel(0.4, 70), path({ length: Number.NaN }), [])).toThrow('not NaN')
  })

  it('works for frets that keep only some of the twelve, and for pure ones', () => {
    const pure = ['9/8', '5/4', '4/3', '3/2'].map((text) => {
      const [above, below] = text.split('/').map(Number) as [number, number]
      return { fromNut: SCALE * (1 - below / above), cents: 1200 * Math.log2(above / below) }
    })
    const { before, after } = compensate(
      { ...steel(0.3, 75), bend: 0 },
      path({ nutHeight: 0, saddleHeight: 0 }),
      pure,
    )
    for (const error of [...before, ...after]) expectWithin(error, 0, 1e-9)
  })
})
