/**
 * Everything that follows from a design, as one JSON value for other programs: lengths in millimetres, angles in
 * radians, keys that stay. `report-keys.ts` says what each key holds; `sample-boxes/README.md` is made from it.
 */
import {
  blocks,
  bounds,
  check,
  type Design,
  endsOf,
  type Finding,
  formatLength,
  intonationOf,
  type Layout,
  loadsOf,
  measureAgain,
  measureAgainWords,
  type Operation,
  type Part,
  type Placed,
  type Point,
  partsOf,
  pureTuningOf,
  roundedLength,
  sentenceOf,
  solve,
  type WorstCase,
  worstCasesOf,
} from '../geometry/index.ts'
import { airOf, insideOf, keptOf, openingOf, weightOf } from './report-body.ts'
import { headReport } from './report-head.ts'
import { hearingOf } from './report-hearing.ts'
import { scheduleReport } from './report-schedule.ts'
import { surveyReport } from './report-survey.ts'
import { wiringReport } from './report-wiring.ts'

/** Raised when a key changes its meaning or goes away; keys may be added without. */
export const REPORT_VERSION = 1

const OPERATION_KINDS: readonly Operation['kind'][] = [
  'cut',
  'recess',
  'drill',
  'slot',
  'mark',
  'datum',
  'note',
]

export interface ReportOptions {
  /** Also the worst case of every margin, which costs two solved layouts for each dimension. */
  readonly tolerances?: boolean
}

export type Report = ReturnType<typeof reportOf>

/**
 * The report of a design. The same design gives the same value; every number is rounded to a millionth, so that two
 * machines agree on its last digit. Never throws for a valid design.
 * Example: `reportOf(design).frets[11].fromNut` is 304.8 for the octave fret of a 24 inch scale.
 */
export function reportOf(design: Design, { tolerances = false }: ReportOptions = {}) {
  const layout = solve(design)
  const worst = tolerances ? worstCasesOf(layout) : null
  return tidied({
    format: 'lidwright-report' as const,
    version: REPORT_VERSION,
    title: design.title,
    hand: design.hand,
    units: { lengths: 'mm', angles: 'radians', shown: design.units.display, fraction: design.units.fraction },
    scale: scaleOf(layout),
    frets: fretsOf(layout),
    strings: stringsOf(layout),
    box: {
      length: layout.real?.length ?? design.box.length,
      width: layout.real?.width ?? design.box.width,
      depth: design.box.depth,
      ...layout.box,
    },
    survey: surveyReport(layout),
    panels: panelsOf(layout),
    neck: neckOf(layout),
    board: layout.board && { ...layout.board, length: layout.board.x1 - layout.board.x0 },
    nut: { ...layout.nut },
    saddle: saddleOf(layout),
    pull: pullOf(layout),
    lid: lidOf(layout),
    chord: chordOf(layout),
    inside: insideOf(layout),
    artwork: keptOf(layout),
    opening: openingOf(layout),
    air: airOf(layout),
    weight: weightOf(layout),
    tailHoles: tailHolesOf(layout),
    posts: layout.posts.map((post, index) => ({
      number: index + 1,
      side: post.side,
      fromNut: post.x,
      fromCentreline: post.y,
    })),
    headstock: headReport(layout),
    things: layout.placed.map((placed) => thingOf(placed, layout)),
    parts: partsOf(layout).map(partOf),
    schedule: scheduleReport(layout),
    pickups: hearingOf(layout),
    wiring: wiringReport(layout),
    findings: check(layout).map((finding) => findingOf(finding, layout, worst)),
    problems: layout.problems.map(({ of, axis, sentence }) => ({ of, axis, sentence })),
  })
}

function scaleOf({ design, saddle, zeroFret }: Layout) {
  const { length, start, fretless, frets } = design.scale
  return { length, start, zeroFret, fretless, by: frets.by, saddleLine: saddle.x }
}

function fretsOf({ frets, design }: Layout) {
  return frets.map(({ number, fromNut, step, cents, overBox, onWood, yBass, yTreble }) => ({
    number,
    fromNut,
    step,
    cents,
    overBox,
    onWood,
    yBass,
    yTreble,
    onRule: {
      text: formatLength(fromNut, design.units, { unit: true }),
      error: roundedLength(fromNut, design.units).errorMm,
    },
  }))
}

