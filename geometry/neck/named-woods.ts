/** Woods by name: those of the tables and the builder's own. */
import { PANELS, WOODS, type Wood } from './woods.ts'

/** A wood of the builder's own as a file holds it: density in kg/m³, stiffness and strength in N/mm². */
export interface OwnWood {
  readonly name: string
  readonly density: number
  readonly stiffness: number
  readonly strength: number
}

export interface LidStuff extends Wood {
  /** Plywood and the like: alike both ways. */
  readonly sheet: boolean
}

/** Kilograms per cubic millimetre in one per cubic metre. */
const PER_CUBIC_METRE = 1e-9

const inTable = (table: Readonly<Record<string, Wood>>, name: string): Wood | null =>
  Object.hasOwn(table, name) ? (table[name] ?? null) : null

function ownNamed(name: string, own: readonly OwnWood[]): Wood | null {
  const row = own.find((one) => one.name === name)
  if (!row) return null
  const { density, stiffness, strength } = row
  return {
    title: name,
    density: density * PER_CUBIC_METRE,
    stiffness,
    strength,
    source: 'Stated by the builder',
  }
}

/** A wood for neck, board or brace; `null` for a name that stands nowhere. Example: `woodNamed('cherry', [])`. */
export const woodNamed = (name: string, own: readonly OwnWood[]): Wood | null =>
  inTable(WOODS, name) ?? ownNamed(name, own)

/** What a lid can be of: a sheet, or any wood. `null` for a name that stands nowhere. */
export function lidStuffNamed(name: string, own: readonly OwnWood[]): LidStuff | null {
  const panel = inTable(PANELS, name)
  if (panel) return { ...panel, sheet: true }
  const wood = woodNamed(name, own)
  return wood && { ...wood, sheet: false }
}

/** Names to choose from, the table's first. */
export const woodNames = (own: readonly OwnWood[]): string[] => [
  ...Object.keys(WOODS),
  ...own.map((one) => one.name),
]

/** The same for a lid, sheets first. */
export const lidStuffNames = (own: readonly OwnWood[]): string[] => [
  ...Object.keys(PANELS),
  ...woodNames(own),
]
