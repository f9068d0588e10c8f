/**
 * Tuners, holes and joint of the head, on either side of what is wanted, each where it stands.
 *
 * Posts 45 and 77 behind the nut on the bass side and 45 on the treble side, 7 from the middle of a head 38 wide and 14
 * thick; holes of 8, knobs 14 wide from 18 off the post on, bodies reaching 5 in.
 */
import { describe, expect, test } from 'vitest'
import { check, sentenceOf, solve } from '../../../geometry/index.ts'
import { designOf, type Stated } from '../../support/designs.ts'
import { at, graded, told } from './told.ts'

const saysOf = (rule: string, headstock: Stated, more: Stated = {}) => told(rule, { ...more, headstock })
const TWO_TREBLE = { bassTuners: 1, trebleTuners: 2 }

describe('knobs of the tuners', () => {
  test.each([
    // 32 from post to post less the knob
    [30, 'clear headstock + posts: 2 of 2'],
    [30.1, 'care headstock + posts: 1.9 of 2'],
    [31.99, 'care headstock + posts: 0.01 of 2'],
    [32, 'stop headstock + posts: 0 of 2'],
  ])('%d wide stand apart', (knobWide, said) => {
    expect(saysOf('tuner-knobs', { knobWide })).toEqual([`${said}, plan (-45, -25) to (-77, -25)`])
    expect(saysOf('tuner-knobs', { ...TWO_TREBLE, knobWide })).toEqual([
      `${said}, plan (-45, 25) to (-77, 25)`,
    ])
  })

  test.each([
    // 7 + 18 from the middle, less half of 38
    [15, 'clear headstock + side: 3 of 3', 22],
    [14.9, 'care headstock + side: 2.9 of 3', 21.9],
    [12.1, 'care headstock + side: 0.1 of 3', 19.1],
    [12, 'stop headstock + side: 0 of 3', 19],
  ])('beginning %d off the post, from the edge of the head', (knobFrom, said, y) => {
    expect(saysOf('knob-to-head', { knobFrom })).toEqual([`${said}, plan (-45, -7) to (-45, -${y})`])
    expect(saysOf('knob-to-head', { knobFrom, bassTuners: 0, trebleTuners: 3 })).toEqual([
      `${said}, plan (-45, 7) to (-45, ${y})`,
    ])
  })

  test.each([
    // 14 between the rows, less twice as much; plates may just touch
    [6.75, 'clear headstock + posts: 0.5 of 0.5'],
    [6.76, 'care headstock + posts: 0.48 of 0.5'],
    [7, 'care headstock + posts: 0 of 0.5'],
    [7.01, 'stop headstock + posts: -0.02 of 0.5'],
  ])('with bodies reaching %d in', (bodyIn, said) => {
    expect(saysOf('tuners-apart', { bodyIn })).toEqual([`${said}, plan (-45, -7) to (-45, 7)`])
  })
})

describe('wood left in the head', () => {
  const wood = (headstock: Stated, about: string, more: Stated = {}) =>
    saysOf('wood-in-head', headstock, more).filter((line) => line.includes(`headstock + ${about}: `))

  test.each([
    [10, 'clear headstock + posts: 4 of 4'],
    [10.1, 'care headstock + posts: 3.9 of 4'],
    [13.99, 'care headstock + posts: 0.01 of 4'],
    [14, 'stop headstock + posts: 0 of 4'],
  ])('between holes of %d', (postHole, said) => {
    expect(wood({ postHole }, 'posts')).toEqual([`${said}, plan (-45, -7) to (-45, 7)`])
  })

  test.each([
    [8, 'clear headstock + side: 4 of 4', 11],
    [7.9, 'care headstock + side: 3.9 of 4', 11.1],
    [4.01, 'care headstock + side: 0.01 of 4', 14.99],
    [4, 'stop headstock + side: 0 of 4', 15],
  ])('beside posts %d from the edge', (postEdge, said, y) => {
    expect(wood({ postEdge }, 'side')).toEqual([`${said}, plan (-45, -${y}) to (-45, -${y})`])
  })

  test.each([
    // One screw 7.5 behind each post: 0.75 and 4 between; the limit is that of wood beside a screw.
    [5.75, 'clear headstock + tuner screws: 1 of 1'],
    [5.74, 'care headstock + tuner screws: 0.99 of 1'],
    [4.75, 'stop headstock + tuner screws: 0 of 1'],
  ])('round a screw %d from its post', (screwAlong, said) => {
    const [line = ''] = wood({ screws: 1, screwAlong }, 'tuner screws')
    expect(line.startsWith(`${said}, plan `)).toBe(true)
    // Alike at every post: at the first or at the second of the bass row.
    const place = (post: number) => `plan ${at(-post - screwAlong, -7)} to ${at(-post, -7)}`
    expect([place(45), place(77)].some((where) => line.endsWith(where))).toBe(true)
  })

  test.each([
    ['under tuner screws', { screws: 1 }, 'screwDepth'],
    ['under bushings', { bushing: 'let in' }, 'bushingDepth'],
  ])('%s, where the first post stands', (about, headstock, depth) => {
    const left = (deep: number) => wood({ ...headstock, [depth]: deep }, about)[0]
    const where = 'plan (-45, -7) to (-45, -7)'
    expect(left(13)).toBe(`clear headstock + ${about}: 1 of 1, ${where}`)
    expect(left(13.01)).toBe(`care headstock + ${about}: 0.99 of 1, ${where}`)
    expect(left(13.99)).toBe(`care headstock + ${about}: 0.01 of 1, ${where}`)
    expect(left(14)).toBe(`stop headstock + ${about}: 0 of 1, ${where}`)
  })

  test('is told of screws and bushings only where there are any', () => {
    const about = (headstock: Stated) =>
      saysOf('wood-in-head', headstock).map((line) => /\+ ([a-z ]+):/.exec(line)?.[1])
    expect(about({})).toEqual(['posts', 'side'])
    expect(about({ screws: 1 })).toEqual(['posts', 'side', 'tuner screws', 'under tuner screws'])
    expect(about({ bushing: 'let in' })).toEqual(['posts', 'side', 'under bushings'])
    expect(about({ bassTuners: 1, trebleTuners: 0 })).toEqual(['side'])
    expect(about({ bassTuners: 0, trebleTuners: 0, screws: 1, bushing: 'let in' })).toEqual([])
  })
})

