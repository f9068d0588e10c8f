import { placedCalled } from '../../solve/called.ts'
import type { Measurement, Rule } from '../finding.ts'
import { capital } from '../say.ts'

/** Sheets turned over or mirrored are a classic; without the hand no sheet can say which way round it is. */
export const handStated: Rule = {
  name: 'hand-stated',
  title: 'Hand stated on every sheet',
  unit: 'count',
  wants: 'least',
  limits: [],
  mendedBy: ['hand'],
  measure(layout) {
    const found: Measurement[] = []
    const stated = layout.design.hand === 'not stated' ? 0 : 1
    found.push({
      about: ['hand'],
      measured: stated,
      limit: 1,
      grade: stated ? 'clear' : 'stop',
      where: { view: 'plan', from: { x: layout.neck.x0, y: 0 }, to: { x: layout.neck.x1, y: 0 } },
    })
    return found
  },
  words({ grade }, _say, layout) {
    return grade === 'clear'
      ? `Every sheet says that it is for a ${layout.design.hand}-handed build, which face is seen and where the head lies.`
      : 'It is not stated whether the build is right- or left-handed, so no sheet can say which way round it is. State the hand.'
  },
}

/** A place that follows something which is not there, or follows itself. */
export const placeFollowed: Rule = {
  name: 'place-followed',
  title: 'Places that can be followed',
  unit: 'count',
  wants: 'least',
  limits: [],
  mendedBy: ['place'],
  measure(layout) {
    const found: Measurement[] = []
    for (const problem of layout.problems) {
      const placed = placedCalled(layout, problem.of)
      const at = placed?.at ?? { x: layout.saddle.along, y: 0 }
      found.push({
        about: [problem.of, problem.axis],
        measured: 0,
        limit: 1,
        grade: 'stop',
        where: { view: placed?.face ?? 'lid', from: at, to: at },
        data: { sentence: problem.sentence },
      })
    }
    return found
  },
  words: ({ data }) => capital(String(data?.sentence)),
}

/** Walls, lid and base must leave a box. */
export const boxHasInside: Rule = {
  name: 'box-has-inside',
  title: 'Inside of the box',
  unit: 'mm',
  wants: 'least',
  limits: [],
  measure({ box }) {
    const found: Measurement[] = []
    const sizes = [
      box.insideX1 - box.insideX0,
      box.insideTreble - box.insideBass,
      box.lidBottom - box.baseTop,
    ]
    const measured = Math.min(...sizes)
    found.push({
      about: ['box'],
      measured,
      limit: 0,
      grade: measured > 0 ? 'clear' : 'stop',
      where: { view: 'section', from: { x: box.x0, y: box.baseTop }, to: { x: box.x1, y: box.lidBottom } },
      data: { which: ['long', 'wide', 'deep'][sizes.indexOf(measured)] ?? '' },
    })
    return found
  },
  words({ measured, grade, data }, say) {
    return grade === 'clear'
      ? `The box is ${say.length(measured ?? 0)} ${data?.which} inside, its least.`
      : `Walls, lid and base leave nothing inside: together they take ${say.length(-(measured ?? 0))} more than the box is ${data?.which}. Measure them again.`
  },
}

/** The nut end must lie outside the box, or there is no neck to play on. */
export const neckBeforeBox: Rule = {
  name: 'neck-before-box',
  title: 'Neck before the box',
  unit: 'mm',
  wants: 'least',
  limits: [],
  mendedBy: ['saddle.place', 'scale.length'],
  measure({ box }) {
    const found: Measurement[] = []
    found.push({
      about: ['neck', 'box'],
      measured: box.x0,
      limit: 0,
      grade: box.x0 > 0 ? 'clear' : 'stop',
      where: { view: 'plan', from: { x: 0, y: 0 }, to: { x: box.x0, y: 0 } },
    })
    return found
  },
  words({ measured, grade }, say) {
    return grade === 'clear'
      ? `From the nut to the box are ${say.length(measured ?? 0)}.`
      : `The nut falls on the box, ${say.length(-(measured ?? 0))} behind its neck-end edge. Use a longer scale, or move the saddle up the lid.`
  },
}
