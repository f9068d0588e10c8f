/** The holes of a drill layer in words: the same on paper and in an SVG. */
import type { Contour } from '../../geometry/index.ts'
import { lengthLabel, numberText } from '../numbers.ts'

/**
 * How many holes of each size, the smallest first; in both units, since drills are bought in either.
 * Example: `holesText(layer.contours)` is `4 of 3.2 mm (0.126 in), 2 of 9.5 mm (0.374 in)`.
 */
export function holesText(contours: readonly Contour[]): string {
  const counts = new Map<number, number>()
  for (const contour of contours) {
    if (contour.shape !== 'circle') continue
    const diameter = Math.round(contour.radius * 2000) / 1000
    counts.set(diameter, (counts.get(diameter) ?? 0) + 1)
  }
  return [...counts]
    .sort(([a], [b]) => a - b)
    .map(([diameter, count]) => `${count} of ${bothUnits(diameter, 'A diameter')}`)
    .join(', ')
}

/** A length in millimetres and in inches. Example: `bothUnits(25.4, 'A length')` is `25.4 mm (1 in)`. */
export const bothUnits = (length: number, what: string): string =>
  `${lengthLabel(length, what, 2)} mm (${numberText(length / 25.4, what, 3)} in)`
