/**
 * Everything that follows from a design, as one JSON value for other programs: lengths in millimetres, angles in
 * radians, keys that stay. `report-keys.ts` says what each key holds; `sample-boxes/README.md` is made from it.
 */
import {
  blocks,
  bounds,
  check,
  type Design,
  type Finding,
  formatLength,
  type Layout,
  type Operation,
  type Part,
  type Placed,
  type Point,
  partsOf,
  roundedLength,
  sentenceOf,
  solve,
} from '../geometry/index.ts'

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

export type Report = ReturnType<typeof reportOf>

/**
 * The report of a design. The same design gives the same value; every number is rounded to a millionth, so that two
 * machines agree on its last digit. Never throws for a valid design.
 * Example: `reportOf(design).frets[11].fromNut` is 304.8 for the octave fret of a 24 inch scale.
 */
export function reportOf(design: Design) {
  const layout = solve(design)
  return tidied({
    format: 'lidwright-report' as const,
    version: REPORT_VERSION,
    title: design.title,
    hand: design.hand,
    units: { lengths: 'mm', angles: 'radians', shown: design.units.display, fraction: design.units.fraction },
    scale: scaleOf(layout),
    frets: fretsOf(layout),
    strings: stringsOf(layout),
    box: { length: design.box.length, width: design.box.width, depth: design.box.depth, ...layout.box },
    panels: panelsOf(layout),
    neck: neckOf(layout),
    board: layout.board && { ...layout.board, length: layout.board.x1 - layout.board.x0 },
    nut: { ...layout.nut },
    saddle: saddleOf(layout),
    tailHoles: tailHolesOf(layout),
    posts: layout.posts.map((post, index) => ({
      number: index + 1,
      side: post.side,
      fromNut: post.x,
      fromCentreline: post.y,
    })),
    things: layout.placed.map((placed) => thingOf(placed, layout)),
    parts: partsOf(layout).map(partOf),
    findings: check(layout).map((finding) => findingOf(finding, layout)),
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

function stringsOf({ strings }: Layout) {
  return strings.map(({ tail, post, ...string }) => ({
    ...string,
    tail: tail && { hole: tail.hole + 1, fromNut: tail.x, fromCentreline: tail.y, z: tail.z },
    post: post && { fromNut: post.x, fromCentreline: post.y },
  }))
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

function neckOf({ neck, playingTop }: Layout) {
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
  }
}

function saddleOf({ saddle, box, panels }: Layout) {
  return {
    fromNut: saddle.x,
    fromEdge: saddle.along,
    fromTailEdge: panels.lid.bounds.maxX - saddle.along,
    fromTailWall: box.insideX1 - saddle.x,
    top: saddle.top,
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
    fromEdge: at.x - panel.bounds.minX,
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

function findingOf(finding: Finding, layout: Layout) {
  const { rule, key, grade, about, measured, limit, margin, unit, where, overruled } = finding
  return {
    rule,
    key,
    grade,
    about: [...about],
    measured,
    limit,
    margin,
    unit,
    sentence: sentenceOf(finding, layout),
    where: { view: where.view, from: pointOf(where.from), to: pointOf(where.to) },
    overruled: overruled ?? null,
    blocks: blocks(finding),
  }
}

/** Only the two: rules may hand over points that carry more. */
const pointOf = ({ x, y }: Point) => ({ x, y })

/** Every number to a millionth, and no minus nought; the shape stays as it was. */
function tidied<T>(value: T): T {
  if (typeof value === 'number') return ((Math.round(value * 1e6) || 0) / 1e6) as T
  if (Array.isArray(value)) return value.map(tidied) as T
  if (value === null || typeof value !== 'object') return value
  return Object.fromEntries(Object.entries(value).map(([key, inner]) => [key, tidied(inner)])) as T
}
