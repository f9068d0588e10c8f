/** Verdicts added up: of a group of rules that rows share, and of all rules on one row. */
import type { Rule } from '../checks/finding.ts'
import type { Layout } from '../solve/layout.ts'
import { isTighter, type Told, type Verdict } from './verdict.ts'

/** A verdict and where it was measured: on the row itself or on one alike. */
interface Source {
  readonly rule: Rule
  readonly verdict: Verdict
  readonly on: Layout
}

export class Sum {
  /** The first rule that says it cannot be built; nothing is added after it. */
  stop: Rule | null = null
  cares = 0
  tightest: Told | null = null
  /** Where the tightest comes from, and what things are in the way of. */
  tightestFrom: Source | null = null
  inTheWay: Source[] | null = null

  /** Adds what a rule found; says whether it forbids. */
  add(rule: Rule, verdict: Verdict, on: Layout): boolean {
    if (verdict.stop) {
      this.stop = rule
      return true
    }
    this.cares += verdict.cares
    const tighter = verdict.tightest && isTighter(verdict.tightest, this.tightest)
    if (!tighter && verdict.inTheWay.length === 0) return false
    const source = { rule, verdict, on }
    if (tighter) {
      this.tightest = verdict.tightest
      this.tightestFrom = source
    }
    if (verdict.inTheWay.length > 0) {
      this.inTheWay ??= []
      this.inTheWay.push(source)
    }
    return false
  }

  /** Adds a whole group; says whether it forbids. */
  addAll(group: Sum): boolean {
    if (group.stop) {
      this.stop = group.stop
      return true
    }
    this.cares += group.cares
    if (group.tightest && isTighter(group.tightest, this.tightest)) {
      this.tightest = group.tightest
      this.tightestFrom = group.tightestFrom
    }
    if (group.inTheWay) {
      this.inTheWay ??= []
      this.inTheWay.push(...group.inTheWay)
    }
    return false
  }
}
