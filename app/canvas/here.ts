/** The menu that opens where the pointer is: by a right click, a finger that rests, or the menu key. */
import { create } from 'zustand'

export interface Here {
  /** Pixels of the window. */
  readonly x: number
  readonly y: number
  /** What had the keyboard, and gets it back. */
  readonly from: HTMLElement | null
}

export const useHere = create<{ readonly here: Here | null }>()(() => ({ here: null }))

export const openHere = (here: Here): void => useHere.setState({ here })
export const closeHere = (): void => useHere.setState({ here: null })
