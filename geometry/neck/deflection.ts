/**
 * From curvature to shape: slope and rise of a beam that leaves its root at some slope. Millimetres, radians, 1/mm.
 *
 * `w'' = M / EI`; each interval has its curvature at both ends and in the middle and is integrated as the parabola
 * through them, which is exact for a straight or parabolic moment on a uniform section (Simpson's rule; double
 * integration of any mechanics text).
 */

/** A beam cut into intervals, from the root outwards. Three stations to an interval: start, middle, end. */
export interface Beam {
  /** Length of each interval. */
  readonly lengths: number[]
}

/**
 * Fills `rise` (three to an interval, as `curvature`) with the height over the root's tangent turned by `slope`, and
 * gives the slope at the end. Throws where the lists do not fit together.
 * Example: one interval of 400 mm with curvature 7.143e-6 all along rises 0.5714 mm and ends at a slope of 0.002857.
 */
export function bendFromRoot(beam: Beam, curvature: number[], slope: number, rise: number[]): number {
  const { lengths } = beam
  if (curvature.length !== 3 * lengths.length || rise.length !== curvature.length) {
    throw new RangeError(
      `${lengths.length} intervals need ${3 * lengths.length} stations, not ${curvature.length}`,
    )
  }
  let turned = slope
  let height = 0
  for (let index = 0; index < lengths.length; index++) {
    const length = lengths[index]!
    const start = curvature[3 * index]!
    const middle = curvature[3 * index + 1]!
    const end = curvature[3 * index + 2]!
    // Parabola start + b t + c t², t from 0 to 1.
    const b = 4 * middle - 3 * start - end
    const c = 2 * (start - 2 * middle + end)
    const square = length * length
    rise[3 * index] = height
    rise[3 * index + 1] = height + (turned * length) / 2 + square * (start / 8 + b / 48 + c / 192)
    height += turned * length + square * (start / 2 + b / 6 + c / 12)
    rise[3 * index + 2] = height
    turned += length * (start + b / 2 + c / 3)
  }
  return turned
}
