/** Which strings for the tuning and the scale, and which scale for the strings. */
import type { Design } from '../design/schema.ts'
import { type Make, makeOf, type Stocked } from '../design/sections/stringing.ts'
import {
  type FittingScale,
  nearestString,
  type Spread,
  type StockString,
  scaleFor,
  spreadOf,
  stockString,
  usualStock,
} from '../strings/gauges.ts'
import { gaugesFor } from '../strings/spacing.ts'
import { pitchesOf, strungFor, usualMake } from './strung.ts'

export interface ChosenGauge {
  /** As the trade writes it: `.017`, `.026w`. */
  readonly name: string
  readonly gauge: number
  readonly make: Make
  /** Newtons. */
  readonly tension: number
  readonly shareOfBreaking: number
}

export interface ChosenGauges {
  /** Bass first; `null` where no string of the stock stands the pitch. */
  readonly strings: readonly (ChosenGauge | null)[]
  readonly spread: Spread
}

interface StockRow {
  readonly stock: StockString
  readonly gauge: number
  readonly make: Make
}

/** Share of the breaking load that a chosen string stays under. */
const MOST_SHARE = 0.75

let usual: readonly StockRow[] | undefined
function usualRows(): readonly StockRow[] {
  usual ??= usualStock().map((stock) => ({
    stock,
    gauge: stock.make.diameter,
    make: { ...usualMake(stock.make.diameter), construction: stock.make.construction },
  }))
  return usual
}

const THOUSANDTHS = 1000 / 25.4

/** `.026w` for a wound string of 0.66 mm, `.028 nylon` for one that is not of steel. */
const nameOfStock = ({ gauge, construction, material }: Stocked): string =>
  `.${String(Math.round(gauge * THOUSANDTHS)).padStart(3, '0')}${construction === 'wound' ? 'w' : ''}${
    material === 'music wire' ? '' : ` ${material}`
  }`

/** The builder's own drawer, or what is usually sold. */
function rowsOf({ stock }: Design['stringing']): readonly StockRow[] {
  if (stock.length === 0) return usualRows()
  return stock.flatMap((row) => {
    const { gauge, ...make } = row
    const made = makeOf(make, gauge)
    return made ? [{ stock: stockString(nameOfStock(row), made), gauge, make }] : []
  })
}

/**
 * For every string the one of the stock whose pull comes nearest to the pull wanted; `null` until a tuning names a pitch
 * for each. To take the choice over, set `strings.gauges` and `stringing.makes` from it.
 * Example: G3 on a scale of 609.6 mm takes `.018` for a pull of 72 N.
 */
export function chooseGauges(design: Design): ChosenGauges | null {
  const pitches = pitchesOf(design)
  if (!pitches) return null
  const rows = rowsOf(design.stringing)
  const stock = rows.map((one) => one.stock)
  const strings = pitches.map(({ hertz }): ChosenGauge | null => {
    const best = nearestString(stock, hertz, design.scale.length, design.stringing.wantedPull, MOST_SHARE)
    const row = best && rows[stock.indexOf(best.stock)]
    if (!best || !row) return null
    const { tension, shareOfBreaking } = best
    return { name: best.stock.name, gauge: row.gauge, make: row.make, tension, shareOfBreaking }
  })
  return { strings, spread: spreadOf(strings.flatMap((one) => (one ? [one.tension] : []))) }
}

/**
 * The scale on which the strings as stated pull what is wanted on the average, and the longest they stand; `null`
 * without a tuning, or with a string that cannot be made.
 */
export function scaleSuiting(design: Design): FittingScale | null {
  const pitches = pitchesOf(design)
  if (!pitches) return null
  const gauges = gaugesFor(design.strings.gauges, design.strings.count)
  const set = gauges.map((gauge, index) => ({
    body: strungFor(design.stringing, index, gauge).body,
    pitch: pitches[index]?.hertz ?? 0,
  }))
  const whole = set.flatMap(({ body, pitch }) => (body && pitch > 0 ? [{ body, pitch }] : []))
  return whole.length === set.length ? scaleFor(whole, design.stringing.wantedPull, MOST_SHARE) : null
}
