/** Record in a real browser: the sheet on its desk, written on with mouse and keyboard, undone, saved, and clean for axe. */
import { readFileSync } from 'node:fs'
import type { Page } from 'playwright-core'
import { expect, inject, test } from 'vitest'
import { makeBundle } from '../../exporters/bundle/bundle.ts'
import { carry } from '../../exporters/label/carried.ts'
import { readDesign, startingDesign } from '../../geometry/index.ts'
import { violationsOf } from '../support/axe.ts'
import { newContext } from '../support/browser.ts'
import { openFile } from '../support/open-file.ts'
import { nothingWrong, watchPage } from '../support/watch-page.ts'

const address = inject('address')
let page: Page

const tea = new URL('../../sample-boxes/tea-box-three-strings.lidwright.json', import.meta.url)

async function onTheSheet(): Promise<Page> {
  const context = await newContext({ viewport: { width: 1280, height: 900 } })
  // Whichever window is printed tells the page its title, and the printer is done at once.
  await context.addInitScript(() => {
    window.print = () => {
      if (window.top) window.top.document.documentElement.dataset['printed'] = document.title
      window.dispatchEvent(new Event('afterprint'))
    }
  })
  const opened = await context.newPage()
  await opened.goto(address)
  await opened.getByRole('dialog').getByRole('button', { name: 'Close' }).click()
  await openFile(opened, {
    name: 'tea.lidwright.json',
    mimeType: 'application/json',
    buffer: readFileSync(tea),
  })
  await opened.keyboard.press('6')
  await opened.getByRole('heading', { name: 'The instrument' }).waitFor()
  return opened
}

test('measures and strings are written on the sheet, in any unit, and undone', async () => {
  page = await onTheSheet()
  const watched = watchPage(page, address)
  await page.getByRole('button', { name: 'As built', exact: true }).click()
  await page.getByLabel('Measure again').selectOption({ label: 'Box, deep' })
  const built = page.getByRole('textbox', { name: 'Built: Box, deep' })
  await built.click()
  await page.keyboard.press('Control+a')
  await page.keyboard.type('58.7375 mm')
  await page.keyboard.press('Enter')
  // 58.7375 mm is 2 5/16 in; planned were 2 1/4 in.
  await expect.poll(() => built.inputValue()).toBe('2 5/16')
  const table = page.getByRole('region', { name: 'As built, beside the plan' })
  expect(await table.textContent()).toContain('2 1/4')
  expect(await table.textContent()).toContain('+0.063')

  await built.click()
  await page.keyboard.press('Control+a')
  await page.keyboard.type('a hand')
  await page.keyboard.press('Enter')
  await table.getByRole('alert').waitFor()
  await built.press('Escape')
  await expect.poll(() => built.inputValue()).toBe('2 5/16')

  await page.getByRole('button', { name: 'Write a row' }).click()
  await page.getByRole('textbox', { name: 'Who, row 1' }).click()
  await page.keyboard.type('Ann')
  await page.keyboard.press('Tab')
  await page.keyboard.type('in May')
  await page.keyboard.press('Tab')
  await page.keyboard.type('17 26 36')
  await page.keyboard.press('Tab')
  const [saved] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Save the sheet as a page' }).click(),
  ])
  expect(saved.suggestedFilename()).toBe('tea-box-three-strings-build-sheet.html')
  const html = readFileSync(await saved.path(), 'utf8')
  for (const words of ['Ann', 'in May', '17 26 36', '2 5/16']) expect(html).toContain(words)
  expect(watched).toEqual(nothingWrong)

  for (let times = 0; times < 4; times++) await page.getByRole('button', { name: 'Undo' }).click()
  expect(await page.getByRole('textbox', { name: 'Who, row 1' }).count()).toBe(0)
})

