/**
 * The height that the saddle must have, the action it gives, and where a loose one may come to stand.
 *
 * Crowns 6.1 over the lid, strings 0.4 over them at the nut; by 2.2 at the octave to 4 at the saddle: 10.1 tall.
 */
import { describe, expect, test } from 'vitest'
import { check, loadsOf, sentenceOf, solve } from '../../../geometry/index.ts'
import { designOf, type Stated } from '../../support/designs.ts'
import { hole, merged, strung, things, weighed } from './breaking/case.ts'
import { at, graded, to4, told } from './told.ts'

describe('a saddle tall enough to build', () => {
  const saysOf = (rise: number) => told('saddle-low', strung({ neck: { rise } }))

  test.each([
    [0, 'clear saddle: 10.1 of 6, section (637.5, 0) to (637.5, 10.1)'],
    [-4.099, 'clear saddle: 6.001 of 6, section (637.5, 0) to (637.5, 6.001)'],
    [-4.101, 'care saddle: 5.999 of 6, section (637.5, 0) to (637.5, 5.999)'],
    [-10.099, 'care saddle: 0.001 of 6, section (637.5, 0) to (637.5, 0.001)'],
    [-10.101, 'stop saddle: -0.001 of 6, section (637.5, 0) to (637.5, -0.001)'],
  ])('with the neck raised by %d', (rise, line) => expect(saysOf(rise)).toEqual([line]))
})

describe('a saddle low enough to stand', () => {
  test.each([
    [9.899, 'clear saddle: 19.999 of 20, section (637.5, 0) to (637.5, 19.999)'],
    [9.901, 'care saddle: 20.001 of 20, section (637.5, 0) to (637.5, 20.001)'],
    // Let in so deep that it would have to stand under the lid it is low enough, whatever else it is.
    [-10.101, 'clear saddle: -0.001 of 20, section (637.5, 0) to (637.5, -0.001)'],
  ])('with the neck raised by %d', (rise, line) =>
    expect(told('saddle-tall', strung({ neck: { rise } }))).toEqual([line]),
  )
})

describe('the action as wanted', () => {
  // From 0.4 over the crowns at the nut to height - 6.1 at the saddle, 637.5 on; the octave half of 635.
  const action = (height: number) => 0.4 + ((height - 6.1 - 0.4) * 317.5) / 637.5
  const saysOf = (height: number, limits: Stated = {}) =>
    told('action-as-wanted', strung({ saddle: { height }, limits }))

  test.each([
    [12, 'care'],
    [10, 'clear'],
    [8, 'care'],
  ])('a saddle %d tall', (height, grade) => {
    const off = to4(Math.abs(action(height) - 2.2))
    expect(saysOf(height)).toEqual([
      `${grade} saddle: ${off} of 0.5, section (637.5, 0) to (637.5, ${height})`,
    ])
  })

  test('just inside and just outside the limit, too high or too low', () => {
    for (const height of [8, 12]) {
      const off = Math.abs(action(height) - 2.2)
      expect(saysOf(height, { actionOff: off + 1e-6 })[0]).toMatch(/^clear/)
      expect(saysOf(height, { actionOff: off - 1e-6 })[0]).toMatch(/^care/)
    }
  })

  test('is told with the height that would give it', () => {
    const layout = solve(designOf(strung({ saddle: { height: 12 } })))
    const finding = check(layout).find(({ rule }) => rule === 'action-as-wanted')
    if (!finding) throw new Error('nothing is said')
    expect(sentenceOf(finding, layout)).toContain(`stand ${action(12).toFixed(1)} mm over`)
    expect(sentenceOf(finding, layout)).toContain('Make it 10.1 mm tall')
  })
})

describe('the line of the saddle', () => {
  /** One string at the bare scale: it wants a setback of its own. */
  const loose = (more: Stated = {}) =>
    weighed(330, 0.4, { nut: { height: 1.5 }, saddle: { height: 10.1 } }, more)
  const wanted = loadsOf(solve(designOf(loose()))).saddle.line?.atCentre ?? Number.NaN

  test('is shown across the foot of the saddle', () => {
    // The saddle line at 635, its foot 50 long.
    const line = (grade: string, off: number, limit: number) =>
      `${grade} saddle: ${to4(off)} of ${limit}, plan (635, -25) to (635, 25)`
    expect(wanted).toBeGreaterThan(0.5)
    expect(told('saddle-line', loose({ limits: { setbackOff: 0.1 } }))).toEqual([line('note', wanted, 0.1)])
    expect(told('saddle-line', loose({ limits: { setbackOff: 5 } }))).toEqual([line('clear', wanted, 5)])
  })

  test.each([
    ['too little', 0],
    ['too much', 8],
  ])('%s stated is as far off', (_, setback) => {
    const off = Math.abs(setback - wanted)
    const grade = (limit: number, freeBand = 40) =>
      graded('saddle-line', loose({ saddle: { setback, freeBand }, limits: { setbackOff: limit } }))
    // The string is 635 and the setback long; what it wants hardly changes with that.
    expect(grade(off * 1.02)).toEqual(['clear'])
    expect(grade(off * 0.98)).toEqual(['note'])
    expect(grade(off * 0.98, off * 0.99)).toEqual(['care'])
    expect(grade(off * 0.9, off * 1.02)).toEqual(['note'])
  })

  test.each([
    ['as usual', ['G2', 'D3', 'G3'], [0.9652, 0.6096, 0.4318]],
    ['the other way round', ['G3', 'D3', 'G2'], [0.4318, 0.6096, 0.9652]],
  ])('strung %s is told with its slant and the side that lies farther back', (_, tuning, gauges) => {
    const layout = solve(
      designOf(strung({ stringing: { tuning }, strings: { gauges }, limits: { setbackOff: 0 } })),
    )
    const [bass = Number.NaN, , treble = Number.NaN] = loadsOf(layout).strings.map(
      (one) => one.atPitch?.setback ?? Number.NaN,
    )
    const finding = check(layout).find(({ rule }) => rule === 'saddle-line')
    if (!finding) throw new Error('nothing is said')
    // Least squares through three places 13 apart: as steep as from the first to the last. A radian is 57.2958 degrees.
    const slant = (Math.atan((treble - bass) / 26) * 57.2958).toFixed(1).replace('-', '')
    const side = treble > bass ? 'treble' : 'bass'
    expect(sentenceOf(finding, layout)).toContain(`slanted ${slant}°, the ${side} side farther back`)
  })

  test('a slide wants none, and without pitches nobody knows', () => {
    expect(graded('saddle-line', strung({ scale: { fretless: true } }))).toEqual([])
    expect(graded('saddle-line', {})).toEqual([])
  })
})

