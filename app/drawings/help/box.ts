/** Drawings of the found box: its sizes, its lid, its survey, what stands in it and what is on it. */
import {
  across,
  angle,
  area,
  arrow,
  body,
  circle,
  type Drawing,
  dash,
  dot,
  hole,
  type Ink,
  lead,
  line,
  mark,
  metal,
  oval,
  over,
  piece,
  poly,
  radius,
  rect,
  stretch,
  towards,
  turned,
  upright,
  way,
} from './pen.ts'
import {
  end,
  endLetIn,
  hinge,
  plan,
  planOpen,
  shoulder,
  sideWall,
  surveyed,
  wallSeen,
  wallsAlone,
} from './views.ts'

const WALLS = {
  neckEnd: rect(14, 14, 5, 40),
  tailEnd: rect(81, 14, 5, 40),
  bass: rect(14, 49, 72, 5),
  treble: rect(14, 14, 72, 5),
} as const

/** An edge of the box, with something that goes over it. */
const OUT = {
  'bass wall': arrow(44, 48, 44, 62),
  'treble wall': arrow(44, 20, 44, 2),
  'neck end': arrow(26, 24, 2, 24),
  'tail end': arrow(72, 24, 94, 24),
} as const

const HINGED = {
  'bass wall': area(rect(26, 51, 12, 6), rect(62, 51, 12, 6)),
  'treble wall': area(rect(26, 11, 12, 6), rect(62, 11, 12, 6)),
  'neck end': area(rect(11, 18, 6, 8), rect(11, 42, 6, 8)),
  'tail end': area(rect(83, 18, 6, 9), rect(83, 41, 6, 9)),
} as const

const each = <K extends string>(of: Readonly<Record<K, Ink>>, draw: (one: Ink) => Ink): Drawing => ({
  cases: Object.fromEntries(Object.entries<Ink>(of).map(([name, one]) => [name, draw(one)])),
})

const grainAlong = line(...[19, 24, 29, 39, 44, 49].map((y) => way(18, y, 82, y)))
const grainAcross = line(...[22, 31, 40, 49, 58, 67, 76].map((x) => way(x, 17, x, 51)))

/** A lid swung open about its pin, over the walls it leaves. */
const swung = (degrees: number) =>
  over(
    body(rect(32, 46, 4, 12), rect(72, 46, 4, 12), rect(32, 58, 44, 4)),
    dash(rect(32, 41, 44, 5)),
    body(poly(...turned(32, 46, degrees, 32, 41, 76, 41, 76, 46, 32, 46))),
    metal(circle(32, 46, 2)),
  )

const block = rect(44, 20, 20, 9)
const withBlock = over(planOpen, piece(block))

/** Walls, base and lid cut across, with a piece where it is fixed. */
const fixed = (where: string) => over(end, area(where))

const onWall = over(body(rect(56, 28, 16, 10)), dot(64, 33))
const label = rect(40, 24, 26, 14)

const HEIGHTS = {
  nearNeck: over(wallsAlone, upright(26, 57, 8)),
  farNeck: over(wallsAlone, upright(10, 41, 30)),
  nearTail: over(wallsAlone, upright(26, 57, 66)),
  farTail: over(wallsAlone, upright(10, 41, 92, 88)),
} as const

