/** The worst margin of what is being moved, beside the pointer: what is measured, the limit, and how grave it is. */
import {
  type Bounds,
  check,
  type Finding,
  formatMeasure,
  type Layout,
  notes,
  ruleOf,
} from '../../geometry/index.ts'
import { tightestAbout } from '../parts/tightness.ts'
import { dragging } from './dragging.ts'
import { findingsNow } from './findings-now.ts'
import type { Looks } from './looks.ts'
import { type Pen, wide, write } from './paint.ts'
import type { PointerAt } from './tools/tool.ts'

const GRADES: readonly Finding['grade'][] = ['stop', 'care', 'note', 'clear']
const SIGNS: Readonly<Record<Finding['grade'], string>> = { stop: '✕', care: '!', note: 'i', clear: '✓' }

/**
 * The gravest finding about any of these things, the tightest of that grade. What the drag changes comes before what it
 * leaves as it was: the depth of a rim is no news while its hole is moved.
 */
export function worstOf(layout: Layout, ids: Iterable<string>): Finding | null {
  const { news: findings } = findingsNow(layout)
  const start = dragging.start()
  const names = [...ids]
  if (start) {
    const before = measuredIn(start)
    const news = findings.filter((one) => before.get(one.key) !== one.measured)
    const worst = gravestOf(news, names)
    if (worst) return worst
  }
  return gravestOf(findings, names)
}

const measures = notes<Layout, ReadonlyMap<string, number | null>>()

/** What each finding measured when the drag began: looked up in every frame, gathered once. */
function measuredIn(start: Layout): ReadonlyMap<string, number | null> {
  const known = measures.get(start)
  if (known) return known
  const made = new Map(check(start).map((one) => [one.key, one.measured]))
  measures.set(start, made)
  return made
}

function gravestOf(findings: readonly Finding[], names: readonly string[]): Finding | null {
  let worst: Finding | null = null
  for (const name of names) {
    const one = tightestAbout(findings, name)
    if (!one) continue
    const graver = worst ? GRADES.indexOf(one.grade) - GRADES.indexOf(worst.grade) : -1
    if (graver < 0 || (graver === 0 && (one.margin ?? 0) < (worst?.margin ?? 0))) worst = one
  }
  return worst
}

/** The same in a few words: `✕ Opening to the edge 2.1, limit 5.0`. */
export function tellMargin(layout: Layout, finding: Finding): string {
  const { units } = layout.design
  const say = (value: number) => formatMeasure(value, finding, units)
  const measured = finding.measured === null ? '' : ` ${say(finding.measured)}`
  const limit = finding.limit === null ? '' : `, limit ${say(finding.limit)}`
  return `${SIGNS[finding.grade]} ${ruleOf(finding.rule).title}${measured}${limit}`
}

/** Beside a mouse pointer; well above a finger, which would hide it. */
const OFF = { mouse: { x: 18, y: 26 }, touch: { x: 0, y: -74 } }

/** Draws it, and says which room it takes, so that figures can keep off it. */
export function paintMargin(
  pen: Pen,
  looks: Looks,
  layout: Layout,
  ids: Iterable<string>,
  pointer: PointerAt,
): Bounds | null {
  const finding = worstOf(layout, ids)
  if (!finding) return null
  const text = tellMargin(layout, finding)
  const colour = finding.grade === 'stop' ? looks.stop : finding.grade === 'care' ? looks.care : looks.ink
  const width = wide(pen, looks, text, 12, true) + 16
  const ratio = pen.getTransform().a || 1
  const off = pointer.touch ? OFF.touch : OFF.mouse
  const left = pointer.touch ? pointer.x - width / 2 : pointer.x + off.x
  const x = Math.max(4, Math.min(left, pen.canvas.width / ratio - width - 4))
  const y = Math.max(4, Math.min(pointer.y + off.y, pen.canvas.height / ratio - 28))
  pen.fillStyle = looks.sheet
  pen.fillRect(x, y, width, 24)
  pen.strokeStyle = colour
  pen.lineWidth = finding.grade === 'clear' ? 1 : 2
  pen.strokeRect(x, y, width, 24)
  write(pen, looks, text, { x: x + 8, y: y + 12.5 }, { colour, bold: true, base: 'middle' })
  return { minX: x, maxX: x + width, minY: y, maxY: y + 24 }
}
