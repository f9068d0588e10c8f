/**
 * Laws of the plane, tried on contours of every kind: what must hold whatever the shape, and what a slow and
 * plain way of measuring says (dense samples, winding angles). Seeds are fixed; a failure prints the shrunk
 * contours. A law that hardly met the case it is about fails for idleness.
 */
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { Chain, Contour, Placement, Point } from '../../../geometry/plane/index.ts'
import {
  area,
  bounds,
  centroid,
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
  length,
  mirrorX,
  mirrorY,
  move,
  nearest,
  nearestPoint,
  place,
  placePoint,
  reversed,
  turn,
} from '../../../geometry/plane/index.ts'
import { law, ROOT_OF_ROUNDING, ROUNDING, SEARCHED, seed } from './law.ts'
import {
  apart,
  contours,
  longestStep,
  pairs,
  placements,
  points,
  polygonArea,
  sampled,
  sampledDistance,
  stars,
  windings,
} from './shapes.ts'

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
