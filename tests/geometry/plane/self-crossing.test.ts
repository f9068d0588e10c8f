/** Whether a chain comes back to itself, by hand: combs of many teeth, near misses, flat arcs that only touch. */
import { describe, expect, it, test } from 'vitest'
import type { Chain, Vertex } from '../../../geometry/plane/index.ts'
import { faults } from '../../../geometry/plane/index.ts'
import { piecesOf } from '../../../geometry/plane/pieces.ts'
import { selfCrossing } from '../../../geometry/plane/self-crossing.ts'

type Places = readonly (readonly [x: number, y: number, bulge?: number])[]

const chainOf = (places: Places, closed: boolean): Chain => ({
  shape: 'chain',
  closed,
  vertices: places.map(([x, y, bulge = 0]) => ({ x, y, bulge })),
})
const told = (places: Places, closed = false) => selfCrossing(piecesOf(chainOf(places, closed)).list, closed)

/**
 * A comb of so many teeth, each 2 wide with its tip at 5, from (0, 0) on; then down, and back to the left along y = -5
 * with one spike in it, up to a height of `spike` at x = `at`.
 */
const comb = (teeth: number, at: number, spike: number): [number, number][] => [
  ...Array.from({ length: 2 * teeth + 1 }, (_, i): [number, number] => [i, i % 2 === 0 ? 0 : 5]),
  ...[[2 * teeth, -5] as [number, number]],
  ...[
    [at + 0.1, -5] as [number, number],
    [at, spike] as [number, number],
    [at - 0.1, -5] as [number, number],
  ],
  [-1, -5],
]

describe('a comb', () => {
  // 20 teeth are few segments, where every pair is looked at; 150 are many, where boxes are.
  test.each([20, 150])('of %i teeth is sound until a spike meets a tooth, wherever that is', (teeth) => {
    expect(told(comb(teeth, 11, 4))).toBeUndefined()
    for (const tooth of [0, 3, teeth - 2]) {
      // Under the tip of a tooth, at x = 2 tooth + 1, up to 4.9 there is room; beside it its flanks are met.
      const tip = 2 * tooth + 1
      expect(told(comb(teeth, tip, 4.4))).toBeUndefined()
      // At x = tip - 0.5 the left flank stands at 2.5; the spike's sides are the two segments after the way down.
      const [up, down] = [2 * teeth + 3, 2 * teeth + 4]
      const met = told(comb(teeth, tip - 0.5, 3.5))
      expect(met).toMatch(new RegExp(`^Segments ${2 * tooth + 1} and (${up}|${down}) cross or touch at `))
      const right = told(comb(teeth, tip + 0.5, 3.5))
      expect(right).toMatch(new RegExp(`^Segments ${2 * tooth + 2} and (${up}|${down}) cross or touch at `))
    }
  })

  test.each([3, 150])(
    'of which two of %i spikes cross one line: the first in order is named, not the first from the left',
    (many) => {
      // A level line to the right, then back to the left over it with spikes down; the first spike made is the rightmost.
      const end = 4 * many
      const back = Array.from({ length: many }, (_, i): Places => {
        const x = end - 2 - 4 * i
        return [
          [x + 1, 8],
          [x, i === 1 || i === 2 ? -1 : 1],
          [x - 1, 8],
        ]
      }).flat()
      const fault = told([[0, 0], [end, 0], [end, 8], ...back])
      // Segment 3 runs to the first spike, 4 to 6 are the first with the way on, 7 goes down the second one.
      const x = end - 2 - 4
      expect(fault).toBe(`Segments 1 and 7 cross or touch at (${Math.round((x + 1 / 9) * 1000) / 1000}, 0).`)
    },
  )
})

describe('what comes within a millionth touches, and no farther off', () => {
  /** A U whose second arm comes so near to its foot, or to its first arm, many other corners later. */
  const near = (gap: number, upright: boolean, teeth: number): Places => {
    const turned = ([x, y]: readonly [number, number]): [number, number] => (upright ? [y, x] : [x, y])
    const row = Array.from({ length: 2 * teeth }, (_, i): [number, number] => [20 + i, i % 2 === 0 ? 20 : 25])
    const shape: [number, number][] = [
      [0, 0],
      [10, 0],
      [19, 20],
      ...row,
      [50 + 2 * teeth, 40],
      [5, 40],
      [5, gap],
      [-5, 30],
    ]
    return shape.map(turned)
  }
  test.each([0, 150])('with %i teeth between', (teeth) => {
    for (const upright of [false, true]) {
      const last = 2 * teeth + 5
      expect(told(near(5e-7, upright, teeth))).toMatch(
        new RegExp(`^Segments 1 and (${last}|${last + 1}) cross or touch`),
      )
      expect(told(near(-5e-7, upright, teeth))).toMatch(/^Segments 1 and /)
      expect(told(near(2e-6, upright, teeth))).toBeUndefined()
    }
  })
})

