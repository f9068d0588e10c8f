/** What fits the box, as a builder asks it: rows come, one is tried and dropped, another kept as one step. */
import type { Page } from 'playwright-core'
import { afterEach, beforeEach, expect, inject, test } from 'vitest'
import { blocks, check, fittingOf, questionsFor, solve } from '../../geometry/index.ts'
import { violationsOf } from '../support/axe.ts'
import { openPageWith, savedDesign } from '../support/bench-page.ts'
import { newContext } from '../support/browser.ts'
import { nothingWrong, type Watched, watchPage } from '../support/watch-page.ts'

const address = inject('address')
let page: Page
let watched: Watched

beforeEach(async () => {
  const context = await newContext({ viewport: { width: 1024, height: 768 } })
  page = await context.newPage()
  watched = watchPage(page, address)
  await openPageWith(page, address, 'tea-box-three-strings')
  await page.keyboard.press('2')
  await page.getByRole('button', { name: 'What fits this box?' }).click()
  await page.getByText(/rows can be built/).waitFor()
  return () => context.close()
})
afterEach(() => expect(watched).toEqual(nothingWrong))

const rows = () => page.getByRole('button', { name: /^Try / })
const tried = () => page.locator('tr.tried').count()

test('a row is tried without a trace, and kept as one step that undo takes back', async () => {
  const start = await savedDesign(page)
  const fitting = fittingOf(start, questionsFor(start))
  while (fitting.step()) {
    // Each step is a row.
  }
  const fits = fitting.rows.filter((row) => row.numbers).length
  expect(
    await page
      .getByText(/rows can be built/)
      .first()
      .textContent(),
  ).toBe(`${fits} of ${fitting.total} rows can be built`)
  await rows().nth(3).click()
  await page.getByText('On trial:').waitFor()
  await page.keyboard.press('Escape')
  await expect.poll(tried).toBe(0)
  expect(await savedDesign(page)).toEqual(start)
  // By keys alone: down to another row, tried, and left.
  await rows().first().focus()
  await page.keyboard.press('ArrowDown')
  await page.keyboard.press('Enter')
  await expect.poll(tried).toBe(1)
  await page.keyboard.press('3')
  await page.locator('.place-lay-out').waitFor()
  expect(await savedDesign(page)).toEqual(start)
  await page.keyboard.press('2')
  await page
    .getByText(/rows can be built/)
    .first()
    .waitFor()
  const wanted = await rows().nth(2).getAttribute('aria-label')
  await rows().nth(2).click()
  await page.getByRole('button', { name: 'Keep this' }).click()
  const kept = await savedDesign(page)
  const row = fitting.rows.find(
    (one) =>
      one.design.scale.length === kept.scale.length &&
      one.count === kept.strings.count &&
      one.place === (kept.saddle.place as { share: number }).share,
  )
  expect(row?.numbers, wanted ?? '').not.toBeNull()
  expect(kept.stringing.tuning).toEqual(row?.design.stringing.tuning)
  expect(
    check(solve(kept)).filter((one) => blocks(one) && one.about.length === 1 && one.about[0] === 'neck'),
  ).toEqual([])
  await page.keyboard.press('Control+z')
  expect(await savedDesign(page)).toEqual(start)
})

test('what is cared for sorts, and filters leave out', async () => {
  const first = () => rows().first().getAttribute('aria-label')
  const before = await first()
  for (const name of [
    'Room to spare',
    'Pull as wanted',
    'A stiff neck',
    'Frets off the body',
    'Balance at the body',
  ])
    await page.getByRole('slider', { name }).fill('0')
  await page.getByRole('slider', { name: 'Short overall' }).fill('5')
  await expect.poll(first).not.toBe(before)
  const count = await rows().count()
  await page.getByRole('combobox', { name: 'Strings' }).selectOption('4')
  await expect.poll(() => rows().count()).toBeLessThan(count)
  for (const name of await rows().evaluateAll((all) => all.map((one) => one.getAttribute('aria-label'))))
    expect(name).toContain('4 strings')
  const overall = await page.locator('.fit-table tbody tr td:nth-child(6)').allTextContents()
  expect(overall.length).toBeGreaterThan(1)
})

test('four variants are held at the most, drawn over the plan, and stand side by side', async () => {
  const hold = page.getByRole('button', { name: /^Hold .* beside$/ })
  for (let index = 0; index < 4; index++) await hold.nth(index).click()
  expect(await hold.nth(4).isDisabled()).toBe(true)
  await page.getByRole('button', { name: 'Side by side (4)' }).click()
  const table = page.getByRole('table', { name: /variants held beside it/ })
  const heads = await table.locator('thead th').allTextContents()
  expect(heads.slice(1)).toHaveLength(5)
  const overall = await table
    .getByRole('row', { name: /^Overall/ })
    .getByRole('cell')
    .allTextContents()
  expect(overall).toHaveLength(5)
  // Under the numbers stands what differs, as two versions are compared.
  await table
    .getByRole('row', { name: /^Scale length/ })
    .first()
    .waitFor()
  await table.getByRole('button', { name: /^Let 2/ }).click()
  await page.getByRole('button', { name: 'Side by side (3)' }).waitFor()
  expect(await violationsOf(page, { include: '.place' })).toEqual([])
})
