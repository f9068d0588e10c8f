/** Drawings of the rule, of cutting and its stock, of balance, of wires, and of what is measured at the end. */
import {
  across,
  area,
  body,
  circle,
  type Drawing,
  dash,
  hole,
  lead,
  line,
  mark,
  metal,
  over,
  piece,
  rect,
  towards,
  upright,
  way,
} from './pen.ts'
import { end, long, neckSide, plan, planOpen, stock, wholeSide } from './views.ts'

/** A rule laid along: longer lines where the whole units stand. */
const rule = over(
  body(rect(2, 24, 92, 24)),
  line(...Array.from({ length: 15 }, (_, i) => way(8 + i * 5.7, 24, 8 + i * 5.7, i % 5 === 0 ? 38 : 31))),
)

const kerf = over(
  body(rect(2, 26, 42, 20), rect(52, 26, 42, 20)),
  dash(way(48, 2, 48, 60)),
  area(rect(44, 26, 8, 20)),
)

/** A square corner of an opening, cut by a round tool. */
const corner = (cut: string, x: number, y: number, to: number) =>
  over(
    body(rect(4, 4, 88, 56)),
    hole(`M4 24L${x} ${y}${cut}64 ${to}L64 60L4 60Z`),
    mark(`M${x} ${y}${cut}64 ${to}`),
  )

const bridge = over(body(rect(2, 6, 92, 20), rect(2, 38, 92, 20)), area(rect(40, 26, 16, 12)))

const part = rect(30, 20, 36, 24)

export const shop: Readonly<Record<string, Drawing>> = {
  'rule.graduation': over(rule, across(59.3, 65, 14, 24)),
  'cutting.kerf': over(kerf, across(44, 52, 16, 26)),
  'cutting.kerfLid': over(end, area(rect(45, 12, 5, 6)), across(45, 50, 5, 12)),
  'cutting.kerfBase': over(end, area(rect(45, 48, 5, 6)), across(45, 50, 60, 54)),
  'cutting.kerfWalls': over(planOpen, area(rect(52, 14, 5, 5)), across(52, 57, 7, 14)),
  'cutting.kerfNeck': over(neckSide, area(rect(46, 30, 5, 14)), across(46, 51, 18, 30)),
  'cutting.kerfBoard': over(
    body(rect(2, 34, 92, 18), rect(10, 26, 76, 8)),
    metal(...[24, 36, 62, 74].map((x) => rect(x, 24.5, 2, 5))),
    area(rect(46, 26, 5, 8)),
    across(46, 51, 16, 26),
  ),
  'cutting.cutter': over(
    body(rect(2, 36, 92, 16)),
    hole(rect(38, 36, 20, 12)),
    metal(rect(38, 18, 20, 30), rect(42, 10, 12, 8)),
    across(38, 58, 5, 18),
  ),
  'cutting.relief': {
    cases: {
      none: corner('A14 14 0 0 1 ', 50, 24, 38),
      'dog-bone': corner('A9 9 0 1 1 ', 51.3, 24, 36.7),
      T: corner('A9 9 0 0 1 ', 64, 24, 42),
    },
  },
  'cutting.slots': {
    cases: {
      'sawn by hand': over(
        body(rect(4, 18, 88, 28)),
        mark(way(26, 18, 26, 46), way(50, 18, 50, 46), way(72, 18, 72, 46)),
      ),
      'cut by the machine': over(
        body(rect(4, 18, 88, 28)),
        area(rect(24, 18, 4, 28), rect(48, 18, 4, 28), rect(70, 18, 4, 28)),
      ),
    },
  },
  'cutting.web': over(
    body(rect(4, 6, 88, 52)),
    hole(circle(28, 38, 14), rect(54, 22, 26, 30)),
    across(42, 54, 14, 38, 22),
  ),
  'cutting.tabs': over(
    body(rect(8, 6, 80, 52)),
    hole(rect(26, 16, 44, 32)),
    piece(part),
    area(rect(44, 16, 8, 4), rect(44, 44, 8, 4), rect(26, 28, 4, 8), rect(66, 28, 4, 8)),
  ),
  'cutting.tabWidth': over(bridge, across(40, 56, 46, 38)),
  'cutting.tabHeight': over(
    body(rect(2, 22, 38, 24), rect(56, 22, 38, 24)),
    area(rect(40, 36, 16, 10)),
    upright(36, 46, 76, 56),
  ),
  'cutting.sheetLength': over(stock, across(12, 86, 6, 12)),
  'cutting.sheetWidth': over(stock, upright(12, 54, 5, 12)),
  'cutting.sheetMargin': over(stock, across(12, 19, 60, 54, 47)),
  'cutting.sheetSpacing': over(stock, across(53, 60, 6, 19)),
  'cutting.sheetGrain': {
    cases: {
      'along the sheet': over(
        body(rect(12, 12, 74, 42)),
        line(...[17, 23, 29, 35, 41, 47].map((y) => way(14, y, 84, y))),
        area(rect(20, 20, 42, 10), rect(20, 37, 54, 10)),
      ),
      'does not matter': over(body(rect(12, 12, 74, 42)), area(rect(20, 20, 42, 10), rect(66, 18, 10, 32))),
    },
  },
  'balance.lapAt': over(
    wholeSide,
    body(circle(68, 53.5, 8.5)),
    towards(40, 12, 68, 12),
    lead(40, 21, 40, 8),
    lead(68, 45, 68, 12),
  ),
  'balance.strapAt': over(
    wholeSide,
    metal(circle(56, 33, 2.6)),
    mark('M56 33A40 40 0 0 0 30 58'),
    towards(40, 12, 56, 12),
    lead(40, 21, 40, 8),
    lead(56, 33, 56, 12),
  ),
  'balance.ballastFromTail': over(
    long,
    metal(rect(44, 41, 12, 9)),
    towards(71, 59, 50, 59),
    lead(71, 50, 71, 63.5),
    lead(50, 45, 50, 59),
  ),
  'wiring.slack': over(
    metal(circle(10, 40, 4), circle(86, 40, 4)),
    line(way(14, 40, 30, 40), way(66, 40, 82, 40)),
    mark('M30 40A9 9 0 0 0 39 31A9 9 0 0 1 57 31A9 9 0 0 0 66 40'),
  ),
  'record.built.built': over(
    plan,
    mark(rect(14, 2, 72, 8), ...Array.from({ length: 8 }, (_, i) => way(22 + i * 8, 10, 22 + i * 8, 6))),
  ),
}
