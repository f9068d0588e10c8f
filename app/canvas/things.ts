/** Things put on a face, drawn in that face's frame: what is open, what stands around it, its centre. */

import type { Placed } from '../../geometry/index.ts'
import { paintCutOut } from './cut-out.ts'
import { drawnOperations } from './drawn.ts'
import { type Frame, toScreen } from './frame.ts'
import { HIDDEN, type Looks, THICK, THIN } from './looks.ts'
import { addTo, cross, finish, type Pen, shape } from './paint.ts'

/** `moves` is true of what is in hand, which is painted in every frame. */
export function paintThing(pen: Pen, looks: Looks, frame: Frame, placed: Placed, moves = false): void {
  const { recesses, under, cover } = drawnOperations(placed)
  for (const contour of recesses)
    shape(pen, frame, contour, { fill: looks.accentSoft, stroke: looks.accent, width: THIN })
  if (placed.openings.length > MANY) (moves ? paintCutOut : many)(pen, looks, frame, placed, many)
  else
    for (const contour of placed.openings)
      shape(pen, frame, contour, { fill: looks.hole, stroke: looks.accent, width: THICK })
  for (const contour of under) shape(pen, frame, contour, { stroke: looks.accent, width: THIN, dash: HIDDEN })
  if (cover) shape(pen, frame, cover, { stroke: looks.ink, width: THIN })
  else if (placed.openings.length + recesses.length + under.length === 0)
    shape(pen, frame, placed.footprint, { stroke: looks.accent, width: THICK })
  const small = Math.min(placed.bounds.maxX - placed.bounds.minX, placed.bounds.maxY - placed.bounds.minY)
  const half = Math.min(7, (small / 2) * frame.scale * 0.5)
  if (half > 1.5) cross(pen, toScreen(frame, placed.at), half, { stroke: looks.accent, width: THIN })
}

/** More openings than this are one path: a stroke for each would take longer than a frame. */
const MANY = 24

/** Thousands of holes in one stroke; where they are smaller than a pixel, only the field they fill. */
function many(pen: Pen, looks: Looks, frame: Frame, { openings, footprint }: Placed): void {
  shape(pen, frame, footprint, { stroke: looks.accent, width: THIN, dash: HIDDEN })
  pen.beginPath()
  for (const contour of openings) addTo(pen, frame, contour)
  finish(pen, { fill: looks.hole, stroke: looks.accent, width: THIN })
}

/** The line round what is selected, a little outside it. */
export function paintSelected(pen: Pen, looks: Looks, frame: Frame, placed: Placed): void {
  shape(pen, frame, placed.footprint, { stroke: looks.accent, width: 11 })
  shape(pen, frame, placed.footprint, { stroke: looks.sheet, width: 6 })
}
