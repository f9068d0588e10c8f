/**
 * How far the strings bend over saddle and nut, and where that is shown; what lies under the lid there.
 *
 * Strings 6.5 over the lid at the nut and 10 at the saddle, 637.5 on; the box begins 172.8 before the saddle, at 464.7,
 * and ends at 704.7. String holes 14 behind it. Posts 45, 77 and 45 behind the nut, the head's face 12 under the neck's top.
 */
import { describe, expect, test } from 'vitest'
import { check, sentenceOf, solve } from '../../../geometry/index.ts'
import { braceThatSuffices } from '../../../geometry/loads/index.ts'
import { designOf, type Stated } from '../../support/designs.ts'
import { strung } from './breaking/case.ts'
import { graded, to4, told } from './told.ts'

const degrees = (radians: number) => (radians * 180) / Math.PI
const BEFORE = Math.atan(3.5 / 637.5)
/** All strings bend alike over the saddle; the bass string is told. */
const AT_SADDLE = degrees(BEFORE + Math.atan(10 / 81.2))

describe('the bend over the saddle', () => {
  test('is shown behind it, from its top to the hole', () => {
    const line = (limit: number) =>
      `string 3: ${to4(AT_SADDLE)} of ${limit}, section (637.5, 10) to (718.7, 0)`
    expect(told('break-angle-at-saddle', strung())).toEqual([`clear ${line(7)}`])
    expect(told('break-angle-heavy', strung())).toEqual([`clear ${line(25)}`])
    expect(told('break-angle-at-saddle', strung({ limits: { breakAngleAtSaddle: 8 } }))).toEqual([
      `care ${line(8)}`,
    ])
    expect(told('break-angle-heavy', strung({ limits: { breakAngleMost: 7 } }))).toEqual([`care ${line(7)}`])
  })

  test('goes to the edge of the lid where the strings are held behind the wall', () => {
    // Their holes lie 30 under the wall's top, which is 4 under the lid's face.
    const wall = strung({ tailpiece: { at: 'the tail-end wall', fromEdge: 30 } })
    expect(told('break-angle-heavy', wall)[0]).toMatch(/, section \(637.5, 10\) to \(704.7, -34\)$/)
  })

  test.each([
    ['break-angle-at-saddle', 'breakAngleAtSaddle', AT_SADDLE, 1],
    ['break-angle-heavy', 'breakAngleMost', AT_SADDLE, -1],
  ] as const)('%s: just inside and just outside its limit', (rule, limit, angle, side) => {
    const grade = (value: number) => graded(rule, strung({ limits: { [limit]: value } }))
    expect(grade(angle - side * 1e-6)).toEqual(['clear'])
    expect(grade(angle + side * 1e-6)).toEqual(['care'])
  })

  test('a string that runs straight over it bends too little, one that rises from it lifts off', () => {
    const level = (height: number) => graded('break-angle-at-saddle', strung({ neck: { rise: height } }))
    // With the neck raised by r the nut stands 6.5 + r high and the hole r. Before the saddle, 10 high, the string then rises
    // by 3.5 - r over 637.5 and behind it falls by 10 - r over 81.2: it bends by nothing where the two make up for each other.
    const r = (10 / 81.2 + 3.5 / 637.5) / (1 / 81.2 + 1 / 637.5)
    expect(level(r - 0.001)).toEqual(['care'])
    expect(level(r + 0.001)).toEqual(['stop'])
  })

  test('is not told without pitches, nor of a string without a hole', () => {
    for (const rule of ['break-angle-at-saddle', 'break-angle-heavy', 'break-angle-at-nut']) {
      expect(graded(rule, {})).toEqual([])
      expect(graded(rule, strung({ stringing: { tuning: ['G2'] } }))).toEqual([])
    }
    // With two holes for three strings those that have one are told of.
    expect(graded('break-angle-at-saddle', strung({ tailpiece: { holes: 2 } }))).toHaveLength(1)
  })
})

