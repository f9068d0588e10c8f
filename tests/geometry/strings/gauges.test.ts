import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { bodyOf } from '../../../geometry/strings/body.ts'
import {
  nearestString,
  scaleFor,
  spreadOf,
  stockString,
  usualStock,
} from '../../../geometry/strings/gauges.ts'
import { MATERIALS } from '../../../geometry/strings/materials.ts'
import { hertzOf, readPitch } from '../../../geometry/strings/pitch.ts'
import { tensionOf } from '../../../geometry/strings/tension.ts'
import { expectShare, expectWithin } from '../../support/near.ts'

const stock = usualStock()
const named = (name: string) => stock.find((one) => one.name === name)!
const hertz = (text: string) => {
  const reading = readPitch(text)
  if (!reading.ok) throw new Error(reading.sentence)
  return reading.hertz
}

describe('a set of strings', () => {
  // Common practice, no source: plain .011 .014 .018 and wound .028 in at E4 B3 G3 D3 on 24 in.
  it('lies between 60 and 90 N, within a quarter of each other', () => {
    const set = [
      ['.011', 'E4'],
      ['.014', 'B3'],
      ['.018', 'G3'],
      ['.028w', 'D3'],
    ] as const
    const tensions = set.map(([name, pitch]) => tensionOf(named(name).body.unitMass, 609.6, hertz(pitch)))
    for (const tension of tensions) {
      expect(tension).toBeGreaterThan(60)
      expect(tension).toBeLessThan(90)
    }
    expect(spreadOf(tensions).apart).toBeLessThan(0.25)
  })

  // Common practice, no source: pulls of whole instruments, worked out by builders.
  it.each([
    ['G2 D3 G3', '.036w .026w .017', 584, 648, 190, 235],
    ['D3 A3 D4', '.026w .017 .013', 584, 648, 225, 280],
    ['E1 A1 D2 G2', '.105w .085w .065w .045w', 762, 864, 650, 840],
  ])('%s of %s pulls as builders reckon', (pitches, gauges, shortest, longest, least, most) => {
    const total = (scale: number) =>
      spreadOf(
        pitches
          .split(' ')
          .map((pitch, index) =>
            tensionOf(named(gauges.split(' ')[index]!).body.unitMass, scale, hertz(pitch)),
          ),
      ).total
    expectShare(total(shortest), least, 0.12)
    expectShare(total(longest), most, 0.12)
  })

  it('of no strings pulls nothing', () => expect(spreadOf([])).toEqual({ total: 0, apart: 0 }))
})

describe('nearestString', () => {
  it('gives back the string a tension came from', () => {
    for (const one of stock.filter(({ make }) => make.construction === 'plain')) {
      const tension = tensionOf(one.body.unitMass, 635, 196)
      const chosen = nearestString(stock, 196, 635, tension, 10)!
      expectShare(chosen.tension, tension, 0.03)
    }
  })

  it('is nearer than every other', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 40, max: 69 }),
        fc.integer({ min: 350, max: 860 }),
        fc.integer({ min: 30, max: 120 }),
        (midi, scale, target) => {
          const chosen = nearestString(stock, hertzOf(midi), scale, target, 0.9)
          for (const { body } of stock) {
            const tension = tensionOf(body.unitMass, scale, hertzOf(midi))
            if (tension / body.breaking > 0.9) continue
            expect(Math.abs(Math.log(chosen!.tension / target))).toBeLessThanOrEqual(
              Math.abs(Math.log(tension / target)) + 1e-12,
            )
          }
        },
      ),
    )
  })

  it('takes none past its breaking load', () => {
    expect(nearestString(stock, hertz('A5'), 860, 70)).toBeNull()
    expect(nearestString([], 196, 635, 70)).toBeNull()
  })

  it('chooses a set as builders string it', () => {
    const chosen = ['E4', 'B3', 'G3', 'D3'].map(
      (pitch) => nearestString(stock, hertz(pitch), 609.6, 75)!.stock.name,
    )
    expect(chosen).toEqual(['.011', '.014', '.018', '.026w'])
  })
})

