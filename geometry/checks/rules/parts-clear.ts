import { sideWallAt } from '../../box/outlines.ts'
import type { Face } from '../../kinds/kind.ts'
import { type Conflict, conflictsOf, onFace } from '../../solids/index.ts'
import type { Layout, Placed } from '../../solve/layout.ts'
import { gradeLeast, type Measurement, type Rule } from '../finding.ts'
import { capital, type Say } from '../say.ts'

/** What stands behind one face against what stands behind another, and against wood and strings. */
export const partsClear: Rule = {
  name: 'parts-clear',
  title: 'Parts clear of each other inside',
  unit: 'mm',
  wants: 'least',
  limits: ['partsApart'],
  mendedBy: ['place', 'thing.screwLength', 'thing.depth'],
  measure(layout, limit) {
    const found: Measurement[] = []
    if (!layout.placed.some(hasBodies)) return found
    const wanted = limit('partsApart')
    for (const conflict of conflictsOf(layout)) found.push(measurement(conflict, wanted, layout))
    return found
  },
  words({ measured, limit, about, grade, data }, say) {
    const [a, b] = [part(data?.a, about[0], say), part(data?.b, about[1], say)]
    const apart = say.length(Math.abs(measured ?? 0))
    if (grade === 'stop')
      return `${capital(a)} and ${b} want the same room, by ${apart}, ${say.length(Number(data?.deep))} behind the ${words(data?.face)}. Move one of them, or choose a shallower one.`
    const left = `${capital(a)} and ${b} are ${apart} apart inside`
    return grade === 'clear' ? `${left}.` : `${left}; ${say.length(limit ?? 0)} keep them from touching.`
  },
}

const hasBodies = ({ kind }: Placed): boolean => kind.bodies !== undefined

const words = (face: unknown): string => String(face).replaceAll('-', ' ')

/** `the body of pot volume`, `the neck`. */
function part(name: unknown, of: string | undefined, say: Say): string {
  const whole = say.thing(of ?? '').replaceAll('-', ' ')
  return name ? `the ${name} of ${whole}` : whole
}

function measurement({ a, b, room, from, to }: Conflict, wanted: number, layout: Layout): Measurement {
  const face = a.face ?? 'lid'
  const deep = depthBehind(face, from, to, layout)
  return {
    about: [a.of, b.of],
    measured: room,
    limit: wanted,
    grade: gradeLeast(room, wanted, 0),
    where: { view: face, from: onFace(layout, face, from), to: onFace(layout, face, to) },
    data: { a: a.part, b: b.part, face, deep },
  }
}

/** How far behind a face's outer side the middle of the place lies, never negative. */
function depthBehind(face: Face, from: Conflict['from'], to: Conflict['to'], layout: Layout): number {
  const { box } = layout
  const at = { x: (from.x + to.x) / 2, y: (from.y + to.y) / 2, z: (from.z + to.z) / 2 }
  const deep = {
    lid: -at.z,
    base: at.z - box.baseBottom,
    'bass-wall': at.y - sideWallAt(layout, 'bass-wall', at.x),
    'treble-wall': sideWallAt(layout, 'treble-wall', at.x) - at.y,
    'neck-end-wall': at.x - box.x0,
    'tail-end-wall': box.x1 - at.x,
  }[face]
  return Math.max(0, deep)
}
