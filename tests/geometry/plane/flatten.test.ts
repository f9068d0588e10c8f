import { describe, expect, it } from 'vitest'
import { circle, flatten, line, rectangle, stadium } from '../../../geometry/plane/index.ts'
import { apart } from './shapes.ts'

const origin = { x: 0, y: 0 }

describe('flatten', () => {
  it('refuses a tolerance that is not above 0', () => {
    expect(() => flatten(circle(origin, 1), 0)).toThrow('not 0')
    expect(() => flatten(circle(origin, 1), Number.NaN)).toThrow('not NaN')
  })

  it('leaves straight sides alone and does not repeat the first point of a closed contour', () => {
    expect(flatten(rectangle(0, 0, 3, 2))).toEqual([
      { x: 0, y: 0 },
      { x: 3, y: 0 },
      { x: 3, y: 2 },
      { x: 0, y: 2 },
    ])
  })

  it('ends an open chain with its last vertex', () => {
    expect(flatten(line(origin, { x: 5, y: 1 }))).toEqual([origin, { x: 5, y: 1 }])
  })

  it('a circle of radius 5 within 0.1 takes 16 steps, the fewest that do', () => {
    // The sagitta r (1 - cos(pi / n)) is 0.0961 for 16 steps and 0.1093 for 15: worked by hand.
    expect(flatten(circle(origin, 5), 0.1)).toHaveLength(16)
  })

  it('a step never turns more than a quarter, however loose the tolerance', () => {
    expect(flatten(circle(origin, 5), 1000)).toHaveLength(4)
  })

  it('steps lie within the tolerance of the arc at their middles, and on it at their ends', () => {
    for (const tolerance of [1, 0.1, 0.01, 0.001]) {
      const points = flatten(circle(origin, 30), tolerance)
      points.forEach((p, i) => {
        const q = points[(i + 1) % points.length] ?? p
        expect(apart(p, origin)).toBeCloseTo(30, 12)
        const sagitta = 30 - apart({ x: (p.x + q.x) / 2, y: (p.y + q.y) / 2 }, origin)
        expect(sagitta).toBeLessThanOrEqual(tolerance * (1 + 1e-6))
      })
    }
  })

  it('goes round an arc the way the arc goes, wherever its centre lies', () => {
    // About (7, -3) with radius 10: a third of a turn from 20 degrees on, either way, in as many steps of one size.
    for (const turn of [120, -120]) {
      const at = (degrees: number) => ({
        x: 7 + 10 * Math.cos((degrees * Math.PI) / 180),
        y: -3 + 10 * Math.sin((degrees * Math.PI) / 180),
      })
      const vertices = [
        { ...at(20), bulge: Math.tan((turn * Math.PI) / 720) },
        { ...at(20 + turn), bulge: 0 },
      ]
      const points = flatten({ shape: 'chain', closed: false, vertices }, 0.05)
      const steps = points.length - 1
      // The least number of steps whose sagitta 10 (1 - cos(60° / n)) is below 0.05: 11 leave 0.0453, 10 leave 0.0548.
      expect(steps).toBe(11)
      points.forEach((point, i) => {
        const wanted = at(20 + (turn * i) / steps)
        expect(point.x).toBeCloseTo(wanted.x, 9)
        expect(point.y).toBeCloseTo(wanted.y, 9)
      })
    }
  })

  it('keeps every vertex', () => {
    const slot = stadium({ x: 1, y: 2 }, 30, 10)
    const points = flatten(slot)
    if (slot.shape !== 'chain') throw new Error('expected a chain')
    for (const { x, y } of slot.vertices) expect(points).toContainEqual({ x, y })
  })
})
