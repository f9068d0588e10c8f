/** What is measured on, drawn plainly: head and neck left, tail right, treble above; in sections the lid above. */
import {
  body,
  circle,
  dash,
  gap,
  hole,
  type Ink,
  line,
  metal,
  over,
  piece,
  poly,
  rect,
  turned,
  way,
} from './pen.ts'

const FROM_ABOVE: Ink = { plan: true }

/** The box from above: 72 by 40, from (14, 14) to (86, 54), its centreline at 34; the neck comes in from the left. */
export const plan: Ink = over(
  FROM_ABOVE,
  body(rect(0, 29, 14, 10), rect(14, 14, 72, 40)),
  dash(way(0, 34, 96, 34)),
)

/** The same with the lid off; its walls are 5 thick. */
export const planOpen: Ink = over(plan, hole(rect(19, 19, 62, 30)))

/** A lid with the inside of the walls below it. */
export const planHidden: Ink = over(plan, dash(rect(19, 19, 62, 30)))

/** A box out of square, as surveyed. */
export const surveyed: Ink = over(FROM_ABOVE, body(rect(0, 28, 15, 10), poly(14, 15, 84, 12, 87, 51, 16, 54)))

/** The walls alone, seen from the bass side (a left-handed one's from its treble side) and a little from above: the four upright corners can be told apart. */
export const wallsAlone: Ink = over(
  body(poly(2, 20.2, 16, 20.2, 22, 15.8, 8, 15.8)),
  body(poly(8, 26, 66, 26, 66, 57, 8, 57), poly(66, 26, 88, 10, 88, 41, 66, 57)),
  body(`${poly(8, 26, 66, 26, 88, 10, 30, 10)}`),
  hole(poly(15, 24, 65, 24, 81, 12, 31, 12)),
  dash(way(30, 10, 30, 41, 88, 41), way(30, 41, 8, 57)),
)

/** The box cut across: from (16, 12) to (80, 54); walls, lid and base are 6 thick. */
export const end: Ink = body(
  rect(16, 12, 64, 6),
  rect(16, 18, 6, 30),
  rect(74, 18, 6, 30),
  rect(16, 48, 64, 6),
)

/** The lid let in between the walls, with this much play on each side. */
export const endLetIn = (play = 0.7): Ink =>
  body(rect(22 + play, 12, 52 - 2 * play, 6), rect(16, 12, 6, 36), rect(74, 12, 6, 36), rect(16, 48, 64, 6))

/** The box cut along its middle, the neck running through and lying under the lid; its top stands over the lid. */
export const long: Ink = over(
  body(rect(26, 50, 50, 5), rect(26, 32, 5, 18), rect(71, 32, 5, 18)),
  body(poly(0, 18, 25, 18, 25, 28, 77, 28, 77, 18, 92, 18, 92, 38, 0, 38)),
  body(rect(26, 23, 50, 5)),
)

/** The same with a neck that ends inside, on a block. */
export const longBlock: Ink = over(
  body(rect(26, 50, 54, 5), rect(26, 32, 5, 18), rect(75, 28, 5, 22), rect(31, 38, 16, 12)),
  body(poly(0, 18, 25, 18, 25, 28, 56, 28, 56, 38, 0, 38)),
  body(rect(26, 23, 54, 5)),
)

/** Where neck and lid meet, cut along the middle: the lid lies in the neck's notch, this far from its shoulder. */
export const shoulder = (gap: number): Ink =>
  over(
    body(rect(32, 52, 12, 12)),
    body(poly(0, 18, 32 - gap, 18, 32 - gap, 40, 96, 40, 96, 54, 0, 54)),
    body(rect(32, 28, 64, 12)),
  )

/** A stick as bought, seen from a corner: 64 long, its end 14 tall, its width going back. */
export const blank: Ink = body(
  rect(12, 32, 64, 14),
  poly(12, 32, 26, 20, 90, 20, 76, 32),
  poly(76, 32, 90, 20, 90, 34, 76, 46),
)

/** A neck cut across. */
export const neckAcross: Ink = body('M22 16L74 16L74 28A26 26 0 0 1 22 28Z')

/** The neck from the side: its top at 30, the front edge of the nut at 15. */
export const neckSide: Ink = over(body(rect(2, 30, 92, 14)), body(rect(12, 22, 3, 8)))

/** The same with a board from the nut to 74, its last fret at 58. */
export const boardSide: Ink = over(
  neckSide,
  body(rect(15, 24, 59, 6)),
  metal(rect(32, 22.4, 2, 4), rect(46, 22.4, 2, 4), rect(57, 22.4, 2, 4)),
)

