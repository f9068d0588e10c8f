/** The designs kept in this browser: to look for one, go back to it, copy it, hand it over or throw it away. */
import { useEffect, useState } from 'react'
import type { Design } from '../../geometry/index.ts'
import { download } from '../actions/files.ts'
import { forgetViews } from '../canvas/lookings.ts'
import { Dialog } from '../parts/Dialog.tsx'
import { sayLength } from '../parts/say.ts'
import {
  addKept,
  forgetKept,
  type KeptDesign,
  keptDesigns,
  openKept,
  untouchedFiles,
} from '../saving/index.ts'
import { fileText, slug } from '../state/index.ts'
import { PlanPicture } from './PlanPicture.tsx'
import { shelfZip, takeInFiles } from './take-in.ts'

const WHEN = new Intl.DateTimeFormat(undefined, { dateStyle: 'medium', timeStyle: 'short' })

const fileOf = (design: Design) => {
  const written = fileText(design)
  return { name: `${slug(design.title)}.lidwright.json`, text: written.ok ? written.text : '' }
}

/** `3 strings, scale 25 in, box 10 × 7 3/4 in`. */
const sizeOf = ({ strings, scale, box, units }: Design) =>
  `${strings.count} ${strings.count === 1 ? 'string' : 'strings'}, scale ${sayLength(scale.length, units)}, box ${sayLength(box.length, units)} × ${sayLength(box.width, units)}`

const has = (design: Design, words: readonly string[]) => {
  const text = `${design.title} ${design.notes} ${sizeOf(design)}`.toLowerCase()
  return words.every((word) => text.includes(word))
}

export function Shelf({ onClose }: { readonly onClose: () => void }) {
  const [designs, setDesigns] = useState<readonly KeptDesign[] | null>(null)
  const [sought, setSought] = useState('')
  const [told, setTold] = useState<readonly string[]>([])
  const [thrown, setThrown] = useState<Design | null>(null)
  const load = () =>
    keptDesigns().then(setDesigns, () => setTold(['What is kept in this browser cannot be read just now.']))
  useEffect(() => void load(), [])

  const open = async ({ record, design }: KeptDesign) => {
    if (!(await openKept(record)))
      return setTold([`“${design.title}” could not be opened; the design on the bench stays.`])
    forgetViews()
    onClose()
  }
  const throwAway = async ({ record, design }: KeptDesign) => {
    if (!(await forgetKept(record)))
      return setTold([`“${design.title}” is open here or in another tab, so it stays.`])
    setThrown(design)
    await load()
  }
  const add = async (...others: Design[]) => {
    try {
      for (const design of others) await addKept(design)
    } catch (error) {
      setTold([`It could not be kept: ${error instanceof Error ? error.message : String(error)}`])
    }
    await load()
  }
  const takeIn = async (files: readonly File[]) => {
    const { designs: taken, refused } = await takeInFiles(files)
    await add(...taken)
    setTold([
      ...(taken.length > 0
        ? [`${taken.length === 1 ? 'One design was' : `${taken.length} designs were`} put on the shelf.`]
        : []),
      ...refused,
    ])
  }
  const words = sought.toLowerCase().split(/\s+/).filter(Boolean)
  const shown = designs?.filter(({ design }) => has(design, words))
  const untouched = untouchedFiles()

  return (
    <Dialog title="Designs kept in this browser" wide onClose={onClose}>
      <div className="shelf">
        <div className="shelf-head">
          <input
            type="search"
            aria-label="Look for a design"
            placeholder="Title, notes, strings, scale…"
            value={sought}
            onChange={(event) => setSought(event.target.value)}
          />
          <label className="button-like">
            Put files on the shelf…
            <input
              type="file"
              multiple
              className="unseen"
              accept=".json,.zip,application/json,application/zip"
              onChange={(event) => {
                const files = [...(event.target.files ?? [])]
                event.target.value = ''
                if (files.length > 0) void takeIn(files)
              }}
            />
          </label>
          <button
            type="button"
            disabled={!designs?.length}
            onClick={async () =>
              download(
                'lidwright-shelf.zip',
                await shelfZip((designs ?? []).map(({ design }) => fileOf(design))),
                'application/zip',
              )
            }
          >
            Save all in one zip
          </button>
        </div>
        <Staying />
        {thrown && (
          <p className="shelf-told" role="status">
            “{thrown.title || 'Untitled'}” is thrown away.{' '}
            <button
              type="button"
              className="link"
              onClick={() => {
                setThrown(null)
                void add(thrown)
              }}
            >
              Put it back
            </button>
          </p>
        )}
        {told.map((sentence) => (
          <p key={sentence} className="field-fault" role="alert">
            {sentence}
          </p>
        ))}
        <ul className="shelf-list">
          {shown?.map((kept) => (
            <Row
              key={kept.record}
              kept={kept}
              onOpen={() => void open(kept)}
              onCopy={() => void add({ ...kept.design, title: `${kept.design.title}, copy`.slice(0, 120) })}
              onThrow={() => void throwAway(kept)}
            />
          ))}
        </ul>
        {designs?.length === 0 && (
          <p>Nothing is kept yet. Whatever lies on the bench is kept here by itself.</p>
        )}
        {shown?.length === 0 && designs && designs.length > 0 && <p>No design has these words.</p>}
        {untouched.length > 0 && (
          <section>
            <h2>Could not be opened</h2>
            <p className="soft">They lie here as they were. Save them to a file, and nothing is lost.</p>
            <ul className="plain-list">
              {untouched.map((one) => (
                <li key={one.name}>
                  <button type="button" onClick={() => download(one.name, one.text, 'application/json')}>
                    Save {one.name} as it is
                  </button>
                </li>
              ))}
            </ul>
          </section>
        )}
      </div>
    </Dialog>
  )
}

