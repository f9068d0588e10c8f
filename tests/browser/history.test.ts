/** History to any point, versions by name that outlive the page, and two of them compared in numbers. */
import type { Page } from 'playwright-core'
import { afterEach, beforeEach, expect, inject, test } from 'vitest'
import { goTo, openPageWith, savedDesign } from '../support/bench-page.ts'
import { newContext } from '../support/browser.ts'
import { nothingWrong, type Watched, watchPage } from '../support/watch-page.ts'

const address = inject('address')
let page: Page
let watched: Watched

beforeEach(async () => {
  const context = await newContext({ viewport: { width: 1280, height: 800 } })
  page = await context.newPage()
  watched = watchPage(page, address)
  await openPageWith(page, address, 'tea-box-three-strings')
  await goTo(page, 'Lay out')
  await page.locator('[data-origin-x]').first().waitFor()
  return () => context.close()
})
afterEach(() => expect(watched).toEqual(nothingWrong))

/** Moves the treble hole by so many steps of the rule, each an entry. */
async function nudge(times: number): Promise<void> {
  await page
    .getByRole('button', { name: /^Treble hole/ })
    .first()
    .click()
  for (let step = 0; step < times; step++) await page.keyboard.press('ArrowRight')
  // Said once the keys rest: by then all is entered.
  await page.getByText(/^Treble hole: .* from the neck-end edge/).waitFor({ state: 'attached' })
}

test('the list of steps leads back to any of them, and forward again', async () => {
  const start = await savedDesign(page)
  await nudge(3)
  const end = await savedDesign(page)
  await page.keyboard.press('h')
  const steps = page.getByRole('dialog').getByRole('region', { name: 'Steps' }).getByRole('button')
  await expect.poll(() => steps.filter({ hasText: 'Move Treble hole' }).count()).toBe(3)
  await steps.filter({ hasText: 'Open a file' }).click()
  await page.keyboard.press('Escape')
  expect(await savedDesign(page)).toEqual(start)
  await page.keyboard.press('h')
  await steps.first().click()
  await page.keyboard.press('Escape')
  expect(await savedDesign(page)).toEqual(end)
})

test('a version kept by name outlives the page; compared with now it tells the way in numbers', async () => {
  const start = await savedDesign(page)
  await page.keyboard.press('h')
  const dialog = page.getByRole('dialog')
  await dialog.getByLabel(/under a name/).fill('before moving the hole')
  await dialog.getByRole('button', { name: 'Keep', exact: true }).click()
  await dialog.getByText('before moving the hole').waitFor()
  await page.keyboard.press('Escape')
  await nudge(4)
  await page.getByText(/^kept \d/).waitFor()
  await page.reload()
  await goTo(page, 'Lay out')
  await page.keyboard.press('h')
  await dialog.getByRole('button', { name: 'Compare' }).click()
  const rows = dialog.getByRole('row')
  // Four steps of 1/32 in.
  await rows.filter({ hasText: 'stands along the face' }).filter({ hasText: '+1/8 in' }).first().waitFor()
  expect(await dialog.getByRole('img', { name: /the lid/ }).count()).toBe(2)
  await dialog.getByRole('button', { name: 'Back to the history' }).click()
  await dialog.getByRole('button', { name: 'Go back to it' }).click()
  await page.keyboard.press('Escape')
  expect(await savedDesign(page)).toEqual(start)
  await page.keyboard.press('Control+z')
  expect(await savedDesign(page)).not.toEqual(start)
})
