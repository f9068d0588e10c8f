/**
 * Wood screws by gauge, and the pilot holes they want.
 *
 * Shank diameter is 0.060 + 0.013 n inch for gauge n (the inch gauge of wood screws, ASME B18.6.1; from a published
 * screw table). Pilots are the fractions of the common workshop chart: the bit nearest the middle of what published
 * charts give, which differ by up to 3/64 inch for one gauge (common practice, from memory). Root diameter averages
 * two thirds of the shank (Wood Handbook, FPL-GTR-190, ch. 8). A screw's hold in side grain is fair from six shank
 * diameters of thread on (National Design Specification for Wood Construction, from memory).
 */
const INCH = 25.4

export interface WoodScrew {
  readonly gauge: number
  readonly shank: number
  readonly softwood: number
  readonly hardwood: number
}

const row = (gauge: number, softwood64ths: number, hardwood64ths: number): WoodScrew => ({
  gauge,
  shank: (0.06 + 0.013 * gauge) * INCH,
  softwood: (softwood64ths / 64) * INCH,
  hardwood: (hardwood64ths / 64) * INCH,
})

export const WOOD_SCREWS: readonly WoodScrew[] = [
  row(2, 4, 4),
  row(3, 4, 4),
  row(4, 4, 5),
  row(5, 5, 5),
  row(6, 5, 6),
  row(7, 5, 6),
  row(8, 6, 7),
  row(9, 6, 7),
  row(10, 7, 8),
]

/** Specific gravity from which a wood is drilled as hardwood (where the National Design Specification begins to ask for lead holes). */
export const HARD_FROM = 0.5

/** The largest screw whose shank goes through a clearance hole; the smallest of the table for a lesser one. */
export function screwFor(clearance: number): WoodScrew {
  let found = WOOD_SCREWS[0] as WoodScrew
  for (const one of WOOD_SCREWS) if (one.shank <= clearance + 1e-9) found = one
  return found
}

/**
 * Pilot hole for a screw through this clearance hole, into wood of this specific gravity.
 * Example: `pilotFor(3.6, 0.63)` is 2.38 mm, 3/32 in, for a No. 6.
 */
export const pilotFor = (clearance: number, gravity: number): number => {
  const screw = screwFor(clearance)
  return gravity >= HARD_FROM ? screw.hardwood : screw.softwood
}
