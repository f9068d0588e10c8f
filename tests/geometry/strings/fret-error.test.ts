import { describe, expect, it } from 'vitest'
import { fretShare } from '../../../geometry/scale/frets.ts'
import { misplacedCents, roundedFrets } from '../../../geometry/strings/fret-error.ts'
import { expectWithin } from '../../support/near.ts'

const at = (fret: number) => 635 * fretShare(100 * fret)

describe('a misplaced fret', () => {
  // Definition of the cent, A. J. Ellis, 1885: half a millimetre too near the saddle on 635 mm.
  it.each([
    [1, 1.4448],
    [5, 1.8206],
    [7, 2.0437],
    [12, 2.7285],
  ])('number %i is %d cents sharp', (fret, cents) => {
    expectWithin(misplacedCents(635, at(fret), at(fret) + 0.5), cents, 0.001)
    // For small errors 1731.23 dx / L_n.
    expectWithin(misplacedCents(635, at(fret), at(fret) + 0.5), (1731.23 * 0.5) / (635 - at(fret)), 0.005)
  })

  // G. Byers, "Intonation": the divisor 17.817 used twelve times lands 2 µm off the octave of 635 mm.
  it('costs nothing at two thousandths of a millimetre', () => {
    const octave = 635 * (1 - (1 - 1 / 17.817) ** 12)
    expectWithin(octave, 317.50195, 2e-5)
    expectWithin(misplacedCents(635, 317.5, octave), 0.011, 0.001)
  })

  // J. M. Barbour, "Tuning and Temperament", 1951, ch. III: by the rule of 18 the octave comes out 12.545 cents flat.
  it('by the rule of 18 leaves the octave flat', () => {
    const share = 1 - (17 / 18) ** 12
    expectWithin(share, 0.4963637, 1e-6)
    expectWithin(misplacedCents(635, 317.5, 635 * share), -12.545, 0.001)
  })
})

describe('frets on a rule', () => {
  it('fall on its lines, none farther off than half a step', () => {
    const step = 25.4 / 32
    for (const { cut, off } of roundedFrets(635, [at(1), at(7), at(12), at(18)], step)) {
      expectWithin(cut / step, Math.round(cut / step), 1e-9)
      expect(Math.abs(off)).toBeLessThanOrEqual(step / 2)
    }
  })

  // Arithmetic: fret 7 of 635 mm lies at 211.188 mm; the nearest 1/16 in is 133/16 in = 211.138 mm.
  it('knows what a sixteenth costs at the seventh', () => {
    const [seventh] = roundedFrets(635, [at(7)], 25.4 / 16)
    expectWithin(seventh!.cut, 211.1375, 1e-9)
    expectWithin(seventh!.off, -0.0508, 1e-3)
    expectWithin(seventh!.cents, -0.2075, 1e-3)
  })

  it('stay where they are without one', () => {
    expect(roundedFrets(635, [at(5)], 0)).toEqual([{ cut: at(5), off: 0, cents: 0 }])
  })

  it('throws for a fret at the saddle', () => {
    expect(() => misplacedCents(635, 635, 600)).toThrow('must be above 0, not 0')
    expect(() => misplacedCents(635, 300, Number.NaN)).toThrow('NaN')
  })
})
