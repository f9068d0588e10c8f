/** Drawings of limits: the two things and the gap or angle between them that a finding is held against. */
import {
  across,
  angle,
  area,
  arrow,
  body,
  circle,
  type Drawing,
  dash,
  hole,
  line,
  mark,
  metal,
  over,
  poly,
  rect,
  stretch,
  turned,
  upright,
  way,
} from './pen.ts'
import {
  boardSide,
  face,
  head,
  headTilted,
  long,
  nutSide,
  plan,
  planHidden,
  saddleSide,
  strings,
  tailTop,
  tuner,
  wallSeen,
  wallsAlone,
  wholeSide,
} from './views.ts'

const screwHead = (x: number, y: number, r = 4) =>
  over(metal(circle(x, y, r)), line(way(x - r * 0.7, y, x + r * 0.7, y), way(x, y - r * 0.7, x, y + r * 0.7)))
/** The corner of a face, seen from outside. */
const rim = body(rect(2, 12, 74, 50))
/** A neck under the lid, seen from above. */
const overNeck = over(body(rect(2, 4, 92, 56)), dash(way(2, 38, 94, 38), way(2, 60, 94, 60)))
const edgeOn = over(
  body(rect(2, 8, 92, 14), rect(36, 22, 24, 40)),
  hole(rect(45, 8, 6, 14)),
  metal(poly(46, 8, 50, 8, 50, 48, 48, 54, 46, 48), poly(41, 8, 55, 8, 50, 13, 46, 13)),
)
const knob = poly(32, 8, 64, 8, 64, 30, 52, 30, 52, 16, 44, 16, 44, 30, 32, 30)

/** Strings over the board, as they were and as they stand. */
const action = (lifted: boolean) =>
  over(
    body(rect(0, 44, 96, 16), rect(4, 38, 84, 6)),
    body(rect(0, 30, 4, 14)),
    metal(...[24, 42, 56].map((x) => rect(x - 1.2, 35.5, 2.4, 5))),
    lifted ? dash(way(4, 30, 96, 25)) : {},
    line(way(4, 30, 96, lifted ? 10 : 17)),
  )
const bowed = (lift: number) =>
  over(
    dash(way(8, 30, 70, 30)),
    body(rect(66, 16, 28, 44)),
    body(`M8 ${30 - lift}A180 180 0 0 0 70 30L70 40A180 180 0 0 1 8 ${40 - lift}Z`),
  )

/** The corner at the tail end that lies farther from the eye, lower than the other three would have it. */
const FARTHEST = mark(way(66, 26, 88, 19, 30, 10))

const FIRST_POST = over(head(), across(54, 76, 7, 23, 21))
const neckThin: Drawing = over(long, upright(28, 38, 52))
const bent = over(saddleSide, dash(way(46, 19.6, 96, 22)), angle(46, 19.6, 40, 3, 17.5))

