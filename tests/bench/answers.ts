/**
 * `npm run bench:answers`: how long a builder waits for the first answer of "place for me", in a real browser slowed to a
 * quarter of its speed, from the press of the button to the answer on the screen. Wanted: within one second. The search
 * runs on the page's own thread in stretches, so what slows the page slows it: no worker escapes the measure. Also told: the
 * longest time between two frames while the search and the fit table go on, since neither may hold up the page.
 * Nothing is asserted: on a busy machine the figures say more about the others than about the page.
 */
import { cpus, loadavg } from 'node:os'
import type { Page } from 'playwright-core'
import { goTo, openSample } from '../support/bench-page.ts'
import { launch } from '../support/browser.ts'
import { serveBuild } from '../support/serve-build.ts'

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
const ms = (value: number) => value.toFixed(0).padStart(8)

function tell(what: string, waited: readonly Waited[]): void {
  const of = (name: keyof Waited) => waited.map((one) => one[name])
  const cold = waited[0]?.first ?? 0
  console.log(
    `${what.padEnd(44)} ${ms(cold)} ${ms(middle(of('first')))} ${ms(middle(of('whole')))} ${ms(Math.max(...of('longest')))}`,
  )
}

async function asked(page: Page, sample: string): Promise<void> {
  await page.keyboard.press('Escape')
  await openSample(page, sample)
}

const served = await serveBuild()
const browser = await launch()
try {
  console.log(
    `${cpus()[0]?.model ?? 'unknown processor'}, ${cpus().length} cores, load ${loadavg()[0]?.toFixed(1)}, slowed × ${SLOWER}`,
  )
  console.log(`${'milliseconds'.padEnd(44)} ${'1st press'.padStart(8)}    first    whole  longest frame`)
  const blank = await browser.newPage()
  const blankSession = await blank.context().newCDPSession(blank)
  const worked: number[] = []
  for (const rate of [1, SLOWER]) {
    await blankSession.send('Emulation.setCPUThrottlingRate', { rate })
    const times: number[] = []
    for (let time = 0; time < TIMES; time++) times.push(await blank.evaluate<number>(SAME_WORK))
    worked.push(middle(times))
  }
  await blank.close()
  console.log(`the same work at full speed and slowed: ${worked.map((one) => one.toFixed(0)).join(' → ')}`)
  for (const sample of SAMPLES) {
    const context = await browser.newContext({ viewport: { width: 1280, height: 800 } })
    const page = await context.newPage()
    const session = await context.newCDPSession(page)
    await page.goto(served.address)
    await page.getByRole('button', { name: 'Look around first' }).click()
    await asked(page, sample)
    await goTo(page, 'Lay out')
    await page.getByRole('button', { name: 'Place for me…' }).click()
    await page.getByRole('button', { name: 'Find places' }).waitFor()
    await page.waitForTimeout(500)
    const placed: Waited[] = []
    for (let time = 0; time < TIMES; time++) {
      await session.send('Emulation.setCPUThrottlingRate', { rate: SLOWER })
      placed.push((await page.evaluate(PLACED)) as Waited)
      await session.send('Emulation.setCPUThrottlingRate', { rate: 1 })
    }
    tell(`place for me, ${sample}`, placed)
    await page.getByRole('button', { name: 'Close' }).first().click()
    await goTo(page, 'Choose')
    await page.waitForTimeout(300)
    await session.send('Emulation.setCPUThrottlingRate', { rate: SLOWER })
    tell(`fit table, ${sample}`, [(await page.evaluate(FITTED)) as Waited])
    await context.close()
  }
} finally {
  await browser.close()
  await served.close()
}
