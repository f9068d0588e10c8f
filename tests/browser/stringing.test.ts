/** A tuning is chosen in the page, and the pulls on the screen are those of the engine. */
import type { Page } from 'playwright-core'
import { beforeAll, expect, inject, test } from 'vitest'
import { chooseGauges, loadsOf, solve } from '../../geometry/index.ts'
import { violationsOf } from '../support/axe.ts'
import { goTo, openPageWith, savedDesign } from '../support/bench-page.ts'
import { newContext } from '../support/browser.ts'
import { nothingWrong, type Watched, watchPage } from '../support/watch-page.ts'

const address = inject('address')

let page: Page
let watched: Watched

/** A page of its own with a sample in it, at Choose. */
async function openAtChoose(sample: string): Promise<void> {
  const context = await newContext({ viewport: { width: 1600, height: 1000 } })
  page = await context.newPage()
  watched = watchPage(page, address)
  await openPageWith(page, address, sample)
  await goTo(page, 'Choose')
}

beforeAll(async () => {
  await openAtChoose('wine-case-six-strings')
})

const tuning = () => page.getByRole('textbox', { name: 'Tuning', exact: true })
const table = () => page.getByRole('region', { name: 'Strings at pitch' })

test('a usual tuning is chosen, and each pull on the screen is the engine’s', async () => {
  await page.getByRole('combobox', { name: 'Usual tunings' }).selectOption({ index: 1 })
  await page.keyboard.press('Tab')
  const design = await savedDesign(page)
  expect(design.stringing.tuning.length).toBe(6)
  expect(await tuning().inputValue()).toBe(design.stringing.tuning.join(' '))
  const rows = await table().locator('tbody tr').allTextContents()
  const loads = loadsOf(solve(design)).strings
  expect(rows.length).toBe(loads.length)
  for (const [index, { atPitch }] of [...loads].reverse().entries())
    expect(rows[index]).toContain(`${atPitch?.tension.toFixed(0)} N`)
})

test('the nearest gauges of the stock are taken by one press and given back by one', async () => {
  const before = await savedDesign(page)
  const proposed = chooseGauges(before)?.strings.map((one) => one?.gauge)
  await page.getByRole('button', { name: 'Take these gauges' }).click()
  const taken = await savedDesign(page)
  expect(taken.strings.gauges).toEqual(proposed)
  expect(taken.stringing.makes.length).toBe(6)
  await page.getByRole('button', { name: 'Undo' }).click()
  expect(await savedDesign(page)).toEqual(before)
})

test('nonsense for a pitch keeps the last good tuning and says what would do', async () => {
  const before = await savedDesign(page)
  await tuning().fill('E2 X9')
  await tuning().press('Enter')
  await page.getByText('this is neither a note nor a frequency').waitFor()
  expect((await savedDesign(page)).stringing).toEqual(before.stringing)
  await tuning().press('Escape')
  expect(await tuning().inputValue()).toBe(before.stringing.tuning.join(' '))
})

test('pitches typed in hertz are taken, and one step back brings the old ones', async () => {
  const before = await savedDesign(page)
  await tuning().fill('82.41 Hz, 110 Hz, 146.83 Hz, 196 Hz, 246.94 Hz, 329.63 Hz')
  await tuning().press('Enter')
  const typed = await savedDesign(page)
  expect(typed.stringing.tuning.length).toBe(6)
  const pitches = loadsOf(solve(typed)).strings.map((one) => one.atPitch?.pitch.hertz)
  // Open strings of a guitar as printed: University Physics, Volume 1, sec. 16.3, "The Wave Speed of a Guitar String".
  expect(pitches).toEqual([82.41, 110, 146.83, 196, 246.94, 329.63])
  await tuning().press('Tab')
  await page.getByRole('button', { name: 'Undo' }).click()
  expect(await tuning().inputValue()).toBe(before.stringing.tuning.join(' '))
})

