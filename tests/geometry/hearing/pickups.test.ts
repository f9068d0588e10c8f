import { describe, expect, test } from 'vitest'
import { loadsOf, pickupsOf, solve } from '../../../geometry/index.ts'
import { designOf, type Stated } from '../../support/designs.ts'

const TUNED = {
  scale: { length: 600 },
  stringing: { tuning: ['G2', 'D3', 'G3'] },
  strings: { count: 3, gauges: [0.9, 0.66, 0.43], spanAtNut: 20, spanAtSaddle: 30 },
}
const pickup = (more: Stated) => ({ kind: 'pickup', id: 'ears', across: 0, ...more })
const heard = (more: Stated, design: Stated = {}) => {
  const layout = solve(designOf({ ...TUNED, ...design, things: [pickup(more)] }))
  const [hearing] = pickupsOf(layout)
  if (!hearing) throw new Error('there is no pickup')
  return { layout, hearing }
}

describe('where it hears', () => {
  test('placed at a quarter of the scale it is a quarter of the string from the saddle, whatever the setback', () => {
    const { hearing } = heard({ along: { ofScale: 0.25 } })
    expect(hearing.share).toBeCloseTo(0.25, 9)
    expect(hearing.fromSaddle).toBeCloseTo(150, 9)
    expect(hearing.deafTo).toEqual([4, 8, 12, 16])
  })

  test('the strings span less than at the saddle, by how far it stands from it', () => {
    const { hearing } = heard({ along: { ofScale: 0.25 }, activeWidth: 25 })
    // From 30 at the saddle to 20 at the nut, a quarter of the way: 27.5; half of it over 12.5 is 1.25 outside.
    expect(hearing.stringSpan).toBeCloseTo(27.5, 9)
    expect(hearing.room).toBeCloseTo(-1.25, 9)
  })

  test('a coil with some width hears high harmonics less', () => {
    const point = heard({ along: { ofScale: 0.1 } }).hearing
    const wide = heard({ along: { ofScale: 0.1 }, heardLength: 40 }).hearing
    expect(wide.harmonics[0]).toBeGreaterThan(0.99 * (point.harmonics[0] ?? 0))
    expect(wide.harmonics[14]).toBeLessThan(0.9 * (point.harmonics[14] ?? 0))
  })
})

describe('what it takes from the neck', () => {
  const deep = { along: { ofScale: 0.15 }, depth: 14 }

  test('the relief is what is left under it, with room below; a bare section goes by the cube', () => {
    const { layout, hearing } = heard(deep, { board: { fitted: false }, neck: { relief: 0, rise: 0 } })
    expect(hearing.relief?.left).toBeCloseTo(layout.design.neck.thickness - 15, 9)
    // E I of one wood: b h³ / 12 (Gere and Goodno, "Mechanics of Materials"), so the share is that of the cubes.
    const { left = 0, without = 1, stiffness } = hearing.relief ?? {}
    expect(stiffness).toBeCloseTo((left / without) ** 3, 9)
  })

  test('with it the neck bends more, by the loads of the same design with and without', () => {
    const { layout, hearing } = heard(deep)
    const without = solve(designOf({ ...TUNED }))
    expect(hearing.relief?.nutRise?.as).toBeCloseTo(loadsOf(layout).neck?.nutRise ?? Number.NaN, 9)
    expect(hearing.relief?.nutRise?.without).toBeCloseTo(loadsOf(without).neck?.nutRise ?? Number.NaN, 9)
    expect(hearing.relief?.nutRise?.as).toBeGreaterThan(hearing.relief?.nutRise?.without ?? 0)
  })

  test('beside the neck, or above it, it takes nothing', () => {
    expect(heard({ along: 60, across: 60, sizeAcross: 20 }).hearing.relief).toBeNull()
    expect(heard({ along: { ofScale: 0.15 }, depth: 0 }).hearing.relief).toBeNull()
  })

  test('without a tuning the section is known and the bow is not', () => {
    const { hearing } = heard(deep, { stringing: { tuning: [] } })
    expect(hearing.relief?.stiffness).toBeGreaterThan(0)
    expect(hearing.relief?.bow).toBeNull()
  })

  test('a neck cut right through has no share of stiffness', () => {
    const { hearing } = heard({ along: { ofScale: 0.15 }, depth: 30 })
    expect(hearing.relief?.left).toBe(0)
    expect(hearing.relief?.stiffness).toBeNull()
  })
})
