/** The page as a builder uses it: samples opened, places found on the drawings, things dragged with the mouse. */
import { readFileSync } from 'node:fs'
import type { Download, Page } from 'playwright-core'
import { type Design, type Face, type Point, readDesign } from '../../geometry/index.ts'
import { openFile } from './open-file.ts'

/** Opens the page for the first time, and in it a sample. */
export async function openPageWith(page: Page, address: string, sample: string): Promise<void> {
  await page.goto(address)
  await page.getByRole('button', { name: 'Look around first' }).click()
  await openSample(page, sample)
}

/** Opens a sample, by its file's name without the ending, in a page that is open. */
export async function openSample(page: Page, name: string): Promise<void> {
  const buffer = readFileSync(new URL(`../../sample-boxes/${name}.lidwright.json`, import.meta.url))
  const { title } = JSON.parse(buffer.toString()) as { title: string }
  await openFile(page, { name: `${name}.lidwright.json`, mimeType: 'application/json', buffer })
  await page.waitForFunction(
    (wanted) => [...document.querySelectorAll('input')].some((one) => one.value === wanted),
    title,
  )
}

/** Goes to a place by its tab. */
export async function goTo(page: Page, place: string): Promise<void> {
  await page
    .getByRole('navigation', { name: /Places/ })
    .getByRole('button', { name: new RegExp(`^${place}`) })
    .click()
}

/** Waits until nothing has changed for ten frames: what is fetched, laid out or drawn in steps has come to rest. */
export async function pageRests(page: Page): Promise<void> {
  await page.evaluate(
    () =>
      new Promise<void>((done) => {
        let still = 0
        const observer = new MutationObserver(() => {
          still = 0
        })
        observer.observe(document, { subtree: true, childList: true, attributes: true, characterData: true })
        const frame = () => {
          if (++still < 10) return requestAnimationFrame(frame)
          observer.disconnect()
          done()
        }
        requestAnimationFrame(frame)
      }),
  )
}

/** The text of a file that the page handed over. */
export async function textOf(download: Download): Promise<string> {
  return readFileSync(await download.path(), 'utf8')
}

/** The design as the page would save it now. */
export async function savedDesign(page: Page): Promise<Design> {
  const [download] = await Promise.all([page.waitForEvent('download'), page.keyboard.press('Control+s')])
  const read = readDesign(await textOf(download))
  if (!read.ok) throw new Error(`the page saved a design that cannot be read: ${read.faults[0]?.sentence}`)
  return read.design
}

/** A place on the screen, and how a way in millimetres (x along its frame, y in its frame's sense) runs there. */
export interface OnScreen extends Point {
  /** Pixels per millimetre. */
  readonly scale: number
  /** 1 where the frame's x runs to the right of the screen, else -1. */
  readonly right: number
  /** 1 where the frame's y runs up the screen, else -1. */
  readonly up: number
}

const PLAN = '[data-origin-x]'
const FACES = '[data-faces]'

/** Where a place of the plan, in the instrument's frame, is on the screen; see app/canvas/camera.ts. */
export async function onPlan(page: Page, at: Point): Promise<OnScreen> {
  const { data, left, top } = await drawing(page, PLAN)
  const [scale, ox, oy, up] = [data['scale'], data['originX'], data['originY'], data['up']].map(Number)
  return placed({ ox, oy, scale, right: 1, up }, at, left, top)
}

/** Where a place of a wall or of the base, in the face's own frame, is on the screen. */
export async function onFace(page: Page, face: Face, at: Point): Promise<OnScreen> {
  const { data, left, top } = await drawing(page, FACES)
  return placed(JSON.parse(data['faces'] ?? '{}')[face], at, left, top)
}

async function drawing(page: Page, which: string) {
  const element = page.locator(which).first()
  const box = await element.boundingBox()
  if (!box) throw new Error('the drawing is not on the screen')
  const data: Record<string, string | undefined> = await element.evaluate((one) => ({
    ...(one as HTMLElement).dataset,
  }))
  return { data, left: box.x, top: box.y }
}

function placed(
  frame: Record<'ox' | 'oy' | 'scale' | 'right' | 'up', number | undefined> & { turned?: boolean },
  at: Point,
  left: number,
  top: number,
): OnScreen {
  const { ox, oy, scale, right, up } = frame
  const numbers = [ox, oy, scale, right, up] as const
  if (numbers.some((one) => !Number.isFinite(one) || one === undefined))
    throw new Error(`the drawing does not say where it lies: ${numbers.join(', ')}`)
  const [x0, y0, k, r, u] = numbers as readonly [number, number, number, number, number]
  // A wall folded out beside the lid lies a quarter turned: its x runs up the screen.
  const [across, rising] = frame.turned ? [at.y, at.x] : [at.x, at.y]
  return { x: left + x0 + r * across * k, y: top + y0 - u * rising * k, scale: k, right: r, up: u }
}

export interface Dragging {
  /** Holds the key that lets no line take hold; true unless stated. */
  readonly free?: boolean
  /** Lets go of the button at the end; true unless stated. */
  readonly letGo?: boolean
}

/** Drags from a place by a way in pixels, in ten steps. */
export async function drag(page: Page, from: Point, by: Point, options: Dragging = {}): Promise<void> {
  const { free = true, letGo = true } = options
  await page.mouse.move(from.x, from.y)
  await page.mouse.down()
  if (free) await page.keyboard.down('Alt')
  for (let step = 1; step <= 10; step++)
    await page.mouse.move(from.x + (by.x * step) / 10, from.y + (by.y * step) / 10)
  if (letGo) await page.mouse.up()
  if (free) await page.keyboard.up('Alt')
}

/** How often each layer of the plan has been painted. */
export async function paintsOf(page: Page): Promise<{ ground: number; resting: number; live: number }> {
  const { data } = await drawing(page, PLAN)
  return {
    ground: Number(data['groundPaints']),
    resting: Number(data['restingPaints']),
    live: Number(data['livePaints']),
  }
}
