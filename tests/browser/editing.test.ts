/** Editing with the real mouse: what is dragged, what a cancelled drag leaves behind, what nonsense in a field does. */
import { readFileSync } from 'node:fs'
import type { Browser, Page } from 'playwright-core'
import { afterAll, beforeEach, expect, inject, test } from 'vitest'
import { type Design, type Layout, readDesign, solve } from '../../geometry/index.ts'
import { launch } from '../support/browser.ts'
import { openFile } from '../support/open-file.ts'

const address = inject('address')
const SAMPLE = new URL('../../sample-boxes/tea-box-three-strings.lidwright.json', import.meta.url)

const opening = launch()
let page: Page
let start: Design

afterAll(async () => (await opening).close())

beforeEach(async () => {
  const browser: Browser = await opening
  const context = await browser.newContext({ viewport: { width: 1600, height: 1000 } })
  page = await context.newPage()
  await page.goto(address)
  await page.getByRole('button', { name: 'Look around first' }).click()
  await page.waitForLoadState('networkidle')
  const file = { name: 'box.lidwright.json', mimeType: 'application/json', buffer: readFileSync(SAMPLE) }
  await openFile(page, file)
  await page.waitForFunction(() =>
    [...document.querySelectorAll('input')].some((one) => one.value.startsWith('Tea box')),
  )
  await page.keyboard.press('3')
  await page.locator('[data-origin-x]').first().waitFor()
  start = await savedDesign()
  return () => context.close()
})

async function savedDesign(): Promise<Design> {
  const [download] = await Promise.all([page.waitForEvent('download'), page.keyboard.press('Control+s')])
  const read = readDesign(readFileSync(await download.path(), 'utf8'))
  if (!read.ok) throw new Error(read.faults[0]?.sentence)
  return read.design
}

/** A place of the plan (instrument frame) on the screen; see app/canvas/camera.ts. */
async function onScreen(x: number, y: number) {
  const drawing = page.locator('[data-origin-x]').first()
  const box = await drawing.boundingBox()
  const data = await drawing.evaluate((element) => ({ ...(element as HTMLElement).dataset }))
  if (!box) throw new Error('the drawing is not on the screen')
  const scale = Number(data.scale)
  return {
    x: box.x + Number(data.originX) + x * scale,
    y: box.y + Number(data.originY) - Number(data.up) * y * scale,
    scale,
  }
}

/** Drags from a place of the plan by millimetres, no line taking hold; `letGo` false leaves the button pressed. */
async function drag(from: { x: number; y: number }, dx: number, dy: number, letGo = true) {
  const at = await onScreen(from.x, from.y)
  await page.mouse.move(at.x, at.y)
  await page.mouse.down()
  await page.keyboard.down('Alt')
  for (let step = 1; step <= 10; step++)
    await page.mouse.move(at.x + (dx * at.scale * step) / 10, at.y - (dy * at.scale * step) / 10)
  if (letGo) await page.mouse.up()
  await page.keyboard.up('Alt')
}

const trebleHole = (layout: Layout) => {
  const found = layout.placed.find((one) => one.thing.id === 'hole-treble')
  if (!found) throw new Error('there is no treble hole')
  return { x: found.at.x + layout.panels.lid.originX, y: found.at.y }
}

test('Escape in the middle of a drag leaves no trace, not even an entry to undo', async () => {
  const undo = page.getByRole('button', { name: 'Undo' })
  const before = await undo.isDisabled()
  await drag(trebleHole(solve(start)), 15, 0, false)
  await page.keyboard.press('Escape')
  await page.mouse.up()
  expect(await savedDesign()).toEqual(start)
  expect(await undo.isDisabled()).toBe(before)
})

