/** Knobs, plates and buttons lie on a face: they need room beside each other, and a face under them. */

import { FACES } from '../../kinds/kind.ts'
import { type Contour, clearance, gap, move, nearest, neighbours, turn } from '../../plane/index.ts'
import { notes } from '../../quantity/notes.ts'
import type { Layout, Placed } from '../../solve/layout.ts'
import { gradeLeast, type Measurement, type Rule } from '../finding.ts'
import { capital } from '../say.ts'

const known = notes<Placed, { readonly cover: Contour | null }>()

/** What lies before the face where the thing stands; strips glued behind it are no cover. */
function coverOf(placed: Placed): Contour | null {
  const before = known.get(placed)
  if (before) return before.cover
  const { kind, thing, at } = placed
  const behind = kind.bodies !== undefined && kind.taken?.(thing) === null
  const own = behind ? null : (kind.cover?.(thing) ?? null)
  const cover = own && move(turn(own, (thing.turnDegrees * Math.PI) / 180), at.x, at.y)
  known.set(placed, { cover })
  return cover
}

interface Covering {
  readonly placed: Placed
  readonly cover: Contour
}

const NONE: readonly Covering[] = []

function covers({ placed: all }: Layout): readonly Covering[] {
  let found: Covering[] | null = null
  for (const placed of all) {
    const cover = placed.kind.cover ? coverOf(placed) : null
    if (!cover) continue
    if (found) found.push({ placed, cover })
    else found = [{ placed, cover }]
  }
  return found ?? NONE
}

export const coverOnFace: Rule = {
  name: 'cover-on-face',
  title: 'Knobs and plates on their face',
  unit: 'mm',
  wants: 'least',
  limits: [],
  mendedBy: ['place', 'size'],
  measure(layout) {
    const found: Measurement[] = []
    for (const { placed, cover } of covers(layout)) {
      const { distance, from, to } = clearance(cover, layout.panels[placed.face].outline)
      found.push({
        about: [placed.thing.id],
        measured: distance,
        limit: 0,
        grade: gradeLeast(distance, 0),
        where: { view: placed.face, from, to },
        data: { face: placed.face.replaceAll('-', ' ') },
      })
    }
    return found
  },
  words({ measured, about, grade, data }, say) {
    const who = capital(say.thing(about[0] ?? ''))
    return grade === 'clear'
      ? `${who} lies ${say.length(measured ?? 0)} inside the edge of the ${data?.face}.`
      : `${who} stands ${say.length(-(measured ?? 0))} over the edge of the ${data?.face}. Move it in, or choose a smaller one.`
  },
}

export const coversApart: Rule = {
  name: 'covers-apart',
  title: 'Knobs and plates apart',
  unit: 'mm',
  wants: 'least',
  limits: ['coversApart'],
  mendedBy: ['place'],
  measure(layout, limit) {
    const found: Measurement[] = []
    const all = covers(layout)
    if (all.length < 2) return found
    const wanted = limit('coversApart')
    for (const face of FACES) {
      const here = all.filter(({ placed }) => placed.face === face)
      if (here.length < 2) continue
      const index = neighbours(here.map(({ placed }) => placed.bounds))
      for (const [first, a] of here.entries())
        for (const other of index.near(a.placed.bounds, wanted * 2)) {
          const b = here[other]
          if (!b || other <= first) continue
          const measured = gap(a.cover, b.cover)
          const { from, to } = nearest(a.cover, b.cover)
          found.push({
            about: [a.placed.thing.id, b.placed.thing.id],
            measured,
            limit: wanted,
            grade: gradeLeast(measured, wanted, 0),
            where: { view: face, from, to },
          })
        }
    }
    return found
  },
  words({ measured, limit, about, grade }, say) {
    const [a, b] = [say.thing(about[0] ?? ''), say.thing(about[1] ?? '')]
    if (grade === 'stop')
      return `${capital(a)} and ${b} lie over each other by ${say.length(-(measured ?? 0))}. Move one of them.`
    const left = `${capital(a)} and ${b} are ${say.length(measured ?? 0)} apart on the face`
    return grade === 'clear' ? `${left}.` : `${left}; a finger wants ${say.length(limit ?? 0)} between them.`
  },
}
