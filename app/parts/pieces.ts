/** The two lists of a surveyed box that are drawn on its plan: what stands inside, and artwork to keep. */
import {
  type Change,
  change,
  type Design,
  fieldsOfEntry,
  type Layout,
  type Path,
  stepOf,
} from '../../geometry/index.ts'

export type ListName = 'inside' | 'artwork'
export type Piece = Design['box']['inside'][number]
export type Art = Design['artwork'][number]

export const LISTS: Readonly<Record<ListName, { readonly path: Path; readonly catalogue: string }>> = {
  inside: { path: ['box', 'inside'], catalogue: 'box.inside' },
  artwork: { path: ['artwork'], catalogue: 'artwork' },
}

export const entriesOf = (design: Design, list: ListName): readonly (Piece | Art)[] =>
  list === 'inside' ? design.box.inside : design.artwork

/** `corner block`, or the name the builder gave it. */
export const titleOf = (entry: Piece | Art): string =>
  entry.name || ('sort' in entry ? entry.sort : `artwork, ${entry.shape}`)

/** An id that nothing has yet. */
function freeId(design: Design, stem: string): string {
  const taken = new Set([...design.things, ...design.box.inside, ...design.artwork].map((one) => one.id))
  let count = 1
  while (taken.has(`${stem}-${count}`)) count += 1
  return `${stem}-${count}`
}

/** A new entry: the usual values of the schema, and what is known of it. */
export function started(design: Design, list: ListName, known: object): Record<string, unknown> {
  const usual = Object.fromEntries(
    fieldsOfEntry(LISTS[list].catalogue).map(({ name, standard }) => [name, standard]),
  )
  return { ...usual, id: freeId(design, list === 'inside' ? 'block' : 'artwork'), ...known }
}

/** Entries put at the end of a list. */
export const added = (design: Design, list: ListName, ...entries: readonly object[]): Change =>
  change(design, [LISTS[list].path, [...entriesOf(design, list), ...entries]])

/** One entry with other fields; the rest of the list stays the same objects. */
export const edited = (design: Design, list: ListName, id: string, fields: object): Change =>
  change(design, [
    LISTS[list].path,
    entriesOf(design, list).map((one) => (one.id === id ? { ...one, ...fields } : one)),
  ])

export const removed = (design: Design, list: ListName, id: string): Change =>
  change(design, [LISTS[list].path, entriesOf(design, list).filter((one) => one.id !== id)])

/** A block in each corner, from the base up to the lid. */
export function cornerBlocks(layout: Layout): Record<string, unknown>[] {
  const { design, box } = layout
  const size = 20
  const tall = Math.max(0.5, box.lidBottom - box.baseTop)
  const along = [box.insideX0 - box.x0 + size / 2, box.insideX1 - box.x0 - size / 2]
  const across = [box.insideBass + size / 2, box.insideTreble - size / 2]
  const blocks: Record<string, unknown>[] = []
  for (const x of along)
    for (const y of across) {
      const made = { ...design, box: { ...design.box, inside: [...design.box.inside, ...blocks] } } as Design
      blocks.push(
        started(made, 'inside', { along: rounded(x), across: rounded(y), long: size, wide: size, tall }),
      )
    }
  return blocks
}

/** To the hundredth of a millimetre: what sums leave behind it is no measure. */
const rounded = (mm: number): number => Math.round(mm * 100) / 100

/** What a dragged place comes to on the builder's rule. */
export function onStep(mm: number, units: Design['units']): number {
  const step = stepOf(units)
  return rounded(Math.round(mm / step) * step)
}
