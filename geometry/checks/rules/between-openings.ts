import { FACES, type Face } from '../../kinds/kind.ts'
import { type Bounds, gap, nearest, neighbours } from '../../plane/index.ts'
import { gradeLeast, type Measurement, ROUNDING, type Rule } from '../finding.ts'
import { capital } from '../say.ts'
import { type Opening, openingsOn } from './openings.ts'

/** Neighbours that hold are told up to this many times their limit; farther ones are nobody's worry. */
const LOOK_AROUND = 2

interface Pair {
  readonly a: Opening
  readonly b: Opening
  readonly measured: number
  readonly limit: number
}

export const betweenOpenings: Rule = {
  name: 'between-openings',
  title: 'Wood between openings',
  unit: 'mm',
  wants: 'least',
  limits: ['betweenOpenings', 'screwToOpening'],
  mendedBy: ['place', 'size'],
  measure(layout, limit) {
    const found: Measurement[] = []
    for (const face of FACES) {
      const openings = openingsOn(layout, face)
      for (const pair of tightestPairs(openings, limit)) found.push(measurement(face, pair))
    }
    return found
  },
  words({ measured, limit, about, grade }, say) {
    const [a, b] = [say.thing(about[0] ?? ''), say.thing(about[1] ?? '')]
    if (grade === 'stop')
      return `${capital(a)} and ${b} run into each other by ${say.length(-(measured ?? 0))}. Move one of them.`
    const left = `${capital(a)} and ${b} leave ${say.length(measured ?? 0)} of wood between them`
    return grade === 'clear' ? `${left}.` : `${left}; holes of this size want ${say.length(limit ?? 0)}.`
  },
}

function measurement(face: Face, { a, b, measured, limit }: Pair): Measurement {
  const { from, to } = nearest(a.contour, b.contour)
  return {
    about: a.about < b.about ? [a.about, b.about] : [b.about, a.about],
    measured,
    limit,
    grade: gradeLeast(measured, limit, 0),
    where: { view: face, from, to },
  }
}

/** For each opening the neighbour that crowds it most, every pair once. String holes in one row have their own rule. */
function tightestPairs(openings: readonly Opening[], limit: (name: Opening['gapLimit']) => number): Pair[] {
  if (openings.length < 2) return []
  const index = neighbours(openings.map((one) => one.bounds))
  const wanted = openings.map((one) =>
    one.gapLimit === 'betweenOpenings'
      ? Math.max(limit('betweenOpenings'), one.radius)
      : limit('screwToOpening'),
  )
  const tightest: (Pair | undefined)[] = openings.map(() => undefined)
  const keep = (at: number, pair: Pair) => {
    const held = tightest[at]
    if (!held || isTighter(pair, held)) tightest[at] = pair
  }
  // Who wants the most room looks first and farthest: whom it does not meet is not met from the other side either.
  const order = openings.map((_, at) => at).sort((a, b) => wanted[b]! - wanted[a]!)
  const looked = new Set<number>()
  for (const here of order) {
    looked.add(here)
    const one = openings[here]!
    for (const there of index.near(one.bounds, wanted[here]! * LOOK_AROUND)) {
      const other = openings[there]!
      if (looked.has(there) || (isStringHole(one) && isStringHole(other))) continue
      const bothOpen = one.gapLimit === 'betweenOpenings' && other.gapLimit === 'betweenOpenings'
      // Of two openings the first that looks wants the more.
      const least = bothOpen ? wanted[here]! : limit('screwToOpening')
      const [a, b] = here < there ? [one, other] : [other, one]
      const pair = { a, b, measured: gap(a.contour, b.contour), limit: least }
      keep(here, pair)
      keep(there, pair)
    }
  }
  return [...new Set(tightest.filter((pair) => pair !== undefined))]
}

const isStringHole = ({ about }: Opening) => about.startsWith('string hole')

/** Of equally tight pairs the one nearest the head and the bass side, so that the order of the file decides nothing. */
function isTighter(pair: Pair, held: Pair): boolean {
  const less = pair.measured - pair.limit - (held.measured - held.limit)
  if (Math.abs(less) > ROUNDING) return less < 0
  const sum = (one: Pair, side: keyof Bounds) => one.a.bounds[side] + one.b.bounds[side]
  const headward = sum(pair, 'minX') - sum(held, 'minX')
  return headward === 0 ? sum(pair, 'minY') < sum(held, 'minY') : headward < 0
}
