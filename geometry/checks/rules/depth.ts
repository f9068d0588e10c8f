import { gradeLeast, gradeMost, type Measurement, type Rule } from '../finding.ts'
import { capital } from '../say.ts'

export const roomUnderNeck: Rule = {
  name: 'room-under-neck',
  title: 'Room under the neck',
  unit: 'mm',
  wants: 'least',
  limits: ['underNeck'],
  mendedBy: ['neck.rise', 'neck.thickness'],
  measure(layout, limit) {
    const found: Measurement[] = []
    const { box, neck } = layout
    const measured = neck.bottom - box.baseTop
    const x = (box.insideX0 + Math.min(box.insideX1, neck.x1)) / 2
    const wanted = limit('underNeck')
    found.push({
      about: ['neck'],
      measured,
      limit: wanted,
      grade: gradeLeast(measured, wanted, 0),
      where: { view: 'section', from: { x, y: neck.bottom }, to: { x, y: box.baseTop } },
    })
    return found
  },
  words({ measured, limit, grade }, say) {
    if (grade === 'stop')
      return `The box is ${say.length(-(measured ?? 0))} too shallow: the neck runs into the base. Use a thinner neck, raise it, or find a deeper box.`
    const left = `Between neck and base ${say.length(measured ?? 0)} are free`
    return grade === 'clear' ? `${left}.` : `${left}; ${say.length(limit ?? 0)} keep them from touching.`
  },
}

/** What hangs under the lid must not stand on the base. */
export const roomUnderHardware: Rule = {
  name: 'room-under-hardware',
  title: 'Room under hardware',
  unit: 'mm',
  wants: 'least',
  limits: ['underNeck'],
  mendedBy: ['thing.depth', 'thing.bodyDepth'],
  measure(layout, limit) {
    const found: Measurement[] = []
    const { box, panels } = layout
    const wanted = limit('underNeck')
    for (const { thing, kind, face, at, reach } of layout.placed) {
      if (face !== 'lid' || kind.overWall === 'meant' || reach <= 0) continue
      const measured = -reach - box.baseTop
      const x = at.x + panels.lid.originX
      found.push({
        about: [thing.id],
        measured,
        limit: wanted,
        grade: gradeLeast(measured, wanted, 0),
        where: { view: 'section', from: { x, y: -reach }, to: { x, y: box.baseTop } },
      })
    }
    return found
  },
  words({ measured, limit, about, grade }, say) {
    const who = capital(say.thing(about[0] ?? ''))
    if (grade === 'stop')
      return `${who} hangs ${say.length(-(measured ?? 0))} deeper than the box is inside. Choose a shallower one.`
    const left = `Under ${say.thing(about[0] ?? '')} ${say.length(measured ?? 0)} are free to the base`
    return grade === 'clear' ? `${left}.` : `${left}; ${say.length(limit ?? 0)} are wanted for its wires.`
  },
}

/** A step around a hole takes from the face's thickness and gives a ledge to something. */
export const rimDepth: Rule = {
  name: 'rim-depth',
  title: 'Depth of a rim',
  unit: 'mm',
  wants: 'most',
  limits: ['rimShare'],
  mendedBy: ['thing.rimDepth'],
  measure(layout, limit) {
    const found: Measurement[] = []
    for (const { thing, kind, face, at } of layout.placed) {
      const rim = kind.rim?.(thing)
      if (!rim) continue
      const { thickness } = layout.panels[face]
      // More than all of the wood cannot be wanted.
      const wanted = thickness * Math.min(limit('rimShare'), 1)
      found.push({
        about: [thing.id],
        measured: rim.depth,
        limit: wanted,
        grade: rim.depth >= thickness ? 'stop' : gradeMost(rim.depth, wanted),
        where: { view: face, from: at, to: at },
        data: { thickness },
      })
    }
    return found
  },
  words({ measured, limit, about, grade, data }, say) {
    const who = say.thing(about[0] ?? '')
    const thick = say.length(Number(data?.thickness))
    if (grade === 'stop')
      return `The rim of ${who} is ${say.length(measured ?? 0)} deep and the wood only ${thick}: it would fall through.`
    const deep = `The rim of ${who} goes ${say.length(measured ?? 0)} into ${thick} of wood`
    return grade === 'clear' ? `${deep}.` : `${deep}; ${say.length(limit ?? 0)} is the usual most.`
  },
}

export const rimLedge: Rule = {
  name: 'rim-ledge',
  title: 'Ledge of a rim',
  unit: 'mm',
  wants: 'least',
  limits: ['rimLedge'],
  mendedBy: ['thing.rimWidth'],
  measure(layout, limit) {
    const found: Measurement[] = []
    for (const { thing, kind, face, at } of layout.placed) {
      const rim = kind.rim?.(thing)
      if (!rim) continue
      const wanted = limit('rimLedge')
      found.push({
        about: [thing.id],
        measured: rim.ledge,
        limit: wanted,
        grade: gradeLeast(rim.ledge, wanted),
        where: { view: face, from: at, to: at },
      })
    }
    return found
  },
  words({ measured, limit, about, grade }, say) {
    const ledge = `The ledge around ${say.thing(about[0] ?? '')} is ${say.length(measured ?? 0)} wide`
    return grade === 'clear' ? `${ledge}.` : `${ledge}; a ring wants ${say.length(limit ?? 0)} to sit on.`
  },
}
