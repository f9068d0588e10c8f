/** Editing with the real mouse: what is dragged, what takes hold, what a cancelled drag leaves behind. */
import type { Page } from 'playwright-core'
import { beforeEach, expect, test } from 'vitest'
import { type Design, type Face, type Layout, type Point, solve, type Thing } from '../../geometry/index.ts'
import {
  type Dragging,
  drag,
  goTo,
  onFace,
  onPlan,
  openSample,
  paintsOf,
  savedDesign,
} from '../support/bench-page.ts'
import { sharePage } from '../support/shared-page.ts'

const shared = sharePage('tea-box-three-strings', { viewport: { width: 1600, height: 1000 } })
let page: Page
let start: Design

beforeEach(async () => {
  page = await shared.begin()
  await goTo(page, 'Lay out')
  await page.locator('[data-origin-x]').first().waitFor()
  await page.locator('[data-faces]').first().waitFor()
  start = await savedDesign(page)
})

/** Drags from a place of the plan by millimetres of the instrument's frame. */
async function dragOnPlan(from: Point, dx: number, dy: number, options: Dragging = {}) {
  const at = await onPlan(page, from)
  await drag(page, at, { x: at.right * dx * at.scale, y: -at.up * dy * at.scale }, options)
}

const placed = (layout: Layout, id: string) => {
  const found = layout.placed.find((one) => one.thing.id === id)
  if (!found) throw new Error(`there is no ${id}`)
  return found
}

const onInstrument = (layout: Layout, id: string) => {
  const { at, face } = placed(layout, id)
  return { x: at.x + layout.panels[face].originX, y: at.y }
}

const trebleHole = (layout: Layout) => onInstrument(layout, 'hole-treble')

const thing = (design: Design, id: string): Thing => {
  const found = design.things.find((one) => one.id === id)
  if (!found) throw new Error(`there is no ${id}`)
  return found
}

test('Escape in the middle of a drag leaves no trace, not even an entry to undo', async () => {
  const undo = page.getByRole('button', { name: 'Undo' })
  const before = await undo.getAttribute('title')
  const { live } = await paintsOf(page)
  await dragOnPlan(trebleHole(solve(start)), 15, 0, { letGo: false })
  await expect.poll(async () => (await paintsOf(page)).live).toBeGreaterThan(live)
  // A file saved meanwhile holds nothing of it either.
  expect(await savedDesign(page)).toEqual(start)
  await page.keyboard.press('Escape')
  await page.mouse.up()
  expect(await savedDesign(page)).toEqual(start)
  expect(await undo.getAttribute('title')).toBe(before)
})

test('a hole follows the pointer, its mirrored partner follows it, and it is one entry', async () => {
  const layout = solve(start)
  await dragOnPlan(trebleHole(layout), 12, -4)
  const moved = solve(await savedDesign(page))
  expect(trebleHole(moved).x).toBeCloseTo(trebleHole(layout).x + 12, 0)
  expect(trebleHole(moved).y).toBeCloseTo(trebleHole(layout).y - 4, 0)
  expect(placed(moved, 'hole-bass').at.y).toBeCloseTo(-trebleHole(moved).y, 9)
  await page.keyboard.press('Control+z')
  expect(await savedDesign(page)).toEqual(start)
})

test('the middle of the lid takes hold of a hole that comes near it, and Alt lets go', async () => {
  const layout = solve(start)
  const { minX, maxX } = layout.panels.lid.bounds
  const middle = (minX + maxX) / 2
  const way = middle - placed(layout, 'hole-treble').at.x - 1.2
  await dragOnPlan(trebleHole(layout), way, 0, { free: false })
  const held = await savedDesign(page)
  expect(thing(held, 'hole-treble').along).toBeCloseTo(middle, 6)
  // What held across was there before: midway stays meant as midway.
  expect(thing(held, 'hole-treble').across).toEqual(thing(start, 'hole-treble').across)
  await page.keyboard.press('Control+z')
  await dragOnPlan(trebleHole(layout), way, 0)
  expect(placed(solve(await savedDesign(page)), 'hole-treble').at.x).toBeCloseTo(middle - 1.2, 1)
})

test('a pickup placed by a share of the scale keeps being that when it is dragged', async () => {
  await openSample(page, 'cutlery-box-four-strings')
  start = await savedDesign(page)
  await dragOnPlan(onInstrument(solve(start), 'pickup'), -20, 0)
  const { along, across } = thing(await savedDesign(page), 'pickup')
  const { along: before } = thing(start, 'pickup') as { along: { ofScale: number } }
  expect(along).toEqual({ ofScale: expect.closeTo(before.ofScale + 20 / start.scale.length, 3) })
  expect(across).toBe(0)
})

