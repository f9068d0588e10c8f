/** One page for all tests of a file: opening a page takes seconds, opening a sample in it a fraction of one. */
import { isDeepStrictEqual } from 'node:util'
import type { BrowserContext, Page } from 'playwright-core'
import { afterEach, expect, inject } from 'vitest'
import { goTo, openPageWith, openSample } from './bench-page.ts'
import { type ContextOptions, newContext } from './browser.ts'
import { nothingWrong, type Watched, watchPage } from './watch-page.ts'

/** How the page is opened: what `newContext` takes, and what the page may do. */
export interface PageOptions extends ContextOptions {
  readonly viewport: { readonly width: number; readonly height: number }
}

export interface SharedPage {
  /** The page with the sample just opened, at Transfer: nothing selected, every drawing seen as at first. */
  begin(): Promise<Page>
}

/**
 * A page for the tests of this file, watched all the time. The store and the history go on from test to test, so a test
 * that looks at those opens a page of its own. After a test that failed the next one gets a new page.
 *
 * @example
 * const shared = sharePage('tea-box-three-strings', { viewport: { width: 1600, height: 1000 } })
 * beforeEach(async () => {
 *   page = await shared.begin()
 *   await goTo(page, 'Lay out')
 * })
 */
export function sharePage(sample: string, options: PageOptions): SharedPage {
  const address = inject('address')
  let open: { readonly context: BrowserContext; readonly page: Page; readonly watched: Watched } | null = null

  async function drop(): Promise<void> {
    const { context } = open ?? {}
    open = null
    await context?.close()
  }

  afterEach(async ({ task }) => {
    const watched = open?.watched ?? nothingWrong
    if (open && task.result?.state === 'fail') console.error(`when it failed, ${await stateOf(open.page)}`)
    if (task.result?.state === 'fail' || !isDeepStrictEqual(watched, nothingWrong)) await drop()
    expect(watched).toEqual(nothingWrong)
  })

  return {
    async begin() {
      if (open) {
        await openAnew(open.page, sample, options.viewport)
      } else {
        const context = await newContext(options)
        const page = await context.newPage()
        open = { context, page, watched: watchPage(page, address) }
        await openPageWith(page, address, sample)
        await goTo(page, 'Transfer')
      }
      return open.page
    },
  }
}

/** What the page last said and what is chosen on it: enough to tell a lost press from a refused one. */
async function stateOf(page: Page): Promise<string> {
  const said = page.locator('.unseen[role=status]').allTextContents()
  const chosen = page.locator('.thing-row.chosen').allTextContents()
  return Promise.all([said, chosen]).then(
    ([words, rows]) => `the page had said “${words.join('')}” and ${rows.join(', ') || 'nothing'} was chosen`,
    (error) => `the page did not answer: ${error}`,
  )
}

/** What a test left open is closed, and the sample opened as a file is: it begins another document. */
async function openAnew(page: Page, sample: string, viewport: PageOptions['viewport']): Promise<void> {
  await page.setViewportSize(viewport)
  // A field, a menu or a mode, and the dialog below it.
  for (let layer = 0; layer < 3; layer++) await page.keyboard.press('Escape')
  await page.getByRole('dialog').waitFor({ state: 'hidden' })
  await goTo(page, 'Transfer')
  // Under another title first: when the sample's stands there again, it has been read.
  const title = page.getByRole('textbox', { name: 'Title of the instrument' })
  await title.fill('put aside')
  await title.press('Enter')
  await openSample(page, sample)
}
