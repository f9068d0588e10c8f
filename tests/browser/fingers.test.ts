/** Fingers on the drawing: drag, pinch, two fingers that undo nothing, and the long press that stands for a right click. */
import type { CDPSession, Page } from 'playwright-core'
import { beforeEach, expect, test } from 'vitest'
import { type Design, measuredOn, type Point, solve } from '../../geometry/index.ts'
import { goTo, type OnScreen, onPlan, savedDesign } from '../support/bench-page.ts'
import { sharePage } from '../support/shared-page.ts'

const shared = sharePage('tea-box-three-strings', { viewport: { width: 1024, height: 768 }, hasTouch: true })
let page: Page
let session: CDPSession
let start: Design

beforeEach(async () => {
  page = await shared.begin()
  await goTo(page, 'Lay out')
  await page.locator('[data-origin-x]').first().waitFor()
  start = await savedDesign(page)
  session = await page.context().newCDPSession(page)
  return () => session.detach()
})

const touch = (type: 'touchStart' | 'touchMove' | 'touchEnd', ...points: Point[]) =>
  session.send('Input.dispatchTouchEvent', {
    type,
    touchPoints: points.map(({ x, y }, id) => ({ x, y, id })),
  })

async function hole(design = start): Promise<OnScreen> {
  const layout = solve(design)
  const placed = layout.placed.find((one) => one.thing.id === 'hole-treble')
  if (!placed) throw new Error('there is no treble hole')
  return onPlan(page, { x: placed.at.x + layout.panels.lid.originX, y: placed.at.y })
}

const alongOf = (design: Design) =>
  solve(design).placed.find((one) => one.thing.id === 'hole-treble')?.at.x ?? Number.NaN

test('a finger drags a hole', async () => {
  const at = await hole()
  await touch('touchStart', at)
  for (let step = 1; step <= 8; step++) await touch('touchMove', { x: at.x + step * 6, y: at.y })
  await touch('touchEnd')
  expect(alongOf(await savedDesign(page))).toBeGreaterThan(alongOf(start) + 10)
})

test('a second finger ends the drag without a trace; pinching zooms, and nothing is undone', async () => {
  const at = await hole()
  await touch('touchStart', at)
  await touch('touchMove', { x: at.x + 30, y: at.y })
  await touch('touchStart', { x: at.x + 30, y: at.y }, { x: at.x - 60, y: at.y })
  for (let step = 1; step <= 8; step++)
    await touch('touchMove', { x: at.x + 30 + step * 8, y: at.y }, { x: at.x - 60 - step * 8, y: at.y })
  await touch('touchEnd')
  expect(await savedDesign(page)).toEqual(start)
  expect((await hole()).scale).toBeGreaterThan(at.scale * 1.3)
  // Two fingers laid down and lifted: an accident that costs nothing.
  await page
    .getByRole('button', { name: /^Treble hole/ })
    .first()
    .tap()
  await page.keyboard.press('ArrowRight')
  const moved = await savedDesign(page)
  const place = await hole(moved)
  await touch('touchStart', place, { x: place.x + 80, y: place.y })
  await touch('touchEnd')
  expect(await savedDesign(page)).toEqual(moved)
})

test('a finger that rests opens what a right click opens, and moves nothing', async () => {
  const at = await hole()
  await touch('touchStart', at)
  const menu = page.getByRole('menu', { name: 'Treble hole' })
  await menu.waitFor()
  await touch('touchEnd')
  const box = await menu.getByRole('menuitem', { name: /Lock/ }).boundingBox()
  // A finger wants 44 pixels (WCAG 2.2, target size, enhanced).
  expect(box?.height ?? 0).toBeGreaterThanOrEqual(36)
  await menu.getByRole('menuitem', { name: /Lock/ }).tap()
  await page.getByText('Treble hole locked').waitFor()
  expect(alongOf(await savedDesign(page))).toBe(alongOf(start))
})

test('one finger on the bare sheet moves the sheet', async () => {
  const at = await hole()
  const layout = solve(start)
  const bare = await onPlan(page, { x: layout.box.x0 + 4, y: layout.box.halfWidth + 6 })
  await touch('touchStart', bare)
  for (let step = 1; step <= 6; step++) await touch('touchMove', { x: bare.x + step * 8, y: bare.y })
  await touch('touchEnd')
  expect((await hole()).x - at.x).toBeCloseTo(48, 0)
})

test('a finger measures from a hole to an edge, and takes the end to another line', async () => {
  const tap = async (at: Point) => {
    await touch('touchStart', at)
    await touch('touchEnd')
  }
  const layout = solve(start)
  const at = await hole()
  const { x, y } = layout.placed.find((one) => one.thing.id === 'hole-treble')?.at ?? { x: 0, y: 0 }
  const along = x + layout.panels.lid.originX
  await page.getByRole('button', { name: 'Measure', exact: true }).tap()
  await tap(at)
  await tap(await onPlan(page, { x: along + 8, y: layout.box.halfWidth }))
  await page.keyboard.press('Escape')
  const [measure] = (await savedDesign(page)).measures
  expect(measure).toMatchObject({
    from: { of: 'hole-treble', at: 'centre' },
    to: { of: 'treble edge', at: 'edge' },
  })

  const ring = await onPlan(page, { x: along, y: layout.box.halfWidth })
  const line = await onPlan(page, { x: along + 12, y: 0 })
  await touch('touchStart', ring)
  for (let step = 1; step <= 8; step++)
    await touch('touchMove', {
      x: ring.x + ((line.x - ring.x) * step) / 8,
      y: ring.y + ((line.y - ring.y) * step) / 8,
    })
  await touch('touchEnd')
  const moved = await savedDesign(page)
  expect(moved.measures).toEqual([{ ...measure, to: { of: 'centreline', at: 'edge' } }])
  expect(measuredOn(solve(moved))[0]?.mm).toBeCloseTo(Math.abs(y), 6)
  expect(moved.things).toEqual(start.things)
})
