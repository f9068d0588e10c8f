/**
 * Drawings of things on a face: the general ones, which serve every kind that has a field of that name. Those of one
 * kind alone are in `kinds.ts` and go before these.
 */
import {
  across,
  angle,
  area,
  body,
  circle,
  type Drawing,
  dash,
  diameter,
  dot,
  hole,
  lead,
  line,
  over,
  poly,
  radius,
  rect,
  towards,
  turned,
  upright,
  way,
} from './pen.ts'
import {
  behind,
  bored,
  button,
  countersunk,
  FACE,
  holed,
  mounted,
  opening,
  plateSeen,
  recess,
} from './thing-views.ts'
import { face, faceSeen, plan, sideWall, wallSeen } from './views.ts'

export const things: Readonly<Record<string, Drawing>> = {
  'things.*.face': FACE,
  'things.*.along': {
    cases: {
      'lid and base': over(
        plan,
        hole(circle(54, 30, 8)),
        dot(54, 30),
        towards(14, 7, 54, 7),
        lead(14, 14, 14, 3),
        lead(54, 30, 54, 7),
      ),
      'side walls, towards the tail': over(
        sideWall,
        hole(circle(68, 32, 7)),
        dot(68, 32),
        towards(48, 10, 68, 10),
        lead(68, 32, 68, 10),
      ),
      'end walls, towards the treble': over(
        wallSeen,
        hole(circle(68, 32, 7)),
        dot(68, 32),
        towards(48, 10, 68, 10),
        lead(68, 32, 68, 10),
      ),
    },
  },
  'things.*.across': {
    cases: {
      'lid and base': over(
        plan,
        hole(circle(54, 23, 6)),
        dot(54, 23),
        towards(76, 34, 76, 23),
        lead(54, 23, 80, 23),
      ),
      walls: over(
        wallSeen,
        hole(circle(62, 34, 7)),
        dot(62, 34),
        towards(80, 18, 80, 34),
        lead(62, 34, 84, 34),
      ),
    },
  },
  'things.*.turnDegrees': over(
    { plan: true },
    faceSeen,
    hole(poly(...turned(44, 36, -30, 24, 29, 64, 29, 64, 43, 24, 43))),
    dash(way(16, 36, 84, 36)),
    line(way(...turned(44, 36, -30, 44, 36, 82, 36))),
    angle(44, 36, 33, 0, -30, 'one'),
  ),
  'things.*.sizeAlong': over(opening, across(26, 70, 53, 47)),
  'things.*.sizeAcross': over(opening, upright(17, 47, 80, 70)),
  'things.*.cornerRadius': over(faceSeen, hole(rect(20, 12, 60, 40, 14)), radius(34, 26, 14, 225)),
  'things.*.diameter': over(faceSeen, hole(circle(48, 32, 20)), diameter(48, 32, 20)),
  'things.*.depth': over(recess, upright(24, 32, 80, 68)),
  'things.*.hole': over(holed, across(40, 56, 14, 24)),
  'things.*.height': over(face, body(rect(38, 40, 20, 16)), upright(40, 56, 70, 58)),
  'things.*.goes': {
    cases: { through: over(face, hole(rect(28, 24, 40, 16))), 'to a depth': recess },
  },
  'things.*.bore': { cases: bored },
  'things.*.boreDiameter': {
    cases: {
      'from inside': over(bored['from inside'], across(30, 66, 53, 42)),
      'from outside': over(bored['from outside'], across(30, 66, 12, 22)),
    },
  },
  'things.*.boreDepth': {
    cases: {
      'from inside': over(bored['from inside'], upright(31, 42, 80, 66)),
      'from outside': over(bored['from outside'], upright(22, 33, 80, 66)),
    },
  },
  'things.*.thread': over(mounted, upright(20, 40, 82, 54, 68)),
  'things.*.nut': over(
    mounted,
    area(rect(33, 29.5, 30, 2.5), rect(36, 24.5, 24, 5)),
    upright(24.5, 32, 80, 60, 63),
  ),
  'things.*.washer': over(mounted, area(rect(33, 29.5, 30, 2.5)), across(33, 63, 11, 30)),
  'things.*.backing': over(
    body(rect(2, 28, 92, 7)),
    area(rect(24, 35, 48, 7)),
    hole(rect(42, 28, 12, 14)),
    upright(35, 42, 82, 72),
  ),
  'things.*.bodyDepth': over(mounted, upright(40, 55, 80, 68)),
  'things.*.bodyDiameter': over(mounted, across(28, 68, 60.5, 55)),
  'things.*.bodyAlong': over(behind, across(30, 66, 52, 44)),
  'things.*.bodyAcross': over(behind, upright(20, 44, 76, 66)),
  'things.*.screwLength': over(countersunk, upright(22, 56, 84, 58, 48)),
  'things.*.span': over(plateSeen, upright(20, 44, 76, 48)),
  'things.*.tall': over(button, upright(5, 22, 76, 58, 60)),
}
