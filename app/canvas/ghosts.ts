/** Arrangements that are offered: outlines with a number beside what stands there, until one is kept or all are dropped. */
import type { Face, Layout } from '../../geometry/index.ts'
import { useBench } from '../state/index.ts'
import { type Frame, toScreen } from './frame.ts'
import { type Looks, THIN } from './looks.ts'
import { type Pen, shape, write } from './paint.ts'

export interface Ghost {
  readonly layout: Layout
  /** As the list beside the drawing numbers it. */
  readonly number: number
}

const NONE: readonly Ghost[] = []
let shown: readonly Ghost[] = NONE
let about: ReadonlySet<string> = new Set()

export const ghosts = {
  now: (): readonly Ghost[] => shown,
  /** Shows these, of the things with those ids; nothing to take them away. */
  show(list: readonly Ghost[], ids: readonly string[] = []): void {
    if (list.length === 0 && shown.length === 0) return
    shown = list
    about = new Set(ids)
    // The drawings listen to the bench and look again.
    useBench.setState({})
  },
}

const DASH: number[] = [2, 3]

export function paintGhosts(
  pen: Pen,
  looks: Looks,
  faces: readonly Face[],
  frameOf: (face: Face) => Frame | null,
): void {
  for (const { layout, number } of shown)
    for (const { thing, face, footprint, at } of layout.placed) {
      const frame = about.has(thing.id) && faces.includes(face) ? frameOf(face) : null
      if (!frame) continue
      shape(pen, frame, footprint, { stroke: looks.accent, width: THIN * 1.5, dash: DASH })
      write(pen, looks, String(number), toScreen(frame, at), {
        colour: looks.accent,
        size: 11,
        align: 'center',
        base: 'middle',
        behind: looks.sheet,
      })
    }
}
