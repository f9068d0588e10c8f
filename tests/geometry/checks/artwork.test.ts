/** Pictures that are to stay whole: what is cut near them, on every sort of face, and by how much it keeps off. */
import { describe, expect, test } from 'vitest'
import type { Stated } from '../../support/designs.ts'
import { at, to4, told } from './told.ts'

const art = (fields: Stated = {}): Stated => ({ id: 'swallow', along: 120, across: 0, ...fields })
const saysOf = (fields: Stated, stated: Stated = {}) =>
  told('artwork-kept', { ...stated, artwork: [art(fields)] })
const ROW = { at: 'the lid', fromEdge: 14 }

describe('a picture and a neck slot', () => {
  // The slot is 38 + 0.4 wide and 19 - 4 deep: its lower corners at 19.2 and 15 down. 4 beside and 3 below them: 5.
  const beside = (face: string, side: 1 | -1) => ({
    face,
    along: side * 33.2,
    across: 23,
    long: 20,
    wide: 10,
  })

  test.each([
    ['neck-end-wall', 1],
    ['neck-end-wall', -1],
    ['tail-end-wall', 1],
    ['tail-end-wall', -1],
  ] as const)('on the %s, side %d', (face, side) => {
    const where = `${face} ${at(side * 19.2, -15)} to ${at(side * 23.2, -18)}`
    expect(saysOf(beside(face, side))).toEqual([`clear swallow + neck: 5 of 3, ${where}`])
    expect(saysOf({ ...beside(face, side), keep: 5 })).toEqual([`clear swallow + neck: 5 of 5, ${where}`])
    expect(saysOf({ ...beside(face, side), keep: 5.1 })).toEqual([`care swallow + neck: 5 of 5.1, ${where}`])
  })

  test('that starts at the edge of the wall', () => {
    // 4 beside the slot, level with it.
    const label = { face: 'neck-end-wall', along: 28.2, across: 5, long: 10, wide: 10 }
    expect(saysOf(label)[0]).toMatch(/^clear swallow \+ neck: 4 of 3/)
    // 0.2 in the slot, then just in touch with it.
    expect(saysOf({ ...label, along: 24 })[0]).toMatch(/^stop swallow \+ neck: -0.2 of 3/)
    expect(saysOf({ ...label, along: 24.2 })[0]).toMatch(/^care swallow \+ neck: 0 of 3/)
  })

  test('says nothing where no neck goes through the wall', () => {
    const tongue = { neck: { ends: 'at a block' } }
    expect(saysOf(beside('tail-end-wall', 1), tongue)).toEqual([])
    expect(saysOf(beside('bass-wall', 1))).toEqual([])
    expect(saysOf({ along: 120 })).toEqual([])
    // One that goes half a millimetre into it takes so much of it, one that lies on top of the box takes none.
    const shallow = { face: 'neck-end-wall', along: 0, across: 9.5, long: 20, wide: 10 }
    expect(saysOf(shallow, { neck: { rise: 14.5 } })[0]).toMatch(/^clear swallow \+ neck: 4 of 3,/)
    expect(saysOf(beside('neck-end-wall', 1), { neck: { rise: 20 } })).toEqual([])
  })
})

describe('a picture and string holes', () => {
  // Holes of 2.4, 14 before the lid's end and 13 apart; the corner of the picture 3 before and 4 beside the outer one.
  const outer = (side: 1 | -1) => ({ along: 213, across: side * 22, long: 20, wide: 10 })

  test.each([
    [1, 'string hole 3'],
    [-1, 'string hole 1'],
  ] as const)('in the lid, side %d: of those that are far enough only the nearest is told', (side, name) => {
    const where = `lid ${at(226 - 0.6 * 1.2, side * (13 + 0.8 * 1.2))} to ${at(223, side * 17)}`
    expect(saysOf(outer(side), { tailpiece: ROW })).toEqual([`clear swallow + ${name}: 3.8 of 3, ${where}`])
    // The next hole is 17 beside it.
    const next = to4(Math.hypot(3, 17) - 1.2)
    const both = saysOf({ ...outer(side), keep: 4 }, { tailpiece: ROW })
    expect(both[0]).toBe(`care swallow + ${name}: 3.8 of 4, ${where}`)
    expect(both[1]).toContain(`clear swallow + string hole 2: ${next} of 4`)
    expect(both).toHaveLength(2)
  })

  test('in the tail-end wall are told on the wall, not on the lid', () => {
    const tailpiece = { at: 'the tail-end wall', fromEdge: 12 }
    const neck = { ends: 'at a block' }
    // 3 aside and 4 below the bass string's hole.
    const label = { face: 'tail-end-wall', along: -26, across: 21, long: 20, wide: 10 }
    expect(saysOf(label, { tailpiece, neck })).toEqual([
      'clear swallow + string hole 1: 3.8 of 3, tail-end-wall (-13.72, -12.96) to (-16, -16)',
    ])
    expect(saysOf({ ...label, along: 26 }, { tailpiece, neck })).toEqual([
      'clear swallow + string hole 3: 3.8 of 3, tail-end-wall (13.72, -12.96) to (16, -16)',
    ])
    expect(saysOf(outer(1), { tailpiece, neck })).toEqual([])
    expect(saysOf(label, { tailpiece: ROW, neck })).toEqual([])
  })

  test('in the tail of the neck lie on no face', () => {
    expect(saysOf(outer(1))).toEqual([])
  })
})

test('every cut too near a picture is told, and the nearest of the others', () => {
  // The picture from 90 to 150 along and to 20 either side; holes of 20 around it.
  const hole = (id: string, along: number, face = 'lid'): Stated => ({
    kind: 'sound-hole',
    id,
    along,
    across: 0,
    diameter: 20,
    face,
  })
  const things = [
    hole('far', 60),
    hole('near', 78),
    hole('in', 155),
    hole('behind', 120, 'base'),
    hole('end', 190),
  ]
  const lines = saysOf({}, { things })
  expect(lines).toEqual([
    'care swallow + near: 2 of 3, lid (88, 0) to (90, 0)',
    expect.stringMatching(/^stop swallow \+ in: -5 of 3, lid /),
    'clear swallow + far: 20 of 3, lid (70, 0) to (90, 0)',
  ])
})