test('the sheet is clean for a screen reader’s rules, in both schemes and on a tablet', async () => {
  // What stands in a picture is told by its name and by the table below it; there are thousands of lines.
  for (const name of await page.locator('.sheet-picture > title').allTextContents())
    expect(name).toMatch(/\S/)
  for (const colorScheme of ['light', 'dark'] as const) {
    await page.emulateMedia({ colorScheme })
    await page.setViewportSize({ width: 1024, height: 768 })
    const rules = colorScheme === 'light' ? 'all' : 'colours'
    expect(await violationsOf(page, { rules, exclude: '.sheet-picture' })).toEqual([])
  }
  const wide = await page.evaluate(() => document.documentElement.scrollWidth > window.innerWidth)
  expect(wide).toBe(false)
})

test('everything is saved as one zip, the same bytes that the command line writes', async () => {
  const design = await page.evaluate(() => document.title)
  expect(design).toContain('Tea box')
  const coming = page.waitForEvent('download')
  await page.getByRole('button', { name: 'Save everything' }).click()
  // Said at the end, also of what has failed.
  const said = page.getByRole('status').filter({ hasText: /everything\.zip|Nothing was written/ })
  expect(await said.textContent()).toBe('Saved tea-box-three-strings-everything.zip.')
  const saved = await coming
  expect(saved.suggestedFilename()).toBe('tea-box-three-strings-everything.zip')
  const [kept] = await Promise.all([page.waitForEvent('download'), page.keyboard.press('Control+s')])
  const reading = readDesign(readFileSync(await kept.path(), 'utf8'))
  if (!reading.ok) throw new Error(reading.faults[0]?.sentence)
  const { bytes } = await makeBundle(reading.design)
  expect(Buffer.compare(readFileSync(await saved.path()), Buffer.from(bytes))).toBe(0)
})

test('a zip on its way can be stopped, and nothing is written', async () => {
  let downloads = 0
  page.on('download', () => downloads++)
  // The job is held back for a while, so that it is surely still on its way.
  await page.evaluate(() => {
    const post = Worker.prototype.postMessage
    Worker.prototype.postMessage = function (message: unknown) {
      Worker.prototype.postMessage = post
      window.setTimeout(() => this.postMessage(message), 4000)
    }
  })
  await page.getByRole('button', { name: 'Save everything' }).click()
  await page.getByRole('progressbar', { name: 'How far the zip is' }).waitFor()
  await page.getByRole('button', { name: 'Stop' }).click()
  await page.getByText('Stopped. Nothing was written.').waitFor()
  expect(await page.getByRole('button', { name: 'Save everything' }).isEnabled()).toBe(true)
  expect(downloads).toBe(0)
})

test('the text of a label opens its design; a broken one is refused and changes nothing', async () => {
  const carried = carry(startingDesign({ title: 'From the label', hand: 'right' }))
  await page.getByRole('button', { name: 'File', exact: true }).click()
  await page.getByRole('menuitem', { name: /Open from a label/ }).click()
  const dialog = page.getByRole('dialog', { name: 'Open from a label' })
  const field = dialog.getByRole('textbox')
  await field.fill(carried.slice(0, -9))
  await dialog.getByRole('button', { name: 'Open the design' }).click()
  await dialog.getByRole('alert').waitFor()
  expect(await page.title()).toContain('Tea box')
  await field.fill(carried)
  await dialog.getByRole('button', { name: 'Open the design' }).click()
  await dialog.waitFor({ state: 'hidden' })
  expect(await page.title()).toContain('From the label')
  await page.keyboard.press('Control+z')
  expect(await page.title()).toContain('Tea box')
})

test('printing prints the sheet alone and leaves nothing behind', async () => {
  await page.getByRole('button', { name: 'Print the sheet' }).click()
  await page.waitForFunction(() => document.documentElement.dataset['printed'] !== undefined)
  const printed = await page.evaluate(() => document.documentElement.dataset['printed'])
  expect(printed).toBe('Tea box, three strings: build sheet')
  await page.waitForFunction(() => document.querySelector('iframe') === null)
})
