/** The box as it really is: pieces and pictures drawn with the mouse, the lid opened, the air's note read. */
import type { Page } from 'playwright-core'
import { beforeAll, expect, inject, test } from 'vitest'
import { check, lidMotionOf, solve, soundOf } from '../../geometry/index.ts'
import { violationsOf } from '../support/axe.ts'
import { goTo, openPageWith, savedDesign } from '../support/bench-page.ts'
import { newContext } from '../support/browser.ts'
import { nothingWrong, type Watched, watchPage } from '../support/watch-page.ts'

const address = inject('address')

let page: Page
let watched: Watched

beforeAll(async () => {
  const context = await newContext({
    viewport: { width: 1600, height: 1000 },
    reducedMotion: 'reduce',
  })
  page = await context.newPage()
  watched = watchPage(page, address)
  await openPageWith(page, address, 'sewing-box-hinged-three-strings')
  await goTo(page, 'Survey')
  // It comes after the first screen, and the drawing over it then grows smaller.
  await page.getByRole('button', { name: 'Open the lid' }).waitFor()
})

/** The middle of a piece on the plan. */
async function middleOf(name: RegExp) {
  const box = await page.getByRole('button', { name }).boundingBox()
  if (!box) throw new Error(`${name} is not on the plan`)
  return { x: box.x + box.width / 2, y: box.y + box.height / 2, width: box.width }
}

test('a block dragged on the plan moves in the design, and one step back brings it home', async () => {
  const before = await savedDesign(page)
  const at = await middleOf(/corner block corner-1: arrow keys/)
  await page.mouse.move(at.x, at.y)
  await page.mouse.down()
  for (let step = 1; step <= 8; step++) await page.mouse.move(at.x + step * 6, at.y - step * 4)
  await page.mouse.up()
  const after = await savedDesign(page)
  const [was, now] = [before, after].map((one) => one.box.inside.find(({ id }) => id === 'corner-1'))
  // Right on the screen is towards the tail, up is treble; both by the same scale.
  const [along, across] = [(now?.along ?? 0) - (was?.along ?? 0), (now?.across ?? 0) - (was?.across ?? 0)]
  expect(along).toBeGreaterThan(5)
  expect(across).toBeGreaterThan(3)
  expect(Math.abs(along / across - 48 / 32)).toBeLessThan(0.15)
  await page.getByRole('button', { name: 'Undo' }).click()
  expect((await savedDesign(page)).box.inside).toEqual(before.box.inside)
})

test('arrow keys nudge a piece by one step of the rule', async () => {
  const before = await savedDesign(page)
  await page.getByRole('button', { name: /liner liner: arrow keys|Treble liner liner: arrow keys/ }).focus()
  await page.keyboard.press('ArrowRight')
  const after = await savedDesign(page)
  const place = (design: typeof before) => design.box.inside.find(({ id }) => id === 'liner')?.along ?? 0
  expect(place(after) - place(before)).toBeCloseTo(1, 9)
  await page.getByRole('button', { name: 'Undo' }).click()
})

test('a piece drawn with the mouse is as large as it was drawn, and then stands in the way of a hole', async () => {
  const before = await savedDesign(page)
  await page.getByRole('button', { name: 'Draw on the plan' }).click()
  // The corner block is 18 mm: it tells the scale.
  const corner = await middleOf(/corner block corner-2: arrow keys/)
  const scale = corner.width / 18
  const hole = { x: corner.x + 48 * scale, y: corner.y + 22 * scale }
  await page.mouse.move(hole.x - 15 * scale, hole.y - 10 * scale)
  await page.mouse.down()
  await page.mouse.move(hole.x, hole.y)
  await page.mouse.move(hole.x + 15 * scale, hole.y + 10 * scale)
  await page.mouse.up()
  const after = await savedDesign(page)
  const drawn = after.box.inside.at(-1)
  expect(after.box.inside.length).toBe(before.box.inside.length + 1)
  expect(Math.abs((drawn?.long ?? 0) - 30)).toBeLessThanOrEqual(2)
  expect(Math.abs((drawn?.wide ?? 0) - 20)).toBeLessThanOrEqual(2)
  const told = check(solve(after)).filter((one) => one.rule === 'opening-to-inside' && one.grade === 'stop')
  expect(told.map((one) => one.about)).toEqual([['hole-treble', drawn?.id]])
  await page.getByRole('button', { name: 'Undo' }).click()
  expect((await savedDesign(page)).box.inside).toEqual(before.box.inside)
})

test('an outline is drawn corner by corner and closed at the first', async () => {
  await page.getByRole('button', { name: 'Draw its corners' }).click()
  const corner = await middleOf(/corner block corner-4: arrow keys/)
  const at = { x: corner.x - 80, y: corner.y + 300 }
  const corners = [
    [0, 0],
    [60, 10],
    [40, 50],
    [0, 0],
  ]
  for (const [x = 0, y = 0] of corners) {
    await page.mouse.move(at.x + x, at.y + y)
    await page.mouse.down()
    await page.mouse.up()
  }
  const after = await savedDesign(page)
  const drawn = after.artwork.at(-1)
  expect(drawn).toMatchObject({ shape: 'drawn', face: 'lid' })
  expect(drawn?.outline).toHaveLength(3)
  await page.getByRole('button', { name: 'Undo' }).click()
})

test('the lid opens as far as the engine says, at once where less motion is asked for', async () => {
  const motion = lidMotionOf(solve(await savedDesign(page)))
  if (motion?.by !== 'hinge') throw new Error('no hinge')
  await page.getByRole('button', { name: 'Open the lid' }).click()
  await page.getByText(`Opened ${((motion.swing.wanted * 180) / Math.PI).toFixed(1)}°`).waitFor()
  await page.getByRole('button', { name: 'Close the lid' }).click()
  await page.getByText('Opened 0.0°').waitFor()
})

test('a hinge across the neck is told as what it does', async () => {
  await page.getByRole('combobox', { name: 'Hinged on' }).selectOption('tail end')
  await page.getByText(/It opens \d+\.\d° and then bites/).waitFor()
  await page.getByRole('button', { name: 'What would cure it' }).click()
  await page.getByRole('button', { name: /^Gap at the neck: / }).click()
  await page.getByText('It opens 90.0°, as far as is wanted.').waitFor()
  await page.getByRole('button', { name: 'Undo' }).click()
  await page.getByRole('button', { name: 'Undo' }).click()
})

test('the air’s note and the weight in Choose are the engine’s', async () => {
  await goTo(page, 'Choose')
  await page.getByRole('tab', { name: 'Air and weight' }).click()
  const { note } = soundOf(solve(await savedDesign(page)))
  await page.getByText(`, ${note?.hertz.toFixed(0)} Hz, is what the air speaks best.`).waitFor()
})

test.each(['Survey', 'Choose'])('%s is reachable for everybody', async (place) => {
  await goTo(page, place)
  expect(await violationsOf(page)).toEqual([])
})

test('nothing went wrong in the page', () => {
  expect(watched).toEqual(nothingWrong)
})
