/**
 * From the few sizes a builder states first to a whole design that should hold: the first drawing of a new box.
 *
 * Every figure in here is a starting value of common practice without a published source; the checks say what
 * became of it, and every one can be changed afterwards.
 */
import { lidInset, lidLength } from '../box/box.ts'
import { neckHolds } from '../loads/cures.ts'
import { loadsOf } from '../loads/loads.ts'
import { usualMake } from '../loads/strung.ts'
import { fretsOf } from '../scale/frets.ts'
import type { Layout } from '../solve/layout.ts'
import { solve } from '../solve/solve.ts'
import { LIMITS } from './limits.ts'
import { checkDesign } from './read.ts'
import { type Rounding, roundingFor } from './rounding.ts'
import type { Design } from './schema.ts'
import { startingHead } from './starting-head.ts'
import { startingHoles } from './starting-holes.ts'
import { type Stick, stickThatHolds, thinnestStick } from './starting-neck.ts'
import { BESIDE_STRINGS, saddleFor, spansWithin, tailSpan } from './starting-spans.ts'
import { type StartingStrings, startingStrings } from './starting-strings.ts'

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
/** Farthest along the lid that the saddle goes, as a share, unless the strings must bend more over it. */
const SADDLE_SHARE = 0.72
/** Of the bend over the saddle, half a degree over the limit. */
const BEND = ((LIMITS.breakAngleAtSaddle.value + 0.5) * Math.PI) / 180
/** Of the scale, at least this share stays outside the box. */
const SCALE_OUTSIDE = 0.25
/** A stick sold as 1 × 2 inches is as wide as this. */
const STICK = { width: 38 }
const BOARD = 5
/** Strings over the board at the nut, and wanted over the crown of the octave fret; the second pair for slide. */
const FRETTED = { atNut: 1.5, action: 2.2 }
const SLID = { atNut: 5, action: 5 }
const TAIL = 38
const TAIL_EDGE = 14
const TAIL_HOLE = 2.4
/** A head carved down to this suits ordinary tuners. */
const HEAD = 14
const BOARD_WOOD = 'walnut'

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
  const base = valid(asStated(stated))
  const { box, scale } = base
  const rounded = roundingFor(base.units)
  const count = base.strings.count
  const strung = startingStrings(count, scale.length)
  const spans = spansOf(count, box, rounded, Math.max(0.4, ...strung.gauges) / 2)
  const draft = (stick: Stick, setback: number) => drafted(base, strung, spans, stick, setback, rounded)
  const thin = thinnestStick(box, rounded)
  const { line } = loadsOf(solve(draft(thin, 0))).saddle
  const setback =
    line && !scale.fretless ? Math.min(20, Math.max(-10, rounded.near(2 * line.atCentre) / 2)) : 0
  const stick = stickThatHolds(box, thin, rounded, (tried) => holds(solve(draft(tried, setback))))
  const design = draft(stick, setback)
  const { place } = design.saddle
  const along = typeof place === 'object' && 'share' in place ? place.share * lidSpan(box) : 0
  return valid({ ...design, things: startingHoles(box, spans.neckWidth, along, rounded) })
}

/** Walls thicker than the box leave no lid at all; the checks say so. */
const lidSpan = (box: Design['box']): number => Math.max(1, lidLength(box))

