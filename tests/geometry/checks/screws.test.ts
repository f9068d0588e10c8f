/**
 * Screws in wood: how much of the thread holds, what stands beside it, where the point comes out; of several the worst.
 *
 * Lid 4, walls and base as usual; the neck lies 7 to 19 under the lid's face, 19 to either side of the middle.
 */
import { describe, expect, test } from 'vitest'
import { check, sentenceOf, solve } from '../../../geometry/index.ts'
import { designOf, type Stated } from '../../support/designs.ts'
import { merged, screw, things } from './breaking/case.ts'
import { told } from './told.ts'

/** Through the lid into the neck-end wall, 3 from its outer side: shank 3, 16 long. */
const inWall = (fields: Stated = {}) => things(screw({ along: 3, clearance: 3, ...fields }))
/** Two screws of 3.2, 30 apart across the neck, 20 long. */
const plate = (fields: Stated = {}) =>
  things({ kind: 'tailpiece-plate', id: 'plate', along: 120, across: 0, span: 30, ...fields })
const sentence = (rule: string, stated: Stated): string => {
  const layout = solve(designOf(stated))
  const finding = check(layout).find((one) => one.rule === rule)
  if (!finding) throw new Error(`${rule} says nothing`)
  return sentenceOf(finding, layout)
}

describe('the thread of a screw', () => {
  const saysOf = (stated: Stated) => told('screw-holds', stated)

  test.each([
    ['lid', 3, 60],
    ['lid', 237, -60],
    ['lid', 120, 87],
    ['lid', 120, -87],
    ['base', 3, 60],
    ['base', 120, -87],
  ] as const)('through the %s at %d and %d holds in the edge of the wall', (face, along, across) => {
    // 16 less the face's 4
    const where = `${face} (${along}, ${across}) to (${along}, ${across})`
    expect(saysOf(inWall({ face, along, across }))).toEqual([`clear screw: 12 of 10, ${where}`])
    expect(told('screw-beside', inWall({ face, along, across }))).toEqual([`clear screw: 1.5 of 1, ${where}`])
    // The wall is 47 tall: 12 of it are taken.
    expect(told('screw-point', inWall({ face, along, across }))).toEqual([`clear screw: -35 of 0, ${where}`])
  })

  test('ten are enough, a little less is not; none at all is a risk whatever is wanted', () => {
    expect(saysOf(inWall({ screwLength: 14 }))[0]).toMatch(/^clear screw: 10 of 10,/)
    expect(saysOf(inWall({ screwLength: 13.99 }))[0]).toMatch(/^care screw: 9.99 of 10,/)
    const over = inWall({ along: 60 })
    expect(saysOf(merged(over, { limits: { screwHold: 0 } }))).toEqual([
      'care screw: 0 of 0, lid (60, 60) to (60, 60)',
    ])
    expect(saysOf(merged(inWall({ screwLength: 4.5 }), { limits: { screwHold: 0 } }))[0]).toMatch(
      /^clear screw: 0.5 of 0,/,
    )
  })

  test('through a side wall, from outside, ends where its point is seen on that wall', () => {
    // 60 from the middle of the treble wall and 20 down: into a block at its inside, 20 wide; 20 long less the wall's 6.
    const block = { box: { inside: [{ id: 'block', along: 180, across: 74, tall: 47 }] } }
    const through = things(
      screw({ face: 'treble-wall', along: 60, across: 20, clearance: 3, screwLength: 20 }),
    )
    const where = 'treble-wall (60, -20) to (60, -20)'
    expect(saysOf(merged(through, block))).toEqual([`clear screw: 14 of 10, ${where}`])
    expect(told('screw-beside', merged(through, block))).toEqual([`clear screw: 8.5 of 1, ${where}`])
    expect(told('screw-point', merged(through, block))).toEqual([`clear screw: -6 of 0, ${where}`])
  })

  test('through two woods holds in both, and names the one that holds the more', () => {
    // The neck is 12 thick under the relief; a block under it ends 21 under the lid's face.
    const block = { box: { inside: [{ id: 'block', along: 120, across: 0, tall: 30 }] } }
    const long = (screwLength: number) =>
      merged(things(screw({ along: 120, across: 0, clearance: 3, screwLength })), block)
    expect(saysOf(long(25))[0]).toMatch(/^clear screw: 16 of 10,/)
    expect(sentence('screw-holds', long(25))).toContain('16.0 mm of the neck')
    expect(saysOf(long(45))[0]).toMatch(/^clear screw: 36 of 10,/)
    expect(sentence('screw-holds', long(45))).toContain('36.0 mm of the block')
  })

  test.each([
    // .125 in of a No. 5 goes through 3.5 mm, .138 in of a No. 6 does not; pilots of the common workshop chart.
    [3.5, 'maple, sugar', 'No. 5', '1.98 mm'],
    [3.6, 'maple, sugar', 'No. 6', '2.38 mm'],
    [3.6, 'pine, white', 'No. 6', '1.98 mm'],
  ])('of %d in %s is a %s and wants a pilot of %s', (clearance, wood, gauge, pilot) => {
    const inNeck = merged(things(screw({ along: 120, across: 0, clearance })), {
      neck: { wood },
    })
    expect(sentence('screw-holds', inNeck)).toContain(`a ${gauge} wants a pilot of ${pilot}`)
  })
})

