import { expect, test } from 'vitest'
import { timesShown } from '../../../app/drawings/SurveyPlan.tsx'

test('crookedness is enlarged by a round number, and never so far that the drawing bursts', () => {
  // Nine hundredths of 180 mm are 16.2.
  expect(timesShown(1.5, 180)).toBe(10)
  expect(timesShown(0.3, 180)).toBe(50)
  expect(timesShown(8.2, 180)).toBe(1)
  expect(timesShown(0, 180)).toBe(1)
  for (const most of [0.01, 0.2, 1, 3, 9, 40])
    expect(timesShown(most, 180) * most).toBeLessThanOrEqual(Math.max(16.2, most))
})
