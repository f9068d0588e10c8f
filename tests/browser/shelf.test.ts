/** The shelf: designs looked for, copied, thrown away and put back, handed over in a zip and by a link. */
import { spawnSync } from 'node:child_process'
import { readFileSync } from 'node:fs'
import type { Page } from 'playwright-core'
import { beforeEach, describe, expect, inject, test } from 'vitest'
import { readDesign } from '../../geometry/index.ts'
import { openPageWith, openSample, savedDesign } from '../support/bench-page.ts'
import { newContext } from '../support/browser.ts'
import { sharePage } from '../support/shared-page.ts'

const address = inject('address')
const options = {
  viewport: { width: 1280, height: 900 },
  permissions: ['clipboard-read', 'clipboard-write'],
}
const SAMPLE = 'tea-box-three-strings'
let page: Page

/** A page of its own, with an empty shelf and no file on the disk. */
async function openAlone() {
  const context = await newContext(options)
  page = await context.newPage()
  await openPageWith(page, address, SAMPLE)
  return () => context.close()
}

const kept = () => expect.poll(() => page.locator('.kept').textContent()).toMatch(/^kept /)

async function openShelf() {
  await kept()
  await page.getByRole('button', { name: 'File', exact: true }).click()
  await page.getByRole('menuitem', { name: /Designs kept in this browser/ }).click()
  await page.getByRole('dialog', { name: 'Designs kept in this browser' }).waitFor()
}

const titles = () => page.locator('.shelf-words b').allTextContents()

describe('the shelf', () => {
  beforeEach(openAlone)

  test('finds a design by its words, with a picture, and opens it', async () => {
    await kept()
    await openSample(page, 'seed-tin-one-string')
    await openShelf()
    await expect.poll(titles).toHaveLength(2)
    expect(await page.locator('.shelf-list .plan-picture .plan-lid').count()).toBe(2)
    await page.getByRole('searchbox', { name: 'Look for a design' }).fill('3 strings tea')
    await expect.poll(titles).toEqual(['Tea box, three strings'])
    await page.getByRole('button', { name: /^Open “Tea box/ }).click()
    await page.getByRole('dialog').waitFor({ state: 'hidden' })
    expect((await savedDesign(page)).title).toBe('Tea box, three strings')
  })

  test('copies, throws away, and puts back what was thrown away', async () => {
    await openShelf()
    await page.getByRole('button', { name: /^Duplicate “Tea box/ }).click()
    await expect.poll(titles).toContain('Tea box, three strings, copy')
    await page.getByRole('button', { name: /^Throw “Tea box, three strings, copy” away/ }).click()
    await expect.poll(titles).toEqual(['Tea box, three strings'])
    await page.getByRole('button', { name: 'Put it back' }).click()
    await expect.poll(titles).toContain('Tea box, three strings, copy')
    // What lies on the bench cannot be thrown away.
    expect(
      await page.getByRole('button', { name: /^Throw “Tea box, three strings” away/ }).isDisabled(),
    ).toBe(true)
  })

  test('hands all over in one zip that others can read, and takes it in again; what is no design is told', async () => {
    await openShelf()
    await page.getByRole('button', { name: /^Duplicate/ }).click()
    await expect.poll(titles).toHaveLength(2)
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name: 'Save all in one zip' }).click(),
    ])
    const path = await download.path()
    // Python's own reader of zips.
    const listed = spawnSync('python3', ['-m', 'zipfile', '-l', path], { encoding: 'utf8' })
    expect(listed.status).toBe(0)
    expect(listed.stdout.match(/\.lidwright\.json/g)).toHaveLength(2)
    await page.locator('.shelf-head input[type=file]').setInputFiles([
      { name: 'shelf.zip', mimeType: 'application/zip', buffer: readFileSync(path) },
      { name: 'list.json', mimeType: 'application/json', buffer: Buffer.from('{"eggs": 12}') },
      { name: 'torn.zip', mimeType: 'application/zip', buffer: Buffer.from('PK nothing') },
    ])
    await expect.poll(titles).toHaveLength(4)
    await page.getByText('2 designs were put on the shelf.').waitFor()
    await page.getByText(/^list\.json: /).waitFor()
    await page.getByText('torn.zip could not be opened as a zip.').waitFor()
  })
})

