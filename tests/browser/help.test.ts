import type { BrowserContext, Page } from 'playwright-core'
import { afterEach, beforeEach, expect, inject, test } from 'vitest'
import { violationsOf } from '../support/axe.ts'
import { newContext } from '../support/browser.ts'

const address = inject('address')
let context: BrowserContext

beforeEach(async () => {
  context = await newContext({ offline: 'kept' })
})
afterEach(() => context.close())

/** Everything is fetched and kept, and no network is left. */
async function offline(): Promise<Page> {
  const first = await context.newPage()
  await first.goto(address)
  await first.getByRole('dialog').waitFor()
  await first.keyboard.press('Escape')
  await first.evaluate(() => navigator.serviceWorker.ready.then(() => undefined))
  await first.close()
  await context.setOffline(true)
  const page = await context.newPage()
  await page.setViewportSize({ width: 768, height: 1024 })
  await page.goto(`${address}#lay-out`)
  await page.getByRole('navigation', { name: 'Places' }).waitFor()
  if (await page.getByRole('dialog').isVisible()) await page.keyboard.press('Escape')
  await page.getByRole('navigation', { name: 'Places' }).getByRole('button', { name: 'Lay out' }).click()
  return page
}

test('a pressed “?” shows the sentence and its drawing, without a network and in a narrow inspector', async () => {
  const page = await offline()
  await page
    .getByRole('button', { name: /^Saddle/ })
    .first()
    .click()
  const inspector = page.getByRole('complementary', { name: 'What is selected' })
  const ask = inspector.getByRole('button', { name: 'What is “Saddle, tall”?' })
  const drawings = inspector.locator('.picture')
  expect(await drawings.count()).toBe(0)
  const before = await ask.boundingBox()
  await ask.click()
  await expect.poll(() => drawings.count()).toBe(1)
  expect(
    await inspector.getByText('From the outer face of the lid to the underside of the strings.').isVisible(),
  ).toBe(true)
  // The mark stays where it was pressed, and nothing is wider than the inspector.
  expect((await ask.boundingBox())?.x).toBe(before?.x)
  const [outer, inner] = [await inspector.boundingBox(), await drawings.boundingBox()]
  expect(inner?.width).toBeGreaterThan(100)
  expect((inner?.x ?? 0) + (inner?.width ?? 0)).toBeLessThanOrEqual((outer?.x ?? 0) + (outer?.width ?? 0))
  // A place is asked about in the same way.
  await inspector.getByRole('button', { name: 'What is “Saddle along the lid”?' }).click()
  await expect.poll(() => drawings.count()).toBe(2)
  for (const colorScheme of ['light', 'dark'] as const) {
    await page.emulateMedia({ colorScheme })
    expect(await violationsOf(page)).toEqual([])
  }
  await ask.click()
  await expect.poll(() => drawings.count()).toBe(1)
})
