/** Typical tuners: holes against drills in inches, and what has to fit what in any tuner. */
import { describe, expect, it } from 'vitest'
import { TUNER_PRESETS } from '../../../geometry/neck/tuner-presets.ts'
import { designOf } from '../../support/designs.ts'

describe.each(TUNER_PRESETS.map(({ title, fields }) => [title, fields] as const))('%s', (_, fields) => {
  const { headstock } = designOf({ headstock: fields })

  it('turns in its hole with little play, and its bushing sits round that', () => {
    expect(headstock.postHole).toBeGreaterThan(headstock.post)
    // Of posts that turn in bare wood or a thin sleeve: no more play than a bushing of 2 mm all round would fill.
    expect(headstock.postHole - headstock.post).toBeLessThanOrEqual(4)
    if (headstock.bushing === 'let in') expect(headstock.bushingHole).toBeGreaterThan(headstock.postHole)
  })

  it('has its screws in its own plate, clear of the hole, and its knob beside the plate', () => {
    expect(headstock.screwAlong).toBeLessThan(headstock.bodyLong / 2)
    expect(headstock.screwAlong - headstock.screwPilot / 2).toBeGreaterThan(headstock.postHole / 2)
    expect(headstock.screwIn).toBeLessThan(headstock.bodyIn)
    expect(headstock.knobFrom).toBeGreaterThan(headstock.postEdge)
  })
})

describe('sizes that are told in inches elsewhere', () => {
  const named = (title: string) => {
    const found = TUNER_PRESETS.find((one) => one.title === title)
    if (!found) throw new Error(`no ${title}`)
    return found.fields
  }
  it('are those to a tenth of a millimetre, and the metric kin no more than half a millimetre off', () => {
    // A quarter of an inch, 11/32 in for a bushing pushed in, 25/64 in for one screwed in (trade notes, as the file says).
    const pushed = named('Bushing pushed in')
    expect(pushed.post).toBeCloseTo(25.4 / 4, 9)
    expect(Math.abs((pushed.bushingHole ?? 0) - (11 / 32) * 25.4)).toBeLessThanOrEqual(0.1)
    const screwed = named('Sealed, screwed in from the front')
    expect(Math.abs((screwed.postHole ?? 0) - (25 / 64) * 25.4)).toBeLessThanOrEqual(0.1)
    const metric = named('Bushing pushed in, 8 mm').postHole ?? 0
    expect(metric).toBeGreaterThanOrEqual(8)
    expect(metric).toBeLessThanOrEqual(8.3)
  })
})