export const box: Readonly<Record<string, Drawing>> = {
  'box.length': over(plan, across(14, 86, 7, 14)),
  'box.width': over(plan, upright(14, 54, 92, 86)),
  'box.depth': over(end, upright(12, 54, 8, 16)),
  'box.cornerRadius': over(
    body('M24 64L24 36A24 24 0 0 1 48 12L96 12L96 64Z'),
    line('M34 64L34 36A14 14 0 0 1 48 22L96 22'),
    radius(48, 36, 24, 225),
  ),
  'box.walls': over(planOpen, area(...Object.values(WALLS)), across(14, 19, 7, 14)),
  'box.walls.neckEnd': over(planOpen, area(WALLS.neckEnd), across(14, 19, 7, 14)),
  'box.walls.tailEnd': over(planOpen, area(WALLS.tailEnd), across(81, 86, 7, 14)),
  'box.walls.bass': over(planOpen, area(WALLS.bass), upright(49, 54, 92, 86)),
  'box.walls.treble': over(planOpen, area(WALLS.treble), upright(14, 19, 92, 86)),
  'box.lid.thickness': over(end, area(rect(16, 12, 64, 6)), upright(12, 18, 88, 80)),
  'box.lid.kind': {
    cases: {
      'lift-off': over(
        body(rect(16, 24, 6, 30), rect(74, 24, 6, 30), rect(16, 54, 64, 6)),
        area(rect(16, 11, 64, 6)),
        arrow(48, 11, 48, 1),
      ),
      glued: over(
        end,
        mark(way(16, 18, 22, 18), way(74, 18, 80, 18)),
        arrow(8, 18, 15, 18),
        arrow(88, 18, 81, 18),
      ),
      hinged: over(swung(-50), angle(32, 46, 38, -8, -46, 'one')),
      sliding: over(
        body(rect(16, 12, 6, 36), rect(74, 20, 6, 28), rect(16, 48, 64, 6)),
        area(rect(34, 14, 54, 5)),
        line(way(22, 14, 22, 19)),
        arrow(66, 7, 92, 7),
      ),
    },
  },
  'box.lid.fit': {
    cases: {
      'on the walls': over(end, area(rect(16, 12, 64, 6))),
      'between the walls': over(endLetIn(), area(rect(22.7, 12, 50.6, 6))),
    },
  },
  'box.lid.play': over(
    endLetIn(4),
    area(rect(22, 12, 4, 6), rect(70, 12, 4, 6)),
    across(22, 26, 6, 12),
    across(70, 74, 6, 12),
  ),
  'box.lid.hingeEdge': each(HINGED, (one) => over(plan, one)),
  'box.lid.hingeIn': over(hinge, towards(20, 56, 40, 56), lead(40, 40, 40, 60)),
  'box.lid.hingeDown': over(hinge, towards(64, 16, 64, 40), lead(40, 40, 68, 40)),
  'box.lid.opens': over(swung(-112), angle(32, 46, 30, 0, -112, 'one')),
  'box.lid.bevelAtHinge': over(
    body(rect(20, 38, 13, 26), poly(34, 18, 96, 18, 96, 36, 20, 36)),
    dash(way(20, 36, 20, 18, 34, 18)),
    metal(circle(17, 37, 3)),
    mark(way(34, 18, 20, 36)),
    across(20, 34, 9, 18),
  ),
  'box.lid.bevelOpposite': over(
    body(rect(63, 38, 13, 26), poly(0, 18, 76, 18, 62, 36, 0, 36)),
    dash(way(62, 36, 76, 36, 76, 18)),
    mark(way(76, 18, 62, 36)),
    across(62, 76, 50, 36),
  ),
  'box.lid.slidesTo': each(OUT, (one) => over(plan, one)),
  'box.lid.gap': over(shoulder(7), area(rect(25, 28, 7, 12)), across(25, 32, 10, 18, 28)),
  'box.lid.grain': {
    cases: { along: over(plan, grainAlong), across: over(plan, grainAcross), none: plan },
  },
  'box.base.thickness': over(end, area(rect(16, 48, 64, 6)), upright(48, 54, 88, 80)),
  'box.base.fit': {
    cases: {
      'under the walls': over(end, area(rect(16, 48, 64, 6))),
      'between the walls': over(
        body(rect(16, 12, 64, 6), rect(16, 18, 6, 36), rect(74, 18, 6, 36)),
        area(rect(22.7, 48, 50.6, 6)),
      ),
    },
  },
  'box.survey.treble': over(
    surveyed,
    stretch(13.7, 8, 83.7, 5),
    lead(14, 15, 13.7, 6),
    lead(84, 12, 83.7, 3),
  ),
  'box.survey.bass': over(
    surveyed,
    stretch(16.2, 60.5, 87.2, 57.5),
    lead(16, 54, 16.3, 63),
    lead(87, 51, 87.3, 60),
  ),
  'box.survey.neckEnd': over(
    surveyed,
    stretch(7, 15.3, 9, 54.3),
    lead(14, 15, 5, 15.4),
    lead(16, 54, 7, 54.4),
  ),
  'box.survey.tailEnd': over(
    surveyed,
    stretch(90, 11.8, 93, 50.8),
    lead(84, 12, 92, 11.7),
    lead(87, 51, 95, 50.6),
  ),
  'box.survey.diagonalFromTreble': over(surveyed, stretch(14, 15, 87, 51)),
  'box.survey.diagonalFromBass': over(surveyed, stretch(16, 54, 84, 12)),
  'box.survey.heightNeckBass': { ...HEIGHTS.nearNeck, left: HEIGHTS.farNeck },
  'box.survey.heightNeckTreble': { ...HEIGHTS.farNeck, left: HEIGHTS.nearNeck },
  'box.survey.heightTailTreble': { ...HEIGHTS.farTail, left: HEIGHTS.nearTail },
  'box.survey.heightTailBass': { ...HEIGHTS.nearTail, left: HEIGHTS.farTail },
  'box.inside.sort': {
    cases: {
      'corner block': over(planOpen, area(poly(19, 19, 29, 19, 19, 29), poly(81, 49, 71, 49, 81, 39))),
      'neck block': over(planOpen, area(rect(19, 25, 14, 18))),
      liner: over(planOpen, area(rect(19, 19, 62, 4), rect(19, 45, 62, 4))),
      batten: over(planOpen, area(rect(52, 19, 7, 30))),
      hinge: over(planOpen, area(rect(28, 14, 12, 8), rect(60, 14, 12, 8))),
      clasp: over(planOpen, area(rect(45, 47, 10, 7))),
    },
  },
  'box.inside.fixed': {
    cases: {
      'on the base': fixed(rect(40, 34, 16, 14)),
      'on the walls': fixed(rect(22, 24, 9, 12)),
      'under the lid': fixed(rect(40, 18, 16, 10)),
    },
  },
  'box.inside.along': over(
    withBlock,
    dot(54, 24.5),
    towards(14, 7, 54, 7),
    lead(14, 14, 14, 3),
    lead(54, 24.5, 54, 7),
  ),
  'box.inside.across': over(withBlock, dot(54, 24.5), towards(74, 34, 74, 24.5), lead(54, 24.5, 78, 24.5)),
  'box.inside.long': over(planOpen, area(block), across(44, 64, 40, 29)),
  'box.inside.wide': over(planOpen, area(block), upright(20, 29, 74, 64)),
  'box.inside.tall': over(end, area(rect(40, 28, 14, 20)), upright(28, 48, 64, 54)),
  'box.inside.below': over(end, body(rect(22, 31, 9, 10)), upright(18, 31, 40, 22, 31)),
  'artwork.shape': {
    cases: {
      rectangle: over(plan, area(label)),
      oval: over(plan, area(oval(53, 31, 14, 8))),
      drawn: over(plan, area(poly(40, 28, 48, 22, 56, 25, 66, 22, 63, 38, 50, 34, 43, 40))),
    },
  },
  'artwork.along': {
    cases: {
      'lid and base': over(
        plan,
        body(label),
        dot(53, 31),
        towards(14, 7, 53, 7),
        lead(14, 14, 14, 3),
        lead(53, 31, 53, 7),
      ),
      'side walls, towards the tail': over(sideWall, onWall, towards(48, 10, 64, 10), lead(64, 33, 64, 10)),
      'end walls, towards the treble': over(wallSeen, onWall, towards(48, 10, 64, 10), lead(64, 33, 64, 10)),
    },
  },
  'artwork.across': {
    cases: {
      'lid and base': over(
        plan,
        body(rect(40, 18, 26, 12)),
        dot(53, 24),
        towards(76, 34, 76, 24),
        lead(53, 24, 80, 24),
      ),
      walls: over(wallSeen, onWall, towards(80, 18, 80, 33), lead(64, 33, 84, 33)),
    },
  },
  'artwork.long': over(plan, area(label), across(40, 66, 44, 38)),
  'artwork.wide': over(plan, area(label), upright(24, 38, 74, 66)),
  'artwork.keep': over(
    plan,
    body(rect(34, 25, 20, 14)),
    dash(rect(25, 16, 38, 32, 9)),
    hole(circle(70, 32, 7)),
    across(54, 63, 7, 25, 32),
  ),
}
