/** What a press on the drawing means just now: take hold, choose with a frame, or measure. Kept out of the design. */
import { create } from 'zustand'

export type ModeName = 'hold' | 'frame' | 'measure'

export const useMode = create<{ readonly mode: ModeName }>()(() => ({ mode: 'hold' }))

export const modeNow = (): ModeName => useMode.getState().mode

/** Turns a mode on, or back to taking hold where it was on already. */
export const toggleMode = (mode: ModeName): void =>
  useMode.setState({ mode: modeNow() === mode ? 'hold' : mode })

/** Back to taking hold; false where that was the mode already. */
export function endMode(): boolean {
  if (modeNow() === 'hold') return false
  useMode.setState({ mode: 'hold' })
  return true
}
