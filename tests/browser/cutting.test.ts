/** Transfer for machines, with the real mouse: the line of the tool, sheets of stock, a part too large, the files. */
import type { Page } from 'playwright-core'
import { beforeAll, expect, inject, test } from 'vitest'
import { violationsOf } from '../support/axe.ts'
import { goTo, textOf } from '../support/bench-page.ts'
import { newContext } from '../support/browser.ts'
import { readWithDxf } from '../support/readDxf.ts'
import { nothingWrong, type Watched, watchPage } from '../support/watch-page.ts'

const address = inject('address')
let page: Page
let watched: Watched

beforeAll(async () => {
  const context = await newContext({ viewport: { width: 1024, height: 768 } })
  page = await context.newPage()
  watched = watchPage(page, address)
  await page.goto(address)
  await page.getByRole('button', { name: 'Look around first' }).click()
  await goTo(page, 'Transfer')
})

test('a router: its line over the part, its cutter to the thousandth, nothing that a reader cannot reach', async () => {
  await page.getByRole('radio', { name: 'router' }).check()
  await page.getByRole('textbox', { name: 'Cutter, mm' }).fill('3')
  await page.getByRole('textbox', { name: 'Cutter, mm' }).press('Enter')
  await page.getByRole('button', { name: /^Neck-end wall/ }).click()
  await page.getByText('Cutter 3.00 mm. The outline is followed 1.50 mm outside it').waitFor()
  expect(await page.locator('.part-large .tool-swath').count()).toBeGreaterThan(0)
  expect(await violationsOf(page)).toEqual([])
})

test('sheets of stock say how full they are, and what is too large for them', async () => {
  await page.getByLabel('The parts come').selectOption('laid out on stock')
  await page.getByRole('list', { name: 'Sheets of stock' }).waitFor()
  expect(await page.getByRole('list', { name: 'Sheets of stock' }).textContent()).toMatch(
    /\d % full\. Base, Lid/,
  )
  expect(await violationsOf(page)).toEqual([])
  await page.getByRole('textbox', { name: 'Sheet, long' }).fill('200')
  await page.getByRole('textbox', { name: 'Sheet, long' }).press('Enter')
  expect(await page.getByText(/^Lid is 24[0-9.]+ mm × /).textContent()).toContain('larger sheet, or')
  await page.getByRole('textbox', { name: 'Sheet, long' }).fill('600')
  await page.getByRole('textbox', { name: 'Sheet, long' }).press('Enter')
  await page.getByRole('list', { name: 'Sheets of stock' }).waitFor()
})

test('the files of the sheets come down, each line where the cutter runs', async () => {
  await page.getByRole('radio', { name: 'DXF' }).check()
  await page.getByRole('radio', { name: '12', exact: true }).check()
  const despite = page.getByLabel('Export all the same')
  if (await despite.isVisible()) await despite.check()
  const coming = page.waitForEvent('download')
  await page.getByRole('button', { name: /^Save \d+ parts/ }).click()
  const text = await textOf(await coming)
  expect(text).toContain('AC1009')
  expect(readWithDxf(text).contours.get('CUT-OUTSIDE')?.length).toBeGreaterThan(0)
  expect(text).toContain('router, cutter 3.0 mm')
  await page.getByText(/Saved \d files\..*% full/).waitFor()
  expect(watched).toEqual(nothingWrong)
})
