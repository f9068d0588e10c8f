/**
 * Which findings speak for or against a row. A box cannot be changed and a hole that is only drawn can: so a row is judged by
 * what the instrument itself comes to, and by things that are locked in their places. What runs into other things that are
 * already placed is told apart: those can be moved, and Lay out is where they are.
 */
import type { Finding, Measurement, Rule } from '../checks/finding.ts'
import type { Design } from '../design/schema.ts'

/** `row`: for or against the row itself. `thing`: about something that could be moved. `not asked`: alike in every row. */
export type Bearing = 'row' | 'thing' | 'not asked'

/**
 * Rules that say the same whatever the scale, the strings and the place of the saddle: what is stated and what is not, how a
 * box was measured, how it is wired, what a tool can follow. They have their own places in the list of findings.
 */
const NOT_ASKED: ReadonlySet<string> = new Set([
  ...['hand-stated', 'tuning-stated', 'survey-agrees', 'out-of-square', 'box-twist', 'tool-fits', 'web-left'],
  ...['wiring-jack', 'wiring-grounded', 'wiring-strings', 'wiring-shorted', 'wiring-heard', 'wiring-knobs'],
  ...['wiring-silent'],
])

/** Is a rule gone through at all? */
export const isAsked = ({ name }: Pick<Rule, 'name'>): boolean => !NOT_ASKED.has(name)

/** Ids of the things that could be moved out of the way. */
export const movable = ({ things }: Pick<Design, 'things'>): ReadonlySet<string> =>
  new Set(things.flatMap((thing) => (thing.locked ? [] : [thing.id])))

/** How one finding bears on a row. `things` are those that could be moved. */
export function bearingOf(
  rule: string,
  { about }: Pick<Measurement, 'about'>,
  things: ReadonlySet<string>,
): Bearing {
  if (NOT_ASKED.has(rule)) return 'not asked'
  return about.some((id) => things.has(id)) ? 'thing' : 'row'
}

/** What the present design has against it already, by key: the gravest grade of each. */
export function alreadyWrong(findings: readonly Finding[]): ReadonlyMap<string, 'stop' | 'care'> {
  const wrong = new Map<string, 'stop' | 'care'>()
  for (const { key, grade } of findings)
    if (grade === 'stop' || (grade === 'care' && !wrong.has(key))) wrong.set(key, grade)
  return wrong
}
