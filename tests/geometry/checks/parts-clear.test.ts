/** Parts behind the faces that meet: where, and how deep behind which face. */
import { describe, expect, test } from 'vitest'
import { check, sentenceOf, solve } from '../../../geometry/index.ts'
import { designOf, type Stated } from '../../support/designs.ts'
import { graded, told } from './told.ts'

/** A block 20 × 20 in the way of what stands behind a face; a pot has a body of 24 and its lugs to the tail. */
const block = (fields: Stated): Stated => ({ id: 'block', long: 20, wide: 20, tall: 47, ...fields })
const meet = (piece: Stated, thing: Stated): Stated => ({ box: { inside: [block(piece)] }, things: [thing] })
const pot = (fields: Stated = {}): Stated => ({ kind: 'pot', id: 'pot', along: 120, across: 50, ...fields })

const said = (stated: Stated) => {
  const layout = solve(designOf(stated))
  const finding = check(layout).find(({ rule, about }) => rule === 'parts-clear' && about.includes('block'))
  if (!finding) throw new Error('nothing is said')
  return sentenceOf(finding, layout)
}

describe('a part and a block', () => {
  // The body begins at 108 along; the block ends a little before that.
  test.each([
    [97, 'clear pot + block: 1 of 1, lid (108, 50) to (107, 50)'],
    [97.1, 'care pot + block: 0.9 of 1, lid (108, 50) to (107.1, 50)'],
    [97.99, 'care pot + block: 0.01 of 1, lid (108, 50) to (107.99, 50)'],
  ])('the block at %d', (along, line) => {
    expect(told('parts-clear', meet({ along, across: 50 }, pot()))).toEqual([line])
  })

  test('that want the same room are a stop', () => {
    expect(graded('parts-clear', meet({ along: 98.1, across: 50 }, pot()))).toEqual(['stop'])
  })
})

describe('how deep behind the face they meet', () => {
  // The middle of the room that both want, from the outer side of the face the part stands in.
  const jack = (face: string, along: number): Stated => ({
    kind: 'jack',
    id: 'jack',
    face,
    along,
    across: 24,
  })

  test.each([
    // A jack's body of 20 goes from the wall's inside, 6 in, to 32; a block over it from 20 on: 20 to 32, middle 26.
    ['bass-wall', jack('bass-wall', 0), { along: 120, across: -60 }, 26],
    ['treble-wall', jack('treble-wall', 0), { along: 120, across: 60 }, 26],
    ['neck-end-wall', jack('neck-end-wall', 50), { along: 30, across: 50 }, 26],
    ['tail-end-wall', jack('tail-end-wall', 50), { along: 210, across: 50 }, 26],
  ] as const)('%s', (face, thing, piece, deep) => {
    const words = said(meet(piece, thing))
    expect(words).toContain(`${deep}.0 mm behind the ${face.replaceAll('-', ' ')}`)
  })

  test('lid and base', () => {
    // A pickup 18 deep: its body from the lid's face on; a block to 4 under it: 4 to 18, middle 11.
    const pickup = (across: number) => ({
      kind: 'pickup',
      id: 'pickup',
      along: 60,
      across,
      sizeAlong: 20,
      sizeAcross: 20,
      cornerRadius: 0,
    })
    expect(said(meet({ along: 60, across: 50 }, pickup(50)))).toContain('11.0 mm behind the lid')
    // A strip 10 high glued on the base, 4 thick: from 4 to 14 behind its outer side.
    const strip = { kind: 'glued-brace', id: 'strip', face: 'base', along: 60, across: 50 }
    expect(said(meet({ along: 60, across: 50 }, strip))).toContain('9.0 mm behind the base')
  })
})

test('without anything behind a face there is nothing to meet', () => {
  expect(
    graded('parts-clear', { things: [{ kind: 'sound-hole', id: 'hole', along: 60, across: 50 }] }),
  ).toEqual([])
})
