import { mkdtemp, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { setTimeout as pause } from 'node:timers/promises'
import type { Page } from 'playwright-core'
import { afterAll, afterEach, beforeAll, expect, inject, test } from 'vitest'
import { type Killable, launchKillable } from './killable.ts'

/** A killed page may lose what was done in its last half second, and nothing older. */
const MAY_LOSE = 500

/** Titles typed before a kill, however slow the machine. */
const FEW = 6

let profile: string
let running: Killable | null = null

beforeAll(async () => {
  profile = await mkdtemp(join(tmpdir(), 'lidwright-profile-'))
  const page = await openPage()
  // A first visit asks for the box; that is put aside.
  await page.getByRole('dialog').waitFor()
  await page.keyboard.press('Escape')
  await retitle(page, 'first visit')
  await keptSome(page)
  await kill()
})
afterEach(() => kill())
afterAll(async () => {
  // Also where the first visit failed and no test was begun.
  await kill()
  await rm(profile, { recursive: true, force: true, maxRetries: 5 })
})

const titleField = (page: Page) => page.getByRole('textbox', { name: 'Title of the instrument' })

async function kill(): Promise<void> {
  await running?.kill()
  running = null
}

async function openPage(): Promise<Page> {
  running = await launchKillable(profile)
  await running.page.goto(inject('address'))
  await titleField(running.page).waitFor()
  return running.page
}

async function retitle(page: Page, title: string): Promise<void> {
  await titleField(page).fill(title)
  await page.keyboard.press('Enter')
}

const keptSome = (page: Page) => page.locator('.kept', { hasText: /^kept \d\d:\d\d$/ }).waitFor()

/** What a killed browser left, as the page shows it when it is opened again; nothing of it may be unreadable. */
async function titleLeft(): Promise<string> {
  const page = await openPage()
  await keptSome(page)
  expect(await page.locator('.kept').getAttribute('title'), 'what the builder is told').toBeNull()
  return titleField(page).inputValue()
}

/** Types title after title until it is time and there are some, and remembers when each was surely done. */
async function typeTitles(page: Page, round: string, duration: number): Promise<number[]> {
  const done: number[] = []
  const end = performance.now() + duration
  while (performance.now() < end || done.length < FEW) {
    await retitle(page, `${round} ${done.length}`)
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
    await kill()
    const [kept, number] = (await titleLeft()).split(' ')
    expect(kept).toBe(round)
    const firstLost = done[Number(number) + 1] ?? at
    expect(at - firstLost).toBeLessThan(MAY_LOSE)
  },
)

test('killed half a second after the last change: all of it is there, and an undo counts as a change', async () => {
  const page = await openPage()
  await retitle(page, 'to stay')
  await retitle(page, 'to be undone')
  await page.getByRole('button', { name: 'Undo', exact: true }).click()
  expect(await titleField(page).inputValue()).toBe('to stay')
  await pause(MAY_LOSE)
  await kill()
  expect(await titleLeft()).toBe('to stay')
})
