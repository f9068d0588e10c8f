import type { LimitName } from '../../design/limits.ts'
import { loadsOf } from '../../loads/loads.ts'
import type { StringLoad } from '../../loads/types.ts'
import type { Layout } from '../../solve/layout.ts'
import type { Finding, Grade, Measurement, Rule, Where } from '../finding.ts'
import type { Say } from '../say.ts'

/** What one string measures, and what it is held against. */
export interface OfString {
  readonly measured: number
  readonly limit: number
  readonly grade: Grade
  readonly data?: Measurement['data']
}

interface PerString extends Pick<Rule, 'name' | 'title' | 'unit' | 'wants' | 'basis' | 'mendedBy'> {
  readonly limits: readonly LimitName[]
  measure(load: StringLoad, limit: (name: LimitName) => number, layout: Layout): OfString | null
  where(load: StringLoad, layout: Layout): Where
  words(finding: Finding, say: Say, layout: Layout): string
  /** Where all strings measure alike, telling of the worst is enough. */
  readonly worstOnly?: boolean
}

/** The string itself, from nut to saddle. */
export function alongString({ index }: Pick<StringLoad, 'index'>, layout: Layout): Where {
  const { yAtNut, yAtSaddle } = layout.strings[index]!
  return { view: 'plan', from: { x: 0, y: yAtNut }, to: { x: layout.saddle.x, y: yAtSaddle } }
}

/** A rule of which every string that breaks it is told, and where none does the one that is nearest to it. */
export const perString = ({ measure, where, worstOnly = false, ...rule }: PerString): Rule => ({
  ...rule,
  // A list and no generator: this runs for every string of every layout, several times over.
  measure(layout, limit) {
    const found: Measurement[] = []
    let tightest: { readonly load: StringLoad; readonly of: OfString } | null = null
    let least = Number.POSITIVE_INFINITY
    for (const load of loadsOf(layout).strings) {
      const of = measure(load, limit, layout)
      if (!of) continue
      const spare = rule.wants === 'least' ? of.measured - of.limit : of.limit - of.measured
      if (of.grade !== 'clear' && !worstOnly) found.push(measurementOf(load, of, where(load, layout)))
      else if (spare < least) {
        tightest = { load, of }
        least = spare
      }
    }
    if (tightest) found.push(measurementOf(tightest.load, tightest.of, where(tightest.load, layout)))
    return found
  },
})

const measurementOf = (load: StringLoad, of: OfString, where: Where): Measurement => ({
  about: [`string ${load.number}`],
  measured: of.measured,
  limit: of.limit,
  grade: of.grade,
  where,
  data: { string: load.number, ...of.data },
})
