/** Everything done since the design was laid on the bench, to go back to any point; versions kept by name. */
import { useEffect, useState } from 'react'
import { announce } from '../parts/Announcer.tsx'
import { Dialog } from '../parts/Dialog.tsx'
import { dropVersion, keepVersion, versionsHere } from '../saving/index.ts'
import { designOf, type Version } from '../saving/versions.ts'
import { historyNow, layVersion, travel, useBench } from '../state/index.ts'
import { holdVariant } from '../state/variants.ts'
import { Compare } from './Compare.tsx'

const WHEN = new Intl.DateTimeFormat(undefined, { dateStyle: 'medium', timeStyle: 'short' })
/** Rows shown at first: more only slow the dialog down. */
const MANY = 200

export function History({ onClose }: { readonly onClose: () => void }) {
  useBench((bench) => bench.design)
  const [versions, setVersions] = useState<readonly Version[]>([])
  const [fault, setFault] = useState<string | null>(null)
  const [comparing, setComparing] = useState<Version | null>(null)
  const load = () =>
    void versionsHere().then(setVersions, () =>
      setFault('Versions cannot be read in this browser just now; the list of steps is all there is.'),
    )
  useEffect(load, [])
  if (comparing)
    return (
      <Compare versions={versions} first={comparing} onBack={() => setComparing(null)} onClose={onClose} />
    )
  return (
    <Dialog title="History" onClose={onClose}>
      <NewVersion
        onKeep={async (name) => {
          try {
            await keepVersion(name)
            setFault(null)
            announce(`Kept as “${name}”.`)
            load()
            return true
          } catch {
            setFault(
              'The version could not be kept: this browser has no room or allows none. Save a file instead.',
            )
            return false
          }
        }}
      />
      {fault && (
        <p className="field-fault" role="alert">
          {fault}
        </p>
      )}
      {versions.length > 0 && (
        <section aria-label="Versions">
          <h2>Versions</h2>
          <ul className="plain-list version-list">
            {versions.map((version) => (
              <li key={version.number}>
                <span>
                  {version.name} <span className="small soft">{WHEN.format(version.at)}</span>
                </span>
                <button type="button" className="quiet" onClick={() => setComparing(version)}>
                  Compare
                </button>
                <button
                  type="button"
                  className="quiet"
                  title="Draws it faintly over the plan in Choose, its numbers side by side under What fits this box"
                  onClick={() => {
                    const design = designOf(version)
                    if (!design) return setFault(`“${version.name}” cannot be read any more.`)
                    const number = holdVariant(version.name, design)
                    if (number === null) return setFault('Four variants are held already; let one go first.')
                    announce(`“${version.name}” is held beside the design as ${number}.`)
                  }}
                >
                  Hold beside
                </button>
                <button
                  type="button"
                  className="quiet"
                  onClick={() => {
                    const design = designOf(version)
                    if (!design) return setFault(`“${version.name}” cannot be read any more.`)
                    layVersion(design, version.name)
                    announce(`“${version.name}” lies on the bench. Undo brings back what was there.`)
                  }}
                >
                  Go back to it
                </button>
                <button
                  type="button"
                  className="quiet"
                  aria-label={`Throw away the version “${version.name}”`}
                  onClick={() => void dropVersion(version).then(load)}
                >
                  Throw away
                </button>
              </li>
            ))}
          </ul>
        </section>
      )}
      <Steps />
    </Dialog>
  )
}

function NewVersion({ onKeep }: { readonly onKeep: (name: string) => Promise<boolean> }) {
  const [name, setName] = useState('')
  const plain = name.trim()
  return (
    <form
      className="version-new"
      onSubmit={(event) => {
        event.preventDefault()
        if (plain) void onKeep(plain).then((kept) => kept && setName(''))
      }}
    >
      <label className="field">
        <span>Keep it as it is now, under a name</span>
        <input
          type="text"
          className="field-wide"
          maxLength={80}
          placeholder="before moving the pickup"
          value={name}
          onChange={(event) => setName(event.target.value)}
        />
      </label>
      <button type="submit" disabled={!plain}>
        Keep
      </button>
    </form>
  )
}

/** Newest on top; what was taken back stands above where one is now. */
function Steps() {
  const { done, undone } = historyNow()
  const [all, setAll] = useState(false)
  const past = all ? done : done.slice(0, MANY)
  return (
    <section aria-label="Steps">
      <h2>Steps</h2>
      <ol className="plain-list step-list" reversed>
        {undone.map((label, index) => (
          <li key={`undone ${undone.length - index}`}>
            <button type="button" className="soft" onClick={() => travel(undone.length - index)}>
              {label} <span className="small">taken back</span>
            </button>
          </li>
        ))}
        {past.map((label, index) => (
          <li key={`done ${done.length - index}`}>
            <button
              type="button"
              className={index === 0 ? 'chosen' : ''}
              aria-current={index === 0 ? 'step' : undefined}
              onClick={() => travel(-index)}
            >
              {label}
              {index === 0 && <span className="small soft"> here you are</span>}
            </button>
          </li>
        ))}
        {past.length < done.length ? (
          <li>
            <button type="button" onClick={() => setAll(true)}>
              {done.length - past.length} earlier steps…
            </button>
          </li>
        ) : (
          <li>
            <button
              type="button"
              aria-current={done.length === 0 ? 'step' : undefined}
              className={done.length === 0 ? 'chosen' : ''}
              onClick={() => travel(-done.length)}
            >
              As it was laid on the bench
            </button>
          </li>
        )}
      </ol>
    </section>
  )
}
