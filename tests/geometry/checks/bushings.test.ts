/**
 * What is held by a nut on its thread: through thin faces and thick ones, bored from either side, with a plate behind.
 *
 * A pot: thread 7.9, nut 3, washer 14, body 24, shaft 18, knob bored 12. A jack: thread 7, nut 3, washer 14, body 20.
 */
import { describe, expect, test } from 'vitest'
import { check, sentenceOf, solve } from '../../../geometry/index.ts'
import { designOf, type Stated } from '../../support/designs.ts'
import { hole, things } from './breaking/case.ts'
import { told } from './told.ts'

const pot = (fields: Stated = {}): Stated => ({ kind: 'pot', id: 'pot', along: 120, across: 55, ...fields })
const jack = (fields: Stated = {}): Stated => ({
  kind: 'jack',
  id: 'jack',
  face: 'treble-wall',
  along: 20,
  across: 25,
  ...fields,
})
/** Through a lid of this thickness, or a treble wall. */
const inLid = (thickness: number, fields: Stated = {}): Stated => ({
  box: { lid: { thickness } },
  ...things(pot(fields)),
})
const inWall = (treble: number, fields: Stated = {}): Stated => ({
  box: { walls: { treble } },
  ...things(jack(fields)),
})
const LID = 'lid (120, 55) to (120, 55)'
const WALL = 'treble-wall (20, -25) to (20, -25)'

describe('the thread through the face', () => {
  test.each([
    // 7.9 less lid, plate and what is not bored away
    [inLid(4.9), 'clear pot: 3 of 3'],
    [inLid(4.91), 'stop pot: 2.99 of 3'],
    [inLid(4, { backing: 0.9 }), 'clear pot: 3 of 3'],
    [inLid(4, { backing: 1 }), 'stop pot: 2.9 of 3'],
    [inLid(9, { bore: 'from inside', boreDepth: 4.1 }), 'clear pot: 3 of 3'],
    [inLid(9, { bore: 'from inside', boreDepth: 4 }), 'stop pot: 2.9 of 3'],
    [inLid(9, { bore: 'from outside', boreDepth: 4.1 }), 'clear pot: 3 of 3'],
    [inLid(9, { bore: 'from outside', boreDepth: 4.1, backing: 1 }), 'stop pot: 2 of 3'],
    // A bore is none where the hole is as wide, and takes no more than there is.
    [inLid(9, { bore: 'from inside', boreDepth: 4.1, boreDiameter: 9 }), 'stop pot: -1.1 of 3'],
    [inLid(4, { bore: 'from inside', boreDepth: 10 }), 'clear pot: 7.9 of 3'],
  ])('%#', (design, said) => expect(told('thread-through', design)).toEqual([`${said}, ${LID}`]))

  test('of a jack in a wall', () => {
    expect(told('thread-through', inWall(4))).toEqual([`clear jack: 3 of 3, ${WALL}`])
    expect(told('thread-through', inWall(4, { nut: 3.5 }))).toEqual([`stop jack: 3 of 3.5, ${WALL}`])
  })

  const sentence = (stated: Stated) => {
    const layout = solve(designOf(stated))
    const finding = check(layout).find(({ rule }) => rule === 'thread-through')
    if (!finding) throw new Error('nothing is said')
    return sentenceOf(finding, layout)
  }

  test.each([
    // 9.46 + 3 - 7.9 is 4.56, to the tenth that is enough; from inside the body and 2 round it, from outside the washer.
    [inLid(9.46), 'bore 26.0 mm wide, 4.6 mm deep from inside.'],
    [inLid(9.5), 'bore 26.0 mm wide, 4.6 mm deep from inside.'],
    [inLid(9.5, { backing: 1 }), 'bore 26.0 mm wide, 5.6 mm deep from inside.'],
    [inLid(9.5, { boreDiameter: 20 }), 'bore 26.0 mm wide, 4.6 mm deep from inside.'],
    [inLid(9.5, { boreDiameter: 30 }), 'bore 30.0 mm wide, 4.6 mm deep from inside.'],
    [
      inLid(9.5, { bore: 'from outside', boreDepth: 1, boreDiameter: 15 }),
      'bore 16.0 mm wide, 4.6 mm deep from outside.',
    ],
    [inWall(9.5, { boreDiameter: 12 }), 'bore 22.0 mm wide, 5.5 mm deep from inside.'],
  ])('that is too short is told the bore it wants: %#', (design, words) => {
    expect(sentence(design)).toContain(words)
  })

  test('names the face it has to pass', () => {
    expect(sentence(inLid(4))).toContain('the lid is 4.0 mm')
    expect(sentence(inWall(4))).toContain('the wall is 4.0 mm')
    const button = { kind: 'grommet', id: 'eye', face: 'base', along: 60, across: 50 }
    expect(told('thread-through', things(button))).toEqual([])
  })

  test('is asked of nothing else', () => {
    for (const rule of ['thread-through', 'bore-wide', 'face-for-bushing', 'shaft-in-knob', 'knob-off-face'])
      expect(told(rule, things(hole()))).toEqual([])
  })
})

