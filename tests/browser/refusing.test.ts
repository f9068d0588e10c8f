/** What is typed and what is opened: other units, nonsense, broken files and newer ones; and what is kept of it all. */
import type { Page } from 'playwright-core'
import { beforeEach, expect, test } from 'vitest'
import { type Design, solve } from '../../geometry/index.ts'
import { drag, goTo, onPlan, savedDesign } from '../support/bench-page.ts'
import { openFile } from '../support/open-file.ts'
import { sharePage } from '../support/shared-page.ts'

const shared = sharePage('tea-box-three-strings', { viewport: { width: 1600, height: 1000 } })
let page: Page
let start: Design

beforeEach(async () => {
  page = await shared.begin()
  await goTo(page, 'Lay out')
  start = await savedDesign(page)
})

const diameterOf = (design: Design) =>
  (design.things.find((one) => one.id === 'hole-treble') as { diameter?: number }).diameter

async function holeField() {
  await page
    .getByRole('button', { name: /Treble hole/ })
    .first()
    .click()
  return page.getByLabel('Through hole, across', { exact: true }).first()
}

test('on a design in inches a number may come in any unit', async () => {
  const field = await holeField()
  for (const [typed, millimetres] of [
    ['30 mm', 30],
    ['1 3/16', 30.1625],
    ['1-1/8"', 28.575],
    ['2.5cm', 25],
    ['1,25', 31.75],
  ] as const) {
    await field.click()
    await page.keyboard.press('Control+a')
    await page.keyboard.type(typed)
    await page.keyboard.press('Enter')
    expect(diameterOf(await savedDesign(page)), typed).toBeCloseTo(millimetres, 9)
  }
})

test('nonsense keeps the last good number, says what would do, and Escape brings it back', async () => {
  const field = await holeField()
  const good = await field.inputValue()
  for (const nonsense of ['three parsecs', '1/0', '-4', '900']) {
    await field.fill(nonsense)
    await page.keyboard.press('Enter')
    expect(await field.getAttribute('aria-invalid')).toBe('true')
    const fault = page.locator(`[id="${await field.getAttribute('aria-describedby')}"]`)
    // A whole sentence that repeats what was read, so that it can be found and mended.
    expect(await fault.textContent()).toMatch(/^[A-Z“"0-9−-].{15,}\.$/)
    expect(await savedDesign(page)).toEqual(start)
    expect(await field.inputValue()).toBe(nonsense)
    await field.press('Escape')
    expect(await field.inputValue()).toBe(good)
    expect(await fault.count()).toBe(0)
  }
})

test('a broken file and one of a newer version are refused in a sentence, and the design stays', async () => {
  for (const [text, words] of [
    ['{"format":"lidwright","version":1,', 'not JSON'],
    ['{"format":"lidwright","version":99}', 'newer'],
    ['{"format":"lidwright","version":1,"box":{"length":"long"}}', 'box.length'],
  ] as const) {
    await openFile(page, {
      name: 'x.lidwright.json',
      mimeType: 'application/json',
      buffer: Buffer.from(text),
    })
    await page.getByRole('dialog').getByText(new RegExp(words)).first().waitFor()
    await page.keyboard.press('Escape')
    await page.getByRole('dialog').waitFor({ state: 'hidden' })
    expect(await savedDesign(page)).toEqual(start)
  }
})

test('what was edited is there again after the page is loaded anew', async () => {
  const layout = solve(start)
  const hole = layout.placed.find((one) => one.thing.id === 'hole-treble')
  if (!hole) throw new Error('there is no treble hole')
  const at = await onPlan(page, { x: hole.at.x + layout.panels.lid.originX, y: hole.at.y })
  await drag(page, at, { x: 9 * at.scale, y: 0 })
  const edited = await savedDesign(page)
  expect(edited).not.toEqual(start)
  await page.getByText(/^kept \d/).waitFor()
  await page.reload()
  await page.getByRole('navigation', { name: /Places/ }).waitFor()
  await expect.poll(() => savedDesign(page)).toEqual(edited)
})

test('what was typed and not taken over goes with the design it was typed into', async () => {
  await goTo(page, 'Survey')
  const field = page.getByLabel('Length', { exact: true }).first()
  const good = await field.inputValue()
  await field.fill('eight-ish')
  await page.keyboard.press('Enter')
  expect(await field.getAttribute('aria-invalid')).toBe('true')
  // Another design of the very same length: nothing in the field itself says that it is another.
  const buffer = Buffer.from(JSON.stringify({ ...start, title: 'Twin box' }))
  await openFile(page, { name: 'twin.lidwright.json', mimeType: 'application/json', buffer })
  await page.waitForFunction(() =>
    [...document.querySelectorAll('input')].some((one) => one.value === 'Twin box'),
  )
  expect(await field.inputValue()).toBe(good)
  expect(await field.getAttribute('aria-invalid')).not.toBe('true')
})
