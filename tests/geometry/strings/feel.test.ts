/** The four words for a pull, at their limits. Common practice, from memory: `feel.ts` says over and under, not at. */
import { expect, test } from 'vitest'
import { feelOf, USUAL_FEEL } from '../../../geometry/strings/feel.ts'

test.each([
  [39.9, 0.2, 'slack'],
  [40, 0.2, 'comfortable'],
  [110, 0.2, 'comfortable'],
  [110.1, 0.2, 'high'],
  [70, 0.75, 'comfortable'],
  [70, 0.751, 'high'],
  [70, 0.9, 'high'],
  [70, 0.901, 'breaking'],
  // A thin string may be slack to the finger and near its end all the same.
  [20, 0.8, 'high'],
  [20, 0.95, 'breaking'],
  [200, 0.95, 'breaking'],
] as const)('%d N at a share of %d feels %s', (tension, share, feel) => {
  expect(feelOf(tension, share)).toBe(feel)
})

test('soft strings have limits of their own', () => {
  const nylon = { ...USUAL_FEEL, slack: 25, high: 80 }
  expect(feelOf(30, 0.3, nylon)).toBe('comfortable')
  expect(feelOf(24.9, 0.3, nylon)).toBe('slack')
  expect(feelOf(90, 0.3, nylon)).toBe('high')
})
