/**
 * What a measure happens to be: half way between two lines, a quarter of the scale, the place of a partner. Offered
 * to be kept as that, so that it follows when the box changes. Nothing is changed before the builder says so.
 */
import {
  type Across,
  type Along,
  apply,
  change,
  type Layout,
  type Path,
  type Placed,
  placedCalled,
  solve,
  type Thing,
} from '../../geometry/index.ts'
import { type Axis, partnersFor } from './place-kinds.ts'
import { nameOf } from './say.ts'

export interface Intent {
  readonly place: Along | Across
  readonly words: string
}

/** Nearer than this, a measure is what the relation comes to; a hundredth of a millimetre. */
const SAME = 0.01

const midway = (a: string, b: string): Intent => ({
  place: { midway: [a, b] },
  words: `midway between ${a} and ${b}`,
})

const ALONG: readonly Intent[] = [
  midway('neck-end edge', 'saddle'),
  midway('saddle', 'tail-end wall'),
  midway('saddle', 'tail-end edge'),
  midway('board end', 'saddle'),
  midway('neck-end edge', 'tail-end edge'),
  { place: { ofScale: 0.25 }, words: 'a quarter of the scale from the saddle' },
  { place: { ofScale: 0.5 }, words: 'half the scale from the saddle' },
]

const ACROSS: readonly Intent[] = [
  midway('neck treble side', 'treble edge'),
  midway('neck bass side', 'bass edge'),
  midway('neck treble side', 'treble wall'),
  midway('neck bass side', 'bass wall'),
]

/**
 * The first relation that says where a thing stands on one axis already, or `null`. `path` is that of its place. Each one
 * asked about costs a solve, so of thousands of partners only those are asked about that lie where a partner would.
 */
export function intentAt(layout: Layout, thing: Thing, axis: Axis, path: Path): Intent | null {
  const now = placedCalled(layout, thing.id)
  if (!now) return null
  const plan = thing.face === 'lid' || thing.face === 'base'
  const mirrored = axis === 'across' && plan
  const apart = ({ at }: Placed) =>
    axis === 'along' ? at.x - now.at.x : mirrored ? at.y + now.at.y : at.y - now.at.y
  const partners = partnersFor(layout, thing)
    .filter(
      (one) =>
        one.face === thing.face &&
        one.thing.kind === thing.kind &&
        Math.abs(apart(one)) < SAME &&
        !follows(one.thing[axis], thing.id),
    )
    .map(
      (one): Intent => ({
        place: { mirror: one.thing.id },
        words: `${mirrored ? 'the mirror place of' : 'in line with'} ${nameOf(one.thing.id, layout)}`,
      }),
    )
  const plain = plan ? (axis === 'along' ? ALONG : ACROSS) : []
  return [...plain, ...partners].find((intent) => comesTo(layout, now, axis, path, intent)) ?? null
}

const follows = (place: Along | Across, id: string) =>
  typeof place === 'object' &&
  (('mirror' in place && place.mirror === id) || ('midway' in place && place.midway.includes(id)))

function comesTo(layout: Layout, now: Placed, axis: Axis, path: Path, { place }: Intent): boolean {
  const tried = solve(apply(layout.design, change(layout.design, [path, place])))
  const then = placedCalled(tried, now.thing.id)
  if (!then || tried.problems.length > layout.problems.length) return false
  return Math.abs(axis === 'along' ? now.at.x - then.at.x : now.at.y - then.at.y) < SAME
}
