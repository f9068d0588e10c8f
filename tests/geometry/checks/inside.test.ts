/**
 * What stands in the box, against openings, walls, neck and brace.
 *
 * Inside the box is 6 to 234 along and 84 to either side; the base's inner side lies 51 under the lid's face, the lid's
 * inner side 4. The box begins 462.2 behind the nut.
 */
import { describe, expect, test } from 'vitest'
import { check, sentenceOf, solve } from '../../../geometry/index.ts'
import { designOf, type Stated } from '../../support/designs.ts'
import { hole, screw } from './breaking/case.ts'
import { at, graded, told } from './told.ts'

const block = (fields: Stated = {}): Stated => ({ id: 'block', along: 120, across: 50, tall: 47, ...fields })
const inside = (rule: string, fields: Stated, more: Stated = {}) =>
  told(rule, { ...more, box: { inside: [block(fields)] } })

describe('an opening beside what stands behind it', () => {
  const saysOf = (opening: Stated, piece: Stated) =>
    inside('opening-to-inside', piece, { things: [hole({ diameter: 20, ...opening })] })

  test.each([
    // A block 20 wide at 120 and 50: the hole's rim is 4 off on each of its sides.
    ['lid', { along: 96, across: 50 }, {}, '(106, 50) to (110, 50)'],
    ['lid', { along: 144, across: 50 }, {}, '(134, 50) to (130, 50)'],
    ['lid', { along: 120, across: 26 }, {}, '(120, 36) to (120, 40)'],
    ['base', { along: 120, across: 74 }, {}, '(120, 64) to (120, 60)'],
    // On the treble wall a block at its inside, from 110 to 130 along: from -10 to 10 from the wall's middle.
    ['treble-wall', { along: 24, across: 20 }, { across: 74 }, '(14, -20) to (10, -20)'],
    ['bass-wall', { along: -24, across: 20 }, { across: -74 }, '(-14, -20) to (-10, -20)'],
    // On the end walls from 40 to 60 to the treble.
    ['neck-end-wall', { along: 74, across: 20 }, { along: 16 }, '(64, -20) to (60, -20)'],
    ['tail-end-wall', { along: 26, across: 20 }, { along: 224 }, '(36, -20) to (40, -20)'],
    // Below a block that hangs 17 down the wall from its upper edge; the hole's top lies at -21.
    [
      'treble-wall',
      { along: 0, across: 31 },
      { across: 74, tall: 17, fixed: 'on the walls', below: 0 },
      '(0, -21) to (0, -17)',
    ],
  ] as const)('in the %s, %j', (face, opening, piece, line) => {
    expect(saysOf({ face, ...opening }, piece)).toEqual([`care hole + block: 4 of 6, ${face} ${line}`])
  })

  test('six are enough; touching is a risk, a hole over it a stop', () => {
    expect(saysOf({ along: 94 }, { across: 60 })[0]).toMatch(/^clear hole \+ block: 6 of 6,/)
    expect(saysOf({ along: 94.01 }, { across: 60 })[0]).toMatch(/^care hole \+ block: 5.99 of 6,/)
    expect(saysOf({ along: 100 }, { across: 60 })[0]).toMatch(/^care hole \+ block: 0 of 6,/)
    expect(saysOf({ along: 100.01 }, { across: 60 })[0]).toMatch(/^stop hole \+ block: -0.01 of 6,/)
  })

  test.each([
    // A hole is stopped up by what lies less than six behind its face: 4 and 6 under the lid's face.
    ['lid', { along: 94, across: 50 }, { tall: 41 }, false],
    ['lid', { along: 94, across: 50 }, { tall: 41.1 }, true],
    ['base', { along: 94, across: 50 }, { fixed: 'under the lid', tall: 41 }, false],
    ['base', { along: 94, across: 50 }, { fixed: 'under the lid', tall: 41.1 }, true],
    // Walls are 6 thick: 12 behind their outer side.
    ['treble-wall', { along: 24, across: 20 }, { across: 68 }, false],
    ['treble-wall', { along: 24, across: 20 }, { across: 68.1 }, true],
    ['bass-wall', { along: 24, across: 20 }, { across: -68 }, false],
    ['bass-wall', { along: 24, across: 20 }, { across: -68.1 }, true],
    ['neck-end-wall', { along: 74, across: 20 }, { along: 22 }, false],
    ['neck-end-wall', { along: 74, across: 20 }, { along: 21.9 }, true],
    ['tail-end-wall', { along: 74, across: 20 }, { along: 218 }, false],
    ['tail-end-wall', { along: 74, across: 20 }, { along: 218.1 }, true],
    // Wholly before a face it is behind none.
    ['neck-end-wall', { along: 74, across: 20 }, { along: -10 }, false],
    ['neck-end-wall', { along: 74, across: 20 }, { along: -9.9 }, true],
  ] as const)('in the %s, %j, a block %j deep enough is met: %s', (face, opening, piece, isMet) => {
    expect(saysOf({ face, ...opening }, piece)).toHaveLength(isMet ? 1 : 0)
  })

  test('is told up to ten more than twice what is wanted, and of screws not at all', () => {
    // The block begins at 110; the hole ends 22 or a little more before it.
    expect(saysOf({ along: 78 }, { across: 60 })[0]).toMatch(/^clear hole \+ block: 22 of 6,/)
    expect(saysOf({ along: 77.9 }, { across: 60 })).toEqual([])
    expect(inside('opening-to-inside', {}, { things: [screw({ along: 120, across: 50 })] })).toEqual([])
    expect(told('opening-to-inside', { things: [hole()] })).toEqual([])
  })
})