describe('a bore wide enough', () => {
  test.each([
    ['from inside', 20, 'clear jack: 20 of 20'],
    ['from inside', 19.99, 'stop jack: 19.99 of 20'],
    ['from outside', 14, 'clear jack: 14 of 14'],
    ['from outside', 13.99, 'stop jack: 13.99 of 14'],
  ])('%s, %d wide', (bore, boreDiameter, said) => {
    expect(told('bore-wide', inWall(9, { bore, boreDiameter, boreDepth: 5 }))).toEqual([`${said}, ${WALL}`])
  })

  test('is told what it has to let in', () => {
    const said = (bore: string) => {
      const layout = solve(designOf(inWall(9, { bore, boreDiameter: 12, boreDepth: 5 })))
      const finding = check(layout).find(({ rule }) => rule === 'bore-wide')
      if (!finding) throw new Error('nothing is said')
      return sentenceOf(finding, layout)
    }
    expect(said('from inside')).toContain('12.0 mm wide and its body 20.0 mm')
    expect(said('from outside')).toContain('12.0 mm wide and its nut 14.0 mm')
  })

  test('is not asked for where nothing is bored', () => {
    expect(told('bore-wide', inWall(9, { boreDiameter: 5 }))).toEqual([])
  })
})

describe('wood for a nut to press on', () => {
  test.each([
    [inWall(2.5), 'clear jack: 2.5 of 2.5'],
    [inWall(2.49), 'care jack: 2.49 of 2.5'],
    [inWall(2, { backing: 0.5 }), 'clear jack: 2.5 of 2.5'],
    [inWall(6, { bore: 'from inside', boreDepth: 3.5 }), 'clear jack: 2.5 of 2.5'],
    [inWall(6, { bore: 'from outside', boreDepth: 3.51 }), 'care jack: 2.49 of 2.5'],
    [inWall(6, { bore: 'from inside', boreDepth: 5.99 }), 'care jack: 0.01 of 2.5'],
    [inWall(6, { bore: 'from inside', boreDepth: 6 }), 'stop jack: 0 of 2.5'],
    [inWall(6, { bore: 'from inside', boreDepth: 9 }), 'stop jack: 0 of 2.5'],
  ])('%#', (design, said) => expect(told('face-for-bushing', design)).toEqual([`${said}, ${WALL}`]))
})

describe('the shaft of a pot', () => {
  test.each([
    // What stands out of lid and plate, but no more than the knob is bored; the rest keeps the knob off the face.
    [inLid(4), 'clear pot: 12 of 6', 'clear pot: 2 of 2'],
    [inLid(3.99), 'clear pot: 12 of 6', 'care pot: 2.01 of 2'],
    [inLid(4, { shaft: 10 }), 'clear pot: 6 of 6', 'clear pot: 0 of 2'],
    [inLid(4, { shaft: 9.99 }), 'care pot: 5.99 of 6', 'clear pot: 0 of 2'],
    [inLid(4, { shaft: 10, backing: 1 }), 'care pot: 5 of 6', 'clear pot: 0 of 2'],
    [inLid(4, { knobDepth: 5.9 }), 'care pot: 5.9 of 6', 'care pot: 8.1 of 2'],
    [inLid(4, { shaft: 4.01 }), 'care pot: 0.01 of 6', 'clear pot: 0 of 2'],
    [inLid(4, { shaft: 4 }), 'stop pot: 0 of 6', 'clear pot: 0 of 2'],
    // A bore from inside lets the body come nearer; one from outside lets only the nut in.
    [inLid(9, { bore: 'from inside', boreDepth: 5 }), 'clear pot: 12 of 6', 'clear pot: 2 of 2'],
    [inLid(9, { bore: 'from outside', boreDepth: 5 }), 'clear pot: 9 of 6', 'clear pot: 0 of 2'],
    [inLid(4, { bore: 'from inside', boreDepth: 9 }), 'clear pot: 12 of 6', 'care pot: 6 of 2'],
  ])('%#', (design, held, off) => {
    expect(told('shaft-in-knob', design)).toEqual([`${held}, ${LID}`])
    expect(told('knob-off-face', design)).toEqual([`${off}, ${LID}`])
  })

  test('a jack has none', () => {
    expect(told('shaft-in-knob', inWall(4))).toEqual([])
    expect(told('knob-off-face', inWall(4))).toEqual([])
  })
})
