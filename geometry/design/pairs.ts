/**
 * Companions: things that follow another in both places, as a mirrored partner or as the rest of a row or ring. Where
 * they are alike they stay alike: a size or a turn changed on one is changed on all that had the same.
 */
import { thingCalled } from './called.ts'
import type { Path } from './changes.ts'
import type { Design, Thing } from './schema.ts'

/** Whom a thing follows on both axes, and whether it is the mirror image; `null` where it stands by itself. */
export function leaderOf({ along, across }: Thing): { id: string; mirrored: boolean } | null {
  if (typeof along !== 'object' || typeof across !== 'object') return null
  if ('mirror' in along && 'mirror' in across && along.mirror === across.mirror)
    return { id: along.mirror, mirrored: true }
  if ('from' in along && 'from' in across && along.from === across.from)
    return { id: along.from, mirrored: false }
  return null
}

export interface Companion {
  readonly thing: Thing
  readonly index: number
  /** Is it a mirror image of the one asked about? */
  readonly mirrored: boolean
}

/** All that hang together with a thing, of the same kind, itself left out. */
export function companionsOf(design: Design, id: string): Companion[] {
  const own = thingCalled(design, id)
  if (!own) return []
  // Whether each is the mirror image of the first, found by going from one to the next either way.
  const met = new Map<string, boolean>([[id, false]])
  const links = design.things.flatMap((thing) => {
    const leader = leaderOf(thing)
    return leader ? [{ a: thing.id, b: leader.id, mirrored: leader.mirrored }] : []
  })
  for (let grew = links.length > 0; grew; ) {
    grew = false
    for (const { a, b, mirrored } of links) {
      const [known, other] = met.has(a) ? [a, b] : met.has(b) ? [b, a] : [null, null]
      if (known === null || other === null || met.has(other)) continue
      met.set(other, (met.get(known) ?? false) !== mirrored)
      grew = true
    }
  }
  met.delete(id)
  return design.things.flatMap((thing, index) =>
    met.has(thing.id) && thing.kind === own.kind
      ? [{ thing, index, mirrored: met.get(thing.id) === true }]
      : [],
  )
}

/** Fields that every thing has for itself. */
const OWN: ReadonlySet<string> = new Set(['id', 'kind', 'name', 'face', 'along', 'across', 'locked', 'group'])

/** The field set on one thing, and on every companion that had the same value. */
export function setWithCompanions(
  design: Design,
  index: number,
  name: string,
  value: unknown,
): (readonly [Path, unknown])[] {
  const thing = design.things[index]
  const own = [['things', index, name], value] as const
  if (!thing || OWN.has(name)) return [own]
  const before = (thing as Record<string, unknown>)[name]
  const others = companionsOf(design, thing.id).flatMap((one) => {
    const theirs = (one.thing as Record<string, unknown>)[name]
    const turned = name === 'turnDegrees' && one.mirrored
    const image = (of: unknown) => (turned && typeof of === 'number' ? -of + 0 : of)
    return theirs === image(before) ? [[['things', one.index, name], image(value)] as const] : []
  })
  return [own, ...others]
}
