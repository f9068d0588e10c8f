import { describe, expect, test } from 'vitest'
import { partsOf, scheduleOf, solve } from '../../../geometry/index.ts'
import { designOf, type Stated } from '../../support/designs.ts'

const pilotsFor = (design: Stated) =>
  scheduleOf(solve(designOf(design)))
    .filter((one) => one.of.startsWith('Pilot'))
    .map(({ part, depth, edge, line }) => ({
      part,
      depth,
      edge: edge.distance,
      line: line.distance,
      to: line.towards,
    }))

const screw = (fields: Stated) => ({ kind: 'screw', id: 'held', clearance: 3.6, ...fields })

describe('pilot holes in the neck', () => {
  test('a screw of 16 through a lid of 4 that lies on the neck wants one 12 deep', () => {
    const design = {
      neck: { relief: 0 },
      things: [screw({ along: 100, across: -6, screwLength: 16 })],
    }
    const { panels } = solve(designOf(design))
    for (const hand of ['right', 'left'])
      expect(pilotsFor({ ...design, hand })).toEqual([
        { part: 'neck-top', depth: 12, edge: panels.lid.originX + 100, line: 6, to: 'bass' },
      ])
  })

  test('the air of a relief is no part of it', () => {
    const design = { neck: { relief: 3 }, things: [screw({ along: 100, across: 0, screwLength: 16 })] }
    expect(pilotsFor(design)).toMatchObject([{ depth: 9 }])
  })

  test('its width is that of the workshop chart for this screw and wood: 3/32 in for a No. 6 in maple', () => {
    const layout = solve(
      designOf({ neck: { relief: 0, wood: 'maple, sugar' }, things: [screw({ along: 100, across: 0 })] }),
    )
    const [row] = scheduleOf(layout).filter((one) => one.of === 'Pilot, held')
    expect(row?.diameter).toBeCloseTo((3 / 32) * 25.4, 9)
  })

  test('screws through both side walls of a narrow box go into the side that faces them', () => {
    // 60 wide, walls of 6, neck of 38: 5 of air. A screw of 30 has 19 in the neck.
    const through = (face: string, id: string) => screw({ id, face, along: 0, across: 12, screwLength: 30 })
    const design = {
      box: { width: 60 },
      neck: { width: 38 },
      things: [through('bass-wall', 'bass'), through('treble-wall', 'treble')],
    }
    const parts = (hand: string) =>
      pilotsFor({ ...design, hand }).map(({ part, depth, line }) => [part, depth, line])
    // The top of the neck lies flush with the lid, 4 over the edge of the walls: 12 and 4 down.
    expect(parts('right')).toEqual([
      ['neck-side', 19, 16],
      ['neck-side-inside', 19, 16],
    ])
    expect(parts('left')).toEqual(parts('right'))
    const seen = partsOf(solve(designOf({ ...design, hand: 'left' }))).filter(({ id }) =>
      id.startsWith('neck-side'),
    )
    expect(
      seen.map((part) => [
        part.seen,
        part.operations.filter(({ kind }) => kind === 'drill').map(({ of }) => of),
      ]),
    ).toEqual([
      ['from the treble side', ['Pilot, treble']],
      ['from the bass side', ['Pilot, bass']],
    ])
  })
})

describe('pilot holes in the block under the neck', () => {
  const block = { ends: 'at a block', blockLength: 40, blockWidth: 70 }

  test('are drilled from the end for a screw through the wall, from below for one through the base', () => {
    const design = {
      neck: block,
      things: [
        screw({ id: 'end', face: 'neck-end-wall', along: 20, across: 35, screwLength: 30 }),
        screw({ id: 'under', face: 'base', along: 26, across: 10, screwLength: 20 }),
      ],
    }
    const layout = solve(designOf(design))
    for (const hand of ['right', 'left'])
      expect(pilotsFor({ ...design, hand })).toEqual([
        // 26 from the outside of a wall of 6; a base of 4 leaves 16 of 20.
        { part: 'neck-block-inside', depth: 16, edge: 20, line: 10, to: 'treble' },
        // The block begins under the neck, which ends 19 below the lid; the wall's edge lies 4 below it.
        { part: 'neck-block-end', depth: 24, edge: 35 + 4 - 19, line: 20, to: 'treble' },
      ])
    expect(layout.neck.bottom).toBe(-19)
  })

  test('without screws nothing is drilled and no view is added', () => {
    const ids = partsOf(solve(designOf({ neck: block }))).map(({ id }) => id)
    expect(ids.filter((id) => /inside|end$/.test(id) && id.startsWith('neck'))).toEqual([])
  })
})
