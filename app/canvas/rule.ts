/** The rule between plan and section, in the user's unit, zero at the nut. */
import { formatLength, inchesToMm, type Layout } from '../../geometry/index.ts'
import { RULE_HEIGHT, type View } from './camera.ts'
import { type Looks, THIN } from './looks.ts'
import { type Pen, stroke, write } from './paint.ts'

type Units = Layout['design']['units']

/** Ticks are never nearer than this on the screen, figures never nearer than that; pixels. */
const TICKS_APART = 4
const FIGURES_APART = 44

/** Spacings of graduations from fine to coarse, each a whole multiple of the one before; millimetres. */
export function graduations(units: Units): number[] {
  if (units.display === 'mm') return [1, 5, 10, 50, 100, 500]
  const whole = [1, 2, 4, 12, 24].map(inchesToMm)
  if (units.fraction === 0) return [0.05, 0.1, 0.5].map(inchesToMm).concat(whole)
  const fine: number[] = []
  for (let below: number = units.fraction; below > 1; below /= 2) fine.push(inchesToMm(1 / below))
  return [...fine, ...whole]
}

export function paintRule(pen: Pen, looks: Looks, view: View, layout: Layout): void {
  const { units } = layout.design
  const { scale, x: zero } = view.camera
  const top = view.ruleTop
  const from = zero + Math.min(layout.neck.x0, layout.box.x0) * scale
  const to = zero + Math.max(layout.neck.x1, layout.box.x1) * scale
  pen.fillStyle = looks.rule
  pen.fillRect(from, top, to - from, RULE_HEIGHT)
  stroke(pen, { x: from, y: top }, { x: to, y: top }, { stroke: looks.ink, width: THIN })
  stroke(
    pen,
    { x: from, y: top + RULE_HEIGHT },
    { x: to, y: top + RULE_HEIGHT },
    { stroke: looks.faint, width: THIN },
  )
  const steps = graduations(units)
  const fine = steps.find((step) => step * scale >= TICKS_APART) ?? steps.at(-1) ?? 10
  const used = steps.filter((step) => step >= fine)
  const isWhole = (step: number) => units.display === 'mm' || step >= inchesToMm(1) - 1e-9
  const figures = steps.filter(isWhole).find((step) => step * scale >= FIGURES_APART) ?? steps.at(-1) ?? 100
  const first = Math.ceil((Math.max(from, -20) - zero) / scale / fine - 1e-6)
  const last = Math.floor((Math.min(to, view.size.width + 20) - zero) / scale / fine + 1e-6)
  for (let index = first; index <= last; index++) {
    const mm = index * fine
    const rank = used.filter((step) => isMultiple(mm, step)).length
    const at = zero + mm * scale
    const tall = isMultiple(mm, figures) ? 15 : Math.min(4 + 2.5 * rank, 12)
    stroke(pen, { x: at, y: top }, { x: at, y: top + tall }, { stroke: looks.ink, width: THIN })
    if (isMultiple(mm, figures))
      write(
        pen,
        looks,
        formatLength(mm, units, { decimals: 0 }),
        { x: at, y: top + RULE_HEIGHT - 6 },
        { colour: looks.ink, size: 11, align: 'center' },
      )
  }
}

const isMultiple = (mm: number, step: number) => Math.abs(mm / step - Math.round(mm / step)) < 1e-6