describe('the joint of a scarfed head', () => {
  const scarf = (tiltDegrees: number, more: Stated = {}) =>
    saysOf('scarf-glued', { form: 'scarfed', tiltDegrees }, more)

  test('is glued over the slope of the sawn stick', () => {
    // 19 / sin 30, from 14 / sin 30 before the back of the nut to 19 / tan 30 behind that.
    const sin = Math.sin(Math.PI / 6)
    const top = -5 + 14 / sin
    const bottom = top - 19 / Math.tan(Math.PI / 6)
    expect(scarf(30)).toEqual([
      `care headstock + neck: 38 of 40, section ${at(top, 0)} to ${at(bottom, -19)}`,
    ])
  })

  test.each([
    // A stick of 20 at 30 degrees: 40.
    [20, 'clear headstock + neck: 40 of 40'],
    [19.99, 'care headstock + neck: 39.98 of 40'],
  ])('of a stick of %d', (thickness, said) => {
    expect(scarf(30, { neck: { thickness } })[0]).toMatch(said)
  })

  test('is covered by a board that runs over its line', () => {
    const sentence = (length: number, fitted = true) => {
      const board = { fitted, ends: 'at a length', length }
      const layout = solve(designOf({ headstock: { form: 'scarfed' }, board }))
      const finding = check(layout).find(({ rule }) => rule === 'scarf-glued')
      if (!finding) throw new Error('nothing is said')
      return sentenceOf(finding, layout)
    }
    // 14 / sin 13° is 62.24: the line lies 57.24 in front of the nut's edge.
    expect(sentence(400)).toContain('the board covers its line')
    expect(sentence(58)).toContain('the board covers its line')
    expect(sentence(57)).toContain('its line shows on the neck')
    expect(sentence(400, false)).toContain('its line shows on the neck')
  })

  test('is none of another head', () => {
    for (const form of ['straight', 'stepped']) expect(saysOf('scarf-glued', { form })).toEqual([])
  })
})

describe('the head out of the blank', () => {
  test.each([
    // 19 less the step less 14
    [5, 'clear headstock + neck: 0 of 0'],
    [5.1, 'note headstock + neck: -0.1 of 0'],
    [18.9, 'note headstock + neck: -13.9 of 0'],
    [19, 'stop headstock + neck: -14 of 0'],
    [2, 'clear headstock + neck: 3 of 0'],
  ])('stepped down by %d', (step, said) => {
    expect(saysOf('head-from-blank', { form: 'stepped', step })).toEqual([
      `${said}, section (-150, 0) to ${at(-150, -step)}`,
    ])
    expect(saysOf('head-from-blank', { form: 'stepped', step }, { neck: { rise: 3 } })).toEqual([
      `${said}, section (-150, 3) to ${at(-150, 3 - step)}`,
    ])
  })

  test('scarfed, no step is taken off; straight, nothing is asked', () => {
    expect(graded('head-from-blank', { headstock: { form: 'scarfed', step: 19, thickness: 19 } })).toEqual([
      'clear',
    ])
    expect(graded('head-from-blank', { headstock: { form: 'scarfed', thickness: 19.1 } })).toEqual(['note'])
    expect(graded('head-from-blank', { headstock: { form: 'straight', thickness: 25 } })).toEqual([])
  })

  test('tells how deep a step below the neck goes', () => {
    const layout = solve(designOf({ headstock: { form: 'stepped', step: 20 } }))
    const finding = check(layout).find(({ rule }) => rule === 'head-from-blank')
    if (!finding) throw new Error('nothing is said')
    expect(sentenceOf(finding, layout)).toContain('stepped down 20.0 mm')
  })
})