describe('a page with a design on it', () => {
  const shared = sharePage(SAMPLE, options)
  beforeEach(async () => {
    page = await shared.begin()
  })

  describe('a link', () => {
    test('holds the whole design, and sends nothing anywhere', async () => {
      const before = await savedDesign(page)
      await page.getByRole('button', { name: 'File', exact: true }).click()
      await page.getByRole('menuitem', { name: /Make a link/ }).click()
      const field = page.getByRole('textbox', { name: 'The link' })
      await expect.poll(() => field.inputValue()).toMatch(/#design=/)
      await page.getByRole('button', { name: 'Copy the link' }).click()
      await page.getByText('Copied.').waitFor()
      const link = await page.evaluate(() => navigator.clipboard.readText())
      expect(link).toBe(await field.inputValue())

      const other = await newContext()
      const theirs = await other.newPage()
      const asked: string[] = []
      theirs.on('request', (request) => asked.push(request.url()))
      await theirs.goto(link)
      await expect
        .poll(() => theirs.getByRole('textbox', { name: 'Title of the instrument' }).inputValue())
        .toBe(before.title)
      expect(await savedDesign(theirs)).toEqual(before)
      expect(new URL(theirs.url()).hash).toBe('')
      expect(asked.filter((url) => url.includes('design='))).toEqual([])
      await other.close()
    })

    test('that was cut short is refused in a sentence, and the design stays', async () => {
      const before = await savedDesign(page)
      await page.evaluate(() => {
        location.hash = '#design=7VpLc9s4'
      })
      await page.getByRole('dialog', { name: 'The link could not be opened' }).waitFor()
      await page.getByText(/cut short/).waitFor()
      await page.keyboard.press('Escape')
      expect(await savedDesign(page)).toEqual(before)
    })
  })

  test('a file is dropped on the page; what is no design is told', async () => {
    const drop = (name: string, type: string, text: string) =>
      page.evaluate(
        ({ name, type, text }) => {
          const data = new DataTransfer()
          data.items.add(new File([text], name, { type }))
          document.body.dispatchEvent(
            new DragEvent('drop', { dataTransfer: data, bubbles: true, cancelable: true }),
          )
        },
        { name, type, text },
      )
    const sample = readFileSync(
      new URL('../../sample-boxes/seed-tin-one-string.lidwright.json', import.meta.url),
      'utf8',
    )
    const read = readDesign(sample)
    await drop('seed.lidwright.json', 'application/json', sample)
    await expect
      .poll(() => page.getByRole('textbox', { name: 'Title of the instrument' }).inputValue())
      .toBe(read.ok && read.design.title)
    await drop('song.mp3', 'audio/mpeg', 'ID3')
    await page.getByRole('dialog', { name: '“song.mp3” could not be opened' }).waitFor()
  })
})

describe('a file on the disk', () => {
  beforeEach(openAlone)

  test('is written again at every save', async () => {
    await page.evaluate(() => {
      const written: string[] = []
      let part = ''
      Object.assign(window, {
        written,
        showSaveFilePicker: async () => ({
          name: 'kept.lidwright.json',
          createWritable: async () => ({
            write: async (text: string) => {
              part = text
            },
            close: async () => written.push(part),
            abort: async () => undefined,
          }),
        }),
      })
    })
    const written = () => page.evaluate(() => (window as unknown as { written: string[] }).written)
    await page.getByRole('button', { name: 'File', exact: true }).click()
    await page.getByRole('menuitem', { name: /Keep a file on the disk/ }).click()
    await expect.poll(async () => (await written()).length).toBe(1)
    await page.keyboard.press('Control+s')
    await expect.poll(async () => (await written()).length).toBe(2)
    const read = readDesign((await written())[1] ?? '')
    expect(read.ok && read.design.title).toBe('Tea box, three strings')
  })
})
