import { appendFile, cp, mkdtemp, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { BrowserContext, Page } from 'playwright-core'
import { type PreviewServer, preview } from 'vite'
import { afterEach, beforeEach, describe, expect, inject, test } from 'vitest'
import { newContext } from '../support/browser.ts'

const address = inject('address')
let context: BrowserContext

beforeEach(async () => {
  context = await newContext({ offline: 'kept' })
})
afterEach(() => context.close())

const titleField = (page: Page) => page.getByRole('textbox', { name: 'Title of the instrument' })

/** A first visit that has named its instrument and has every file fetched. */
async function visit(at: string, title: string): Promise<Page> {
  const page = await context.newPage()
  await page.goto(at)
  await page.getByRole('dialog').waitFor()
  await page.keyboard.press('Escape')
  await titleField(page).fill(title)
  await page.keyboard.press('Enter')
  await expect.poll(() => page.locator('.kept').textContent()).toMatch(/^kept /)
  await page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined))
  return page
}

/** Goes through every place by the bar; each shows its own part of the page. */
async function walkPlaces(page: Page): Promise<string[]> {
  const places = await page.getByRole('navigation', { name: 'Places' }).getByRole('button').all()
  const seen: string[] = []
  for (const place of places) {
    await place.click()
    await expect.poll(() => page.locator('main').textContent()).not.toBe('')
    seen.push((await page.locator('main').getAttribute('class')) ?? '')
  }
  return seen
}

describe('the network', () => {
  test('may be gone after the first visit: the page opens with the work on it, and every place', async () => {
    const first = await visit(address, 'Made in the shed')
    await first.close()
    await context.setOffline(true)
    const page = await context.newPage()
    await page.goto(address)
    await expect.poll(() => titleField(page).inputValue()).toBe('Made in the shed')
    expect(new Set(await walkPlaces(page)).size).toBeGreaterThanOrEqual(5)
    await page.getByRole('button', { name: 'File' }).click()
    expect(await page.getByRole('menuitem').count()).toBeGreaterThan(2)
  })

  test('is asked of no other host, and may not be', async () => {
    const hosts = new Set<string>()
    context.on('request', (request) => {
      const { protocol, host } = new URL(request.url())
      if (protocol.startsWith('http')) hosts.add(host)
    })
    const page = await visit(address, 'Alone')
    await walkPlaces(page)
    expect([...hosts]).toEqual([new URL(address).host])
    const refused = await page.evaluate(async () => {
      const directives: string[] = []
      document.addEventListener('securitypolicyviolation', (event) =>
        directives.push(event.effectiveDirective),
      )
      await fetch('https://elsewhere.invalid/').catch(() => undefined)
      const script = document.createElement('script')
      script.textContent = 'window.strange = true'
      document.head.append(script)
      await new Promise((resolve) => setTimeout(resolve, 50))
      return { directives, ran: 'strange' in window }
    })
    expect(refused).toEqual({ directives: ['connect-src', 'script-src-elem'], ran: false })
  })
})

describe('a newer version', () => {
  let folder: string
  let server: PreviewServer

  beforeEach(async () => {
    folder = await mkdtemp(join(tmpdir(), 'lidwright-newer-'))
    await cp(inject('folder'), folder, { recursive: true })
    server = await preview({
      configFile: false,
      root: tmpdir(),
      logLevel: 'warn',
      build: { outDir: folder },
      preview: { host: '127.0.0.1', port: 0 },
    })
  })
  afterEach(async () => {
    await server.close()
    await rm(folder, { recursive: true, force: true })
  })

  test('waits until the builder says so, and brings the work over', async () => {
    const at = server.resolvedUrls?.local[0] ?? ''
    await (await visit(at, 'Old')).close()
    const page = await context.newPage()
    await page.goto(at)
    await expect.poll(() => titleField(page).inputValue()).toBe('Old')
    await appendFile(join(folder, 'offline.js'), '\n// newer\n')
    await page.evaluate(async () => {
      Object.assign(window, { sameVisit: true })
      await (await navigator.serviceWorker.getRegistration())?.update()
    })
    const notice = page.getByText('A newer version of Lidwright is here')
    await notice.waitFor()
    // Typed and not yet written when the other version takes over.
    await titleField(page).fill('Typed at the last moment')
    await page.keyboard.press('Enter')
    await page.getByRole('button', { name: 'Use it now' }).click()
    await page.waitForFunction(() => !('sameVisit' in window), undefined)
    await expect.poll(() => titleField(page).inputValue()).toBe('Typed at the last moment')
    expect(
      await page.evaluate(async () => (await navigator.serviceWorker.getRegistration())?.waiting ?? null),
    ).toBe(null)
  })
})