describe('the bend over the nut', () => {
  // Wound at postHeight over the head's face: down 6.5 + 12 - postHeight.
  const fall = (postHeight: number, back: number) => degrees(Math.atan((18.5 - postHeight) / back))
  const saysOf = (postHeight: number, more: Stated = {}) =>
    told('break-angle-at-nut', strung({ headstock: { postHeight } }, more))

  test('of all that hold the least is told, where it runs', () => {
    expect(saysOf(4)).toEqual([`clear string 2: ${to4(fall(4, 77))} of 5, section (0, 6.5) to (-77, -8)`])
  })

  test('each that breaks the rule is told, and of the others the least', () => {
    expect(saysOf(14)).toEqual([
      `care string 2: ${to4(fall(14, 77))} of 5, section (0, 6.5) to (-77, 2)`,
      `clear string 3: ${to4(fall(14, 45))} of 5, section (0, 6.5) to (-45, 2)`,
    ])
    expect(saysOf(16)).toEqual([
      `care string 3: ${to4(fall(16, 45))} of 5, section (0, 6.5) to (-45, 4)`,
      `care string 2: ${to4(fall(16, 77))} of 5, section (0, 6.5) to (-77, 4)`,
      `care string 1: ${to4(fall(16, 45))} of 5, section (0, 6.5) to (-45, 4)`,
    ])
  })

  test('just inside and just outside the limit', () => {
    const grade = (value: number) => saysOf(4, { limits: { breakAngleAtNut: value } })[0]?.split(' ')[0]
    expect(grade(fall(4, 77) - 1e-6)).toBe('clear')
    expect(grade(fall(4, 77) + 1e-6)).toBe('care')
  })

  test('a string without a post has none', () => {
    const few = strung({ headstock: { bassTuners: 1, trebleTuners: 1 } })
    expect(told('break-angle-at-nut', few)).toHaveLength(1)
    expect(told('break-angle-at-nut', few)[0]).toMatch(
      /^clear string [123]: [\d.]+ of 5, section \(0, 6.5\) to \(-45, -8\)$/,
    )
  })
})

describe('the lid under the saddle', () => {
  test('its sag is shown through it, under the saddle', () => {
    const sag = strung({ neck: { relief: 3 } })
    const [line] = told('lid-sag', sag)
    expect(line).toMatch(/^clear lid \+ brace: 0\.\d+ of 0.5, section \(637.5, 0\) to \(637.5, -4\)$/)
    const measured = Number(/: ([\d.]+) of/.exec(line ?? '')?.[1])
    const grade = (lidSag: number) =>
      graded('lid-sag', strung({ neck: { relief: 3 } }, { limits: { lidSag } }))
    expect(grade(measured + 1e-3)).toEqual(['clear'])
    expect(grade(measured - 1e-3)).toEqual(['care'])
  })

  test('a thicker lid is shown as thick as it is', () => {
    const thick = strung({ neck: { relief: 3 }, box: { lid: { thickness: 6 } } })
    expect(told('lid-sag', thick)[0]).toMatch(/, section \(637.5, 0\) to \(637.5, -6\)$/)
  })

  test('one that sags is told the brace that would hold it, and how it runs', () => {
    const soft = strung({ neck: { relief: 3 }, limits: { lidSag: 0.1 } })
    const layout = solve(designOf(soft))
    const finding = check(layout).find(({ rule }) => rule === 'lid-sag')
    const runs = braceThatSuffices(layout)?.runs
    if (!finding || !runs) throw new Error('nothing is said')
    expect(sentenceOf(finding, layout)).toContain(
      runs === 'across' ? 'glued across under the saddle' : 'glued along beside the neck',
    )
  })

  test('a lid on the neck does not sag', () => {
    expect(told('lid-sag', strung())).toEqual([
      'clear lid + brace: 0 of 0.5, section (637.5, 0) to (637.5, -4)',
    ])
    expect(told('lid-sag', {})).toEqual([])
  })
})

describe('a brace under the lid', () => {
  const saysOf = (brace: Stated, neck: Stated = {}) => told('brace-clear', { brace, neck })

  // The relief leaves 3 under the lid, which is 4 thick.
  test.each([
    [{ height: 2 }, 'clear brace + neck: 1 of 0, section (635, -4) to (635, -6)'],
    [{ height: 0.5 }, 'clear brace + neck: 2.5 of 0, section (635, -4) to (635, -4.5)'],
    [{ height: 3 }, 'clear brace + neck: 0 of 0, section (635, -4) to (635, -7)'],
    [{ height: 3.01 }, 'stop brace + neck: -0.01 of 0, section (635, -4) to (635, -7.01)'],
    // Across, it may stand before or behind the saddle.
    [{ height: 2, offset: 20 }, 'clear brace + neck: 1 of 0, section (655, -4) to (655, -6)'],
    [{ height: 2, offset: -20 }, 'clear brace + neck: 1 of 0, section (615, -4) to (615, -6)'],
  ])('across, %j', (brace, line) => expect(saysOf(brace)).toEqual([line]))

  test('along, its offset is sideways and moves it along nowhere', () => {
    // 8 wide, 30 aside: 7 beside the neck.
    const [line] = saysOf({ height: 8, runs: 'along', offset: 30 })
    expect(line).toMatch(/^clear brace \+ neck: [\d.]+ of 0, section \(635, -4\) to \(635, -12\)$/)
  })

  test('none is none', () => expect(saysOf({ height: 0 })).toEqual([]))
})
