import type { LimitName } from '../../design/limits.ts'
import type { Layout } from '../../solve/layout.ts'
import { gradeLeast, type Measurement, type Rule } from '../finding.ts'

type Spot = 'nut' | 'saddle'
const KEYS = {
  nut: { y: 'yAtNut', limit: 'stringsApartAtNut' },
  saddle: { y: 'yAtSaddle', limit: 'stringsApartAtSaddle' },
} as const satisfies Record<Spot, { y: string; limit: LimitName }>

const rule = (spot: Spot): Rule => ({
  name: `strings-apart-at-${spot}`,
  title: `Strings apart at the ${spot}`,
  unit: 'mm',
  wants: 'least',
  limits: [KEYS[spot].limit],
  mendedBy: [spot === 'nut' ? 'strings.spanAtNut' : 'strings.spanAtSaddle'],
  measure(layout, limit) {
    const found: Measurement[] = []
    const tightest = closest(layout, spot)
    if (!tightest) return found
    // Less than a string is thick cannot be wanted.
    const wanted = Math.max(limit(KEYS[spot].limit), tightest.gauges)
    const x = spot === 'nut' ? 0 : layout.saddle.x
    found.push({
      about: [spot],
      measured: tightest.apart,
      limit: wanted,
      // Strings that touch edge to edge cannot be played at all.
      grade: gradeLeast(tightest.apart, wanted, tightest.gauges),
      where: { view: 'plan', from: { x, y: tightest.from }, to: { x, y: tightest.to } },
      data: { pair: tightest.pair },
    })
    return found
  },
  words({ measured, limit, grade, data }, say) {
    if (grade === 'stop')
      return `Strings ${data?.pair} touch at the ${spot}: ${say.length(measured ?? 0)} from centre to centre. Widen the span or use fewer strings.`
    const apart = `Strings ${data?.pair} are ${say.length(measured ?? 0)} apart at the ${spot}, centre to centre`
    return grade === 'clear'
      ? `${apart}, the nearest two.`
      : `${apart}; ${say.length(limit ?? 0)} and more is usual.`
  },
})

function closest(layout: Layout, spot: Spot) {
  const { y } = KEYS[spot]
  const pairs = layout.strings.slice(1).map((string, index) => {
    const before = layout.strings[index] ?? string
    return {
      apart: string[y] - before[y],
      gauges: (string.gauge + before.gauge) / 2,
      from: before[y],
      to: string[y],
      pair: `${before.number} and ${string.number}`,
    }
  })
  return pairs.length === 0 ? null : pairs.reduce((least, one) => (one.apart < least.apart ? one : least))
}

export const stringsApartAtNut = rule('nut')
export const stringsApartAtSaddle = rule('saddle')
