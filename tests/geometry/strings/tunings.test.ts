import { describe, expect, it } from 'vitest'
import { hertzOf } from '../../../geometry/strings/pitch.ts'
import { lettersOf, TUNINGS, tunedTo, tuningsFor } from '../../../geometry/strings/tunings.ts'
import { expectWithin } from '../../support/near.ts'

const named = (name: string) => TUNINGS.find((one) => one.name === name)!

describe('tunings', () => {
  // Note frequencies by J. Wolfe, UNSW, formula section; the tunings themselves are common practice, no source.
  it.each([
    ['GDG', 43, [97.9989, 146.8324, 195.9977]],
    ['AEA', 45, [110, 164.8138, 220]],
    ['DAD', 38, [73.4162, 110, 146.8324]],
  ])('%s is root, fifth, octave in its key', (letters, first, hertz) => {
    const midis = tunedTo(named('root-fifth-octave'), first)
    expect(lettersOf(midis)).toBe(letters)
    for (const [index, midi] of midis.entries()) expectWithin(hertzOf(midi), hertz[index]!, 6e-5)
  })

  // Common practice, no source: what players call them, in their first key.
  it.each([
    ['root-third-fifth', 'GBD'],
    ['guitar-top-three', 'GBE'],
    ['root-fifth-seventh', 'AEG'],
    ['open-four', 'GDGB'],
    ['two-fifths', 'GDGD'],
    ['fifth-below', 'DGBD'],
    ['guitar-top-four', 'DGBE'],
    ['bass', 'EADG'],
    ['plectrum', 'CGBD'],
    ['fifths', 'CGDA'],
    ['ukulele', 'GCEA'],
    ['five-string-banjo', 'GDGBD'],
    ['guitar', 'EADGBE'],
    ['open-six-fifth', 'DGDGBD'],
    ['open-six-root', 'DADF♯AD'],
  ])('%s reads %s', (name, letters) => expect(lettersOf(tunedTo(named(name)))).toBe(letters))

  it.each([1, 2, 3, 4, 5, 6])('has some for %i strings', (strings) => {
    const some = tuningsFor(strings)
    expect(some.length).toBeGreaterThan(0)
    for (const { steps, keys } of some) {
      expect(steps[0]).toBe(0)
      for (const key of keys)
        for (const midi of tunedTo({ steps, keys }, key)) expect(midi).toBeGreaterThan(20)
    }
  })

  it('has none for seven, and each name once', () => {
    expect(tuningsFor(7)).toEqual([])
    expect(new Set(TUNINGS.map(({ name }) => name)).size).toBe(TUNINGS.length)
  })
})
