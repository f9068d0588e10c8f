/**
 * One string as it is made, and what follows from that whatever the pitch: mass, stiffness against stretching and
 * bending, breaking load. Millimetres, newtons, kg/mm.
 */
import { positive } from '../quantity/demand.ts'
import {
  type CoreShape,
  coreArea,
  coreInertia,
  plainMass,
  USUAL_FLOSS_SHARE,
  usualCoreShare,
  woundMass,
} from './mass.ts'
import type { StringMaterial } from './materials.ts'
import { breakingLoad } from './strength.ts'

/** How a string is made. `stated` is for a string whose unit mass is known or was weighed. */
export type StringMake =
  | { readonly construction: 'plain'; readonly diameter: number; readonly material: StringMaterial }
  | {
      readonly construction: 'wound'
      readonly diameter: number
      readonly material: StringMaterial
      readonly wrap: StringMaterial
      /** Diameter of the core, across the flats of a hexagonal one; `usualCoreShare` of the whole where not given. */
      readonly core?: number
      readonly coreShape?: CoreShape
    }
  | {
      readonly construction: 'stated'
      readonly diameter: number
      readonly unitMass: number
      /** Of what carries the pull: the core, or a plain string whole. */
      readonly material: StringMaterial
      readonly core?: number
    }

export interface StringBody {
  readonly diameter: number
  /** Diameter of what carries the pull. */
  readonly core: number
  /** kg/mm. */
  readonly unitMass: number
  /** Newtons for a stretch of the whole length, `E A` of the core; the winding opens and bears nothing. */
  readonly stretch: number
  /** N·mm², `E I` of the core. */
  readonly bend: number
  /** Newtons. */
  readonly breaking: number
}

export type BodyReading =
  | { readonly ok: true; readonly body: StringBody }
  | { readonly ok: false; readonly why: 'no room for a winding' | 'carries no pull' }

/**
 * What a make comes to. `no room for a winding`: the core is as thick as the string; `carries no pull`: a core or
 * plain string of a material that is only wound on.
 * Example: plain music wire of 0.4318 mm (.017 in) has 1.151e-6 kg/mm and breaks at 362 N.
 */
export function bodyOf(make: StringMake): BodyReading {
  const { material, diameter } = make
  positive(diameter, 'the diameter of a string')
  if (!material.strength) return { ok: false, why: 'carries no pull' }
  const shape = make.construction === 'wound' ? (make.coreShape ?? 'round') : 'round'
  const core = coreOf(make)
  const unitMass = massOf(make, core, shape)
  if (unitMass === null) return { ok: false, why: 'no room for a winding' }
  const area = coreArea(core, shape)
  return {
    ok: true,
    body: {
      diameter,
      core,
      unitMass,
      stretch: material.stiffness * area,
      bend: material.stiffness * coreInertia(core, shape),
      breaking: breakingLoad(material.strength(core), area),
    },
  }
}

function coreOf(make: StringMake): number {
  if (make.construction === 'plain') return make.diameter
  if (make.core !== undefined) return make.core
  if (make.construction === 'stated') return make.diameter
  return make.diameter * (isFloss(make.material) ? USUAL_FLOSS_SHARE : usualCoreShare(make.diameter))
}

/** Lighter than any metal that strings are made of: nylon and its like, used as floss under a winding. */
const isFloss = (material: StringMaterial) => material.density < 2500e-9

function massOf(make: StringMake, core: number, shape: CoreShape): number | null {
  switch (make.construction) {
    case 'plain':
      return plainMass(core, make.material.density)
    case 'stated':
      return core > make.diameter ? null : positive(make.unitMass, 'a unit mass')
    case 'wound': {
      const { diameter, material, wrap } = make
      const winding = {
        diameter,
        core,
        coreShape: shape,
        coreDensity: material.density,
        wrapDensity: wrap.density,
      }
      return woundMass(winding)?.unitMass ?? null
    }
  }
}
