/**
 * The whole job as a builder does it, with the real mouse and keyboard: a box measured in fractions of an inch,
 * four strings, a hole dragged until Prove objects, undone, and templates whose numbers are those on the screen.
 */
import { JSDOM } from 'jsdom'
import type { Download, Page } from 'playwright-core'
import { afterAll, beforeAll, expect, inject, test, vi } from 'vitest'
import { templates } from '../../exporters/index.ts'
import {
  check,
  type Design,
  formatLength,
  type Layout,
  type Part,
  type Placed,
  type Point,
  partsOf,
  ruleOf,
  sentenceOf,
  solve,
} from '../../geometry/index.ts'
import { drag, goTo, onPlan, savedDesign, textOf } from '../support/bench-page.ts'
import { newContext } from '../support/browser.ts'
import { readWithDxf, readWithDxfParser } from '../support/readDxf.ts'
import { offPaper, readSvg, shapesIn } from '../support/readSvg.ts'
import { type Drawn, type DrawnCircle, drawnOf, isCircle, worstError } from '../support/segments.ts'
import { nothingWrong, type Watched, watchPage } from '../support/watch-page.ts'

const address = inject('address')
const MICROMETRE = 1e-3
const INCH = 25.4

let page: Page
let watched: Watched
/** The design as the form made it. */
let start: Design

beforeAll(async () => {
  vi.stubGlobal('DOMParser', new JSDOM().window.DOMParser)
  page = await (await newContext({ offline: 'kept', viewport: { width: 1600, height: 1000 } })).newPage()
  watched = watchPage(page, address)
  await page.goto(address)
})

afterAll(() => vi.unstubAllGlobals())

function hole(layout: Layout): Placed {
  const found = layout.placed.find((one) => one.thing.id === 'hole-treble')
  if (!found) throw new Error('there is no treble hole')
  return found
}

/** Drags the treble hole straight towards the treble edge, holding the key that lets no line take hold. */
async function dragOutwards(layout: Layout, millimetres: number) {
  const { at } = hole(layout)
  const from = await onPlan(page, { x: at.x + layout.panels.lid.originX, y: at.y })
  await drag(page, from, { x: 0, y: -from.up * from.scale * millimetres })
}

const edgeFinding = (layout: Layout) => {
  const found = check(layout).find((one) => one.key === 'opening-to-edge hole-treble')
  if (!found) throw new Error('the distance to the edge is not measured')
  return found
}

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
    await field.click()
    await page.keyboard.press('Control+a')
    await page.keyboard.type(text)
    await page.keyboard.press('Tab')
  }
  await form.getByRole('button', { name: 'Put it on the bench' }).click()
  await page.getByRole('region', { name: 'Plan, rule and section' }).waitFor()
  start = await savedDesign(page)
  expect(start.box.length).toBeCloseTo(10.5 * INCH, 9)
  expect(start.box.width).toBeCloseTo(8 * INCH, 9)
  expect(start.box.depth).toBeCloseTo(2.25 * INCH, 9)
  for (const wall of Object.values(start.box.walls)) expect(wall).toBeCloseTo(0.375 * INCH, 9)
  expect(start.box.lid.thickness).toBeCloseTo((3 / 16) * INCH, 9)
  expect(start.box.base.thickness).toBe(4.7625)
  expect(start.strings.count).toBe(4)
  expect(start.scale.length).toBeCloseTo(24 * INCH, 9)
  expect(start.hand).toBe('right')
  expect(start.units.display).toBe('inches')
  expect(check(solve(start)).filter((one) => one.grade === 'stop')).toEqual([])
})

test('a hole dragged towards the edge is objected to, first with care, then with a stop', async () => {
  const before = solve(start)
  await dragOutwards(before, (edgeFinding(before).measured ?? 0) - 0.2 * INCH)
  const near = solve(await savedDesign(page))
  const care = edgeFinding(near)
  expect(care.grade).toBe('care')
  expect(hole(near).at.x).toBeCloseTo(hole(before).at.x, 6)
  await expectInProve(near)

  await goTo(page, 'Lay out')
  await dragOutwards(near, (care.measured ?? 0) + 0.25 * INCH)
  const over = solve(await savedDesign(page))
  const stop = edgeFinding(over)
  expect(stop.grade).toBe('stop')
  await expectInProve(over)
  const stops = check(over).filter((one) => one.grade === 'stop').length
  await page.getByRole('button', { name: `Prove ${stops} stop`, exact: false }).waitFor()
})

/** The finding about the treble hole in Prove; the one about its partner names it too, among what goes along. */
const findingOnScreen = () =>
  page
    .locator('article.finding')
    .filter({ hasText: ruleOf('opening-to-edge').title })
    .filter({ has: page.getByText('Treble hole', { exact: true }) })

/** What Prove says of the hole is the engine's sentence, with the distance that was measured. */
async function expectInProve(layout: Layout) {
  await goTo(page, 'Prove')
  const finding = findingOnScreen()
  await finding.getByText(sentenceOf(edgeFinding(layout), layout)).waitFor()
  expect(await finding.getByText('measured').locator('xpath=following-sibling::dd').textContent()).toBe(
    formatLength(edgeFinding(layout).measured ?? Number.NaN, layout.design.units, { unit: true }),
  )
}

test('each drag is undone by one step, to the very design before it', async () => {
  await goTo(page, 'Lay out')
  await page.keyboard.press('Control+z')
  expect(edgeFinding(solve(await savedDesign(page))).grade).toBe('care')
  await page.keyboard.press('Control+z')
  expect(await savedDesign(page)).toEqual(start)
})

