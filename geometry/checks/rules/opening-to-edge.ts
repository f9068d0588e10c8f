import { clearance } from '../../plane/index.ts'
import { gradeLeast, type Measurement, type Rule } from '../finding.ts'
import { capital } from '../say.ts'

export const openingToEdge: Rule = {
  name: 'opening-to-edge',
  title: 'To the edge of the face',
  unit: 'mm',
  wants: 'least',
  limits: ['openingToEdge', 'screwToEdge'],
  mendedBy: ['place', 'size'],
  measure(layout, limit) {
    const found: Measurement[] = []
    for (const { thing, kind, face, taken } of layout.placed) {
      if (!taken) continue
      const { distance, from, to } = clearance(taken, layout.panels[face].outline)
      const wanted = limit(kind.edgeLimit)
      found.push({
        about: [thing.id],
        measured: distance,
        limit: wanted,
        grade: gradeLeast(distance, wanted, 0),
        where: { view: face, from, to },
        data: { face, sort: kind.edgeLimit === 'screwToEdge' ? 'a screw' : 'a hole' },
      })
    }
    return found
  },
  words({ measured, limit, about, grade, data }, say) {
    const who = capital(say.thing(about[0] ?? ''))
    const face = String(data?.face).replaceAll('-', ' ')
    if (grade === 'stop')
      return `${who} reaches ${say.length(-(measured ?? 0))} beyond the edge of the ${face}. Move it in or make it smaller.`
    const left = `${who} leaves ${say.length(measured ?? 0)} of wood to the edge of the ${face}`
    return grade === 'clear'
      ? `${left}.`
      : `${left}; ${data?.sort} this size wants ${say.length(limit ?? 0)}.`
  },
}
