/** Knobs, plates and buttons on their faces, and apart from each other. */
import { describe, expect, test } from 'vitest'
import type { Stated } from '../../support/designs.ts'
import { hole, things } from './breaking/case.ts'
import { told } from './told.ts'

/** With a knob of 19. */
const pot = (fields: Stated = {}): Stated => ({ kind: 'pot', id: 'pot', along: 120, across: 55, ...fields })
const saysOf = (rule: string, ...list: Stated[]) => told(rule, things(...list))

describe('a knob on its face', () => {
  test.each([
    ['lid', 120, 80, '(120, 89.5) to (120, 90)'],
    ['lid', 120, -80, '(120, -89.5) to (120, -90)'],
    ['lid', 10, 0, '(0.5, 0) to (0, 0)'],
    ['lid', 230, 0, '(239.5, 0) to (240, 0)'],
    // Side walls reach 120 to either side of their middle and are 47 tall.
    ['bass-wall', 110, 20, '(119.5, -20) to (120, -20)'],
    ['treble-wall', 0, 10, '(0, -0.5) to (0, 0)'],
  ] as const)('in the %s at %d and %d', (face, along, across, line) => {
    expect(saysOf('cover-on-face', pot({ face, along, across }))).toEqual([
      `clear pot: 0.5 of 0, ${face} ${line}`,
    ])
  })

  test('may reach to the edge and not over it', () => {
    expect(saysOf('cover-on-face', pot({ across: 80.5 }))[0]).toMatch(/^clear pot: 0 of 0,/)
    expect(saysOf('cover-on-face', pot({ across: 80.6 }))[0]).toMatch(/^care pot: -0.1 of 0,/)
  })

  test('a plate counts as it is turned', () => {
    // 24 along and 60 across, its middle 20 from the edge: across it goes 10 over, turned by a right angle it stays 8 within.
    const plate = (turnDegrees: number) => ({
      kind: 'tailpiece-plate',
      id: 'plate',
      along: 120,
      across: 70,
      sizeAcross: 60,
      cornerRadius: 0,
      span: 38,
      turnDegrees,
    })
    expect(saysOf('cover-on-face', plate(0))[0]).toMatch(/^care plate: -10 of 0,/)
    expect(saysOf('cover-on-face', plate(90))[0]).toMatch(/^clear plate: 8 of 0,/)
    // A tenth more or less than a right angle turns a corner at 30 × 12 by 30 × sin 6° more.
    const [line = ''] = saysOf('cover-on-face', plate(84))
    const tilted = 20 - (12 * Math.cos(Math.PI / 30) + 30 * Math.sin(Math.PI / 30))
    expect(Number(/: (-?[\d.]+) of/.exec(line)?.[1])).toBeCloseTo(tilted, 3)
  })

  test('is asked of nothing that lies behind the face, nor of a hole', () => {
    expect(saysOf('cover-on-face', { kind: 'glued-brace', id: 'strip', along: 5, across: 60 })).toEqual([])
    expect(saysOf('cover-on-face', hole({ across: 80 }))).toEqual([])
  })
})

describe('knobs apart', () => {
  const two = (along: number, across = 55, fields: Stated = {}) => [
    pot(),
    pot({ id: 'second', along, across, ...fields }),
  ]

  test.each([
    [142, 55, 'clear pot + second: 3 of 3, lid (129.5, 55) to (132.5, 55)'],
    [141.9, 55, 'care pot + second: 2.9 of 3, lid (129.5, 55) to (132.4, 55)'],
    [139, 55, 'care pot + second: 0 of 3, lid (129.5, 55) to (129.5, 55)'],
    [120, 33, 'clear pot + second: 3 of 3, lid (120, 45.5) to (120, 42.5)'],
    [98, 55, 'clear pot + second: 3 of 3, lid (110.5, 55) to (107.5, 55)'],
  ])('at %d and %d', (along, across, line) => {
    expect(saysOf('covers-apart', ...two(along, across))).toEqual([line])
  })

  test('in each other cannot be', () => {
    expect(saysOf('covers-apart', ...two(138.9))[0]).toMatch(/^stop pot \+ second: -0.1 of 3,/)
  })

  test('are told up to twice as far as is wanted, and once', () => {
    // What a pot takes on the face is its knob: the two are near each other within 6.
    expect(saysOf('covers-apart', ...two(145))).toHaveLength(1)
    expect(saysOf('covers-apart', ...two(145.1))).toEqual([])
    const three = [...two(142), pot({ id: 'third', along: 164 })]
    expect(saysOf('covers-apart', ...three)).toEqual([
      'clear pot + second: 3 of 3, lid (129.5, 55) to (132.5, 55)',
      'clear second + third: 3 of 3, lid (151.5, 55) to (154.5, 55)',
    ])
  })

  test('on different faces are not near each other', () => {
    const wall = pot({ id: 'second', face: 'treble-wall', along: 0, across: 25 })
    expect(saysOf('covers-apart', pot({ along: 10, across: -20 }), wall)).toEqual([])
    const third = pot({ id: 'third', face: 'treble-wall', along: 22, across: 25 })
    expect(saysOf('covers-apart', pot(), wall, third)).toEqual([
      'clear second + third: 3 of 3, treble-wall (9.5, -25) to (12.5, -25)',
    ])
  })

  test('one alone has none beside it, nor a hole', () => {
    expect(saysOf('covers-apart', pot())).toEqual([])
    expect(saysOf('covers-apart', pot(), hole({ along: 140, across: 55 }))).toEqual([])
  })
})
