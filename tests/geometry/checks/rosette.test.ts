/** Wood between the holes of a rosette, shown where two are nearest, and how many holes there may be. */
import { describe, expect, test } from 'vitest'
import type { Stated } from '../../support/designs.ts'
import { hole, things } from './breaking/case.ts'
import { at, told } from './told.ts'

/** Holes of 3 in rows over a field of one row of three: at its middle and 6 to either side. */
const rows = (fields: Stated = {}): Stated => ({
  kind: 'rosette',
  id: 'rose',
  along: 70,
  across: 40,
  shape: 'rectangular',
  sizeAlong: 16,
  sizeAcross: 4,
  pattern: 'rows',
  hole: 3,
  pitch: 6,
  ...fields,
})
const saysOf = (rule: string, fields: Stated = {}, more: Stated = {}) =>
  told(rule, { ...more, ...things(rows(fields)) })

describe('the web', () => {
  test.each([
    [4.5, 'clear rose: 1.5 of 1.5'],
    [4.49, 'care rose: 1.49 of 1.5'],
    [3, 'care rose: 0 of 1.5'],
    [2.99, 'stop rose: -0.01 of 1.5'],
  ])('of holes %d apart', (pitch, said) => {
    expect(saysOf('rosette-web', { pitch })[0]?.split(',')[0]).toBe(said)
  })

  test.each([0, 90, 30])('turned by %d degrees is shown where it is then', (turnDegrees) => {
    // From the middle hole's rim at 1.5 to that of its neighbour at 4.5, on either side of it.
    const turn = (turnDegrees * Math.PI) / 180
    const place = (by: number) => at(70 + by * Math.cos(turn), 40 + by * Math.sin(turn))
    const ways = [-1, 1].flatMap((side) => {
      const [inner, outer] = [place(1.5 * side), place(4.5 * side)]
      return [`${inner} to ${outer}`, `${outer} to ${inner}`]
    })
    const [line = ''] = saysOf('rosette-web', { turnDegrees })
    expect(ways).toContain(line.split(', lid ')[1])
    expect(line).toMatch(/^clear rose: 3 of 1.5,/)
  })

  test('of one hole there is none, nor of a sound hole', () => {
    expect(saysOf('rosette-web', { sizeAlong: 4 })).toEqual([])
    expect(told('rosette-web', things(hole()))).toEqual([])
  })
})

describe('the holes', () => {
  test('are counted', () => {
    expect(saysOf('rosette-holes')).toEqual(['clear rose: 3 of 6000, lid (70, 40) to (70, 40)'])
    expect(saysOf('rosette-holes', { sizeAlong: 4 })).toEqual([
      'clear rose: 1 of 6000, lid (70, 40) to (70, 40)',
    ])
  })

  test('none at all is a stop, whether they find no room or are too many', () => {
    expect(saysOf('rosette-holes', { hole: 5 })).toEqual(['stop rose: 0 of 6000, lid (70, 40) to (70, 40)'])
    const many = { sizeAlong: 150, sizeAcross: 150, hole: 0.5, pitch: 1, along: 120, across: 0 }
    expect(saysOf('rosette-holes', many)).toEqual(['stop rose: 22500 of 6000, lid (120, 0) to (120, 0)'])
  })

  test('are not asked of a sound hole', () => expect(told('rosette-holes', things(hole()))).toEqual([]))
})
