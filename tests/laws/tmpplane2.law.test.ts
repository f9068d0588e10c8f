/**
 * Laws of the plane, tried on contours of every kind: what must hold whatever the shape, and what a slow and
 * plain way of measuring says (dense samples, winding angles, every pair). Seeds are fixed; a failure prints
 * the shrunk contours. A law that hardly met the case it is about fails for idleness.
 */
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { Chain, Contour, Placement, Point } from '../../geometry/plane/index.ts'
import {
  area,
  bounds,
  centroid,
  circle,
  clearance,
  combinedPlacement,
  deepest,
  depthAt,
  distance,
  distanceToPoint,
  faults,
  flatten,
  gap,
  inversePlacement,
  isInside,
  isWithin,
  length,
  mirrorX,
  mirrorY,
  move,
  nearest,
  nearestGaps,
  nearestPoint,
  place,
  placePoint,
  reversed,
  stadium,
  turn,
} from '../../geometry/plane/index.ts'
import {
  apart,
  contours,
  longestStep,
  placements,
  points,
  polygonArea,
  sampled,
  sampledDepth,
  sampledDistance,
  stars,
  windings,
} from '../geometry/plane/shapes.ts'

/** Rounding of a few hundred millimetres through a few dozen operations, mm. */
const ROUNDING = 1e-9
/** Where a root of a rounding error enters, as in the radius of a flat arc, mm. */
const ROOT_OF_ROUNDING = 1e-6
/** How far a depth found by search may fall short, mm, as `clearance` and `gap` promise. */
const SEARCHED = 0.001 + ROUNDING

const seed = 2000

function law<T extends [unknown, ...unknown[]]>(
  inputs: { readonly [K in keyof T]: fc.Arbitrary<T[K]> },
  holds: (...args: T) => void,
  numRuns = 1500,
): void {
  const together = fc.tuple(...inputs) as unknown as fc.Arbitrary<T>
  fc.assert(
    fc.property(together, (args) => {
      holds(...args)
    }),
    { seed, numRuns },
  )
}

/** Small things near large ones: the pairs that a lid is full of. */
const pairs: fc.Arbitrary<readonly [Contour, Contour]> = fc.tuple(contours, contours)

describe(`distance (seed ${seed})`, () => {
  it('swapped contours are as far apart, and the way between them is the same way back', () => {
    law([pairs], ([a, b]) => {
      expect(Math.abs(distance(a, b) - distance(b, a))).toBeLessThan(ROUNDING)
      expect(Math.abs(gap(a, b) - gap(b, a))).toBeLessThan(ROUNDING)
      expect(Math.abs(nearest(a, b).distance - nearest(b, a).distance)).toBeLessThan(ROUNDING)
    })
  })

  it('is as long as the way that nearest names, from line to line', () => {
    law([pairs], ([a, b]) => {
      const { distance: told, from, to } = nearest(a, b)
      expect(Math.abs(told - distance(a, b))).toBeLessThan(ROUNDING)
      expect(Math.abs(told - apart(from, to))).toBeLessThan(ROUNDING)
      expect(distanceToPoint(a, from)).toBeLessThan(ROOT_OF_ROUNDING)
      expect(distanceToPoint(b, to)).toBeLessThan(ROOT_OF_ROUNDING)
    })
  })

  it('is no more than between any two samples, and no less than their steps allow', () => {
    const met = { apart: 0, crossing: 0 }
    law([pairs], ([a, b]) => {
      const samplesA = sampled(a, 60)
      const samplesB = sampled(b, 60)
      const told = distance(a, b)
      const seen = sampledDistance(samplesA, samplesB)
      const steps =
        longestStep([...samplesA, samplesA[0] as Point]) + longestStep([...samplesB, samplesB[0] as Point])
      expect(told).toBeLessThanOrEqual(seen + ROOT_OF_ROUNDING)
      expect(told).toBeGreaterThanOrEqual(seen - steps)
      if (told > 0) met.apart++
      else met.crossing++
    })
    expect(Math.min(met.apart, met.crossing)).toBeGreaterThan(60)
  })

  it('from a point is the distance to the place that nearestPoint names, and to no sample less', () => {
    law([contours, points], (contour, point) => {
      const told = distanceToPoint(contour, point)
      const on = nearestPoint(contour, point)
      expect(Math.abs(told - apart(on, point))).toBeLessThan(ROUNDING)
      expect(distanceToPoint(contour, on)).toBeLessThan(ROOT_OF_ROUNDING)
      const samples = sampled(contour, 200)
      const seen = Math.min(...samples.map((sample) => apart(sample, point)))
      expect(told).toBeLessThanOrEqual(seen + ROOT_OF_ROUNDING)
      expect(told).toBeGreaterThanOrEqual(seen - longestStep([...samples, samples[0] as Point]) / 2)
    })
  })
})

