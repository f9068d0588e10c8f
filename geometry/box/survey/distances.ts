/**
 * The six distances between the four corners of a box, and the corners themselves.
 * Corners run counter-clockwise as seen from the front: neck-end bass, tail-end bass, tail-end treble, neck-end treble.
 */
export const CORNERS = ['neck-end bass', 'tail-end bass', 'tail-end treble', 'neck-end treble'] as const
export type Corner = (typeof CORNERS)[number]

export const DISTANCES = [
  'bass',
  'treble',
  'neckEnd',
  'tailEnd',
  'diagonalFromBass',
  'diagonalFromTreble',
] as const
export type Distance = (typeof DISTANCES)[number]

/** Which two corners each distance joins, by their place in `CORNERS`. */
export const ENDS: Readonly<Record<Distance, readonly [number, number]>> = {
  bass: [0, 1],
  treble: [3, 2],
  neckEnd: [0, 3],
  tailEnd: [1, 2],
  diagonalFromBass: [0, 2],
  diagonalFromTreble: [3, 1],
}

/** What stands in a sentence. */
export const DISTANCE_NAMES: Readonly<Record<Distance, string>> = {
  bass: 'the bass side',
  treble: 'the treble side',
  neckEnd: 'the neck end',
  tailEnd: 'the tail end',
  diagonalFromBass: 'the diagonal from neck-end bass',
  diagonalFromTreble: 'the diagonal from neck-end treble',
}

export const HEIGHTS = ['heightNeckBass', 'heightTailBass', 'heightTailTreble', 'heightNeckTreble'] as const
/** Wall heights in the order of the corners. */
export type Height = (typeof HEIGHTS)[number]

/** The side that lies over against it in a rectangle; diagonals have each other. */
export const OPPOSITE: Readonly<Record<Distance, Distance>> = {
  bass: 'treble',
  treble: 'bass',
  neckEnd: 'tailEnd',
  tailEnd: 'neckEnd',
  diagonalFromBass: 'diagonalFromTreble',
  diagonalFromTreble: 'diagonalFromBass',
}

/** The four triangles that two sides and a diagonal make. */
export const TRIANGLES: readonly (readonly [Distance, Distance, Distance])[] = [
  ['bass', 'tailEnd', 'diagonalFromBass'],
  ['neckEnd', 'treble', 'diagonalFromBass'],
  ['bass', 'neckEnd', 'diagonalFromTreble'],
  ['tailEnd', 'treble', 'diagonalFromTreble'],
]
