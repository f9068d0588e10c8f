import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { contourKey, contourMark } from '../../../exporters/drawing/soundContour.ts'
import { type Chain, type Contour, reversed } from '../../../geometry/index.ts'

const coordinate = fc.double({ min: -1000, max: 1000, noNaN: true })
const vertex = fc.record({
  x: coordinate,
  y: coordinate,
  bulge: fc.double({ min: -1, max: 1, noNaN: true }),
})

/** A closed chain from another of its vertices on, and perhaps the other way round. */
const sameChains = fc
  .tuple(fc.array(vertex, { minLength: 2, maxLength: 12 }), fc.nat(11), fc.boolean())
  .map(([vertices, start, backwards]): [Chain, Chain] => {
    const at = start % vertices.length
    const chain: Chain = { shape: 'chain', closed: true, vertices }
    const turned: Chain = { ...chain, vertices: [...vertices.slice(at), ...vertices.slice(0, at)] }
    return [chain, backwards ? reversed(turned) : turned]
  })

describe('contours on one another', () => {
  test('have one mark and one key, wherever they start and whichever way they run', () => {
    fc.assert(
      fc.property(sameChains, ([chain, same]) => {
        expect(contourMark(same)).toBe(contourMark(chain))
        expect(contourKey(same)).toBe(contourKey(chain))
      }),
    )
  })

  test('a tenth of a micrometre apart have two keys', () => {
    const circle = (x: number): Contour => ({ shape: 'circle', centre: { x, y: 0 }, radius: 3 })
    expect(contourKey(circle(5.0001))).not.toBe(contourKey(circle(5)))
    expect(contourKey(circle(5.00001))).toBe(contourKey(circle(5)))
  })
})

describe('marks tell apart, so that keys are hardly ever needed', () => {
  const distinct = (contours: readonly Contour[]) => new Set(contours.map(contourMark)).size
  const numbers = Array.from({ length: 70 }, (_, index) => index)

  test('4,900 holes of a grid', () => {
    const holes = numbers.flatMap((row) =>
      numbers.map(
        (column): Contour => ({ shape: 'circle', centre: { x: column * 5, y: row * 5 }, radius: 2 }),
      ),
    )
    expect(distinct(holes)).toBe(holes.length)
  })

  test('lines and boxes that are their own mirror image', () => {
    const mirrored = numbers.flatMap((x): Contour[] => {
      const above = { x, y: 20, bulge: 0 }
      const below = { x, y: -20, bulge: 0 }
      const corners = [below, { ...below, x: -x - 1 }, { ...above, x: -x - 1 }, above]
      return [
        { shape: 'chain', closed: false, vertices: [above, below] },
        { shape: 'chain', closed: true, vertices: corners },
      ]
    })
    expect(distinct(mirrored)).toBe(mirrored.length)
  })
})
