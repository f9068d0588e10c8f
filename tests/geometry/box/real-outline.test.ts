import { describe, expect, test } from 'vitest'
import { roomAround, sideWallAt } from '../../../geometry/box/outlines.ts'
import {
  area,
  check,
  distanceToPoint,
  edgesAt,
  endsOf,
  faults,
  partsOf,
  sidesAt,
  solve,
  wallLinesOf,
} from '../../../geometry/index.ts'
import { designOf, type Stated } from '../../support/designs.ts'

/** A box as it may be found: law of cosines on 266.8 gives the other diagonal, 265.714271, and the area, 33037.89174 mm². */
const FOUND = {
  bass: [218.6],
  tailEnd: [151.2],
  treble: [220.9],
  neckEnd: [149.5],
  diagonalFromBass: [266.8],
}
const AREA = 33037.89174

const layoutOf = (box: Stated, more: Stated = {}) =>
  solve(designOf({ box: { survey: FOUND, ...box }, ...more }))

describe('the real outline', () => {
  test('is that of lid and base, to the square millimetre', () => {
    const { panels } = layoutOf({})
    expect(area(panels.lid.outline)).toBeCloseTo(AREA, 4)
    expect(area(panels.base.outline)).toBeCloseTo(AREA, 4)
  })

  test('lies with the centreline through the middles of both ends', () => {
    const { real, box } = layoutOf({})
    if (!real) throw new Error('the survey was not taken up')
    const [a, b, c, d] = real.outside.corners
    expect((a.x + d.x) / 2).toBeCloseTo(0, 9)
    expect((a.y + d.y) / 2).toBeCloseTo(0, 9)
    expect((b.y + c.y) / 2).toBeCloseTo(0, 9)
    expect(box.x1 - box.x0).toBeCloseTo((b.x + c.x) / 2, 9)
  })

  test('gives every wall the length it was measured at', () => {
    const { panels } = layoutOf({})
    const long = (face: keyof typeof panels) => panels[face].bounds.maxX - panels[face].bounds.minX
    expect(long('bass-wall')).toBeCloseTo(218.6, 6)
    expect(long('treble-wall')).toBeCloseTo(220.9, 6)
    expect(long('neck-end-wall')).toBeCloseTo(149.5, 6)
    expect(long('tail-end-wall')).toBeCloseTo(151.2, 6)
  })

  test('gives a wall the height that its two corners were measured at', () => {
    const heights = {
      heightNeckBass: [45],
      heightTailBass: [47],
      heightTailTreble: [48],
      heightNeckTreble: [46],
    }
    const { panels, neck } = layoutOf({ survey: { ...FOUND, ...heights } })
    const low = (face: 'bass-wall' | 'tail-end-wall') => {
      const { outline } = panels[face]
      return outline.shape === 'chain' ? outline.vertices.slice(0, 2).map(({ y }) => y) : []
    }
    expect(low('bass-wall')).toEqual([-45, -47])
    expect(low('tail-end-wall')).toEqual([-47, -48])
    const slot = neck.slots.find((one) => one.face === 'tail-end-wall')
    expect((slot?.depth ?? 0) + (slot?.wallLeftBelow ?? 0)).toBeCloseTo(47.5, 9)
  })

  test('is what the parts are cut to, right- and left-handed, each outline sound', () => {
    for (const hand of ['right', 'left'])
      for (const fit of ['on the walls', 'between the walls'])
        for (const cornerRadius of [0, 12]) {
          const layout = layoutOf({ lid: { fit }, cornerRadius }, { hand })
          for (const part of partsOf(layout)) expect(faults(part.outline)).toEqual([])
        }
  })

  test('of a square survey is the rectangle, figure for figure', () => {
    const survey = {
      bass: [240],
      treble: [240],
      neckEnd: [180],
      tailEnd: [180],
      diagonalFromBass: [300],
      diagonalFromTreble: [300],
    }
    const surveyed = solve(designOf({ box: { survey } }))
    const stated = solve(designOf())
    for (const key of [
      'x0',
      'x1',
      'insideX0',
      'insideX1',
      'insideBass',
      'insideTreble',
      'halfWidth',
    ] as const)
      expect(surveyed.box[key]).toBeCloseTo(stated.box[key], 6)
    expect(surveyed.neck.slots[0]?.wallLeftBeside).toBeCloseTo(stated.neck.slots[0]?.wallLeftBeside ?? 0, 6)
  })

  test('follows the hand: a left-handed lid is the mirror image', () => {
    const lid = (hand: string) => partsOf(layoutOf({}, { hand })).find((part) => part.id === 'lid')?.outline
    const points = (hand: string) => {
      const outline = lid(hand)
      return outline?.shape === 'chain' ? outline.vertices.map(({ x, y }) => ({ x, y })) : []
    }
    for (const { x, y } of points('right'))
      expect(points('left').some((one) => Math.hypot(one.x - x, one.y + y) < 1e-9)).toBe(true)
  })
})

