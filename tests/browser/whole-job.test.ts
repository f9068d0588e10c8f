/**
 * The whole job as a builder does it, with the real mouse and keyboard: a box measured in fractions of an inch,
 * four strings, a hole dragged until Prove objects, undone, and templates whose numbers are those on the screen.
 */
import { readFileSync } from 'node:fs'
import { JSDOM } from 'jsdom'
import type { Browser, Download, Page } from 'playwright-core'
import { afterAll, beforeAll, expect, inject, test } from 'vitest'
import {
  bounds,
  check,
  type Design,
  formatLength,
  type Layout,
  type Placed,
  partsOf,
  readDesign,
  sentenceOf,
  solve,
} from '../../geometry/index.ts'
import { launch } from '../support/browser.ts'
import { readWithDxf } from '../support/readDxf.ts'
import { offPaper, readSvg, shapesIn } from '../support/readSvg.ts'
import { type DrawnCircle, isCircle } from '../support/segments.ts'
import { nothingWrong, type Watched, watchPage } from '../support/watch-page.ts'

const address = inject('address')
const MICROMETRE = 1e-3
const INCH = 25.4

let browser: Browser
let page: Page
let watched: Watched

beforeAll(async () => {
  globalThis.DOMParser = new JSDOM().window.DOMParser
  browser = await launch()
  page = await browser.newPage({ viewport: { width: 1600, height: 1000 } })
  watched = watchPage(page, address)
  await page.goto(address)
})
afterAll(() => browser?.close())

const place = (name: string) =>
  page
    .getByRole('navigation', { name: /Places/ })
    .getByRole('button', { name: new RegExp(`^${name}`) })
    .click()

async function textOf(download: Download): Promise<string> {
  const path = await download.path()
  return readFileSync(path, 'utf8')
}

/** The design as the page would save it now. */
async function savedDesign(): Promise<Design> {
  const [download] = await Promise.all([page.waitForEvent('download'), page.keyboard.press('Control+s')])
  const read = readDesign(await textOf(download))
  if (!read.ok) throw new Error(`the page saved a design that cannot be read: ${read.faults[0]?.sentence}`)
  return read.design
}

function hole(layout: Layout): Placed {
  const found = layout.placed.find((one) => one.thing.id === 'hole-treble')
  if (!found) throw new Error('there is no treble hole')
  return found
}

/** Where a place on the lid is on the screen, by the numbers the drawing carries (see app/canvas/camera.ts). */
async function onScreen(layout: Layout, at: { x: number; y: number }) {
  const drawing = page.locator('[data-origin-x]').first()
  const box = await drawing.boundingBox()
  if (!box) throw new Error('the drawing is not on the screen')
  const camera = await drawing.evaluate((element) => ({ ...(element as HTMLElement).dataset }))
  const [scale, originX, originY, up] = ['scale', 'originX', 'originY', 'up'].map((name) =>
    Number(camera[name]),
  )
  if (!scale || originX === undefined || originY === undefined || !up)
    throw new Error('the drawing has no camera')
  return {
    x: box.x + originX + (at.x + layout.panels.lid.originX) * scale,
    y: box.y + originY - up * at.y * scale,
    scale,
    up,
  }
}

/** Drags the treble hole straight towards the treble edge, holding the key that lets no line take hold. */
async function dragOutwards(layout: Layout, millimetres: number) {
  const from = await onScreen(layout, hole(layout).at)
  await page.mouse.move(from.x, from.y)
  await page.mouse.down()
  await page.keyboard.down('Alt')
  for (let step = 1; step <= 12; step++)
    await page.mouse.move(from.x, from.y - (from.up * from.scale * millimetres * step) / 12)
  await page.mouse.up()
  await page.keyboard.up('Alt')
}

/** Diameter of a round sound hole. */
function diameterOf({ thing }: Placed): number {
  if (thing.kind !== 'sound-hole' || !('diameter' in thing)) throw new Error(`${thing.id} is no round hole`)
  return Number(thing.diameter)
}

const edgeFinding = (layout: Layout) => {
  const found = check(layout).find((one) => one.key === 'opening-to-edge hole-treble')
  if (!found) throw new Error('the distance to the edge is not measured')
  return found
}

let start: Design

test('a new box is typed in fractions of an inch, with four strings', async () => {
  const form = page.getByRole('dialog')
  await form.getByText('inches', { exact: true }).click()
  await form.getByText('right', { exact: true }).click()
  const measures = {
    Length: '10 1/2',
    Width: '8',
    Depth: '2 1/4"',
    Walls: '3/8 in',
    Lid: '3/16',
    Base: '4.7625 mm',
    Strings: '4',
    'Scale length': '24',
  }
  for (const [label, text] of Object.entries(measures)) {
    const field = form.getByLabel(label, { exact: true }).first()
    await field.fill(text)
    await field.press('Tab')
  }
  await form.getByRole('button', { name: 'Put it on the bench' }).click()
  await page.getByRole('region', { name: 'Plan, rule and section' }).waitFor()
  start = await savedDesign()
  expect(start.box.length).toBeCloseTo(10.5 * INCH, 9)
  expect(start.box.width).toBeCloseTo(8 * INCH, 9)
  expect(start.box.depth).toBeCloseTo(2.25 * INCH, 9)
  expect(start.box.walls.treble).toBeCloseTo(0.375 * INCH, 9)
  expect(start.box.base.thickness).toBe(4.7625)
  expect(start.strings.count).toBe(4)
  expect(start.scale.length).toBeCloseTo(24 * INCH, 9)
  expect(start.units.display).toBe('inches')
  expect(check(solve(start)).filter((one) => one.grade === 'stop')).toEqual([])
})

