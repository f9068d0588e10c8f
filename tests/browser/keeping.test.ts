import type { BrowserContext, Page } from 'playwright-core'
import { afterEach, beforeEach, describe, expect, inject, test } from 'vitest'
import { newContext } from '../support/browser.ts'

const address = inject('address')
let context: BrowserContext

beforeEach(async () => {
  context = await newContext()
})
afterEach(() => context.close())

const titleField = (page: Page) => page.getByRole('textbox', { name: 'Title of the instrument' })

async function openTab(): Promise<Page> {
  const page = await context.newPage()
  await page.goto(address)
  await titleField(page).waitFor()
  return page
}

/** A tab in which a first design has been kept. */
async function firstTab(title: string): Promise<Page> {
  const page = await openTab()
  await page.getByRole('dialog').waitFor()
  await page.keyboard.press('Escape')
  await retitle(page, title)
  await says(page, /^kept \d\d:\d\d$/)
  return page
}

async function retitle(page: Page, title: string): Promise<void> {
  await titleField(page).fill(title)
  await page.keyboard.press('Enter')
}

const says = (page: Page, words: RegExp) =>
  expect.poll(() => page.locator('.kept').textContent()).toMatch(words)

const tells = (page: Page) => page.locator('.kept').getAttribute('title')

const shows = (page: Page, title: string) => expect.poll(() => titleField(page).inputValue()).toBe(title)

interface Kept {
  record: string
  number: number
  at: number
  text: string
}

/** Everything in the store, read without the program's own words for it. */
const stored = (page: Page): Promise<Kept[]> =>
  page.evaluate(
    () =>
      new Promise((answer, refuse) => {
        const request = indexedDB.open('lidwright')
        request.onerror = () => refuse(request.error)
        request.onsuccess = () => {
          const all = request.result.transaction('generations').objectStore('generations').getAll()
          all.onsuccess = () => {
            request.result.close()
            answer(all.result)
          }
        }
      }),
  )

const plant = (page: Page, generation: Kept): Promise<void> =>
  page.evaluate(
    (one) =>
      new Promise((answer, refuse) => {
        const request = indexedDB.open('lidwright')
        request.onerror = () => refuse(request.error)
        request.onsuccess = () => {
          const transaction = request.result.transaction('generations', 'readwrite')
          transaction.objectStore('generations').put(one)
          transaction.oncomplete = () => {
            request.result.close()
            answer()
          }
        }
      }),
    generation,
  )

const titles = async (page: Page, record: string) =>
  (await stored(page)).filter((one) => one.record === record).map((one) => JSON.parse(one.text).title)

test('a first visit writes nothing before the first change; the last three states are kept', async () => {
  const page = await openTab()
  await page.getByRole('dialog').waitFor()
  expect(await stored(page)).toEqual([])
  await page.keyboard.press('Escape')
  for (const title of ['one', 'two', 'three', 'four', 'five']) {
    await retitle(page, title)
    await expect.poll(async () => (await stored(page)).at(-1)?.text).toContain(`"${title}"`)
  }
  await says(page, /^kept/)
  const [first] = await stored(page)
  expect(await titles(page, first?.record ?? '')).toEqual(['three', 'four', 'five'])
})

test('loaded again the page finds its work, and is not taken for a second tab', async () => {
  const page = await firstTab('mine')
  for (let time = 0; time < 3; time++) {
    await page.reload()
    await shows(page, 'mine')
    await says(page, /^kept \d\d:\d\d$/)
    expect(await tells(page)).toBeNull()
  }
})

describe('a change made in the last moment is kept', () => {
  test.each([
    ['the page is left', (page: Page) => page.goto('about:blank')],
    ['the page is loaded again', (page: Page) => page.reload()],
    ['the tab is closed', (page: Page) => page.close({ runBeforeUnload: true })],
  ])('when %s', async (_when, leave) => {
    const page = await firstTab('before')
    await retitle(page, 'in a hurry')
    await leave(page)
    const later = await context.newPage()
    // The same site without the program, so that nothing but the store is looked at.
    await later.goto(new URL('icon.svg', address).href)
    await expect.poll(async () => (await stored(later)).at(-1)?.text).toContain('in a hurry')
  })
})

describe('a second tab', () => {
  test('sees the design of the first, does not touch it, and keeps its own work beside it', async () => {
    const first = await firstTab('shared')
    const second = await openTab()
    await shows(second, 'shared')
    await says(second, /open elsewhere/)
    expect(await tells(second)).toContain('Another tab has this design open')
    await retitle(second, 'second')
    await says(second, /^kept \d\d:\d\d$/)
    await retitle(first, 'first')
    await says(first, /^kept/)
    await Promise.all([first.reload(), second.reload()])
    await shows(first, 'first')
    await shows(second, 'second')
  })

  test('goes on where the first left off once that has closed', async () => {
    const first = await firstTab('shared')
    const second = await openTab()
    await says(second, /open elsewhere/)
    await first.close()
    await retitle(second, 'taken over')
    await says(second, /^kept \d\d:\d\d$/)
    expect(await tells(second)).toBeNull()
    expect(new Set((await stored(second)).map((one) => one.record)).size).toBe(1)
  })

  test('that writes in spite of everything is never overwritten', async () => {
    const page = await firstTab('mine')
    const [mine] = await stored(page)
    if (!mine) throw new Error('nothing was kept')
    const theirs = { ...mine, number: mine.number + 1, text: mine.text.replace('"mine"', '"theirs"') }
    await plant(page, theirs)
    await retitle(page, 'mine too')
    await expect.poll(() => tells(page)).toContain('design of its own')
    expect(await titles(page, mine.record)).toEqual(['mine', 'theirs'])
    await page.reload()
    await shows(page, 'mine too')
  })
})

describe('what cannot be opened', () => {
  test.each([
    ['a newer version', '{"format":"lidwright","version":999,"news":true}', 'newer Lidwright'],
    ['a torn text', '{"format":"lidwr', 'cannot be read'],
  ])('%s is told and stays exactly as it lies, whatever is done afterwards', async (_what, text, words) => {
    const page = await firstTab('older')
    const [older] = await stored(page)
    if (!older) throw new Error('nothing was kept')
    const odd = { ...older, number: older.number + 1, at: older.at + 1, text }
    await plant(page, odd)
    await page.reload()
    await expect.poll(() => tells(page)).toContain(words)
    await page.keyboard.press('Escape')
    for (const title of ['a', 'b', 'c', 'd', 'e']) {
      await retitle(page, title)
      await expect
        .poll(async () => (await stored(page)).some((one) => one.text.includes(`"title": "${title}"`)))
        .toBe(true)
    }
    expect(await stored(page)).toContainEqual(odd)
  })
})

test('a full store is said as long as it is full, and the work is kept once it is not', async () => {
  const page = await openTab()
  await page.getByRole('dialog').waitFor()
  await page.keyboard.press('Escape')
  const devtools = await context.newCDPSession(page)
  const { origin } = new URL(address)
  // Before the first write: for a while after one the browser does not look at the quota again.
  await devtools.send('Storage.overrideQuotaForOrigin', { origin, quotaSize: 1 })
  await retitle(page, 'no room')
  await says(page, /not kept/)
  expect(await tells(page)).toContain('no room left')
  expect(await stored(page)).toEqual([])
  await devtools.send('Storage.overrideQuotaForOrigin', { origin })
  await says(page, /^kept \d\d:\d\d$/)
  expect(await tells(page)).toBeNull()
  await page.reload()
  await shows(page, 'no room')
})
