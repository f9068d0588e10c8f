/** The one list of kinds. A new kind is one file beside this one and one line here. */
import type { Kind } from './kind.ts'
import { pickup } from './pickup.ts'
import { screw } from './screw.ts'
import { soundHole } from './sound-hole.ts'

export const KINDS = { 'sound-hole': soundHole, pickup, screw } as const

export type KindName = keyof typeof KINDS

/** The kind by its stored name. Throws for a name that is not in the list: files are checked before. */
export function kindOf(name: string): Kind {
  const kind = (KINDS as Record<string, unknown>)[name] as Kind | undefined
  if (!kind || !Object.hasOwn(KINDS, name)) throw new Error(`there is no kind of thing called "${name}"`)
  return kind
}
