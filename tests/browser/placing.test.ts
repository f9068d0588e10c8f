/** Placing with the real mouse and keyboard: handles, holds, ghosts, pairs, rows, several at once, measures. */
import type { Page } from 'playwright-core'
import { beforeEach, describe, expect, test } from 'vitest'
import { type Design, measuredOn, type Point, solve, type Thing } from '../../geometry/index.ts'
import { drag, goTo, onPlan, pageRests, paintsOf, savedDesign } from '../support/bench-page.ts'
import { sharePage } from '../support/shared-page.ts'

const shared = sharePage('tea-box-three-strings', { viewport: { width: 1600, height: 1000 } })
let page: Page
let start: Design

beforeEach(async () => {
  page = await shared.begin()
  await goTo(page, 'Lay out')
  await page.locator('[data-origin-x]').first().waitFor()
  start = await savedDesign(page)
})

const placed = (design: Design, id: string) => {
  const found = solve(design).placed.find((one) => one.thing.id === id)
  if (!found) throw new Error(`there is no ${id}`)
  return found
}

const field = (design: Design, id: string, name: string): unknown =>
  (design.things.find((one: Thing) => one.id === id) as Record<string, unknown> | undefined)?.[name]

const inPlan = (design: Design, id: string): Point => {
  const { at, face } = placed(design, id)
  return { x: at.x + solve(design).panels[face].originX, y: at.y }
}

const screenOf = async (id: string, design = start) => onPlan(page, inPlan(design, id))

async function press(id: string, options: { button?: 'right'; shift?: boolean } = {}): Promise<void> {
  const at = await screenOf(id)
  if (options.shift) await page.keyboard.down('Shift')
  await page.mouse.click(at.x, at.y, options.button ? { button: options.button } : {})
  if (options.shift) await page.keyboard.up('Shift')
}

/** Pixels from the edge of a thing to its handle; see app/canvas/handles.ts. */
const OFF = 10

describe('handles', () => {
  test('the edge of a hole is dragged: centre stays, the partner keeps the same size, one entry', async () => {
    await press('hole-treble')
    const at = await screenOf('hole-treble')
    const before = Number(field(start, 'hole-treble', 'diameter'))
    const edge = { x: at.x + (before / 2) * at.scale + OFF, y: at.y }
    await drag(page, edge, { x: 4 * at.scale, y: 0 })
    const after = await savedDesign(page)
    expect(field(after, 'hole-treble', 'diameter')).toBeCloseTo(before + 8, 0)
    expect(field(after, 'hole-bass', 'diameter')).toBe(field(after, 'hole-treble', 'diameter'))
    expect(placed(after, 'hole-treble').at.x).toBeCloseTo(placed(start, 'hole-treble').at.x, 9)
    await page.keyboard.press('Control+z')
    expect(await savedDesign(page)).toEqual(start)
  })

  test('with Shift the far edge stays', async () => {
    await press('hole-treble')
    const at = await screenOf('hole-treble')
    const before = Number(field(start, 'hole-treble', 'diameter'))
    await page.keyboard.down('Shift')
    await drag(page, { x: at.x + (before / 2) * at.scale + OFF, y: at.y }, { x: 8 * at.scale, y: 0 })
    await page.keyboard.up('Shift')
    const after = await savedDesign(page)
    const grown = Number(field(after, 'hole-treble', 'diameter')) - before
    expect(grown).toBeCloseTo(8, 0)
    expect(placed(after, 'hole-treble').at.x - grown / 2).toBeCloseTo(placed(start, 'hole-treble').at.x, 6)
  })

  test('a handle pressed and let go gives the keyboard to its field, and arithmetic is taken', async () => {
    await press('hole-treble')
    const at = await screenOf('hole-treble')
    const before = Number(field(start, 'hole-treble', 'diameter'))
    await page.mouse.click(at.x + (before / 2) * at.scale + OFF, at.y)
    await page.keyboard.type('9 1/2 / 10 + 3mm')
    await page.keyboard.press('Enter')
    // 0.95 in are 24.13 mm (25.4 mm to the inch).
    expect(field(await savedDesign(page), 'hole-treble', 'diameter')).toBeCloseTo(27.13, 6)
  })

  test('a slot is turned by its handle, in whole steps, and its mirror image turns the other way', async () => {
    await press('hole-treble')
    await page
      .getByRole('radio', { name: 'slot' })
      .or(page.getByText('slot', { exact: true }))
      .first()
      .click()
    const slot = await savedDesign(page)
    expect(field(slot, 'hole-bass', 'shape')).toBe('slot')
    const at = await screenOf('hole-treble', slot)
    const { minY, maxY } = { minY: 0, maxY: Number(field(slot, 'hole-treble', 'sizeAcross')) }
    const arm = ((maxY - minY) / 2) * at.scale + 34
    // From straight up the screen to straight right of the centre: a quarter turn from treble to tail.
    await page.mouse.move(at.x, at.y - at.up * arm)
    await page.mouse.down()
    for (let step = 1; step <= 8; step++) {
      const angle = (step / 8) * (Math.PI / 2)
      await page.mouse.move(at.x + Math.sin(angle) * arm, at.y - at.up * Math.cos(angle) * arm)
    }
    await page.mouse.up()
    const after = await savedDesign(page)
    expect(field(after, 'hole-treble', 'turnDegrees')).toBe(-90)
    expect(field(after, 'hole-bass', 'turnDegrees')).toBe(90)
  })
})

