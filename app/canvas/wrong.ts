/** What is wrong, hatched where it is: crossed for a stop, one way for care, each with its number. */
import { type Face, type Finding, formatMeasure, type Layout, type Point } from '../../geometry/index.ts'
import { type Frame, toScreen } from './frame.ts'
import type { Looks } from './looks.ts'
import { hatch, type Pen, stroke, wide, write } from './paint.ts'

/** Finds the frame in which a face, the plan or the section is drawn here; `null` where it is not. */
export type FrameOf = (view: 'plan' | 'section' | Face) => Frame | null

export interface Box {
  readonly minX: number
  readonly minY: number
  readonly maxX: number
  readonly maxY: number
}

const HALF_BAND = 6
const LIT_BAND = HALF_BAND + 3
const LEAST_LENGTH = 5
const LONG = 240
const END = 36

export function paintFindings(
  pen: Pen,
  looks: Looks,
  layout: Layout,
  findings: readonly Finding[],
  lit: string | null,
  frameOf: FrameOf,
  /** Things whose numbers are left out: they are being moved, and their distances are shown instead. */
  moving: ReadonlySet<string>,
): void {
  const taken: Box[] = []
  const shown = findings.filter(
    (one) =>
      one.key === lit ||
      (!isCount(one) && (one.grade === 'stop' || one.grade === 'care') && one.overruled === undefined),
  )
  for (const finding of shown) {
    const frame = frameOf(finding.where.view)
    if (!frame) continue
    const silent = finding.about.some((id) => moving.has(id))
    paintOne(pen, looks, layout, finding, finding.key === lit, frame, silent ? null : taken)
  }
}

/** The words of the lit one, over everything else and clear of what is selected and of its handles. */
export function paintLitWords(
  pen: Pen,
  looks: Looks,
  layout: Layout,
  finding: Finding,
  frameOf: FrameOf,
  clearOf: readonly Box[],
): void {
  const frame = frameOf(finding.where.view)
  if (!frame) return
  const { middle, off } = stretchOf(pen, finding, frame)
  label(
    pen,
    looks,
    words(finding, layout, true),
    middle,
    off,
    LIT_BAND,
    colourOf(looks, finding),
    [...clearOf],
    true,
  )
}

/** Too few of something is no stretch of wood: it is hatched only when it is asked for. */
const isCount = ({ unit, where: { from, to } }: Finding) =>
  unit === 'count' && (from.x !== to.x || from.y !== to.y)

const colourOf = (looks: Looks, { grade }: Finding) =>
  grade === 'stop' ? looks.stop : grade === 'care' ? looks.care : looks.accent

function paintOne(
  pen: Pen,
  looks: Looks,
  layout: Layout,
  finding: Finding,
  lit: boolean,
  frame: Frame,
  taken: Box[] | null,
): void {
  const { a, b, length, along, off, middle } = stretchOf(pen, finding, frame)
  const colour = colourOf(looks, finding)
  const half = lit ? LIT_BAND : HALF_BAND
  pen.beginPath()
  if (length < LEAST_LENGTH) pen.arc(middle.x, middle.y, half + 2, 0, 2 * Math.PI)
  else if (length < LONG) band(pen, a, b, off, half)
  else {
    // A stretch as long as the neck would hide what it runs over: its two ends say enough.
    band(pen, a, shift(a, along, END), off, half)
    band(pen, shift(b, along, -END), b, off, half)
  }
  const box = around([a, b], half + 4)
  if (finding.grade === 'stop' || finding.grade === 'care') hatch(pen, box, colour, finding.grade === 'stop')
  if (length >= LEAST_LENGTH)
    for (const end of [a, b])
      stroke(pen, shift(end, off, half), shift(end, off, -half), { stroke: colour, width: 2 })
  if (lit || length >= LONG) stroke(pen, a, b, { stroke: colour, width: lit ? 2 : 1 })
  if (lit && length < LONG) {
    pen.beginPath()
    pen.arc(middle.x, middle.y, Math.max(16, length / 2 + 12), 0, 2 * Math.PI)
    pen.strokeStyle = colour
    pen.lineWidth = 1.4
    pen.setLineDash([4, 3])
    pen.stroke()
    pen.setLineDash([])
  }
  // The words of the lit one come last of all; see `paintLitWords`.
  if (taken && !lit) label(pen, looks, words(finding, layout, false), middle, off, half, colour, taken, false)
}

