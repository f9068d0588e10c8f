/** What the sheets of one part share is written once, however many they are. */
import { expect, test } from 'vitest'
import { planPrint, printPdf, STANDARD_SETUP } from '../../../exporters/index.ts'
import { partsOf, solve } from '../../../geometry/index.ts'
import { designOf } from '../../support/designs.ts'

async function printed(length: number, width: number) {
  const base = partsOf(solve(designOf({ box: { length, width } }))).filter(({ id }) => id === 'base')
  const plan = planPrint(base, STANDARD_SETUP)
  if (!plan.ok) throw new Error(plan.sentence)
  const { bytes, pages } = await printPdf(plan.plan, { title: 'Large' })
  return { bytes: bytes.length, pages }
}

test('a sheet among forty takes hardly more of the file than one among a dozen', async () => {
  const [few, some, many] = [await printed(300, 200), await printed(700, 600), await printed(1500, 1000)]
  expect([few.pages, some.pages, many.pages]).toEqual([2, 13, 43])
  const perSheet = (a: typeof few, b: typeof few) => (b.bytes - a.bytes) / (b.pages - a.pages)
  // Map and marks drawn anew on every sheet made it nearly twice as much.
  expect(perSheet(some, many)).toBeLessThan(1.4 * perSheet(few, some))
})
