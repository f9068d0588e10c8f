/** Where the wire that grounds the strings leaves the box: beside the neck slot, below the edge. */
import { expect, test } from 'vitest'
import { groundHoleOf } from '../../../geometry/strings/ground-hole.ts'
import { designOf } from '../../support/designs.ts'

const holeOf = (groundHole: number, neck = {}) =>
  groundHoleOf({ design: designOf({ tailpiece: { groundHole }, neck: { width: 38, slotPlay: 0, ...neck } }) })

test('its edge leaves 8 mm of wood beside the slot, its centre lies 12 mm down, on the treble side', () => {
  // By a pencil: 19 to the edge of the slot, 8 of wood, 1.5 to the centre.
  expect(holeOf(3)).toMatchObject({ centre: { x: 28.5, y: -12 }, radius: 1.5 })
  // A slot with a millimetre of play is half a millimetre wider on this side.
  expect(holeOf(4, { slotPlay: 1 })).toMatchObject({ centre: { x: 29.5, y: -12 }, radius: 2 })
})

test('nought means none, and so does what nobody bores', () => {
  expect(holeOf(0)).toBeNull()
  expect(holeOf(0.19)).toBeNull()
  expect(holeOf(0.2)?.radius).toBe(0.1)
  expect(holeOf(0.5)?.radius).toBe(0.25)
})
