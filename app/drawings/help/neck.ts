/** Drawings of the neck, its board and its head with the tuners. */
import {
  across,
  angle,
  area,
  body,
  circle,
  type Drawing,
  dash,
  hole,
  lead,
  mark,
  metal,
  over,
  piece,
  poly,
  rect,
  stretch,
  towards,
  upright,
  way,
} from './pen.ts'
import {
  blank,
  boardSide,
  bushing,
  head,
  headSide,
  headStep,
  headStepped,
  headTilted,
  long,
  longBlock,
  neckAcross,
  neckSide,
  neckTop,
  planOpen,
  post,
  postHole,
  shoulder,
  tuner,
} from './views.ts'

const bar = rect(42, 16, 12, 22)
const rod = circle(48, 24, 7)
const flat = over(neckAcross, area(bar))
const round = over(neckAcross, area(rod))

/** Neck over the box: the notch for the lid, and the relief that begins inside the wall. */
const relieved = over(
  body(rect(10, 48, 14, 16)),
  body(poly(0, 12, 9, 12, 9, 22, 48, 22, 48, 32, 96, 32, 96, 48, 0, 48)),
  body(rect(10, 12, 86, 10)),
)

const inSide = over(neckSide, area(rect(30, 31, 46, 5)))

const boardTop = (end: number) =>
  over(
    body(rect(0, 22, 96, 20), rect(12, 20, end - 12, 24)),
    metal(rect(9, 20, 3, 24), ...[26, 38, 49, 58].map((x) => rect(x - 0.8, 20, 1.6, 24))),
  )

const pilot = over(body(rect(8, 18, 80, 28)), hole(rect(45, 30, 6, 16)))
const posts = (y: number) => mark(circle(54, y, 4.6), circle(30, y, 4.6))
const glued = over(headSide, area(rect(44, 40, 36, 7)))

