import { describe, expect, test } from 'vitest'
import {
  artworkOf,
  balanceOf,
  check,
  checkDesign,
  insidePiecesOf,
  lidMotionOf,
  partsOf,
  solidsOf,
  solve,
  soundOf,
} from '../../../geometry/index.ts'
import { designOf, type Stated } from '../../support/designs.ts'

const block = (fields: Stated = {}): Stated => ({
  id: 'corner',
  along: 16,
  across: 74,
  long: 20,
  wide: 20,
  tall: 47,
  ...fields,
})
const withInside = (...inside: Stated[]) => solve(designOf({ box: { inside } }))
const faultsIn = (stated: Stated) => {
  const read = checkDesign({ format: 'lidwright', version: 1, ...stated })
  return read.ok ? [] : read.faults.map(({ path, sentence }) => `${path}: ${sentence}`)
}

describe('a piece inside', () => {
  test.each([
    // The base's inside lies 51 below the lid's face, the lid's inside 4 below it.
    ['on the base', {}, [-51, -31]],
    ['on the walls', { below: 3 }, [-27, -7]],
    ['under the lid', {}, [-24, -4]],
  ] as const)('fixed %s stands where a ruler finds it', (fixed, more, [low, high]) => {
    const layout = withInside(block({ fixed, tall: 20, ...more }))
    const [one] = insidePiecesOf(layout)
    expect(one?.box).toMatchObject({ minY: 64, maxY: 84, minZ: low, maxZ: high })
    expect((one?.box.minX ?? 0) - layout.box.x0).toBeCloseTo(6, 9)
  })

  test('is one of the solids, of wood or of metal', () => {
    const solids = solidsOf(withInside(block(), block({ id: 'leaf', sort: 'hinge', across: -74 })))
    expect(solids.find((one) => one.of === 'corner')?.sort).toBe('wood')
    expect(solids.find((one) => one.of === 'leaf')?.sort).toBe('hardware')
  })

  test('takes its room from the air and adds its weight', () => {
    const [bare, full] = [withInside(), withInside(block())]
    expect(soundOf(bare).inside.air - soundOf(full).inside.air).toBeCloseTo(20 * 20 * 47, 6)
    // Plywood of the table: 600 kg/m³.
    expect(balanceOf(full).mass - balanceOf(bare).mass).toBeCloseTo(20 * 20 * 47 * 600e-6, 6)
  })

  test('a pickup that runs into it is told, in depth as in plan', () => {
    const told = (tall: number) =>
      check(
        solve(
          designOf({
            box: { inside: [block({ along: 60, across: 60, tall })] },
            things: [
              { kind: 'pickup', id: 'ears', along: 60, across: 60, sizeAlong: 20, sizeAcross: 30, depth: 18 },
            ],
          }),
        ),
      ).filter((one) => one.rule === 'parts-clear' && one.about.includes('corner'))
    // The pickup hangs to 18 below the face; a block of 33 on the base just reaches it, one of 20 does not.
    expect(told(35)[0]).toMatchObject({ grade: 'stop', measured: expect.closeTo(-2, 9) })
    expect(told(20)).toEqual([])
  })

  test('a screw may go into a block, but not into a hinge', () => {
    const told = (sort: string) =>
      check(
        solve(
          designOf({
            box: { inside: [block({ sort })] },
            things: [{ kind: 'screw', id: 'screw', along: 16, across: 74 }],
          }),
        ),
      ).filter((one) => one.rule === 'parts-clear' && one.about.includes('corner'))
    expect(told('corner block')).toEqual([])
    expect(told('hinge')[0]?.grade).toBe('stop')
  })

  test('under the lid swings with it, and one on the walls stands in its way', () => {
    const opened = (...inside: Stated[]) => {
      const motion = lidMotionOf(solve(designOf({ box: { inside, lid: { kind: 'hinged', gap: 1 } } })))
      if (motion?.by !== 'hinge') throw new Error('no hinge')
      return motion
    }
    const batten = block({ id: 'batten', along: 120, across: -60, fixed: 'under the lid', tall: 12 })
    expect(opened(batten).section.moving.map((one) => one.what)).toContain('batten')
    // The batten ends at -50 across, the liner begins at -49: its lower corner swings out by more than that.
    const liner = block({ id: 'liner', along: 120, across: -39, long: 200, fixed: 'on the walls', tall: 30 })
    const { swing } = opened(batten, liner)
    expect(swing.encounters[0]).toMatchObject({ moving: 'batten', standing: 'liner' })
    expect(swing.encounters[0]?.bite).toBeGreaterThan(0)
  })

  test('is drawn on the parts it lies behind, never cut', () => {
    const parts = partsOf(withInside(block({ name: 'Spruce corner' })))
    const faces = parts.flatMap(({ id, operations }) =>
      operations.some((one) => one.of === 'Inside: Spruce corner') ? [id] : [],
    )
    expect(faces.sort()).toEqual(['base', 'lid', 'neck-end-wall', 'treble-wall'])
    const plain = partsOf(withInside())
    for (const part of parts) {
      const before = plain.find((one) => one.id === part.id)
      const cutting = (operations: typeof part.operations) => operations.filter((one) => one.kind !== 'datum')
      expect(cutting(part.operations)).toEqual(cutting(before?.operations ?? []))
    }
  })
})

