/**
 * Which strings for a tuning, and which scale for a set. Pulls in newtons, lengths in mm, pitches in hertz.
 * Nearness is by ratio: twice too strong and half too weak are equally far off.
 */
import { positive } from '../quantity/demand.ts'
import { inchesToMm } from '../quantity/units.ts'
import { bodyOf, type StringBody, type StringMake } from './body.ts'
import { MATERIALS, type StringMaterial } from './materials.ts'
import { tensionOf } from './tension.ts'

/** One kind of string in the drawer. */
export interface StockString {
  /** As the trade writes it, in thousandths of an inch: `.017`, `.026w`. */
  readonly name: string
  readonly make: StringMake
  readonly body: StringBody
}

/**
 * Gauges of steel strings usually sold singly, thousandths of an inch; plain ones thicker than .020 are too stiff to be
 * in tune. Common practice, from memory.
 */
const PLAIN = [8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18, 19, 20]
const WOUND = [
  20, 22, 24, 26, 28, 30, 32, 34, 36, 38, 40, 42, 44, 45, 46, 48, 50, 52, 54, 56, 60, 65, 70, 75, 80, 85, 90,
  95, 100, 105,
]

/** One entry of a stock list. Throws for a make that cannot be: a list is checked when it is read. */
export function stockString(name: string, make: StringMake): StockString {
  const reading = bodyOf(make)
  if (!reading.ok) throw new RangeError(`the stock string "${name}" cannot be made: ${reading.why}`)
  return { name, make, body: reading.body }
}

/** The usual stock: plain music wire, and music wire wound with `wrap`. Thinnest first, plain before wound. */
export function usualStock(wrap: StringMaterial = MATERIALS['nickel-plated steel']): StockString[] {
  const material = MATERIALS['music wire']
  const diameter = (mils: number) => inchesToMm(mils / 1000)
  const name = (mils: number) => `.${String(mils).padStart(3, '0')}`
  return [
    ...PLAIN.map((mils) =>
      stockString(name(mils), { construction: 'plain', diameter: diameter(mils), material }),
    ),
    ...WOUND.map((mils) =>
      stockString(`${name(mils)}w`, { construction: 'wound', diameter: diameter(mils), material, wrap }),
    ),
  ]
}

export interface ChosenString {
  readonly stock: StockString
  readonly tension: number
  readonly shareOfBreaking: number
}

/**
 * The string of the stock whose pull comes nearest to `target` at this pitch over this scale, among those under `most`
 * of their breaking load; `null` where none is. Of two equally near the first listed wins.
 * Example: G3 on 609.6 mm with a target of 72 N takes `.018` from the usual stock.
 */
export function nearestString(
  stock: readonly StockString[],
  pitch: number,
  scale: number,
  target: number,
  most = 1,
): ChosenString | null {
  const wanted = positive(target, 'the tension wanted')
  let best: ChosenString | null = null
  let least = Number.POSITIVE_INFINITY
  for (const one of stock) {
    const tension = tensionOf(one.body.unitMass, scale, pitch)
    const shareOfBreaking = tension / one.body.breaking
    const off = Math.abs(Math.log(tension / wanted))
    if (shareOfBreaking > most || off >= least) continue
    least = off
    best = { stock: one, tension, shareOfBreaking }
  }
  return best
}

export interface Spread {
  readonly total: number
  /** Strongest over weakest pull, less 1: 0.25 is a quarter apart. 0 for a single string. */
  readonly apart: number
}

/** All pulls together and how far they differ; an instrument without strings has neither. */
export function spreadOf(tensions: readonly number[]): Spread {
  let total = 0
  let strongest = 0
  let weakest = Number.POSITIVE_INFINITY
  for (const tension of tensions) {
    total += positive(tension, 'a tension')
    strongest = Math.max(strongest, tension)
    weakest = Math.min(weakest, tension)
  }
  return { total, apart: tensions.length > 0 ? strongest / weakest - 1 : 0 }
}

export interface FittingScale {
  /** Where the set pulls `target` on the average (of logarithms, so that ratios even out). */
  readonly length: number
  /** Beyond this a string comes over `most` of its breaking load. */
  readonly longest: number
}

/**
 * The scale that suits a set. From `T = µ (2 L f)²`: `ln L` is the mean of `ln(target / µ (2 f)²) / 2`, and the longest
 * is the least of `√(most · breaking / µ) / 2f`. `null` for a set without strings.
 */
export function scaleFor(
  set: readonly { readonly body: Pick<StringBody, 'unitMass' | 'breaking'>; readonly pitch: number }[],
  target: number,
  most = 0.75,
): FittingScale | null {
  if (set.length === 0) return null
  let logs = 0
  let longest = Number.POSITIVE_INFINITY
  for (const { body, pitch } of set) {
    const perSquare = tensionOf(body.unitMass, 1, pitch)
    logs += Math.log(positive(target, 'the tension wanted') / perSquare) / 2
    longest = Math.min(longest, Math.sqrt((positive(most, 'a share') * body.breaking) / perSquare))
  }
  return { length: Math.exp(logs / set.length), longest }
}
