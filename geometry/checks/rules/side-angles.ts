import type { LimitName } from '../../design/limits.ts'
import type { StringLine } from '../../solve/layout.ts'
import { degreesOf, gradeMost, type Measurement, type Rule } from '../finding.ts'

interface Bend {
  readonly name: string
  readonly title: string
  readonly at: 'saddle' | 'nut'
  readonly limit: LimitName
  readonly angle: (string: StringLine) => number | null
  readonly cure: string
  readonly mendedBy: readonly string[]
}

/** A string that turns sideways where it is stopped creeps, or walks the saddle. */
const rule = ({ name, title, at, limit: limitName, mendedBy, angle, cure }: Bend): Rule => ({
  name,
  title,
  unit: 'degrees',
  wants: 'most',
  limits: [limitName],
  mendedBy,
  measure(layout, limit) {
    const found: Measurement[] = []
    let worst: { string: StringLine; turned: number } | null = null
    for (const string of layout.strings) {
      const turned = angle(string)
      if (turned !== null && (!worst || turned > worst.turned)) worst = { string, turned }
    }
    if (!worst) return found
    const wanted = limit(limitName)
    const measured = degreesOf(worst.turned)
    const x = at === 'saddle' ? layout.saddle.x : 0
    const from = { x, y: at === 'saddle' ? worst.string.yAtSaddle : worst.string.yAtNut }
    const { tail, post } = worst.string
    found.push({
      about: [at, `string ${worst.string.number}`],
      measured,
      limit: wanted,
      grade: gradeMost(measured, wanted),
      where: { view: 'plan', from, to: (at === 'saddle' ? tail : post) ?? from },
      data: { string: worst.string.number },
    })
    return found
  },
  words({ measured, limit, grade, data }, say) {
    const turns = `String ${data?.string} turns ${say.angle(measured ?? 0)} sideways at the ${at}`
    return grade === 'clear'
      ? `${turns}, the most of all.`
      : `${turns}; up to ${say.angle(limit ?? 0)} is usual. ${cure}`
  },
})

export const sideAngleAtSaddle = rule({
  name: 'side-angle-at-saddle',
  title: 'Sideways angle over the saddle',
  at: 'saddle',
  limit: 'sideAngleAtSaddle',
  angle: (string) => (string.tail ? string.sideAngleAtSaddle : null),
  mendedBy: ['tailpiece.span', 'tailpiece.fromEdge'],
  cure: 'Bring the string holes in line with the strings.',
})

export const sideAngleAtNut = rule({
  name: 'side-angle-at-nut',
  title: 'Sideways angle at the nut',
  at: 'nut',
  limit: 'sideAngleAtNut',
  angle: (string) => (string.post ? string.sideAngleAtNut : null),
  mendedBy: ['headstock.firstPost', 'headstock.postEdge'],
  cure: 'Move the posts back or in.',
})
