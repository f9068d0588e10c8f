/** A strip of wood glued under the lid, and which one suffices. Millimetres, newtons, N/mm². */
import { plank, type Stuff, sectionOf } from '../neck/sections.ts'
import { positive } from '../quantity/demand.ts'

export interface Strip {
  readonly width: number
  readonly height: number
  readonly stuff: Stuff
}

/** How far beside a strip the lid works with it, in thicknesses of the lid each side. Common practice, from memory. */
const FLANGE = 6

/**
 * What a glued strip adds to the lid's own stiffness, N·mm²: `E I` of lid and strip as one section, less that of the
 * lid alone (transformed section, see `sections.ts`). `lid.stiffness` is the lid's E along the strip.
 * Example: spruce 8 × 10 mm under 3 mm of plywood adds 2.60e7, 3.6 times what it has by itself.
 */
export function addedBend(
  strip: Strip,
  lid: { readonly thickness: number; readonly stiffness: number },
): number {
  const width = positive(strip.width, 'the width of a brace') + 2 * FLANGE * lid.thickness
  const stuff = { stiffness: lid.stiffness, strength: 1 }
  const flange = plank(width, -positive(lid.thickness, 'the thickness of a lid'), 0, stuff)
  const web = plank(
    strip.width,
    -lid.thickness - positive(strip.height, 'the height of a brace'),
    -lid.thickness,
    strip.stuff,
  )
  const whole = sectionOf([flange, web])
  const alone = sectionOf([flange])
  if (!whole || !alone)
    throw new RangeError(`a lid of ${lid.thickness} mm and a brace of ${strip.height} mm make no section`)
  return whole.bend - alone.bend
}

/** Brace stock for lids, thinnest first: 5 to 8 mm wide, 6 to 12 mm tall. Common practice, from memory. */
export const USUAL_STRIPS: readonly (readonly [width: number, height: number])[] = [
  [5, 6],
  [6, 8],
  [8, 8],
  [8, 10],
  [8, 12],
]
