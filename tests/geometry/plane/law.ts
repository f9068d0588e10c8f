/** How laws of the plane are tried, and how much rounding they allow. */
import fc from 'fast-check'

/** Rounding of a few hundred millimetres through a few dozen operations, mm. */
export const ROUNDING = 1e-9
/** Where a root of a rounding error enters, as in the radius of a flat arc, mm. */
export const ROOT_OF_ROUNDING = 1e-6
/** How far a depth found by search may fall short, mm, as `clearance` and `gap` promise. */
export const SEARCHED = 0.001 + ROUNDING

/** The seed of every law of the plane; it is in the name of each group. */
export const seed = 20

/** Tries a law on `numRuns` draws of its inputs, the same every time. */
export function law<T extends [unknown, ...unknown[]]>(
  inputs: { readonly [K in keyof T]: fc.Arbitrary<T[K]> },
  holds: (...args: T) => void,
  numRuns = 300,
): void {
  const together = fc.tuple(...inputs) as unknown as fc.Arbitrary<T>
  fc.assert(
    fc.property(together, (args) => {
      holds(...args)
    }),
    { seed, numRuns },
  )
}
