/**
 * How long a builder waits for the first answer of "place for me", in a real browser slowed to a
 * quarter of its speed, from the press of the button to the answer on the screen. Wanted: within one second. The search
 * runs on the page's own thread in stretches, so what slows the page slows it: no worker escapes the measure. Also told: the
 * longest time between two frames while the search and the fit table go on, since neither may hold up the page.
 * One row tells whether the slowing reaches what is measured.
 */
import type { Page } from 'playwright-core'
import { goTo, openSample } from '../support/bench-page.ts'
import { launch } from '../support/browser.ts'
import { exact, type Row } from './row.ts'

const SLOWER = 4
/** Among them the one with most to place, and one that is hardly larger than what stands on it. */
const SAMPLES = ['tea-box-three-strings', 'ferry-crate-electric', 'wine-case-six-strings', 'watch-box-tight']
const TIMES = 5

interface Waited {
  readonly first: number
  readonly whole: number
  readonly longest: number
}

/** Runs in the page; as text, because what loads this file would put its own helpers into a function. */
const waiting = (button: string, first: string, whole: string) => `new Promise((done) => {
  const press = [...document.querySelectorAll('button')].find((one) => one.textContent.match(${button}))
  let [first, last, longest] = [0, 0, 0]
  const start = performance.now()
  press.click()
  const look = (now) => {
    if (last > 0) longest = Math.max(longest, now - last)
    last = now
    if (first === 0 && (${first})) first = performance.now() - start
    if (first > 0 && (${whole})) return done({ first, whole: performance.now() - start, longest })
    if (performance.now() - start > 60000) return done({ first, whole: 60000, longest })
    requestAnimationFrame(look)
  }
  requestAnimationFrame(look)
})`

const PLACED = waiting(
  '/^(Find places|Search again)$/',
  `document.querySelector('.place-answers li')`,
  `[...document.querySelectorAll('.place-for-me [role=status]')].some((one) => /worth telling/.test(one.textContent))`,
)
const FITTED = waiting(
  '/^What fits this box/',
  `/ of [1-9]\\d* rows can be built/.test(document.body.textContent)`,
  `/ of [1-9]\\d* rows can be built/.test(document.body.textContent)`,
)

/** Some work that never changes, in the page: says whether the slowing reaches what is measured. */
const SAME_WORK = `(() => {
  const start = performance.now()
  let sum = 0
  for (let index = 0; index < 3e7; index++) sum += Math.sqrt(index)
  return sum > 0 ? performance.now() - start : 0
})()`

const middle = (values: readonly number[]) => [...values].sort((a, b) => a - b)[values.length >> 1] ?? 0

/** One millisecond and more from press to answer, of several presses; the first press is told by itself, since it is cold. */
function waitOf(name: string, times: readonly number[], wanted: number): Row {
  const sorted = [...times].sort((a, b) => a - b)
  return {
    name,
    unit: 'ms',
    median: middle(sorted),
    low: sorted[0] ?? 0,
    high: sorted.at(-1) ?? 0,
    wanted,
    more: `the first press ${(times[0] ?? 0).toFixed(0)} ms`,
  }
}

async function asked(page: Page, sample: string): Promise<void> {
  await page.keyboard.press('Escape')
  await openSample(page, sample)
}

/** Asks in the page served at an address. */
export async function* answerRows(address: string): AsyncGenerator<Row> {
  const browser = await launch()
  try {
    const worked: number[] = []
    const blank = await browser.newPage()
    const blankSession = await blank.context().newCDPSession(blank)
    for (const rate of [1, SLOWER]) {
      await blankSession.send('Emulation.setCPUThrottlingRate', { rate })
      const times: number[] = []
      for (let time = 0; time < TIMES; time++) times.push(await blank.evaluate<number>(SAME_WORK))
      worked.push(middle(times))
    }
    await blank.close()
    const [full = 1, slowed = 0] = worked
    yield exact(`the same work slowed × ${SLOWER} / at full speed`, '×', slowed / full)
    for (const sample of SAMPLES) {
      const context = await browser.newContext({ viewport: { width: 1280, height: 800 } })
      const page = await context.newPage()
      const session = await context.newCDPSession(page)
      const slow = (rate: number) => session.send('Emulation.setCPUThrottlingRate', { rate })
      await page.goto(address)
      await page.getByRole('button', { name: 'Look around first' }).click()
      await asked(page, sample)
      await goTo(page, 'Lay out')
      await page.getByRole('button', { name: 'Place for me…' }).click()
      await page.getByRole('button', { name: 'Find places' }).waitFor()
      await page.waitForTimeout(500)
      const placed: Waited[] = []
      for (let time = 0; time < TIMES; time++) {
        await slow(SLOWER)
        placed.push((await page.evaluate(PLACED)) as Waited)
        await slow(1)
      }
      yield waitOf(
        `first answer of place for me, slowed × ${SLOWER}, ${sample}`,
        placed.map(({ first }) => first),
        1000,
      )
      await page.getByRole('button', { name: 'Close' }).first().click()
      await goTo(page, 'Choose')
      await page.waitForTimeout(300)
      await slow(SLOWER)
      const fitted = (await page.evaluate(FITTED)) as Waited
      const longest = Math.max(...[...placed, fitted].map((one) => one.longest))
      yield exact(`longest time between frames meanwhile, ${sample}`, 'ms', longest)
      await context.close()
    }
  } finally {
    await browser.close()
  }
}