describe(`moving, turning and mirroring carry everything (seed ${seed})`, () => {
  it('area, length, soundness; the centroid and the deepest place go along', () => {
    law([contours, placements], (contour, placement) => {
      const carried = place(contour, placement)
      expect(Math.abs(area(carried) - area(contour))).toBeLessThan(1e-6)
      expect(Math.abs(length(carried) - length(contour))).toBeLessThan(ROOT_OF_ROUNDING)
      expect(faults(carried)).toEqual([])
      expect(apart(centroid(carried), placePoint(centroid(contour), placement))).toBeLessThan(1e-6)
      const depth = depthAt(deepest(contour), contour)
      expect(Math.abs(depthAt(placePoint(deepest(contour), placement), carried) - depth)).toBeLessThan(1e-6)
    })
  })

  it('distance, clearance and gap of a pair', () => {
    law([pairs, placements], ([a, b], placement) => {
      const a2 = place(a, placement)
      const b2 = place(b, placement)
      expect(Math.abs(distance(a2, b2) - distance(a, b))).toBeLessThan(ROOT_OF_ROUNDING)
      expect(Math.abs(clearance(a2, b2).distance - clearance(a, b).distance)).toBeLessThan(SEARCHED)
      // Where one chain overlaps another, the gap may take its middle from another of equally good places.
      if (gap(a, b) > 0 || a.shape === 'circle' || b.shape === 'circle') {
        expect(Math.abs(gap(a2, b2) - gap(a, b))).toBeLessThan(ROOT_OF_ROUNDING)
      }
    })
  })

  it('points inside stay inside', () => {
    law([contours, points, placements], (contour, point, placement) => {
      fc.pre(distanceToPoint(contour, point) > ROOT_OF_ROUNDING)
      expect(isInside(placePoint(point, placement), place(contour, placement))).toBe(isInside(point, contour))
    })
  })

  it('mirrored twice about an axis through the origin is the same numbers', () => {
    law([contours], (contour) => {
      expect(mirrorX(mirrorX(contour))).toEqual(contour)
      expect(mirrorY(mirrorY(contour))).toEqual(contour)
    })
  })

  it('a placement and its inverse cancel, and two in a row are their combination', () => {
    const near = (a: Contour, b: Contour): void => {
      const samplesA = sampled(a, 3)
      const samplesB = sampled(b, 3)
      expect(samplesA).toHaveLength(samplesB.length)
      if (a.shape === 'circle') return
      samplesA.forEach((sample, i) => {
        expect(apart(sample, samplesB[i] as Point)).toBeLessThan(ROOT_OF_ROUNDING)
      })
    }
    law([contours, placements, placements], (contour, outer: Placement, inner: Placement) => {
      near(place(place(contour, inner), inversePlacement(inner)), contour)
      near(place(place(contour, inner), outer), place(contour, combinedPlacement(outer, inner)))
    })
  })

  it('move and turn are placements', () => {
    law([contours, placements], (contour, { x, y, turn: angle }) => {
      expect(move(contour, x, y)).toEqual(place(contour, { x, y, turn: 0, mirrored: false }))
      expect(turn(contour, angle)).toEqual(place(contour, { x: 0, y: 0, turn: angle, mirrored: false }))
    })
  })
})

describe(`measures (seed ${seed})`, () => {
  it('bounds hold every sample and are reached on every side', () => {
    law([contours], (contour) => {
      const { minX, minY, maxX, maxY } = bounds(contour)
      const samples = sampled(contour, 200)
      const step = longestStep([...samples, samples[0] as Point])
      const xs = samples.map(({ x }) => x)
      const ys = samples.map(({ y }) => y)
      for (const [least, seen] of [
        [minX, Math.min(...xs)],
        [minY, Math.min(...ys)],
        [-maxX, Math.min(...xs.map((x) => -x))],
        [-maxY, Math.min(...ys.map((y) => -y))],
      ] as const) {
        expect(least).toBeLessThanOrEqual(seen + ROOT_OF_ROUNDING)
        expect(least).toBeGreaterThanOrEqual(seen - step)
      }
    })
  })

  it('area and length are what dense samples come to', () => {
    law([contours], (contour) => {
      const samples = sampled(contour, 400)
      const step = longestStep([...samples, samples[0] as Point])
      const around = samples.reduce(
        (sum, p, i) => sum + apart(p, samples[(i + 1) % samples.length] as Point),
        0,
      )
      // A step of s on radius r leaves out s^3 / (12 r) of area and s^3 / (24 r^2) of length; here r > 0.4.
      expect(Math.abs(area(contour) - polygonArea(samples))).toBeLessThan(
        samples.length * (step ** 3 / 4.8 + 1e-9),
      )
      expect(Math.abs(length(contour) - around)).toBeLessThan(samples.length * (step ** 3 / 3.8 + 1e-9))
      expect(area(contour)).toBeGreaterThan(0)
    })
  })

  it('run backwards, a chain encloses minus its area and is as long', () => {
    law([stars], (star) => {
      expect(Math.abs(area(reversed(star)) + area(star))).toBeLessThan(1e-6)
      expect(Math.abs(length(reversed(star)) - length(star))).toBeLessThan(ROUNDING)
      expect(reversed(reversed(star))).toEqual(star)
      expect(faults(reversed(star)).join()).toContain('clockwise')
    })
  })

  it('flattening keeps within its tolerance and converges on area and length', () => {
    law(
      [contours],
      (contour) => {
        let before = Number.POSITIVE_INFINITY
        for (const tolerance of [1, 0.1, 0.01, 0.001]) {
          const points = flatten(contour, tolerance)
          for (const point of points) expect(distanceToPoint(contour, point)).toBeLessThan(ROOT_OF_ROUNDING)
          const round: Chain = {
            shape: 'chain',
            closed: true,
            vertices: points.map((p) => ({ ...p, bulge: 0 })),
          }
          for (const sample of sampled(contour, 20)) {
            expect(distanceToPoint(round, sample)).toBeLessThanOrEqual(
              tolerance * (1 + 1e-6) + ROOT_OF_ROUNDING,
            )
          }
          const missing = length(contour) - length(round)
          expect(missing).toBeGreaterThan(-ROUNDING)
          expect(missing).toBeLessThanOrEqual(before + ROUNDING)
          before = missing
          expect(Math.abs(area(contour) - area(round))).toBeLessThanOrEqual(
            length(contour) * tolerance + 1e-6,
          )
        }
      },
      100,
    )
  })
})

