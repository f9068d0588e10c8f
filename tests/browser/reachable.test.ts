/** Everybody can reach everything: no violation that axe knows in any place, in both schemes; the keyboard alone does it. */
import type { Locator, Page } from 'playwright-core'
import { describe, expect, inject, test } from 'vitest'
import { solve } from '../../geometry/index.ts'
import { violationsOf } from '../support/axe.ts'
import { goTo, openSample, savedDesign } from '../support/bench-page.ts'
import { newContext } from '../support/browser.ts'
import { nothingWrong, watchPage } from '../support/watch-page.ts'

const address = inject('address')
const PLACES = ['Survey', 'Choose', 'Lay out', 'Prove', 'Transfer']

describe.each(['light', 'dark'] as const)('in the %s scheme', (colorScheme) => {
  const look = { rules: colorScheme === 'light' ? 'all' : 'colours' } as const

  test('axe finds nothing in the first form, in any place and in any dialog', async () => {
    const context = await newContext({ colorScheme, viewport: { width: 1280, height: 900 } })
    const page = await context.newPage()
    await page.goto(address)
    await page.getByRole('dialog').waitFor()
    expect(await violationsOf(page, look)).toEqual([])
    await page.keyboard.press('Escape')
    await openSample(page, 'watch-box-tight')
    for (const name of PLACES) {
      await goTo(page, name)
      await page.locator(`main.place-${name.toLowerCase().replace(' ', '-')}`).waitFor()
      expect(await violationsOf(page, look), name).toEqual([])
    }
    await goTo(page, 'Lay out')
    await page
      .getByRole('button', { name: /Treble hole/ })
      .first()
      .click()
    expect(await violationsOf(page, look), 'a hole is selected').toEqual([])
    for (const entry of [/sample/, /kept/, /actions/i]) {
      await page.getByRole('button', { name: 'File', exact: true }).click()
      if (entry.source === 'sample') expect(await violationsOf(page, look), 'the menu').toEqual([])
      await page.getByRole('menuitem', { name: entry }).click()
      await page.getByRole('dialog').waitFor()
      expect(await violationsOf(page, look), entry.source).toEqual([])
      await page.keyboard.press('Escape')
    }
    await context.close()
  })

  test('axe finds nothing on the faces folded out, beside the field of a curve and on the head', async () => {
    const context = await newContext({ colorScheme, viewport: { width: 1280, height: 900 } })
    const page = await context.newPage()
    await page.goto(address)
    await page.getByRole('dialog').waitFor()
    await page.keyboard.press('Escape')
    await openSample(page, 'ferry-crate-electric')
    await goTo(page, 'Lay out')
    await page.getByRole('button', { name: /^Leaf/ }).first().click()
    const inspector = page.getByRole('complementary', { name: 'What is selected' })
    await inspector.locator('[data-field=curve] textarea').waitFor()
    expect(await violationsOf(page, look), 'a curve is selected').toEqual([])
    await page.getByRole('button', { name: 'Fold out' }).click()
    await page.getByRole('button', { name: 'Headstock' }).first().click()
    await inspector.getByRole('button', { name: 'Typical tuners…' }).waitFor()
    expect(await violationsOf(page, look), 'folded out').toEqual([])
    await context.close()
  })
})

/** Presses Tab until something has the focus, as often as a patient person would. */
async function tabTo(page: Page, wanted: Locator) {
  await wanted.waitFor()
  for (let steps = 0; steps < 90; steps++) {
    if (await wanted.evaluate((one) => one === document.activeElement)) return
    await page.keyboard.press('Tab')
  }
  throw new Error(`ninety times Tab does not lead to ${wanted}`)
}

test('the keyboard alone: a box, a hole in the list, nudged, proved, undone, and its template saved', async () => {
  const page = await (await newContext({ viewport: { width: 1280, height: 900 } })).newPage()
  const watched = watchPage(page, address)
  await page.goto(address)
  const form = page.getByRole('dialog')
  await tabTo(page, form.getByRole('textbox', { name: 'Length', exact: true }))
  await page.keyboard.type('254')
  const done = form.getByRole('button', { name: 'Put it on the bench' })
  await tabTo(page, done)
  await page.keyboard.press('Enter')
  // Without a hand nothing is begun: the question comes into view and has the keyboard.
  await form.getByRole('alert').filter({ hasText: 'which hand' }).waitFor()
  const right = form.getByRole('radio', { name: 'right' })
  expect(await right.evaluate((one) => one === document.activeElement)).toBe(true)
  await page.keyboard.press('Space')
  await tabTo(page, done)
  await page.keyboard.press('Enter')
  await page.getByRole('region', { name: 'Plan, rule and section' }).waitFor()
  const across = async () =>
    solve(await savedDesign(page)).placed.find(({ thing }) => thing.id === 'hole-treble')?.at.y ?? Number.NaN
  const begun = await savedDesign(page)
  expect(begun.box.length).toBe(254)

  await page.keyboard.press('3')
  await tabTo(page, page.getByRole('button', { name: /Treble hole/ }).first())
  await page.keyboard.press('Enter')
  const before = await across()
  await page.keyboard.press('ArrowUp')
  expect(await across()).toBeCloseTo(before + 1, 6)
  for (let times = 0; times < 4; times++) await page.keyboard.press('Shift+ArrowUp')
  expect(await across()).toBeCloseTo(before + 41, 6)

  await page.keyboard.press('4')
  await tabTo(page, page.getByRole('button', { name: /To the edge of the face.*Treble hole/ }).first())
  await page.keyboard.press('Enter')
  await page.getByRole('button', { name: 'Mend it in Lay out' }).waitFor()
  for (let times = 0; times < 5; times++) await page.keyboard.press('Control+z')
  expect(await savedDesign(page)).toEqual(begun)

  await page.keyboard.press('5')
  await tabTo(page, page.getByRole('button', { name: 'Save only “Lid”' }))
  const [download] = await Promise.all([page.waitForEvent('download'), page.keyboard.press('Enter')])
  expect(download.suggestedFilename()).toMatch(/-lid\.svg$/)
  expect(watched).toEqual(nothingWrong)
  await page.close()
})
