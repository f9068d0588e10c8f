/**
 * How much a string bears before it breaks. Millimetres, newtons; strength in N/mm² (the same as MPa).
 *
 * Music wire: the least tensile strength that ASTM A228 demands of each diameter (as reproduced by a wire supplier,
 * "Tensile requirements by diameter"), straight lines between them on logarithmic scales. Outside the table it goes on
 * from the last row by the exponent of Shigley's law. Shigley's own constants come out 1 to 2.5 % above the table, on
 * the unsafe side, so they are not used inside it. A wire that is bent, worn or tied breaks sooner.
 */
import { notNegative, positive } from '../quantity/demand.ts'

const MM_PER_INCH = 25.4
/** N/mm² in one ksi. */
const PER_KSI = 6.894757293

/** ASTM A228: diameter in thousandths of an inch, least tensile strength in ksi. */
// biome-ignore format: rows of a table
const A228: readonly (readonly [number, number])[] = [
  [4, 439], [5, 426], [6, 415], [7, 407], [8, 399], [9, 393], [10, 387], [11, 382], [12, 377], [13, 373],
  [14, 369], [15, 365], [16, 362], [18, 356], [20, 350], [22, 345], [24, 341], [26, 337], [28, 333], [30, 330],
  [32, 327], [34, 324], [36, 321], [38, 318], [40, 315], [42, 313], [45, 309], [48, 306], [51, 303], [55, 300],
  [59, 296], [63, 293], [67, 290], [72, 287], [76, 284], [80, 282], [85, 279], [90, 276], [95, 274], [100, 271],
  [102, 270], [107, 268], [110, 267], [112, 266], [121, 263], [125, 261],
]
const LOG_DIAMETERS = A228.map(([mils]) => Math.log((mils / 1000) * MM_PER_INCH))
const LOG_STRENGTHS = A228.map(([, ksi]) => Math.log(ksi * PER_KSI))

/** Constants of `S = A / d^m`: Shigley's Mechanical Engineering Design, Table 10-4, music wire; MPa·mm^m. */
export const SHIGLEY = { factor: 2211, exponent: 0.145 } as const

/**
 * Power law of wire strength, `A / d^m`, N/mm² for d in mm. Source: Shigley, Eq. 10-14; other published constants are
 * (2060, 0.163), in the form of the FE reference handbook. Example: `powerLawStrength(0.254)` is about 2697.
 */
export function powerLawStrength(
  diameter: number,
  { factor, exponent }: { readonly factor: number; readonly exponent: number } = SHIGLEY,
): number {
  return factor / positive(diameter, 'the diameter of a wire') ** exponent
}

/** Least tensile strength of music wire, N/mm². Example: `wireStrength(0.254)`, .010 in, is 387 ksi = 2668. */
export function wireStrength(diameter: number): number {
  const log = Math.log(positive(diameter, 'the diameter of a wire'))
  const last = LOG_DIAMETERS.length - 1
  if (log <= LOG_DIAMETERS[0]!) return beyond(0, log)
  if (log >= LOG_DIAMETERS[last]!) return beyond(last, log)
  let row = 1
  while (log > LOG_DIAMETERS[row]!) row++
  const [from, to] = [LOG_DIAMETERS[row - 1]!, LOG_DIAMETERS[row]!]
  const part = (log - from) / (to - from)
  return Math.exp(LOG_STRENGTHS[row - 1]! + part * (LOG_STRENGTHS[row]! - LOG_STRENGTHS[row - 1]!))
}

function beyond(row: number, log: number): number {
  return Math.exp(LOG_STRENGTHS[row]! - SHIGLEY.exponent * (log - LOG_DIAMETERS[row]!))
}

/** Pull that breaks it, in newtons: strength times the area that carries. Example: .010 in wire, 135.2 N. */
export function breakingLoad(strength: number, area: number): number {
  return positive(strength, 'a strength') * positive(area, 'an area')
}

/** Share of the breaking load: 1 breaks. No pull is a share of 0. */
export function shareOfBreaking(tension: number, breaking: number): number {
  return notNegative(tension, 'a tension') / positive(breaking, 'a breaking load')
}

/**
 * Highest pitch of a plain string, hertz, whatever its gauge: `√(S / ρ) / 2L`, strength in N/mm², density in kg/mm³.
 * Example: 377 ksi wire of 7861e-9 kg/mm³ over 635 mm breaks at 452.8 Hz.
 */
export function breakingPitch(strength: number, density: number, length: number): number {
  const speed = Math.sqrt((positive(strength, 'a strength') * 1000) / positive(density, 'a density'))
  return speed / (2 * positive(length, 'the length of a string'))
}
