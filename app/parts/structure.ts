/** The pieces of the instrument that are not things put on a face, as they are selected and listed. */
import type { Layout } from '../../geometry/index.ts'

export interface Piece {
  readonly id: string
  readonly title: string
  /** The section of the design that holds its fields. */
  readonly section: string
  /** What a drag of it does, where it can be dragged. */
  readonly hint?: string
}

export const PIECES: readonly Piece[] = [
  {
    id: 'box',
    title: 'The box itself',
    section: 'box',
    hint: 'Once selected, drag it to slide it along under the strings.',
  },
  {
    id: 'saddle',
    title: 'Saddle',
    section: 'saddle',
    hint: 'Drag it, and neck and strings slide with it over the box.',
  },
  {
    id: 'tailpiece',
    title: 'Tailpiece',
    section: 'tailpiece',
    hint: 'Drag the row of holes along the tail or the lid.',
  },
  { id: 'neck', title: 'Neck', section: 'neck' },
  { id: 'board', title: 'Fretboard', section: 'board' },
  { id: 'headstock', title: 'Headstock', section: 'headstock' },
  { id: 'nut', title: 'Nut', section: 'nut' },
  { id: 'strings', title: 'Strings', section: 'strings' },
  { id: 'brace', title: 'Brace under the lid', section: 'brace' },
]

export const pieceOf = (id: string | null): Piece | undefined => PIECES.find((one) => one.id === id)

/** Names by which findings speak of a piece, or of a thing by its id. */
export function namesOf(id: string, layout: Layout): readonly string[] {
  return id === 'strings' ? layout.strings.map((string) => `string ${string.number}`) : [id]
}

/** What to select for a finding: the first of the things and pieces it is about. */
export function selectable(about: readonly string[], layout: Layout): string | null {
  for (const name of about) {
    if (layout.placed.some((one) => one.thing.id === name) || pieceOf(name)) return name
    if (name.startsWith('string ')) return 'strings'
  }
  return null
}
