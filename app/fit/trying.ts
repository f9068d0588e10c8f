/** A row tried on the drawing: looked at, and either kept as one step or dropped without a trace. */
import { create } from 'zustand'
import { changeTo, type Row } from '../../geometry/index.ts'
import { announce } from '../parts/Announcer.tsx'
import { beginGesture, committed, type Gesture, useBench } from '../state/index.ts'
import { sayRow } from './say-row.ts'

export const useTrying = create<{ readonly row: Row | null }>()(() => ({ row: null }))

let gesture: Gesture | null = null

/** Shows a row in place of the design; the same row again drops it. */
export function tryRow(row: Row): void {
  const before = useTrying.getState().row
  dropRow()
  if (before === row) return
  gesture = beginGesture(`Take ${sayRow(row)}`, 'cancel')
  useTrying.setState({ row })
  gesture.preview(changeTo(gesture.start, row.design))
  announce(`Tried: ${sayRow(row)}. Escape drops it.`)
}

/** Back to the design as it was. */
export function dropRow(): void {
  gesture?.cancel()
  gesture = null
  if (useTrying.getState().row) useTrying.setState({ row: null })
}

/** What is tried becomes the design, as one step that can be undone. */
export function keepRow(): void {
  const { row } = useTrying.getState()
  if (!row || !gesture) return
  gesture.finish()
  gesture = null
  useTrying.setState({ row: null })
  announce(`Kept: ${sayRow(row)}. Undo brings back what was there.`)
}

/** Whatever else is done to the design has dropped what was tried. */
useBench.subscribe(() => {
  if (!gesture || committed() !== useBench.getState().design) return
  gesture.cancel()
  gesture = null
  useTrying.setState({ row: null })
})