function stringsOf(layout: Layout) {
  const loads = loadsOf(layout).strings
  const intonation = intonationOf(layout)
  return layout.strings.map(({ tail, post, ...string }, index) => ({
    ...string,
    ...stringLoadsOf(loads[index], intonation[index]),
    tail: tail && { hole: tail.hole + 1, fromNut: tail.x, fromCentreline: tail.y, z: tail.z },
    post: post && { fromNut: post.x, fromCentreline: post.y },
  }))
}

/** Pulls in newtons, masses in grams per metre; null where no tuning is stated or the string cannot be made. */
function stringLoadsOf(
  load: ReturnType<typeof loadsOf>['strings'][number] | undefined,
  cents: ReturnType<typeof intonationOf>[number] | undefined,
) {
  const at = load?.atPitch
  return {
    pitch: at ? { name: at.pitch.name, hertz: at.pitch.hertz, cents: at.pitch.cents } : null,
    unitMass: load?.body ? load.body.unitMass * 1e6 : null,
    tension: at?.tension ?? null,
    breakingLoad: load?.body?.breaking ?? null,
    shareOfBreaking: at?.shareOfBreaking ?? null,
    feel: at?.feel ?? null,
    setback: at?.setback ?? null,
    centsAtFret: [...(cents?.asStated ?? [])],
    centsAtBareScale: [...(cents?.before ?? [])],
    centsAtOwnSetback: [...(cents?.after ?? [])],
    breakAngle: load?.atSaddle?.total ?? null,
    breakAngleAtNut: load?.breakAtNut ?? null,
    downForce: at?.downForce ?? null,
  }
}

function panelsOf({ panels }: Layout) {
  return Object.values(panels).map(({ face, bounds: box, thickness, originX }) => ({
    face,
    fromNut: originX,
    long: box.maxX - box.minX,
    across: box.maxY - box.minY,
    thickness,
  }))
}

function neckOf(layout: Layout) {
  const { neck, playingTop } = layout
  const loads = loadsOf(layout)
  return {
    x0: neck.x0,
    x1: neck.x1,
    top: neck.top,
    bottom: neck.bottom,
    playingTop,
    halfWidths: neck.halfWidths.map(({ x, half }) => ({ x, half })),
    stretches: neck.stretches.map(({ x0, x1, top, bottom, of, because }) => ({
      of,
      x0,
      x1,
      top,
      bottom,
      left: top - bottom,
      because: because ?? null,
    })),
    cuts: neck.cuts.map(({ x0, x1, top, of, because }) => ({ of, x0, x1, top, because: because ?? null })),
    slots: neck.slots.map((slot) => ({ ...slot })),
    thinnest: { ...neck.thinnest },
    block: neck.block && { ...neck.block },
    needs: { ...neck.needs },
    trouble: loads.neckTrouble,
    bow: loads.neck?.bow ?? null,
    nutRise: loads.neck?.nutRise ?? null,
    actionChange: loads.neck?.actionChange ?? null,
    weakest: loads.neck && {
      fromNut: loads.neck.weakest.x,
      of: loads.neck.weakest.of,
      stress: loads.neck.weakest.stress,
      share: loads.neck.weakest.share,
    },
  }
}

/** What all strings do together, and the lid under them. */
function pullOf(layout: Layout) {
  const { totalPull, spread, missing } = loadsOf(layout)
  return { total: totalPull, spread: spread && { ...spread }, missing: missing?.why ?? null }
}

function lidOf(layout: Layout) {
  const { lid } = loadsOf(layout)
  return {
    downForce: lid?.downForce ?? null,
    sag: lid?.sag ?? null,
    sagWithoutBrace: lid?.bareSag ?? null,
    onNeck: lid?.onNeck ?? null,
  }
}

function chordOf(layout: Layout) {
  const pure = pureTuningOf(layout)
  return (
    pure && {
      root: pure.rootName,
      strings: pure.strings.map(({ ratio, hertz, offset }) => ({
        ratio: `${ratio.above}/${ratio.below}`,
        hertz,
        offset,
      })),
      beats: [...pure.beatsAsStated],
    }
  )
}

