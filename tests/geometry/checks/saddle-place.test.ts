/** Where the saddle's foot stands: on the lid, off its walls and away from its openings. The foot is 5 along and 50 across. */
import { describe, expect, test } from 'vitest'
import type { Stated } from '../../support/designs.ts'
import { hole, merged, pickup, screw, strung, things } from './breaking/case.ts'
import { graded, told } from './told.ts'

const placed = (place: number, more: Stated = {}): Stated => merged({ saddle: { place } }, more)

describe('to the tail-end wall', () => {
  // Its inner side lies 234 along the lid, 61.2 behind the saddle in its usual place; the foot 2.5 behind the saddle's line.
  test.each([
    [201.5, 'clear saddle: 30 of 30, plan (637.5, 0) to (667.5, 0)'],
    [201.6, 'care saddle: 29.9 of 30, plan (637.5, 0) to (667.4, 0)'],
    // Some put it over the wall on purpose: never a stop.
    [235, 'care saddle: -3.5 of 30, plan (637.5, 0) to (634, 0)'],
  ])('at %d along', (place, line) => expect(told('saddle-to-tail-wall', placed(place))).toEqual([line]))

  test('of a box askew from the end of the foot that is nearer', () => {
    // One side 4 longer than the other: both ends turn by half of it, 1 on 90 either side of the middle.
    const askew = (bass: number, treble: number) =>
      told('saddle-to-tail-wall', {
        box: { survey: { bass: [bass], treble: [treble], neckEnd: [180], tailEnd: [180] } },
      })[0]
    expect(askew(238, 242)).toMatch(/, plan \([\d.]+, -25\) to \([\d.]+, -25\)$/)
    expect(askew(242, 238)).toMatch(/, plan \([\d.]+, 25\) to \([\d.]+, 25\)$/)
    const measured = (line: string | undefined) => Number(/: ([\d.]+) of/.exec(line ?? '')?.[1])
    expect(measured(askew(240, 240))).toBeCloseTo(58.7, 3)
    expect(measured(askew(238, 242))).toBeCloseTo(58.7 - 25 / 90, 2)
    expect(measured(askew(242, 238))).toBeCloseTo(58.7 - 25 / 90, 2)
  })
})

describe('on the lid', () => {
  test.each([
    // From the foot's four sides: 240 along, 90 to either side.
    [{ place: 10 }, 'clear saddle: 7.5 of 0, plan (632.5, -25) to (637.5, 25)'],
    [{ place: 230 }, 'clear saddle: 7.5 of 0, plan (632.5, -25) to (637.5, 25)'],
    [{ place: 120, length: 165 }, 'clear saddle: 7.5 of 0, plan (632.5, -82.5) to (637.5, 82.5)'],
    [{ place: 2.5 }, 'clear saddle: 0 of 0, plan (632.5, -25) to (637.5, 25)'],
    [{ place: 2.4 }, 'stop saddle: -0.1 of 0, plan (632.5, -25) to (637.5, 25)'],
    [{ place: 237.6 }, 'stop saddle: -0.1 of 0, plan (632.5, -25) to (637.5, 25)'],
    [{ place: 120, length: 180.2 }, 'stop saddle: -0.1 of 0, plan (632.5, -90.1) to (637.5, 90.1)'],
  ])('%j', (saddle, line) => expect(told('saddle-on-lid', { saddle })).toEqual([line]))

  test('of a lid let in between the walls, to its own edges', () => {
    const lid = { box: { lid: { fit: 'between the walls' } } }
    // 83.5 to either side, 227 along.
    expect(told('saddle-on-lid', placed(113, merged(lid, { saddle: { length: 160 } })))[0]).toMatch(
      /^clear saddle: 3.5 of 0,/,
    )
    expect(told('saddle-on-lid', placed(220, lid))[0]).toMatch(/^clear saddle: 4.5 of 0,/)
    // A thick wall on one side leaves that side of the lid less.
    for (const side of ['bass', 'treble'])
      expect(told('saddle-on-lid', placed(113, merged(lid, { box: { walls: { [side]: 40 } } })))[0]).toMatch(
        /^clear saddle: 24.5 of 0,/,
      )
  })

  test('of a surveyed box, to its real edges', () => {
    const survey = {
      bass: [240],
      treble: [240],
      neckEnd: [180],
      tailEnd: [180],
      diagonalFromBass: [300],
      diagonalFromTreble: [300],
    }
    const [line] = told('saddle-on-lid', placed(10, { box: { survey } }))
    expect(line).toMatch(/^clear saddle: 7.5 of 0,/)
    expect(told('saddle-on-lid', placed(2, { box: { survey } }))[0]).toMatch(/^stop saddle: -0.5 of 0,/)
  })
})

describe('to an opening', () => {
  // The foot from 170.3 to 175.3 along and 25 to either side; holes of 25.
  const saysOf = (...list: Stated[]) => told('saddle-to-opening', things(...list))

  test.each([
    [137.8, 0, 'clear hole + saddle: 20 of 20, lid (150.3, 0) to (170.3, 0)'],
    [137.9, 0, 'care hole + saddle: 19.9 of 20, lid (150.4, 0) to (170.3, 0)'],
    [207.8, 0, 'clear hole + saddle: 20 of 20, lid (195.3, 0) to (175.3, 0)'],
    [172.8, 57, 'care hole + saddle: 19.5 of 20, lid (172.8, 44.5) to (172.8, 25)'],
    [172.8, -57, 'care hole + saddle: 19.5 of 20, lid (172.8, -44.5) to (172.8, -25)'],
  ])('at %d and %d', (along, across, line) => expect(saysOf(hole({ along, across }))).toEqual([line]))

  test('that just touches is a risk, under the foot a stop', () => {
    expect(saysOf(hole({ along: 157.8, across: 0 }))[0]).toMatch(/^care hole \+ saddle: 0 of 20,/)
    expect(saysOf(hole({ along: 157.9, across: 0 }))[0]).toMatch(/^stop hole \+ saddle: -0.1 of 20,/)
  })

  test('is not asked of a screw, of a pickup, or of another face', () => {
    expect(saysOf(screw({ along: 172.8, across: 30 }))).toEqual([])
    expect(saysOf(pickup({ along: 160 }))).toEqual([])
    expect(saysOf(hole({ along: 172.8, across: 0, face: 'base' }))).toEqual([])
  })
})

describe('behind the bare scale', () => {
  const note = ['note saddle: 0 of nothing, plan (635, -25) to (635, 25)']

  test('is asked for where nobody knows it', () => {
    expect(told('saddle-setback', {})).toEqual(note)
    // A tuning that names too few pitches tells as little.
    expect(told('saddle-setback', strung({ saddle: { setback: 0 }, stringing: { tuning: ['G2'] } }))).toEqual(
      note,
    )
  })

  test('is left to its own rule where it is stated, reckoned, or needless', () => {
    expect(graded('saddle-setback', { saddle: { setback: 0.1 } })).toEqual([])
    expect(graded('saddle-setback', strung({ saddle: { setback: 0 } }))).toEqual([])
    expect(graded('saddle-setback', strung({ saddle: { setback: 0 }, scale: { fretless: true } }))).toEqual(
      [],
    )
  })
})
