/** A list of pieces or pictures as a form: each can be opened, typed into and taken away; new ones are added or drawn. */
import { useState } from 'react'
import {
  change,
  type Design,
  type Field,
  fieldsOfEntry,
  formatLength,
  solve,
  unbroken,
} from '../../geometry/index.ts'
import { commit } from '../state/index.ts'
import { useDesign } from './calm.ts'
import { FieldInput, isWantedBeside } from './Fields.tsx'
import {
  type Art,
  added,
  cornerBlocks,
  edited,
  entriesOf,
  LISTS,
  type ListName,
  type Piece,
  removed,
  started,
  titleOf,
} from './pieces.ts'

/** What is being drawn on the plan with the mouse. */
export type Drawing = 'piece' | 'picture' | 'outline'

export interface PieceListProps {
  readonly list: ListName
  readonly chosen: string | null
  readonly choose: (id: string | null) => void
  readonly drawing: Drawing | null
  readonly draw: (what: Drawing | null) => void
}

export function PieceList({ list, chosen, choose, drawing, draw }: PieceListProps) {
  const design = useDesign()
  const fields = fieldsOfEntry(LISTS[list].catalogue)
  const entries = entriesOf(design, list)
  const add = (known: object) => {
    const entry = started(design, list, known)
    if (commit(list === 'inside' ? 'Add a piece' : 'Add artwork', added(design, list, entry)).ok)
      choose(String(entry.id))
  }
  return (
    <div className="piece-list">
      {entries.length === 0 && <p className="soft small">{NONE[list]}</p>}
      {entries.map((entry) => (
        <OnePiece
          key={entry.id}
          list={list}
          entry={entry}
          design={design}
          fields={fields}
          open={chosen === entry.id}
          choose={choose}
        />
      ))}
      <div className="piece-buttons">
        <button type="button" onClick={() => add(USUAL[list](design))}>
          {list === 'inside' ? 'Add a piece' : 'Add artwork'}
        </button>
        {list === 'inside' && (
          <button
            type="button"
            onClick={() => commit('Four corner blocks', added(design, list, ...cornerBlocks(solve(design))))}
          >
            Four corner blocks
          </button>
        )}
        {WAYS[list].map(([what, words]) => (
          <button
            key={what}
            type="button"
            aria-pressed={drawing === what}
            onClick={() => draw(drawing === what ? null : what)}
          >
            {words}
          </button>
        ))}
      </div>
      {drawing !== null && WAYS[list].some(([what]) => what === drawing) && (
        <p className="small" role="status">
          {HOW[drawing]}
        </p>
      )}
    </div>
  )
}

const NONE: Readonly<Record<ListName, string>> = {
  inside:
    'Corner blocks, liners, battens, the inside of hinges and clasps: whatever a hole, the neck or the hardware must not meet.',
  artwork: 'A picture, a label or a burnt mark that is to stay whole: nothing is cut in it, nor too near it.',
}

const WAYS: Readonly<Record<ListName, readonly (readonly [Drawing, string])[]>> = {
  inside: [['piece', 'Draw on the plan']],
  artwork: [
    ['picture', 'Draw on the lid'],
    ['outline', 'Draw its corners'],
  ],
}

const HOW: Readonly<Record<Drawing, string>> = {
  piece: 'Drag from one corner of the piece to the opposite one.',
  picture: 'Drag from one corner of the picture to the opposite one.',
  outline: 'Press at each corner in turn; press the first again to close it. Escape gives up.',
}

const USUAL: Readonly<Record<ListName, (design: Design) => object>> = {
  inside: ({ box }) => ({
    along: Math.round(box.length / 2),
    tall: Math.max(0.5, box.depth - box.lid.thickness - box.base.thickness),
  }),
  artwork: ({ box }) => ({ along: Math.round(box.length / 2) }),
}

interface OnePieceProps {
  readonly list: ListName
  readonly entry: Piece | Art
  readonly design: Design
  readonly fields: readonly Field[]
  readonly open: boolean
  readonly choose: (id: string | null) => void
}

function OnePiece({ list, entry, design, fields, open, choose }: OnePieceProps) {
  const [fault, setFault] = useState<string | null>(null)
  const say = (mm: number) => unbroken(formatLength(mm, design.units))
  const take = (field: Field, value: unknown) => {
    const index = entriesOf(design, list).findIndex((one) => one.id === entry.id)
    const outcome = commit(
      `${titleOf(entry)}: ${field.label.toLowerCase()}`,
      change(design, [[...LISTS[list].path, index, field.name], value]),
    )
    if (outcome.ok && field.name === 'id') choose(String(value))
    return outcome
  }
  const drawn = 'outline' in entry && entry.shape === 'drawn'
  const remove = () => {
    const outcome = commit(`Remove ${titleOf(entry)}`, removed(design, list, entry.id))
    setFault(outcome.ok ? null : outcome.sentence)
  }
  return (
    <div className="piece">
      <button
        type="button"
        className="piece-head"
        aria-expanded={open}
        onClick={() => choose(open ? null : entry.id)}
      >
        <span>{titleOf(entry)}</span>{' '}
        <span className="soft small">
          {entry.id}
          {drawn ? '' : `, ${say(entry.long)} × ${say(entry.wide)}`}
          {'tall' in entry ? ` × ${say(entry.tall)}` : `, ${entry.face.replaceAll('-', ' ')}`}
        </span>
      </button>
      {open && (
        <div className="field-grid">
          {fields
            .filter((field) => isWantedBeside(entry, field))
            .map((field) => (
              <FieldInput
                key={field.name}
                field={shapesOf(field, entry)}
                value={entry[field.name as keyof typeof entry]}
                take={(value) => take(field, value)}
              />
            ))}
          {drawn && <p className="field-span soft small">Its outline has {entry.outline.length} corners.</p>}
          <div className="field-span">
            <button type="button" className="link" onClick={remove}>
              Remove {titleOf(entry)}
            </button>
            {fault && (
              <p className="field-fault" role="alert">
                {fault}
              </p>
            )}
          </div>
        </div>
      )}
    </div>
  )
}

/** An outline of one's own can only be chosen where one is drawn. */
function shapesOf(field: Field, entry: Piece | Art): Field {
  if (field.name !== 'shape' || !('outline' in entry) || entry.outline.length > 2) return field
  return { ...field, options: (field.options ?? []).filter((one) => one !== 'drawn') }
}

/** For a drag: the same entry in another place. */
export const movedTo = (design: Design, list: ListName, id: string, along: number, across: number) =>
  edited(design, list, id, { along, across })
