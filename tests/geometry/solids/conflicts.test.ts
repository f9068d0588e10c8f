/** What stands in a box as solids, and which of them are said to be in each other's way. */
import { describe, expect, test } from 'vitest'
import {
  conflictsOf,
  inSolid,
  onFace,
  type Solid,
  solidsNear,
  solidsOf,
  solve,
} from '../../../geometry/index.ts'
import { designOf, type Stated } from '../../support/designs.ts'

const SCREW = { kind: 'screw', id: 'screw', clearance: 4, head: 8, screwLength: 30 }
const layoutOf = (...things: Stated[]) => solve(designOf({ things }))
const bodies = (layout: ReturnType<typeof layoutOf>, id: string): Solid[] =>
  solidsOf(layout).filter((one) => one.of === id)

describe('a thing behind each face', () => {
  // Box 240 x 180 x 55, lid and base 4, saddle at 172.8 of the lid and 635 of the scale: x0 is 462.2.
  test.each([
    {
      face: 'lid',
      place: { along: 50, across: 20 },
      from: { x: 512.2, y: 20, z: 0 },
      to: { x: 512.2, y: 20, z: -30 },
    },
    {
      face: 'base',
      place: { along: 50, across: 20 },
      from: { x: 512.2, y: 20, z: -55 },
      to: { x: 512.2, y: 20, z: -25 },
    },
    {
      face: 'bass-wall',
      place: { along: 10, across: 20 },
      from: { x: 592.2, y: -90, z: -24 },
      to: { x: 592.2, y: -60, z: -24 },
    },
    {
      face: 'treble-wall',
      place: { along: 10, across: 20 },
      from: { x: 592.2, y: 90, z: -24 },
      to: { x: 592.2, y: 60, z: -24 },
    },
    {
      face: 'neck-end-wall',
      place: { along: 60, across: 20 },
      from: { x: 462.2, y: 60, z: -24 },
      to: { x: 492.2, y: 60, z: -24 },
    },
    {
      face: 'tail-end-wall',
      place: { along: 60, across: 20 },
      from: { x: 702.2, y: 60, z: -24 },
      to: { x: 672.2, y: 60, z: -24 },
    },
  ] as const)('on the $face reaches inward from its outer side', ({ face, place, from, to }) => {
    const layout = layoutOf({ ...SCREW, face, ...place })
    const [shank] = bodies(layout, 'screw')
    if (!shank) throw new Error('the screw has no shank')
    const at = (share: number, off = 0) => ({
      x: from.x + (to.x - from.x) * share,
      y: from.y + (to.y - from.y) * share + (shank.axis === 'y' ? 0 : off),
      z: from.z + (to.z - from.z) * share,
    })
    for (const share of [0.01, 0.5, 0.99]) expect(inSolid(shank, at(share))).toBe(true)
    for (const share of [-0.02, 1.02]) expect(inSolid(shank, at(share))).toBe(false)
    if (shank.axis !== 'y') {
      expect(inSolid(shank, at(0.5, 1.9))).toBe(true)
      expect(inSolid(shank, at(0.5, 2.1))).toBe(false)
    }
    const seen = onFace(layout, face, from)
    expect(seen.x).toBeCloseTo(place.along, 9)
    expect(seen.y).toBeCloseTo(face === 'lid' || face === 'base' ? place.across : -place.across, 9)
  })
})

describe('structure', () => {
  const { box, neck } = layoutOf()
  const solids = solidsOf(layoutOf())
  test('walls, lid, base, neck and strings are there, and the air between is not', () => {
    const at = (x: number, y: number, z: number) =>
      [...new Set(solids.filter((one) => inSolid(one, { x, y, z })).map((one) => one.of))].sort()
    const [middle, low] = [(box.x0 + box.x1) / 2, (box.baseTop + neck.bottom) / 2]
    expect(at(middle, 60, -20)).toEqual([])
    expect(at(middle, 60, -1)).toEqual(['lid'])
    expect(at(middle, 60, -53)).toEqual(['base'])
    expect(at(middle, -88, -20)).toEqual(['bass-wall'])
    expect(at(middle, 88, -20)).toEqual(['treble-wall'])
    expect(at(box.x0 + 1, 60, -20)).toEqual(['neck-end-wall'])
    expect(at(box.x1 - 1, 60, -20)).toEqual(['tail-end-wall'])
    expect(at(middle, 10, neck.bottom + 2)).toEqual(['neck'])
    expect(at(middle, 10, low)).toEqual([])
    expect(at(box.x1 + 14, 0, neck.bottom + 2)).toEqual(['neck', 'string hole 2'])
  })

  test('those near a place are the same that looking at all of them finds', () => {
    const around = { minX: box.x0 - 5, maxX: box.x0 + 30, minY: -30, maxY: 30, minZ: -30, maxZ: -5 }
    const slow = solids.filter(
      ({ box: b }) =>
        b.minX <= around.maxX + 2 &&
        b.maxX >= around.minX - 2 &&
        b.minY <= 32 &&
        b.maxY >= -32 &&
        b.minZ <= -3 &&
        b.maxZ >= -32,
    )
    expect(solidsNear(layoutOf(), around, 2).map((one) => one.of)).toEqual(slow.map((one) => one.of))
  })
})

describe('conflicts', () => {
  test('a design without bodies has none', () => {
    expect(conflictsOf(layoutOf({ kind: 'sound-hole', id: 'hole' }))).toEqual([])
  })

  test('screws that meet from two faces are found once, with how deep they meet', () => {
    // From the lid at (592.2, 60) down to -30; from the treble wall at z -24, 24 below its edge at -4 … across 20.
    const layout = layoutOf(
      { ...SCREW, id: 'down', face: 'lid', along: 130, across: 60 },
      { ...SCREW, id: 'in', face: 'treble-wall', along: 10, across: 20, screwLength: 40 },
    )
    const found = conflictsOf(layout)
    expect(found.map(({ a, b }) => [a.of, b.of])).toEqual([['down', 'in']])
    // Axes cross; radii 2 and 2: 4 to part them sideways.
    expect(found[0]?.room).toBeCloseTo(-4, 2)
  })

  test('a screw may go into wood, and a pickup into the lid it stands in; not into a wall', () => {
    const through = layoutOf({ ...SCREW, face: 'tail-end-wall', along: 0, across: 20 })
    expect(conflictsOf(through)).toEqual([])
    const wide = layoutOf({ kind: 'pickup', id: 'wide', along: 100, across: 60, sizeAcross: 60 })
    expect(conflictsOf(wide).map(({ a, b }) => [a.of, b.of])).toEqual([['wide', 'treble-wall']])
  })
})
