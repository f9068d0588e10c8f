/**
 * From the few sizes a builder states first to a whole design that should hold: the first drawing of a new box.
 *
 * Every figure in here is a starting value of common practice without a published source; the checks say what
 * became of it, and every one can be changed afterwards.
 */
import { lidInset, lidLength } from '../box/box.ts'
import { fretsOf } from '../scale/frets.ts'
import { LIMITS } from './limits.ts'
import { checkDesign } from './read.ts'
import { type Rounding, roundingFor } from './rounding.ts'
import type { Design } from './schema.ts'
import { startingHead } from './starting-head.ts'
import { startingHoles } from './starting-holes.ts'

/** What is known before anything is drawn: the box as measured, and what is wanted of it. Millimetres. */
export interface Stated {
  readonly title?: string
  readonly hand?: Design['hand']
  readonly units?: Design['units']
  /** Outside of the box, along the neck, across it, and through it with the lid closed. */
  readonly length?: number
  readonly width?: number
  readonly depth?: number
  /** Thickness of all four walls, of the lid and of the base. */
  readonly wall?: number
  readonly lid?: number
  readonly base?: number
  readonly lidFit?: Design['box']['lid']['fit']
  readonly strings?: number
  readonly scale?: number
  readonly frets?: number
  readonly fretless?: boolean
}

/** From the saddle line to the inside of the tail-end wall, where the box is long enough. 40 to 60 mm is usual. */
const SADDLE_TO_WALL = 45
/** Farthest along the lid that the saddle goes, as a share. */
const SADDLE_SHARE = 0.72
/** Of the scale, at least this share stays outside the box. */
const SCALE_OUTSIDE = 0.25
/** From an outer string to the edge of the board: half a millimetre over the limit. */
const BESIDE_STRINGS = LIMITS.stringToBoardEdge.value + 0.5
/** A stick sold as 1 × 2 inches measures this. */
const STICK = { width: 38, thickness: 19 }
const BOARD = 5
/** Strings over the board at the octave fret: the crown of the wire and an easy action. */
const AT_OCTAVE = 3.5
const AT_NUT = 2
const RELIEF = 3
const TAIL = 38
const TAIL_HOLE = 2.4

/**
 * A complete design from the sizes stated: saddle where the lid can still move, strings apart as fingers want them,
 * a neck that carries them, posts and tail holes for their count, two mirrored sound holes where there is room.
 * What is not stated is as in an empty file.
 *
 * @param stated lengths in mm, each within the limits of its field
 * @throws RangeError naming the field when a stated size lies outside its field's limits
 * @example startingDesign({ length: 240, width: 180, depth: 55, strings: 3 }).neck.width // 38
 */
export function startingDesign(stated: Stated = {}): Design {
  const { box, scale, ...plain } = valid(asStated(stated))
  const rounded = roundingFor(plain.units)
  const count = plain.strings.count
  const spans = spansOf(count, box, rounded)
  const neck = sticksOf(box, spans.neckWidth, rounded)
  // Walls thicker than the box leave no lid at all; the checks say so.
  const lid = Math.max(1, lidLength(box))
  const saddleShare = saddleShareOf(box, lid, scale.length)
  const boxX0 = scale.length - saddleShare * lid - lidInset(box)
  const lastFret = fretsOf(scale).at(-1)?.fromNut ?? 0
  const boardEnd = rounded.down(Math.min(boxX0, 1200))
  const board = rounded.near(BOARD)
  const tail = rounded.near(TAIL)
  const headstock = startingHead(count, spans.nut, spans.neckWidth, rounded)
  const blank = headstock.length + boxX0 + box.length + tail + 2 * LIMITS.blankSpare.value
  const playingTop = neck.rise + board
  const besideHoles = TAIL_HOLE / 2 + BESIDE_STRINGS
  const tailSpan = Math.max(0, Math.min(spans.saddle, rounded.down(neck.width - 2 * besideHoles)))
  return valid({
    ...plain,
    box,
    scale,
    strings: { count, spanAtNut: spans.nut, spanAtSaddle: spans.saddle },
    neck: { ...neck, length: rounded.up(blank), tail },
    board: {
      thickness: board,
      // A board that would stop short of the box runs on to it.
      ...(lastFret + plain.board.beyond < boardEnd && boardEnd > 20
        ? { ends: 'at a length', length: boardEnd }
        : {}),
    },
    headstock,
    nut: { height: AT_NUT },
    saddle: {
      place: { share: saddleShare },
      length: Math.max(30, rounded.up(spans.saddle + 20)),
      // The octave fret is half way, so the strings stand there at the mean of their heights at nut and saddle.
      height: rounded.near(2 * (playingTop + AT_OCTAVE) - (playingTop + AT_NUT)),
    },
    tailpiece: { holes: count, diameter: TAIL_HOLE, span: tailSpan },
    things: startingHoles(box, neck.width, saddleShare * lid, rounded),
  })
}

