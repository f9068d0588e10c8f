/**
 * What a printer gets wrong, and how a print is drawn so that it comes out right.
 *
 * X is the way along the short edge of the paper and Y along its long edge, whichever way round a sheet is drawn:
 * the two come from different parts of a printer, its carriage and its feed, and each errs by itself.
 */
import { numberText } from '../numbers.ts'

/** Factors by which a drawing is stretched before it is printed. 1 leaves it as it is. */
export interface Correction {
  readonly x: number
  readonly y: number
}

export const NO_CORRECTION: Correction = { x: 1, y: 1 }

/** Beyond this a printer was told to fit the page to the paper, most likely. */
const SUSPICIOUS = 0.05

/** Factors that are no printer's error any more. */
const LEAST = 0.9
const MOST = 1.1

/** The bar that is measured, mm. */
export const MEASURED_BAR = 100

/** Whether a drawing is left as it is. */
export function isCorrected({ x, y }: Correction): boolean {
  return x !== 1 || y !== 1
}

export type CorrectionReading =
  | { readonly ok: true; readonly correction: Correction; readonly question?: string }
  | { readonly ok: false; readonly sentence: string }

const percent = (factor: number) => numberText(Math.abs(factor - 1) * 100, 'A percentage', 1)

/**
 * The correction from what the two bars measure on a print: per axis the true length over the measured one.
 *
 * @param x what the bar along the short edge of the paper measures, mm, where it should be `bar`
 * @param y the same along the long edge
 * @param bar true length of the bars, mm
 * @param before the correction with which the measured print was made
 * @returns the correction for the next print, with a question where it is over 5 %; or a sentence where a factor
 *   falls outside 0.9 to 1.1 or a measure is no length
 * @example correctionFrom(149.2, 150, 150) // { ok: true, correction: { x: 1.005362…, y: 1 } }
 */
export function correctionFrom(
  x: number,
  y: number,
  bar: number = MEASURED_BAR,
  before: Correction = NO_CORRECTION,
): CorrectionReading {
  for (const [axis, measured] of [
    ['X', x],
    ['Y', y],
  ] as const) {
    if (!Number.isFinite(measured) || measured <= 0) {
      return { ok: false, sentence: `Bar ${axis} measures ${measured}: it has to be a length above nothing.` }
    }
  }
  const correction = { x: (before.x * bar) / x, y: (before.y * bar) / y }
  return judged(correction)
}

/** Judges a correction that was kept or typed, as `correctionFrom` judges a fresh one. */
export function judged(correction: Correction): CorrectionReading {
  const axes = [
    ['X', correction.x],
    ['Y', correction.y],
  ] as const
  for (const [axis, factor] of axes) {
    if (!(factor >= LEAST && factor <= MOST)) {
      const off = Number.isFinite(factor) ? `is off by ${percent(factor)} %` : 'is not a number'
      return {
        ok: false,
        sentence: `The print ${off} along ${axis}; more than ${percent(MOST)} % is no error of a printer. Print again at 100 %, with "fit to page" and every other scaling off, and measure the bar of that print.`,
      }
    }
  }
  const far = axes.filter(([, factor]) => Math.abs(factor - 1) > SUSPICIOUS)
  if (far.length === 0) return { ok: true, correction }
  const which = far.map(([axis, factor]) => `${percent(factor)} % along ${axis}`).join(' and ')
  return {
    ok: true,
    correction,
    question: `That is ${which}: was "fit to page" on? A printer by itself is seldom off by more than 1 %. Print again at 100 % before you keep this.`,
  }
}

/** What a sheet says about its correction. */
export function correctionLine(correction: Correction): string {
  if (!isCorrected(correction)) return 'not corrected for a printer'
  const factor = (value: number) => numberText(value, 'A correction', 4)
  return `corrected for this printer: X × ${factor(correction.x)}, Y × ${factor(correction.y)}`
}
