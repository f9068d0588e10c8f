/**
 * Laws of what is wrong with a contour: nothing is with what the makers make, and crossings are found where a
 * plain check of every pair of small steps finds them.
 */
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { Chain, Point } from '../../../geometry/plane/index.ts'
import { faults } from '../../../geometry/plane/index.ts'
import { law, ROUNDING, seed } from './law.ts'
import { apart, contours, evenly, points, sampled, stars } from './shapes.ts'

describe(`faults (seed ${seed})`, () => {
  it('are none in what the makers make and motions carry', () => {
    law([contours], (contour) => expect(faults(contour)).toEqual([]))
  })

  it('two corners exchanged make a crossing that a plain check of every pair of steps sees too', () => {
    const met = { crossing: 0, sound: 0 }
    const exchanged = fc.tuple(stars, fc.nat(7), fc.nat(7)).filter(([star]) => star.vertices.length > 3)
    law(
      [exchanged],
      ([star, i, k]) => {
        const vertices = star.vertices.map((vertex) => ({ ...vertex }))
        const a = i % vertices.length
        const b = k % vertices.length
        ;[vertices[a], vertices[b]] = [
          vertices[b] as (typeof vertices)[0],
          vertices[a] as (typeof vertices)[0],
        ]
        const mixed: Chain = { shape: 'chain', closed: true, vertices }
        const steps = sampled(mixed, 40)
        const seen = stepsCross(steps, true)
        const told = faults(mixed).some((fault) => fault.includes('cross or touch'))
        // Steps stray from arcs by a hair: where the two answers differ, the lines must nearly touch there.
        if (told !== seen) expect(nearlyTouches(steps)).toBe(true)
        if (told && seen) met.crossing++
        if (!told && !seen) met.sound++
      },
      200,
    )
    expect(Math.min(met.crossing, met.sound)).toBeGreaterThan(30)
  })

  it('a segment that meets the one before it again is told, as a plain check of every pair of steps does', () => {
    const met = { meeting: 0, clear: 0 }
    const bulge = fc.oneof(evenly(-3, 3), fc.constant(0))
    law(
      [points, points, points, bulge, bulge],
      (a, b, c, first, second) => {
        fc.pre(Math.min(apart(a, b), apart(b, c), apart(a, c)) > 1)
        const snap = (value: number): number => (Math.abs(value) < 0.01 ? 0 : value)
        const pair: Chain = {
          shape: 'chain',
          closed: false,
          vertices: [
            { ...a, bulge: snap(first) },
            { ...b, bulge: snap(second) },
            { ...c, bulge: 0 },
          ],
        }
        const steps = sampled(pair, 150)
        const seen = stepsCross(steps, false)
        const told = faults(pair).length > 0
        if (told !== seen) expect(nearlyTouches(steps)).toBe(true)
        if (told && seen) met.meeting++
        if (!told && !seen) met.clear++
      },
      400,
    )
    expect(Math.min(met.meeting, met.clear)).toBeGreaterThan(40)
  })
})

/** Which side of a step a point lies on; on its straight line, to rounding, neither. */
function side(a: Point, b: Point, c: Point): number {
  const twice = (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x)
  return Math.abs(twice) < ROUNDING ? 0 : Math.sign(twice)
}

function stepsCross(steps: readonly Point[], closed: boolean): boolean {
  const n = steps.length
  const last = closed ? n : n - 1
  for (let i = 0; i < last; i++) {
    for (let k = i + 2; k < last; k++) {
      if (closed && i === 0 && k === n - 1) continue
      const [a, b, c, d] = [steps[i], steps[i + 1], steps[k], steps[(k + 1) % n]] as [
        Point,
        Point,
        Point,
        Point,
      ]
      if (side(a, b, c) * side(a, b, d) < 0 && side(c, d, a) * side(c, d, b) < 0) return true
    }
  }
  return false
}

/** True where two places of the outline more than a few steps from each other come within a twentieth mm. */
function nearlyTouches(steps: readonly Point[]): boolean {
  const n = steps.length
  for (let i = 0; i < n; i++) {
    for (let k = i + 3; k < n; k++) {
      if (n - k + i < 3) continue
      const reach = apart(steps[i] as Point, steps[i + 1 < n ? i + 1 : 0] as Point)
      if (apart(steps[i] as Point, steps[k] as Point) < reach + 0.05) return true
    }
  }
  return false
}
