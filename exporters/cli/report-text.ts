/** A report for reading: tables in the builder's own unit. */
import {
  check,
  type Design,
  formatAngle,
  formatFine,
  formatLength,
  formatShare,
  solve,
} from '../../geometry/index.ts'
import { type Report, reportOf } from '../report.ts'
import { bodyRows } from './body-text.ts'
import { summaryOf } from './check.ts'
import { type Cell, table } from './table.ts'

/** The report of a design as text. Lengths are rounded to the builder's rule; the JSON is not. */
export function reportText(design: Design): string {
  const report = reportOf(design)
  const say = (mm: number) => formatLength(mm, design.units)
  const unit = design.units.display
  const sections: readonly (readonly [string, readonly string[]])[] = [
    ['Box and scale', boxAndScale(report, say)],
    ...survey(report, say, sayFine(design)),
    ['Frets, from the nut', frets(report, say)],
    ['Strings, from the bass', strings(report, say, sayFine(design))],
    ['Pull, by estimate', pull(report, sayFine(design))],
    ['Neck, from the nut', neck(report, say)],
    ['Saddle and string holes', saddleAndHoles(report, say)],
    ['Body, by estimate', table(['', ''], bodyRows(report, say)).slice(1)],
    ['On the faces, to the centre of each', things(report, say)],
    ['Parts', parts(report, say)],
    ['Findings', [`  ${summaryOf(check(solve(design)))}. "lidwright check" gives them in words.`]],
  ]
  const head = `${report.title}: ${report.hand === 'not stated' ? 'hand not stated' : `${report.hand}-handed`}, lengths in ${unit}`
  return [head, ...sections.flatMap(([title, lines]) => ['', title, ...lines])].join('\n')
}

type Say = (mm: number) => string

/** Gauges, bows and sags are too fine for a rule. */
const sayFine =
  ({ units }: Design): Say =>
  (mm) =>
    formatFine(mm, units)

function boxAndScale({ box, scale, neck }: Report, say: Say): string[] {
  return table(
    ['', ''],
    [
      ['Box, long × wide × deep', `${say(box.length)} × ${say(box.width)} × ${say(box.depth)}`],
      ['Neck-end face, from the nut', say(box.x0)],
      ['Tail-end face, from the nut', say(box.x1)],
      ['Scale length', say(scale.length)],
      ['Saddle line, from the nut', say(scale.saddleLine)],
      ['Blank needed', say(neck.needs.total)],
      ['Neck left at its thinnest', `${say(neck.thinnest.left)} (${neck.thinnest.of})`],
    ],
  ).slice(1)
}

/** Only of a box that was surveyed: what its readings come to, and how sure that is. */
function survey({ survey: it }: Report, say: Say, fine: Say): [string, readonly string[]][] {
  if (!it) return []
  if (!it.makesBox) return [['Survey', ['  The readings make no box. "lidwright check" says why.']]]
  const rows = it.distances.map(({ name, readings, mean, adjusted, standardError }) => [
    name,
    readings,
    mean === null ? 'not read' : fine(mean),
    fine(adjusted),
    fine(standardError),
  ])
  const corners = it.corners.map(({ name, fromNut, fromCentreline, angle, wallHeight }) => [
    name,
    say(fromNut),
    say(fromCentreline),
    formatAngle(angle, { decimals: 2 }),
    wallHeight === null ? '' : say(wallHeight),
  ])
  return [
    [
      'Survey',
      [
        ...table(['', 'readings', 'mean', 'adjusted', 'give or take'], rows),
        ...table(['corner', 'from the nut', 'from the centreline', 'angle', 'wall'], corners),
      ],
    ],
  ]
}

function frets({ frets: list, scale }: Report, say: Say): string[] {
  if (list.length === 0) return ['  none']
  const rows = list.map((fret) => [
    fret.number,
    fret.onRule.text,
    `${fret.onRule.error >= 0 ? '+' : '−'}${Math.abs(fret.onRule.error).toFixed(2)}`,
    say(fret.step),
    fret.cents.toFixed(1),
    say(fret.yTreble - fret.yBass),
    [fret.overBox ? 'over the box' : '', fret.onWood ? '' : 'no wood under it'].filter(Boolean).join(', '),
  ])
  const head = ['fret', 'from the nut', 'off by, mm', 'step', 'cents', 'across', '']
  return [...(scale.fretless ? ['  Marked, not slotted.'] : []), ...table(head, rows, 0)]
}

/** Gauges are sold in decimals, whatever the rule shows. */
function strings({ strings: list }: Report, say: Say, sayGauge: Say): string[] {
  const rows = list.map((string) => [
    string.number,
    sayGauge(string.gauge),
    say(string.yAtNut),
    say(string.yAtSaddle),
    formatAngle(string.sideAngleAtNut),
    formatAngle(string.sideAngleAtSaddle),
    string.tail ? string.tail.hole : 'none',
    string.post ? say(-string.post.fromNut) : 'none',
  ])
  return table(
    [
      'string',
      'gauge',
      'at the nut',
      'at the saddle',
      'turns at nut',
      'at saddle',
      'hole',
      'post behind nut',
    ],
    rows,
    0,
  )
}

