/** Everybody can reach everything: no violation that axe knows in any place, in both schemes; the keyboard alone does it. */
import { readFileSync } from 'node:fs'
import AxeBuilder from '@axe-core/playwright'
import type { Browser, Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, inject, test } from 'vitest'
import { readDesign } from '../../geometry/index.ts'
import { launch } from '../support/browser.ts'
import { openFile } from '../support/open-file.ts'

const address = inject('address')
const SAMPLE = new URL('../../sample-boxes/watch-box-tight.lidwright.json', import.meta.url)
const PLACES = ['Survey', 'Choose', 'Lay out', 'Prove', 'Transfer']

let browser: Browser

beforeAll(async () => {
  browser = await launch()
})
afterAll(() => browser?.close())

async function violations(page: Page): Promise<string[]> {
  const { violations: found } = await new AxeBuilder({ page }).analyze()
  return found.map(({ id, nodes }) => `${id}: ${nodes.map(({ target }) => target.join(' ')).join(', ')}`)
}

async function withSample(page: Page) {
  await page.getByRole('button', { name: 'Look around first' }).click()
  await page.waitForLoadState('networkidle')
  const file = { name: 'box.lidwright.json', mimeType: 'application/json', buffer: readFileSync(SAMPLE) }
  await openFile(page, file)
  await page.waitForFunction(() =>
    [...document.querySelectorAll('input')].some((one) => one.value.startsWith('Watch box')),
  )
}

const place = (page: Page, name: string) =>
  page
    .getByRole('navigation', { name: /Places/ })
    .getByRole('button', { name: new RegExp(`^${name}`) })
    .click()

describe.each(['light', 'dark'] as const)('in the %s scheme', (colorScheme) => {
  test('axe finds nothing in the first form and in any place', async () => {
    const context = await browser.newContext({ colorScheme, viewport: { width: 1280, height: 900 } })
    const page = await context.newPage()
    await page.goto(address)
    await page.getByRole('dialog').waitFor()
    expect(await violations(page)).toEqual([])
    await withSample(page)
    for (const name of PLACES) {
      await place(page, name)
      await page.waitForLoadState('networkidle')
      expect(await violations(page), name).toEqual([])
    }
    await context.close()
  })
})

test('the keyboard alone: to a hole in the list, nudged by one step of the rule, undone, saved', async () => {
  const page = await browser.newPage({ viewport: { width: 1280, height: 900 } })
  await page.goto(address)
  await withSample(page)
  const saved = async () => {
    const [download] = await Promise.all([page.waitForEvent('download'), page.keyboard.press('Control+s')])
    const read = readDesign(readFileSync(await download.path(), 'utf8'))
    if (!read.ok) throw new Error(read.faults[0]?.sentence)
    const hole = read.design.things.find((thing) => thing.id === 'hole-treble')
    return hole?.along
  }
  await page.keyboard.press('3')
  const hole = page.getByRole('button', { name: /Treble hole/ }).first()
  await hole.waitFor()
  let steps = 0
  while (!(await hole.evaluate((one) => one === document.activeElement))) {
    if (++steps > 80) throw new Error('eighty times Tab does not lead to the treble hole')
    await page.keyboard.press('Tab')
  }
  await page.keyboard.press('Enter')
  expect(await saved()).toBe(38)
  await page.keyboard.press('ArrowRight')
  expect(await saved()).toBe(39)
  await page.keyboard.press('Shift+ArrowLeft')
  expect(await saved()).toBe(29)
  await page.keyboard.press('Control+z')
  await page.keyboard.press('Control+z')
  expect(await saved()).toBe(38)
  await page.close()
})
