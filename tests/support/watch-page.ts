import type { Page } from 'playwright-core'

/** What went wrong on a page since it is watched; every list should stay empty. */
export interface Watched {
  /** Errors and warnings on the console, and exceptions nobody caught. */
  readonly complaints: string[]
  /** Requests that failed or were answered with an error. */
  readonly failures: string[]
  /** Requests to any host but the one the page came from. */
  readonly strangers: string[]
}

/**
 * Watches a page from now on; call it before the page goes anywhere.
 * @example
 * const watched = watchPage(page, address)
 * await page.goto(address)
 * expect(watched).toEqual(nothingWrong)
 */
export function watchPage(page: Page, address: string): Watched {
  const watched: Watched = { complaints: [], failures: [], strangers: [] }
  const home = new URL(address).host
  page.on('console', (message) => {
    if (['error', 'warning'].includes(message.type())) watched.complaints.push(message.text())
  })
  page.on('pageerror', (error) => watched.complaints.push(String(error)))
  page.on('requestfailed', (request) =>
    watched.failures.push(`${request.url()}: ${request.failure()?.errorText}`),
  )
  page.on('response', (response) => {
    if (response.status() >= 400) watched.failures.push(`${response.url()}: ${response.status()}`)
  })
  page.on('request', (request) => {
    const { protocol, host } = new URL(request.url())
    if (!['data:', 'blob:'].includes(protocol) && host !== home) watched.strangers.push(request.url())
  })
  return watched
}

/** What a page in order comes to. */
export const nothingWrong: Watched = { complaints: [], failures: [], strangers: [] }
