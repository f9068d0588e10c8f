import { type Grade, gradeLeast, type Measurement, type Rule } from '../finding.ts'

/** Stiffness goes with the cube of the thickness of a rectangular section (Gere, "Mechanics of Materials": I = b h³ / 12). */
const stiffness = (left: number, whole: number) => (Math.max(left, 0) / whole) ** 3

export const neckLeft: Rule = {
  name: 'neck-left',
  title: 'Neck left at its thinnest over the box',
  unit: 'mm',
  wants: 'least',
  limits: ['neckLeft', 'neckStiffnessLeft'],
  mendedBy: ['neck.relief', 'thing.depth', 'neck.rise', 'neck.thickness'],
  measure(layout, limit) {
    const found: Measurement[] = []
    const { thinnest, bottom } = layout.neck
    const whole = layout.design.neck.thickness
    const wanted = limit('neckLeft')
    const share = stiffness(thinnest.left, whole)
    const grade: Grade =
      thinnest.left <= 0 || share < limit('neckStiffnessLeft') ? 'stop' : gradeLeast(thinnest.left, wanted)
    const middle = (thinnest.x0 + thinnest.x1) / 2
    found.push({
      about: ['neck'],
      measured: thinnest.left,
      limit: Math.max(wanted, whole * Math.cbrt(limit('neckStiffnessLeft'))),
      grade,
      where: {
        view: 'section',
        from: { x: middle, y: bottom + thinnest.left },
        to: { x: middle, y: bottom },
      },
      data: { of: thinnest.of, share: Math.round(share * 100), whole },
    })
    return found
  },
  words({ measured, limit, grade, data }, say) {
    const where = data?.of === 'neck' ? 'over the box' : `at the ${data?.of}`
    const left = `${say.length(measured ?? 0)} of the neck’s ${say.length(Number(data?.whole))} are left ${where}, ${data?.share} % of its stiffness`
    if (grade === 'stop')
      return `Only ${left}. Such necks break: take a thicker blank, less relief, or raise the neck.`
    return grade === 'clear'
      ? `${left}.`
      : `${left}; ${say.length(limit ?? 0)} of hardwood is the usual least.`
  },
}
