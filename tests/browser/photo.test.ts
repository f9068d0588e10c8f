/** A photograph of the lid: opened, its corners put by mouse and by keys, and found at true scale under the drawing. */
import type { Page } from 'playwright-core'
import { beforeEach, describe, expect, test } from 'vitest'
import { solve } from '../../geometry/index.ts'
import { goTo, onPlan, savedDesign } from '../support/bench-page.ts'
import { pinhole } from '../support/pinhole.ts'
import { readPng } from '../support/readPng.ts'
import { sharePage } from '../support/shared-page.ts'

const shared = sharePage('tea-box-three-strings', { viewport: { width: 1600, height: 1000 } })
let page: Page

beforeEach(async () => {
  page = await shared.begin()
  await goTo(page, 'Survey')
})

const view = { width: 1200, height: 900, focal: 1250, distance: 430 }
/** A disc on the lid, from its upper left corner, in mm. */
const disc = { u: 205, v: 160, radius: 20 }

/** What the camera sees of a lid with a disc on it, as a file of the page's own making. */
async function photograph(of: { long: number; high: number }, type: string, tilt: number): Promise<Buffer> {
  const camera = pinhole(of, view, tilt, -0.3, 0.1)
  const bytes = new Uint8Array(view.width * view.height)
  for (let y = 0; y < view.height; y++)
    for (let x = 0; x < view.width; x++) {
      const { u, v } = camera.place(x + 0.5, y + 0.5)
      const onLid = u >= 0 && v >= 0 && u <= of.long && v <= of.high
      const onDisc = Math.hypot(u - disc.u, v - disc.v) <= disc.radius
      bytes[y * view.width + x] = onDisc ? 2 : onLid ? 1 : 0
    }
  const kinds = Buffer.from(bytes).toString('base64')
  const url = await page.evaluate(
    ({ kinds, width, height, type }) => {
      const raw = atob(kinds)
      const canvas = Object.assign(document.createElement('canvas'), { width, height })
      const pen = canvas.getContext('2d')!
      const image = pen.createImageData(width, height)
      const colours = [
        [40, 44, 48],
        [200, 160, 100],
        [20, 60, 200],
      ]
      for (let at = 0; at < raw.length; at++) image.data.set([...colours[raw.charCodeAt(at)]!, 255], at * 4)
      pen.putImageData(image, 0, 0)
      return canvas.toDataURL(type, 0.95)
    },
    { kinds, width: view.width, height: view.height, type },
  )
  return Buffer.from(url.slice(url.indexOf(',') + 1), 'base64')
}

const choose = (name: string, mimeType: string, buffer: Buffer) =>
  page.locator('.photographs input[type=file]').setInputFiles({ name, mimeType, buffer })

/** From dots of the picture to the screen. */
async function onPicture(size: { width: number; height: number }) {
  const box = (await page.locator('.corners-picture').boundingBox())!
  const scale = Math.min(box.width / size.width, box.height / size.height)
  const left = box.x + (box.width - size.width * scale) / 2
  const top = box.y + (box.height - size.height * scale) / 2
  return ({ x, y }: { x: number; y: number }) => ({ x: left + x * scale, y: top + y * scale })
}

const lidSize = async () => {
  const { bounds } = solve(await savedDesign(page)).panels.lid
  return { long: bounds.maxX - bounds.minX, high: bounds.maxY - bounds.minY }
}

test('a lid photographed aslant lies at true scale under the drawing', async () => {
  const size = await lidSize()
  const camera = pinhole(size, view, 0.4, -0.3, 0.1)
  await choose('lid.webp', 'image/webp', await photograph(size, 'image/webp', 0.4))
  await page.getByRole('dialog').waitFor()
  const on = await onPicture(view)
  const wanted = [
    camera.seen(0, 0),
    camera.seen(size.long, 0),
    camera.seen(size.long, size.high),
    camera.seen(0, size.high),
  ]
  const inset = [
    { x: 0.1, y: 0.1 },
    { x: 0.9, y: 0.1 },
    { x: 0.9, y: 0.9 },
    { x: 0.1, y: 0.9 },
  ]
  for (const [index, to] of wanted.entries()) {
    const from = on({ x: inset[index]!.x * view.width, y: inset[index]!.y * view.height })
    const end = on(to)
    await page.mouse.move(from.x, from.y)
    await page.mouse.down()
    await page.mouse.move(end.x + 30, end.y + 20, { steps: 3 })
    // The glass is there while a handle is held, and only then.
    expect(await page.locator('.glass').count()).toBe(1)
    await page.mouse.move(end.x, end.y, { steps: 3 })
    await page.mouse.up()
    expect(await page.locator('.glass').count()).toBe(0)
  }
  // One handle by the keys: ten dots away and back.
  await page.getByRole('button', { name: /^Corner lower right/ }).focus()
  await page.keyboard.press('Shift+ArrowLeft')
  await page.keyboard.press('Shift+ArrowRight')
  await page.getByRole('button', { name: 'Use these corners' }).click()
  const design = await savedDesign(page)
  const photo = design.photos[0]!
  photo.corners.forEach((corner, index) => {
    expect(Math.hypot(corner.x - wanted[index]!.x, corner.y - wanted[index]!.y)).toBeLessThan(1.5)
  })

  await goTo(page, 'Survey')
  await page.getByLabel('Strength of the photograph of the lid').fill('1')
  await goTo(page, 'Lay out')
  const layout = solve(design)
  const { minX, maxY } = layout.panels.lid.bounds
  // From the disc's middle along a line without strings, holes or frets.
  const at = (du: number, dv: number) =>
    onPlan(page, { x: layout.panels.lid.originX + minX + disc.u + du, y: maxY - (disc.v + dv) })
  const blueAt = async (du: number, dv: number) => {
    const picture = readPng(await page.screenshot())
    const { x, y } = await at(du, dv)
    const [red, , blue] = picture.pixel(Math.round(x), Math.round(y))
    return blue > red + 40
  }
  await expect.poll(() => blueAt(3, 3)).toBe(true)
  const near = disc.radius / Math.SQRT2
  for (const [du, dv] of [
    [1, 1],
    [-1, 1],
    [1, -1],
  ] as const) {
    expect(await blueAt(du * (near - 0.8), dv * (near - 0.8))).toBe(true)
    expect(await blueAt(du * (near + 0.8), dv * (near + 0.8))).toBe(false)
  }
})