describe(`inside and outside (seed ${seed})`, () => {
  it('agree with how often the flattened outline winds round the point', () => {
    const met = { inside: 0, outside: 0 }
    law([contours, points], (contour, far) => {
      // Half the points are drawn in towards the contour, where inside and outside lie side by side.
      const { x, y } = deepest(contour)
      for (const point of [far, { x: x + (far.x - x) / 6, y: y + (far.y - y) / 6 }]) {
        if (distanceToPoint(contour, point) < 0.002) continue
        const inside = windings(point, flatten(contour, 0.001)) !== 0
        expect(isInside(point, contour)).toBe(inside)
        if (inside) met.inside++
        else met.outside++
      }
    })
    expect(Math.min(met.inside, met.outside)).toBeGreaterThan(60)
  })

  it('every vertex and every sample of a contour is inside it, as its boundary is', () => {
    law([contours], (contour) => {
      for (const sample of sampled(contour, 10))
        expect(depthAt(sample, contour)).toBeGreaterThan(-ROOT_OF_ROUNDING)
      if (contour.shape === 'chain')
        for (const vertex of contour.vertices) expect(isInside(vertex, contour)).toBe(true)
    })
  })

  it('the deepest place is no shallower than nine tenths of any sample of the inside', () => {
    law(
      [contours],
      (contour) => {
        const depth = depthAt(deepest(contour), contour)
        const { minX, minY, maxX, maxY } = bounds(contour)
        for (let i = 0; i < 12; i++) {
          for (let k = 0; k < 12; k++) {
            const x = minX + ((i + 0.5) / 12) * (maxX - minX)
            const y = minY + ((k + 0.5) / 12) * (maxY - minY)
            expect(depth).toBeGreaterThanOrEqual(0.9 * depthAt({ x, y }, contour) - ROUNDING)
          }
        }
      },
      100,
    )
  })
})

describe(`clearance and gap (seed ${seed})`, () => {
  it('clearance is what samples of the inner contour say: the least depth inside, or the farthest beyond', () => {
    const met = { within: 0, crossing: 0, beyond: 0 }
    law(
      [pairs],
      ([large, any]) => {
        // Shrunk about its middle, the second often fits inside the first.
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

  it('nearestGaps names what comparing every pair names', () => {
    const met = { found: 0, none: 0 }
    law(
      [fc.array(contours, { maxLength: 14 }), fc.double({ min: -2, max: 30, noNaN: true })],
      (all, limit) => {
        const told = nearestGaps(all, limit)
        all.forEach((contour, i) => {
          let expected: { other: number; gap: number } | null = null
          all.forEach((other, k) => {
            if (k === i) return
            const wood = gap(contour, other)
            if (wood <= limit && (expected === null || wood < expected.gap))
              expected = { other: k, gap: wood }
          })
          expect(told[i]).toEqual(expected)
          if (expected === null) met.none++
          else met.found++
        })
      },
      150,
    )
    expect(Math.min(met.found, met.none)).toBeGreaterThan(20)
  })
})

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
        const seen = stepsCross(steps)
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
})

/** Which side of a step a point lies on; on its straight line, to rounding, neither. */
function side(a: Point, b: Point, c: Point): number {
  const twice = (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x)
  return Math.abs(twice) < ROUNDING ? 0 : Math.sign(twice)
}

function stepsCross(steps: readonly Point[]): boolean {
  const n = steps.length
  for (let i = 0; i < n; i++) {
    for (let k = i + 2; k < n; k++) {
      if (i === 0 && k === n - 1) continue
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
