/** The browser's own printing: the build sheet as it stands, and no drawing of which somebody would think that it has a size. */
import { spawnSync } from 'node:child_process'
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { goTo } from '../support/bench-page.ts'
import { needPoppler } from '../support/outsideTools.ts'
import { sharePage } from '../support/shared-page.ts'

const shared = sharePage('tea-box-three-strings', { viewport: { width: 1024, height: 768 } })

const folder = mkdtempSync(join(tmpdir(), 'lidwright-paper-'))
beforeAll(needPoppler)
afterAll(() => rmSync(folder, { recursive: true, force: true }))

/** What Poppler reads on each page of a print. */
function pagesOf(pdf: Buffer): string[] {
  const file = join(folder, 'page.pdf')
  writeFileSync(file, pdf)
  const { stdout, status } = spawnSync('pdftotext', ['-layout', file, '-'], { encoding: 'utf8' })
  expect(status).toBe(0)
  return stdout.split('\f').slice(0, -1)
}

test('in Record the whole sheet is printed, and nothing beside it', async () => {
  const page = await shared.begin()
  await goTo(page, 'Record')
  await page.locator('#sheet-frets').waitFor()
  const pages = pagesOf(await page.pdf({ format: 'Letter' }))
  expect(pages.length).toBeGreaterThan(4)
  const text = pages.join('\n')
  const titles = await page.locator('.build-sheet h3').allTextContents()
  expect(titles.length).toBeGreaterThan(6)
  for (const title of titles) expect(text).toContain(title)
  // The last line of the sheet, and neither the bar nor a button.
  expect(text).toContain('All loads are estimates.')
  for (const button of ['Undo', 'Redo', 'Lay out', 'Measure again…']) expect(text).not.toContain(button)
})

test.each(['Survey', 'Choose', 'Lay out', 'Prove', 'Transfer'])(
  'in %s a sentence is printed that says where to print from',
  async (place) => {
    const page = await shared.begin()
    await goTo(page, place)
    await page.locator(`main.place-${place.toLowerCase().replace(' ', '-')}`).waitFor()
    const [only, ...more] = pagesOf(await page.pdf({ format: 'A4' }))
    expect(more).toEqual([])
    expect(only?.replace(/\s+/g, ' ').trim()).toBe(
      'Drawings on the screen are not true to size, so they are not printed. Templates are printed from Transfer, the build sheet from Record.',
    )
  },
)
