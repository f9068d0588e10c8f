/** Says things to a screen reader that are otherwise only drawn. */
import { useSyncExternalStore } from 'react'

let said = ''
const listeners = new Set<() => void>()

/** Says a sentence politely. The same sentence twice is said twice. */
export function announce(sentence: string): void {
  said = said === sentence ? `${sentence}\u00a0` : sentence
  for (const listener of listeners) listener()
}

const subscribe = (listener: () => void) => {
  listeners.add(listener)
  return () => listeners.delete(listener)
}

export function Announcer() {
  const words = useSyncExternalStore(subscribe, () => said)
  return (
    <div className="unseen" aria-live="polite" role="status">
      {words}
    </div>
  )
}
