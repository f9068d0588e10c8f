/**
 * Laws of clearance and gap, held against their definitions tried out on samples and on a grid of places.
 */
import { describe, expect, it } from 'vitest'
import type { Point } from '../../../geometry/plane/index.ts'
import {
  bounds,
  circle,
  clearance,
  deepest,
  depthAt,
  distance,
  distanceToPoint,
  gap,
  isWithin,
  stadium,
} from '../../../geometry/plane/index.ts'
import { law, ROOT_OF_ROUNDING, ROUNDING, SEARCHED, seed } from './law.ts'
import { apart, longestStep, pairs, sampled, sampledDepth } from './shapes.ts'

describe(`clearance and gap (seed ${seed})`, () => {
  it('clearance is what samples of the inner contour say: the least depth inside, or the farthest beyond', () => {
    const met = { within: 0, crossing: 0, beyond: 0 }
    law(
      [pairs],
      ([large, any]) => {
        // Beside the second itself: a slot deep inside the first, and a hole in the middle of the second.
        for (const inner of [any, stadium(deepest(large), 3, 2), circle(deepest(any), 1)]) {
          const { distance: told, from, to } = clearance(inner, large)
          const outline = sampled(large, 150)
          const samples = sampled(inner, 40)
          const step =
            longestStep([...samples, samples[0] as Point]) + longestStep([...outline, outline[0] as Point])
          const depths = samples.map((sample) => sampledDepth(sample, outline))
          const least = Math.min(...depths)
          // A sample's depth is too great by no more than its distance to the nearest sample of the outline.
          expect(told).toBeLessThanOrEqual(Math.max(least, 0) + SEARCHED)
          expect(told).toBeGreaterThanOrEqual(least - step)
          if (least < -step) expect(told).toBeLessThanOrEqual(least + step)
          expect(isWithin(inner, large)).toBe(told >= 0)
          expect(Math.abs(apart(from, to) - Math.abs(told))).toBeLessThan(ROOT_OF_ROUNDING)
          expect(distanceToPoint(inner, from)).toBeLessThan(ROOT_OF_ROUNDING)
          expect(distanceToPoint(large, to)).toBeLessThan(ROOT_OF_ROUNDING)
          if (told > 0) met.within++
          else if (distance(inner, large) === 0) met.crossing++
          else met.beyond++
        }
      },
      100,
    )
    expect(Math.min(met.within, met.crossing, met.beyond)).toBeGreaterThan(30)
  })

  it('gap is the distance where two are apart; otherwise no more depth than any place has in both', () => {
    const met = { apart: 0, overlapping: 0 }
    law(
      [pairs],
      ([a, b]) => {
        const told = gap(a, b)
        // Every place of a fine grid over both: the definition, tried out.
        const boxA = bounds(a)
        const boxB = bounds(b)
        const left = Math.min(boxA.minX, boxB.minX)
        const right = Math.max(boxA.maxX, boxB.maxX)
        const foot = Math.min(boxA.minY, boxB.minY)
        const head = Math.max(boxA.maxY, boxB.maxY)
        const rows = 60
        let most = Number.NEGATIVE_INFINITY
        for (let i = 0; i <= rows; i++) {
          for (let k = 0; k <= rows; k++) {
            const place = { x: left + ((right - left) * i) / rows, y: foot + ((head - foot) * k) / rows }
            most = Math.max(most, depthAt(place, a) + depthAt(place, b))
          }
        }
        const cell = Math.hypot(right - left, head - foot) / rows
        // Both depths together change by no more than twice the step from the nearest grid place.
        expect(-told).toBeLessThanOrEqual(most + cell + SEARCHED)
        if (told > 0) {
          expect(told).toBeCloseTo(distance(a, b), 9)
          met.apart++
        } else {
          met.overlapping++
          const exact = a.shape === 'circle' || b.shape === 'circle'
          if (exact) expect(-told).toBeGreaterThanOrEqual(most - ROUNDING)
          // Two chains: at least the depth of any sample of either line in the other.
          for (const sample of sampled(a, 20))
            expect(-told).toBeGreaterThanOrEqual(depthAt(sample, b) - SEARCHED)
          for (const sample of sampled(b, 20))
            expect(-told).toBeGreaterThanOrEqual(depthAt(sample, a) - SEARCHED)
        }
      },
      150,
    )
    expect(Math.min(met.apart, met.overlapping)).toBeGreaterThan(30)
  })
})