describe('of a plate’s screws the worst is told', () => {
  test('the one that holds least, whichever comes first', () => {
    // Turned so that one stands over the wall and one over nothing; 19 either side of 218.
    for (const turnDegrees of [90, -90])
      expect(
        told(
          'screw-holds',
          merged(plate({ along: 218, span: 38, turnDegrees }), { neck: { ends: 'at a block' } }),
        ),
      ).toEqual(['care plate: 0 of 10, lid (199, 0) to (199, 0)'])
  })

  test.each([
    // 15 + 2.5 of 19, less half of 3.2: to the treble or to the bass.
    [2.5, 17.5],
    [-2.5, -17.5],
  ])('the one with least wood beside it, %d aside', (across, y) => {
    expect(told('screw-beside', plate({ across }))).toEqual([
      `stop plate: -0.1 of 1, lid (120, ${y}) to (120, ${y})`,
    ])
  })

  test('each plate has its own', () => {
    const two = things(
      { kind: 'tailpiece-plate', id: 'one', along: 60, across: 2.5, span: 30 },
      { kind: 'tailpiece-plate', id: 'two', along: 150, across: 0, span: 30 },
    )
    expect(told('screw-beside', two)).toEqual([
      'stop one: -0.1 of 1, lid (60, 17.5) to (60, 17.5)',
      'clear two: 2.4 of 1, lid (150, -15) to (150, -15)',
    ])
  })
})

describe('wood beside a screw', () => {
  const saysOf = (along: number) => told('screw-beside', inWall({ along }))[0]

  test.each([
    // To the outer side of the wall, and to its inner side at 6; half of 3 less.
    [2.5, 'clear screw: 1 of 1'],
    [2.49, 'care screw: 0.99 of 1'],
    [1.5, 'care screw: 0 of 1'],
    [1.49, 'stop screw: -0.01 of 1'],
    [3.5, 'clear screw: 1 of 1'],
    [3.51, 'care screw: 0.99 of 1'],
    [4.51, 'stop screw: -0.01 of 1'],
  ])('at %d', (along, said) => expect(saysOf(along)).toMatch(said))

  test('names the wood that has least beside it', () => {
    // In the neck 19, in a block of 10 under it 5.
    const block = { box: { inside: [{ id: 'block', along: 120, across: 0, wide: 10, tall: 30 }] } }
    const both = merged(things(screw({ along: 120, across: 0, clearance: 3, screwLength: 45 })), block)
    expect(told('screw-beside', both)).toEqual(['clear screw: 3.5 of 1, lid (120, 0) to (120, 0)'])
    expect(sentence('screw-beside', both)).toContain('3.5 mm of the block beside it')
  })

  test('is not asked of a screw that meets none', () => {
    expect(told('screw-beside', inWall({ along: 60 }))).toEqual([])
    expect(told('screw-point', inWall({ along: 60 }))).toEqual([])
    expect(told('screw-holds', {})).toEqual([])
  })
})

describe('the point of a screw', () => {
  test.each([
    // The wall ends 51 under the lid's face; the base under it, in which a longer one holds too, at 55.
    [50, 'clear screw: -1 of 0'],
    [54, 'clear screw: -1 of 0'],
    [55, 'clear screw: 0 of 0'],
    [55.01, 'care screw: 0.01 of 0'],
  ])('of one %d long', (screwLength, said) => {
    expect(told('screw-point', inWall({ screwLength }))).toEqual([`${said}, lid (3, 60) to (3, 60)`])
  })
})

describe('the head of a screw', () => {
  test('is let in as soon as it is stated', () => {
    expect(told('head-flush', inWall({ head: 6 }))).toEqual(['clear screw: 0 of 0, lid (3, 60) to (3, 60)'])
    expect(told('head-flush', inWall({ head: 0 }))[0]).toMatch(
      /^note screw: 2 of 0, lid \(3, 60\) to \(3, 60\)$/,
    )
    expect(told('head-flush', plate())).toEqual([])
  })
})
