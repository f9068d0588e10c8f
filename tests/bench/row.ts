/** One figure of the bench, and how a table of them is written. */

export interface Row {
  /** Its name also finds it in the baseline. */
  readonly name: string
  /** `×` is one time as a multiple of another taken by turns in the same run. */
  readonly unit: '×' | 'exponent' | 'ms' | 'kB' | 'MB'
  readonly median: number
  /** The middle half of what was measured; where only one value can be had, that value. */
  readonly low: number
  readonly high: number
  /** At most this; `null` where the figure is only told. */
  readonly wanted: number | null
  readonly more?: string
}

/** A figure that is the same however often it is taken. */
export const exact = (name: string, unit: Row['unit'], value: number, wanted: number | null = null): Row => ({
  name,
  unit,
  median: value,
  low: value,
  high: value,
  wanted,
})

const said = (value: number) =>
  value >= 100 ? value.toFixed(0) : value >= 10 ? value.toFixed(1) : value.toFixed(2)

const WIDE = 66

/** Heading over rows. */
export const HEADING = `${''.padEnd(WIDE)}   median   middle half      at most`

/** A row as a line of the table, marked where it is more than is wanted. */
export function lineOf({ name, unit, median, low, high, wanted, more }: Row): string {
  const spread = low === high ? '' : `${said(low)}–${said(high)}`
  const wish = wanted === null ? '' : `${said(wanted)}${median > wanted ? ' ✗' : ''}`
  const figure = `${said(median)}${unit === 'exponent' ? '' : ` ${unit}`}`
  return `${name.padEnd(WIDE)} ${figure.padStart(10)}   ${spread.padEnd(14)} ${wish.padStart(8)}   ${more ?? ''}`.trimEnd()
}
