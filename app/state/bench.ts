/** What every part of the page looks at: the design on the bench, what is selected, and what can be undone. */
import { create } from 'zustand'
import { checkDesign, type Design } from '../../geometry/index.ts'
import { freeze } from './freeze.ts'

/** The places, in the order of the work. */
const PLACE_NAMES = ['survey', 'choose', 'lay-out', 'prove', 'transfer', 'record'] as const

export type PlaceName = (typeof PLACE_NAMES)[number]

/** How the work is kept in this browser. */
export interface Keeping {
  /**
   * `kept`: all of it. `keeping`: a change waits or is being written. `failed`: it could not be written, and is tried
   * again. `not-ours`: another tab keeps this design; this one writes nothing before it is edited.
   */
  readonly state: 'kept' | 'keeping' | 'failed' | 'not-ours'
  /** When it was last kept, `hh:mm` by the builder's clock. */
  readonly at: string | null
  /** What the builder has to know, whole sentences. */
  readonly words: string | null
}

export interface Bench {
  /** The committed design or, during a gesture, the previewed one. Never altered in place. */
  readonly design: Design
  /** Id of a thing, or a name of structure such as `saddle`. */
  readonly selection: string | null
  /** Other things that are selected with it: what is done to several is done to these too. */
  readonly also: readonly string[]
  readonly place: PlaceName
  /** Key of the finding whose place is lit on the drawing. */
  readonly litFinding: string | null
  /** How many designs have been put in place of another: what was typed and not taken over belongs to the one before. */
  readonly opened: number
  readonly canUndo: boolean
  readonly canRedo: boolean
  readonly undoLabel: string | null
  readonly redoLabel: string | null
  readonly keeping: Keeping
  /** A first visit with nothing kept: the page shows the form for a new box. */
  readonly fresh: boolean
}

/** A design with every default. */
export function standardDesign(): Design {
  const reading = checkDesign({ format: 'lidwright', version: 1 })
  if (!reading.ok) throw new Error(`the design of defaults is not valid: ${reading.faults[0]?.sentence}`)
  return freeze(reading.design)
}

const NONE: readonly string[] = []

/** Where this tab keeps the place that is open: loading the page again comes back to it. */
const PLACE_KEY = 'lidwright-place'

function placeBefore(): PlaceName {
  try {
    const kept = sessionStorage.getItem(PLACE_KEY)
    return PLACE_NAMES.find((place) => place === kept) ?? 'survey'
  } catch {
    return 'survey'
  }
}

/** Hook for components, store for everything else. Example: `useBench((bench) => bench.design.box)`. */
export const useBench = create<Bench>()(() => ({
  design: standardDesign(),
  selection: null,
  also: NONE,
  place: placeBefore(),
  litFinding: null,
  opened: 0,
  canUndo: false,
  canRedo: false,
  undoLabel: null,
  redoLabel: null,
  keeping: { state: 'keeping', at: null, words: null },
  fresh: false,
}))

/** Selects a thing or a piece of structure, or nothing. No change to the design, so no entry of history. */
export const select = (id: string | null): void => useBench.setState({ selection: id, also: NONE })

/** Selects several things; the last one leads: others are aligned with it. */
export const selectAll = (ids: readonly string[]): void =>
  useBench.setState({ selection: ids.at(-1) ?? null, also: ids.slice(0, -1) })

/** Adds a thing to what is selected, or takes it out again. Pieces of the instrument are selected alone. */
export function toggleSelected(id: string): void {
  const isThing = useBench.getState().design.things.some((thing) => thing.id === id)
  const now = selectedThings()
  if (!isThing) select(id)
  else selectAll(now.includes(id) ? now.filter((one) => one !== id) : [...now, id])
}

/** Ids of the things that are selected, the leading one last. */
export function selectedThings(
  bench: Pick<Bench, 'selection' | 'also' | 'design'> = useBench.getState(),
): readonly string[] {
  const { selection, also, design } = bench
  if (selection === null && also.length === 0) return NONE
  const ids = selection === null ? also : [...also, selection]
  return ids.filter((id) => design.things.some((thing) => thing.id === id))
}

/** The things, and all that are grouped with one of them by hand. */
export function withGroups(design: Design, ids: readonly string[]): string[] {
  const wanted = new Set(ids)
  const groups = new Set<string>()
  for (const thing of design.things) if (thing.group !== '' && wanted.has(thing.id)) groups.add(thing.group)
  if (groups.size === 0) return [...ids]
  const more = design.things.filter((thing) => groups.has(thing.group) && !wanted.has(thing.id))
  return [...more.map((thing) => thing.id), ...ids]
}

export function goTo(place: PlaceName): void {
  useBench.setState({ place })
  try {
    sessionStorage.setItem(PLACE_KEY, place)
  } catch {
    // A browser that keeps nothing opens the first place again.
  }
}

/** Lights a finding on the drawing by its key, or puts the light out. */
export const light = (key: string | null): void => useBench.setState({ litFinding: key })

/** Tells the builder how the work is kept; the saving side speaks here. */
export const sayKeeping = (keeping: Keeping): void => useBench.setState({ keeping })

/** The same selection, unless it was a thing that is there no more. */
export function stillThere(selection: string | null, before: Design, after: Design): string | null {
  const isThing = (design: Design) => design.things.some((thing) => thing.id === selection)
  return selection !== null && isThing(before) && !isThing(after) ? null : selection
}
