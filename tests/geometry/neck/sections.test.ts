import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  bar,
  mostStrained,
  type Part,
  plank,
  rod,
  type Stuff,
  sectionOf,
} from '../../../geometry/neck/sections.ts'
import { expectShare, expectWithin } from '../../support/near.ts'

const stuff = (stiffness: number, strength = 100): Stuff => ({ stiffness, strength })
const sectionFrom = (...parts: Part[]) => {
  const section = sectionOf(parts)
  if (!section) throw new Error('no section')
  return section
}

describe('one part', () => {
  // USDA Wood Handbook, FPL-GTR-282, Eqs 9-3 and 9-13: rectangle 40 × 20 mm.
  it('a rectangle', () => {
    const { bend, axis } = sectionFrom(plank(40, 0, 20, stuff(1)))
    expectShare(bend, 26_666.6667, 1e-6)
    expectShare(bend / axis, 2666.6667, 1e-6)
  })

  // The same: round bar of 12 mm.
  it('a round bar', () => {
    const { bend } = sectionFrom(rod(12, 0, stuff(2), stuff(1)), rod(12, 0, stuff(2), stuff(1)))
    expectShare(bend / 2, 1017.876, 2e-6)
    expectShare(bend / 2 / 6, 169.646, 2e-6)
  })

  // Beam tutorial: a section of 3 to 1 that lets 50 kN at 5 m sink 3 mm; F L³ / 3δ = E I, E = 205 GPa.
  it('196.98 by 590.94 mm of steel has the stiffness that problem asks for', () => {
    expectShare(sectionFrom(plank(196.98, 0, 590.94, stuff(205_000))).bend, 6.94444e14, 1.5e-4)
  })
})

describe('several parts', () => {
  // Composite beam example with a printed answer table: timber 140 × 400, E = 12.5 GPa, steel plate 200 × 8 on top,
  // 200 GPa, 30 kN·m: 2.76 N/mm² pressed and 5.36 pulled in the wood, 46.8 in the steel; axis 264 mm up.
  it('timber under a steel plate', () => {
    const wood = plank(140, 0, 400, stuff(12_500))
    const plate = plank(200, 400, 408, stuff(200_000))
    const section = sectionFrom(wood, plate)
    expectShare(section.axis, 264, 2e-6)
    expectShare(section.bend / 12_500, 1.477939e9, 2e-6)
    const moment = 30e6
    const at = (part: Part, height: number) => (part.own * moment * (height - section.axis)) / section.bend
    expectShare(at(wood, 400), 2.76, 0.002)
    expectShare(at(wood, 0), -5.36, 0.002)
    expectShare(at(plate, 408), 46.8, 0.002)
    // Of like strength the plate is the most strained, then the wood's back.
    expectShare(mostStrained(section, 0, moment).stress, 46.8, 0.002)
    const soft = sectionFrom({ ...wood, strength: 1 }, plate)
    expect(mostStrained(soft, 0, moment).height).toBe(0)
  })

  // A composite oak and steel member: 202.5 over 13.5 GPa.
  it('count steel fifteen times as much as oak', () => {
    const [oak, steel] = [
      sectionFrom(plank(40, 0, 20, stuff(13.5))),
      sectionFrom(plank(40, 0, 20, stuff(202.5))),
    ]
    expectShare(steel.bend / oak.bend, 15, 1e-12)
  })

  // Gere and Goodno, Mechanics of Materials, ch. 6, composite beams; numbers worked out.
  it('a maple neck under a walnut board', () => {
    const section = sectionFrom(plank(45, 0, 20, stuff(12_600)), plank(45, 20, 26, stuff(11_600)))
    expectShare(section.axis, 12.8134, 2e-5)
    expectShare(section.bend, 8.02152e8, 2e-5)
    expectShare(section.bend / sectionFrom(plank(45, 0, 20, stuff(12_600))).bend, 2.1221, 2e-5)
  })

  // The same: two equal layers glued are four times as stiff as loose, and layers of one wood are one piece.
  it('glued are stiffer than loose', () => {
    const one = sectionFrom(plank(40, 0, 10, stuff(1)))
    const glued = sectionFrom(plank(40, 0, 10, stuff(1)), plank(40, 10, 20, stuff(1)))
    expectShare(glued.bend / (2 * one.bend), 4, 1e-12)
    expectShare(glued.bend, (40 * 20 ** 3) / 12, 1e-12)
  })

  // Common practice, no source, worked out by a builder: a board of 6.4 mm makes a neck of 19 mm 2.4 times as stiff.
  it('a board on a stick', () => {
    const stick = sectionFrom(plank(38, 0, 19, stuff(1))).bend
    expectShare(
      sectionFrom(plank(38, 0, 19, stuff(1)), plank(38, 19, 25.4, stuff(1))).bend / stick,
      2.4,
      0.01,
    )
    // The same builder: after a notch of 3.2, 6.4, 9.5 and 12.7 mm 58, 29, 12 and 4 % are left.
    for (const [notch, left] of [
      [3.2, 0.58],
      [6.35, 0.29],
      [9.5, 0.125],
      [12.7, 0.037],
    ] as const) {
      expectWithin(sectionFrom(plank(38, 0, 19 - notch, stuff(1))).bend / stick, left, 0.01)
    }
  })
})

