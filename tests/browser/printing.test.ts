/** Paper as a builder prints it: chosen, corrected by the bars, seen on the map, made beside the page, stopped. */
import { readFileSync } from 'node:fs'
import type { BrowserContext, Download, Page } from 'playwright-core'
import { beforeAll, expect, inject, test } from 'vitest'
import { planPrint, STANDARD_SETUP } from '../../exporters/index.ts'
import { partsOf, solve } from '../../geometry/index.ts'
import { goTo, openPageWith, savedDesign } from '../support/bench-page.ts'
import { newContext } from '../support/browser.ts'
import { needPoppler } from '../support/outsideTools.ts'
import { boxesOf, wordsOf } from '../support/readPdf.ts'
import { nothingWrong, type Watched, watchPage } from '../support/watch-page.ts'

const address = inject('address')

let context: BrowserContext
let page: Page
let watched: Watched

beforeAll(async () => {
  needPoppler()
  context = await newContext({ viewport: { width: 1280, height: 900 } })
  page = await context.newPage()
  watched = watchPage(page, address)
  await openPageWith(page, address, 'wine-case-six-strings')
  await goTo(page, 'Transfer')
})

const save = () => page.getByRole('button', { name: /^Save the PDF/ })
const bytesOf = async (download: Download) => new Uint8Array(readFileSync(await download.path()))

test('the map shows the sheets that are printed, and the page answers while they are drawn', async () => {
  await page.getByLabel('Paper', { exact: true }).selectOption('letter')
  await page.getByRole('button', { name: 'On paper' }).click()
  const parts = partsOf(solve(await savedDesign(page)))
  const reading = planPrint(parts, { ...STANDARD_SETUP, paper: 'letter' })
  if (!reading.ok) throw new Error(reading.sentence)
  const lid = reading.plan.parts[0]
  const map = page.getByRole('img', { name: /^Lid on/ })
  await map.waitFor()
  expect(await map.locator('text.map-name').allTextContents()).toEqual(lid?.tiles.map(({ name }) => name))
  await page.evaluate(() => {
    const times: number[] = []
    Object.assign(window, { longTasks: times })
    new PerformanceObserver((list) => {
      for (const { duration } of list.getEntries()) times.push(duration)
    }).observe({ type: 'longtask' })
  })
  const [download] = await Promise.all([page.waitForEvent('download'), save().click()])
  // Chromium lists what holds the page up for 50 ms or more (W3C, Long Tasks API).
  expect(await page.evaluate(() => (window as unknown as { longTasks: number[] }).longTasks)).toEqual([])
  expect(download.suggestedFilename()).toBe('wine-case-six-strings-sheets-letter.pdf')
  const pdf = await bytesOf(download)
  const boxes = boxesOf(pdf, 'MediaBox')
  expect(boxes.length).toBeGreaterThanOrEqual(reading.plan.count)
  for (const [, , width = 0, height = 0] of boxes)
    expect([width, height].sort((a, b) => a - b).map((side) => side.toFixed(1))).toEqual(['215.9', '279.4'])
  expect(wordsOf(pdf, 1)).toContain('not corrected for a printer')
})

test('what the bars measure corrects the next print, is kept for this printer and is not in the design', async () => {
  const before = await savedDesign(page)
  await page.getByText(/^This printer/).click()
  const bar = page.getByLabel('Bar X', { exact: true })
  await bar.fill('80')
  await bar.press('Enter')
  await page.getByRole('alert').filter({ hasText: 'more than 10 % is no error of a printer' }).waitFor()
  expect(await page.getByRole('button', { name: /^Correct / }).count()).toBe(0)
  await bar.fill('94')
  await bar.press('Enter')
  await page.getByRole('alert').filter({ hasText: 'was "fit to page" on?' }).waitFor()
  await bar.fill('99.5')
  await bar.press('Enter')
  await page.getByRole('button', { name: 'Correct further prints' }).click()
  expect(await savedDesign(page)).toEqual(before)
  await page.reload()
  await goTo(page, 'Transfer')
  await page.getByText('This printer: corrected X × 1.005, Y × 1').waitFor()
  const [download] = await Promise.all([page.waitForEvent('download'), save().click()])
  expect(wordsOf(await bytesOf(download), 3)).toContain('corrected for this printer: X × 1.005, Y × 1')
})

test('a margin that leaves no room is refused where it is typed', async () => {
  const margin = page.getByLabel('White edge', { exact: true })
  await margin.fill('90')
  await margin.press('Enter')
  await page
    .getByRole('alert')
    .filter({ hasText: /leaves too little of Letter/ })
    .waitFor()
  await margin.press('Escape')
})

test('a long print shows how far it is and can be stopped: nothing is saved', async () => {
  let release = () => {}
  const held = new Promise<void>((resolve) => {
    release = resolve
  })
  await context.route('**/writePdf*.js', async (route) => {
    await held
    // Who asked has been ended meanwhile.
    await route.continue().catch(() => undefined)
  })
  let saved = 0
  page.on('download', () => saved++)
  await save().click()
  await page.getByRole('progressbar', { name: 'Sheets drawn' }).waitFor()
  await page.getByRole('button', { name: 'Stop' }).click()
  await page.getByText('Stopped. Nothing was saved.').waitFor()
  release()
  await context.unroute('**/writePdf*.js')
  const [download] = await Promise.all([page.waitForEvent('download'), save().click()])
  expect(saved).toBe(1)
  expect((await bytesOf(download)).length).toBeGreaterThan(10_000)
  expect(watched).toEqual(nothingWrong)
})
