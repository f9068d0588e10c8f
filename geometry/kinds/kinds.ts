/** The one list of kinds. A new kind is one file beside this one and one line here. */
import { ferrule } from './ferrule.ts'
import { gluedBrace } from './glued-brace.ts'
import { grommet } from './grommet.ts'
import { hatch } from './hatch.ts'
import { jack } from './jack.ts'
import type { Kind } from './kind.ts'
import { namePlate } from './name-plate.ts'
import { ownCurve } from './own-curve.ts'
import { pickup } from './pickup.ts'
import { pot } from './pot.ts'
import { rosette } from './rosette.ts'
import { screw } from './screw.ts'
import { slot } from './slot.ts'
import { soundHole } from './sound-hole.ts'
import { strapButton } from './strap-button.ts'
import { toggle } from './switch.ts'
import { tailpiecePlate } from './tailpiece-plate.ts'

export const KINDS = {
  'sound-hole': soundHole,
  slot,
  rosette,
  'own-curve': ownCurve,
  hatch,
  pickup,
  pot,
  switch: toggle,
  jack,
  screw,
  'glued-brace': gluedBrace,
  'tailpiece-plate': tailpiecePlate,
  ferrule,
  grommet,
  'strap-button': strapButton,
  'name-plate': namePlate,
} as const

export type KindName = keyof typeof KINDS

/** The kind by its stored name. Throws for a name that is not in the list: files are checked before. */
export function kindOf(name: string): Kind {
  const kind = (KINDS as unknown as Record<string, unknown>)[name] as Kind | undefined
  if (!kind || !Object.hasOwn(KINDS, name)) throw new Error(`there is no kind of thing called "${name}"`)
  return kind
}