describe('bars and rods', () => {
  const maple = stuff(12_600)

  it('of the wood they stand in change nothing', () => {
    const bare = sectionFrom(plank(38, 0, 19, maple))
    const barred = sectionFrom(plank(38, 0, 19, maple), bar(5, 2, 17, maple, maple))
    expectShare(barred.bend, bare.bend, 1e-12)
    expectShare(barred.axis, bare.axis, 1e-12)
  })

  it('of steel count only for what they are stiffer', () => {
    const barred = sectionFrom(plank(38, 0, 19, maple), bar(5, 2, 17, stuff(200_000), maple))
    const byHand = 12_600 * ((38 * 19 ** 3) / 12 - (5 * 15 ** 3) / 12) + 200_000 * ((5 * 15 ** 3) / 12)
    expectShare(barred.bend, byHand, 1e-12)
  })

  it('loose in their channel add little, and take the wood away', () => {
    const bare = sectionFrom(plank(38, 0, 19, maple))
    const loose = sectionFrom(plank(38, 0, 19, maple), rod(5, 9.5, stuff(200_000), maple, true))
    const glued = sectionFrom(plank(38, 0, 19, maple), rod(5, 9.5, stuff(200_000), maple))
    const byHand =
      12_600 * ((38 * 19 ** 3) / 12 - (Math.PI * 5 ** 4) / 64) + 200_000 * ((Math.PI * 5 ** 4) / 64)
    expectShare(loose.bend, byHand, 1e-12)
    expectShare(glued.bend, loose.bend, 1e-12)
    const low = sectionFrom(plank(38, 0, 19, maple), rod(5, 4, stuff(200_000), maple, true))
    expect(low.bend).toBeLessThan(bare.bend)
    expect(sectionFrom(plank(38, 0, 19, maple), rod(5, 4, stuff(200_000), maple)).bend).toBeGreaterThan(
      bare.bend,
    )
  })
})

describe('a rod', () => {
  // Circle of diameter 6 about height 7: area 9 π, second moment 81 π / 4 (any table of sections).
  it('is a circle about its middle', () => {
    const one = rod(6, 7, stuff(3), stuff(1))
    expect(one).toMatchObject({ centre: 7, bottom: 4, top: 10, stiffness: 2, own: 3, loose: false })
    expectShare(one.area, 9 * Math.PI, 1e-12)
    expectShare(one.inertia, (81 * Math.PI) / 4, 1e-12)
    expect(rod(6, 7, stuff(3), stuff(1), true)).toMatchObject({ stiffness: -1, loose: true })
  })

  it('glued low in a stick draws its axis down by its own moment', () => {
    // 40 × 20 of 10 000, a rod of 6 at 7 high that adds 190 000: axis (10 × 8e6 + 7 × 190e3 × 9π) / (8e6 + 190e3 × 9π).
    const section = sectionFrom(plank(40, 0, 20, stuff(10_000)), rod(6, 7, stuff(200_000), stuff(10_000)))
    const added = 190_000 * 9 * Math.PI
    const axis = (80e6 + 7 * added) / (8e6 + added)
    expectShare(section.axis, axis, 1e-12)
    const bend = 10_000 * ((40 * 20 ** 3) / 12 + 800 * (10 - axis) ** 2) + (190_000 * 81 * Math.PI) / 4
    expectShare(section.bend, bend + added * (7 - axis) ** 2, 1e-12)
  })

  it('that lies loose is bent about its own middle and not pressed; a glued one is both', () => {
    // Only the rod is weak, so that the strain told is its own.
    const wood = plank(40, 0, 20, stuff(10_000, 1e9))
    const lying = (loose: boolean) => sectionFrom(wood, rod(6, 7, stuff(200_000, 1), stuff(10_000), loose))
    for (const [push, moment] of [
      [500, 3000],
      [500, -3000],
      [0, 3000],
    ] as const) {
      const bent = (section: ReturnType<typeof lying>) => (200_000 * moment) / section.bend
      const loose = lying(true)
      // 3 from its own middle to either edge: alike, the lower one is told.
      expect(mostStrained(loose, push, moment).height).toBe(4)
      expectShare(mostStrained(loose, push, moment).stress, -3 * bent(loose), 1e-9)
      const glued = lying(false)
      const at = (height: number) => (200_000 * push) / glued.stretch + bent(glued) * (height - glued.axis)
      const worst = Math.abs(at(4)) >= Math.abs(at(10)) ? 4 : 10
      const told = mostStrained(glued, push, moment)
      expect(told.height).toBe(worst)
      expectShare(told.stress, at(worst), 1e-9)
      expectShare(told.share, Math.abs(at(worst)), 1e-9)
    }
  })

  it('is nothing to bear a load by itself where the wood is gone', () => {
    expect(sectionOf([rod(6, 7, stuff(200_000), stuff(10_000), true)])).toBeNull()
  })
})

