/** The place of one contour deepest in another, or farthest beyond it, against places all along the first. */
import fc from 'fast-check'
import { describe, expect, it, test } from 'vitest'
import type { Chain, Contour, Point } from '../../../geometry/plane/index.ts'
import { chain, depthAt, distanceToPoint, polygon, rectangle } from '../../../geometry/plane/index.ts'
import { farthest, type Reach } from '../../../geometry/plane/reach.ts'
import { law, seed } from './law.ts'
import { arc, chainOf, segments } from './segments.ts'
import { apart, contours, sampled } from './shapes.ts'

/** A circle as two half turns. */
const round = (x: number, y: number, radius: number): Chain =>
  chain(
    [
      { x: x - radius, y, bulge: 1 },
      { x: x + radius, y, bulge: 1 },
    ],
    true,
  )

/** Chains of every kind that closes. */
const regions = contours.map((contour) =>
  contour.shape === 'circle' ? round(contour.centre.x, contour.centre.y, contour.radius) : contour,
)

const nothing: Reach = { value: Number.NEGATIVE_INFINITY, x: 0, y: 0, toX: 0, toY: 0 }

/** As far as any of the places all along it, and of finer ones about the best three of each segment. */
function looked(contour: Contour, region: Chain, side: 'within' | 'beyond'): number {
  const worth = (place: Point) => depthAt(place, region) * (side === 'within' ? 1 : -1)
  const places = sampled(contour, 120)
  const order = places
    .map((place, index) => ({ index, worth: worth(place) }))
    .sort((a, b) => b.worth - a.worth)
  let best = order[0]!.worth
  // Between neighbours of the best the chord is as good as the arc, to a few thousandths of a millimetre's rise.
  for (const { index } of order.slice(0, 3))
    for (const other of [index - 1, index + 1]) {
      const [p, q] = [places[index]!, places[other]]
      if (!q || apart(p, q) > 3) continue
      for (let i = 1; i < 20; i++) {
        const t = i / 20
        const place = { x: p.x + t * (q.x - p.x), y: p.y + t * (q.y - p.y) }
        if (distanceToPoint(contour, place) < 1e-9) best = Math.max(best, worth(place))
      }
    }
  return best
}

function check(contour: Contour, region: Chain, side: 'within' | 'beyond'): void {
  const found = farthest(contour, region, side, nothing)
  const { value, x, y, toX, toY } = found
  // A thousandth is promised; two places half a step apart differ by no more than that step in depth.
  expect(value).toBeGreaterThanOrEqual(looked(contour, region, side) - 0.00101)
  expect(value).toBeCloseTo(depthAt({ x, y }, region) * (side === 'within' ? 1 : -1), 9)
  expect(distanceToPoint(contour, { x, y })).toBeLessThan(1e-6)
  expect(distanceToPoint(region, { x: toX, y: toY })).toBeLessThan(1e-6)
  expect(Math.hypot(x - toX, y - toY)).toBeCloseTo(Math.abs(value), 9)
}

describe(`farthest (seed ${seed})`, () => {
  it('is as deep, or as far beyond, as any place all along it, to a thousandth', () => {
    law(
      [contours, regions],
      (contour, region) => {
        check(contour, region, 'within')
        check(contour, region, 'beyond')
      },
      60,
    )
  })

  it('holds for single lines and arcs, short ones and nearly whole circles', () => {
    law(
      [segments, regions, fc.boolean()],
      (drawn, region, within) => check(chainOf(drawn), region, within ? 'within' : 'beyond'),
      200,
    )
  })

  test('a place already known is kept unless a better one is there', () => {
    const plate = rectangle(0, 0, 40, 20)
    const through = chainOf(arc(20, 0, 8, 0, 180))
    const known: Reach = { value: 9, x: 1, y: 2, toX: 3, toY: 4 }
    expect(farthest(through, plate, 'within', known)).toEqual(known)
    const found = farthest(through, plate, 'within', { ...known, value: 7 })
    expect(found.value).toBeCloseTo(8, 2)
    expect(known.value).toBe(9)
  })
})

describe('places worked out by hand', () => {
  const at = (
    contour: Contour,
    region: Chain,
    side: 'within' | 'beyond',
    wanted: number,
    x: number,
    y: number,
  ) => {
    const found = farthest(contour, region, side, nothing)
    expect(found.value).toBeGreaterThan(wanted - 0.00101)
    expect(found.value).toBeLessThan(wanted + 1e-9)
    // Where the line runs level with the other a long way, the place is told no better than the depth.
    expect(Math.hypot(found.x - x, found.y - y)).toBeLessThan(0.3)
  }
  const open = (...list: readonly (readonly [number, number])[]): Chain => ({
    shape: 'chain',
    closed: false,
    vertices: list.map(([x, y]) => ({ x, y, bulge: 0 })),
  })

  test('a line across a notch, a circle and a corner', () => {
    // A V of 45 degrees down from (0, 0) to (20, -20) and up to (40, 0): a level line at 0 is farthest beyond at its middle.
    const notched = polygon([
      { x: -30, y: -60 },
      { x: 70, y: -60 },
      { x: 70, y: 0 },
      { x: 40, y: 0 },
      { x: 20, y: -20 },
      { x: 0, y: 0 },
      { x: -30, y: 0 },
    ])
    at(open([-10, 0], [50, 0]), notched, 'beyond', 20 / Math.SQRT2, 20, 0)
    // Under the notch, deepest where it is as far from foot and notch: on x = 20 only its point counts.
    at(open([-20, -40], [60, -40]), notched, 'within', 20, 20, -40)
    // A chord 3 off the centre of a circle of 5: deepest at its middle, by 2.
    at(open([-9, 3], [9, 3]), round(0, 0, 5), 'within', 2, 0, 3)
    at(open([-9, 3], [9, 3]), round(0, 0, 5), 'beyond', Math.hypot(9, 3) - 5, -9, 3)
  })

  test('an arc over a side: its top, though no corner of it stands out', () => {
    const plate = rectangle(0, 0, 100, 50)
    at(chainOf(arc(30, 45, 20, 20, 160)), plate, 'beyond', 15, 30, 65)
    at(chainOf(arc(30, 45, 20, 200, 340)), plate, 'within', 25, 30, 25)
    at(chainOf(arc(30, 45, 20, 160, 20)), plate, 'beyond', 15, 30, 65)
  })

  test('an arc in a ring’s hollow side', () => {
    // From within a round outline of 30 about (0, 0) an arc of 6 about (10, 0) lies deepest at (4, 0): 26.
    const outline = round(0, 0, 30)
    at(chainOf(arc(10, 0, 6, 90, 270)), outline, 'within', 26, 4, 0)
    at(chainOf(arc(10, 0, 26, -80, 80)), outline, 'beyond', 6, 36, 0)
  })
})