/** The neck from above, narrower at the nut (left) than at the box (right). */
export const neckTop: Ink = over(
  body(rect(78, 6, 18, 52)),
  body(poly(0, 24, 14, 26, 84, 20, 84, 44, 14, 38, 0, 40)),
  body(rect(11, 25.5, 3, 13)),
  line(way(32, 24.5, 32, 39.5), way(48, 23.2, 48, 40.8), way(62, 22, 62, 42)),
)

/** The whole instrument from above: nut at 14, octave fret at 46, saddle at 78. */
export const whole: Ink = over(
  body(rect(46, 14, 46, 40), rect(1, 27, 12, 14), rect(12, 30, 46, 8)),
  line(
    way(46, 30, 46, 38),
    way(24, 30, 24, 38),
    way(32, 30, 32, 38),
    way(39, 30, 39, 38),
    way(52, 30, 52, 38),
  ),
  metal(rect(12, 29, 2, 10), rect(77, 26, 2, 16)),
  line(way(14, 32, 90, 30), way(14, 34, 90, 34), way(14, 36, 90, 38)),
)

/** The whole instrument from the side. */
export const wholeSide: Ink = over(
  body(poly(2, 26, 12, 21, 46, 21, 46, 29, 2, 32)),
  body(rect(40, 21, 52, 24)),
  metal(rect(76, 17, 2, 4)),
)

const headOutline = (narrow: number) =>
  poly(6, 14 + narrow, 58, 14, 66, 22, 96, 22, 96, 46, 66, 46, 58, 54, 6, 54 - narrow)

/** The head from above: the front edge of the nut at 76; posts of the bass row (below) at 54 and 30, treble row moved back. */
export const head = (back = 0): Ink =>
  over(
    FROM_ABOVE,
    body(headOutline(0)),
    body(rect(72, 21, 4, 26)),
    metal(circle(54 - back, 23, 3), circle(30 - back, 23, 3), circle(54, 45, 3), circle(30, 45, 3)),
  )

/** The same where each post stands farther in than the one before it. */
export const headStepped: Ink = over(
  body(headOutline(11)),
  body(rect(72, 21, 4, 26)),
  metal(circle(54, 22, 3), circle(30, 29, 3), circle(54, 46, 3), circle(30, 39, 3)),
)

/** A straight head from the side: its face at 28, its slope from 54 to the back of the nut at 70. */
export const headSide: Ink = over(
  body(poly(8, 28, 54, 28, 70, 20, 96, 20, 96, 40, 8, 40)),
  body(rect(70, 13, 4, 7)),
  metal(rect(20, 20, 4, 24), rect(38, 20, 4, 24)),
)

/** A head lower by a step: its face at 30. */
export const headStep: Ink = over(
  body(poly(8, 30, 68, 30, 68, 18, 96, 18, 96, 44, 8, 44)),
  body(rect(70, 11, 4, 7)),
  metal(rect(20, 22, 4, 26), rect(38, 22, 4, 26)),
)

/** A tilted head, glued on along a slope; the tilt is drawn at 15 degrees about (68, 16). */
export const headTilted: Ink = over(
  body(poly(68, 16, 96, 16, 96, 30, 40, 30)),
  body(poly(68, 16, ...turned(68, 16, -15, 4, 16, 4, 28), 40, 30)),
  body(rect(70, 9, 4, 7)),
)

/** The head cut across at a post: its face at 24, its back at 44; the post hole is 16 wide. */
export const postHole: Ink = over(body(rect(8, 24, 80, 20)), hole(rect(40, 24, 16, 20)))

/** The same with the post in it and a string that winds at 13. */
export const post: Ink = over(
  postHole,
  metal(poly(42, 8, 54, 8, 54, 10, 53, 13, 54, 16, 54, 52, 42, 52, 42, 16, 43, 13, 42, 10)),
  line(way(53, 12, 96, 18), way(43, 13, 53, 14)),
)

/** The front bored wider for a bushing: 26 wide, 8 deep. */
export const bushing: Ink = over(
  body(rect(8, 24, 80, 20)),
  hole(poly(35, 24, 61, 24, 61, 32, 56, 32, 56, 44, 40, 44, 40, 32, 35, 32)),
)

