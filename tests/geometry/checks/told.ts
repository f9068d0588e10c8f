/** What one rule says of a design, each finding as a line that a test can set beside what the pencil says. */
import { findingsBy } from '../../../geometry/checks/check.ts'
import { solve } from '../../../geometry/index.ts'
import { designOf, type Stated } from '../../support/designs.ts'

/** A number to four places, as the lines have it. */
export const to4 = (value: number): number => Math.round(value * 1e4) / 1e4 + 0

/** A place on the drawing: `at(60, 82.5)` is `(60, 82.5)`. */
export const at = (x: number, y: number): string => `(${to4(x)}, ${to4(y)})`

/**
 * Grade, what it is about, measure, limit and the stretch on the drawing, in the order in which the rule measures:
 * `care hole: 7.5 of 12, lid (60, 82.5) to (60, 90)`.
 */
export const told = (rule: string, stated: Stated = {}): string[] =>
  findingsBy(rule, solve(designOf(stated))).map(({ grade, about, measured, limit, where }) => {
    const [size, wanted] = [measured, limit].map((one) => (one === null ? 'nothing' : to4(one)))
    const { view, from, to } = where
    return `${grade} ${about.join(' + ')}: ${size} of ${wanted}, ${view} ${at(from.x, from.y)} to ${at(to.x, to.y)}`
  })

/** The grades alone, where the rest is proved elsewhere. */
export const graded = (rule: string, stated: Stated = {}): string[] =>
  findingsBy(rule, solve(designOf(stated))).map(({ grade }) => grade)
