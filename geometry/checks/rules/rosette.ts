import { placePoint } from '../../plane/index.ts'
import { gradeLeast, gradeMost, type Measurement, type Rule } from '../finding.ts'
import { capital } from '../say.ts'

export const rosetteWeb: Rule = {
  name: 'rosette-web',
  title: 'Wood between the holes of a rosette',
  unit: 'mm',
  wants: 'least',
  limits: ['rosetteWeb'],
  mendedBy: ['thing.pitch', 'thing.hole'],
  measure({ placed }, limit) {
    const found: Measurement[] = []
    for (const { thing, kind, face, at } of placed) {
      const web = kind.web?.(thing)
      if (!web) continue
      const wanted = limit('rosetteWeb')
      const put = { x: at.x, y: at.y, turn: (thing.turnDegrees * Math.PI) / 180, mirrored: false }
      found.push({
        about: [thing.id],
        measured: web.wood,
        limit: wanted,
        grade: gradeLeast(web.wood, wanted, 0),
        where: { view: face, from: placePoint(web.from, put), to: placePoint(web.to, put) },
      })
    }
    return found
  },
  words({ measured, limit, about, grade }, say) {
    const who = say.thing(about[0] ?? '')
    if (grade === 'stop')
      return `Holes of ${who} run into each other by ${say.length(-(measured ?? 0))}. Set them farther apart, or drill them smaller.`
    const left = `Between the nearest two holes of ${who} ${say.length(measured ?? 0)} of wood are left`
    return grade === 'clear' ? `${left}.` : `${left}; under ${say.length(limit ?? 0)} they break out.`
  },
}

export const rosetteHoles: Rule = {
  name: 'rosette-holes',
  title: 'Holes of a rosette',
  unit: 'count',
  wants: 'most',
  limits: [],
  mendedBy: ['thing.pitch'],
  measure({ placed }) {
    const found: Measurement[] = []
    for (const { thing, kind, face, at, openings } of placed) {
      const wanted = kind.wanted?.(thing)
      if (!wanted) continue
      const none = openings.length === 0
      const many = none && wanted.count > wanted.most
      const measured = none ? (many ? wanted.count : 0) : openings.length
      found.push({
        about: [thing.id],
        measured,
        limit: wanted.most,
        grade: none ? 'stop' : gradeMost(measured, wanted.most),
        where: { view: face, from: at, to: at },
      })
    }
    return found
  },
  words({ measured, limit, about, grade }, say) {
    const who = capital(say.thing(about[0] ?? ''))
    if (grade === 'clear') return `${who} has ${measured} holes.`
    return measured === 0
      ? `${who} has 0 holes: none has room in its field. Make the field larger or the holes smaller.`
      : `${who} would have about ${measured} holes; up to ${limit} are laid out. Set them farther apart, or make the field smaller.`
  },
}
