import { describe, expect, it } from 'vitest'
import { arcBetween, arcEnds, bulgeOf, sweepOf } from '../../../geometry/plane/index.ts'

const degrees = (angle: number) => (angle * 180) / Math.PI

/**
 * Bulge = tan(theta / 4), negative clockwise, 0 straight, 1 a half circle: Autodesk ActiveX reference,
 * "GetBulge". The rows follow from it and were confirmed with ezdxf's `bulge_to_arc`.
 */
const table = [
  { from: [0, 0], to: [10, 0], bulge: 1, sweep: 180, radius: 5, centre: [5, 0], sagitta: 5 },
  { from: [0, 0], to: [10, 0], bulge: -1, sweep: -180, radius: 5, centre: [5, 0], sagitta: 5 },
  {
    from: [10, 0],
    to: [0, 10],
    bulge: 0.414213562,
    sweep: 90,
    radius: 10,
    centre: [0, 0],
    sagitta: 2.928932,
  },
  {
    from: [10, 0],
    to: [0, 10],
    bulge: -0.414213562,
    sweep: -90,
    radius: 10,
    centre: [10, 10],
    sagitta: 2.928932,
  },
  {
    from: [0, 0],
    to: [10, 0],
    bulge: 0.267949192,
    sweep: 60,
    radius: 10,
    centre: [5, 8.660254],
    sagitta: 1.339746,
  },
  { from: [0, 0], to: [10, 0], bulge: 0.5, sweep: 106.260205, radius: 6.25, centre: [5, 3.75], sagitta: 2.5 },
] as const

describe('an arc between two vertices', () => {
  it.each(table)('($from) to ($to) with bulge $bulge sweeps $sweep degrees', (row) => {
    const from = { x: row.from[0], y: row.from[1], bulge: row.bulge }
    const arc = arcBetween(from, { x: row.to[0], y: row.to[1] })
    expect(degrees(arc.sweep)).toBeCloseTo(row.sweep, 6)
    expect(arc.radius).toBeCloseTo(row.radius, 6)
    expect(arc.centre.x).toBeCloseTo(row.centre[0], 6)
    expect(arc.centre.y).toBeCloseTo(row.centre[1], 6)
    expect(arc.radius * (1 - Math.cos(arc.sweep / 2))).toBeCloseTo(row.sagitta, 6)
  })

  it.each(table)('($from) to ($to) with bulge $bulge comes back from centre, radius and sweep', (row) => {
    const from = { x: row.from[0], y: row.from[1], bulge: row.bulge }
    const ends = arcEnds(arcBetween(from, { x: row.to[0], y: row.to[1] }))
    expect(ends.from.x).toBeCloseTo(row.from[0], 12)
    expect(ends.from.y).toBeCloseTo(row.from[1], 12)
    expect(ends.from.bulge).toBeCloseTo(row.bulge, 12)
    expect(ends.to.x).toBeCloseTo(row.to[0], 12)
    expect(ends.to.y).toBeCloseTo(row.to[1], 12)
  })

  it('starts where it says: a half circle below its chord starts at 180 degrees', () => {
    const arc = arcBetween({ x: 0, y: 0, bulge: 1 }, { x: 10, y: 0 })
    expect(arc.startAngle).toBeCloseTo(Math.PI, 12)
  })

  it('is no arc where the segment is straight, has no length or no finite bulge', () => {
    expect(() => arcBetween({ x: 0, y: 0, bulge: 0 }, { x: 10, y: 0 })).toThrow('bulge 0 is not an arc')
    expect(() => arcBetween({ x: 3, y: 4, bulge: 1 }, { x: 3, y: 4 })).toThrow('not (3, 4) twice')
    expect(() => arcBetween({ x: 0, y: 0, bulge: Number.NaN }, { x: 1, y: 0 })).toThrow('bulge NaN')
  })
})

describe('bulge and sweep', () => {
  it('undo each other over nearly a full turn either way', () => {
    for (const sweep of [-6.2, -Math.PI, -1e-6, 0, 1e-6, 0.3, Math.PI / 2, 6.2]) {
      expect(sweepOf(bulgeOf(sweep))).toBeCloseTo(sweep, 12)
    }
  })

  it('cannot hold a full turn in one segment', () => {
    expect(() => bulgeOf(2 * Math.PI)).toThrow('not 6.28')
    expect(() => bulgeOf(Number.NaN)).toThrow('not NaN')
  })
})
