import { mkdtemp, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { setTimeout as pause } from 'node:timers/promises'
import type { Page } from 'playwright-core'
import { afterAll, afterEach, beforeAll, expect, inject, test } from 'vitest'
import { type Killable, launchKillable } from './killable.ts'

/** A killed page may lose what was done in its last half second, and nothing older. */
const MAY_LOSE = 500

let profile: string
let running: Killable | null = null

beforeAll(async () => {
  profile = await mkdtemp(join(tmpdir(), 'lidwright-profile-'))
})
afterEach(async () => {
  await running?.kill()
  running = null
})
afterAll(() => rm(profile, { recursive: true, force: true, maxRetries: 5 }))

const titleField = (page: Page) => page.getByRole('textbox', { name: 'Title of the instrument' })

async function openPage(): Promise<Page> {
  running = await launchKillable(profile)
  const { page } = running
  await page.goto(inject('address'))
  await titleField(page).waitFor({ state: 'attached' })
  // A first visit asks for the box; it can be put aside.
  await page.keyboard.press('Escape')
  return page
}

async function reopened(): Promise<{ title: string; page: Page }> {
  const page = await openPage()
  const title = await titleField(page).inputValue()
  const status = page.locator('.kept')
  expect(await status.innerText()).toMatch(/^kept \d\d:\d\d$/)
  // What could not be read would be said here.
  expect(await status.getAttribute('title')).toBeNull()
  return { title, page }
}

/** Types title after title until it is time, and remembers when each of them was surely done. */
async function typeTitles(page: Page, round: string, duration: number): Promise<number[]> {
  const done: number[] = []
  const end = performance.now() + duration
  while (performance.now() < end) {
    await titleField(page).fill(`${round} ${done.length}`)
    await page.keyboard.press('Enter')
    done.push(performance.now())
  }
  return done
}

test.each([
  ['a', 700],
  ['b', 1010],
  ['c', 1270],
  ['d', 1530],
])(
  'killed while titles are typed, round %s after %i ms: nothing older than half a second is lost',
  async (round, duration) => {
    const page = await openPage()
    const done = await typeTitles(page, round, duration)
    const at = performance.now()
    await running?.kill()
    running = null
    expect(done.length).toBeGreaterThan(5)
    const { title } = await reopened()
    const [kept, number] = title.split(' ')
    expect(kept).toBe(round)
    const firstLost = done[Number(number) + 1] ?? at
    console.info(
      `round ${round}: ${done.length} titles, ${number} kept, oldest lost ${Math.round(at - firstLost)} ms before the kill`,
    )
    expect(at - firstLost).toBeLessThan(MAY_LOSE)
  },
)

test('killed half a second after the last change: all of it is there, and an undo counts as a change', async () => {
  const page = await openPage()
  await titleField(page).fill('to stay')
  await page.keyboard.press('Enter')
  await titleField(page).fill('to be undone')
  await page.keyboard.press('Enter')
  await page.getByRole('button', { name: 'Undo', exact: true }).click()
  await expect.poll(() => titleField(page).inputValue()).toBe('to stay')
  await pause(MAY_LOSE)
  await running?.kill()
  running = null
  const { title } = await reopened()
  expect(title).toBe('to stay')
})