export const limits: Readonly<Record<string, Drawing>> = {
  'limits.openingToEdge': over(rim, hole(circle(46, 36, 14)), across(60, 76, 36)),
  'limits.screwToEdge': over(rim, screwHead(58, 36, 6), across(64, 76, 36)),
  'limits.betweenOpenings': over(
    body(rect(2, 6, 92, 52)),
    hole(circle(26, 34, 15), circle(72, 34, 13)),
    across(41, 59, 34),
  ),
  'limits.screwToOpening': over(
    body(rect(2, 6, 92, 52)),
    hole(circle(30, 34, 17)),
    screwHead(70, 34, 6),
    across(47, 64, 34),
  ),
  'limits.openingToNeck': over(overNeck, hole(circle(48, 17, 9)), upright(26, 38, 48)),
  'limits.openingToWall': over(planHidden, hole(circle(60, 30, 7)), across(67, 81, 30)),
  'limits.saddleToTailWall': over(planHidden, metal(rect(56, 22, 3, 24)), across(59, 81, 34)),
  'limits.saddleToOpening': over(
    plan,
    metal(rect(62, 20, 4, 28)),
    hole(circle(40, 34, 8)),
    across(48, 62, 34),
  ),
  'limits.stringToBoardEdge': over(
    body(rect(2, 16, 92, 40)),
    metal(...[16, 40, 64, 88].map((x) => rect(x - 1, 16, 2, 40))),
    line(way(2, 27, 94, 27), way(2, 36, 94, 36), way(2, 45, 94, 45)),
    upright(16, 27, 52),
  ),
  'limits.stringsApartAtNut': over(strings, upright(26, 26 + 16 / 3, 4, 15)),
  'limits.stringsApartAtSaddle': over(strings, upright(16, 28, 90, 82)),
  'limits.stringInsidePickup': over(
    body(rect(2, 4, 92, 56)),
    hole(rect(38, 8, 20, 48, 6)),
    area(rect(41, 14, 14, 36)),
    line(way(2, 26, 94, 26), way(2, 38, 94, 38)),
    upright(14, 26, 70, 55),
  ),
  'limits.wallUnderSlot': over(wallSeen, hole(rect(34, 18, 28, 14)), upright(32, 46, 48)),
  'limits.wallBesideSlot': over(wallSeen, hole(rect(34, 18, 28, 14)), across(62, 88, 26)),
  'limits.neckLeft': neckThin,
  'limits.neckStiffnessLeft': neckThin,
  'limits.tailHoleWeb': over(
    body(rect(2, 6, 92, 52)),
    hole(circle(28, 36, 12), circle(68, 36, 12)),
    across(40, 56, 36),
  ),
  'limits.tailHoleToEndGrain': over(tailTop, across(64.2, 86, 57, 44, 50)),
  'limits.beyondLastFret': over(boardSide, across(59, 74, 14, 23, 24)),
  'limits.underNeck': over(long, upright(38, 50, 54)),
  'limits.partsApart': over(
    body(rect(2, 10, 92, 6)),
    metal(rect(18, 16, 26, 30), rect(58, 16, 20, 22)),
    across(44, 58, 28),
  ),
  'limits.woodForNut': over(
    face,
    metal(rect(30, 40, 36, 14), rect(42, 12, 12, 28), rect(34, 18, 28, 6)),
    upright(24, 40, 78),
  ),
  'limits.shaftInKnob': over(
    body(rect(2, 40, 92, 8)),
    metal(rect(45, 21, 6, 27)),
    body(knob),
    upright(21, 30, 78, 51, 64),
  ),
  'limits.knobOffFace': over(
    body(rect(2, 44, 92, 8)),
    metal(rect(45, 16, 6, 28), rect(38, 38, 20, 6)),
    body(knob),
    upright(30, 44, 76, 64),
  ),
  'limits.woodUnderRecess': over(face, hole(rect(28, 24, 40, 7)), upright(31, 40, 48)),
  'limits.rosetteWeb': over(
    body(rect(2, 4, 92, 56)),
    hole(...[18, 48, 78].flatMap((x) => [18, 46].map((y) => circle(x, y, 8)))),
    across(26, 40, 46),
  ),
  'limits.coversApart': over(
    body(rect(2, 4, 92, 56)),
    metal(circle(26, 32, 15), rect(58, 14, 26, 36, 4)),
    across(41, 58, 32),
  ),
  'limits.screwHold': over(edgeOn, upright(22, 54, 78, 60, 48)),
  'limits.woodBesideScrew': over(edgeOn, across(36, 46, 42)),
  'limits.groundHoleClear': over(
    wallSeen,
    hole(...[30, 40, 50].map((x) => circle(x, 30, 2)), circle(70, 30, 4)),
    across(52, 66, 30),
  ),
  'limits.stringToPost': over(
    body(rect(2, 6, 92, 52)),
    metal(circle(30, 22, 7), circle(70, 22, 7)),
    line(way(30, 29, 94, 42)),
    stretch(68.6, 28.9, 67, 36.5),
  ),
  'limits.knobsApart': over(
    body(rect(2, 34, 92, 28)),
    metal(rect(23, 22, 4, 20), rect(69, 22, 4, 20), rect(12, 6, 26, 18, 6), rect(58, 6, 26, 18, 6)),
    across(38, 58, 15),
  ),
  'limits.knobToHead': over(tuner, upright(19, 26, 70, 54, 70)),
  'limits.tunersApart': over(
    body(rect(2, 10, 92, 52)),
    metal(rect(10, 10, 30, 30), rect(56, 10, 30, 30), circle(25, 28, 5), circle(71, 28, 5)),
    across(40, 56, 25),
  ),
  'limits.woodInHead': over(
    body(rect(2, 8, 92, 50)),
    hole(circle(28, 30, 9), circle(66, 30, 9)),
    across(37, 57, 30),
    upright(8, 21, 28),
  ),
  'limits.scarfGlued': over(headTilted, stretch(68, 16, 40, 30)),
  'limits.blankSpare': over(
    body(rect(6, 24, 84, 18)),
    area(rect(6, 24, 6, 18), rect(84, 24, 6, 18)),
    dash(way(12, 18, 12, 48), way(84, 18, 84, 48)),
  ),
  'limits.firstPost': FIRST_POST,
  'limits.firstPostLeast': FIRST_POST,
  'limits.postsApart': over(head(), across(30, 54, 7, 23)),
  'limits.rimShare': over(
    face,
    hole(poly(24, 24, 72, 24, 72, 31, 62, 31, 62, 40, 34, 40, 34, 31, 24, 31)),
    upright(24, 31, 82, 72),
    upright(24, 40, 10),
  ),
  'limits.openingToInside': over(
    planHidden,
    dash(rect(56, 19, 8, 30)),
    hole(circle(36, 34, 7)),
    across(43, 56, 34),
  ),
  'limits.blockTouches': over(
    body(rect(2, 12, 92, 14), rect(2, 54, 92, 6), rect(30, 36, 36, 18)),
    upright(26, 36, 78, 66, 66),
  ),
  'limits.lidClear': over(
    body(rect(2, 30, 30, 32)),
    body(poly(...turned(96, 40, 14, 42, 34, 94, 34, 94, 42, 42, 42))),
    across(32, 46, 20, 30),
  ),
  'limits.rimLedge': over(
    face,
    hole(poly(22, 24, 74, 24, 74, 31, 62, 31, 62, 40, 34, 40, 34, 31, 22, 31)),
    across(22, 34, 14, 24, 31),
  ),
  'limits.sideAngleAtSaddle': over(
    body(rect(2, 4, 92, 56)),
    metal(rect(38, 10, 4, 44)),
    line(way(2, 26, 40, 26, 92, 44)),
    dash(way(40, 26, 92, 26)),
    angle(40, 26, 36, 0, 19),
  ),
  'limits.sideAngleAtNut': over(
    body(rect(2, 4, 92, 56)),
    body(rect(56, 10, 4, 44)),
    metal(circle(12, 48, 6)),
    line(way(94, 26, 58, 26, 14, 42)),
    dash(way(58, 26, 6, 26)),
    angle(58, 26, 36, 180, 160),
  ),
  'limits.outOfSquare': over(
    body(rect(0, 27, 12, 10), poly(12, 12, 82, 20, 82, 58, 12, 50)),
    dash(way(12, 12, 90, 12)),
    upright(12, 20, 89, 82),
  ),
  'limits.boxTwist': over(wallsAlone, FARTHEST, upright(10, 19, 92.9, 88)),
  'limits.neckBow': over(
    dash(way(8, 24, 70, 24)),
    body(rect(66, 18, 28, 42)),
    body('M6 24A100 100 0 0 0 70 24L70 36A100 100 0 0 1 6 36Z'),
    upright(24, 29.2, 38),
  ),
  'limits.nutRise': over(bowed(10), upright(20, 30, 4.5, 8)),
  'limits.actionChange': over(action(true), upright(18.7, 27.2, 56)),
  'limits.headRoot': over(
    body(poly(8, 28, 54, 28, 70, 20, 96, 20, 96, 40, 8, 40)),
    body(rect(70, 13, 4, 7)),
    upright(28, 40, 54),
  ),
  'limits.breakAngleAtSaddle': bent,
  'limits.breakAngleMost': bent,
  'limits.breakAngleAtNut': over(nutSide, dash(way(2, 17.5, 40, 17.8)), angle(42, 18, 36, 180, 164)),
  'limits.lidSag': over(
    body(rect(6, 24, 6, 38), rect(84, 24, 6, 38)),
    dash(way(6, 24, 90, 24)),
    body('M6 24A140 140 0 0 0 90 24L90 30A140 140 0 0 1 6 30Z'),
    body(rect(45, 16, 6, 14)),
    arrow(48, 2, 48, 14),
    upright(24, 30.4, 66),
  ),
  'limits.saddleLeast': over(saddleSide, upright(20, 46, 28, 43, 28)),
  'limits.saddleMost': over(saddleSide, upright(20, 46, 28, 43, 28)),
  'limits.actionOff': over(action(false), dash(way(4, 30, 96, 25)), upright(22.7, 27.2, 56)),
  'limits.setbackOff': over(
    body(rect(2, 14, 92, 46)),
    line(...[24, 32, 40, 48].map((y) => way(2, y, 94, y))),
    dash(way(42, 18, 42, 58)),
    mark(way(54, 18, 54, 58)),
    across(42, 54, 8, 18),
  ),
  'limits.balanceOff': over(wholeSide, body(poly(56, 45, 64, 60, 48, 60)), across(40, 56, 12, 21, 45)),
}
