/** Drawings of what is played on: scale, strings, nut, saddle, tailpiece, and the brace under the lid. */
import {
  across,
  area,
  arrow,
  body,
  circle,
  type Drawing,
  dash,
  diameter,
  hole,
  lead,
  line,
  mark,
  metal,
  over,
  poly,
  rect,
  stretch,
  towards,
  upright,
  way,
} from './pen.ts'
import {
  braced,
  fretSeated,
  nutSide,
  plan,
  saddleSide,
  saddleTop,
  slotCut,
  strings,
  tailSide,
  tailTop,
  wallSeen,
  whole,
} from './views.ts'

/** Strings end on, thick to thin. */
const RADII = [8, 6, 4, 2.4] as const
const endOn = (centres: readonly number[]) => metal(...centres.map((x, i) => circle(x, 32, RADII[i]!)))

const hexagon = (x: number, y: number, r: number) =>
  poly(
    ...[0, 1, 2, 3, 4, 5].flatMap((i) => [
      x + r * Math.cos((i * Math.PI) / 3),
      y + r * Math.sin((i * Math.PI) / 3),
    ]),
  )

/** Wound wire end on: the winding round its core. */
const wound = (core: string) => over(metal(circle(48, 34, 24)), area(core))

const CORE: Drawing = {
  cases: {
    round: over(wound(circle(48, 34, 13)), diameter(48, 34, 13)),
    hexagonal: over(wound(hexagon(48, 34, 13)), stretch(48, 34 - 11.26, 48, 34 + 11.26)),
  },
}

const WEIGHED: Drawing = over(metal(rect(10, 33, 76, 3)), across(10, 86, 20, 34))

/** A string along the top that goes round into a hole. */
const held = {
  'the tail of the neck': over(
    tailSide,
    hole(rect(67, 16, 5, 22)),
    mark(way(0, 8, 66, 13, 69.5, 17, 69.5, 40)),
    metal(circle(69.5, 41, 3)),
  ),
  'the tail-end wall': over(
    body(rect(0, 52, 50, 6), rect(43, 22, 7, 30), rect(0, 16, 50, 6)),
    hole(rect(43, 32, 7, 4)),
    mark(way(0, 6, 49, 14, 52, 18, 52, 33, 49, 34, 40, 34)),
    metal(circle(38, 34, 3)),
  ),
  'the lid': over(
    body(rect(0, 52, 50, 6), rect(43, 22, 7, 30), rect(0, 16, 50, 6)),
    hole(rect(26, 16, 4, 6)),
    mark(way(0, 8, 26, 14, 28, 17, 28, 26)),
    metal(circle(28, 28, 3)),
  ),
} as const

const holeRow = (ys: readonly number[]) =>
  over(body(rect(2, 4, 92, 56)), hole(...ys.map((y) => circle(48, y, 3.2))))

/** Three strings to the left of a row of holes and four to the right of it: which holes each count takes. */
const counts = (three: readonly number[], four: readonly number[]) =>
  mark(...three.map((y) => way(2, y, 45, y)), ...four.map((y) => way(51, y, 94, y)))

/** A hole with a string in it, cut across; the ball end stands where it is held. */
const taken = (wide: number) => over(body(rect(6, 22, 84, 22)), hole(rect(48 - wide / 2, 22, wide, 22)))