function saddleOf(layout: Layout) {
  const { saddle, box } = layout
  const loads = loadsOf(layout)
  const angles = loads.strings.flatMap(({ atSaddle }) => (atSaddle ? [atSaddle.total] : []))
  return {
    fromNut: saddle.x,
    fromEdge: saddle.along,
    fromTailEdge: endsOf(layout, 'lid')[1] - saddle.along,
    fromTailWall: box.insideX1 - saddle.x,
    top: saddle.top,
    height: saddle.top,
    heightWanted: loads.saddle.heightWanted,
    action: loads.saddle.action,
    actionUnderPull: loads.saddle.actionUnderPull,
    setbackWanted: loads.saddle.line?.atCentre ?? null,
    slantWanted: loads.saddle.line?.slant ?? null,
    freeFrom: loads.saddle.band.from,
    freeTo: loads.saddle.band.to,
    breakAngle: angles.length > 0 ? Math.min(...angles) : null,
    foot: { ...saddle.foot },
  }
}

function tailHolesOf({ tailHoles, strings, design }: Layout) {
  return tailHoles.map(({ x, y, z }, hole) => ({
    number: hole + 1,
    fromNut: x,
    fromEdge: design.tailpiece.fromEdge,
    fromCentreline: y,
    z,
    string: strings.find((string) => string.tail?.hole === hole)?.number ?? null,
  }))
}

/**
 * A thing where the tape measure finds it. On lid and base y is the distance from the centreline; on a wall x is,
 * and the lid-side edge is the other line to measure from.
 */
function thingOf({ thing, kind, face, at, bounds: box, reach }: Placed, layout: Layout) {
  const panel = layout.panels[face]
  const plan = face === 'lid' || face === 'base'
  const endWall = face === 'neck-end-wall' || face === 'tail-end-wall'
  return {
    id: thing.id,
    kind: thing.kind,
    name: thing.name,
    what: `${kind.title}, ${kind.describe(thing)}`,
    face,
    fromNut: endWall ? panel.originX : panel.originX + at.x,
    fromEdge: at.x - endsOf(layout, face)[0],
    fromCentreline: plan ? at.y : at.x,
    fromLidEdge: plan ? null : -at.y,
    turned: (thing.turnDegrees * Math.PI) / 180,
    size: kind.size(thing),
    bounds: { ...box },
    reach,
  }
}

function partOf(part: Part) {
  const { id, title, seen, mirrored, headEnd, thickness, outline, operations } = part
  const count = (kind: Operation['kind']) => operations.filter((one) => one.kind === kind).length
  return {
    id,
    title,
    seen,
    mirrored,
    headEnd,
    thickness,
    bounds: { ...bounds(outline) },
    operations: Object.fromEntries(OPERATION_KINDS.map((kind) => [kind, count(kind)])),
  }
}

function findingOf(finding: Finding, layout: Layout, worst: ReadonlyMap<string, WorstCase> | null) {
  const { rule, key, grade, about, measured, limit, margin, unit, where, overruled } = finding
  return {
    rule,
    key,
    grade,
    about: [...about],
    measured,
    limit,
    margin,
    ...toleranceOf(finding, layout, worst?.get(finding.key)),
    unit,
    sentence: sentenceOf(finding, layout),
    where: { view: where.view, from: pointOf(where.from), to: pointOf(where.to) },
    overruled: overruled ?? null,
    blocks: blocks(finding),
  }
}

function toleranceOf(finding: Finding, layout: Layout, worst: WorstCase | undefined) {
  const again = worst ? measureAgain(worst) : null
  const measured = finding.margin !== null && worst !== undefined
  return {
    tolerance: measured ? worst.tolerance : null,
    worst: measured ? finding.margin - worst.tolerance : null,
    measureAgain:
      again && worst
        ? {
            path: again.path,
            label: again.label,
            good: again.tolerance,
            sentence: measureAgainWords(finding, worst, layout),
          }
        : null,
  }
}

/** Only the two: rules may hand over points that carry more. */
const pointOf = ({ x, y }: Point) => ({ x, y })

/** Every number to a millionth, and no minus nought; the shape stays as it was. */
export function tidied<T>(value: T): T {
  if (typeof value === 'number') return ((Math.round(value * 1e6) || 0) / 1e6) as T
  if (Array.isArray(value)) return value.map(tidied) as T
  if (value === null || typeof value !== 'object') return value
  return Object.fromEntries(Object.entries(value).map(([key, inner]) => [key, tidied(inner)])) as T
}
