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

interface PerString extends Pick<Rule, 'name' | 'title' | 'unit' | 'wants'> {
  readonly limits: readonly LimitName[]
  measure(load: StringLoad, limit: (name: LimitName) => number, layout: Layout): OfString | null
  where(load: StringLoad, layout: Layout): Where
  words(finding: Finding, say: Say, layout: Layout): string
  /** Where all strings measure alike, telling of the worst is enough. */
  readonly worstOnly?: boolean
}

/** The string itself, from nut to saddle. */
export function alongString({ index }: Pick<StringLoad, 'index'>, layout: Layout): Where {
  const line = layout.strings[index]
  return {
    view: 'plan',
    from: { x: 0, y: line?.yAtNut ?? 0 },
    to: { x: layout.saddle.x, y: line?.yAtSaddle ?? 0 },
  }
}

/** A rule of which every string that breaks it is told, and where none does the one that is nearest to it. */
export const perString = ({ measure, where, worstOnly = false, ...rule }: PerString): Rule => ({
  ...rule,
  *measure(layout, limit) {
    const spare = ({ measured, limit: held }: OfString) =>
      rule.wants === 'least' ? measured - held : held - measured
    let tightest: { load: StringLoad; of: OfString } | null = null
    for (const load of loadsOf(layout).strings) {
      const of = measure(load, limit, layout)
      if (!of) continue
      if (of.grade !== 'clear' && !worstOnly) yield measurement(load, of)
      else if (!tightest || spare(of) < spare(tightest.of)) tightest = { load, of }
    }
    if (tightest) yield measurement(tightest.load, tightest.of)

    function measurement(load: StringLoad, { data, ...of }: OfString): Measurement {
      return {
        about: [`string ${load.number}`],
        ...of,
        where: where(load, layout),
        data: { string: load.number, ...data },
      }
    }
  },
})
