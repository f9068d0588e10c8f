/** A class of twenty: boxes of several sizes, each a little out of square in its own way, as they were measured. */
import { checkDesign, type Design, startingDesign } from '../../geometry/index.ts'

const TWENTY = 20

/** Readings to the half millimetre of a box whose tail end is pushed aside and turned by so much. */
function readingsOf(length: number, width: number, aside: number, longer: number) {
  const read = (dx: number, dy: number) => [Math.round(2 * Math.hypot(dx, dy)) / 2]
  return {
    bass: read(length, aside),
    treble: read(length + longer, aside),
    neckEnd: read(0, width),
    tailEnd: read(longer, width),
    diagonalFromBass: read(length + longer, width + aside),
    diagonalFromTreble: read(length, aside - width),
  }
}

/** The same twenty at every call. No things stand on them yet. */
export function twentySurveys(): readonly { readonly name: string; readonly design: Design }[] {
  return Array.from({ length: TWENTY }, (_, index) => {
    const [length, width] = [220 + 5 * index, 160 + 3 * (index % 7)]
    const plain = startingDesign({ length, width, depth: 55 + (index % 4) * 5, strings: 3, hand: 'right' })
    const survey = readingsOf(length, width, (index % 5) - 2, (index % 3) - 1)
    const read = checkDesign({ ...plain, things: [], box: { ...plain.box, survey } })
    if (!read.ok) throw new Error(read.faults[0]?.sentence)
    return { name: `box-${String(index + 1).padStart(2, '0')}`, design: read.design }
  })
}