describe('artwork', () => {
  const art = (fields: Stated = {}): Stated => ({
    id: 'swallow',
    along: 100,
    across: 30,
    long: 40,
    wide: 20,
    ...fields,
  })

  test.each([
    ['rectangle', {}, { minX: 80, maxX: 120, minY: 20, maxY: 40 }],
    ['oval', {}, { minX: 80, maxX: 120, minY: 20, maxY: 40 }],
    [
      'drawn',
      {
        outline: [
          [-10, 0],
          [0, 15],
          [10, 0],
        ],
      },
      { minX: 90, maxX: 110, minY: 30, maxY: 45 },
    ],
  ])('as a %s lies where it is stated', (shape, more, box) => {
    const [one] = artworkOf(solve(designOf({ artwork: [art({ shape, ...more })] })))
    expect(one?.bounds).toEqual({
      minX: expect.closeTo(box.minX, 9),
      maxX: expect.closeTo(box.maxX, 9),
      minY: expect.closeTo(box.minY, 9),
      maxY: expect.closeTo(box.maxY, 9),
    })
  })

  test('on a wall is measured down from the lid', () => {
    const [one] = artworkOf(solve(designOf({ artwork: [art({ face: 'bass-wall', along: 10, across: 25 })] })))
    expect(one?.at).toEqual({ x: 10, y: -25 })
  })

  test('is drawn on its part to be kept', () => {
    const lid = partsOf(
      solve(designOf({ artwork: [art({ shape: 'oval', long: 30, wide: 30, name: 'Swallow' })] })),
    ).find((one) => one.id === 'lid')
    expect(lid?.operations.filter((one) => one.of === 'Keep whole: Swallow').map((one) => one.kind)).toEqual([
      'datum',
    ])
  })

  test.each([
    [
      'two corners',
      [
        [0, 0],
        [10, 0],
      ],
      'The outline has 2 corners apart from each other; at least 3 are wanted.',
    ],
    [
      'a bow tie',
      [
        [0, 0],
        [10, 10],
        [10, 0],
        [0, 10],
      ],
      'The outline crosses itself or encloses nothing; one that goes round once is wanted.',
    ],
    [
      'a line there and back',
      [
        [0, 0],
        [10, 0],
        [5, 0],
      ],
      'The outline crosses itself or encloses nothing; one that goes round once is wanted.',
    ],
  ])('with an outline of %s is refused in plain words', (_, outline, sentence) => {
    expect(faultsIn({ artwork: [art({ shape: 'drawn', outline })] })).toEqual([
      `artwork[0].outline: ${sentence}`,
    ])
  })

  test('an outline goes either way round', () => {
    const outline = [
      [-10, 0],
      [0, 15],
      [10, 0],
    ]
    const [one, other] = [outline, [...outline].reverse()].map(
      (corners) => artworkOf(solve(designOf({ artwork: [art({ shape: 'drawn', outline: corners })] })))[0],
    )
    expect(one?.bounds).toEqual(other?.bounds)
  })
})

test('an id is that of one thing, one piece or one picture', () => {
  expect(
    faultsIn({
      things: [{ kind: 'screw', id: 'one' }],
      box: { inside: [block({ id: 'one' }), block({ id: 'two' })] },
      artwork: [{ id: 'two' }],
    }),
  ).toEqual([
    'box.inside[0].id: The id "one" is already that of things[0]; everything needs its own.',
    'artwork[0].id: The id "two" is already that of box.inside[1]; everything needs its own.',
  ])
})

test('a design without any of this is checked without it', () => {
  const rules = [
    'opening-to-inside',
    'inside-fits',
    'inside-clear-of-neck',
    'neck-block-height',
    'artwork-kept',
    'lid-clears',
    'lid-reach',
    'head-drops',
    'balance-near-wall',
  ]
  expect(check(solve(designOf())).filter((one) => rules.includes(one.rule))).toEqual([])
})
