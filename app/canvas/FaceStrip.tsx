/** The walls and the base under the sheet, small or large. */
import { useMemo, useState } from 'react'
import { facesSubject } from './faces-subject.ts'
import { Layers } from './Layers.tsx'

export function FaceStrip() {
  const [large, setLarge] = useState(false)
  const subject = useMemo(facesSubject, [])
  return (
    <section className={large ? 'strip strip-large' : 'strip'} aria-label="Walls and base, from outside">
      <header className="strip-head">
        <h2>Walls from outside, lid side up; the base from below, smaller</h2>
        <button type="button" className="quiet" aria-pressed={large} onClick={() => setLarge(!large)}>
          {large ? 'Smaller' : 'Larger'}
        </button>
      </header>
      <div className="strip-body">
        <Layers subject={subject} label="Drawing: the four walls and the base, each seen from outside" />
      </div>
    </section>
  )
}