describe('several at once', () => {
  test('a frame dragged with Shift selects what it meets; they move together as one entry', async () => {
    const { panels } = solve(start)
    const corner = await onPlan(page, { x: panels.lid.originX + 2, y: panels.lid.bounds.maxY + 3 })
    const middle = await onPlan(page, { x: panels.lid.originX + 100, y: panels.lid.bounds.minY - 3 })
    await page.keyboard.down('Shift')
    await drag(page, corner, { x: middle.x - corner.x, y: middle.y - corner.y }, { free: false })
    await page.keyboard.up('Shift')
    const chosen = page.locator('.thing-row.chosen')
    await expect.poll(() => chosen.count()).toBe(4)
    const at = await screenOf('hole-treble')
    await drag(page, at, { x: 6 * at.scale, y: 0 })
    const after = await savedDesign(page)
    for (const id of ['hole-treble', 'hole-bass', 'screw-1', 'screw-2'])
      expect(placed(after, id).at.x).toBeCloseTo(placed(start, id).at.x + 6, 0)
    expect(placed(after, 'screw-3').at).toEqual(placed(start, 'screw-3').at)
    await page.keyboard.press('Control+z')
    expect(await savedDesign(page)).toEqual(start)
  })

  test('by list: Ctrl adds, centres are lined up with the last, three are spaced evenly', async () => {
    for (const [index, name] of ['Screw 1', 'Screw 3', 'Treble hole'].entries())
      await page
        .getByRole('button', { name: new RegExp(`^${name}`) })
        .first()
        .click(index === 0 ? {} : { modifiers: ['Control'] })
    await expect.poll(() => page.locator('.thing-row.chosen').count()).toBe(3)
    await page.getByRole('button', { name: 'Line the centres up along the face' }).click()
    await page.getByText('Line the centres up along the face: done.').waitFor({ state: 'attached' })
    const lined = await savedDesign(page)
    const lead = placed(lined, 'hole-treble').at.y
    expect(placed(lined, 'screw-1').at.y).toBeCloseTo(lead, 6)
    expect(placed(lined, 'screw-3').at.y).toBeCloseTo(lead, 6)
    await page.getByRole('button', { name: 'Space evenly along the face' }).click()
    await page.getByText('Spaced evenly.').waitFor({ state: 'attached' })
    const spaced = await savedDesign(page)
    const [a, b, c] = ['screw-1', 'screw-3', 'hole-treble']
      .map((id) => placed(spaced, id))
      .sort((one, other) => one.at.x - other.at.x)
      .map(({ bounds }) => bounds)
    if (!a || !b || !c) throw new Error('one is missing')
    expect(b.minX - a.maxX).toBeCloseTo(c.minX - b.maxX, 5)
  })

  test('what is locked stays, whatever is dragged or nudged, until it is let go', async () => {
    await press('hole-treble')
    await page.keyboard.press('l')
    await page.getByText('Treble hole locked').waitFor()
    const locked = await savedDesign(page)
    expect(field(locked, 'hole-treble', 'locked')).toBe(true)
    await page.keyboard.press('ArrowRight')
    await page.keyboard.press('l')
    await page.keyboard.press('l')
    expect(placed(await savedDesign(page), 'hole-treble').at).toEqual(placed(start, 'hole-treble').at)
    await page.getByText('Treble hole locked').waitFor()
  })

  test('a group is chosen and moved by any of its things', async () => {
    await press('screw-1')
    await press('screw-3', { shift: true })
    await page.keyboard.press('Control+g')
    await page.keyboard.press('Escape')
    await press('screw-3')
    await page.keyboard.press('ArrowUp')
    await page.keyboard.press('ArrowUp')
    // Said once the keys rest: by then both steps are entered.
    await page.getByText(/^Screw 3: .* from the/).waitFor({ state: 'attached' })
    const after = await savedDesign(page)
    for (const id of ['screw-1', 'screw-3'])
      expect(placed(after, id).at.y).toBeCloseTo(placed(start, id).at.y + (2 * 25.4) / 32, 5)
  })
})