describe('scaleFor', () => {
  it('gives the scale back at which every string pulls alike', () => {
    const set = ['E4', 'B3', 'G3'].map((pitch) => {
      const chosen = nearestString(stock, hertz(pitch), 620, 70)!
      return {
        body: { ...chosen.stock.body, unitMass: (chosen.stock.body.unitMass * 70) / chosen.tension },
        pitch: hertz(pitch),
      }
    })
    expectShare(scaleFor(set, 70)!.length, 620, 1e-9)
  })

  it('evens strong and weak out by ratio', () => {
    const set = [
      { body: named('.011').body, pitch: hertz('E4') },
      { body: named('.018').body, pitch: hertz('G3') },
    ]
    const { length } = scaleFor(set, 72)!
    const [a, b] = set.map(({ body, pitch }) => tensionOf(body.unitMass, length, pitch))
    expectShare(a! * b!, 72 * 72, 1e-9)
  })

  // ASTM A228 and Mersenne: .012 in of 377 ksi breaks at 452.78 Hz on 635 mm.
  it('knows the longest', () => {
    const { longest } = scaleFor([{ body: named('.012').body, pitch: 452.78 }], 70, 1)!
    expectWithin(longest, 635, 0.2)
    expect(scaleFor([], 70)).toBeNull()
  })
})

describe('bodyOf', () => {
  const material = MATERIALS['music wire']
  const wrap = MATERIALS.nickel

  // ASTM A228: .017 in lies between the rows .016 (362) and .018 (356 ksi).
  it('knows mass and strength of a plain string', () => {
    const reading = bodyOf({ construction: 'plain', diameter: 0.4318, material })
    if (!reading.ok) throw new Error(reading.why)
    expectShare(reading.body.unitMass, 1.1512e-6, 1e-4)
    expectWithin(reading.body.breaking, 0.1464378 * 359 * 6.894757, 1)
  })

  it('lets only the core bear and bend', () => {
    const wound = bodyOf({ construction: 'wound', diameter: 0.88, material, wrap, core: 0.38 })
    const core = bodyOf({ construction: 'plain', diameter: 0.38, material })
    if (!wound.ok || !core.ok) throw new Error('no body')
    expect(wound.body.breaking).toBe(core.body.breaking)
    expect(wound.body.stretch).toBe(core.body.stretch)
    expect(wound.body.bend).toBe(core.body.bend)
    expectShare(wound.body.unitMass, 4.35332e-6, 2e-5)
  })

  it('takes a stated mass as it is', () => {
    const reading = bodyOf({ construction: 'stated', diameter: 0.7, unitMass: 2.6e-6, core: 0.35, material })
    expect(reading.ok && reading.body.unitMass).toBe(2.6e-6)
    expect(reading.ok && reading.body.core).toBe(0.35)
  })

  it('winds nylon floss thinly', () => {
    const reading = bodyOf({
      construction: 'wound',
      diameter: 0.74,
      material: MATERIALS.nylon,
      wrap: MATERIALS['silvered copper'],
    })
    expect(reading.ok && reading.body.core / 0.74).toBe(0.72)
  })

  it('says what cannot be', () => {
    expect(bodyOf({ construction: 'wound', diameter: 0.5, material, wrap, core: 0.5 })).toEqual({
      ok: false,
      why: 'no room for a winding',
    })
    expect(bodyOf({ construction: 'stated', diameter: 0.5, unitMass: 1e-6, core: 0.6, material })).toEqual({
      ok: false,
      why: 'no room for a winding',
    })
    expect(bodyOf({ construction: 'plain', diameter: 0.5, material: wrap })).toEqual({
      ok: false,
      why: 'carries no pull',
    })
    expect(() => stockString('odd', { construction: 'plain', diameter: 0.5, material: wrap })).toThrow(
      '"odd" cannot be made: carries no pull',
    )
    expect(() => bodyOf({ construction: 'plain', diameter: 0, material })).toThrow('must be above 0, not 0')
  })
})