test('the saddle dragged towards the tail slides strings and neck over the box', async () => {
  const layout = solve(start)
  await dragOnPlan({ x: layout.saddle.x, y: layout.saddle.foot.maxY - 4 }, 10, 0)
  const moved = solve(await savedDesign(page))
  expect(moved.saddle.along).toBeCloseTo(layout.saddle.along + 10, 0)
  expect(moved.saddle.x).toBe(layout.saddle.x)
  expect(moved.box.x0).toBeCloseTo(layout.box.x0 - 10, 0)
})

test('the row of string holes is dragged along the tail', async () => {
  const hole = solve(start).tailHoles[0]
  if (!hole) throw new Error('there is no string hole')
  await dragOnPlan(hole, 3, 0)
  expect((await savedDesign(page)).tailpiece.fromEdge).toBeCloseTo(start.tailpiece.fromEdge + 3, 0)
})

test('the box, once chosen, is dragged under the strings', async () => {
  await page.getByRole('button', { name: /The box itself/ }).click()
  const layout = solve(start)
  await dragOnPlan({ x: layout.box.x0 + 30, y: layout.box.halfWidth - 12 }, 8, 0)
  const moved = solve(await savedDesign(page))
  expect(moved.box.x0).toBeCloseTo(layout.box.x0 + 8, 0)
  expect(moved.saddle.along).toBeCloseTo(layout.saddle.along - 8, 0)
})

// Seen from outside with the head to the left of the front: the treble wall and the base show things turned over.
test.each([
  ['bass-wall', 'bass wall', 1, 1],
  ['treble-wall', 'treble wall', -1, 1],
  ['base', 'base', 1, -1],
] as const)('a screw is put on the %s and dragged there', async (face: Face, name, right, up) => {
  await page.getByRole('button', { name: `Put something on the ${name}` }).click()
  await page.getByRole('menuitem', { name: /Screw/ }).click()
  const layout = solve(await savedDesign(page))
  const screw = layout.placed.find((one) => one.face === face)
  if (!screw) throw new Error(`there is no screw on the ${name}`)
  const at = await onFace(page, face, screw.at)
  expect([at.right, at.up]).toEqual([right, up])
  await drag(page, at, { x: 12 * at.scale, y: -6 * at.scale })
  const moved = placed(solve(await savedDesign(page)), screw.thing.id)
  expect(moved.at.x).toBeCloseTo(screw.at.x + 12 * right, 0)
  expect(moved.at.y).toBeCloseTo(screw.at.y + 6 * up, 0)
  await page.keyboard.press('Control+z')
  expect(placed(solve(await savedDesign(page)), screw.thing.id).at).toEqual(screw.at)
})

test('the sheet beneath is not painted again while a hole is dragged', async () => {
  await page
    .getByRole('button', { name: /Treble hole/ })
    .first()
    .click()
  // Lets a frame pass, so that what the press made necessary is not counted.
  await page.evaluate(() => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done))))
  const before = await paintsOf(page)
  await dragOnPlan(trebleHole(solve(start)), 10, 0, { letGo: false })
  await expect.poll(async () => (await paintsOf(page)).live).toBeGreaterThan(before.live)
  expect((await paintsOf(page)).ground).toBe(before.ground)
  await page.mouse.up()
})

test('arrows move by one step of the rule, and the distances are told', async () => {
  await page
    .getByRole('button', { name: /Treble hole/ })
    .first()
    .click()
  await page.keyboard.press('ArrowRight')
  await page.keyboard.press('ArrowRight')
  const moved = await savedDesign(page)
  expect(thing(moved, 'hole-treble').along).toBeCloseTo(63.5 + (2 * 25.4) / 32, 5)
  // 2 1/2 in and two steps of 1/32, less 11/16 in: half an inch of hole and 3/16 of rim.
  await page.getByText(/Treble hole: 1 7\/8 in from the neck-end edge/).waitFor({ state: 'attached' })
})

test('a sample is opened from the list, and undo brings back what was on the bench', async () => {
  await page.getByRole('button', { name: 'File', exact: true }).click()
  await page.getByRole('menuitem', { name: /sample/ }).click()
  await page.getByRole('dialog').getByRole('button', { name: 'Wine case six strings' }).click()
  await expect.poll(async () => (await savedDesign(page)).title).toBe('Wine case, six strings')
  await page.keyboard.press('Control+z')
  expect(await savedDesign(page)).toEqual(start)
})
