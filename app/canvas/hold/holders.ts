/**
 * The one list of what can take hold of a thing that is moved. A new sort of line is one entry here; where two are
 * equally near, the earlier one is named.
 */
import { artworkLines } from './artwork.ts'
import { faceLines, instrumentLines } from './instrument.ts'
import type { Holder } from './line.ts'
import { equalGaps, equalMargins, otherCentres, otherEdges } from './neighbours.ts'

export const HOLDERS: readonly Holder[] = [
  { lines: faceLines },
  { lines: instrumentLines },
  { lines: artworkLines },
  { lines: otherCentres },
  { lines: otherEdges },
  { lines: equalGaps },
  { after: true, lines: equalMargins },
]