/** Presses a button of Transfer and gathers what is handed over, by the ending of the file's name. */
async function exported(button: string | RegExp, count: number): Promise<Map<string, string>> {
  const gathered: Download[] = []
  const gather = (one: Download) => void gathered.push(one)
  page.on('download', gather)
  await page.getByRole('button', { name: button }).click()
  await expect.poll(() => gathered.length, { timeout: 15_000 }).toBe(count)
  page.off('download', gather)
  const texts = gathered.map(async (one) => [one.suggestedFilename(), await textOf(one)] as const)
  return new Map(await Promise.all(texts))
}

const ending = (files: ReadonlyMap<string, string>, end: string) => {
  const text = [...files].find(([name]) => name.endsWith(end))?.[1]
  if (text === undefined) throw new Error(`no file ends in ${end}: ${[...files.keys()].join(', ')}`)
  return text
}

const extremes = (drawn: Drawn | undefined) => {
  if (!drawn || isCircle(drawn)) throw new Error('the lid has no outline of lines')
  const xs = drawn.map((one) => one.from.x)
  const ys = drawn.map((one) => one.from.y)
  return { minX: Math.min(...xs), maxX: Math.max(...xs), minY: Math.min(...ys), maxY: Math.max(...ys) }
}

/** The lid as each format was read back: outline and openings, in the lid's own sheet. */
interface ReadLid {
  readonly outline: readonly Drawn[]
  readonly inside: readonly Drawn[]
}

/** The paper's y points down and its corner is the sheet's: brought back by the outline's lower left corner. */
function lidOfSvg(text: string, corner: Point): ReadLid {
  const svg = readSvg(text)
  const { minX, maxY } = extremes(shapesIn(svg, 'lid-CUT-OUTSIDE')[0])
  const back = (group: string) =>
    shapesIn(svg, group).map((one) => offPaper(one, { x: minX, y: maxY }, corner))
  return { outline: back('lid-CUT-OUTSIDE'), inside: back('lid-CUT-INSIDE') }
}

/** The hole on the treble side: for the right hand, seen from outside with the head to the left, the upper one. */
function trebleHole(inside: readonly Drawn[]): DrawnCircle {
  const [first, ...others] = inside.filter(isCircle).sort((a, b) => b.centre.y - a.centre.y)
  if (!first || others.length === 0) throw new Error('there are no two round holes in the file')
  return first
}

let read: ReadLid[] = []
let lid: Part

test('the templates come through Transfer, and read back they are the engine’s to a micrometre', async () => {
  const layout = solve(await savedDesign(page))
  const parts = partsOf(layout)
  const found = parts.find((part) => part.id === 'lid')
  if (!found) throw new Error('there is no lid')
  lid = found
  await goTo(page, 'Transfer')
  await page.getByText('both', { exact: true }).click()
  const files = await exported('Save only “Lid”', 2)
  const dxf = [readWithDxf, readWithDxfParser].map((reader): ReadLid => {
    const { contours } = reader(ending(files, '.dxf'))
    return { outline: contours.get('CUT-OUTSIDE') ?? [], inside: contours.get('CUT-INSIDE') ?? [] }
  })
  const { minX, minY } = extremes(drawnOf(lid.outline))
  read = [...dxf, lidOfSvg(ending(files, '.svg'), { x: minX, y: minY })]
  const openings = lid.operations.flatMap((one) =>
    one.kind === 'cut' && one.side === 'inside' ? [drawnOf(one.contour)] : [],
  )
  expect(openings.length).toBeGreaterThanOrEqual(2)
  for (const { outline, inside } of read) {
    expect(worstError([drawnOf(lid.outline)], outline)).toBeLessThan(MICROMETRE)
    expect(worstError(openings, inside)).toBeLessThan(MICROMETRE)
  }

  // Of all parts on one sheet: the very files that the engine writes without a page.
  const sheets = await exported(`Save ${parts.length} parts`, 2)
  const written = templates(parts, { title: start.title, formats: ['svg', 'dxf'] })
  const wanted = written.filter((file) => file.name.includes('-all-parts.'))
  expect(new Map(wanted.map(({ name, text }) => [name, text]))).toEqual(sheets)
})

test('what the screen says of the hole is what the files hold', async () => {
  await goTo(page, 'Lay out')
  await page
    .getByRole('button', { name: /Treble hole/ })
    .first()
    .click()
  const inspector = page.getByRole('complementary', { name: 'What is selected' })
  await inspector.getByRole('heading', { name: 'Treble hole' }).waitFor()
  // A length does not break at the end of a line: its spaces are others.
  const words = ` ${(await inspector.locator('.comes-to').allTextContents()).join('; ')}`.replace(/\s/g, ' ')
  const across = await inspector.getByLabel('Through hole, across', { exact: true }).inputValue()
  await goTo(page, 'Prove')
  await findingOnScreen().getByRole('button').first().click()
  const toEdge = await findingOnScreen()
    .getByText('measured')
    .locator('xpath=following-sibling::dd')
    .textContent()

  expect(read.length).toBe(3)
  for (const { outline, inside } of read) {
    const { centre, radius } = trebleHole(inside)
    const edge = extremes(outline[0])
    const say = (mm: number) => formatLength(mm, start.units)
    expect(across).toBe(say(2 * radius))
    expect(words).toContain(` ${say(edge.maxX - centre.x)} in from the tail-end edge`)
    expect(words).toContain(` ${say(edge.maxY - centre.y)} in from the nearer side edge`)
    expect(toEdge).toBe(`${say(edge.maxY - centre.y - radius)} in`)
  }
})

test('nothing complained, nothing failed, nothing was asked of another host', () => {
  expect(watched).toEqual(nothingWrong)
})