test('three strings in G D G: the pulls are seen, gauges chosen and given back', async () => {
  expect(watched).toEqual(nothingWrong)
  await page.context().close()
  await openAtChoose('tea-box-three-strings')
  const menu = page.getByRole('combobox', { name: 'Usual tunings' })
  await menu.selectOption('A2 E3 A3: root, fifth, octave')
  await menu.selectOption('G2 D3 G3: root, fifth, octave')
  await page.keyboard.press('Tab')
  const before = await savedDesign(page)
  expect(before.stringing.tuning).toEqual(['G2', 'D3', 'G3'])
  // Steel strings are commonly held between 60 and 80 N, wound ones a little over: common practice, no source.
  const pulls = await table().locator('tbody tr td:nth-child(4)').allTextContents()
  expect(pulls).toHaveLength(3)
  for (const pull of pulls) {
    expect(Number.parseFloat(pull)).toBeGreaterThan(55)
    expect(Number.parseFloat(pull)).toBeLessThan(90)
  }
  await page.getByRole('button', { name: 'Take these gauges' }).click()
  expect((await savedDesign(page)).strings.gauges).not.toEqual(before.strings.gauges)
  await page.getByRole('button', { name: 'Undo' }).click()
  expect(await savedDesign(page)).toEqual(before)
})

test('one string is typed by itself, and nonsense leaves it as it was', async () => {
  const pitch = page.getByRole('textbox', { name: 'Pitch of string 2' })
  await pitch.fill('H9')
  await pitch.press('Enter')
  await page.getByText('notes are called A to G here').waitFor()
  expect((await savedDesign(page)).stringing.tuning).toEqual(['G2', 'D3', 'G3'])
  await pitch.fill('E3')
  await pitch.press('Enter')
  expect((await savedDesign(page)).stringing.tuning).toEqual(['G2', 'E3', 'G3'])
  await page.getByRole('button', { name: 'Undo' }).focus()
  await page.getByRole('button', { name: 'Undo' }).click()
  expect(await pitch.inputValue()).toBe('D3')
})

test('a tone sounds only when it is pressed for, and stops', async () => {
  await page.getByRole('tab', { name: 'Tuned pure' }).click()
  await page.getByRole('button', { name: 'Sound string 1' }).click()
  const sounding = page.getByRole('button', { name: 'Sound string 1', pressed: true })
  await sounding.waitFor()
  await sounding.click()
  await page.getByRole('button', { name: 'Sound string 1', pressed: false }).waitFor()
})

test('the pull is drawn in Choose and taken off by one press', async () => {
  const drawing = page.getByRole('application', { name: /Drawing/ })
  const drawn = async () => {
    const layers = await drawing
      .locator('canvas')
      .evaluateAll((all) => all.map((canvas) => (canvas as HTMLCanvasElement).toDataURL()))
    return layers.join()
  }
  const toggle = page.getByRole('button', { name: 'Show the pull' })
  expect(await toggle.getAttribute('aria-pressed')).toBe('true')
  const shown = await drawn()
  await toggle.click()
  await expect.poll(drawn).not.toBe(shown)
  await toggle.click()
  await expect.poll(drawn).toBe(shown)
})

test('axe finds nothing on any side of what the strings do', async () => {
  const sides = page.getByRole('tablist', { name: 'What the strings do' }).getByRole('tab')
  expect(await sides.count()).toBe(6)
  await page.getByRole('button', { name: /String 1: what/ }).click()
  for (const side of await sides.all()) {
    await side.click()
    for (const table of await page.getByRole('tabpanel').locator('details').all())
      await table.evaluate((one: HTMLDetailsElement) => one.toggleAttribute('open', true))
    expect(await violationsOf(page)).toEqual([])
  }
})

test('nothing complained, nothing failed, nothing was asked of another host', () => {
  expect(watched).toEqual(nothingWrong)
})