test('a row is made from one and follows it; a right click offers it', async () => {
  await press('screw-1', { button: 'right' })
  await page.getByRole('menuitem', { name: /Row or ring/ }).click()
  const dialog = page.getByRole('dialog')
  await dialog.getByLabel('Centre to centre').fill('20 mm')
  await dialog.getByLabel('Centre to centre').press('Enter')
  const made = await savedDesign(page)
  const row = made.things.filter((one) => typeof one.along === 'object' && 'from' in one.along)
  expect(row.map((one) => one.along)).toEqual([
    { from: 'screw-1', by: 20 },
    { from: 'screw-1', by: 40 },
  ])
  await page.keyboard.press('ArrowRight')
  const moved = await savedDesign(page)
  for (const { id } of row) expect(placed(moved, id).at.x - placed(made, id).at.x).toBeCloseTo(25.4 / 32, 5)
})

test('a measure pressed out on the drawing stays, follows, and goes on the sheets only if asked', async () => {
  await page.keyboard.press('d')
  const at = await screenOf('hole-treble')
  await page.mouse.click(at.x, at.y)
  const edge = await onPlan(page, { x: inPlan(start, 'hole-treble').x + 8, y: solve(start).box.halfWidth })
  await page.mouse.click(edge.x, edge.y)
  await page.keyboard.press('Escape')
  const noted = await savedDesign(page)
  expect(noted.measures).toEqual([
    {
      face: 'lid',
      from: { of: 'hole-treble', at: 'centre' },
      to: { of: 'treble edge', at: 'edge' },
      way: 'straight',
      name: '',
      onSheets: false,
    },
  ])
  const { maxY } = solve(noted).panels.lid.bounds
  expect(measuredOn(solve(noted))[0]?.mm).toBeCloseTo(maxY - placed(noted, 'hole-treble').at.y, 6)
  await page.getByLabel('on the sheets').check()
  expect((await savedDesign(page)).measures[0]?.onSheets).toBe(true)
  await page.getByRole('button', { name: /Take the measure away/ }).click()
  expect((await savedDesign(page)).measures).toEqual([])
})

test('the end of a measure is dragged to another line as one entry, and its name is changed from the list', async () => {
  await page.keyboard.press('d')
  const hole = await screenOf('hole-treble')
  await page.mouse.click(hole.x, hole.y)
  const { x, y } = inPlan(start, 'hole-treble')
  const { box } = solve(start)
  const edge = await onPlan(page, { x: x + 8, y: box.halfWidth })
  await page.mouse.click(edge.x, edge.y)
  await page.keyboard.press('Escape')
  const noted = await savedDesign(page)

  // The ring lies where the measure meets the edge. Let go where there is nothing, it stays.
  const ring = await onPlan(page, { x, y: box.halfWidth })
  await drag(page, ring, { x: 0, y: -60 })
  expect(await savedDesign(page)).toEqual(noted)

  const line = await onPlan(page, { x: x + 12, y: 0 })
  await drag(page, ring, { x: line.x - ring.x, y: line.y - ring.y })
  const moved = await savedDesign(page)
  expect(moved.measures).toEqual([{ ...noted.measures[0], to: { of: 'centreline', at: 'edge' } }])
  expect(measuredOn(solve(moved))[0]?.mm).toBeCloseTo(Math.abs(y), 6)
  // Nothing else was moved by it.
  expect(moved.things).toEqual(noted.things)
  await page.keyboard.press('Control+z')
  expect(await savedDesign(page)).toEqual(noted)
  await page.keyboard.press('Control+Shift+z')

  await page.getByRole('button', { name: /^Change the measure/ }).click()
  const dialog = page.getByRole('dialog', { name: 'Change the measure' })
  await dialog.getByLabel(/What it is called/).fill('hole off the middle')
  await dialog.getByRole('combobox').nth(2).selectOption({ label: 'bass edge' })
  await dialog.getByLabel('Draw it on the sheets too').check()
  await dialog.getByRole('button', { name: 'Keep the changes' }).click()
  const changed = await savedDesign(page)
  expect(changed.measures).toEqual([
    {
      ...noted.measures[0],
      to: { of: 'bass edge', at: 'edge' },
      name: 'hole off the middle',
      onSheets: true,
    },
  ])
  expect(await page.getByRole('region', { name: 'Measures' }).textContent()).toContain('hole off the middle')
})

