/** The ways a place can be meant, and how to turn one into another without moving anything where that is possible. */
import {
  ACROSS_LINES,
  type Across,
  ALONG_LINES,
  type Along,
  clean,
  type Face,
  type Layout,
  type Placed,
  type Thing,
} from '../../geometry/index.ts'

export type PlaceKind = 'measure' | 'share' | 'midway' | 'ofScale' | 'mirror' | 'from'
export type Axis = 'along' | 'across'

export const KIND_WORDS: Readonly<Record<PlaceKind, string>> = {
  measure: 'a measure',
  share: 'a share of the face',
  midway: 'midway between two lines',
  ofScale: 'a share of the scale',
  mirror: 'as its partner',
  from: 'so far from another thing',
}

export function kindOfPlace(place: Along | Across): PlaceKind {
  if (typeof place === 'number') return 'measure'
  if ('share' in place) return 'share'
  if ('midway' in place) return 'midway'
  if ('from' in place) return 'from'
  return 'mirror' in place ? 'mirror' : 'ofScale'
}

const isPlan = (face: Face) => face === 'lid' || face === 'base'

/** Faces on which a partner can stand: lid and base with each other, walls with each other. */
export const partnersFor = (layout: Layout, thing: Pick<Thing, 'id' | 'face'>): readonly Placed[] =>
  layout.placed.filter((one) => one.thing.id !== thing.id && isPlan(one.face) === isPlan(thing.face))

/** The kinds of place that make sense here. */
export function kindsFor(layout: Layout, axis: Axis, thing: Pick<Thing, 'id' | 'face'> | null): PlaceKind[] {
  if (!thing) return ['measure', 'share', 'midway']
  const plan = isPlan(thing.face)
  return [
    'measure',
    'share',
    ...(plan || partnersFor(layout, thing).length > 1 ? (['midway'] as const) : []),
    ...(axis === 'along' && plan ? (['ofScale'] as const) : []),
    ...(partnersFor(layout, thing).length > 0 ? (['mirror', 'from'] as const) : []),
  ]
}

/** Lines that a midway can be between: those of the face, then the things on it. */
export function linesOf(layout: Layout, axis: Axis, thing: Pick<Thing, 'id' | 'face'> | null): string[] {
  const names: readonly string[] = axis === 'along' ? ALONG_LINES : ACROSS_LINES
  if (!thing) return names.filter((name) => name !== 'saddle' && name !== 'board end')
  const lines = isPlan(thing.face)
    ? names
    : axis === 'along'
      ? ['neck-end edge', 'tail-end edge']
      : ['centreline']
  return [...lines, ...partnersFor(layout, thing).map((one) => one.thing.id)]
}

/** A place of the wanted kind, where the thing stands now if that kind can say it. `at` is in the face's frame. */
export function asKind(
  layout: Layout,
  kind: PlaceKind,
  axis: Axis,
  at: number,
  thing: Pick<Thing, 'id' | 'face'> | null,
): Along | Across {
  const face = thing?.face ?? 'lid'
  const { minX, maxX, minY, maxY } = layout.panels[face].bounds
  switch (kind) {
    case 'measure':
      return clean(axis === 'across' && !isPlan(face) ? -at : at)
    case 'share':
      if (axis === 'along') return { share: clean((at - minX) / (maxX - minX)) }
      return { share: clean(isPlan(face) ? (at >= 0 ? at / maxY : at / -minY) : -at / (maxY - minY)) }
    case 'ofScale': {
      const x = at + layout.panels[face].originX
      return { ofScale: clean(Math.min(1, Math.max(0, (layout.saddle.x - x) / layout.design.scale.length))) }
    }
    case 'mirror':
      return { mirror: nearestPartner(layout, thing, axis, at) }
    case 'from': {
      const other = partnersFor(layout, thing ?? { id: '', face }).find((one) => one.face === face)
      const theirs = other ? (axis === 'along' ? other.at.x : other.at.y) : 0
      const way = at - theirs
      return { from: other?.thing.id ?? '', by: clean(axis === 'across' && !isPlan(face) ? -way : way) }
    }
    case 'midway': {
      const lines = linesOf(layout, axis, thing)
      if (axis === 'along')
        return {
          midway: thing
            ? ['neck-end edge', lines.includes('saddle') ? 'saddle' : 'tail-end edge']
            : ['neck-end edge', 'tail-end edge'],
        }
      const treble = at >= 0
      return isPlan(face)
        ? { midway: treble ? ['neck treble side', 'treble edge'] : ['neck bass side', 'bass edge'] }
        : { midway: ['centreline', lines.find((line) => line !== 'centreline') ?? 'centreline'] }
    }
  }
}

/** The partner whose place this already is, or else the first there is. */
function nearestPartner(
  layout: Layout,
  thing: Pick<Thing, 'id' | 'face'> | null,
  axis: Axis,
  at: number,
): string {
  const partners = thing ? partnersFor(layout, thing) : []
  const plan = isPlan(thing?.face ?? 'lid')
  const off = (one: Placed) => Math.abs(axis === 'along' ? one.at.x - at : (plan ? -one.at.y : one.at.y) - at)
  return [...partners].sort((a, b) => off(a) - off(b))[0]?.thing.id ?? ''
}
