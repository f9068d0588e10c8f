/** Cures in Prove and places proposed in Lay out, as a builder presses them; both panels for everybody. One page for all. */
import { AxeBuilder } from '@axe-core/playwright'
import type { Page } from 'playwright-core'
import { afterEach, beforeAll, expect, inject, test } from 'vitest'
import { blocks, check, type Design, solve, startingDesign } from '../../geometry/index.ts'
import { goTo, savedDesign, textOf } from '../support/bench-page.ts'
import { newContext } from '../support/browser.ts'
import { openFile } from '../support/open-file.ts'
import { readCsv } from '../support/readCsv.ts'
import { nothingWrong, type Watched, watchPage } from '../support/watch-page.ts'

let page: Page
let watched: Watched

/** Its hole lies over the neck, and its blank is too short by some millimetres. */
const muddle = (): Design => {
  const plain = startingDesign({ length: 240, width: 180, depth: 60, strings: 3, hand: 'right' })
  const { needs } = solve(plain).neck
  return {
    ...plain,
    title: 'Muddle',
    neck: { ...plain.neck, length: Math.floor(needs.total) - 6 },
    things: [{ ...plain.things[0], id: 'hole', name: 'Hole', along: 60, across: 20, locked: false } as never],
  }
}

beforeAll(async () => {
  page = await (await newContext({ viewport: { width: 1024, height: 768 } })).newPage()
  const address = inject('address')
  watched = watchPage(page, address)
  await page.goto(address)
  await page.getByRole('button', { name: 'Look around first' }).click()
  const buffer = Buffer.from(JSON.stringify(muddle()))
  await openFile(page, { name: 'muddle.lidwright.json', mimeType: 'application/json', buffer })
  await page.waitForFunction(() =>
    [...document.querySelectorAll('input')].some((one) => one.value === 'Muddle'),
  )
})
afterEach(() => expect(watched).toEqual(nothingWrong))

/** What axe finds in a part of the page, in both schemes. */
async function violations(part: string): Promise<string[]> {
  const found: string[] = []
  for (const colorScheme of ['light', 'dark'] as const) {
    await page.emulateMedia({ colorScheme })
    const { violations: told } = await new AxeBuilder({ page }).setLegacyMode().include(part).analyze()
    found.push(...told.map(({ id, nodes }) => `${colorScheme} ${id}: ${nodes[0]?.html}`))
  }
  await page.emulateMedia({ colorScheme: 'light' })
  return found
}

const stopsOf = (design: Design) => check(solve(design)).filter(blocks)

test('a cure is one press and one step of undo; cure all leaves no stop', async () => {
  const start = await savedDesign(page)
  const before = stopsOf(start).map((one) => one.key)
  expect(before.length).toBeGreaterThan(1)
  await goTo(page, 'Prove')
  const cure = page.getByRole('button', { name: /^Move “Hole” .* towards the/ }).first()
  await cure.click()
  const cured = await savedDesign(page)
  expect(stopsOf(cured).length).toBeLessThan(before.length)
  expect(stopsOf(cured).some((one) => one.about.includes('hole'))).toBe(false)
  await page.keyboard.press('Control+z')
  expect(await savedDesign(page)).toEqual(start)
  await page.getByRole('button', { name: 'Cure all…' }).click()
  const doAll = page.getByRole('button', { name: /^Do (it|all \d)/ })
  await doAll.waitFor()
  expect(await violations('.place')).toEqual([])
  await doAll.click()
  expect(stopsOf(await savedDesign(page))).toEqual([])
  await page.keyboard.press('Control+z')
  expect(await savedDesign(page)).toEqual(start)
})

test('things are added and placed, an answer is tried without a trace and kept as one step', async () => {
  const start = await savedDesign(page)
  await goTo(page, 'Lay out')
  await page.getByRole('button', { name: 'Place for me…' }).click()
  const panel = page.getByRole('region', { name: 'Place for me' })
  await panel.getByRole('spinbutton', { name: 'Sound hole' }).fill('1')
  await panel.getByRole('spinbutton', { name: 'Jack' }).fill('1')
  await panel.getByRole('button', { name: 'Find places' }).click()
  await panel.getByText(/worth telling/).waitFor()
  expect(await violations('.place-for-me')).toEqual([])
  const answers = panel.getByRole('list', { name: 'Answers' }).getByRole('button', { name: /^Try answer/ })
  expect(await answers.count()).toBe(3)
  await answers.first().click()
  await page.keyboard.press('Escape')
  expect(await savedDesign(page)).toEqual(start)
  await answers.nth(1).click()
  await panel.getByRole('button', { name: 'Keep it' }).click()
  const kept = await savedDesign(page)
  expect(kept.things.map((thing) => thing.kind)).toEqual(['sound-hole', 'sound-hole', 'jack'])
  const ids = kept.things.map((thing) => thing.id)
  expect(stopsOf(kept).filter((one) => one.about.some((id) => ids.includes(id)))).toEqual([])
  await page.keyboard.press('Control+z')
  expect(await savedDesign(page)).toEqual(start)
})

test('a change to the design closes what was proposed for the one before', async () => {
  await page.getByRole('button', { name: 'Place for me…' }).click()
  const panel = page.getByRole('region', { name: 'Place for me' })
  await panel.getByRole('button', { name: 'Find places' }).click()
  await panel.getByRole('button', { name: /^Try answer 1/ }).waitFor()
  // Brings back what was undone last: a change that comes from elsewhere.
  await page.keyboard.press('Control+Shift+z')
  await expect.poll(() => panel.count()).toBe(0)
  await page.keyboard.press('Control+z')
})

test('the fit table is saved as a file with every row', async () => {
  await goTo(page, 'Choose')
  await page.getByRole('button', { name: 'What fits this box?' }).click()
  const status = page.getByText(/\d+ of [1-9]\d* rows can be built/).first()
  await status.waitFor()
  const [fits, total] = (await status.textContent())?.match(/\d+/g)?.map(Number) ?? []
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Save as CSV' }).click(),
  ])
  expect(download.suggestedFilename()).toBe('muddle-fit.csv')
  const csv = readCsv(await textOf(download))
  expect(csv.rows).toHaveLength(total ?? 0)
  expect(csv.column('Can be built').filter((text) => text === 'yes')).toHaveLength(fits ?? 0)
})