describe('what stands inside lies inside', () => {
  // 20 × 20 × 40, each time 3 from one side and more from all others.
  test.each([
    ['neck-end wall', { along: 19, across: 50, tall: 40 }],
    ['tail-end wall', { along: 221, across: 50, tall: 40 }],
    ['bass wall', { along: 120, across: -71, tall: 40, fixed: 'on the walls', below: 4 }],
    ['treble wall', { along: 120, across: 71, tall: 40, fixed: 'on the walls', below: 4 }],
    ['base', { along: 120, across: 50, tall: 40, fixed: 'on the walls', below: 4 }],
    ['lid', { along: 120, across: 50, tall: 40, fixed: 'on the walls', below: 3 }],
  ] as const)('3 from the %s', (side, fields) => {
    const hung = { fixed: 'on the walls', below: 3.5, ...fields }
    const design = designOf({ box: { inside: [block(hung)] } })
    const finding = check(solve(design)).find(({ rule }) => rule === 'inside-fits')
    if (!finding) throw new Error('nothing is said')
    expect(finding).toMatchObject({ grade: 'clear', about: ['block'], limit: 0, data: { side } })
    expect(finding.measured).toBeCloseTo(3, 9)
    const x = 462.2 + fields.along
    const where = `plan ${at(x - 10, fields.across - 10)} to ${at(x + 10, fields.across + 10)}`
    expect(inside('inside-fits', hung)).toEqual([`clear block: 3 of 0, ${where}`])
    expect(sentenceOf(finding, solve(design))).toContain(`3.0 mm from the ${side}`)
  })

  test('what no tape measure tells from touching is touching', () => {
    const line = (across: number, more: Stated = {}) => inside('inside-fits', { across, ...more })[0]
    // Its side at 83.5, at 84, at 84.04 and at 84.053.
    expect(line(73.5, { tall: 40, fixed: 'on the walls', below: 4 })).toMatch(/^clear block: 0.5 of 0,/)
    expect(line(74)).toMatch(/^clear block: 0 of 0,/)
    expect(line(74.04)).toMatch(/^clear block: 0 of 0,/)
    expect(line(74.053)).toMatch(/^stop block: -0.053 of 0,/)
  })

  test.each([
    ['corner block', 'stop'],
    ['neck block', 'stop'],
    ['liner', 'stop'],
    ['batten', 'stop'],
    ['hinge', 'care'],
    ['clasp', 'care'],
  ])('a %s in a wall is %s', (sort, grade) => {
    // 20 wide, its outer side 1 in the wall.
    expect(inside('inside-fits', { sort, across: 75 })[0]).toMatch(`${grade} block: -1 of 0`)
  })
})

