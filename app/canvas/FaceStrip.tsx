/** The walls and the base under the sheet, small or large. */
import { useMemo, useRef, useState } from 'react'
import { facesSubject } from './faces-subject.ts'
import { Layers } from './Layers.tsx'
import type { Scene } from './scene.ts'

export function FaceStrip() {
  const [folded, setFolded] = useState(false)
  const scene = useRef<Scene>(null)
  const subject = useMemo(
    () =>
      facesSubject(
        (frames) => {
          if (scene.current) scene.current.element.dataset.faces = JSON.stringify(Object.fromEntries(frames))
        },
        folded ? 'folded out' : 'strip',
      ),
    [folded],
  )
  return (
    <section className={folded ? 'strip strip-large' : 'strip'} aria-label="Walls and base, from outside">
      <header className="strip-head">
        <h2>
          {folded
            ? 'Folded out around the lid, every face from outside: drag across the edges'
            : 'Walls from outside, lid side up; the base from below, smaller'}
        </h2>
        <button type="button" className="quiet" aria-pressed={folded} onClick={() => setFolded(!folded)}>
          {folded ? 'In a strip' : 'Fold out'}
        </button>
      </header>
      <div className="strip-body">
        <Layers
          ref={scene}
          subject={subject}
          label={
            folded
              ? 'Drawing: lid, walls and base folded out, each seen from outside'
              : 'Drawing: the four walls and the base, each seen from outside'
          }
        />
      </div>
    </section>
  )
}