describe('inside it', () => {
  test('a wall of 6 leaves an inside that is 6 from every outer face', () => {
    const layout = layoutOf({})
    const { inside } = wallLinesOf(layout)
    const outside = layout.real?.outside.corners ?? []
    if (inside?.shape !== 'chain') throw new Error('walls leave nothing')
    inside.vertices.forEach((corner, index) => {
      const here = { x: corner.x - layout.box.x0, y: corner.y }
      for (const [from, to] of [
        [index, (index + 1) % 4],
        [(index + 3) % 4, index],
      ] as const) {
        const [a, b] = [outside[from], outside[to]]
        if (!a || !b) throw new Error('a corner is missing')
        const cross = (b.x - a.x) * (here.y - a.y) - (b.y - a.y) * (here.x - a.x)
        expect(cross / Math.hypot(b.x - a.x, b.y - a.y)).toBeCloseTo(6, 9)
      }
    })
  })

  test('walls that leave nothing are a stop, and still a drawing', () => {
    const layout = layoutOf({
      lid: { fit: 'between the walls' },
      walls: { bass: 40, treble: 40, neckEnd: 40, tailEnd: 40 },
      survey: {
        bass: [60],
        treble: [60],
        neckEnd: [60],
        tailEnd: [60],
        diagonalFromBass: [84],
        diagonalFromTreble: [85],
      },
    })
    expect(check(layout).find((one) => one.rule === 'box-has-inside')?.grade).toBe('stop')
    expect(area(layout.panels.lid.outline)).toBeGreaterThan(0)
  })

  test('a hole is held against the edge that is really there', () => {
    // A box 40 mm wider at the tail, sides of 200: their edges turn by 20 in 200, and 120 mm along win 12 square to them.
    const survey = {
      bass: [200],
      treble: [200],
      neckEnd: [140],
      tailEnd: [180],
    }
    const at = (along: number) => {
      const layout = layoutOf(
        { survey },
        { things: [{ kind: 'sound-hole', id: 'hole', along, across: 55, diameter: 20 }] },
      )
      return check(layout).find((one) => one.rule === 'opening-to-edge')?.measured ?? 0
    }
    expect(at(150) - at(30)).toBeCloseTo(12, 6)
  })

  test('a place half way to the edge follows the edge', () => {
    const survey = {
      bass: [200],
      treble: [200],
      neckEnd: [140],
      tailEnd: [180],
      diagonalFromBass: [255],
      diagonalFromTreble: [255],
    }
    const across = { midway: ['centreline', 'treble edge'] }
    const layout = layoutOf(
      { survey },
      {
        things: [
          { kind: 'sound-hole', id: 'near', along: 20, across, diameter: 20 },
          { kind: 'sound-hole', id: 'far', along: { share: 1 }, across, diameter: 20 },
        ],
      },
    )
    const [near, far] = layout.placed
    if (!near || !far) throw new Error('a hole is missing')
    for (const { at } of [near, far]) expect(at.y).toBeCloseTo(sidesAt(layout, 'lid', at.x)[1] / 2, 9)
    expect(far.at.x).toBeCloseTo(endsOf(layout, 'lid')[1], 9)
    expect(far.at.y).toBeGreaterThan(near.at.y + 5)
  })

  test('edges beside a place are the bounds of a rectangle, and lines of a box askew', () => {
    const plain = solve(designOf())
    expect(edgesAt(plain, 'lid', { x: 30, y: 20 })).toEqual(plain.panels.lid.bounds)
    const layout = layoutOf({})
    const { minX } = edgesAt(layout, 'lid', { x: 30, y: 40 })
    expect(minX).not.toBe(0)
    expect(edgesAt(layout, 'lid', { x: 30, y: 0 }).minX).toBeCloseTo(0, 9)
  })
})

describe('what stands inside', () => {
  test('a block is held against the wall that is really there', () => {
    // A box 40 mm wider at the tail: its treble wall turns by 20 in 200 mm.
    const survey = { bass: [200], treble: [200], neckEnd: [140], tailEnd: [180] }
    const block = (along: number) => {
      const layout = layoutOf({
        survey,
        inside: [
          { id: 'block', along, across: 55, long: 20, wide: 20, tall: 10, below: 15, fixed: 'on the walls' },
        ],
      })
      return check(layout).find((one) => one.rule === 'inside-fits')?.measured ?? 0
    }
    // Square to a wall that turns by 0.1, 80 mm farther along are 8 mm more room.
    expect(block(120) - block(40)).toBeCloseTo(8, 6)
    expect(block(20)).toBeLessThan(block(40))
  })

  test('room around is the plain difference in a rectangle, and square to the wall in a box askew', () => {
    const plain = solve(designOf())
    const { x0 } = plain.box
    expect(roomAround(plain, { minX: x0 + 10, maxX: x0 + 20, minY: 0, maxY: 30 })).toMatchObject({
      neckEnd: 4,
      treble: 54,
    })
    const askew = layoutOf({})
    const around = { minX: askew.box.x0 + 60, maxX: askew.box.x0 + 90, minY: -20, maxY: 20 }
    const corners = [around.minX, around.maxX].flatMap((x) =>
      [around.minY, around.maxY].map((y) => ({ x, y })),
    )
    const { inside } = wallLinesOf(askew)
    if (!inside) throw new Error('walls leave nothing')
    const least = Math.min(...corners.map((corner) => distanceToPoint(inside, corner)))
    expect(Math.min(...Object.values(roomAround(askew, around)))).toBeCloseTo(least, 9)
  })

  test('a side wall is where it runs', () => {
    const askew = layoutOf({})
    const [, , tailTreble, neckTreble] = askew.real?.outside.corners ?? []
    if (!tailTreble || !neckTreble) throw new Error('the survey was not taken up')
    for (const { x, y } of [tailTreble, neckTreble])
      expect(sideWallAt(askew, 'treble-wall', askew.box.x0 + x)).toBeCloseTo(y, 9)
    expect(sideWallAt(solve(designOf()), 'bass-wall', 500)).toBe(-90)
  })
})