describe('segments that follow one another', () => {
  test('may meet at both ends only where both belong to them', () => {
    // A lens, closed by its own two arcs; the same open comes back to where it began.
    expect(
      told(
        [
          [0, 0, 0.5],
          [10, 0, 0.5],
        ],
        true,
      ),
    ).toBeUndefined()
    expect(
      told([
        [0, 0, 0.5],
        [10, 0, 0.5],
        [0, 0],
      ]),
    ).toBe('Segments 1 and 2 cross or touch at (0, 0).')
    expect(
      told([
        [0, 0],
        [10, 0, 0.5],
        [0, 0],
      ]),
    ).toBe('Segments 1 and 2 cross or touch at (0, 0).')
  })

  test('the last and the first of a closed chain are neighbours as well', () => {
    // From (0, 0) to the right and at last an arc of three quarters back to (0, 0): it passes over the line at (6, 0).
    const corner = Math.tan((1.5 * Math.PI) / 4)
    // About (3, 3) with radius 3 √2 both (0, 0) and (6, 0) lie on the circle, and (0, 6).
    expect(
      told(
        [
          [0, 0],
          [10, 0],
          [10, 20],
          [0, 6, -corner],
        ],
        true,
      ),
    ).toBe('Segments 1 and 4 cross or touch at (6, 0).')
    expect(
      told(
        [
          [0, 0],
          [5, 0],
          [10, -20],
          [40, 40],
          [0, 6, -corner],
        ],
        true,
      ),
    ).not.toContain('Segments 1 and 5')
    // Of an open chain they are strangers.
    expect(
      told([
        [0, 0],
        [10, 0],
        [10, 20],
        [0, 20],
        [0, 0],
      ]),
    ).toBe('Segments 1 and 4 cross or touch at (0, 0).')
    expect(
      told(
        [
          [0, 0],
          [10, 0],
          [10, 20],
          [0, 20],
        ],
        true,
      ),
    ).toBeUndefined()
  })

  test('two arcs that meet again are named with the place, which by symmetry is the mirror of their corner', () => {
    // Circles of 5 about (0, 0) and (6, 0) meet at (3, 4) and (3, -4): in along the first, on along the second.
    const on = (x: number, angle: number): [number, number] => [x + 5 * Math.cos(angle), 5 * Math.sin(angle)]
    const top = Math.atan2(4, 3)
    for (const [from, to, meets] of [
      // The first from -80° up to the corner passes (3, -4) at -53.13°; the second from 126.87° on to 250° does at 233.13°.
      [-80, 250, true],
      [-40, 250, false],
      [-80, 210, false],
    ] as const) {
      const start = (from * Math.PI) / 180
      const end = (to * Math.PI) / 180
      const places: Places = [
        [...on(0, start), Math.tan((top - start) / 4)],
        [3, 4, Math.tan((end - (Math.PI - top)) / 4)],
        on(6, end),
      ]
      const back = [...chainOf(places, false).vertices].reverse()
      const reversed: Places = back.map(({ x, y }, index): [number, number, number] => [
        x,
        y,
        -(back[index + 1]?.bulge ?? 0),
      ])
      for (const one of [places, reversed]) {
        if (meets) expect(told(one)).toBe('Segments 1 and 2 cross or touch at (3, -4).')
        else expect(told(one)).toBeUndefined()
      }
    }
  })

  it('of flat arcs that leave back along the line they came by, none is taken for a crossing', () => {
    // A cusp: the arc sets out straight back and bends off by a ten-thousandth of a millimetre and more. Its circle is up to
    // ten kilometres wide, where the place of the second meeting is rounded by more than a millionth.
    for (let i = 0; i < 1500; i++) {
      const angle = i * 0.37
      const bulge = (i % 2 === 0 ? 1 : -1) * 10 ** (-6.5 + (i % 40) / 10)
      const joint = { x: 900 + 700 * Math.cos(angle), y: 400 + 700 * Math.sin(angle) }
      const back = angle + Math.PI + 2 * Math.atan(bulge)
      const vertices: Vertex[] = [
        { x: joint.x - 1500 * Math.cos(angle), y: joint.y - 1500 * Math.sin(angle), bulge: 0 },
        { ...joint, bulge },
        { x: joint.x + 1400 * Math.cos(back), y: joint.y + 1400 * Math.sin(back), bulge: 0 },
      ]
      expect(faults({ shape: 'chain', closed: false, vertices })).toEqual([])
    }
  })
})
