/**
 * A piece to find the real kerf by: a row of slots of falling width. A strip of the same stock goes into them edge on;
 * the one that holds it tightly names the kerf, or the diameter that the cutter really cuts.
 *
 * A slot drawn w wide and followed by a tool taken to be k wide, whose true width is t, comes out w + t - k wide. It
 * holds stock of thickness s tightly where w + t - k = s, so beside each slot stands t = k + s - w (plane geometry).
 */
import { type Design, type Operation, type Part, rectangle, type Tool } from '../../geometry/index.ts'
import { lengthLabel } from '../numbers.ts'
import { strokesOf, strokesWidth } from '../words/single-line.ts'

/** Slots in the row, and how much the tool's width differs from one to the next, mm. */
const COUNT = 11
const STEPS: Readonly<Record<Tool['process'], number>> = { laser: 0.05, router: 0.05 }

/** Length of a slot, from its middle to the next one's, and the wood around them, mm. */
const SLOT = 15
const BETWEEN = 12
const AROUND = 6
const FIGURES = 2.5
const WORDS = 3

/**
 * The test piece for stock of a thickness.
 *
 * @param thickness of the stock, measured, mm
 * @param process what cuts it; a laser's slots are drawn as if it took nothing away, a router's for the cutter stated
 * @param cutter diameter stated, mm; only for a router
 * @returns a part, its figures as marks: nominal, to be turned into paths like any other
 * @throws RangeError when a slot would be narrower than the tool
 * @example testPiece(3, 'laser').operations.length // slots, figures and words
 */
export function testPiece(thickness: number, process: Tool['process'], cutter = 0): Part {
  const step = STEPS[process]
  const taken = process === 'laser' ? 0 : cutter
  const least = process === 'laser' ? 0 : cutter - step * ((COUNT - 1) / 2)
  const widest = least + step * (COUNT - 1)
  if (!(thickness + taken - widest > taken)) {
    const tool = process === 'laser' ? 'kerfs' : 'cutters'
    throw new RangeError(
      `Stock of ${text(thickness)} mm is too thin for a test piece: its slots must be wider than ${tool} of ${text(widest)} mm. Use thicker stock.`,
    )
  }
  const pitch = BETWEEN + thickness
  const operations = Array.from({ length: COUNT }, (_, index): Operation[] => {
    const width = least + step * index
    const wide = thickness + taken - width
    const middle = AROUND + pitch * (index + 0.5)
    const slot = rectangle(middle - wide / 2, AROUND + 6, middle + wide / 2, AROUND + 6 + SLOT)
    const figure = text(width)
    const at = { x: middle - strokesWidth(figure, FIGURES) / 2, y: AROUND }
    return [
      { kind: 'cut', side: 'inside', contour: slot, of: `Slot for ${figure}` },
      ...marks(figure, at, FIGURES),
    ]
  }).flat()
  const height = 2 * AROUND + 6 + SLOT + WORDS + 3
  const length = 2 * AROUND + pitch * COUNT
  const what = process === 'laser' ? 'kerf' : 'cutter'
  const words = `The slot that holds this stock tightly names the ${what}, mm. Stock ${text(thickness)}`
  return {
    id: 'test-piece',
    title: process === 'laser' ? 'Test piece for the kerf' : 'Test piece for the cutter',
    seen: 'from the face that is cut',
    mirrored: false,
    headEnd: 'left',
    hand: 'not stated',
    thickness,
    outline: rectangle(0, 0, length, height),
    operations: [
      ...operations,
      ...marks(words, { x: AROUND, y: height - AROUND - WORDS }, WORDS, length - 2 * AROUND),
    ],
  }
}

const text = (length: number) => lengthLabel(length, 'A width', 3)

function marks(words: string, at: { x: number; y: number }, height: number, room?: number): Operation[] {
  return strokesOf({ at, height, turn: 0, text: words }, room).map((contour) => ({
    kind: 'mark',
    contour,
    of: words,
  }))
}

/** The design by which the test piece is cut: a laser as if it took nothing away, tabs left out. */
export function testDesign(design: Design): Design {
  return { ...design, cutting: { ...design.cutting, kerfs: 'one for all', kerf: 0, tabs: 0, relief: 'none' } }
}
