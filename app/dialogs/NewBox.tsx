/** A first screen: what was measured on the found box, and the box drawn from it while it is typed. */
import { type ReactNode, useEffect, useMemo, useRef, useState } from 'react'
import {
  apply,
  change,
  checkDesign,
  type Design,
  type Field,
  fieldsOf,
  type Hand,
  type Path,
  solve,
  valueAt,
} from '../../geometry/index.ts'
import { forgetViews } from '../canvas/lookings.ts'
import { BoxDrawing } from '../drawings/BoxDrawing.tsx'
import { Sketch } from '../drawings/HelpDrawing.tsx'
import { ChoiceField } from '../parts/ChoiceField.tsx'
import { Dialog } from '../parts/Dialog.tsx'
import type { Answer } from '../parts/field.ts'
import { LengthField } from '../parts/LengthField.tsx'
import { NumberField } from '../parts/NumberField.tsx'
import { TextField } from '../parts/TextField.tsx'
import { goTo, standardDesign, startFresh, useBench } from '../state/index.ts'

/** Choosing neck and strings takes the loads, and this form is filled in without: they come while it is. */
const fetchBegun = () => import('./begun.ts')

type Draft = Design

/** Fields that one measure stands for here; each can be set by itself later. */
interface Together {
  readonly also?: readonly Path[]
  readonly words?: { readonly label: string; readonly help: string; readonly address: string }
}

const WALLS: Together = {
  also: ['tailEnd', 'bass', 'treble'].map((wall) => ['box', 'walls', wall]),
  words: {
    label: 'Walls',
    help: 'Thickness of the walls; if they differ, set each one in Survey afterwards.',
    address: 'box.walls',
  },
}

/** A stick is as wide at the nut and at the head as anywhere. */
const STRAIGHT_NECK: Together = {
  also: [
    ['neck', 'widthAtNut'],
    ['headstock', 'width'],
  ],
}

/** A label and a help from the schema, so that a field reads the same here and where it is changed later. */
const field = (section: string, name: string): Field => {
  const found = fieldsOf(section).find((one) => one.name === name)
  if (!found) throw new Error(`the section ${section} has no field called "${name}"`)
  return found
}