/** Everything but the neck’s stock, the setback and what is put on the faces follows from box and count of strings. */
function drafted(
  base: Design,
  strung: StartingStrings,
  spans: ReturnType<typeof spansOf>,
  stick: Stick,
  setback: number,
  rounded: Rounding,
): Design {
  const { box, scale } = base
  const count = base.strings.count
  const { atNut, action } = scale.fretless ? SLID : FRETTED
  const crown = scale.fretless ? 0 : scale.crown
  const board = rounded.near(BOARD)
  // The octave fret is half way, so the strings stand there at the mean of their heights at nut and saddle.
  const overNeck = rounded.near(board + crown + 2 * action - (atNut - crown))
  const lid = lidSpan(box)
  const saddleShare = saddleShareOf(box, lid, scale.length, overNeck)
  const boxX0 = scale.length + setback - saddleShare * lid - lidInset(box)
  const lastFret = fretsOf(scale).at(-1)?.fromNut ?? 0
  const boardEnd = rounded.down(Math.min(boxX0, 1200))
  const tail = rounded.near(TAIL)
  const head = startingHead(count, spans.nut, spans.neckWidth, rounded)
  const headstock = { ...base.headstock, ...head }
  const blank = headstock.length + boxX0 + box.length + tail + 2 * LIMITS.blankSpare.value
  const { wood, bar, ...sizes } = stick
  return {
    ...base,
    strings: {
      ...base.strings,
      spanAtNut: spans.nut,
      spanAtSaddle: spans.saddle,
      gauges: [...strung.gauges],
    },
    stringing: {
      ...base.stringing,
      tuning: [...strung.tuning],
      makes: strung.makes.map((make) => ({ ...usualMake(0), ...make })),
    },
    neck: {
      ...base.neck,
      ...sizes,
      width: spans.neckWidth,
      widthAtNut: spans.neckWidth,
      length: rounded.up(blank),
      tail,
      wood,
      bar: bar
        ? { ...base.neck.bar, ...bar, to: Math.max(base.neck.bar.from + 1, rounded.down(boxX0)) }
        : base.neck.bar,
    },
    board: {
      ...base.board,
      thickness: board,
      wood: BOARD_WOOD,
      // A board that would stop short of the box runs on to it.
      ...(lastFret + base.board.beyond < boardEnd && boardEnd > 20
        ? { ends: 'at a length', length: boardEnd }
        : {}),
    },
    headstock: {
      ...headstock,
      thickness: headThickness(stick.thickness, board + atNut, headstock, rounded),
    },
    nut: { ...base.nut, height: atNut },
    saddle: {
      ...base.saddle,
      place: { share: saddleShare },
      setback,
      action,
      length: saddleFor(spans.saddle, rounded),
      height: stick.rise + overNeck,
    },
    tailpiece: {
      ...base.tailpiece,
      holes: count,
      diameter: TAIL_HOLE,
      fromEdge: TAIL_EDGE,
      span: tailSpan(spans.saddle, spans.neckWidth, TAIL_HOLE, rounded),
    },
    things: [],
  }
}

/** Neck, lid and the bend over the nut, as far as the loads are known. */
function holds(layout: Layout): boolean {
  const { totalPull, lid, strings } = loadsOf(layout)
  if (totalPull === null) return true
  const least = (LIMITS.breakAngleAtNut.value * Math.PI) / 180
  const bend = strings.every(({ breakAtNut }) => breakAtNut === null || breakAtNut >= least)
  return bend && neckHolds(layout) && (lid?.sag ?? 0) <= LIMITS.lidSag.value
}

/** As thick as usual, or thinner where the farthest string would else not bend enough over the nut. */
function headThickness(
  neck: number,
  stringsOverNeck: number,
  head: Design['headstock'],
  rounded: Rounding,
): number {
  const inRow = Math.max(head.bassTuners - 1, head.trebleTuners - 1)
  const farthest = head.firstPost + Math.max(0, head.stagger) + inRow * head.postSpacing
  const drop = farthest * Math.tan(((LIMITS.breakAngleAtNut.value + 0.3) * Math.PI) / 180)
  const thickest = neck + stringsOverNeck - head.postHeight - drop
  const least = rounded.up(LIMITS.headRoot.value)
  return Math.max(least, Math.min(rounded.near(HEAD), rounded.down(thickest)))
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
function spansOf(count: number, box: Design['box'], rounded: Rounding, halfString: number) {
  const beside = Math.max(box.walls.bass, box.walls.treble) + LIMITS.wallBesideSlot.value + 0.5
  const mostNeck = Math.max(20, rounded.down(box.width - 2 * beside))
  const spans = spansWithin(count, mostNeck, rounded, halfString)
  return {
    ...spans,
    neckWidth: Math.min(
      mostNeck,
      rounded.up(Math.max(STICK.width, spans.saddle + 2 * (BESIDE_STRINGS + halfString))),
    ),
  }
}

/**
 * The saddle far enough from the tail-end wall, enough of the scale outside the box, and the string hole near enough for
 * the strings to bend over it; a share of the lid.
 */
function saddleShareOf(box: Design['box'], lid: number, scale: number, overTail: number): number {
  const inset = lidInset(box)
  const byWall = (box.length - box.walls.tailEnd - inset - SADDLE_TO_WALL) / lid
  const byScale = (scale * (1 - SCALE_OUTSIDE)) / lid
  const toEnd = overTail / Math.tan(BEND) - TAIL_EDGE
  const byBend = Math.ceil(((box.length - inset - toEnd) / lid) * 100) / 100
  const share = Math.min(Math.max(SADDLE_SHARE, byBend), byWall, byScale)
  const shortBox = Math.min(0.5, byScale)
  return Math.floor(Math.max(share, shortBox, 0.05) * 100 + 1e-6) / 100
}
