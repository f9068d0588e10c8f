/**
 * A string is also a thin bar: its bending stiffness sharpens it, and the higher partials more. Millimetres, newtons,
 * cents; `bend` is `E I` in N·mm².
 *
 * How the ends are held matters far more than the number itself: free to turn, a .017 in steel string gains a tenth of
 * a cent, held fast at both ends it gains twelve. Real nuts, crowns and saddles lie between and near the first.
 * Source: H. Fletcher, "Normal Vibration Frequencies of a Stiff Piano String", J. Acoust. Soc. Am. 36, 203 (1964).
 */
import { notNegative, positive } from '../quantity/demand.ts'

/**
 * Inharmonicity, a pure number: `B = π² E I / (T L²)`, for a round plain string `π³ E d⁴ / (64 T L²)`.
 * Example: steel of 0.432 mm under 72 N over 635 mm, `inharmonicity(353.55, 72, 635)`, is 1.20e-4.
 */
export function inharmonicity(bend: number, tension: number, length: number): number {
  const span = positive(length, 'the length of a string')
  return (Math.PI ** 2 * notNegative(bend, 'a stiffness')) / (positive(tension, 'a tension') * span * span)
}

/** Cents by which partial `n` lies above `n` times the pitch of a limp string: `600 log2(1 + B n²)`, ends free to turn. */
export function partialCents(inharmonic: number, partial: number): number {
  return 600 * Math.log2(1 + notNegative(inharmonic, 'an inharmonicity') * partial * partial)
}

/** Millimetres by which an end held fast shortens the string that sounds: `√(E I / T)`. Example: 2.216 for the string above. */
export function endShortening(bend: number, tension: number): number {
  return Math.sqrt(notNegative(bend, 'a stiffness') / positive(tension, 'a tension'))
}

/**
 * Ratio by which stiffness raises the pitch itself: `√(1 + B)` with ends free to turn, times `1 + (2/π) √B + (4/π²) B`
 * with both held fast. `held` is how much of the second: 0 free to turn, 1 held fast, a judgement in between.
 */
export function stiffRatio(inharmonic: number, held = 0): number {
  const root = Math.sqrt(notNegative(inharmonic, 'an inharmonicity'))
  return Math.sqrt(1 + inharmonic) * (1 + held * ((2 / Math.PI) * root + (4 / Math.PI ** 2) * inharmonic))
}
