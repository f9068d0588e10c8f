import type { Page } from 'playwright-core'
import { expect, inject, test } from 'vitest'
import { newContext } from '../support/browser.ts'
import { nothingWrong, watchPage } from '../support/watch-page.ts'

const address = inject('address')
let page: Page

test('the page opens: no complaints, no failed requests, nothing asked of another host', async () => {
  page = await (await newContext({ offline: 'kept' })).newPage()
  const watched = watchPage(page, address)
  await page.goto(address, { waitUntil: 'networkidle' })
  expect(await page.title()).toBe('Lidwright')
  expect(await page.locator('#root > *').count()).toBeGreaterThan(0)
  expect(watched).toEqual(nothingWrong)
})

test('the watch itself sees a complaint, a missing file and a stranger', async () => {
  // The page's own policy would not let a stranger be asked: here it is set aside.
  const other = await (await newContext({ bypassCSP: true, offline: 'kept' })).newPage()
  const watched = watchPage(other, address)
  // A name that no resolver knows (RFC 6761, section 6.4), so nothing leaves this machine.
  await other.route('**/missing.png', (route) => route.fulfill({ status: 404 }))
  await other.goto(address)
  await other.evaluate(async () => {
    console.error('a complaint')
    await fetch('missing.png')
    await fetch('http://stranger.invalid/').catch(() => undefined)
  })
  expect(watched.complaints).toContain('a complaint')
  expect(watched.failures.join()).toContain('missing.png')
  expect(watched.strangers).toEqual(['http://stranger.invalid/'])
})

test('text has a width, so there are fonts', async () => {
  const width = await page.evaluate(() => {
    const context = document.createElement('canvas').getContext('2d')
    return context?.measureText('Lidwright 7/16 ⌀').width ?? 0
  })
  expect(width).toBeGreaterThan(0)
})

test('the build is the published one, without the development half of React', async () => {
  const page = await (await fetch(address)).text()
  const scripts = [...page.matchAll(/(?:src|href)="([^"]+\.js)"/g)].map(
    (match) => new URL(match[1] ?? '', address),
  )
  expect(scripts.length).toBeGreaterThan(0)
  for (const script of scripts) {
    const text = await (await fetch(script)).text()
    // In react.dev's own words, found in the development build of react-dom only.
    const development = text.includes('Each child in a list should have a unique')
    expect(development, `${script} is a development build`).toBe(false)
  }
})
