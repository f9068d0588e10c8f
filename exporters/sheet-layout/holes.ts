/** The holes of a drill layer in words: the same on paper and in an SVG. */
import type { Contour } from '../../geometry/index.ts'
import { bothUnits } from '../numbers.ts'

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
