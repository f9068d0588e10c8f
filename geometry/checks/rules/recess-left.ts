import { notes } from '../../quantity/notes.ts'
import type { Layout, Placed } from '../../solve/layout.ts'
import { gradeLeast, type Measurement, NOTHING_LEFT, type Rule } from '../finding.ts'
import { capital } from '../say.ts'

/** Kinds whose recess a rule of its own judges: the step of a rim. */
const hasOwnRule = ({ kind, thing }: Placed): boolean => (kind.rim?.(thing) ?? null) !== null

/** Under what is let into a face some of it must be left: a countersink, a plate, a bore. */
export const recessLeft: Rule = {
  name: 'recess-left',
  title: 'Wood left under what is let in',
  unit: 'mm',
  wants: 'least',
  limits: ['woodUnderRecess'],
  mendedBy: ['thing.depth', 'thing.letIn', 'thing.ledgeDepth', 'thing.boreDepth'],
  measure(layout, limit) {
    const found: Measurement[] = []
    for (const one of layout.placed) {
      if (hasOwnRule(one) || one.kind.strewn) continue
      const deep = deepest(one)
      if (deep <= 0) continue
      const measured = thicknessOf(layout, one) - deep
      const wanted = limit('woodUnderRecess')
      found.push({
        about: [one.thing.id],
        measured,
        limit: wanted,
        grade: gradeLeast(measured, wanted, NOTHING_LEFT),
        where: { view: one.face, from: one.at, to: one.at },
        data: { deep, thickness: thicknessOf(layout, one) },
      })
    }
    return found
  },
  words({ measured, limit, about, grade, data }, say) {
    const who = capital(say.thing(about[0] ?? ''))
    const let_ = `${who} is let in ${say.length(Number(data?.deep))} and the wood is ${say.length(Number(data?.thickness))}`
    if (grade === 'stop') return `${let_}: it falls through. Let it in less.`
    return grade === 'clear'
      ? `${who} leaves ${say.length(measured ?? 0)} of wood under it.`
      : `${let_}: under it ${say.length(measured ?? 0)} are left, and ${say.length(limit ?? 0)} are wanted.`
  },
}

const thicknessOf = ({ panels }: Layout, { face }: Placed): number => panels[face].thickness

const depths = notes<Placed, number>()

function deepest(placed: Placed): number {
  const known = depths.get(placed)
  if (known !== undefined) return known
  const { kind, thing } = placed
  const deep = kind
    .operations(thing)
    .reduce((most, one) => (one.kind === 'recess' ? Math.max(most, one.depth) : most), 0)
  depths.set(placed, deep)
  return deep
}