test('a hole dragged towards the edge is objected to, first with care, then with a stop', async () => {
  const before = solve(start)
  await dragOutwards(before, (edgeFinding(before).measured ?? 0) - 0.2 * INCH)
  const near = solve(await savedDesign())
  const care = edgeFinding(near)
  expect(care.grade).toBe('care')
  expect(hole(near).at.x).toBeCloseTo(hole(before).at.x, 0)

  await place('Prove')
  await page.getByText(sentenceOf(care, near)).first().waitFor()
  await place('Lay out')

  await dragOutwards(near, (care.measured ?? 0) + 0.25 * INCH)
  const over = solve(await savedDesign())
  const stop = edgeFinding(over)
  expect(stop.grade).toBe('stop')
  await place('Prove')
  await page.getByText(sentenceOf(stop, over)).first().waitFor()
  expect(
    await page
      .getByRole('button', { name: /^Prove/ })
      .first()
      .textContent(),
  ).toMatch(/\d/)
})

test('each drag is undone by one step, to the very design before it', async () => {
  await place('Lay out')
  await page.keyboard.press('Control+z')
  expect(edgeFinding(solve(await savedDesign())).grade).toBe('care')
  await page.keyboard.press('Control+z')
  expect(await savedDesign()).toEqual(start)
})

test('the screen’s numbers, the engine’s and those in the exported files are the same', async () => {
  await page
    .getByRole('button', { name: /Treble hole/ })
    .first()
    .click()
  const layout = solve(start)
  const { at } = hole(layout)
  const words = (mm: number) => formatLength(mm, start.units)
  const inspector = page.getByRole('complementary', { name: 'What is selected' })
  const screen = `${await inspector.textContent()} ${(
    await inspector.locator('input').evaluateAll((all) => all.map((one) => (one as HTMLInputElement).value))
  ).join(' ')}`
  const fromNut = at.x + layout.panels.lid.originX
  for (const shown of [diameterOf(hole(layout)), at.x, fromNut]) expect(screen).toContain(words(shown))

  await place('Transfer')
  await page.getByText('both', { exact: true }).click()
  const gathered: Download[] = []
  page.on('download', (one) => gathered.push(one))
  await page.getByRole('button', { name: 'Save only “Lid”' }).click()
  await expect.poll(() => gathered.length, { timeout: 15_000 }).toBe(2)
  const texts = new Map(
    await Promise.all(
      gathered.map(async (one) => [one.suggestedFilename().split('.').pop(), await textOf(one)] as const),
    ),
  )
  const lid = partsOf(layout).find((part) => part.id === 'lid')
  if (lid?.outline.shape !== 'chain') throw new Error('the lid is no chain of lines')
  const { minX, minY } = bounds(lid.outline)
  const corner = { x: minX, y: minY }

  const dxf = readWithDxf(texts.get('dxf') ?? '')
  expectHoles((dxf.contours.get('CUT-INSIDE') ?? []).filter(isCircle), layout)

  const svg = readSvg(texts.get('svg') ?? '')
  const outline = shapesIn(svg, 'lid-CUT-OUTSIDE')[0]
  if (!outline || isCircle(outline)) throw new Error('the lid has no outline in the SVG')
  // The paper's y points down: its lower left corner is the outline's largest y.
  const paper = {
    x: Math.min(...outline.map((one) => one.from.x)),
    y: Math.max(...outline.map((one) => one.from.y)),
  }
  const circles = shapesIn(svg, 'lid-CUT-INSIDE')
    .map((one) => offPaper(one, paper, corner))
    .filter(isCircle)
  expectHoles(circles, layout)
})

/** Both holes, to a micrometre, where the engine has them; the right hand sees the lid as it is. */
function expectHoles(circles: readonly DrawnCircle[], layout: Layout) {
  expect(layout.up).toBe(1)
  const wanted = layout.placed.filter((one) => one.thing.kind === 'sound-hole')
  expect(wanted.length).toBe(2)
  expect(circles.length).toBe(2)
  for (const one of wanted) {
    const { at, thing } = one
    const radius = diameterOf(one) / 2
    const found = circles.filter(
      ({ centre, radius: r }) =>
        Math.hypot(centre.x - at.x, centre.y - at.y) < MICROMETRE && Math.abs(r - radius) < MICROMETRE,
    )
    expect(found.length, `${thing.id} at ${at.x}, ${at.y}`).toBe(1)
  }
}

test('nothing complained, nothing failed, nothing was asked of another host', () => {
  expect(watched).toEqual(nothingWrong)
})
