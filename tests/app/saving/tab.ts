/** A tab of the page without the page: a keeper, a bench of one design, and everything it said. */
import { type Keeper, keeperOf } from '../../../app/saving/keeper.ts'
import { fileText, type Keeping } from '../../../app/state/index.ts'
import { checkDesign, type Design } from '../../../geometry/index.ts'
import type { Desk, MemoryStore } from './memory-store.ts'

export function designOf(fields: object = {}): Design {
  const reading = checkDesign({ format: 'lidwright', version: 1, ...fields })
  if (!reading.ok) throw new Error(reading.faults[0]?.sentence)
  return reading.design
}

export const titled = (title: string): Design => designOf({ title })

export function textOf(design: Design): string {
  const written = fileText(design)
  if (!written.ok) throw new Error(written.sentence)
  return written.text
}

export interface Tab extends Keeper {
  readonly name: string
  readonly said: Keeping[]
  /** The title of the design on the bench, and whether the page is fresh. */
  readonly bench: { design: Design; fresh: boolean }
  /** What was said last. */
  readonly now: () => Keeping
  /** The builder changes the design. */
  edit(title: string): void
  /** The builder opens another design. */
  begin(title: string): void
}

let names = 0

/** Opens a tab; `load` has to be called. `remembered` is the record it had before it was loaded again. */
export function openTab(store: MemoryStore, desk: Desk, { remembered = null as string | null } = {}): Tab {
  const name = `tab-${++names}`
  const said: Keeping[] = []
  const bench = { design: designOf(), fresh: false }
  let record = remembered
  let made = 0
  const keeper = keeperOf({
    store,
    claims: desk.tab(name),
    memory: {
      get: () => record,
      set: (value) => {
        record = value
      },
    },
    bench: {
      committed: () => bench.design,
      adopt: (design, { fresh = false } = {}) => Object.assign(bench, { design, fresh }),
      say: (keeping) => said.push(keeping),
    },
    now: () => Date.now(),
    newName: () => `${name}-${++made}`,
  })
  const change = (title: string, document: 'the same' | 'another') => {
    bench.design = { ...bench.design, title }
    keeper.changed(bench.design, document)
  }
  return {
    ...keeper,
    name,
    said,
    bench,
    now: () => said.at(-1) ?? { state: 'keeping', at: null, words: null },
    edit: (title) => change(title, 'the same'),
    begin: (title) => change(title, 'another'),
  }
}

/** The titles in a record, oldest generation first. */
export const titlesIn = (store: MemoryStore, record: string): string[] =>
  [...store.generations.values()]
    .filter((one) => one.record === record)
    .sort((a, b) => a.number - b.number)
    .map((one) => JSON.parse(one.text).title)
