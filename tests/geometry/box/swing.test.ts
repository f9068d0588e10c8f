import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { meet } from '../../../geometry/box/swing/clip.ts'
import { lidCuresOf, lidMotionOf, type Point, partsOf, solve, swung } from '../../../geometry/index.ts'
import { arbitraryDesign } from '../../support/arbitraries.ts'
import { designOf, type Stated } from '../../support/designs.ts'

const withLid = (lid: Stated, more: Stated = {}) => designOf({ ...more, box: { lid } })
const hinged = (lid: Stated, more: Stated = {}) => {
  const motion = lidMotionOf(solve(withLid({ kind: 'hinged', ...lid }, more)))
  if (motion?.by !== 'hinge') throw new Error('no hinge')
  return motion
}
const bitesOf = (lid: Stated, more: Stated = {}) =>
  hinged(lid, more).swing.encounters.filter((one) => one.bite > 0)

describe('a lid that does not open on hinges or in grooves', () => {
  test('is not reckoned with', () => {
    for (const kind of ['lift-off', 'glued']) expect(lidMotionOf(solve(withLid({ kind })))).toBeNull()
  })
})

describe('swinging', () => {
  const point = fc.record({
    x: fc.double({ min: -300, max: 300, noNaN: true }),
    y: fc.double({ min: -60, max: 60, noNaN: true }),
  })

  test('through 0 changes nothing', () => {
    fc.assert(
      fc.property(fc.array(point, { minLength: 3, maxLength: 6 }), (points) => {
        expect(swung(points, 0)).toBe(points)
      }),
    )
    fc.assert(
      fc.property(
        arbitraryDesign,
        fc.constantFrom('bass wall', 'treble wall', 'neck end', 'tail end'),
        (design, hingeEdge) => {
          const lid = { ...design.box.lid, kind: 'hinged' as const, hingeEdge, opens: 5 }
          const motion = lidMotionOf(solve({ ...design, box: { ...design.box, lid } }))
          if (motion?.by !== 'hinge') throw new Error('no hinge')
          for (const piece of motion.section.moving) expect(swung(piece.section, 0)).toEqual(piece.section)
        },
      ),
      { numRuns: 30 },
    )
  })

  test('keeps every length and every distance from the pin, and back again it is where it was', () => {
    fc.assert(
      fc.property(
        fc.array(point, { minLength: 2, maxLength: 6 }),
        fc.double({ min: -3, max: 3, noNaN: true }),
        (points, angle) => {
          const there = swung(points, angle)
          const back = swung(there, -angle)
          points.forEach((one, index) => {
            expect(Math.hypot(there[index]?.x ?? 0, there[index]?.y ?? 0)).toBeCloseTo(
              Math.hypot(one.x, one.y),
              9,
            )
            expect(back[index]?.x).toBeCloseTo(one.x, 9)
            expect(back[index]?.y).toBeCloseTo(one.y, 9)
          })
        },
      ),
    )
  })

  test('a wider opening never reaches less far, nor bites less deep', () => {
    const lids = [{ hingeEdge: 'tail end' }, { hingeEdge: 'neck end', hingeDown: 2 }, { hingeIn: 5 }]
    for (const lid of lids)
      for (const [less, more] of [
        [20, 60],
        [60, 90],
      ]) {
        const [a, b] = [hinged({ ...lid, opens: less }).swing, hinged({ ...lid, opens: more }).swing]
        expect(b.reached).toBeGreaterThanOrEqual(a.reached - 1e-4)
        expect(b.encounters[0]?.bite ?? 0).toBeGreaterThanOrEqual((a.encounters[0]?.bite ?? 0) - 1e-9)
      }
  })

  test('never finds less than any single opening shows', () => {
    fc.assert(
      fc.property(
        fc.constantFrom('bass wall', 'treble wall', 'neck end', 'tail end'),
        fc.double({ min: -5, max: 12, noNaN: true }),
        fc.double({ min: -4, max: 12, noNaN: true }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (hingeEdge, hingeIn, hingeDown, share) => {
          const { section, swing } = hinged({ hingeEdge, hingeIn, hingeDown })
          const angle = share * swing.wanted
          for (const moving of section.moving)
            for (const standing of section.standing) {
              if (Math.min(moving.s1, standing.s1) - Math.max(moving.s0, standing.s0) < 1e-3) continue
              const [now, closed] = [
                meet(swung(moving.section, angle), standing),
                meet(moving.section, standing),
              ]
              if (Math.min(closed.along, closed.up) > 1e-6) continue
              const depth = Math.min(now.along, now.up)
              if (depth < 1e-3) continue
              const told = swing.encounters.filter(
                (one) => one.moving === moving.what && one.standing === standing.what,
              )
              expect(Math.max(...told.map((one) => one.bite))).toBeGreaterThan(depth - 0.01)
              expect(swing.reached).toBeLessThan(angle + 1e-4)
            }
        },
      ),
      { numRuns: 60 },
    )
  })
})

/** A pickup of 20 × 40 beside the neck. */
const HANGING = { kind: 'pickup', id: 'ears', along: 60, sizeAlong: 20, sizeAcross: 40 }

describe('the bite', () => {
  // Common practice, no source: a hinged lid over a neck commonly bites by 1 to 4 mm, 1/8 in is usual, before it is relieved.
  test.each([
    // The pin at the lid's underside, flush shoulders: the upper edge turns back by as much as it lies above the pin.
    ['an eighth of an inch thick', { thickness: 3.175, hingeDown: 3.175 }, 3.175],
    ['of 4 mm', { thickness: 4, hingeDown: 4 }, 4],
    ['of 4 mm with its pin half way up', { thickness: 4, hingeDown: 2 }, 2],
    ['of 4 mm with its pin near the top', { thickness: 4, hingeDown: 1 }, 1],
  ] as const)('of a lid %s over the neck’s shoulder is within what is usual', (_, lid, bite) => {
    for (const hingeEdge of ['neck end', 'tail end']) {
      const [worst] = bitesOf({ ...lid, hingeEdge })
      expect([worst?.moving, worst?.standing]).toEqual(['lid', 'neck'])
      expect(worst?.bite).toBeCloseTo(bite, 4)
      expect(bite).toBeGreaterThanOrEqual(1)
      expect(bite).toBeLessThanOrEqual(4)
    }
  })

  test('of a pin above the lid lies opposite the hinge: the lower edge runs on a circle', () => {
    // From the pin, 10 above the face, to the lower far corner: 240 along and 14 down. The shoulder ends 10 below the pin.
    const [worst] = bitesOf({ hingeEdge: 'tail end', hingeDown: -10 })
    expect(worst?.standing).toBe('neck')
    expect(worst?.bite).toBeCloseTo(Math.sqrt(240 ** 2 + 14 ** 2 - 10 ** 2) - 240, 5)
  })

  test('of a deep pickup beside the neck comes before it is half way out', () => {
    // Hangs from -59.5 to -19.5 across, the neck from -19; its lower corner lies 70.5 from the pin across and 14 below it.
    const ears = { ...HANGING, across: -39.5, depth: 18 }
    const { swing } = hinged({ gap: 1 }, { things: [ears] })
    const [worst] = swing.encounters
    expect([worst?.moving, worst?.standing]).toEqual(['ears', 'neck'])
    // The corner passes the neck's side, 71 from the pin, at the angle where its circle does.
    const radius = Math.hypot(70.5, 14)
    expect(swing.reached).toBeCloseTo(Math.atan2(14, 70.5) - Math.acos(71 / radius), 4)
  })

  test('there is none along the neck with a gap, and without one the ends rub', () => {
    const free = hinged({ gap: 0.8 }).swing
    expect(free.encounters.filter((one) => one.bite > 0)).toEqual([])
    expect(free.reached).toBe(free.wanted)
    expect(free.encounters[0]).toMatchObject({
      standing: 'neck',
      sideways: true,
      room: expect.closeTo(0.8, 9),
    })
    expect(hinged({}).swing.encounters[0]).toMatchObject({ sideways: true, room: 0 })
  })

  test('a pin set in from the edge presses the lid into its wall at once', () => {
    const { swing } = hinged({ hingeIn: 8, gap: 0.8 })
    expect(swing.reached).toBeLessThan(0.001)
    expect(swing.encounters[0]).toMatchObject({ standing: 'bass wall', bite: expect.closeTo(6, 3) })
  })

  test('is the same on both sides of a box that is alike on both', () => {
    const ears = (across: number) => ({ things: [{ ...HANGING, across, depth: 30 }] })
    const [bass, treble] = [
      hinged({ hingeEdge: 'bass wall' }, ears(-40)).swing,
      hinged({ hingeEdge: 'treble wall' }, ears(40)).swing,
    ]
    expect(treble.reached).toBeCloseTo(bass.reached, 9)
    expect(treble.encounters.map((one) => one.bite)).toEqual(
      bass.encounters.map((one) => expect.closeTo(one.bite, 9)),
    )
  })
})

describe('the cure', () => {
  test.each([
    [{ hingeEdge: 'tail end' }],
    [{ hingeEdge: 'neck end', hingeDown: 2 }],
    [{ hingeEdge: 'tail end', hingeDown: -10 }],
    [{ fit: 'between the walls', play: 0.5, hingeIn: 6 }],
  ])('that is named for %o makes it clear, and a tenth less does not', (lid) => {
    const stated = { kind: 'hinged', ...lid }
    const cures = lidCuresOf(solve(withLid(stated)))
    expect(cures.length).toBeGreaterThan(0)
    const room = (field: string, value: number) =>
      Math.min(
        ...hinged({ ...stated, [field]: value })
          .swing.encounters.filter((one) => one.moving === 'lid')
          .map((one) => one.room),
      )
    for (const { field, value } of cures) {
      expect(room(field, value)).toBeGreaterThanOrEqual(0.5 - 1e-6)
      expect(room(field, value - 0.1)).toBeLessThan(0.5)
    }
  })

  test('of a gap lengthens the notch at both ends, and nothing else', () => {
    const notch = (gap: number) =>
      solve(withLid({ kind: 'hinged', gap })).neck.cuts.find((one) => one.of === 'notch')
    const [tight, loose] = [notch(0), notch(0.8)]
    expect((tight?.x0 ?? 0) - (loose?.x0 ?? 0)).toBeCloseTo(0.8, 9)
    expect((loose?.x1 ?? 0) - (tight?.x1 ?? 0)).toBeCloseTo(0.8, 9)
  })

  test('of a bevel is drawn on the lid', () => {
    const lid = partsOf(solve(withLid({ kind: 'hinged', bevelAtHinge: 3, bevelOpposite: 2 }))).find(
      (one) => one.id === 'lid',
    )
    const marks =
      lid?.operations.flatMap((one) => ('of' in one && /Bevel/.test(String(one.of)) ? [one] : [])) ?? []
    expect(marks.map((one) => one.kind).sort()).toEqual(['datum', 'mark'])
  })
})

describe('a lid that slides', () => {
  const slides = (lid: Stated, more: Stated = {}) => {
    const motion = lidMotionOf(solve(withLid({ kind: 'sliding', ...lid }, more)))
    if (motion?.by !== 'slide') throw new Error('no slide')
    return motion.slide
  }

  test('over a flush neck stands against its shoulder at once, by its own thickness', () => {
    const { reached, stopped } = slides({ slidesTo: 'tail end' })
    expect(reached).toBe(0)
    expect(stopped[0]).toMatchObject({ standing: 'neck', bite: 4 })
    expect(slides({ slidesTo: 'tail end', gap: 0.8 }).reached).toBeCloseTo(0.8, 9)
  })

  test('over a side comes out, unless something hangs under it', () => {
    expect(slides({ slidesTo: 'treble wall' }).stopped).toEqual([])
    // From 30 to 50 across, so 34 before the wall's inner face at 84; 14 - 4 of it hang below the lid.
    const ears = {
      kind: 'pickup',
      id: 'ears',
      along: 60,
      across: 40,
      sizeAlong: 20,
      sizeAcross: 20,
      depth: 14,
    }
    const { reached, stopped } = slides({ slidesTo: 'treble wall' }, { things: [ears] })
    expect(reached).toBeCloseTo(34, 9)
    expect(stopped[0]).toMatchObject({ moving: 'ears', standing: 'treble wall', bite: 10 })
  })
})

test('a polygon and a rectangle share what a ruler says', () => {
  const square: Point[] = [
    { x: 0, y: 0 },
    { x: 10, y: 0 },
    { x: 10, y: 10 },
    { x: 0, y: 10 },
  ]
  expect(meet(square, { u0: 8, u1: 30, z0: 4, z1: 30 })).toMatchObject({ along: 2, up: 6 })
  expect(meet(square, { u0: 13, u1: 30, z0: 4, z1: 30 })).toMatchObject({ along: 0, up: 0, beside: 3 })
  // Touching is not biting, above is not beside.
  expect(meet(square, { u0: 10, u1: 30, z0: 0, z1: 9 })).toMatchObject({ along: 0, beside: 0 })
  expect(meet(square, { u0: 0, u1: 9, z0: 10, z1: 20 }).beside).toBe(Number.POSITIVE_INFINITY)
})