/** Where a finding lies on the screen: its ends, how long it is, which way it runs and which way is off it. */
function stretchOf(pen: Pen, { where }: Finding, frame: Frame) {
  const [a, b] = seen(pen, toScreen(frame, where.from), toScreen(frame, where.to))
  const length = Math.hypot(b.x - a.x, b.y - a.y)
  const along = length > 0.5 ? { x: (b.x - a.x) / length, y: (b.y - a.y) / length } : { x: 1, y: 0 }
  const middle = { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 }
  return { a, b, length, along, off: { x: -along.y, y: along.x }, middle }
}

function words(finding: Finding, layout: Layout, lit: boolean): string {
  const { units } = layout.design
  if (finding.measured === null) return finding.grade === 'stop' ? '!' : ''
  const measured = formatMeasure(finding.measured, finding, units)
  if (!lit || finding.limit === null) return measured
  return `${measured}, limit ${formatMeasure(finding.limit, finding, units)}`
}

function label(
  pen: Pen,
  looks: Looks,
  text: string,
  middle: Point,
  off: Point,
  half: number,
  colour: string,
  taken: Box[],
  must: boolean,
): void {
  if (text === '') return
  const across = wide(pen, looks, text, 12, true) / 2 + 4
  for (const side of [1, -1, 2, -2, 3.2, -3.2, 4.6, -4.6]) {
    // Far enough that the words clear the band, whichever way the band lies.
    const way = (half + 5 + Math.abs(off.x) * across + Math.abs(off.y) * 8) * side
    const at = shift(middle, off, way)
    const box = { minX: at.x - across, maxX: at.x + across, minY: at.y - 9, maxY: at.y + 9 }
    if (taken.some((one) => overlap(one, box))) continue
    taken.push(box)
    write(pen, looks, text, at, { colour, bold: true, align: 'center', base: 'middle', behind: looks.sheet })
    return
  }
  if (must)
    write(pen, looks, text, middle, {
      colour,
      bold: true,
      align: 'center',
      base: 'middle',
      behind: looks.sheet,
    })
}

function band(pen: Pen, a: Point, b: Point, off: Point, half: number): void {
  const corners = [shift(a, off, half), shift(b, off, half), shift(b, off, -half), shift(a, off, -half)]
  corners.forEach((corner, index) => {
    if (index === 0) pen.moveTo(corner.x, corner.y)
    else pen.lineTo(corner.x, corner.y)
  })
  pen.closePath()
}

/** The part of a stretch that lies in the window, or the stretch itself where none does. */
function seen(pen: Pen, a: Point, b: Point): [Point, Point] {
  const ratio = pen.getTransform().a || 1
  let [from, to] = [0, 1]
  for (const [start, way, most] of [
    [a.x, b.x - a.x, pen.canvas.width / ratio],
    [a.y, b.y - a.y, pen.canvas.height / ratio],
  ] as const) {
    if (Math.abs(way) < 1e-9) continue
    const [near, far] = [(4 - start) / way, (most - 4 - start) / way]
    from = Math.max(from, Math.min(near, far))
    to = Math.min(to, Math.max(near, far))
  }
  if (to <= from) return [a, b]
  const at = (share: number): Point => ({ x: a.x + (b.x - a.x) * share, y: a.y + (b.y - a.y) * share })
  return [at(from), at(to)]
}

const shift = (point: Point, by: Point, times: number): Point => ({
  x: point.x + by.x * times,
  y: point.y + by.y * times,
})

const around = (points: readonly Point[], more: number): Box => ({
  minX: Math.min(...points.map((one) => one.x)) - more,
  minY: Math.min(...points.map((one) => one.y)) - more,
  maxX: Math.max(...points.map((one) => one.x)) + more,
  maxY: Math.max(...points.map((one) => one.y)) + more,
})

const overlap = (a: Box, b: Box) => a.minX < b.maxX && a.maxX > b.minX && a.minY < b.maxY && a.maxY > b.minY