interface RowProps {
  readonly kept: KeptDesign
  readonly onOpen: () => void
  readonly onCopy: () => void
  readonly onThrow: () => void
}

function Row({ kept, onOpen, onCopy, onThrow }: RowProps) {
  const { design, here, at } = kept
  const title = design.title || 'Untitled'
  return (
    <li>
      <PlanPicture design={design} />
      <div className="shelf-words">
        <b>{title}</b>
        <span className="small soft">{sizeOf(design)}</span>
        <span className="small soft">{here ? 'on the bench' : WHEN.format(at)}</span>
      </div>
      <div className="shelf-acts">
        <button type="button" disabled={here} onClick={onOpen} aria-label={`Open “${title}”`}>
          Open
        </button>
        <button type="button" className="quiet" onClick={onCopy} aria-label={`Duplicate “${title}”`}>
          Duplicate
        </button>
        <button
          type="button"
          className="quiet"
          onClick={() => {
            const { name, text } = fileOf(design)
            download(name, text, 'application/json')
          }}
          aria-label={`Save “${title}” to a file`}
        >
          Save to a file
        </button>
        <button
          type="button"
          className="quiet"
          disabled={here}
          onClick={onThrow}
          aria-label={`Throw “${title}” away`}
        >
          Throw away
        </button>
      </div>
    </li>
  )
}

/** May the browser sweep the shelf when the disk is full? It can be asked not to. */
function Staying() {
  const [stays, setStays] = useState<boolean | null>(null)
  const [asked, setAsked] = useState(false)
  useEffect(() => {
    navigator.storage?.persisted?.().then(setStays, () => undefined)
  }, [])
  if (stays === null)
    return <p className="soft small">Kept on this machine only. Save to a file to be sure of one.</p>
  if (stays)
    return (
      <p className="soft small">Kept on this machine only; the browser will not sweep it away by itself.</p>
    )
  return (
    <p className="soft small">
      Kept on this machine only. When the disk is full the browser may sweep it away
      {asked ? ', and it would not promise otherwise: save to files what must not be lost.' : '. '}
      {!asked && (
        <button
          type="button"
          className="link"
          onClick={async () => {
            setStays(await navigator.storage.persist())
            setAsked(true)
          }}
        >
          Ask it not to
        </button>
      )}
    </p>
  )
}
