/** How a pull feels and how near it is to breaking, in four words. All limits are common practice, from memory. */
export interface FeelLimits {
  /** Newtons: under this a string flaps and buzzes. */
  readonly slack: number
  /** Newtons: over this it is hard on fingers and neck. */
  readonly high: number
  /** Shares of the breaking load. */
  readonly strained: number
  readonly breaking: number
}

export const USUAL_FEEL: FeelLimits = { slack: 40, high: 110, strained: 0.75, breaking: 0.9 }

export type Feel = 'slack' | 'comfortable' | 'high' | 'breaking'

/**
 * `breaking` over its share of the breaking load; `high` over the pull or the share at which care begins; then `slack`
 * and `comfortable`. Nylon and other soft strings break late but are played slacker: give their own limits.
 * Example: `feelOf(70, 0.5)` is `comfortable`.
 */
export function feelOf(tension: number, shareOfBreaking: number, limits: FeelLimits = USUAL_FEEL): Feel {
  if (shareOfBreaking > limits.breaking) return 'breaking'
  if (tension > limits.high || shareOfBreaking > limits.strained) return 'high'
  return tension < limits.slack ? 'slack' : 'comfortable'
}
