/** What is typed counts: the same figures anew, words not yet left when the page goes, keys where one sees what they do. */
import type { Page } from 'playwright-core'
import { beforeEach, expect, test } from 'vitest'
import { goTo, savedDesign } from '../support/bench-page.ts'
import { sharePage } from '../support/shared-page.ts'

const shared = sharePage('tea-box-three-strings', { viewport: { width: 1280, height: 900 } })
let page: Page

beforeEach(async () => {
  page = await shared.begin()
})

async function chooseTrebleHole() {
  await goTo(page, 'Lay out')
  const design = await savedDesign(page)
  await page
    .getByRole('button', { name: /Treble hole/ })
    .first()
    .click()
  return design
}

/** Not while the page still fetches its other places: what is broken off counts as a failure. */
async function loadAgain() {
  await page.waitForLoadState('networkidle')
  await page.reload()
}

async function type(field: ReturnType<Page['getByLabel']>, words: string, leave: string) {
  await field.click()
  await page.keyboard.press('Control+a')
  await page.keyboard.type(words)
  await page.keyboard.press(leave)
}

test('figures typed anew are meant, however finely the length was stated; a slip taken back is not', async () => {
  await goTo(page, 'Survey')
  const length = page.getByLabel('Length', { exact: true }).first()
  const lengthNow = async () => (await savedDesign(page)).box.length
  await type(length, '240 mm', 'Tab')
  expect(await lengthNow()).toBe(240)
  const shown = await length.inputValue()
  expect(shown).toMatch(/^9 7\/16|^9 15\/32|^9 29\/64/)
  // Passing through, and a letter typed and taken back, leave the finer length.
  await length.click()
  await page.keyboard.press('Tab')
  expect(await lengthNow()).toBe(240)
  await length.click()
  await page.keyboard.press('End')
  await page.keyboard.type('x')
  await page.keyboard.press('Backspace')
  await page.keyboard.press('Tab')
  expect(await lengthNow()).toBe(240)
  // Typed anew, one sign too many and that one taken back.
  await length.click()
  await page.keyboard.press('Control+a')
  await page.keyboard.type(`${shown}5`)
  await page.keyboard.press('Backspace')
  await page.keyboard.press('Tab')
  const [whole = 0, over = 0, under = 1] = shown.split(/[ /]/).map(Number)
  expect(await lengthNow()).toBeCloseTo((whole + over / under) * 25.4, 9)
})

test('a limit is told in millimetres and in the unit of the rule, and nothing is changed', async () => {
  await goTo(page, 'Survey')
  const before = await savedDesign(page)
  const length = page.getByLabel('Length', { exact: true }).first()
  await type(length, '-5', 'Enter')
  await page.getByText('Read −127 mm; at least 40 mm (1.575 in) is wanted.').waitFor()
  await type(length, '100', 'Enter')
  await page.getByText('Read 2540 mm; at most 1500 mm (59.055 in) is wanted.').waitFor()
  await page.keyboard.press('Escape')
  expect(await savedDesign(page)).toEqual(before)
})

test('words still in their field when the page is loaded again are kept', async () => {
  await goTo(page, 'Survey')
  const title = page.getByRole('textbox', { name: 'Title' }).first()
  await title.click()
  await page.keyboard.press('Control+a')
  await page.keyboard.type('A box half named')
  await loadAgain()
  await page.waitForFunction(() =>
    [...document.querySelectorAll('input')].some((one) => one.value === 'A box half named'),
  )
  await page.waitForLoadState('networkidle')
})

test('Delete removes things where they are laid out, and nowhere else', async () => {
  const before = await chooseTrebleHole()
  for (const place of ['Survey', 'Choose', 'Prove', 'Transfer', 'Record']) {
    await goTo(page, place)
    await page.evaluate(() => (document.activeElement as HTMLElement | null)?.blur())
    await page.keyboard.press('Delete')
    await page.keyboard.press('Control+a')
    await page.keyboard.press('Backspace')
    expect(await savedDesign(page), place).toEqual(before)
  }
  for (const place of ['Survey', 'Transfer', 'Record']) {
    await goTo(page, place)
    await page.evaluate(() => (document.activeElement as HTMLElement | null)?.blur())
    await page.keyboard.press('ArrowUp')
    expect(await savedDesign(page), place).toEqual(before)
  }
  await goTo(page, 'Lay out')
  await page.evaluate(() => (document.activeElement as HTMLElement | null)?.blur())
  await page.keyboard.press('Delete')
  const after = await savedDesign(page)
  expect(after.things.map(({ id }) => id)).not.toContain('hole-treble')
})

test('a row is not made while a field of it cannot be read', async () => {
  const before = await chooseTrebleHole()
  await page.evaluate(() => (document.activeElement as HTMLElement | null)?.blur())
  await page.keyboard.press('r')
  const dialog = page.getByRole('dialog')
  const count = dialog.getByLabel('How many in all', { exact: true })
  for (const [typed, said] of [
    ['x', '“x” is no number'],
    ['', 'Nothing is written here'],
  ] as const) {
    await count.fill(typed)
    await dialog.getByRole('button', { name: 'Make it' }).click()
    await dialog.getByText(said).waitFor()
    expect(await count.evaluate((one) => one === document.activeElement)).toBe(true)
  }
  await page.keyboard.press('Escape')
  await page.keyboard.press('Escape')
  expect(await savedDesign(page)).toEqual(before)
})

test('no size as built is less than nothing', async () => {
  await goTo(page, 'Record')
  await page.getByLabel('Measure again').selectOption({ index: 1 })
  const built = page.getByLabel(/^Built: /).first()
  await type(built, '-4', 'Enter')
  const said = page.getByText('no size is less than nothing')
  await said.waitFor()
  // It stands under its own line and over no other figure.
  const [line, cell] = await Promise.all([
    said.boundingBox(),
    said.locator('xpath=ancestor::td').boundingBox(),
  ])
  if (!line || !cell) throw new Error('the sentence is not on the page')
  expect(line.x + line.width).toBeLessThanOrEqual(cell.x + cell.width)
  expect((await savedDesign(page)).record.built.every((row) => row.built >= 0)).toBe(true)
})

test('loading the page again comes back to the place that was open', async () => {
  await goTo(page, 'Prove')
  await loadAgain()
  await page.locator('main.place-prove').waitFor()
  await goTo(page, 'Survey')
  await loadAgain()
  await page.locator('main.place-survey').waitFor()
  await page.waitForLoadState('networkidle')
})