describe('room for a loose saddle to move', () => {
  // A slide wants no setback: 6 to either side of 635, half the foot's 5 more. The lid begins at 462.2.
  const FROM = 635 - 6 - 2.5 - 462.2
  const TO = 635 + 6 + 2.5 - 462.2
  const slide = (...more: Stated[]) => strung({ scale: { fretless: true }, saddle: { setback: 0 } }, ...more)
  const saysOf = (...more: Stated[]) => told('saddle-free-band', slide(...more))
  const band = `lid ${at(FROM, 0)} to ${at(TO, 0)}`

  test('is as much as to the nearer end of the lid', () => {
    expect(saysOf()).toEqual([`clear saddle: ${to4(240 - TO)} of 0, ${band}`])
    // 20 along: 20 - 8.5 from its neck-end edge.
    expect(saysOf({ saddle: { place: 20 } })).toEqual(['clear saddle: 11.5 of 0, lid (11.5, 0) to (28.5, 0)'])
    expect(saysOf({ saddle: { place: 8.5 } })[0]).toMatch(/^clear saddle: 0 of 0,/)
    expect(saysOf({ saddle: { place: 8.4 } })[0]).toMatch(/^care saddle: -0.1 of 0,/)
    expect(saysOf({ saddle: { place: 231.6 } })[0]).toMatch(/^care saddle: -0.1 of 0,/)
  })

  test.each([
    // A hole of 25, its rim 5 from where the foot may come to stand, which reaches 25 to either side.
    ['before it', FROM - 17.5, 0],
    ['behind it', TO + 17.5, 0],
    ['to the treble', 172.8, 42.5],
    ['to the bass', 172.8, -42.5],
  ])('is less by a hole %s', (_, along, across) => {
    expect(saysOf(things(hole({ along, across })))).toEqual([`clear saddle: 5 of 0, ${band}`])
    expect(saysOf(things(hole({ along, across, face: 'base' })))).toEqual([
      `clear saddle: ${to4(240 - TO)} of 0, ${band}`,
    ])
  })

  test('is what the nearest of several leaves, in whatever order, and names it', () => {
    const near = hole({ id: 'near', along: 172.8, across: 40 })
    const far = hole({ id: 'far', along: 172.8, across: -42.5 })
    for (const list of [
      [near, far],
      [far, near],
    ]) {
      const layout = solve(designOf(slide(things(...list))))
      const finding = check(layout).find(({ rule }) => rule === 'saddle-free-band')
      if (!finding) throw new Error('nothing is said')
      expect(finding.measured).toBeCloseTo(2.5, 9)
      expect(sentenceOf(finding, layout)).toMatch(/2\.5 mm from sound hole near\./)
    }
  })

  test('a hole that just touches leaves it free, one that is in the way does not', () => {
    expect(saysOf(things(hole({ along: TO + 12.5, across: 0 })))[0]).toMatch(/^clear saddle: 0 of 0,/)
    expect(saysOf(things(hole({ along: TO + 12.4, across: 0 })))[0]).toMatch(/^care saddle: -0.1 of 0,/)
  })

  test('in a lid let in between the walls, to that lid’s ends', () => {
    // 240 - 12 - 1 long.
    const let_ = { box: { lid: { fit: 'between the walls' } }, saddle: { place: 20 } }
    expect(saysOf(let_)).toEqual(['clear saddle: 11.5 of 0, lid (11.5, 0) to (28.5, 0)'])
    expect(saysOf(merged(let_, { saddle: { place: 210 } }))).toEqual([
      'clear saddle: 8.5 of 0, lid (201.5, 0) to (218.5, 0)',
    ])
  })

  test('is not asked for without pitches', () => expect(told('saddle-free-band', {})).toEqual([]))
})
