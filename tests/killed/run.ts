/**
 * `npm run killed`: a browser is killed in the middle of editing, again and again, and opened again on the same profile.
 * Nothing that was done more than half a second before may be lost, and nothing may be unreadable. `-- --times 200`,
 * `-- --seed 1`. It ends with 1 at the first loss, and says which round of which seed it was.
 */
import { mkdtemp, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { parseArgs } from 'node:util'
import fc from 'fast-check'
import type { Page } from 'playwright-core'
import { type Killable, launchKillable } from '../browser/killable.ts'
import { goTo, openPageWith } from '../support/bench-page.ts'
import { ensureFonts } from '../support/browser.ts'
import { serveBuild } from '../support/serve-build.ts'

/** A killed page may lose what was done in its last half second, and nothing older. */
const MAY_LOSE = 500

const { values } = parseArgs({
  options: { times: { type: 'string', default: '200' }, seed: { type: 'string', default: '1' } },
})
const times = Number(values.times)
const seed = Number(values.seed)
if (!(Number.isInteger(times) && times > 0 && Number.isInteger(seed))) {
  console.error('--times takes a whole number above 0, --seed a whole number.')
  process.exit(2)
}

const EDITS = ['retitle', 'nudge', 'nudge far', 'drag', 'undo', 'redo'] as const
type Edit = (typeof EDITS)[number]

/** What is done in a round, and how long after its last edit the browser is killed, in milliseconds. */
const rounds = fc.sample(
  fc.record({
    edits: fc.array(fc.constantFrom(...EDITS), { minLength: 6, maxLength: 30 }),
    after: fc.integer({ min: 0, max: 700 }),
    turn: fc.integer({ min: 0, max: 1000 }),
  }),
  { seed, numRuns: times },
)

const titleField = (page: Page) => page.getByRole('textbox', { name: 'Title of the instrument' })

/** What the screen says of the design: title, what each thing in the list has to spare, every field of the chosen hole. */
const shown = (page: Page): Promise<string> =>
  page.evaluate(async () => {
    // Lists and fields follow a drag within a frame or two of its end.
    for (let frame = 0; frame < 2; frame++) await new Promise(requestAnimationFrame)
    const title = document.querySelector<HTMLInputElement>('input[aria-label="Title of the instrument"]')
    const rows = [...document.querySelectorAll('.thing-row')]
    const fields = [...document.querySelectorAll<HTMLInputElement>('.inspector input')]
    return JSON.stringify([
      title?.value,
      rows.map((row) => row.textContent),
      fields.map((field) => field.value),
    ])
  })

const chooseHole = async (page: Page) => {
  await page.locator('.thing-row', { hasText: /hole/i }).first().click()
  await page.locator('.inspector input').first().waitFor()
}

async function edit(page: Page, what: Edit, name: string, turn: number): Promise<void> {
  const drawing = page.getByRole('application').first()
  switch (what) {
    case 'retitle':
      await titleField(page).fill(name)
      return page.keyboard.press('Enter')
    case 'nudge':
    case 'nudge far': {
      await drawing.focus()
      const key = ['ArrowLeft', 'ArrowRight', 'ArrowUp', 'ArrowDown'][turn % 4]
      return page.keyboard.press(what === 'nudge' ? `${key}` : `Shift+${key}`)
    }
    case 'drag': {
      const box = await drawing.boundingBox()
      if (!box) return
      // From the middle of the plan, where holes are, some way off; where nothing is taken hold of the view moves.
      const [x, y] = [box.x + box.width * (0.3 + (turn % 7) / 20), box.y + box.height * 0.3]
      await page.mouse.move(x, y)
      await page.mouse.down()
      await page.mouse.move(x + 9 + (turn % 23), y + 7, { steps: 3 })
      return page.mouse.up()
    }
    case 'undo':
      return page.keyboard.press('Control+z')
    case 'redo':
      return page.keyboard.press('Control+Shift+z')
  }
}

const served = await serveBuild()
ensureFonts()
const profile = await mkdtemp(join(tmpdir(), 'lidwright-killed-'))
let running: Killable | null = null

async function open(): Promise<Page> {
  running = await launchKillable(profile)
  await running.page.goto(served.address)
  await titleField(running.page).waitFor()
  return running.page
}

async function kill(): Promise<void> {
  await running?.kill()
  running = null
}

/** Ends the run: what was found is worth more than another round. */
function lost(round: number, sentence: string): never {
  throw new Error(`Round ${round + 1} of seed ${seed}: ${sentence}`)
}

let edits = 0
let changes = 0
let newest = 0
try {
  running = await launchKillable(profile)
  await openPageWith(running.page, served.address, 'tea-box-three-strings')
  await running.page.locator('.kept', { hasText: /^kept \d\d:\d\d$/ }).waitFor()
  await kill()
  for (const [round, plan] of rounds.entries()) {
    const page = await open()
    await goTo(page, 'Lay out')
    await page.locator('[data-origin-x]').first().waitFor()
    await chooseHole(page)
    const states = [{ shows: await shown(page), at: performance.now() }]
    for (const [index, what] of plan.edits.entries()) {
      await edit(page, what, `round ${round} title ${index}`, plan.turn + 7 * index)
      // A drag may have taken hold of another thing, whose fields would then be shown.
      await chooseHole(page)
      const shows = await shown(page)
      edits += 1
      // An edit that changes nothing cannot be lost.
      if (shows === states.at(-1)?.shows) continue
      changes += 1
      states.push({ shows, at: performance.now() })
    }
    await new Promise((done) => setTimeout(done, plan.after))
    const killedAt = performance.now()
    await kill()
    const again = await open()
    await again.locator('.kept', { hasText: /^kept \d\d:\d\d$/ }).waitFor()
    const told = await again.locator('.kept').getAttribute('title')
    if (told !== null) lost(round, `the page complains: ${told}`)
    await goTo(again, 'Lay out')
    await chooseHole(again)
    const left = await shown(again)
    const index = states.map((state) => state.shows).lastIndexOf(left)
    if (index < 0) lost(round, `what is left was never there: ${left}`)
    const first = states[index + 1]
    const age = first ? killedAt - first.at : 0
    if (age >= MAY_LOSE) lost(round, `an edit of ${age.toFixed(0)} ms before the kill is lost`)
    newest = Math.max(newest, age)
    await kill()
    if ((round + 1) % 10 === 0) console.log(`${round + 1} of ${times}`)
  }
  if (changes < times) throw new Error('The edits changed next to nothing: this run proves nothing.')
  console.log(
    `Killed ${times} times in the middle of ${edits} edits, ${changes} of which changed the design. ` +
      `Nothing was unreadable; the oldest edit lost was ${newest.toFixed(0)} ms old.`,
  )
} finally {
  await kill()
  await served.close()
  await rm(profile, { recursive: true, force: true, maxRetries: 5 })
}
