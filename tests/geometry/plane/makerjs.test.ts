/**
 * The engine against maker.js 0.19.2, a general-purpose library of lines and arcs that shares no code with it:
 * lengths, boxes, inside or outside, and whether two pieces cross.
 */
import fc from 'fast-check'
import makerjs from 'makerjs'
import { describe, expect, it } from 'vitest'
import type { Chain, Contour, Vertex } from '../../../geometry/plane/index.ts'
import {
  bounds,
  circle,
  distance,
  distanceToPoint,
  isInside,
  length,
  oval,
  roundedRectangle,
  stadium,
} from '../../../geometry/plane/index.ts'
import { contours, evenly, points, stars } from './shapes.ts'

const origin = { x: 0, y: 0 }

/** A segment as a path: from its ends, its radius by the bulge formula, which side and which way. */
function toPath(from: Vertex, to: Vertex): MakerJs.IPath {
  if (from.bulge === 0) return new makerjs.paths.Line([from.x, from.y], [to.x, to.y])
  const b = Math.abs(from.bulge)
  const radius = (Math.hypot(to.x - from.x, to.y - from.y) * (1 + b * b)) / (4 * b)
  return new makerjs.paths.Arc([from.x, from.y], [to.x, to.y], radius, b > 1, from.bulge < 0)
}

function toModel(contour: Contour): MakerJs.IModel {
  if (contour.shape === 'circle') {
    const { x, y } = contour.centre
    return { paths: { round: new makerjs.paths.Circle([x, y], contour.radius) } }
  }
  const { vertices, closed } = contour
  const paths: MakerJs.IPathMap = {}
  vertices.forEach((from, i) => {
    const to = vertices[i + 1] ?? (closed ? vertices[0] : undefined)
    if (to !== undefined) paths[`p${i}`] = toPath(from, to)
  })
  return { paths }
}

function expectBox(contour: Contour, model: MakerJs.IModel): void {
  const box = makerjs.measure.modelExtents(model)
  if (box === null) throw new Error('the other library measured nothing')
  const { minX, minY, maxX, maxY } = bounds(contour)
  expect(minX).toBeCloseTo(box.low[0] ?? Number.NaN, 5)
  expect(minY).toBeCloseTo(box.low[1] ?? Number.NaN, 5)
  expect(maxX).toBeCloseTo(box.high[0] ?? Number.NaN, 5)
  expect(maxY).toBeCloseTo(box.high[1] ?? Number.NaN, 5)
}

describe('against maker.js: shapes that both make', () => {
  it('a rounded rectangle is as long and as large', () => {
    const ours = roundedRectangle({ x: 50, y: 25 }, 100, 50, 8)
    const theirs = new makerjs.models.RoundRectangle(100, 50, 8)
    expect(length(ours)).toBeCloseTo(makerjs.measure.modelPathLength(theirs), 9)
    expectBox(ours, theirs)
  })

  it('a slot is as long and as large', () => {
    const ours = stadium({ x: 20, y: 0 }, 50, 10)
    const theirs = new makerjs.models.Slot([0, 0], [40, 0], 5)
    expect(length(ours)).toBeCloseTo(makerjs.measure.modelPathLength(theirs), 9)
    expectBox(ours, theirs)
  })

  it('a rounded rectangle with its radius at half its side is their oval', () => {
    const ours = roundedRectangle({ x: 30, y: 10 }, 60, 20, 10)
    const theirs = new makerjs.models.Oval(60, 20)
    expect(length(ours)).toBeCloseTo(makerjs.measure.modelPathLength(theirs), 9)
    expectBox(ours, theirs)
  })
})

/** Leaves out arcs so flat that the rounding of their radius in the other library decides. */
const bentOrStraight = contours.filter(
  (contour) =>
    contour.shape === 'circle' ||
    contour.vertices.every(({ bulge }) => bulge === 0 || Math.abs(bulge) > 1e-3),
)

describe('against maker.js: any contour (seed 11)', () => {
  it('is as long', () => {
    // The other library rounds places on its arcs to 1e-7, and an arc's centre is found from such places.
    fc.assert(
      fc.property(bentOrStraight, (contour) => {
        expect(length(contour)).toBeCloseTo(makerjs.measure.modelPathLength(toModel(contour)), 5)
      }),
      { seed: 11, numRuns: 200 },
    )
  })

  it('fills the same box', () => {
    fc.assert(
      fc.property(bentOrStraight, (contour) => expectBox(contour, toModel(contour))),
      { seed: 11, numRuns: 200 },
    )
  })

  it('has the same points inside', () => {
    let inside = 0
    let outside = 0
    const shapes: Contour[] = [
      roundedRectangle(origin, 60, 40, 8),
      stadium(origin, 70, 30),
      oval(origin, 70, 40),
      circle(origin, 25),
    ]
    fc.assert(
      fc.property(fc.constantFrom(...shapes), points, (contour, point) => {
        fc.pre(distanceToPoint(contour, point) > 1e-3)
        const theirs = makerjs.measure.isPointInsideModel([point.x, point.y], toModel(contour))
        expect(isInside(point, contour)).toBe(theirs)
        if (theirs) inside++
        else outside++
      }),
      { seed: 11, numRuns: 300 },
    )
    expect(Math.min(inside, outside)).toBeGreaterThan(30)
  })
})

describe('against maker.js: pieces that cross (seed 12)', () => {
  it('are 0 apart, and pieces that do not cross are not', () => {
    let crossing = 0
    let clear = 0
    const piece = (star: Chain, i: number): Chain => {
      const from = star.vertices[i % star.vertices.length] as Vertex
      const to = star.vertices[(i + 1) % star.vertices.length] as Vertex
      return { shape: 'chain', closed: false, vertices: [from, { ...to, bulge: 0 }] }
    }
    const bent = fc.tuple(stars, fc.nat(7), evenly(-1.5, 1.5)).map(([star, i, bulge]) => {
      const { vertices } = piece(star, i)
      const [from, to] = vertices as readonly [Vertex, Vertex]
      // Leave out bows so flat that the other library's rounding of radii decides.
      return {
        ...piece(star, i),
        vertices: [{ ...from, bulge: Math.abs(bulge) < 0.05 ? 0 : bulge }, to],
      } as Chain
    })
    fc.assert(
      fc.property(bent, bent, (a, b) => {
        const apart = distance(a, b)
        // Too near to call for a library that rounds to 1e-7 or so.
        fc.pre(apart === 0 || apart > 1e-3)
        const [a1, a2] = a.vertices as readonly [Vertex, Vertex]
        const [b1, b2] = b.vertices as readonly [Vertex, Vertex]
        const met = makerjs.path.intersection(toPath(a1, a2), toPath(b1, b2))
        expect(apart === 0).toBe((met?.intersectionPoints?.length ?? 0) > 0)
        if (apart === 0) {
          crossing++
          for (const place of met?.intersectionPoints ?? []) {
            const point = { x: place[0] ?? Number.NaN, y: place[1] ?? Number.NaN }
            expect(distanceToPoint(a, point)).toBeLessThan(1e-4)
            expect(distanceToPoint(b, point)).toBeLessThan(1e-4)
          }
        } else clear++
      }),
      { seed: 12, numRuns: 800 },
    )
    expect(Math.min(crossing, clear)).toBeGreaterThan(100)
  })
})
