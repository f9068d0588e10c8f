/**
 * The service worker: keeps every file of the page, so that the tool opens in a shed without a network. A newer version is
 * fetched beside the old one and waits: it takes over when the builder says so, or when the last tab is closed.
 */
import { cleanupOutdatedCaches, precacheAndRoute } from 'workbox-precaching'

/** Written in by the build: every file of the page with a mark of its content. */
declare const FILES_OF_THE_PAGE: { url: string; revision: string | null }[]

/** What is needed of a worker's global; the types of pages and of workers do not go together in one project. */
interface Worker {
  skipWaiting(): Promise<void>
  addEventListener(type: 'message', heard: (event: { data: unknown }) => void): void
}

const worker = self as unknown as Worker

precacheAndRoute(FILES_OF_THE_PAGE)
cleanupOutdatedCaches()

worker.addEventListener('message', ({ data }) => {
  if (data === 'take over') void worker.skipWaiting()
})
