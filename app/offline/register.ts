/** Keeps the page for use without a network, and tells when a newer version of it waits. */
import { create } from 'zustand'

interface Offline {
  /** A newer version has been fetched and waits; this begins to use it. `null` where none waits. */
  readonly takeOver: (() => void) | null
}

export const useOffline = create<Offline>()(() => ({ takeOver: null }))

/** How often a page that stays open asks whether there is a newer version. */
const EVERY = 60 * 60 * 1000

/**
 * Registers the worker of the published page; in development there is none. `settle` writes everything down before
 * another version takes over. Without service workers (or where they are refused) the page works as ever, online.
 */
export function keepForOffline(settle: () => Promise<void>): void {
  if (!import.meta.env.PROD || !('serviceWorker' in navigator)) return
  void navigator.serviceWorker
    .register('./offline.js', { scope: './' })
    .then((registration) => {
      watch(registration, settle)
      setInterval(() => void registration.update().catch(() => undefined), EVERY)
    })
    .catch(() => undefined)
}

function watch(registration: ServiceWorkerRegistration, settle: () => Promise<void>): void {
  let asked = false
  // Another tab may have said yes: only the one that asked loads itself anew.
  navigator.serviceWorker.addEventListener('controllerchange', () => {
    if (asked) location.reload()
  })
  const offer = () => {
    const { waiting } = registration
    // The very first worker has nothing to take over from.
    if (!waiting || !navigator.serviceWorker.controller) return
    useOffline.setState({
      takeOver: () => {
        asked = true
        void settle().then(() => waiting.postMessage('take over'))
      },
    })
  }
  offer()
  registration.addEventListener('updatefound', () => {
    registration.installing?.addEventListener('statechange', offer)
  })
}
