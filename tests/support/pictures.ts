/**
 * `npm run pictures`: the picture in the README, made by the application itself from a sample. With `-- --all FOLDER`
 * every place in light and dark at four sizes as well, to be looked at.
 */
import { mkdirSync } from 'node:fs'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import type { Browser, Page } from 'playwright-core'
import { goTo, openPageWith } from './bench-page.ts'
import { launch } from './browser.ts'
import { serveBuild } from './serve-build.ts'

const SAMPLE = 'cutlery-box-four-strings'
/** A crooked box, as its readings have it. */
const SURVEYED = 'bread-bin-out-of-square'
const SURVEY_PICTURE = fileURLToPath(new URL('../../sample-boxes/survey.png', import.meta.url))
const PICTURE = fileURLToPath(new URL('../../sample-boxes/picture.png', import.meta.url))
const PLACES = ['Survey', 'Choose', 'Lay out', 'Prove', 'Transfer', 'Record'] as const
const SIZES = [
  [768, 1024],
  [1024, 768],
  [1600, 1000],
  [2560, 1440],
] as const

/** The application with the sample open. */
async function opened(
  browser: Browser,
  address: string,
  width: number,
  height: number,
  scheme: 'light' | 'dark',
  sample = SAMPLE,
): Promise<Page> {
  const page = await browser.newPage({ viewport: { width, height }, colorScheme: scheme })
  // The page shows when the design was last kept: at the same time in every picture, so that the same page is the same file.
  await page.clock.setFixedTime(new Date(2024, 0, 1, 12, 0))
  await openPageWith(page, address, sample)
  return page
}

/** The place, once everything in it has come to rest. */
async function atRestIn(page: Page, place: (typeof PLACES)[number]): Promise<void> {
  await goTo(page, place)
  await page.mouse.move(0, 0)
  await page.waitForLoadState('networkidle')
  await page.waitForTimeout(600)
}

const folder = process.argv.includes('--all') ? process.argv[process.argv.indexOf('--all') + 1] : undefined
const served = await serveBuild()
const browser = await launch()
try {
  const page = await opened(browser, served.address, 1600, 1000, 'light')
  await atRestIn(page, 'Lay out')
  await page
    .getByRole('button', { name: /Bar pickup/ })
    .first()
    .click()
  await page.waitForTimeout(600)
  await page.screenshot({ path: PICTURE })
  console.log(PICTURE)
  const surveyed = await opened(browser, served.address, 1600, 1000, 'light', SURVEYED)
  await atRestIn(surveyed, 'Survey')
  await surveyed.screenshot({ path: SURVEY_PICTURE })
  await surveyed.close()
  console.log(SURVEY_PICTURE)
  if (folder !== undefined) {
    mkdirSync(folder, { recursive: true })
    for (const [width, height] of SIZES) {
      for (const scheme of ['light', 'dark'] as const) {
        const each = await opened(browser, served.address, width, height, scheme)
        for (const place of PLACES) {
          await atRestIn(each, place)
          await each.screenshot({
            path: join(folder, `${place.replace(' ', '-').toLowerCase()}-${width}-${scheme}.png`),
          })
        }
        await each.close()
      }
    }
    console.log(folder)
  }
} finally {
  await browser.close()
  await served.close()
}
