/** A tuning is chosen in the page, and the pulls on the screen are those of the engine. */
import { readFileSync } from 'node:fs'
import type { Browser, Page } from 'playwright-core'
import { afterAll, beforeAll, expect, inject, test } from 'vitest'
import { chooseGauges, type Design, loadsOf, readDesign, solve } from '../../geometry/index.ts'
import { launch } from '../support/browser.ts'
import { openFile } from '../support/open-file.ts'
import { nothingWrong, type Watched, watchPage } from '../support/watch-page.ts'

const address = inject('address')
const SAMPLE = new URL('../../sample-boxes/wine-case-six-strings.lidwright.json', import.meta.url)

let browser: Browser
let page: Page
let watched: Watched

beforeAll(async () => {
  browser = await launch()
  page = await browser.newPage({ viewport: { width: 1600, height: 1000 } })
  watched = watchPage(page, address)
  await page.goto(address)
  await page.getByRole('button', { name: 'Look around first' }).click()
  await page.waitForLoadState('networkidle')
  await openFile(page, {
    name: 'case.lidwright.json',
    mimeType: 'application/json',
    buffer: readFileSync(SAMPLE),
  })
  await page
    .getByRole('navigation', { name: /Places/ })
    .getByRole('button', { name: 'Choose' })
    .click()
})
afterAll(() => browser?.close())

const tuning = () => page.getByRole('textbox', { name: 'Tuning', exact: true })
const table = () => page.getByRole('region', { name: 'Strings at pitch' })

async function savedDesign(): Promise<Design> {
  const [download] = await Promise.all([page.waitForEvent('download'), page.keyboard.press('Control+s')])
  const read = readDesign(readFileSync(await download.path(), 'utf8'))
  if (!read.ok) throw new Error(read.faults[0]?.sentence)
  return read.design
}

test('a usual tuning is chosen, and each pull on the screen is the engine’s', async () => {
  await page.getByRole('combobox', { name: 'Usual tunings' }).selectOption({ index: 1 })
  await page.keyboard.press('Tab')
  const design = await savedDesign()
  expect(design.stringing.tuning.length).toBe(6)
  expect(await tuning().inputValue()).toBe(design.stringing.tuning.join(' '))
  const rows = await table().locator('tbody tr').allTextContents()
  const loads = loadsOf(solve(design)).strings
  expect(rows.length).toBe(loads.length)
  for (const [index, { atPitch }] of [...loads].reverse().entries())
    expect(rows[index]).toContain(`${atPitch?.tension.toFixed(0)} N`)
})

test('the nearest gauges of the stock are taken by one press and given back by one', async () => {
  const before = await savedDesign()
  const proposed = chooseGauges(before)?.strings.map((one) => one?.gauge)
  await page.getByRole('button', { name: 'Take these gauges' }).click()
  const taken = await savedDesign()
  expect(taken.strings.gauges).toEqual(proposed)
  expect(taken.stringing.makes.length).toBe(6)
  await page.getByRole('button', { name: 'Undo' }).click()
  expect(await savedDesign()).toEqual(before)
})

test('nonsense for a pitch keeps the last good tuning and says what would do', async () => {
  const before = await savedDesign()
  await tuning().fill('E2 X9')
  await tuning().press('Enter')
  await page.getByText('this is neither a note nor a frequency').waitFor()
  expect((await savedDesign()).stringing).toEqual(before.stringing)
  await tuning().press('Escape')
  expect(await tuning().inputValue()).toBe(before.stringing.tuning.join(' '))
})

test('pitches typed in hertz are taken, and one step back brings the old ones', async () => {
  const before = await savedDesign()
  await tuning().fill('82.41 Hz, 110 Hz, 146.83 Hz, 196 Hz, 246.94 Hz, 329.63 Hz')
  await tuning().press('Enter')
  const typed = await savedDesign()
  expect(typed.stringing.tuning.length).toBe(6)
  const pitches = loadsOf(solve(typed)).strings.map((one) => one.atPitch?.pitch.hertz)
  // Open strings of a guitar as printed: University Physics, Volume 1, sec. 16.3, "The Wave Speed of a Guitar String".
  expect(pitches).toEqual([82.41, 110, 146.83, 196, 246.94, 329.63])
  await tuning().press('Tab')
  await page.getByRole('button', { name: 'Undo' }).click()
  expect(await tuning().inputValue()).toBe(before.stringing.tuning.join(' '))
})

test('nothing complained, nothing failed, nothing was asked of another host', () => {
  expect(watched).toEqual(nothingWrong)
})