/** The design of an empty file with what was stated set in it. */
function asStated(stated: Stated): unknown {
  const some = (fields: Record<string, unknown>) =>
    Object.fromEntries(Object.entries(fields).filter(([, value]) => value !== undefined))
  const { wall } = stated
  return {
    ...some({ title: stated.title, hand: stated.hand, units: stated.units }),
    box: {
      ...some({ length: stated.length, width: stated.width, depth: stated.depth }),
      walls: some({ neckEnd: wall, tailEnd: wall, bass: wall, treble: wall }),
      lid: some({ thickness: stated.lid, fit: stated.lidFit }),
      base: some({ thickness: stated.base }),
    },
    scale: {
      ...some({ length: stated.scale, fretless: stated.fretless }),
      ...(stated.frets === undefined ? {} : { frets: { by: 'equal', count: stated.frets } }),
    },
    strings: some({ count: stated.strings }),
  }
}

function valid(value: unknown): Design {
  const reading = checkDesign({ format: 'lidwright', version: 1, ...(value as object) })
  if (reading.ok) return reading.design
  throw new RangeError(reading.faults.map(({ path, sentence }) => `${path}: ${sentence}`).join(' '))
}

/** Where the strings run, and the neck that is wide enough for them, as far as the box lets it be. */
function spansOf(count: number, box: Design['box'], rounded: Rounding) {
  const beside = Math.max(box.walls.bass, box.walls.treble) + LIMITS.wallBesideSlot.value + 0.5
  const mostNeck = Math.max(20, rounded.down(box.width - 2 * beside))
  const mostSpan = Math.max(0, mostNeck - 2 * BESIDE_STRINGS)
  const gaps = count - 1
  const atNut = count <= 3 ? 11.5 : count === 4 ? 9 : 8
  const atSaddle = Math.max(LIMITS.stringsApartAtSaddle.value + 0.5, atNut + 1)
  const saddle = Math.min(rounded.near(gaps * atSaddle), rounded.down(mostSpan))
  const nut = Math.min(rounded.near(gaps * atNut), saddle)
  return {
    nut,
    saddle,
    neckWidth: Math.min(mostNeck, rounded.up(Math.max(STICK.width, saddle + 2 * BESIDE_STRINGS))),
  }
}

/**
 * Thickness, height and relief of the neck. What is left over the box is the thickness less the notch and its
 * relief, and must be both thick and stiff enough; what is left of the wall below it is what the box is deep, less
 * base and neck. A shallow box lifts the neck; then the relief gives way first, the wall next, the neck last.
 */
function sticksOf(box: Design['box'], width: number, rounded: Rounding) {
  const lid = box.lid.thickness
  const usualRelief = rounded.near(RELIEF)
  const cut = lid + usualRelief
  // Stiffness goes with the cube of the thickness.
  const share = Math.cbrt(LIMITS.neckStiffnessLeft.value) + 0.01
  const least = LIMITS.neckLeft.value
  const thickness = Math.min(100, rounded.up(Math.max(STICK.thickness, cut + least, cut / (1 - share))))
  const spare = thickness - lid - Math.max(least, thickness * share)
  const below = box.depth - box.base.thickness - thickness
  const wanted = rounded.up(LIMITS.wallUnderSlot.value + 0.5 - below)
  const rise = Math.max(0, Math.min(wanted, rounded.down(spare), 60))
  const relief = Math.min(usualRelief, rounded.down(Math.max(0, spare - rise)))
  return { width, widthAtNut: width, thickness, rise, relief }
}

/** The saddle far enough from the tail-end wall, and enough of the scale outside the box; a share of the lid. */
function saddleShareOf(box: Design['box'], lid: number, scale: number): number {
  const wall = box.length - box.walls.tailEnd - lidInset(box)
  const share = Math.min(SADDLE_SHARE, (wall - SADDLE_TO_WALL) / lid, (scale * (1 - SCALE_OUTSIDE)) / lid)
  const shortBox = Math.min(0.5, (scale * (1 - SCALE_OUTSIDE)) / lid)
  return Math.floor(Math.max(share, shortBox, 0.05) * 100) / 100
}