describe('neck and brace clear of what stands inside', () => {
  const saysOf = (fields: Stated, more: Stated = {}) => inside('inside-clear-of-neck', fields, more)

  test('beside the neck, on either side of it', () => {
    // From 38 - 10 to the neck's 19.
    expect(saysOf({ across: 38 })[0]).toMatch(
      /^clear block \+ neck: 9 of 0, plan \([\d.]+, 28\) to \([\d.]+, 19\)$/,
    )
    expect(saysOf({ across: -38 })[0]).toMatch(
      /^clear block \+ neck: 9 of 0, plan \([\d.]+, -28\) to \([\d.]+, -19\)$/,
    )
    expect(saysOf({ across: 39 })[0]).toMatch(/^clear block \+ neck: 10 of 0,/)
    expect(saysOf({ across: 39.1 })).toEqual([])
  })

  test('touching is none in the way', () => {
    expect(saysOf({ across: 29 })[0]).toMatch(/^clear block \+ neck: 0 of 0,/)
    expect(saysOf({ across: 28.96 })[0]).toMatch(/^clear block \+ neck: 0 of 0,/)
    expect(saysOf({ across: 28.94 })[0]).toMatch(/^stop block \+ neck: -0.06 of 0,/)
  })

  test('of neck and brace the nearer is told', () => {
    // A brace across, 10 high and 8 wide under the saddle at 172.8; the block begins 2 behind it, 11 beside the neck.
    const brace = { brace: { height: 10 } }
    expect(saysOf({ along: 188.8, across: 40 }, brace)[0]).toMatch(/^clear block \+ brace: 2 of 0,/)
    expect(saysOf({ along: 188.8, across: 40 })).toEqual([])
    expect(saysOf({ along: 188.8, across: 30 }, brace)[0]).toMatch(/^clear block \+ neck: 1 of 0,/)
  })

  test('the block that carries the neck’s tongue is no part in the way', () => {
    // A tongue's own block fills what is under it, 70 wide; a liner beside it, 1 from that and 17 from the tongue.
    const tongue = { neck: { ends: 'at a block', blockWidth: 70, blockLength: 40 } }
    expect(saysOf({ along: 26, across: 46 }, tongue)).toEqual([])
  })

  test('an empty box has nothing in the way', () => {
    expect(told('inside-clear-of-neck', {})).toEqual([])
  })
})

describe('a neck block up to what lies on it', () => {
  const saysOf = (fields: Stated, more: Stated = {}) =>
    inside('neck-block-height', { sort: 'neck block', along: 16, across: 0, ...fields }, more)
  const x = 462.2 + 16

  // The neck's underside lies 19 under the lid's face, 32 over the base.
  test.each([
    [31.5, 'clear block + neck: 0.5 of 0.5', -19.5],
    [31.49, 'care block + neck: 0.51 of 0.5', -19.51],
    [32, 'clear block + neck: 0 of 0.5', -19],
    [32.5, 'clear block + neck: 0.5 of 0.5', -18.5],
    [32.51, 'stop block + neck: 0.51 of 0.5', -18.49],
  ])('%d tall', (tall, said, top) => {
    expect(saysOf({ tall })).toEqual([`${said}, section ${at(x, top)} to ${at(x, -19)}`])
  })

  test.each([
    [30, '2.0 mm under the neck and carries nothing.'],
    [31.3, '0.7 mm under the neck and carries nothing.'],
    [33, '1.0 mm too tall: the neck does not come down on it.'],
  ])('%d tall is told by how much, and how tall it should be', (tall, words) => {
    const piece = block({ sort: 'neck block', along: 16, across: 0, tall })
    const layout = solve(designOf({ box: { inside: [piece] } }))
    const finding = check(layout).find(({ rule }) => rule === 'neck-block-height')
    if (!finding) throw new Error('nothing is said')
    const sentence = sentenceOf(finding, layout)
    expect(sentence).toContain(words)
    expect(sentence).toContain('32.0 mm tall')
  })

  test.each([
    // 20 wide: just beside the neck, 19 to either side, and just under it.
    [{ across: 29, tall: 44 }, 'lid'],
    [{ across: 28.9, tall: 44 }, 'neck'],
    [{ across: -29, tall: 44 }, 'lid'],
    [{ across: -28.9, tall: 44 }, 'neck'],
  ])('%j has the %s on it', (fields, over) => {
    expect(saysOf(fields)[0]).toMatch(`block + ${over}: `)
  })

  test('behind the end of a tongue the lid lies on it', () => {
    // The tongue ends 6 + 80 along the box; the block is 20 long.
    const tongue = { neck: { ends: 'at a block', tongue: 80 } }
    expect(saysOf({ along: 96, tall: 44 }, tongue)).toEqual([
      `care block + lid: 3 of 0.5, section ${at(462.2 + 96, -7)} to ${at(462.2 + 96, -4)}`,
    ])
    expect(saysOf({ along: 95.9, tall: 32 }, tongue)[0]).toMatch(/^clear block \+ neck: 0 of 0.5,/)
  })

  test('is asked of neck blocks alone', () => {
    for (const sort of ['corner block', 'liner', 'batten', 'hinge', 'clasp'])
      expect(graded('neck-block-height', { box: { inside: [block({ sort, tall: 30 })] } })).toEqual([])
  })
})
