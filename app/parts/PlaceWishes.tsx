/** What is placed and what is wished of it: the form of "place for me". */
import { useId } from 'react'
import {
  ADDABLE,
  type KindName,
  kindOf,
  type Layout,
  movableIn,
  type PlacingWishes,
  readPitch,
} from '../../geometry/index.ts'
import { nameOf } from './say.ts'

export interface Wished {
  /** Ids of what is placed, of what is there already. */
  readonly chosen: ReadonlySet<string>
  /** How many of each kind are added and placed. */
  readonly add: Readonly<Partial<Record<KindName, number>>>
  readonly symmetry: boolean
  readonly jackOffKnee: boolean
  /** As it was written. */
  readonly note: string
  readonly pickup: string
}

export const NO_WISHES: Omit<Wished, 'chosen'> = {
  add: {},
  symmetry: false,
  jackOffKnee: false,
  note: '',
  pickup: '',
}

/** More of a kind than this nobody puts on one box. */
const MOST_ADDED = 20

const added = ({ add }: Wished): number => Object.values(add).reduce((sum, many) => sum + many, 0)

export const isEmpty = (wished: Wished): boolean => wished.chosen.size === 0 && added(wished) === 0

/** What the search is asked for, or a sentence about what cannot be read. */
export function wishesOf(wished: Wished, a4: number): PlacingWishes | string {
  const { chosen, add, symmetry, jackOffKnee, note, pickup } = wished
  const pitch = note.trim() === '' ? null : readPitch(note, a4)
  if (pitch && !pitch.ok) return pitch.sentence
  const share = pickup.trim() === '' ? null : Number(pickup.replace('%', '').replace(',', '.')) / 100
  if (share !== null && !(share > 0 && share <= 0.5))
    return 'A share of the scale up to 50% is wanted, as in 25.'
  return {
    things: [...chosen],
    symmetry,
    jackOffKnee,
    ...(added(wished) > 0 ? { add } : {}),
    ...(pitch ? { hertz: pitch.hertz } : {}),
    ...(share === null ? {} : { pickupAt: share }),
  }
}

interface Props {
  readonly layout: Layout
  readonly wished: Wished
  readonly onChange: (wished: Wished) => void
}

export function PlaceWishes({ layout, wished, onChange }: Props) {
  const { design } = layout
  const set = (some: Partial<Wished>) => onChange({ ...wished, ...some })
  return (
    <>
      <fieldset className="place-things">
        <legend className="small soft">What is placed; what is locked stays</legend>
        {movableIn(design).map(({ id }) => (
          <label key={id}>
            <input
              type="checkbox"
              checked={wished.chosen.has(id)}
              onChange={() => {
                const chosen = new Set(wished.chosen)
                if (!chosen.delete(id)) chosen.add(id)
                set({ chosen })
              }}
            />{' '}
            {nameOf(id, layout)}
          </label>
        ))}
        {movableIn(design).length === 0 && (
          <p className="small soft">Nothing that is here can be moved; add something below.</p>
        )}
      </fieldset>
      <fieldset className="place-add">
        <legend className="small soft">Add, at the size such a thing usually has</legend>
        {ADDABLE.map((kind) => (
          <label key={kind}>
            {kindOf(kind).title}
            <input
              type="number"
              min={0}
              max={MOST_ADDED}
              value={wished.add[kind] ?? 0}
              onChange={({ target }) => {
                const many = Math.max(0, Math.min(MOST_ADDED, Math.round(Number(target.value)) || 0))
                set({ add: { ...wished.add, [kind]: many } })
              }}
            />
          </label>
        ))}
      </fieldset>
      <label className="place-wish">
        <input
          type="checkbox"
          checked={wished.symmetry}
          onChange={() => set({ symmetry: !wished.symmetry })}
        />{' '}
        Pairs as mirror images
      </label>
      <label className="place-wish">
        <input
          type="checkbox"
          checked={wished.jackOffKnee}
          onChange={() => set({ jackOffKnee: !wished.jackOffKnee })}
        />{' '}
        Jack off the knee
      </label>
      <p className="small soft">
        Off the knee: the tail-end wall, or the third of the treble wall next to the tail. Common practice, no
        source.
      </p>
      <Words
        label="Air near the note"
        value={wished.note}
        onChange={(note) => set({ note })}
        hint="as in G2; openings grow or shrink"
      />
      <Words
        label="Pickup at % of the scale"
        value={wished.pickup}
        onChange={(pickup) => set({ pickup })}
        hint="from the saddle, up to 50"
      />
    </>
  )
}

function Words(props: {
  readonly label: string
  readonly value: string
  readonly onChange: (value: string) => void
  readonly hint: string
}) {
  const own = useId()
  return (
    <div className="place-words">
      <label htmlFor={own}>{props.label}</label>
      <input
        id={own}
        type="text"
        className="field-wide"
        value={props.value}
        placeholder={props.hint}
        onChange={(event) => props.onChange(event.target.value)}
      />
    </div>
  )
}