describe('strain', () => {
  it('is told of the edge that bears least, at either face and whichever way it bends', () => {
    // 40 × 20, 100 N along and 400 N·mm: 0.125 ± 0.15; top first in pressure, the back in pull.
    const section = sectionFrom(plank(40, 0, 20, stuff(10_000, 2)))
    expect(mostStrained(section, 100, 400)).toEqual({
      stress: expect.closeTo(0.275, 9),
      share: expect.closeTo(0.1375, 9),
      height: 20,
    })
    expect(mostStrained(section, 100, -400)).toEqual({
      stress: expect.closeTo(0.275, 9),
      share: expect.closeTo(0.1375, 9),
      height: 0,
    })
    expect(mostStrained(section, -100, 400)).toEqual({
      stress: expect.closeTo(-0.275, 9),
      share: expect.closeTo(0.1375, 9),
      height: 0,
    })
    expect(mostStrained(section, 0, 0)).toEqual({ stress: 0, share: 0, height: 10 })
    // A part that is not there bears nothing, however far off it would lie.
    const ghost = sectionFrom(plank(40, 0, 20, stuff(10_000, 2)), plank(40, 90, 90, stuff(10_000, 1e-6)))
    expect(mostStrained(ghost, 100, 400).height).toBe(20)
  })

  // Roark's Formulas, cantilever with end couple; maple 40 × 20 mm, 200 N at 12 mm over the axis: T/A + T e/S.
  it('of a neck under its strings', () => {
    const section = sectionFrom(plank(40, -10, 10, stuff(12_600)))
    const { stress, height, share } = mostStrained(section, 200, 2400)
    expectShare(stress, 1.15, 2e-5)
    expect(height).toBe(10)
    expectShare(share, 0.0115, 2e-5)
  })

  it('changes sides with the moment', () => {
    const section = sectionFrom(plank(40, -10, 10, stuff(12_600)))
    expect(mostStrained(section, 0, -2400).stress).toBeLessThan(1)
    expectShare(mostStrained(section, 0, -2400).share, mostStrained(section, 0, 2400).share, 1e-12)
    expect(mostStrained(section, 0, 0).share).toBe(0)
  })
})

describe('any section', () => {
  const size = (min: number, max: number) => fc.double({ min, max, noNaN: true })

  it('moves with its frame and scales with its stiffness', () => {
    fc.assert(
      fc.property(
        size(5, 60),
        size(2, 30),
        size(1, 10),
        size(1000, 20_000),
        size(1000, 20_000),
        size(-50, 50),
        (width, thick, board, e1, e2, up) => {
          const at = (z: number, times: number) =>
            sectionFrom(
              plank(width, z, z + thick, stuff(times * e1)),
              plank(width, z + thick, z + thick + board, stuff(times * e2)),
            )
          const [here, there, twice] = [at(0, 1), at(up, 1), at(0, 2)]
          expectShare(there.bend, here.bend, 1e-9)
          expectWithin(there.axis - up, here.axis, 1e-9)
          expectShare(twice.bend, 2 * here.bend, 1e-12)
        },
      ),
    )
  })

  it('that is empty is none', () => {
    expect(sectionOf([])).toBeNull()
    expect(sectionOf([plank(40, 5, 5, stuff(1))])).toBeNull()
    expect(() => plank(40, 5, 4, stuff(1))).toThrow('the height of a plank must be 0 or more, not -1')
    expect(() => plank(0, 0, 4, stuff(1))).toThrow('the width of a plank must be above 0, not 0')
  })
})
