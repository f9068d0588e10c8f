/**
 * What pulls, bends and sags: the answer of `loadsOf`.
 *
 * Millimetres, newtons, N/mm², radians, kg/mm, cents; the instrument frame of `solve/layout.ts`. All of it is an
 * estimate from the assumptions that the modules below it name.
 */
import type { BreakAngle } from '../lid/down-force.ts'
import type { NeckBow } from '../neck/bending.ts'
import type { NeckStretch } from '../solve/layout.ts'
import type { StringBody } from '../strings/body.ts'
import type { Feel } from '../strings/feel.ts'
import type { SaddleLine } from '../strings/saddle-line.ts'
import type { StatedPitch, Strung } from './strung.ts'

/** What a string does at pitch. */
export interface StringAtPitch {
  readonly pitch: StatedPitch
  readonly body: StringBody
  /** Newtons, over the bare scale. */
  readonly tension: number
  readonly shareOfBreaking: number
  readonly feel: Feel
  /** Setback of the saddle that makes its octave true; `null` where none within a tenth of the scale does. */
  readonly setback: number | null
  /** What it presses on the saddle with; `null` where no hole holds it behind the saddle. */
  readonly downForce: number | null
}

export type StringLoad = Strung & {
  readonly index: number
  /** As the trade counts: 1 is the treble string. */
  readonly number: number
  readonly gauge: number
  /** How the string bends over the saddle; `null` where no hole holds it behind the saddle. */
  readonly atSaddle: BreakAngle | null
  /** How it falls away behind the nut, radians; `null` where it has no post. */
  readonly breakAtNut: number | null
  /** `null` until a tuning names a pitch for every string, and for a string that cannot be made. */
  readonly atPitch: StringAtPitch | null
}

/** Why the pull is not known. */
export type Missing =
  | { readonly why: 'no tuning' }
  | { readonly why: 'tuning too short'; readonly stated: number }
  | { readonly why: 'a string cannot be made' }

export interface NeckLoads extends Omit<NeckBow, 'weakest'> {
  readonly weakest: NeckBow['weakest'] & {
    /** The stretch of the neck in which it lies. */
    readonly of: NeckStretch['of']
  }
  /** The same for the head alone, nut to posts: share of its strength there; `null` without posts. */
  readonly head: NeckBow['weakest'] | null
}

/** Why a neck under load has no numbers. */
export type NeckTrouble = 'nut on the box' | 'no wood left' | 'gives way'

export interface SaddleLoads {
  /** The plane through the crowns (or the bare board), over the lid. */
  readonly crowns: number
  readonly heightWanted: number
  /** Strings over the crowns at the octave, half way along the scale: as drawn, and with the neck bent by the pull. */
  readonly action: number
  readonly actionUnderPull: number | null
  /** Raising or tilting the neck by this would bring the saddle into what can be built; `null` where it can. */
  readonly cure: { readonly raise: number; readonly tilt: number | null } | null
  /** The straight line through the setbacks the strings want; `null` until they are known, and for a fretless board. */
  readonly line: SaddleLine | null
  /** From the nut: where a loose saddle must be able to stand. */
  readonly band: { readonly from: number; readonly to: number }
}

export interface LidLoads {
  /** All strings together, onto the lid. */
  readonly downForce: number
  /** At the saddle, as stated: with the brace where there is one. 0 where the neck carries the lid. */
  readonly sag: number
  /** The same without a brace. */
  readonly bareSag: number
  /** Does the lid lie on the neck under the saddle? Then the neck carries it. */
  readonly onNeck: boolean
}

export interface Loads {
  /** `null` where everything is known. */
  readonly missing: Missing | null
  readonly strings: readonly StringLoad[]
  readonly totalPull: number | null
  /** Slackest and tightest string against the mean. */
  readonly spread: { readonly mean: number; readonly least: number; readonly most: number } | null
  readonly neck: NeckLoads | null
  readonly neckTrouble: NeckTrouble | null
  readonly saddle: SaddleLoads
  readonly lid: LidLoads | null
}
