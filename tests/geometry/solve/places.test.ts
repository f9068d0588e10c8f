import { describe, expect, test } from 'vitest'
import { blocks, check, type Design, type Layout, sentenceOf, solve } from '../../../geometry/index.ts'
import { designOf, type Stated } from '../../support/designs.ts'
import { PATIENCE } from '../../support/every-design.ts'

const hole = (fields: Stated = {}) => ({
  kind: 'sound-hole',
  id: 'hole',
  along: 60,
  across: 60,
  diameter: 20,
  ...fields,
})
const layoutOf = (things: Stated[], stated: Stated = {}) => solve(designOf({ ...stated, things }))

/** Where a thing stands in its panel's frame, to a billionth. */
function at(layout: Layout, id = 'hole'): [number, number] {
  const placed = layout.placed.find((one) => one.thing.id === id)
  if (!placed) throw new Error(`nothing is called ${id}`)
  expect(layout.problems).toEqual([])
  return [Math.round(placed.at.x * 1e9) / 1e9 + 0, Math.round(placed.at.y * 1e9) / 1e9 + 0]
}
const alone = (fields: Stated, stated: Stated = {}) => at(layoutOf([hole(fields)], stated))

const WIDE = { box: { length: 300, width: 220 } }
const LET_IN = {
  box: {
    length: 300,
    width: 220,
    walls: { neckEnd: 10, bass: 8 },
    lid: { fit: 'between the walls', play: 1 },
  },
}

describe('a measure', () => {
  test('stays a number, whatever becomes of the box', () => {
    expect(alone({ along: 70, across: -55 })).toEqual([70, -55])
    expect(alone({ along: 70, across: -55 }, WIDE)).toEqual([70, -55])
    expect(alone({ along: 70, across: -55 }, LET_IN)).toEqual([70, -55])
  })

  test('on a wall runs from the middle, and down from the lid-side edge', () => {
    expect(alone({ face: 'bass-wall', along: 25, across: 18 })).toEqual([25, -18])
    expect(alone({ face: 'tail-end-wall', along: -25, across: 18 })).toEqual([-25, -18])
  })
})

describe('a share', () => {
  test('of the face follows when the box changes', () => {
    expect(alone({ along: { share: 0.25 }, across: { share: 0.5 } })).toEqual([60, 45])
    expect(alone({ along: { share: 0.25 }, across: { share: 0.5 } }, WIDE)).toEqual([75, 55])
  })

  test('across is of the half on its own side, where the centreline is not in the middle', () => {
    // A lid between walls of 10 and 6, bass 8, treble 6: 300 - 16 - 2 long, from -110 + 9 to 110 - 7.
    expect(alone({ along: { share: 0.5 }, across: { share: 0.5 } }, LET_IN)).toEqual([141, 51.5])
    expect(alone({ along: { share: 0.5 }, across: { share: -0.5 } }, LET_IN)).toEqual([141, -50.5])
  })

  test('on a wall is of its length and of its height', () => {
    expect(alone({ face: 'treble-wall', along: { share: 0.75 }, across: { share: 0.5 } })).toEqual([
      60, -23.5,
    ])
  })
})

