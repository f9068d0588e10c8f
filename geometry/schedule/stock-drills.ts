/**
 * Drills as they are sold, and the one to take for a hole.
 *
 * Fractional, number and letter sizes: ANSI/ASME B94.11M, Twist Drills (1993, R2019), tables of sizes. Metric: the
 * series of BS 328, as "Drill bit sizes" prints it: by 0.05 mm from 1 to 2.95 mm, by 0.1 mm from 3 to 13.9 mm, by 0.25 mm
 * from 14 to 25 mm. Bits that scrape a wide flat hole and saws for rings are in no standard known here: the sets
 * as sold, common practice, no source.
 */
import { inchesToMm } from '../quantity/index.ts'

/** How a drill's size is said: as a fraction of an inch, by number, by letter, or in millimetres. */
export type DrillSeries = 'fractional' | 'number' | 'letter' | 'metric'

export interface StockDrill {
  /** As it stands on the shank: `3/32`, `#42`, `F`, `2.4`. */
  readonly size: string
  readonly diameter: number
  readonly series: DrillSeries
  readonly tool: 'twist drill' | 'flat bit' | 'hole saw'
}

/** Diameters in thousandths of an inch and ten-thousandths, number 1 first. ANSI/ASME B94.11M. */
const NUMBERS = [
  0.228, 0.221, 0.213, 0.209, 0.2055, 0.204, 0.201, 0.199, 0.196, 0.1935, 0.191, 0.189, 0.185, 0.182, 0.18,
  0.177, 0.173, 0.1695, 0.166, 0.161, 0.159, 0.157, 0.154, 0.152, 0.1495, 0.147, 0.144, 0.1405, 0.136, 0.1285,
  0.12, 0.116, 0.113, 0.111, 0.11, 0.1065, 0.104, 0.1015, 0.0995, 0.098, 0.096, 0.0935, 0.089, 0.086, 0.082,
  0.081, 0.0785, 0.076, 0.073, 0.07, 0.067, 0.0635, 0.0595, 0.055, 0.052, 0.0465, 0.043, 0.042, 0.041, 0.04,
  0.039, 0.038, 0.037, 0.036, 0.035, 0.033, 0.032, 0.031, 0.0292, 0.028, 0.026, 0.025, 0.024, 0.0225, 0.021,
  0.02, 0.018, 0.016, 0.0145, 0.0135,
] as const

/** Letters A to Z. ANSI/ASME B94.11M. */
const LETTERS = [
  0.234, 0.238, 0.242, 0.246, 0.25, 0.257, 0.261, 0.266, 0.272, 0.277, 0.281, 0.29, 0.295, 0.302, 0.316,
  0.323, 0.332, 0.339, 0.348, 0.358, 0.368, 0.377, 0.386, 0.397, 0.404, 0.413,
] as const

/** Sixty-fourths of an inch: up to a half as twist drills that an ordinary chuck holds. */
const TWIST_SIXTY_FOURTHS = 32
const TWIST_METRIC_MOST = 13

/** Eighths of an inch, from a half up: common practice, no source. */
const FLAT_EIGHTHS = [5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17] as const
const FLAT_METRIC = [14, 15, 16, 18, 20, 22, 24, 25, 26, 28, 30, 32, 34, 35, 38, 40, 45, 50] as const
/** Common practice, no source. */
const SAW_EIGHTHS = [18, 20, 24, 28, 32] as const
const SAW_METRIC = [51, 54, 57, 60, 64, 68, 76, 83, 89, 95, 102] as const

/** A drill may be so much under the hole wanted and still be the one meant; it is said. Millimetres. */
const UNDER = 0.02

/** `3/32`, `1-1/8`, `2`: as it stands on the shank. */
export function inchName(parts: number, whole: number): string {
  let above = parts % whole
  let below = whole
  while (above > 0 && above % 2 === 0) {
    above /= 2
    below /= 2
  }
  const inches = Math.floor(parts / whole)
  if (above === 0) return String(inches)
  return inches > 0 ? `${inches}-${above}/${below}` : `${above}/${below}`
}

