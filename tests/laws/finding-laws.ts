/** What holds between the parts of a finding: its measure, its limit, its grade, and the line that shows it. */
import {
  check,
  type Design,
  type Finding,
  type Layout,
  type Point,
  RULES,
  solve,
} from '../../geometry/index.ts'

/** Rules whose line on the drawing is the very dimension measured; lines of others only show where to look. */
export const DRAWN_AS_MEASURED: readonly string[] = [
  ...[
    'neck-left',
    'head-root',
    'saddle-tall',
    'saddle-low',
    'strings-apart-at-saddle',
    'strings-apart-at-nut',
  ],
  ...[
    'first-post',
    'strings-cross-at-head',
    'board-behind-last-fret',
    'saddle-to-tail-wall',
    'room-under-neck',
  ],
  ...['wall-under-slot', 'neck-before-box', 'room-under-hardware', 'balance-near-wall', 'head-drops'],
  ...['neck-block-height', 'string-inside-pickup', 'opening-to-wall', 'opening-to-edge', 'tail-hole-web'],
  ...['cover-on-face', 'scarf-glued', 'web-left', 'blank-length'],
]

/** Rules whose line is that only while the two are apart: where they run into each other it shows the place. */
export const DRAWN_AS_APART: readonly string[] = [
  ...['opening-to-neck', 'wall-beside-slot', 'saddle-to-opening', 'rosette-web', 'between-openings'],
  ...['lid-clears', 'opening-to-inside', 'artwork-kept', 'covers-apart'],
]

/** Rules about a thing whose line begins or ends on that thing, wherever else it goes. */
export const SHOWN_ON_THE_THING: readonly string[] = [
  ...['opening-to-edge', 'opening-to-neck', 'opening-to-wall', 'saddle-to-opening', 'between-openings'],
  ...['head-flush', 'knob-off-face', 'thread-through', 'rosette-web', 'recess-left', 'rim-depth'],
  ...['face-for-bushing', 'bore-wide', 'screw-point', 'screw-beside', 'screw-holds', 'rim-ledge'],
  ...['cover-on-face', 'shaft-in-knob', 'rosette-holes', 'opening-to-inside', 'artwork-kept', 'covers-apart'],
  'wiring-heard',
]

/** Rules that grade by more than the measure: two only tell, and a rosette of no hole at all is a stop as well as one of too many. */
export const GRADED_BY_MORE: readonly string[] = ['string-can-be-made', 'tuning-stated', 'rosette-holes']

const SAME = 1e-6

/** Where measure and limit are as good as the same, a rule may take it either way. */
export function gradesAgainstMeasure(findings: readonly Finding[]): string[] {
  const wants = new Map(RULES.map((rule) => [rule.name, rule.wants]))
  return findings.flatMap(({ key, rule, grade, measured, limit, margin }) => {
    if (measured === null || limit === null || margin === null) return []
    const kept = wants.get(rule) === 'least' ? measured - limit : limit - measured
    if (Math.abs(kept - margin) > SAME) return [`${key} has ${kept} to spare and says ${margin}`]
    if (Math.abs(kept) <= SAME || GRADED_BY_MORE.includes(rule)) return []
    return (grade === 'clear') === kept > 0 ? [] : [`${key} is ${grade} with ${kept} to spare`]
  })
}

/** Lines on the drawing that are not as long as the measure that stands beside them. */
export function linesAgainstMeasure(findings: readonly Finding[]): string[] {
  return findings.flatMap(({ key, rule, measured, where: { from, to } }) => {
    if (measured === null) return []
    if (!DRAWN_AS_MEASURED.includes(rule) && !(measured > 0 && DRAWN_AS_APART.includes(rule))) return []
    const long = Math.hypot(to.x - from.x, to.y - from.y)
    return Math.abs(long - Math.abs(measured)) < SAME
      ? []
      : [`${key} measures ${measured}, drawn over ${long}`]
  })
}

/** Lines that should begin or end on the thing they are about, and do not. Lines in a section show no place on a face. */
export function linesOffTheirThings({ placed, panels }: Layout, findings: readonly Finding[]): string[] {
  return findings
    .filter(({ rule }) => SHOWN_ON_THE_THING.includes(rule))
    .flatMap(({ key, about, where: { view, from, to } }) =>
      placed.flatMap(({ thing, face, bounds }) => {
        const plan = view === 'plan' && (face === 'lid' || face === 'base')
        if (!about.includes(thing.id) || !(view === face || plan)) return []
        const along = plan ? panels[face].originX : 0
        const isOn = ({ x, y }: Point) =>
          x - along >= bounds.minX - SAME &&
          x - along <= bounds.maxX + SAME &&
          y >= bounds.minY - SAME &&
          y <= bounds.maxY + SAME
        return isOn(from) || isOn(to) ? [] : [`${key} is shown away from ${thing.id}`]
      }),
    )
}

export const FINDING_LAWS = [
  {
    name: 'a finding is clear exactly where its measure keeps its limit',
    wrong: (design: Design) => gradesAgainstMeasure(check(solve(design))),
  },
  {
    name: 'the line that shows a measure is as long as it',
    wrong: (design: Design) => linesAgainstMeasure(check(solve(design))),
  },
  {
    name: 'the line that shows a measure of a thing lies on it',
    wrong: (design: Design) => {
      const layout = solve(design)
      return linesOffTheirThings(layout, check(layout))
    },
  },
] as const
