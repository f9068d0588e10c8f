/** Up to four designs held beside the one on the bench: looked at, never part of it. */
import { create } from 'zustand'
import type { Design } from '../../geometry/index.ts'

/** More lines than these nobody tells apart. */
export const MOST_VARIANTS = 4

export interface Variant {
  /** 1 to 4: the number that stands at its lines, and the sort of line they are. */
  readonly number: number
  readonly name: string
  readonly design: Design
}

export const useVariants = create<{ readonly held: readonly Variant[] }>()(() => ({ held: [] }))

/** Holds a design under a name; the number it got, `null` where four are held already or this one is. */
export function holdVariant(name: string, design: Design): number | null {
  const { held } = useVariants.getState()
  if (held.some((one) => one.design === design)) return null
  const free = [1, 2, 3, 4].find((number) => !held.some((one) => one.number === number))
  if (free === undefined) return null
  const all = [...held, { number: free, name, design }].sort((a, b) => a.number - b.number)
  useVariants.setState({ held: all })
  return free
}

export const letGo = (number: number): void =>
  useVariants.setState(({ held }) => ({ held: held.filter((one) => one.number !== number) }))

export const letAllGo = (): void => useVariants.setState({ held: [] })