const inch = (
  size: string,
  inches: number,
  series: DrillSeries,
  tool: StockDrill['tool'] = 'twist drill',
) => ({ size, diameter: inchesToMm(inches), series, tool })

const fractional: readonly StockDrill[] = [
  ...Array.from({ length: TWIST_SIXTY_FOURTHS }, (_, index) =>
    inch(inchName(index + 1, 64), (index + 1) / 64, 'fractional'),
  ),
  ...FLAT_EIGHTHS.map((eighths) => inch(inchName(eighths, 8), eighths / 8, 'fractional', 'flat bit')),
  ...SAW_EIGHTHS.map((eighths) => inch(inchName(eighths, 8), eighths / 8, 'fractional', 'hole saw')),
]

const numbered: readonly StockDrill[] = [
  ...NUMBERS.map((inches, index) => inch(`#${index + 1}`, inches, 'number')),
  ...LETTERS.map((inches, index) => inch(String.fromCharCode(65 + index), inches, 'letter')),
]

/** Whole steps counted in hundredths, so that 2.4 is the nearest number to 2.4. */
const steps = (from: number, to: number, step: number): number[] =>
  Array.from({ length: Math.round((to - from) / step) + 1 }, (_, index) => (from + index * step) / 100)

const metric: readonly StockDrill[] = [
  ...[...steps(100, 295, 5), ...steps(300, TWIST_METRIC_MOST * 100, 10)].map((diameter) =>
    millimetres(diameter, 'twist drill'),
  ),
  ...FLAT_METRIC.map((diameter) => millimetres(diameter, 'flat bit')),
  ...SAW_METRIC.map((diameter) => millimetres(diameter, 'hole saw')),
]

function millimetres(diameter: number, tool: StockDrill['tool']): StockDrill {
  return { size: String(diameter), diameter, series: 'metric', tool }
}

/** The sets a builder may have, as the file names them. */
export const DRILL_SETS = ['by the unit', 'fractional', 'fractional, number and letter', 'metric'] as const
export type DrillSet = (typeof DRILL_SETS)[number]

const rising = (list: readonly StockDrill[]) => [...list].sort((a, b) => a.diameter - b.diameter)

const STOCK: Readonly<Record<Exclude<DrillSet, 'by the unit'>, readonly StockDrill[]>> = {
  fractional: rising(fractional),
  // Where a fraction and a number or letter are alike, the fraction stands first and is taken.
  'fractional, number and letter': rising([...fractional, ...numbered]),
  metric: rising(metric),
}

/** Every drill of a set, smallest first. `by the unit` is fractional on an inch rule, else metric. */
export const drillsOf = (set: DrillSet, display: 'mm' | 'inches'): readonly StockDrill[] =>
  STOCK[set === 'by the unit' ? (display === 'inches' ? 'fractional' : 'metric') : set]

export interface DrillChoice {
  readonly drill: StockDrill
  /** Diameter of the drill less the hole wanted; below 0 the drill is smaller, which has to be said. */
  readonly over: number
}

/**
 * The drill to take: the smallest of the set that is not smaller than the hole wanted. One that is smaller by no
 * more than 0.02 mm counts as the size meant. Beyond the largest of the set there is none, and `null` comes back: that
 * hole is sawn to a line.
 *
 * Throws for a diameter that is not above 0.
 * Example: `stockDrill(2.4, drillsOf('fractional', 'inches'))` takes 7/64 in (2.778 mm), 0.378 over; 3/32 (2.381) counts as meant.
 */
export function stockDrill(diameter: number, stock: readonly StockDrill[]): DrillChoice | null {
  if (!(diameter > 0)) throw new RangeError(`A hole has a diameter above 0, not ${diameter}.`)
  const drill = stock.find((one) => one.diameter >= diameter - UNDER)
  return drill ? { drill, over: drill.diameter - diameter } : null
}
