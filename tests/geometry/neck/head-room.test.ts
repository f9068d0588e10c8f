/**
 * Room on a head, against every pair measured line to line. Both are plane geometry; the head takes short ways where tuners
 * stand alike, and the long way is what they have to come to.
 */
import fc from 'fast-check'
import { expect, it } from 'vitest'
import { gap, solve } from '../../../geometry/index.ts'
import { headOf, type Tuner } from '../../../geometry/neck/head-layout.ts'
import { headRoomOf } from '../../../geometry/neck/head-room.ts'
import type { Chain } from '../../../geometry/plane/index.ts'
import { designOf } from '../../support/designs.ts'

const mm = (min: number, max: number) => fc.double({ min, max, noNaN: true })

const heads = fc.record({
  width: mm(30, 120),
  length: mm(60, 240),
  postSpacing: mm(8, 45),
  postStep: fc.oneof(fc.constant(0), mm(0, 12)),
  stagger: mm(0, 20),
  postEdge: mm(4, 20),
  bodyLong: mm(4, 40),
  bodyIn: mm(1, 25),
  knobWide: mm(2, 30),
  knobFrom: mm(2, 40),
  knobLong: mm(2, 30),
})

const pairs = (tuners: readonly Tuner[], part: (tuner: Tuner) => Chain | null): number[] =>
  tuners.flatMap((one, index) =>
    tuners.slice(0, index).flatMap((other) => {
      const [a, b] = [part(one), part(other)]
      return a && b ? [gap(a, b)] : []
    }),
  )

it('comes to what every pair of outlines comes to, however the tuners stand', () => {
  let apart = 0
  let over = 0
  fc.assert(
    fc.property(heads, fc.integer({ min: 1, max: 12 }), (headstock, count) => {
      const layout = solve(designOf({ headstock, strings: { count } }))
      const { tuners, outline } = headOf(layout)
      const room = headRoomOf(layout)
      const least = (found: readonly number[]) => (found.length > 0 ? Math.min(...found) : null)
      const expected = {
        bodies: least(pairs(tuners, (one) => one.body)),
        knobs: least(pairs(tuners, (one) => one.knob)),
        holes: least(
          tuners.flatMap((one, index) => tuners.slice(0, index).map((other) => gap(one.hole, other.hole))),
        ),
        knobToEdge: least(tuners.flatMap(({ knob }) => (knob ? [gap(knob, outline)] : []))),
      }
      for (const [name, wanted] of Object.entries(expected)) {
        const found = room[name as keyof typeof expected]?.mm ?? null
        if (wanted === null) expect(found).toBeNull()
        else expect(found).toBeCloseTo(wanted, 6)
        if (wanted !== null) wanted > 0 ? apart++ : over++
      }
    }),
    { seed: 7, numRuns: 400 },
  )
  // Both ways were gone, the short and the long.
  expect(apart).toBeGreaterThan(100)
  expect(over).toBeGreaterThan(100)
})
