/**
 * What the strings do, one side of it at a time. Only the side looked at is reckoned and mounted: lists that nobody
 * sees cost nothing.
 */
import { type ComponentType, type KeyboardEvent, useId, useState } from 'react'
import { AirAndWeight } from '../parts/AirAndWeight.tsx'
import { FretTable } from '../parts/FretTable.tsx'
import { Intonation } from '../parts/Intonation.tsx'
import { NeckAndLid } from '../parts/NeckAndLid.tsx'
import { PullTable } from '../parts/PullTable.tsx'
import { PureTuning } from '../parts/PureTuning.tsx'

export type Side = readonly [title: string, Side: ComponentType]

const SIDES: readonly Side[] = [
  ['Strings', PullTable],
  ['Heights and intonation', Intonation],
  ['Neck and lid', NeckAndLid],
  ['Tuned pure', PureTuning],
  ['Air and weight', AirAndWeight],
  ['Frets', FretTable],
]

/** `first` stand before the others; the strings are what is looked at until somebody chooses. */
export function LoadTabs({ first }: { readonly first: readonly Side[] }) {
  const own = useId()
  const [chosen, setChosen] = useState('Strings')
  const sides = [...first, ...SIDES]
  const here = Math.max(
    sides.findIndex(([title]) => title === chosen),
    0,
  )
  const Shown = sides[here]?.[1] ?? PullTable
  const onKeyDown = (event: KeyboardEvent) => {
    const step = event.key === 'ArrowRight' ? 1 : event.key === 'ArrowLeft' ? -1 : 0
    if (step === 0) return
    event.preventDefault()
    const next = (here + step + sides.length) % sides.length
    setChosen(sides[next]?.[0] ?? 'Strings')
    document.getElementById(`${own}-${next}`)?.focus()
  }
  return (
    <div className="load-tabs">
      <div className="tabs" role="tablist" aria-label="What the strings do" onKeyDown={onKeyDown}>
        {sides.map(([title], index) => (
          <button
            key={title}
            type="button"
            role="tab"
            id={`${own}-${index}`}
            aria-selected={here === index}
            aria-controls={`${own}-panel`}
            tabIndex={here === index ? 0 : -1}
            className={here === index ? 'place-tab here' : 'place-tab'}
            onClick={() => setChosen(title)}
          >
            {title}
          </button>
        ))}
      </div>
      <div
        className="tables"
        id={`${own}-panel`}
        role="tabpanel"
        aria-labelledby={`${own}-${here}`}
        // biome-ignore lint/a11y/noNoninteractiveTabindex: it scrolls, so keys must be able to reach it
        tabIndex={0}
      >
        <Shown />
      </div>
    </div>
  )
}