export function NewBox({ onClose }: { readonly onClose: () => void }) {
  const [draft, setDraft] = useState<Draft>(standardDesign)
  const [lit, setLit] = useState<string | null>(null)
  /** What was said of the neck blank, which a starting design would choose by itself. */
  const [said, setSaid] = useState<readonly Path[]>([])
  const [asked, setAsked] = useState(false)
  const [away, setAway] = useState(false)
  const hand = useRef<HTMLDivElement>(null)
  const [typed, setTyped] = useState<Draft | null>(null)
  const layout = useMemo(() => solve(typed ?? draft), [typed, draft])
  const first = useBench((bench) => bench.fresh)
  // One that cannot be fetched now is asked for again when it is wanted.
  useEffect(() => void fetchBegun().catch(() => undefined), [])

  const tried = (...fields: (readonly [Path, unknown])[]): ReturnType<typeof checkDesign> =>
    checkDesign(apply(draft, change(draft, ...fields)))
  const set = (...fields: (readonly [Path, unknown])[]): Answer => {
    const reading = tried(...fields)
    if (!reading.ok) return { ok: false, sentence: reading.faults[0]?.sentence ?? 'This will not do.' }
    setDraft(reading.design)
    const blank = fields
      .map(([path]) => path)
      .filter(([section]) => section === 'neck' || section === 'headstock')
    if (blank.length > 0) setSaid([...said, ...blank])
    setTyped(null)
    return { ok: true }
  }
  const see = (...fields: (readonly [Path, unknown])[]): void => {
    const reading = tried(...fields)
    if (reading.ok) setTyped(reading.design)
  }
  const begin = () => {
    setAsked(true)
    if (draft.hand === 'not stated') {
      // The question stands at the top of a form that may be scrolled far down: it comes to where the builder looks.
      hand.current?.querySelector('input')?.focus()
      return
    }
    void fetchBegun()
      .then(({ begun }) => {
        startFresh(begun(draft, said))
        forgetViews()
        goTo('lay-out')
        onClose()
      })
      .catch(() => setAway(true))
  }

  const length = (section: string, name: string, marks: string | null = null, more: Together = {}) => {
    const { label, help, address } = { ...field(section, name), ...more.words }
    const all = [[section, ...name.split('.')], ...(more.also ?? [])]
    const fields = (mm: number) => all.map((path) => [path, mm] as const)
    return (
      <Row sketch={address} onFocus={() => setLit(marks)}>
        <LengthField
          explain
          label={label}
          help={help}
          value={Number(valueAt(draft, all[0] ?? []))}
          units={draft.units}
          onCommit={(mm) => set(...fields(mm))}
          onType={(mm) => see(...fields(mm))}
        />
      </Row>
    )
  }

  return (
    <Dialog title={first ? 'What box have you found?' : 'New box'} onClose={onClose} wide>
      <form
        className="new-box"
        onSubmit={(event) => {
          event.preventDefault()
          begin()
        }}
      >
        <div className="new-box-fields">
          <p className="soft">
            Type what you measured, in any unit at any time: <b>9&nbsp;1/2</b>, <b>241 mm</b>, <b>24.1 cm</b>.
            Everything can be changed later.
          </p>
          <div className="new-box-row">
            <ChoiceField
              label="Your rule is in"
              value={draft.units.display}
              options={['mm', 'inches']}
              onCommit={(display) => set([['units', 'display'], display])}
            />
            <div ref={hand}>
              <ChoiceField
                label="Hand that plucks"
                help={field('', 'hand').help}
                address={field('', 'hand').address}
                value={draft.hand}
                options={['right', 'left']}
                onCommit={(chosen) => set([['hand'], chosen as Hand])}
              />
            </div>
          </div>
          {asked && draft.hand === 'not stated' && (
            <p className="field-fault" role="alert">
              Say which hand plucks, right or left: every cut depends on it, so there is no usual one.
            </p>
          )}
          {away && (
            <p className="field-fault" role="alert">
              The network went away before the whole page was here. Once it is back, press again; nothing
              typed is lost.
            </p>
          )}
          <TextField label="Title" value={draft.title} onCommit={(title) => set([['title'], title])} />
          <h2>The box, outside</h2>
          {length('box', 'length', 'length')}
          {length('box', 'width', 'width')}
          {length('box', 'depth', 'depth')}
          {length('box', 'cornerRadius', 'cornerRadius')}
          <h2>Its wood</h2>
          {length('box', 'walls.neckEnd', 'walls.neckEnd', WALLS)}
          {length('box', 'lid.thickness', 'lid.thickness')}
          <Row sketch={field('box', 'lid.fit').address} chosen={draft.box.lid.fit}>
            <ChoiceField
              label={field('box', 'lid.fit').label}
              help={field('box', 'lid.fit').help}
              value={draft.box.lid.fit}
              options={['on the walls', 'between the walls']}
              onCommit={(fit) => set([['box', 'lid', 'fit'], fit])}
            />
          </Row>
          {length('box', 'base.thickness', 'base.thickness')}
          <h2>Strings and neck</h2>
          <Row sketch={field('strings', 'count').address}>
            <NumberField
              label={field('strings', 'count').label}
              help={field('strings', 'count').help}
              whole
              min={1}
              max={12}
              value={draft.strings.count}
              onCommit={(count) => set([['strings', 'count'], count])}
            />
          </Row>
          {length('scale', 'length')}
          {length('neck', 'length')}
          {length('neck', 'width', null, STRAIGHT_NECK)}
          {length('neck', 'thickness')}
        </div>
        <div className="new-box-drawing">
          <BoxDrawing layout={layout} lit={lit} label="Your box, as typed so far" />
          <div className="new-box-foot">
            {first && (
              <button type="button" className="quiet" onClick={onClose}>
                Look around first
              </button>
            )}
            <button type="submit" className="main">
              Put it on the bench
            </button>
          </div>
        </div>
      </form>
    </Dialog>
  )
}

function Row({
  sketch,
  chosen,
  onFocus,
  children,
}: {
  sketch: string
  chosen?: string
  onFocus?: () => void
  children: ReactNode
}) {
  return (
    <fieldset className="sketched" onFocus={onFocus}>
      <Sketch of={sketch} chosen={chosen} />
      {children}
    </fieldset>
  )
}
