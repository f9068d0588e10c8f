/** The box folded out in a real browser: things are dragged from face to face, and stay where they may not go. */
import type { Page } from 'playwright-core'
import { beforeEach, expect, test } from 'vitest'
import type { Face, Point } from '../../geometry/index.ts'
import { drag, goTo, onFace, savedDesign } from '../support/bench-page.ts'
import { sharePage } from '../support/shared-page.ts'

const shared = sharePage('ferry-crate-electric', { viewport: { width: 1600, height: 1000 } })
let page: Page

beforeEach(async () => {
  page = await shared.begin()
  await goTo(page, 'Lay out')
  await page.locator('[data-faces]').first().waitFor()
  await page.getByRole('button', { name: 'Fold out' }).click()
  await page.waitForFunction(() =>
    [...document.querySelectorAll('[data-faces]')].some((one) =>
      ((one as HTMLElement).dataset['faces'] ?? '').includes('"lid"'),
    ),
  )
})

async function dragBetween(from: readonly [Face, Point], to: readonly [Face, Point]): Promise<void> {
  const a = await onFace(page, ...from)
  const b = await onFace(page, ...to)
  await drag(page, a, { x: b.x - a.x, y: b.y - a.y })
}

const thing = async (id: string) => (await savedDesign(page)).things.find((one) => one.id === id)

test('a jack dragged over the edge goes to the other wall, by one step of history', async () => {
  await dragBetween(['treble-wall', { x: 130, y: -40 }], ['tail-end-wall', { x: 70, y: -30 }])
  expect(await thing('jack')).toMatchObject({ face: 'tail-end-wall' })
  const { along, across } = (await thing('jack')) as { along: number; across: number }
  expect(along).toBeCloseTo(70, 0)
  expect(across).toBeCloseTo(30, 0)
  await page.keyboard.press('Control+z')
  expect(await thing('jack')).toMatchObject({ face: 'treble-wall', along: 130, across: 40 })
})

test('a pot goes from the lid to a wall', async () => {
  await dragBetween(['lid', { x: 262, y: 60 }], ['bass-wall', { x: -60, y: -34 }])
  expect(await thing('volume')).toMatchObject({ face: 'bass-wall' })
})

test('a hatch belongs in the base and stays there', async () => {
  await dragBetween(['base', { x: 150, y: 55 }], ['lid', { x: 150, y: -20 }])
  expect(await thing('hatch')).toMatchObject({ face: 'base' })
})

test('a path pasted becomes the curve, and one that crosses itself is refused with a sentence', async () => {
  await page.getByRole('button', { name: /^Leaf/ }).first().click()
  const field = page.getByLabel('New curve, as a path or an SVG file')
  await field.fill('M0 0 L40 40 L40 0 L0 40 Z')
  await page.getByRole('button', { name: 'Read it' }).click()
  await page.getByText('cross or touch').waitFor()
  expect(await field.inputValue()).toContain('M0 0')
  await field.fill('<svg><script>alert(1)</script><path d="M0 0 H 60 V 30 H 0 Z"/></svg>')
  await page.getByRole('button', { name: 'Read it' }).click()
  await page.getByText('Left out: a script').waitFor()
  expect(await thing('leaf')).toMatchObject({
    sizeAlong: 56,
    curve: [
      [0, 0, 0],
      [60, 0, 0],
      [60, -30, 0],
      [0, -30, 0],
    ],
  })
})

test('typical sizes are taken in one step', async () => {
  await page
    .getByRole('button', { name: /^Volume/ })
    .first()
    .click()
  await page.getByRole('button', { name: 'Typical sizes…' }).click()
  await page.getByRole('menuitem', { name: 'Small, 16 mm' }).click()
  expect(await thing('volume')).toMatchObject({ bodyDiameter: 16, hole: 7.4 })
  await page.keyboard.press('Control+z')
  expect(await thing('volume')).toMatchObject({ bodyDiameter: 24, hole: 9.8 })
})
