import { gap, nearest, rectangle } from '../../plane/index.ts'
import { gradeLeast, type Measurement, type Rule } from '../finding.ts'
import { capital } from '../say.ts'

export const openingToNeck: Rule = {
  name: 'opening-to-neck',
  title: 'To the neck',
  unit: 'mm',
  wants: 'least',
  limits: ['openingToNeck'],
  mendedBy: ['place', 'size'],
  measure(layout, limit) {
    const found: Measurement[] = []
    const { panels, neck, design } = layout
    const half = design.neck.width / 2
    const end = neck.x1 - panels.lid.originX
    const start = Math.min(panels.lid.bounds.minX, end - 1)
    const plan = rectangle(start, -half, end, half)
    for (const { thing, kind, face, taken } of layout.placed) {
      if (face !== 'lid' || kind.overNeck === 'meant' || !taken) continue
      const measured = gap(taken, plan)
      const { from, to } = nearest(taken, plan)
      const wanted = limit('openingToNeck')
      found.push({
        about: [thing.id],
        measured,
        limit: wanted,
        grade: gradeLeast(measured, wanted, 0),
        where: { view: 'lid', from, to },
      })
    }
    return found
  },
  words({ measured, limit, about, grade }, say) {
    const who = capital(say.thing(about[0] ?? ''))
    if (grade === 'stop')
      return `${who} lies ${say.length(-(measured ?? 0))} over the neck, where wood is under the lid. Move it sideways.`
    const left = `${who} clears the neck by ${say.length(measured ?? 0)}`
    return grade === 'clear' ? `${left}.` : `${left}; ${say.length(limit ?? 0)} leave room for the drill.`
  },
}
