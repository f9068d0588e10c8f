/**
 * For every rule a design that keeps it and designs made to break it, each with what a pencil and the plain sizes
 * in the comment beside it say must be measured.
 *
 * The sizes that a file may leave out: box 240 × 180 × 55 with walls of 6 and lid and base of 4, lid on the walls,
 * base under them; scale 635 with 18 frets; three strings, 24 mm over all at the nut and 26 at the saddle, 0.4 mm
 * thick; saddle 172.8 mm along the lid (0.72 × 240), foot 5 × 50; neck 38 × 19 × 914, flush, relief 3, tail 38;
 * head 150 with posts at 45 and 77 mm, 7 mm either side; string holes of 2.4 mm, 13 mm apart, 14 mm behind the box.
 */
import type { Stated } from '../../../support/designs.ts'

export interface Breaking {
  readonly what: string
  readonly design: Stated
  readonly grade: 'stop' | 'care' | 'note'
  /** What must be measured, in the rule's own unit. */
  readonly measured: number
  /** Share by which the measure may differ where the pencil leaves out what the engine counts in. */
  readonly within?: number
}

export interface Case {
  /** Nothing of this rule is wrong here, and every limit of the rule is at work. */
  readonly holds: Stated
  readonly breaks: readonly Breaking[]
}

export type Cases = Readonly<Record<string, Case>>

export const hole = (fields: Stated = {}) => ({
  kind: 'sound-hole',
  id: 'hole',
  along: 60,
  across: 60,
  diameter: 25,
  ...fields,
})
export const screw = (fields: Stated = {}) => ({
  kind: 'screw',
  id: 'screw',
  along: 5,
  across: 60,
  head: 6,
  ...fields,
})
export const pickup = (fields: Stated = {}) => ({
  kind: 'pickup',
  id: 'pickup',
  along: { ofScale: 0.1 },
  ...fields,
})
export const things = (...list: Stated[]): Stated => ({ things: list })

/** Fields of some sections over those of others, section by section. */
export function merged(...parts: readonly Stated[]): Stated {
  const all: Record<string, unknown> = {}
  for (const [name, fields] of parts.flatMap((part) => Object.entries(part))) {
    const plain = typeof fields === 'object' && fields !== null && !Array.isArray(fields)
    all[name] = plain ? { ...(all[name] as object | undefined), ...fields } : fields
  }
  return all as Stated
}

/**
 * Three steel strings in G D G on a stout neck that the lid lies on: nothing of the loads is wrong. Crowns 5 + 1.1 over
 * the lid, strings 0.4 over them at the nut and 3.9 at the saddle; line 2.5 behind the bare scale.
 */
export const strung = (...more: readonly Stated[]): Stated =>
  merged(
    {
      stringing: { tuning: ['G2', 'D3', 'G3'] },
      strings: { gauges: [0.9652, 0.6096, 0.4318] },
      neck: { thickness: 26, relief: 0 },
      nut: { height: 1.5 },
      saddle: { height: 10, setback: 2.5 },
    },
    ...more,
  )

/** One string of 0.254 mm whose mass is stated in grams per metre, at a pitch in hertz, over 635 mm. */
export const weighed = (hertz: number, unitMass: number, ...more: readonly Stated[]): Stated =>
  merged(
    {
      stringing: { tuning: [`${hertz} Hz`], makes: [{ construction: 'stated', unitMass }] },
      strings: { count: 1, gauges: [0.254] },
    },
    ...more,
  )

/** Its pull in newtons: `T = mu (2 L f)^2`, M. Mersenne, "Harmonicorum Libri" (1636). */
export const pullOf = (hertz: number, unitMass: number): number =>
  (unitMass / 1000) * (2 * 0.635 * hertz) ** 2
