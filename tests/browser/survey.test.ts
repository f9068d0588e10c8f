/** A crooked box is measured from the keyboard, a slip is asked about, and what was measured is what is cut. */
import type { Page } from 'playwright-core'
import { beforeAll, expect, inject, test } from 'vitest'
import { area, check, partsOf, solve, surveyOf, worstCasesOf } from '../../geometry/index.ts'
import { violationsOf } from '../support/axe.ts'
import { goTo, openPageWith, savedDesign } from '../support/bench-page.ts'
import { newContext } from '../support/browser.ts'
import { nothingWrong, type Watched, watchPage } from '../support/watch-page.ts'

const address = inject('address')

let page: Page
let watched: Watched

beforeAll(async () => {
  const context = await newContext({ viewport: { width: 1600, height: 1000 } })
  page = await context.newPage()
  watched = watchPage(page, address)
  await openPageWith(page, address, 'watch-box-tight')
  await goTo(page, 'Survey')
})

const entry = (name: string) => page.getByRole('textbox', { name, exact: true })
const says = () => page.locator('.survey-says')

/** Lengths typed one after another, Enter after each: the hands never leave the keys. */
async function typeAll(...lengths: string[]): Promise<void> {
  for (const length of lengths) {
    await page.keyboard.type(length)
    await page.keyboard.press('Enter')
  }
}

test('a box measured once asks for no more than before', async () => {
  await entry('Length').waitFor()
  expect(await page.getByRole('list', { name: 'Sides and diagonals' }).count()).toBe(0)
  expect((await savedDesign(page)).box.survey).toBeUndefined()
})

test('six lengths and six Enters make a crooked box, in any units', async () => {
  await page.getByRole('button', { name: 'Measure sides and diagonals' }).click()
  await entry('Bass side').focus()
  await typeAll('218.6', '22.09cm', '149.5', '5.9527559in', '266.8', '265.7')
  const { box } = await savedDesign(page)
  expect(box.survey?.bass).toEqual([218.6])
  expect(box.survey?.treble[0]).toBeCloseTo(220.9, 9)
  expect(box.survey?.tailEnd[0]).toBeCloseTo(151.2, 5)
  expect(box.survey?.diagonalFromTreble).toEqual([265.7])
  const result = surveyOf(box, 1)
  expect(result?.ok && result.survey.redundancy).toBe(1)
  // Length and width are the readings' business now; the drawing enlarges what is crooked, and says so.
  expect(await entry('Length').count()).toBe(0)
  await page.getByText(/Crookedness drawn \d+ times its size/).waitFor()
  await says()
    .getByText(/out of square by/)
    .waitFor()
  expect(await entry('Wall at neck-end bass').evaluate((input) => document.activeElement === input)).toBe(
    true,
  )
})

test('the outline that is cut has the area the law of cosines gives', async () => {
  const lid = partsOf(solve(await savedDesign(page))).find((part) => part.id === 'lid')
  if (!lid) throw new Error('there is no lid')
  // 33037.89 mm² from four sides and one diagonal; the other diagonal, read to a tenth, moves it by a few.
  expect(Math.abs(area(lid.outline) - 33037.89)).toBeLessThan(10)
})

test('several of one side go in together, or with Shift and Enter; the last is taken back by one key', async () => {
  await entry('Bass side').focus()
  await page.keyboard.type('218.7; 218.4')
  await page.keyboard.press('Shift+Enter')
  expect(await entry('Bass side').evaluate((input) => document.activeElement === input)).toBe(true)
  expect((await savedDesign(page)).box.survey?.bass).toEqual([218.6, 218.7, 218.4])
  await page.keyboard.press('Backspace')
  expect((await savedDesign(page)).box.survey?.bass).toEqual([218.6, 218.7])
})

test('an inch too many is asked about and never mended unasked', async () => {
  await entry('Treble side').focus()
  await typeAll('246.3')
  await says()
    .getByText(/The treble side was read as 246\.3 mm; an inch less, 220\.9 mm/)
    .waitFor()
  expect((await savedDesign(page)).box.survey?.treble[1]).toBe(246.3)
  await page.getByRole('button', { name: /Take away 246\.3 mm of treble side, which disagrees/ }).waitFor()
  await page.getByRole('button', { name: /^It was 220\.9 mm: the treble side/ }).click()
  expect((await savedDesign(page)).box.survey?.treble[1]).toBeCloseTo(220.9, 9)
  expect(
    await says()
      .getByText(/an inch less/)
      .count(),
  ).toBe(0)
})

test('nonsense stays in its field with a sentence, and the readings stay as they were', async () => {
  const before = (await savedDesign(page)).box.survey
  await entry('Neck end').focus()
  await typeAll('14x')
  await page.getByRole('alert').filter({ hasText: '14x' }).waitFor()
  await page.keyboard.press('Escape')
  await entry('Neck end').fill('19000')
  await page.keyboard.press('Enter')
  await page.getByRole('alert').filter({ hasText: '10 m is the longest' }).waitFor()
  await page.keyboard.press('Escape')
  expect((await savedDesign(page)).box.survey).toEqual(before)
})

test('is reachable, by the rules of the web', async () => {
  expect(await violationsOf(page)).toEqual([])
})

test('Prove says how far each margin may be off, and what to measure again', async () => {
  const design = await savedDesign(page)
  const layout = solve(design)
  const doubtful = check(layout).filter((one) => worstCasesOf(layout).get(one.key)?.doubtful)
  expect(doubtful.length).toBeGreaterThan(0)
  await goTo(page, 'Prove')
  const findings = page.getByRole('list', { name: 'Findings' })
  await findings
    .getByText(/^Measure this again:/)
    .first()
    .waitFor({ timeout: 20_000 })
  expect(await findings.getByText(/^Measure this again:/).count()).toBe(doubtful.length)
})

test('all readings taken away leave the box as it was stated, and undo brings them back', async () => {
  await goTo(page, 'Survey')
  const before = (await savedDesign(page)).box.survey
  await page.getByRole('button', { name: 'Take all readings away' }).click()
  await entry('Length').waitFor()
  expect((await savedDesign(page)).box.survey).toBeUndefined()
  await page.getByRole('button', { name: 'Undo' }).click()
  expect((await savedDesign(page)).box.survey).toEqual(before)
  expect(watched).toEqual(nothingWrong)
})