test('one drag step paints the living layer once, and neither sheet nor resting things', async () => {
  await press('hole-treble')
  const at = await screenOf('hole-treble')
  const frames = (howMany: number) =>
    page.evaluate(async (count) => {
      for (let frame = 0; frame < count; frame++) await new Promise(requestAnimationFrame)
    }, howMany)
  await page.mouse.move(at.x, at.y)
  await page.mouse.down()
  await page.mouse.move(at.x + 12, at.y)
  await frames(3)
  for (let step = 1; step <= 5; step++) {
    const before = await paintsOf(page)
    await page.mouse.move(at.x + 12 + step * 6, at.y)
    await frames(3)
    const after = await paintsOf(page)
    expect(after.ground - before.ground).toBe(0)
    expect(after.resting - before.resting).toBe(0)
    expect(after.live - before.live).toBe(1)
  }
  await page.mouse.up()
})

test('the list of all actions tells every key, and finds them by a word', async () => {
  await page.keyboard.press('Control+k')
  const dialog = page.getByRole('dialog')
  await dialog.getByLabel('Find an action').fill('space evenly')
  await expect.poll(() => dialog.getByRole('listitem').count()).toBe(2)
  await dialog.getByLabel('Find an action').fill('turn')
  expect(await dialog.getByRole('listitem').count()).toBeGreaterThanOrEqual(4)
})

test('at 200 % of a large screen everything is still there: nothing runs off sideways, a hole is still dragged', async () => {
  // 1600 × 1000 at 200 % are 800 × 500 CSS pixels (WCAG 2.2, 1.4.4 and 1.4.10).
  await page.setViewportSize({ width: 800, height: 500 })
  for (const place of ['Survey', 'Choose', 'Prove', 'Transfer', 'Lay out']) {
    await goTo(page, place)
    const wide = await page.evaluate(() => document.documentElement.scrollWidth)
    expect([place, wide <= 800]).toEqual([place, true])
  }
  await page.locator('[data-origin-x]').first().waitFor()
  await page.keyboard.press('b')
  await pageRests(page)
  const at = await screenOf('hole-treble')
  await page.mouse.click(at.x, at.y)
  await drag(page, at, { x: 20 * at.scale, y: 0 })
  expect(placed(await savedDesign(page), 'hole-treble').at.x).toBeCloseTo(
    placed(start, 'hole-treble').at.x + 20,
    -1,
  )
  const fields = page.getByRole('complementary', { name: 'What is selected' })
  await fields.scrollIntoViewIfNeeded()
  expect((await fields.boundingBox())?.width ?? 0).toBeGreaterThan(300)
})

test('on a tablet held upright the drawing of every place is in sight, and nothing has to be scrolled to reach it', async () => {
  await page.setViewportSize({ width: 768, height: 1024 })
  const drawings = {
    Survey: '.box-drawing',
    Choose: '[data-origin-x]',
    'Lay out': '[data-origin-x]',
    Prove: '[data-origin-x]',
    Transfer: '.part-large',
    Record: '.build-sheet .sheet-picture',
  }
  for (const [place, drawing] of Object.entries(drawings)) {
    await goTo(page, place)
    await page.locator(drawing).first().waitFor()
    await pageRests(page)
    const { width, height } = await page.evaluate(() => ({
      width: document.documentElement.scrollWidth,
      height: document.documentElement.scrollHeight,
    }))
    expect([place, width, height]).toEqual([place, 768, 1024])
    const box = await page.locator(drawing).first().boundingBox()
    expect([place, (box?.height ?? 0) > 120, (box?.y ?? 0) + (box?.height ?? 0) < 1024]).toEqual([
      place,
      true,
      true,
    ])
  }
})
