/** Which tab a record belongs to: the first that claims it, until it closes or lets go. */

import { nameOf } from './words.ts'

export type LetGo = () => void

export interface Claims {
  /**
   * Claims a record for this tab; `null` where another tab has it. `patience` in milliseconds: how long to wait for
   * a tab that is just closing, as the page before a reload is.
   */
  claim(record: string, patience?: number): Promise<LetGo | null>
}

const nameFor = (record: string) => `lidwright ${record}`

/** By the browser's locks, which end with the tab however it ends. */
export function lockClaims(locks: LockManager): Claims {
  return {
    claim: (record, patience = 0) =>
      new Promise((answer) => {
        const options: LockOptions =
          patience > 0 ? { signal: AbortSignal.timeout(patience) } : { ifAvailable: true }
        locks
          .request(nameFor(record), options, (lock) => {
            if (!lock) return answer(null)
            return new Promise<void>((letGo) => answer(letGo))
          })
          .catch((error: unknown) => {
            const late = ['TimeoutError', 'AbortError'].includes(nameOf(error))
            // A browser that refuses locks altogether still does not overwrite: the store takes a number only once.
            answer(late ? null : () => undefined)
          })
      }),
  }
}

/** What tabs tell each other where there are no locks: who asks for a record, and that it is taken. */
type Message =
  | { readonly say: 'asked'; readonly record: string; readonly by: string }
  | { readonly say: 'taken'; readonly record: string; readonly to: string }

/** As much of a `BroadcastChannel` as is needed. */
export interface Channel {
  postMessage(message: Message): void
  onmessage: ((event: { readonly data: Message }) => void) | null
}

/** How long a tab is given to say that it has a record, in milliseconds. */
const ANSWER = 150

/**
 * By asking the other tabs, for pages that are not served securely and have no locks. Of two tabs that ask at once
 * the one with the smaller name gets it.
 */
export function channelClaims(channel: Channel, name: string): Claims {
  const held = new Set<string>()
  const asking = new Map<string, () => void>()
  channel.onmessage = ({ data }) => {
    if (data.say === 'taken') {
      if (data.to === name) asking.get(data.record)?.()
    } else if (data.by !== name && (held.has(data.record) || (asking.has(data.record) && name < data.by)))
      channel.postMessage({ say: 'taken', record: data.record, to: data.by })
  }
  return {
    claim: (record) =>
      new Promise((answer) => {
        let taken = false
        asking.set(record, () => {
          taken = true
        })
        channel.postMessage({ say: 'asked', record, by: name })
        setTimeout(() => {
          asking.delete(record)
          if (taken) return answer(null)
          held.add(record)
          answer(() => void held.delete(record))
        }, ANSWER)
      }),
  }
}

/** The best this browser has. */
export function claimsHere(tabName: string): Claims {
  if (navigator.locks) return lockClaims(navigator.locks)
  if (typeof BroadcastChannel === 'function')
    return channelClaims(new BroadcastChannel('lidwright') as unknown as Channel, tabName)
  return { claim: async () => () => undefined }
}