/** A tuner from behind: the edge of the head at 26, the post at (48, 42), plate to 54, knob from 4 to 19 outside. */
export const tuner: Ink = over(
  body(rect(0, 26, 96, 38)),
  metal(rect(46.5, 18, 3, 24), rect(34, 26, 28, 28), rect(40, 4, 16, 15, 5)),
  metal(circle(48, 42, 4)),
  gap(circle(38.5, 50, 1.7), circle(57.5, 50, 1.7)),
)

/** Board and neck cut along: the board's top at 28; a slot from 44 to 50, 11 deep. */
export const slotCut: Ink = over(body(rect(0, 28, 96, 18), rect(0, 46, 96, 16)), hole(rect(44, 28, 6, 12)))

/** The same with the fret in its slot: crown at 21, over a board at 30. */
export const fretSeated: Ink = over(
  body(rect(0, 30, 96, 18), rect(0, 48, 96, 14)),
  metal('M36 30A12.5 12.5 0 0 1 60 30L50 30L50 40L46 40L46 30Z'),
)

/** The nut from the side: from 32 to its front edge at 42, strings at 18, the board's top at 30. */
export const nutSide: Ink = over(
  body(rect(0, 40, 96, 20), rect(42, 30, 54, 10)),
  body(poly(32, 21, 42, 18, 42, 40, 32, 40)),
  metal(rect(74, 26, 4, 8)),
  line(way(0, 30, 32, 21, 42, 18, 96, 17)),
)

/** Strings from above between nut (front edge 15) and saddle (82). */
export const strings: Ink = over(
  body(rect(12, 20, 3, 28), rect(80, 10, 4, 48)),
  line(
    ...[0, 1, 2, 3].map((i) =>
      way(4, 26 + (16 / 3) * i, 15, 26 + (16 / 3) * i, 82, 16 + 12 * i, 94, 16 + 12 * i),
    ),
  ),
)

/** The saddle from the side: its foot from 38 to 54 on the lid at 46, strings over it at 20. */
export const saddleSide: Ink = over(
  body(rect(0, 46, 96, 8)),
  body(poly(38, 46, 43, 20, 49, 20, 54, 46)),
  line(way(0, 17, 46, 19.4, 96, 34)),
)

/** The saddle from above, across the strings, on the lid: from 45 to 51, 12 to 52. */
export const saddleTop: Ink = over(
  body(rect(2, 4, 92, 56)),
  body(rect(45, 12, 6, 40)),
  line(...[17, 27, 37, 47].map((y) => way(2, y, 94, y))),
)

/** A lid with a strip glued under it, cut across the strip: 41 to 55, down to 42. */
export const braced: Ink = body(rect(6, 14, 84, 9), rect(41, 23, 14, 19))

/** A face cut through: its outer side at 24, its inside at 40. */
export const face: Ink = body(rect(2, 24, 92, 16))

/** A face seen from outside. */
export const faceSeen: Ink = body(rect(6, 6, 84, 52))

/** The wall at the hinge cut across, its outer side at 20; the lid's outer face at 16. The pin is at (40, 40). */
export const hinge: Ink = over(
  body(rect(20, 28, 13, 36), rect(20, 16, 76, 12)),
  metal(rect(33, 37.5, 7, 5), rect(37.5, 28, 5, 12)),
  metal(circle(40, 40, 4)),
)

/** A sheet of stock with parts on it. */
export const stock: Ink = over(
  hole(rect(12, 12, 74, 42)),
  piece(rect(19, 19, 34, 28), rect(60, 19, 19, 12), rect(60, 38, 19, 9)),
)

/** A wall seen from outside, lid side up: 80 by 28 from (8, 18), its middle at 48. */
export const wallSeen: Ink = over(body(rect(8, 18, 80, 28)), dash(way(48, 10, 48, 54)))

/** Strings that end in the tail of the neck: the box ends at 40, the holes stand at 62. */
export const tailTop: Ink = over(
  body(rect(0, 6, 40, 52), rect(40, 14, 46, 36)),
  line(...[20, 28, 36, 44].map((y) => way(0, y, 62, y))),
  hole(...[20, 28, 36, 44].map((y) => circle(62, y, 2.2))),
)

/** The tail end cut along: lid at 16, wall to 50, the neck running through it to 84. */
export const tailSide: Ink = over(
  body(rect(0, 52, 50, 6), rect(43, 22, 7, 30)),
  body(poly(0, 22, 50, 22, 50, 16, 84, 16, 84, 38, 0, 38)),
  body(rect(0, 16, 49, 6)),
)

/** A side wall seen from outside, the neck standing out at the left. */
export const sideWall: Ink = over(body(rect(0, 20, 8, 9)), wallSeen)