describe('midway', () => {
  test('between two lines follows both', () => {
    const between = {
      along: { midway: ['neck-end wall', 'saddle'] },
      across: { midway: ['neck treble side', 'treble edge'] },
    }
    // (6 + 172.8) / 2 and (19 + 90) / 2
    expect(alone(between)).toEqual([89.4, 54.5])
    expect(alone(between, { box: { width: 200 }, saddle: { place: 150 }, neck: { width: 50 } })).toEqual([
      78, 62.5,
    ])
  })

  test('knows every line', () => {
    const along = (line: string) => alone({ along: { midway: [line, line] } })[0]
    expect(along('neck-end edge')).toBe(0)
    expect(along('tail-end edge')).toBe(240)
    expect(along('neck-end wall')).toBe(6)
    expect(along('tail-end wall')).toBe(234)
    expect(along('saddle')).toBe(172.8)
    // Eighteen frets of 635 and 12 mm, from a neck-end edge at 462.2.
    expect(along('board end')).toBeCloseTo(635 * (1 - 2 ** -1.5) + 12 - 462.2, 9)
    const across = (line: string) => alone({ across: { midway: [line, line] } })[1]
    expect(across('centreline')).toBe(0)
    expect(across('bass edge')).toBe(-90)
    expect(across('treble edge')).toBe(90)
    expect(across('bass wall')).toBe(-84)
    expect(across('treble wall')).toBe(84)
    expect(across('neck bass side')).toBe(-19)
    expect(across('neck treble side')).toBe(19)
  })

  test('between a line and a thing follows the thing', () => {
    const things = (along: number) => [hole(), hole({ id: 'other', along, across: 40 })]
    const follower = {
      ...hole({ id: 'mid' }),
      along: { midway: ['hole', 'other'] },
      across: { midway: ['other', 'treble edge'] },
    }
    expect(at(layoutOf([...things(100), follower]), 'mid')).toEqual([80, 65])
    expect(at(layoutOf([follower, ...things(140)]), 'mid')).toEqual([100, 65])
  })

  test('on the base measures walls and saddle from the base’s own edge', () => {
    const on = (face: string) => alone({ face, along: { midway: ['neck-end wall', 'saddle'] } }, LET_IN)[0]
    // The lid begins 11 mm behind the box, the base with it.
    expect(on('base')).toBeCloseTo(on('lid') + 11, 9)
    expect(on('lid')).toBeCloseTo((-1 + 0.72 * 282) / 2, 9)
  })
})

describe('a share of the scale', () => {
  test('is counted from the saddle towards the nut and follows both', () => {
    expect(alone({ along: { ofScale: 0.1 } })[0]).toBeCloseTo(172.8 - 63.5, 9)
    expect(alone({ along: { ofScale: 0.1 } }, { scale: { length: 600 } })[0]).toBeCloseTo(172.8 - 60, 9)
    expect(alone({ along: { ofScale: 0.1 } }, { saddle: { place: 200 } })[0]).toBeCloseTo(200 - 63.5, 9)
  })
})

describe('a mirrored partner', () => {
  const pair = (fields: Stated) => [
    hole(fields),
    hole({ id: 'partner', along: { mirror: 'hole' }, across: { mirror: 'hole' } }),
  ]

  test('stands on the other side of the centreline, wherever its partner goes', () => {
    expect(at(layoutOf(pair({ along: 70, across: 55 })), 'partner')).toEqual([70, -55])
    expect(at(layoutOf(pair({ along: { share: 0.5 }, across: { share: -0.5 } })), 'partner')).toEqual([
      120, 45,
    ])
  })

  test('on the opposite wall stands as far along and as far down', () => {
    const things = pair({ face: 'bass-wall', along: 30, across: 20 })
    const [first, second] = things
    expect(at(layoutOf([{ ...first }, { ...second, face: 'treble-wall' }]), 'partner')).toEqual([30, -20])
  })

  test('on the base stands under its partner on the lid, though their edges differ', () => {
    const [first, second] = pair({ along: 70, across: 55 })
    expect(at(layoutOf([{ ...first }, { ...second, face: 'base' }], LET_IN), 'partner')).toEqual([81, -55])
  })

  test('of a mirrored partner stands where the first does', () => {
    const things = [
      ...pair({ along: 70, across: 55 }),
      hole({ id: 'third', along: { mirror: 'partner' }, across: { mirror: 'partner' } }),
    ]
    expect(at(layoutOf(things), 'third')).toEqual([70, 55])
    expect(at(layoutOf([...things].reverse()), 'third')).toEqual([70, 55])
  })
})

describe('the saddle', () => {
  const along = (place: unknown, stated: Stated = {}, things: Stated[] = []) => {
    const layout = layoutOf(things, { ...stated, saddle: { place } })
    expect(layout.problems).toEqual([])
    return layout.saddle.along
  }

  test('keeps a measure and follows a share, a midway or a thing', () => {
    expect(along(150)).toBe(150)
    expect(along(150, WIDE)).toBe(150)
    expect(along({ share: 0.5 })).toBe(120)
    expect(along({ share: 0.5 }, WIDE)).toBe(150)
    expect(along({ midway: ['tail-end wall', 'neck-end edge'] })).toBe(117)
    expect(along({ mirror: 'hole' }, {}, [hole({ along: 160 })])).toBe(160)
  })
})