const WHY_MISSING: Readonly<Record<string, string>> = {
  'no tuning': 'No tuning is stated, so nothing is reckoned.',
  'tuning too short': 'The tuning does not name a pitch for every string, so nothing is reckoned.',
  'a string cannot be made': 'One of the strings cannot be made as stated, so nothing is reckoned.',
}

/** Pitch, pull and what follows from it, string by string; then neck and lid. */
function pull(
  { strings: list, pull: all, neck: it, lid, saddle, frets: places }: Report,
  fine: Say,
): string[] {
  if (all.missing !== null || all.total === null) return [`  ${WHY_MISSING[all.missing ?? ''] ?? ''}`]
  const known = (value: number | null, show: (value: number) => string) =>
    value === null ? 'none' : show(value)
  const octaveFret = places.filter((fret) => fret.number > 0).findIndex((fret) => fret.cents === 1200)
  const octave = (cents: readonly (number | null)[]) => cents[octaveFret] ?? null
  const rows = list.map((string) => [
    string.number,
    string.pitch?.name ?? '',
    known(string.tension, (value) => `${value.toFixed(1)} N`),
    known(string.shareOfBreaking, (value) => formatShare(value)),
    string.feel ?? '',
    known(string.setback, fine),
    known(octave(string.centsAtFret), (value) => value.toFixed(1)),
    known(string.breakAngle, formatAngle),
    known(string.downForce, (value) => `${value.toFixed(1)} N`),
  ])
  const head = [
    'string',
    'pitch',
    'pull',
    'of breaking',
    'feels',
    'setback',
    'cents at octave',
    'bends',
    'presses',
  ]
  const facts: Cell[][] = [
    ['All strings pull', `${all.total.toFixed(0)} N`],
    ['Bow of the neck', known(it.bow, fine)],
    ['Rise of the nut, at most', known(it.nutRise, fine)],
    ['Weakest', it.weakest ? `${it.weakest.of}, ${formatShare(it.weakest.share)} of its strength` : 'none'],
    ['Saddle for the action wanted', fine(saddle.heightWanted)],
    ['Saddle presses', known(lid.downForce, (value) => `${value.toFixed(0)} N`)],
    ['Lid sags', lid.onNeck ? 'lies on the neck' : known(lid.sag, fine)],
  ]
  return [...table(head, rows, 0), ...table(['', ''], facts).slice(1)]
}

function neck({ neck: it }: Report, say: Say): string[] {
  const rows = it.stretches.map((one) => [one.of, say(one.x0), say(one.x1), say(one.left)])
  const slots = it.slots.map((slot) => [slot.face, say(slot.width), say(slot.depth), say(slot.wallLeftBelow)])
  return [
    ...table(['stretch', 'from', 'to', 'thick'], rows),
    ...table(['slot in', 'wide', 'deep', 'wall left below'], slots),
  ]
}

function saddleAndHoles({ saddle, tailHoles }: Report, say: Say): string[] {
  const rows = tailHoles.map((hole) => [
    `String hole ${hole.number}`,
    say(hole.fromNut),
    say(hole.fromEdge),
    say(hole.fromCentreline),
    hole.string === null ? 'free' : `string ${hole.string}`,
  ])
  const line: Cell[] = [
    'Saddle line',
    say(saddle.fromNut),
    say(saddle.fromEdge),
    '',
    `${say(saddle.fromTailWall)} to the tail-end wall`,
  ]
  return table(['', 'from the nut', 'from its edge', 'from the centreline', ''], [line, ...rows])
}

function things({ things: list }: Report, say: Say): string[] {
  if (list.length === 0) return ['  nothing']
  const rows = list.map((thing) => [
    thing.name || thing.id,
    thing.what,
    thing.face,
    say(thing.fromNut),
    say(thing.fromEdge),
    say(thing.fromCentreline),
    thing.fromLidEdge === null ? '' : say(thing.fromLidEdge),
    `${say(thing.size.along)} × ${say(thing.size.across)}`,
  ])
  const head = [
    '',
    'what',
    'face',
    'from the nut',
    'from the edge',
    'from the centreline',
    'below the lid',
    'size',
  ]
  return table(head, rows, 3)
}

function parts({ parts: list }: Report, say: Say): string[] {
  const rows = list.map((part) => {
    const { minX, maxX, minY, maxY } = part.bounds
    const work = Object.entries(part.operations).filter(
      ([kind, count]) => count > 0 && !['datum', 'note'].includes(kind),
    )
    const size = `${say(maxX - minX)} × ${say(maxY - minY)}`
    return [
      part.id,
      part.title,
      work.map(([kind, count]) => `${count} ${kind}`).join(', '),
      part.seen,
      size,
      say(part.thickness),
    ]
  })
  return table(['part', '', 'work', 'seen', 'size', 'thick'], rows, 4)
}