describe('what is taken', () => {
  test('a picture that the camera turned, by its EXIF', async () => {
    const jpeg = await photograph(await lidSize(), 'image/jpeg', 0.2)
    // APP1 with one entry, orientation 6: turned by a quarter (Exif 2.3, 4.6.4 A, tag 0x0112).
    const exif = Buffer.from(
      'ffe1002245786966000049492a000800000001001201030001000000060000000000000000',
      'hex',
    )
    exif.writeUInt16BE(exif.length - 2, 2)
    await choose('turned.jpg', 'image/jpeg', Buffer.concat([jpeg.subarray(0, 2), exif, jpeg.subarray(2)]))
    await page.getByRole('dialog').waitFor()
    expect(await page.locator('.corners-picture').getAttribute('viewBox')).toBe(
      `0 0 ${view.height} ${view.width}`,
    )
    // Keys belong to the dialog, though it has no field to type in: none of them reaches the page behind it.
    await page.getByRole('button', { name: 'Turn by a quarter' }).focus()
    await page.keyboard.press('5')
    await page.keyboard.press('Escape')
    await page.getByRole('dialog').waitFor({ state: 'hidden' })
    expect(await page.locator('.photographs').count()).toBe(1)
  })

  test('a photograph of fifty megapixels, made smaller and its size said', async () => {
    const url = await page.evaluate(() => {
      const canvas = Object.assign(document.createElement('canvas'), { width: 8200, height: 6150 })
      const pen = canvas.getContext('2d')!
      pen.fillStyle = '#a86'
      pen.fillRect(0, 0, 8200, 6150)
      pen.fillStyle = '#234'
      pen.fillRect(1000, 1000, 6000, 4000)
      return canvas.toDataURL('image/jpeg', 0.8)
    })
    await choose('large.jpg', 'image/jpeg', Buffer.from(url.slice(url.indexOf(',') + 1), 'base64'))
    await page.getByRole('button', { name: 'Use these corners' }).click({ timeout: 20_000 })
    await page.getByText(/^1800 × 1350 dots, \d+ kB of the design$/).waitFor()
    const { photos } = await savedDesign(page)
    expect([photos[0]?.width, photos[0]?.height]).toEqual([1800, 1350])
  })

  test('no picture that is broken: a sentence, and the design as it was', async () => {
    const before = await savedDesign(page)
    await choose('broken.png', 'image/png', Buffer.from('89504e470d0a1a0a0000', 'hex'))
    await page
      .getByRole('alert')
      .getByText(/“broken.png” could not be opened as a picture/)
      .waitFor()
    expect(await page.getByRole('dialog').count()).toBe(0)
    expect(await savedDesign(page)).toEqual(before)
  })

  test('no corners that cross', async () => {
    await choose('lid.png', 'image/png', await photograph(await lidSize(), 'image/png', 0))
    await page.getByRole('dialog').waitFor()
    const on = await onPicture(view)
    const [from, to] = [on({ x: 120, y: 90 }), on({ x: 1140, y: 820 })]
    await page.mouse.move(from.x, from.y)
    await page.mouse.down()
    await page.mouse.move(to.x, to.y, { steps: 4 })
    await page.mouse.up()
    await page
      .getByRole('alert')
      .getByText(/^The picture holds /)
      .waitFor()
    expect(await page.getByRole('button', { name: 'Use these corners' }).isDisabled()).toBe(true)
  })
})
