import { expect } from 'vitest'

/** Expects a number within a share of what is expected: `0.001` is one part in a thousand. */
export function expectShare(actual: number, expected: number, share: number): void {
  expect(Math.abs(actual - expected), `${actual} for ${expected}`).toBeLessThanOrEqual(
    share * Math.abs(expected),
  )
}

/** Expects a number no farther from what is expected than `most`, in its own unit. */
export function expectWithin(actual: number, expected: number, most: number): void {
  expect(Math.abs(actual - expected), `${actual} for ${expected}`).toBeLessThanOrEqual(most)
}