describe('what cannot be followed', () => {
  const cases: [string, Stated[], Stated, string, RegExp][] = [
    [
      'a partner that is gone',
      [hole({ along: { mirror: 'gone' } })],
      {},
      'hole',
      /follows "gone", and there is no such thing/,
    ],
    ['itself', [hole({ across: { mirror: 'hole' } })], {}, 'hole', /hangs on itself/],
    [
      'a ring of three',
      [
        hole({ along: { mirror: 'b' } }),
        hole({ id: 'b', along: { midway: ['c', 'saddle'] } }),
        hole({ id: 'c', along: { mirror: 'hole' } }),
      ],
      {},
      'hole',
      /hangs on itself/,
    ],
    [
      'a thing on a wall from the lid',
      [hole({ along: { mirror: 'b' } }), hole({ id: 'b', face: 'bass-wall' })],
      {},
      'hole',
      /face of another sort/,
    ],
    [
      'the saddle from a wall',
      [hole({ face: 'bass-wall', along: { ofScale: 0.2 } })],
      {},
      'hole',
      /line that this wall does not have/,
    ],
    [
      'the treble edge from a wall',
      [hole({ face: 'bass-wall', across: { midway: ['treble edge', 'centreline'] } })],
      {},
      'hole',
      /which a wall does not have/,
    ],
    [
      'a saddle that stands by itself',
      [],
      { saddle: { place: { ofScale: 0.5 } } },
      'saddle',
      /hangs on the saddle/,
    ],
    [
      'a saddle that stands by what stands by it',
      [hole({ along: { ofScale: 0.2 } })],
      { saddle: { place: { mirror: 'hole' } } },
      'saddle',
      /hangs on the saddle/,
    ],
    [
      'a saddle that follows nobody',
      [],
      { saddle: { place: { mirror: 'gone' } } },
      'saddle',
      /no such thing/,
    ],
  ]

  test.each(cases)('%s is a stop that says so, and no throw', (_what, things, stated, of, sentence) => {
    const layout = layoutOf(things, stated)
    expect(layout.problems.find((one) => one.of === of)?.sentence).toMatch(sentence)
    const finding = check(layout).find((one) => one.rule === 'place-followed' && one.about.includes(of))
    expect(finding && blocks(finding)).toBe(true)
    expect(finding && sentenceOf(finding, layout)).toMatch(sentence)
  })

  test('stands in the middle of its face till it is mended', () => {
    const layout = layoutOf([hole({ along: { mirror: 'gone' }, across: { mirror: 'gone' } })])
    expect(layout.placed[0]?.at).toEqual({ x: 120, y: 0 })
    expect(layout.problems.map(({ of, axis }) => [of, axis])).toEqual([
      ['hole', 'along'],
      ['hole', 'across'],
    ])
  })

  test('leaves everything else in its place', () => {
    const broken = layoutOf([
      hole({ along: { mirror: 'gone' } }),
      hole({ id: 'other', along: { midway: ['saddle', 'neck-end edge'] } }),
    ])
    expect(broken.placed.find((one) => one.thing.id === 'other')?.at.x).toBeCloseTo(86.4, 9)
  })

  test('spreads to those that follow it, each with its own finding', () => {
    const layout = layoutOf([
      hole({ along: { mirror: 'gone' } }),
      hole({ id: 'b', along: { mirror: 'hole' } }),
    ])
    expect(layout.problems.map((one) => one.of)).toEqual(['hole', 'b'])
  })

  test('a chain of ten thousand partners is followed as far as sense goes, and then told', {
    timeout: PATIENCE,
  }, () => {
    const chain: Stated[] = Array.from({ length: 10_000 }, (_, n) =>
      n === 9_999
        ? { kind: 'screw', id: `s${n}`, along: 20, across: 20 }
        : { kind: 'screw', id: `s${n}`, along: { mirror: `s${n + 1}` }, across: { mirror: `s${n + 1}` } },
    )
    const layout = layoutOf(chain)
    expect(layout.placed).toHaveLength(10_000)
    expect(layout.problems[0]?.sentence).toMatch(/partners that follow each other/)
    expect(layout.placed.at(-50)?.at.x).toBe(20)
  })
})

describe('asking twice', () => {
  test('gives the same layout for the same design, and another for another', () => {
    const design: Design = designOf()
    expect(solve(design)).toBe(solve(design))
    expect(solve({ ...design })).not.toBe(solve(design))
    expect(solve({ ...design })).toEqual(solve(design))
  })
})