export const playing: Readonly<Record<string, Drawing>> = {
  'scale.length': over(whole, across(14, 78, 7, 29, 26)),
  'scale.start': {
    cases: {
      nut: over(nutSide, mark(way(42, 10, 42, 40)), towards(42, 10, 74, 10), lead(75, 26, 75, 6)),
      'zero fret': over(
        body(rect(0, 40, 96, 20), rect(28, 30, 68, 10), rect(18, 22, 10, 18)),
        metal(circle(42, 30, 3.4), rect(74, 26, 4, 8)),
        line(way(0, 28, 18, 23, 28, 23.5, 42, 26.4, 96, 24)),
        mark(way(42, 10, 42, 38)),
        towards(42, 10, 75, 10),
        lead(75, 26, 75, 6),
      ),
    },
  },
  'scale.slotWidth': over(slotCut, across(44, 50, 18, 28)),
  'scale.slotDepth': over(slotCut, upright(28, 40, 34, 44)),
  'scale.crown': over(fretSeated, upright(21, 30, 74, 48, 60)),
  'strings.count': over(
    strings,
    mark(...[0, 1, 2, 3].map((i) => way(15, 26 + (16 / 3) * i, 82, 16 + 12 * i))),
  ),
  'strings.spacing': {
    cases: {
      'equal centres': over(
        endOn([16, 38, 60, 82]),
        mark(...[16, 38, 60, 82].map((x) => way(x, 20, x, 50))),
        stretch(16, 50, 38, 50),
        stretch(38, 50, 60, 50),
        stretch(60, 50, 82, 50),
      ),
      'equal gaps': over(
        endOn([12, 38, 60, 78.4]),
        area(rect(20, 26, 12, 12), rect(44, 26, 12, 12), rect(64, 26, 12, 12)),
      ),
    },
  },
  'strings.spanAtNut': over(strings, upright(26, 42, 6, 15)),
  'strings.spanAtSaddle': over(strings, upright(16, 52, 91, 82)),
  'strings.gauges': over(
    metal(circle(22, 34, 17), circle(58, 34, 9), circle(84, 34, 4)),
    across(5, 39, 10, 34),
    across(49, 67, 10, 34),
    across(80, 88, 54, 34),
  ),
  'nut.thickness': over(nutSide, area(poly(32, 21, 42, 18, 42, 40, 32, 40)), across(32, 42, 10, 21, 18)),
  'nut.height': over(nutSide, upright(17.5, 30, 56)),
  'nut.setback': over(
    body(rect(0, 40, 96, 20), rect(52, 30, 44, 10)),
    body(poly(42, 21, 52, 18, 52, 40, 42, 40)),
    dash(way(30, 21, 40, 18, 40, 40, 30, 40, 30, 21)),
    metal(rect(78, 26, 4, 8)),
    line(way(0, 33, 42, 21, 52, 18, 96, 17)),
    towards(40, 9, 52, 9),
    lead(40, 18, 40, 5),
    lead(52, 18, 52, 9),
  ),
  'saddle.place': over(plan, mark(way(62, 22, 62, 46)), across(14, 62, 7, 14, 22)),
  'saddle.setback': over(
    body(rect(2, 18, 92, 42)),
    line(...[28, 36, 44, 52].map((y) => way(2, y, 94, y))),
    dash(way(42, 12, 42, 60)),
    mark(way(58, 22, 58, 58)),
    towards(42, 9, 58, 9),
    lead(58, 22, 58, 5),
  ),
  'saddle.thickness': over(saddleSide, area(poly(38, 46, 43, 20, 49, 20, 54, 46)), across(38, 54, 59, 46)),
  'saddle.length': over(saddleTop, area(rect(45, 12, 6, 40)), upright(12, 52, 64, 51)),
  'saddle.height': over(saddleSide, upright(20, 46, 28, 43, 28)),
  'saddle.action': over(
    body(rect(0, 46, 96, 14), rect(4, 38, 80, 8)),
    body(rect(0, 28, 4, 18)),
    metal(...[20, 34, 46, 56, 65].map((x) => `M${x - 2} 38L${x - 2} 36A2 2 0 0 1 ${x + 2} 36L${x + 2} 38Z`)),
    line(way(0, 29, 4, 28, 96, 18)),
    upright(22.6, 34, 56),
  ),
  'saddle.freeBand': over(
    body(rect(2, 14, 92, 46)),
    line(...[24, 32, 40, 48].map((y) => way(2, y, 94, y))),
    area(rect(32, 18, 32, 38)),
    mark(way(48, 18, 48, 56)),
    across(32, 48, 8, 18),
    across(48, 64, 8, 18),
  ),
  'tailpiece.at': { cases: held },
  'tailpiece.holes': over(tailTop, mark(...[20, 28, 36, 44].map((y) => circle(62, y, 3.4)))),
  'tailpiece.row': {
    cases: {
      'equal holes': over(holeRow([12, 22, 32, 42, 52]), counts([12, 32, 52], [12, 22, 42, 52])),
      'for each count': over(holeRow([12, 25.3, 32, 38.7, 52]), counts([12, 32, 52], [12, 25.3, 38.7, 52])),
    },
  },
  'tailpiece.groundHole': over(
    wallSeen,
    body(rect(38, 12, 20, 22)),
    hole(circle(68, 30, 5)),
    across(63, 73, 8, 30),
    mark(circle(68, 30, 5)),
  ),
  'tailpiece.span': over(tailTop, upright(20, 44, 92, 62)),
  'tailpiece.fromEdge': {
    cases: {
      'on the tail': over(tailTop, across(40, 62, 8, 14, 20)),
      'on the wall': over(
        wallSeen,
        hole(...[32, 40, 48, 56, 64].map((x) => circle(x, 30, 2))),
        upright(18, 30, 78, 64),
      ),
      'on the lid': over(
        plan,
        hole(...[24, 31, 38, 45].map((y) => circle(70, y, 2))),
        across(70, 86, 7, 24, 14),
      ),
    },
  },
  'tailpiece.diameter': over(taken(14), across(41, 55, 13, 22)),
  'tailpiece.takes': {
    cases: {
      'the string alone': over(
        taken(5),
        mark(way(48, 4, 48, 48)),
        metal(circle(48, 49, 5)),
        arrow(66, 60, 66, 48),
      ),
      'the ball end': over(
        taken(13),
        mark(way(48, 4, 48, 28)),
        metal(circle(48, 32, 5)),
        arrow(66, 4, 66, 17),
      ),
    },
  },
  'stringing.makes.core': CORE,
  'stringing.stock.core': CORE,
  'stringing.stock.gauge': over(metal(circle(48, 36, 18)), across(30, 66, 10, 36)),
  'stringing.makes.weighedLength': WEIGHED,
  'stringing.stock.weighedLength': WEIGHED,
  'stringing.makes.coreShape': {
    cases: { round: wound(circle(48, 34, 13)), hexagonal: wound(hexagon(48, 34, 13)) },
  },
  'stringing.stock.coreShape': {
    cases: { round: wound(circle(48, 34, 13)), hexagonal: wound(hexagon(48, 34, 13)) },
  },
  'brace.height': over(braced, area(rect(41, 23, 14, 19)), upright(23, 42, 66, 55)),
  'brace.width': over(braced, area(rect(41, 23, 14, 19)), across(41, 55, 52, 42)),
  'brace.runs': {
    cases: {
      across: over(plan, area(rect(58, 19, 8, 30))),
      along: over(plan, area(rect(19, 38, 62, 8))),
    },
  },
  'brace.offset': {
    cases: {
      'runs across': over(
        plan,
        metal(rect(47, 22, 2, 24)),
        dash(rect(58, 19, 8, 30)),
        towards(48, 7, 62, 7),
        lead(48, 22, 48, 3),
        lead(62, 34, 62, 7),
      ),
      'runs along': over(
        plan,
        metal(rect(47, 22, 2, 24)),
        dash(rect(19, 21, 62, 6)),
        towards(70, 34, 70, 24),
      ),
    },
  },
}

/** The instrument as it is drawn for each hand, its thickest string on the bass side. */
const strung = (bass: 1 | -1) =>
  over(
    body(rect(46, 10, 46, 44), rect(1, 22, 12, 20), rect(12, 24, 46, 16)),
    metal(rect(12, 23, 2, 18), rect(77, 20, 2, 24)),
    metal(...[1.7, 1, 0.4].map((r, i) => rect(3, 32 + bass * (5 - 5 * i) - r, 84, 2 * r))),
    area(rect(3, 32 + bass * 5 - 1.7, 84, 3.4)),
  )

export const HAND: Drawing = { cases: { right: strung(1), left: strung(-1) } }
