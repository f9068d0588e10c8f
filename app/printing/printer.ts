/**
 * How this builder prints: paper, margins and the error of this printer. Kept in this browser and never in a design,
 * because the same design is printed elsewhere by another machine.
 */
import { useMemo, useSyncExternalStore } from 'react'
import {
  judged,
  PAPER_NAMES,
  type PaperName,
  type PrintSetup,
  paperFor,
  STANDARD_SETUP,
  type Way,
} from '../../exporters/index.ts'
import { useDesign } from '../parts/calm.ts'

const KEY = 'lidwright-printer'
const WAYS: readonly (Way | 'fewest')[] = ['fewest', 'upright', 'lying']

/** Until a paper is chosen it follows the unit of the design. */
export type KeptSetup = Omit<PrintSetup, 'paper'> & { readonly paper: PaperName | null }

let setup: KeptSetup | null = null
const listeners = new Set<() => void>()

const record = (value: unknown): Record<string, unknown> =>
  typeof value === 'object' && value !== null ? (value as Record<string, unknown>) : {}

const length = (value: unknown, most: number, otherwise: number): number =>
  typeof value === 'number' && value >= 0 && value <= most ? value : otherwise

/** What was kept, field by field; what is missing or makes no sense is as usual. */
export function setupFrom(text: string | null): KeptSetup {
  let kept: Record<string, unknown> = {}
  try {
    kept = record(JSON.parse(text ?? '{}'))
  } catch {
    // Not ours any more: begin as usual.
  }
  const { x, y } = record(kept['correction'])
  const correction = judged({ x: Number(x), y: Number(y) })
  return {
    paper: PAPER_NAMES.find((name) => name === kept['paper']) ?? null,
    way: WAYS.find((way) => way === kept['way']) ?? STANDARD_SETUP.way,
    margin: length(kept['margin'], 100, STANDARD_SETUP.margin),
    overlap: length(kept['overlap'], 40, STANDARD_SETUP.overlap),
    correction: correction.ok ? correction.correction : STANDARD_SETUP.correction,
  }
}

function stored(): string | null {
  try {
    return localStorage.getItem(KEY)
  } catch {
    return null
  }
}

function current(): KeptSetup {
  setup ??= setupFrom(stored())
  return setup
}

/** Changes how is printed, from now on and in this browser. */
export function setPrinter(changes: Partial<PrintSetup>): void {
  setup = { ...current(), ...changes }
  try {
    localStorage.setItem(KEY, JSON.stringify(setup))
  } catch {
    // A browser that keeps nothing still prints; the builder types it again next time.
  }
  for (const listener of listeners) listener()
}

function subscribe(listener: () => void): () => void {
  listeners.add(listener)
  return () => listeners.delete(listener)
}

export function usePrinter(): PrintSetup {
  const kept = useSyncExternalStore(subscribe, current)
  const { units } = useDesign()
  return useMemo(() => ({ ...kept, paper: kept.paper ?? paperFor({ units }) }), [kept, units])
}
