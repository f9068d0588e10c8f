/** Lists that builders choose from: gauges on offer, tunings by name, partials that can be heard. */
import { expect, test } from 'vitest'
import { usualStock } from '../../../geometry/strings/gauges.ts'
import { beatsBetween } from '../../../geometry/strings/just.ts'
import { TUNINGS } from '../../../geometry/strings/tunings.ts'

test('gauges on offer rise without repeats, plain ones first and none of them thicker than .020', () => {
  const mils = usualStock().map(({ name }) => Number(name.replace(/[^\d]/g, '')))
  const wound = mils.findIndex((one, index) => index > 0 && one <= (mils[index - 1] ?? 0))
  expect(mils[wound - 1]).toBe(20)
  for (const list of [mils.slice(0, wound), mils.slice(wound)])
    for (const [index, one] of list.entries())
      if (index > 0) expect(one).toBeGreaterThan(list[index - 1] ?? 0)
})

/** Semitones over the root of equal temperament; an octave counts as the root. */
const SEMITONES: Readonly<Record<string, number>> = {
  root: 0,
  octave: 0,
  third: 4,
  fifth: 7,
  'minor seventh': 10,
}

test('a tuning’s steps are what its name says', () => {
  let told = 0
  for (const { title, steps } of TUNINGS) {
    const words = (title.split(':')[0] ?? '').toLowerCase().split(/, | and /)
    const named = words.map((word) => SEMITONES[word])
    if (named.length !== steps.length || named.some((one) => one === undefined)) continue
    const [first = 0] = named
    expect({ title, steps: steps.map((step) => step % 12) }).toEqual({
      title,
      steps: named.map((one) => ((one ?? 0) - first + 12) % 12),
    })
    told += 1
  }
  expect(told).toBeGreaterThanOrEqual(6)
  expect(TUNINGS.find(({ title }) => title.startsWith('Root and two fifths'))?.steps).toEqual([0, 7, 7])
})

test('the eighth partial is still heard: a minor sixth of 8 to 5', () => {
  // |8 × 100 − 5 × 160.5| = 2.5.
  expect(beatsBetween(100, 160.5)).toBeCloseTo(2.5, 9)
})
