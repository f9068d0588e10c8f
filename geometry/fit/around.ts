/** What is known of rows already seen, and by which of them it may be said of another: `tiers.ts` says what rules share. */
import type { Rule } from '../checks/finding.ts'
import { limitOf } from '../checks/finding.ts'
import type { Layout } from '../solve/layout.ts'
import { type Note, soundOf } from '../sound/sound.ts'
import type { Stringed } from './candidate.ts'
import { Sum } from './sum.ts'
import { type Alike, near, TIERS, type Tier, within } from './tiers.ts'
import { type Judge, NOTHING, type Told, type Verdict, verdictOf } from './verdict.ts'

/** Rows alike within the box. */
interface Place {
  readonly layout: Layout
  /** By the number of the tier. */
  readonly groups: (Sum | undefined)[]
  /** By the number of the rule in its tier. */
  readonly single: { readonly on: Layout; readonly verdict: Verdict }[][]
  air?: { readonly note: Note | null }
}

/** Rows of one set of strings. */
interface Strung {
  readonly groups: (Sum | undefined)[]
  /** The row with these strings that was solved last: the next is like it but for the place of the saddle. */
  last: Layout | null
}

const strungAnew = (): Strung => ({ groups: [], last: null })

/** Rows alike within the box differ in the last digits that arithmetic leaves; none of them is shown. */
const toMillionth = (value: number) => Math.round(value * 1e6) / 1e6

/** The whole of what rules say of a row. */
export interface Judged {
  readonly impossible: Rule | null
  readonly cares: number
  readonly tightest: Told | null
  readonly inTheWay: readonly Told[]
}

export class Around {
  private places: Place[] = []
  private place: Place | null = null
  private readonly strung = new Map<Stringed, Strung>()

  constructor(private readonly judge: Judge) {}

  /** The rule that forbids these strings wherever the saddle stands, if one is known to. */
  forbids(stringed: Stringed): Rule | null {
    for (const group of this.strung.get(stringed)?.groups ?? []) if (group?.stop) return group.stop
    return null
  }

  /** A row like the one to be solved next, but for the place of the saddle. */
  like(stringed: Stringed): Layout | null {
    return this.strung.get(stringed)?.last ?? null
  }

  /** All rules on a row, until the first that forbids it. `stringed` is null for a design that shares nothing. */
  judged(layout: Layout, stringed: Stringed | null): Judged {
    const strung = this.strungOf(stringed)
    strung.last = layout
    const place = this.placeOf(layout)
    this.place = place
    const sum = new Sum()
    for (let index = 0; index < TIERS.length; index++) {
      const tier = TIERS[index] as Tier
      if (tier.by === 'alike') this.addAlike(sum, tier.rules, place.single, layout)
      else if (tier.by === 'row') this.addAll(sum, tier.rules, layout)
      else {
        const { groups } = tier.by === 'place' ? place : strung
        let group = groups[index]
        if (!group) {
          group = new Sum()
          groups[index] = group
          this.addAll(group, tier.rules, layout)
        }
        sum.addAll(group)
      }
      if (sum.stop) return { impossible: sum.stop, cares: 0, tightest: null, inTheWay: [] }
    }
    return {
      impossible: null,
      cares: sum.cares,
      tightest: this.tightest(sum, layout),
      inTheWay: this.inTheWay(sum, layout),
    }
  }

  /** The note of the air of the row judged last. */
  note(): Note | null {
    const { place } = this
    if (!place) return null
    if (!place.air) {
      const { note } = soundOf(place.layout)
      place.air = {
        note: note && { ...note, hertz: toMillionth(note.hertz), cents: toMillionth(note.cents) },
      }
    }
    return place.air.note
  }

  private strungOf(stringed: Stringed | null): Strung {
    if (!stringed) return strungAnew()
    const before = this.strung.get(stringed)
    if (before) return before
    const made = strungAnew()
    this.strung.set(stringed, made)
    return made
  }

  private placeOf(layout: Layout): Place {
    const before = this.places.find((one) => within(one.layout, layout))
    if (before) return before
    // Rows of another place are over: nothing of them comes again.
    this.places = this.places.filter((one) => near(one.layout.saddle.along, layout.saddle.along))
    const made = { layout, groups: [], single: [] }
    this.places.push(made)
    return made
  }

  private addAll(sum: Sum, rules: readonly Rule[], layout: Layout): void {
    const limit = limitOf(layout.design)
    for (const rule of rules) {
      const measured = rule.measure(layout, limit)
      if (measured.length === 0) continue
      const verdict = verdictOf(rule, measured, this.judge)
      if (verdict !== NOTHING && sum.add(rule, verdict, layout)) return
    }
  }

  private addAlike(
    sum: Sum,
    rules: readonly { readonly rule: Rule; readonly alike: Alike }[],
    single: Place['single'],
    layout: Layout,
  ): void {
    for (let index = 0; index < rules.length; index++) {
      const { rule, alike } = rules[index] as (typeof rules)[number]
      let list = single[index]
      if (!list) {
        list = []
        single[index] = list
      }
      let known = list.find((one) => alike(one.on, layout))
      if (!known) {
        known = { on: layout, verdict: this.measuredOn(rule, layout) }
        list.push(known)
      }
      if (known.verdict !== NOTHING && sum.add(rule, known.verdict, known.on)) return
    }
  }

  private measuredOn(rule: Rule, layout: Layout): Verdict {
    return verdictOf(rule, rule.measure(layout, limitOf(layout.design)), this.judge)
  }

  /**
   * What is shown of a rule is measured on the row itself: rows alike differ in the last digits that arithmetic leaves, and
   * what a row shows is what a check of that very design says.
   */
  private own(rule: Rule, verdict: Verdict, on: Layout, layout: Layout): Verdict {
    return on === layout ? verdict : this.measuredOn(rule, layout)
  }

  private tightest({ tightestFrom: from }: Sum, layout: Layout): Told | null {
    return from && this.own(from.rule, from.verdict, from.on, layout).tightest
  }

  /** The gravest first. */
  private inTheWay({ inTheWay }: Sum, layout: Layout): readonly Told[] {
    if (!inTheWay) return []
    const all = inTheWay.flatMap(({ rule, verdict, on }) => this.own(rule, verdict, on, layout).inTheWay)
    return [...all.filter((one) => one.grade === 'stop'), ...all.filter((one) => one.grade !== 'stop')]
  }
}
