/**
 * The shapes that kinds cut, as chains of lines and arcs. A bulge is the tangent of a quarter of the arc's sweep
 * (Autodesk ActiveX reference, "GetBulge"): 1 for a half circle, 0.414213562 for a quarter.
 */
import { describe, expect, test } from 'vitest'
import { area, bounds, type Chain, type Contour, kindOf, solve, type Thing } from '../../../geometry/index.ts'
import { designOf, type Stated } from '../../support/designs.ts'

const QUARTER = 0.414213562

function thing(kind: string, fields: Stated): Thing {
  const [only] = designOf({ things: [{ kind, id: 'it', ...fields }] }).things
  if (!only) throw new Error('there is no thing')
  return only
}

function opening(kind: string, fields: Stated): Contour {
  const [only, ...more] = kindOf(kind).openings(thing(kind, fields))
  if (!only || more.length > 0) throw new Error('one opening was expected')
  return only
}

function chain(contour: Contour): Chain {
  if (contour.shape === 'circle') throw new Error('a chain was expected, not a circle')
  return contour
}

const bulges = (contour: Contour) =>
  chain(contour).vertices.map((vertex) => Math.round(vertex.bulge * 1e9) / 1e9)

/** How far the direction turns at each vertex, radians: an arc sets out half its sweep to the right of its chord. */
function turns({ vertices }: Chain): number[] {
  const segments = vertices.map((from, index) => {
    const to = vertices[(index + 1) % vertices.length] ?? from
    const chord = Math.atan2(to.y - from.y, to.x - from.x)
    const half = 2 * Math.atan(from.bulge)
    return { leaves: chord - half, arrives: chord + half }
  })
  return segments.map((segment, index) => {
    const before = segments.at(index - 1) ?? segment
    return Math.abs(Math.sin((segment.leaves - before.arrives) / 2))
  })
}

describe('a sound hole', () => {
  test('that is round is a circle, not a polygon', () => {
    expect(opening('sound-hole', { diameter: 30 })).toEqual({
      shape: 'circle',
      centre: { x: 0, y: 0 },
      radius: 15,
    })
  })

  test('that is a slot is two lines and two half circles', () => {
    const slot = opening('sound-hole', { shape: 'slot', sizeAlong: 30, sizeAcross: 10 })
    expect(bulges(slot)).toEqual([0, 1, 0, 1])
    expect(bounds(slot)).toEqual({ minX: -15, maxX: 15, minY: -5, maxY: 5 })
    // A rectangle 20 by 10 and a circle of radius 5.
    expect(area(slot)).toBeCloseTo(200 + 25 * Math.PI, 9)
    expect(bounds(opening('sound-hole', { shape: 'slot', sizeAlong: 10, sizeAcross: 30 }))).toEqual({
      minX: -5,
      maxX: 5,
      minY: -15,
      maxY: 15,
    })
  })

  test('that is a slot as wide as long is a circle', () => {
    expect(opening('sound-hole', { shape: 'slot', sizeAlong: 20, sizeAcross: 20 })).toMatchObject({
      shape: 'circle',
      radius: 10,
    })
  })

  test.each([
    [60, 24],
    [20, 48],
    [400, 1],
    [31, 30],
  ])(
    'that is an oval of %d by %d is four compass arcs that meet without a corner',
    (sizeAlong, sizeAcross) => {
      const oval = chain(opening('sound-hole', { shape: 'oval', sizeAlong, sizeAcross }))
      expect(oval.vertices).toHaveLength(4)
      for (const { bulge } of oval.vertices) expect(bulge).toBeGreaterThan(0)
      for (const turn of turns(oval)) expect(turn).toBeLessThan(1e-7)
      const { minX, maxX, minY, maxY } = bounds(oval)
      expect([maxX - minX, maxY - minY]).toEqual([
        expect.closeTo(sizeAlong, 9),
        expect.closeTo(sizeAcross, 9),
      ])
      // Round once, whichever arcs it is made of.
      expect(oval.vertices.reduce((sum, { bulge }) => sum + 4 * Math.atan(bulge), 0)).toBeCloseTo(
        2 * Math.PI,
        9,
      )
    },
  )

  test('with a rim takes up its ledge all round, and is recessed to the stated depth', () => {
    const stated = { diameter: 30, rimWidth: 4, rimDepth: 2 }
    const kind = kindOf('sound-hole')
    expect(kind.footprint(thing('sound-hole', stated))).toMatchObject({ radius: 19 })
    expect(kind.operations(thing('sound-hole', stated))).toMatchObject([
      { kind: 'cut', contour: { radius: 15 } },
      { kind: 'recess', contour: { radius: 19 }, depth: 2 },
    ])
    expect(kind.rim?.(thing('sound-hole', stated))).toEqual({ depth: 2, ledge: 4 })
    expect(kind.rim?.(thing('sound-hole', {}))).toBeNull()
  })
})

describe('a pickup', () => {
  test('has corners that are quarter circles', () => {
    const hole = opening('pickup', { sizeAlong: 20, sizeAcross: 70, cornerRadius: 3 })
    expect(bulges(hole)).toEqual([0, QUARTER, 0, QUARTER, 0, QUARTER, 0, QUARTER])
    expect(area(hole)).toBeCloseTo(20 * 70 - (4 - Math.PI) * 9, 9)
    for (const turn of turns(chain(hole))) expect(turn).toBeLessThan(1e-12)
  })

  test('has sharp ones where no radius is stated', () => {
    expect(bulges(opening('pickup', { cornerRadius: 0 }))).toEqual([0, 0, 0, 0])
  })

  test('has round ends where the radius is more than half its width', () => {
    const hole = opening('pickup', { sizeAlong: 12, sizeAcross: 60, cornerRadius: 40 })
    expect(bulges(hole)).toEqual([0, 1, 0, 1])
    expect(bounds(hole)).toEqual({ minX: -6, maxX: 6, minY: -30, maxY: 30 })
  })

  test('hears across the strings, and hangs as deep as it is', () => {
    const kind = kindOf('pickup')
    const it = thing('pickup', { activeWidth: 44, depth: 15 })
    expect([kind.activeWidth?.(it), kind.reach(it, 4)]).toEqual([44, 15])
  })
})

describe('a screw', () => {
  // Plane geometry: a countersink of 90 degrees is as deep as it is wider than its hole, on each side.
  test('is countersunk as deep as half of what its head is wider than its hole', () => {
    expect(kindOf('screw').operations(thing('screw', { clearance: 4, head: 9 }))).toMatchObject([
      { kind: 'drill', diameter: 4, depth: 'through' },
      { kind: 'recess', contour: { radius: 4.5 }, depth: 2.5 },
    ])
  })

  test('is not countersunk where its head is no wider', () => {
    for (const head of [0, 3, 4])
      expect(kindOf('screw').operations(thing('screw', { clearance: 4, head }))).toHaveLength(1)
  })

  test('is as long as it is stated, from the face inwards', () => {
    expect(kindOf('screw').reach(thing('screw', { screwLength: 25 }), 4)).toBe(25)
  })
})

describe('a box with round corners', () => {
  test('has quarter circles on lid and base', () => {
    const { panels } = solve(designOf({ box: { cornerRadius: 12 } }))
    for (const face of ['lid', 'base'] as const)
      expect(bulges(panels[face].outline)).toEqual([0, QUARTER, 0, QUARTER, 0, QUARTER, 0, QUARTER])
  })
})
