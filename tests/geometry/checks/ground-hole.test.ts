/**
 * The hole for the ground wire through the tail-end wall, against whatever is nearest it.
 *
 * Of 3 it stands at (38 + 0.4 + 3) / 2 + 8 = 28.7 to the treble and 12 down; the wall is 47 tall and 90 to either side.
 */
import { describe, expect, test } from 'vitest'
import type { Stated } from '../../support/designs.ts'
import { merged, things } from './breaking/case.ts'
import { told } from './told.ts'

const saysOf = (...more: Stated[]) =>
  told('ground-hole-clear', merged({ tailpiece: { groundHole: 3 } }, ...more))
/** A hole of 10 in the same wall. */
const port = (along: number, across: number, fields: Stated = {}): Stated =>
  things({ kind: 'sound-hole', id: 'port', face: 'tail-end-wall', along, across, diameter: 10, ...fields })

test('with nothing near it stands 10.5 from the edge of the wall, and none is none', () => {
  const edge = 'tail-end-wall (28.7, -10.5) to (28.7, 0)'
  expect(saysOf()).toEqual([`clear tailpiece + ground wire + tail-end-wall: 10.5 of 2, ${edge}`])
  // Where more is wanted, the neck is looked at too: 28.7 - 1.5 - 19.
  const neck = 'tail-end-wall (27.2, -12) to (19, -12)'
  expect(saysOf({ limits: { groundHoleClear: 8.1 } })).toEqual([
    `clear tailpiece + ground wire + neck: 8.2 of 8.1, ${neck}`,
  ])
  expect(saysOf({ limits: { groundHoleClear: 8.3 } })).toEqual([
    `care tailpiece + ground wire + neck: 8.2 of 8.3, ${neck}`,
  ])
  expect(told('ground-hole-clear', {})).toEqual([])
})

describe('beside another hole', () => {
  test.each([
    // From its rim 1.5 from its middle to the other's, 5 from that.
    [37.2, 12, 'clear tailpiece + ground wire + port: 2 of 2, tail-end-wall (30.2, -12) to (32.2, -12)'],
    [37.1, 12, 'care tailpiece + ground wire + port: 1.9 of 2, tail-end-wall (30.2, -12) to (32.1, -12)'],
    [35.2, 12, 'care tailpiece + ground wire + port: 0 of 2, tail-end-wall (30.2, -12) to (30.2, -12)'],
    [28.7, 21, 'clear tailpiece + ground wire + port: 2.5 of 2, tail-end-wall (28.7, -13.5) to (28.7, -16)'],
  ])('at %d and %d', (along, across, line) => expect(saysOf(port(along, across))).toEqual([line]))

  test('that it runs into', () => {
    expect(saysOf(port(35.1, 12))[0]).toMatch(/^stop tailpiece \+ ground wire \+ port: -0.1 of 2,/)
  })

  test('the nearest of several is told, in whatever order', () => {
    const near = port(28.7, 21).things as Stated[]
    const far = port(41.2, 12, { id: 'far' }).things as Stated[]
    for (const list of [
      [...near, ...far],
      [...far, ...near],
    ])
      expect(saysOf({ things: list })[0]).toMatch(/^clear tailpiece \+ ground wire \+ port: 2.5 of 2,/)
  })

  test('in another face is none of its', () => {
    expect(saysOf(port(28.7, 12, { face: 'neck-end-wall' }))[0]).toMatch(/\+ tail-end-wall: 10.5 of 2,/)
  })
})

describe('behind the wall', () => {
  // A block 20 × 20 × 40 on the base, its top 7 under the wall's upper edge.
  const block = (along: number, across: number): Stated => ({
    box: { inside: [{ id: 'block', along, across, long: 20, wide: 20, tall: 40 }] },
  })

  test.each([
    // At the wall's inside, from 31.7 across: 1.5 beside the hole's rim.
    [224, 41.7, 'care tailpiece + ground wire + block: 1.5 of 2'],
    [224, 42.7, 'clear tailpiece + ground wire + block: 2.5 of 2'],
    // The wire wants 5 to bend behind the wall: a block 4 behind it is in its way, one 6 behind it leaves 1.
    [220, 28.7, 'stop tailpiece + ground wire + block: -1 of 2'],
    [218, 28.7, 'care tailpiece + ground wire + block: 1 of 2'],
    [216, 28.7, 'clear tailpiece + ground wire + block: 3 of 2'],
  ])('a block at %d and %d', (along, across, said) => {
    expect(saysOf(block(along, across))[0]?.split(', tail-end-wall')[0]).toBe(said)
  })

  test('the place is told on the wall', () => {
    expect(saysOf(block(224, 41.7))[0]).toMatch(/, tail-end-wall \(30.2, -12\) to \(31.7, -12\)$/)
  })

  test('what hangs behind the lid is met, what stands in the same wall only by its hole', () => {
    // A pot in the lid before the wall, its body to 4 + 8 under the lid's face; the hole's top lies at 16 - 1.5.
    const pot = { kind: 'pot', id: 'pot', along: 222, across: 28.7, bodyDepth: 8, lugs: 0 }
    expect(saysOf(things(pot))[0]).toMatch(/^clear tailpiece \+ ground wire \+ pot: 2.5 of 2,/)
    // A jack whose body of 20 comes nearer than its hole of 9.8: 45 - 4.9 - 30.2.
    const jack = { kind: 'jack', id: 'jack', face: 'tail-end-wall', along: 45, across: 12 }
    expect(saysOf(things(jack))[0]).toMatch(/^clear tailpiece \+ ground wire \+ jack: 9.9 of 2,/)
  })

  test('a screw in the edge of the wall is in its way, a hole of a thing on it is not met twice', () => {
    const screw = { kind: 'screw', id: 'peg', along: 237, across: 33.7, clearance: 3, screwLength: 30 }
    // 5 beside the hole's middle, less half of 3 and half of 3.
    expect(saysOf(things(screw))[0]).toMatch(/^(care|clear) tailpiece \+ ground wire \+ peg: 2 of 2,/)
  })
})
