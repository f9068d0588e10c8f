/**
 * How long a frame takes while one thing is dragged among many drawn ones, in a real browser slowed to a quarter of its
 * speed. Wanted: 95 % of frames within one display frame, none over 50 ms. On a busy machine the figures say more about the
 * others than about the page: the first row tells what an empty page gives at the same moment, and each thing is dragged
 * several times. What others do can only make a round longer, so the quietest one says what the page costs, and all are shown.
 */
import type { CDPSession, Page } from 'playwright-core'
import { solve } from '../../geometry/index.ts'
import { goTo, onPlan } from '../support/bench-page.ts'
import { launch } from '../support/browser.ts'
import { openFile } from '../support/open-file.ts'
import { manyHoles, rosetteLid } from './lids.ts'
import { exact, type Row } from './row.ts'

/** What is dragged, and on what. */
const CASES = [
  ...[50, 500, 5000].map((howMany) => ({
    name: `${howMany} things`,
    design: manyHoles(howMany),
    dragged: Math.floor(howMany / 2) + 2,
  })),
  { name: 'a rosette of some 2,000 holes', design: rosetteLid(), dragged: 0 },
]
const SLOWER = 4
/** Steps of a drag, one sent for each display frame, and how often it is done. */
const STEPS = 240
const ROUNDS = 5
const FRAME = 1000 / 60

const DISPLAY_FRAME = 16.8

/** The time that such a share of the frames stayed below, ms. */
function shareOf(times: readonly number[], share: number): number {
  const sorted = [...times].sort((a, b) => a - b)
  return sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] ?? 0
}

const MOST = 0.95

function rowsOf(name: string, rounds: readonly (readonly number[])[], wanted: boolean): Row[] {
  const [times = []] = [...rounds].sort((a, b) => shareOf(a, MOST) - shareOf(b, MOST))
  const at = (share: number) => shareOf(times, share)
  const everyRound = (share: number) =>
    rounds.length > 1 ? `of ${rounds.map((one) => shareOf(one, share).toFixed(1)).join(', ')}` : ''
  return [
    {
      name,
      unit: 'ms',
      median: at(0.5),
      low: at(0.25),
      high: at(0.75),
      wanted: null,
      more: `${times.length} frames`,
    },
    {
      ...exact(`${name}, 95 % of them`, 'ms', at(MOST), wanted ? DISPLAY_FRAME : null),
      more: everyRound(MOST),
    },
    { ...exact(`${name}, the longest`, 'ms', at(1), wanted ? 50 : null), more: everyRound(1) },
  ]
}

/** Runs in the page; as text, because what loads this file would put its own helpers into a function. */
const WATCH = `(() => {
  const state = { on: true, between: [], busy: [] }
  window.frameTimes = state
  let last = 0
  let began = 0
  const channel = new MessageChannel()
  // The message comes when the frame's own work (scripts, layout, paint orders) is done.
  channel.port1.onmessage = () => state.busy.push(performance.now() - began)
  function next(now) {
    if (!state.on) return
    if (last > 0) state.between.push(now - last)
    last = now
    began = performance.now()
    channel.port2.postMessage(0)
    requestAnimationFrame(next)
  }
  requestAnimationFrame(next)
})()`

/** Times between frames, and the work done inside each, while `work` goes on. */
async function framesDuring(page: Page, work: () => Promise<void>) {
  await page.evaluate(WATCH)
  await work()
  return page.evaluate(() => {
    const { frameTimes } = window as unknown as {
      frameTimes: { on: boolean; between: number[]; busy: number[] }
    }
    frameTimes.on = false
    return frameTimes
  })
}

/** Mouse moves sent one per display frame and not waited for: a waited one gives one move per two frames. */
async function dragSteps(session: CDPSession, from: { x: number; y: number }): Promise<void> {
  const start = performance.now()
  const sent: Promise<unknown>[] = []
  for (let step = 0; step < STEPS; step++) {
    const angle = (step / STEPS) * 4 * Math.PI
    const x = from.x + 40 * Math.sin(angle)
    const y = from.y + 26 * Math.sin(angle * 1.7)
    sent.push(
      session.send('Input.dispatchMouseEvent', { type: 'mouseMoved', x, y, button: 'left', buttons: 1 }),
    )
    const wait = start + (step + 1) * FRAME - performance.now()
    if (wait > 0) await new Promise((done) => setTimeout(done, wait))
  }
  await Promise.all(sent)
}

/** Drags in the page served at an address. */
export async function* frameRows(address: string): AsyncGenerator<Row> {
  const browser = await launch()
  try {
    const page = await browser.newPage({ viewport: { width: 1280, height: 800 } })
    const session = await page.context().newCDPSession(page)
    const slow = (rate: number) => session.send('Emulation.setCPUThrottlingRate', { rate })
    await page.goto('about:blank')
    await slow(SLOWER)
    const idle = await framesDuring(page, () => new Promise((done) => setTimeout(done, 2000)))
    yield* rowsOf('between frames of an empty page', [idle.between], false)
    await slow(1)
    await page.goto(address)
    await page.getByRole('button', { name: 'Look around first' }).click()
    for (const { name, design, dragged } of CASES) {
      const layout = solve(design)
      const first = layout.placed[dragged]
      if (!first) throw new Error('there is nothing to drag')
      await openFile(page, {
        name: 'many.lidwright.json',
        mimeType: 'application/json',
        buffer: Buffer.from(JSON.stringify(design)),
      })
      await page.waitForFunction(
        (wanted) => [...document.querySelectorAll('input')].some((one) => one.value === wanted),
        design.title,
      )
      await goTo(page, 'Lay out')
      await page.locator('[data-origin-x]').first().waitFor()
      await page.waitForTimeout(1500)
      const at = await onPlan(page, { x: layout.panels.lid.originX + first.at.x, y: first.at.y })
      await slow(SLOWER)
      await page.mouse.move(at.x, at.y)
      await page.mouse.down()
      // The drag begins and its first frames are not counted: they take hold and draw the sheet once.
      for (const step of [4, 8, 12]) await page.mouse.move(at.x + step, at.y)
      await page.waitForTimeout(1200)
      const rounds: number[][] = []
      for (let round = 0; round < ROUNDS; round++)
        rounds.push((await framesDuring(page, () => dragSteps(session, at))).busy)
      yield* rowsOf(`work in a frame, slowed × ${SLOWER}, dragging ${name}`, rounds, true)
      await page.keyboard.press('Escape')
      await page.mouse.up()
      await slow(1)
    }
  } finally {
    await browser.close()
  }
}
