/**
 * `npm run pictures`: the picture in the README, made by the application itself from a sample. With `-- --all FOLDER`
 * every place in light and dark at three sizes as well, to be looked at.
 */
import { mkdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import type { Browser, Page } from 'playwright-core'
import { launch } from './browser.ts'
import { openFile } from './open-file.ts'
import { serveBuild } from './serve-build.ts'

const SAMPLE = new URL('../../sample-boxes/cutlery-box-four-strings.lidwright.json', import.meta.url)
const PICTURE = fileURLToPath(new URL('../../sample-boxes/picture.png', import.meta.url))
const PLACES = ['Survey', 'Choose', 'Lay out', 'Prove', 'Transfer'] as const
const SIZES = [
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
) {
  const page = await browser.newPage({ viewport: { width, height }, colorScheme: scheme })
  await page.goto(address)
  await page.getByRole('button', { name: 'Look around first' }).click()
  await page.getByRole('dialog').waitFor({ state: 'hidden' })
  await page.getByRole('navigation', { name: /Places/ }).waitFor()
  await openFile(page, {
    name: 'sample.lidwright.json',
    mimeType: 'application/json',
    buffer: readFileSync(SAMPLE),
  })
  await page.waitForFunction(() =>
    [...document.querySelectorAll('input')].some((one) => one.value.startsWith('Cutlery box')),
  )
  return page
}

async function goTo(page: Page, place: (typeof PLACES)[number]) {
  const places = page.getByRole('navigation', { name: /Places/ })
  await places.getByRole('button', { name: new RegExp(`^${place}`) }).click()
  await page.mouse.move(0, 0)
  await page.waitForLoadState('networkidle')
  await page.waitForTimeout(600)
}

const folder = process.argv.includes('--all') ? process.argv[process.argv.indexOf('--all') + 1] : undefined
const served = await serveBuild()
const browser = await launch()
try {
  const page = await opened(browser, served.address, 1600, 1000, 'light')
  await goTo(page, 'Lay out')
  await page
    .getByRole('button', { name: /Bar pickup/ })
    .first()
    .click()
  await page.waitForTimeout(600)
  await page.screenshot({ path: PICTURE })
  console.log(PICTURE)
  if (folder !== undefined) {
    mkdirSync(folder, { recursive: true })
    for (const [width, height] of SIZES) {
      for (const scheme of ['light', 'dark'] as const) {
        const each = await opened(browser, served.address, width, height, scheme)
        for (const place of PLACES) {
          await goTo(each, place)
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