test('a hole follows the pointer, its mirrored partner follows it, and it is one entry', async () => {
  const layout = solve(start)
  await drag(trebleHole(layout), 12, -4)
  const moved = solve(await savedDesign())
  expect(trebleHole(moved).x).toBeCloseTo(trebleHole(layout).x + 12, 0)
  expect(trebleHole(moved).y).toBeCloseTo(trebleHole(layout).y - 4, 0)
  const partner = moved.placed.find((one) => one.thing.id === 'hole-bass')
  expect(partner?.at.y).toBeCloseTo(-trebleHole(moved).y, 9)
  await page.keyboard.press('Control+z')
  expect(await savedDesign()).toEqual(start)
})

test('the saddle dragged towards the tail slides strings and neck over the box', async () => {
  const layout = solve(start)
  await drag({ x: layout.saddle.x, y: layout.saddle.foot.maxY - 4 }, 10, 0)
  const moved = solve(await savedDesign())
  expect(moved.saddle.along).toBeCloseTo(layout.saddle.along + 10, 0)
  expect(moved.saddle.x).toBe(layout.saddle.x)
  expect(moved.box.x0).toBeCloseTo(layout.box.x0 - 10, 0)
})

test('the row of string holes is dragged along the tail', async () => {
  const layout = solve(start)
  const hole = layout.tailHoles[0]
  if (!hole) throw new Error('there is no string hole')
  await drag(hole, 3, 0)
  expect((await savedDesign()).tailpiece.fromEdge).toBeCloseTo(start.tailpiece.fromEdge + 3, 0)
})

test('the box, once chosen, is dragged under the strings', async () => {
  await page.getByRole('button', { name: /The box itself/ }).click()
  const layout = solve(start)
  await drag({ x: layout.box.x0 + 30, y: layout.box.halfWidth - 12 }, 8, 0)
  const moved = solve(await savedDesign())
  expect(moved.box.x0).toBeCloseTo(layout.box.x0 + 8, 0)
  expect(moved.saddle.along).toBeCloseTo(layout.saddle.along - 8, 0)
})

test('the sheet beneath is not painted again while a hole is dragged', async () => {
  const paints = async () =>
    Number(await page.locator('[data-origin-x]').first().getAttribute('data-ground-paints'))
  await page
    .getByRole('button', { name: /Treble hole/ })
    .first()
    .click()
  const before = await paints()
  await drag(trebleHole(solve(start)), 10, 0, false)
  expect(await paints()).toBe(before)
  await page.mouse.up()
})

test('a number may come in another unit; nonsense keeps the last good one and says what would do', async () => {
  await page
    .getByRole('button', { name: /Treble hole/ })
    .first()
    .click()
  const field = page.getByLabel('Through hole, across', { exact: true }).first()
  await field.fill('30 mm')
  await field.press('Enter')
  const hole = (design: Design) =>
    design.things.find((one) => one.id === 'hole-treble') as { diameter?: number }
  expect(hole(await savedDesign()).diameter).toBe(30)
  await field.fill('three parsecs')
  await field.press('Enter')
  const described = await page.locator('[role="alert"], .field-fault').allTextContents()
  expect(described.join(' ')).toContain('parsecs')
  expect(hole(await savedDesign()).diameter).toBe(30)
  await field.press('Escape')
  expect(await field.inputValue()).toBe('1 3/16')
})

test('a broken file and one of a newer version are refused in a sentence, and the design stays', async () => {
  for (const [text, words] of [
    ['{"format":"lidwright","version":1,', 'not JSON'],
    ['{"format":"lidwright","version":99}', 'newer'],
  ] as const) {
    await openFile(page, {
      name: 'x.lidwright.json',
      mimeType: 'application/json',
      buffer: Buffer.from(text),
    })
    await page.getByText(new RegExp(words)).first().waitFor()
    const close = page.getByRole('dialog').getByRole('button').first()
    if (await close.count()) await close.click()
    expect(await savedDesign()).toEqual(start)
  }
})

test('what was edited is there again after the page is loaded anew', async () => {
  await drag(trebleHole(solve(start)), 9, 0)
  const edited = await savedDesign()
  await page.waitForTimeout(600)
  await page.reload()
  await page.getByRole('navigation', { name: /Places/ }).waitFor()
  await page.waitForLoadState('networkidle')
  expect(await savedDesign()).toEqual(edited)
})
