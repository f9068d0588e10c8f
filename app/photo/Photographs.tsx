/** Survey: photographs of the faces, each laid by its corners under the drawing. */
import { useEffect, useState } from 'react'
import { change, FACES, type Face, type Photo } from '../../geometry/index.ts'
import { announce } from '../parts/Announcer.tsx'
import { useDesign } from '../parts/calm.ts'
import { FACE_TITLES } from '../parts/say.ts'
import { commit, setField } from '../state/index.ts'
import { CornersDialog } from './CornersDialog.tsx'
import { type Picture, takeIn } from './take-in.ts'

/** What lies in the corners dialog: a picture that is new, or one that is kept already. */
interface Open {
  readonly face: Face
  readonly picture: Picture
  readonly corners: Photo['corners'] | null
}

export function Photographs() {
  const { photos } = useDesign()
  const [face, setFace] = useState<Face>('lid')
  const [fault, setFault] = useState<string | null>(null)
  const [busy, setBusy] = useState(false)
  const [open, setOpen] = useState<Open | null>(null)

  const take = async (file: File) => {
    setFault(null)
    setBusy(true)
    const taken = await takeIn(file, `“${file.name}”`)
    setBusy(false)
    if (taken.ok) setOpen({ face, picture: taken.picture, corners: null })
    else setFault(taken.sentence)
  }

  useEffect(() => {
    const over = (event: DragEvent) => event.preventDefault()
    const drop = (event: DragEvent) => {
      const file = [...(event.dataTransfer?.files ?? [])].find((one) => one.type.startsWith('image/'))
      if (!file) return
      event.preventDefault()
      event.stopPropagation()
      void take(file)
    }
    addEventListener('dragover', over)
    addEventListener('drop', drop, true)
    return () => {
      removeEventListener('dragover', over)
      removeEventListener('drop', drop, true)
    }
  })

  return (
    <section className="form-group photographs" aria-label="Photographs">
      <h2>Photographs</h2>
      <p className="soft small">
        Drop a photograph of a face here, or choose one. Put its four corners on the corners of the box, and
        it lies straightened at true scale under the drawing. It is kept inside this design and goes nowhere
        else.
      </p>
      <div className="field-row">
        <label className="small">
          Face{' '}
          <select value={face} onChange={(event) => setFace(event.target.value as Face)}>
            {FACES.map((one) => (
              <option key={one} value={one}>
                {FACE_TITLES[one].toLowerCase()}
              </option>
            ))}
          </select>
        </label>
        <label className="button-like">
          {busy ? 'Opening…' : 'Choose a photograph…'}
          <input
            type="file"
            className="unseen"
            accept="image/jpeg,image/png,image/webp"
            disabled={busy}
            onChange={(event) => {
              const file = event.target.files?.[0]
              event.target.value = ''
              if (file) void take(file)
            }}
          />
        </label>
      </div>
      {fault && (
        <p className="field-fault" role="alert">
          {fault}
        </p>
      )}
      <ul className="plain-list">
        {photos.map((photo, index) => (
          <Kept
            key={photo.face}
            photo={photo}
            index={index}
            onCorners={() => setOpen({ face: photo.face, picture: photo, corners: photo.corners })}
          />
        ))}
      </ul>
      {open && (
        <CornersDialog
          title={`Corners of the ${FACE_TITLES[open.face].toLowerCase()}`}
          face={open.face}
          picture={open.picture}
          corners={open.corners}
          onClose={() => setOpen(null)}
          onUse={(corners) => {
            const before = photos.find((one) => one.face === open.face)
            const { image, width, height } = open.picture
            const photo: Photo = {
              face: open.face,
              image,
              width,
              height,
              corners,
              opacity: before?.opacity ?? 0.6,
              shown: true,
            }
            const outcome = setField(
              ['photos'],
              before ? photos.map((one) => (one === before ? photo : one)) : [...photos, photo],
              `Photograph of the ${FACE_TITLES[open.face].toLowerCase()}`,
            )
            if (outcome.ok) setOpen(null)
            return outcome
          }}
        />
      )}
    </section>
  )
}

const kilobytes = ({ image }: Photo) => `${Math.round((image.length * 0.75) / 1000)} kB`

interface KeptProps {
  readonly photo: Photo
  readonly index: number
  readonly onCorners: () => void
}

function Kept({ photo, index, onCorners }: KeptProps) {
  const design = useDesign()
  const name = FACE_TITLES[photo.face].toLowerCase()
  return (
    <li className="photograph">
      <span>
        {FACE_TITLES[photo.face]}{' '}
        <span className="soft small">
          {photo.width} × {photo.height} dots, {kilobytes(photo)} of the design
        </span>
      </span>
      <label className="small">
        <input
          type="checkbox"
          checked={photo.shown}
          onChange={(event) =>
            setField(['photos', index, 'shown'], event.target.checked, `Show the photograph`)
          }
        />{' '}
        shown
      </label>
      <label className="small">
        strength{' '}
        <input
          type="range"
          min={0.1}
          max={1}
          step={0.1}
          value={photo.opacity}
          aria-label={`Strength of the photograph of the ${name}`}
          onChange={(event) =>
            setField(['photos', index, 'opacity'], Number(event.target.value), 'Strength of a photograph')
          }
        />
      </label>
      <span className="field-row">
        <button type="button" onClick={onCorners}>
          Corners…
        </button>
        <button
          type="button"
          className="quiet"
          onClick={() => {
            commit(
              `Remove the photograph of the ${name}`,
              change(design, [['photos'], design.photos.filter((one) => one !== photo)]),
            )
            announce('Removed. Undo brings it back.')
          }}
        >
          Remove
        </button>
      </span>
    </li>
  )
}
