/** What a rule found, as a value: a measure, its limit, and where. `words.ts` of each rule turns it into a sentence. */

import type { LimitName } from '../design/limits.ts'
import { LIMITS } from '../design/limits.ts'
import type { Design } from '../design/schema.ts'
import type { Face } from '../kinds/kind.ts'
import type { Point } from '../plane/index.ts'
import type { Layout } from '../solve/layout.ts'
import type { Say } from './say.ts'
import type { SourceName } from './sources.ts'

/** `stop`: cannot be built or will fail. `care`: risky, the builder may overrule it. `clear`: measured and good. */
export type Grade = 'stop' | 'care' | 'note' | 'clear'

/**
 * The stretch that was measured. `plan` is the instrument frame seen from the front (x, y), `section` the centreline
 * section (x, z); a face is that panel's own frame.
 */
export interface Where {
  readonly view: 'plan' | 'section' | Face
  readonly from: Point
  readonly to: Point
}

export interface Measurement {
  /** Ids of the things it is about, or names of structure: `neck`, `saddle`, `string 1`. */
  readonly about: readonly string[]
  /** Millimetres, or the unit the rule states. `null` where there is nothing to measure. */
  readonly measured: number | null
  readonly limit: number | null
  readonly grade: Grade
  readonly where: Where
  /** Numbers and words that the sentence needs. */
  readonly data?: Readonly<Record<string, number | string>>
}

export interface Finding extends Measurement {
  readonly rule: string
  /** Names this finding for good: what `overruled` in the file points at. */
  readonly key: string
  /** `measured - limit`, turned so that more is always better; `null` where nothing was measured. */
  readonly margin: number | null
  readonly unit: 'mm' | 'degrees' | 'share' | 'count' | 'newtons'
  /** The builder's reason, where he decided to live with it. */
  readonly overruled?: string
}

export interface Rule {
  /** Stable, in files and reports: `opening-to-edge`. */
  readonly name: string
  /** What is measured, a few words: `Opening to the edge`. */
  readonly title: string
  readonly unit: Finding['unit']
  /** `least`: more is better; `most`: less is better. */
  readonly wants: 'least' | 'most'
  readonly limits: readonly LimitName[]
  /** Where its number comes from, where it is reckoned rather than measured on the drawing. */
  readonly basis?: readonly SourceName[]
  /** Its lengths are too fine for a rule: said to a hundredth of a millimetre. */
  readonly fine?: boolean
  /**
   * What a builder would change to mend it, the likeliest first: fields as `neck.relief`; `thing.depth` and
   * `inside.tall` for a field of what it is about; `place` to move that, `size` to make an opening larger or smaller.
   */
  readonly mendedBy?: readonly string[]
  /** It measures how far something is off what it should be: a cure goes all the way and not just within the limit. */
  readonly aims?: true
  measure(layout: Layout, limit: (name: LimitName) => number): readonly Measurement[]
  /** What was measured, what is wrong, what would do; one or two sentences. */
  words(finding: Finding, say: Say, layout: Layout): string
}

/** The limit in force: the design's own, or the default. */
export const limitOf =
  (design: Design) =>
  (name: LimitName): number =>
    design.limits[name] ?? LIMITS[name].value

/** Degrees, in which findings tell angles, of radians, in which they are reckoned. */
export const degreesOf = (radians: number): number => (radians * 180) / Math.PI

/** `care` under the limit, `stop` under the hard floor, else `clear`. */
export function gradeLeast(measured: number, limit: number, floor = Number.NEGATIVE_INFINITY): Grade {
  if (measured < floor - ROUNDING) return 'stop'
  return measured < limit - ROUNDING ? 'care' : 'clear'
}

/** `care` over the limit, `stop` over the hard ceiling, else `clear`. */
export function gradeMost(measured: number, limit: number, ceiling = Number.POSITIVE_INFINITY): Grade {
  return gradeLeast(-measured, -limit, -ceiling)
}

/** What exact arithmetic would call equal must not fail by the last digit of a floating number; millimetres. */
export const ROUNDING = 1e-9

/** A floor for `gradeLeast` where nothing left at all is a stop; millimetres. */
export const NOTHING_LEFT = 1e-6