export const neck: Readonly<Record<string, Drawing>> = {
  'neck.length': over(blank, across(12, 76, 55, 46)),
  'neck.width': over(
    blank,
    stretch(6.5, 26.5, 20.5, 14.5),
    lead(12, 32, 4.5, 24.5),
    lead(26, 20, 18.5, 12.5),
  ),
  'neck.thickness': over(blank, upright(32, 46, 5, 12)),
  'neck.widthAtNut': over(neckTop, upright(26, 38, 5, 14)),
  'neck.ends': {
    cases: {
      'through the box': over(long, mark(poly(0, 18, 25, 18, 25, 28, 77, 28, 77, 18, 92, 18, 92, 38, 0, 38))),
      'at a block': over(
        longBlock,
        mark(poly(0, 18, 25, 18, 25, 28, 56, 28, 56, 38, 0, 38), rect(31, 38, 16, 12)),
      ),
    },
  },
  'neck.tail': over(long, across(76, 92, 10, 23, 18)),
  'neck.tongue': over(longBlock, across(31, 56, 10, 38, 28)),
  'neck.blockLength': over(longBlock, area(rect(31, 38, 16, 12)), across(31, 47, 60, 50)),
  'neck.blockWidth': over(planOpen, area(rect(19, 23, 16, 22)), upright(23, 45, 44, 35)),
  'neck.rise': over(shoulder(1), upright(18, 28, 62, 31, 62)),
  'neck.relief': over(relieved, upright(22, 32, 70, 48, 70)),
  'neck.reliefStart': over(relieved, across(24, 48, 40, 48, 32)),
  'neck.slotPlay': over(
    body(rect(8, 18, 80, 34)),
    hole(rect(32, 18, 32, 22)),
    piece(rect(36, 10, 24, 30)),
    area(rect(32, 18, 4, 22), rect(60, 18, 4, 22)),
    across(32, 36, 58, 40),
    across(60, 64, 58, 40),
  ),
  'neck.bar.kind': {
    cases: {
      none: neckAcross,
      'steel bar': flat,
      'steel rod': round,
      'aluminium bar': flat,
      'carbon bar': flat,
      'carbon rod': round,
    },
  },
  'neck.bar.width': {
    cases: { bar: over(flat, across(42, 54, 7, 16)), rod: over(round, across(41, 55, 7, 24)) },
  },
  'neck.bar.height': over(flat, upright(16, 38, 84, 74, 54)),
  'neck.bar.from': over(inSide, across(15, 30, 14, 22, 31)),
  'neck.bar.to': over(inSide, across(15, 76, 14, 22, 31)),
  'board.thickness': over(boardSide, area(rect(15, 24, 59, 6)), upright(24, 30, 86, 74)),
  'board.ends': {
    cases: {
      'after the last fret': over(
        boardTop(66),
        stretch(58, 52, 66, 52),
        lead(58, 44, 58, 55),
        lead(66, 44, 66, 55),
      ),
      'at a length': over(boardTop(80), across(12, 80, 10, 20)),
    },
  },
  'board.beyond': over(boardTop(74), across(58, 74, 10, 20)),
  'board.length': over(boardTop(80), across(12, 80, 10, 20)),
  'headstock.form': {
    cases: {
      straight: over(headSide, mark(way(8, 28, 54, 28, 70, 20))),
      stepped: over(headStep, mark(way(8, 30, 68, 30, 68, 18))),
      scarfed: over(headTilted, mark(way(68, 16, 40, 30))),
    },
  },
  'headstock.length': over(head(), across(6, 76, 7, 14, 21)),
  'headstock.width': over(head(), upright(14, 54, 2.9, 6)),
  'headstock.thickness': over(headSide, upright(28, 40, 3.5, 8)),
  'headstock.step': over(headStep, upright(18, 30, 54, 68, 54)),
  'headstock.tiltDegrees': over(headTilted, dash(way(4, 16, 68, 16)), angle(68, 16, 52, 180, 165)),
  'headstock.ramp': over(headSide, across(54, 70, 7, 28, 20)),
  'headstock.bassTuners': over(head(), posts(45)),
  'headstock.trebleTuners': over(head(), posts(23)),
  'headstock.firstPost': over(head(), across(54, 76, 7, 23, 21)),
  'headstock.postSpacing': over(head(), across(30, 54, 7, 23)),
  'headstock.stagger': over(head(12), towards(54, 7, 42, 7), lead(54, 45, 54, 3), lead(42, 23, 42, 7)),
  'headstock.postStep': over(headStepped, upright(22, 29, 42, 54, 30)),
  'headstock.postEdge': over(head(), upright(14, 23, 42, 42, 54)),
  'headstock.postHole': over(postHole, across(40, 56, 14, 24)),
  'headstock.post': over(post, across(43, 53, 4, 13)),
  'headstock.postHeight': over(post, upright(13, 24, 30, 43, 30)),
  'headstock.bushing': {
    cases: {
      none: over(postHole, mark(way(40, 24, 40, 44), way(56, 24, 56, 44))),
      'let in': over(bushing, area(rect(35, 24, 26, 8))),
    },
  },
  'headstock.bushingHole': over(bushing, across(35, 61, 14, 24)),
  'headstock.bushingDepth': over(bushing, upright(24, 32, 74, 61, 61)),
  'headstock.bodyLong': over(tuner, across(34, 62, 60, 54)),
  'headstock.bodyIn': over(tuner, upright(42, 54, 72, 48, 62)),
  'headstock.knobWide': over(tuner, across(40, 56, 12)),
  'headstock.knobFrom': over(tuner, upright(19, 42, 72, 56, 48)),
  'headstock.knobLong': over(tuner, upright(4, 19, 68, 52)),
  'headstock.screws': over(tuner, mark(circle(38.5, 50, 3), circle(57.5, 50, 3))),
  'headstock.screwAlong': over(tuner, across(48, 57.5, 60, 42, 50)),
  'headstock.screwIn': over(tuner, towards(76, 42, 76, 50), lead(48, 42, 72, 42), lead(57.5, 50, 80, 50)),
  'headstock.screwPilot': over(pilot, across(45, 51, 54, 46)),
  'headstock.screwDepth': over(pilot, upright(30, 46, 64, 51)),
  'headstock.reinforcement': over(glued, upright(40, 47, 88, 80)),
  'headstock.reinforcementLength': over(glued, across(44, 80, 56, 47)),
}
