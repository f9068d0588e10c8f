import { describe, expect, test } from 'vitest'
import { check, halfWidthAt, type Layout, type NeckStretch, solve } from '../../../geometry/index.ts'
import { sidesOfNeck } from '../../../geometry/neck/neck.ts'
import { designOf, type Stated } from '../../support/designs.ts'
import { forEveryDesign, PATIENCE } from '../../support/every-design.ts'

const layoutOf = (stated: Stated = {}) => solve(designOf(stated))
const LET_IN = { lid: { thickness: 4, fit: 'between the walls' } }
const slotsOf = (stated: Stated) => layoutOf(stated).neck.slots.map(({ face, depth }) => [face, depth])

const stretch = (layout: Layout, of: NeckStretch['of']) => {
  const found = layout.neck.stretches.find((one) => one.of === of)
  if (!found) throw new Error(`the neck has no stretch of ${of}`)
  return found
}

describe('the blank', () => {
  // Common practice, no source: head, scale, saddle to the inside of the tail-end wall, wall and tail are one sum.
  test('150 of head + 648 of scale + 70 to the wall + 6 of wall + 38 of tail = 912 mm', () => {
    const { neck } = layoutOf({
      headstock: { length: 150 },
      scale: { length: 648 },
      saddle: { place: 240 - 6 - 70 },
      box: { length: 240, walls: { tailEnd: 6 } },
      neck: { tail: 38 },
    })
    expect(neck.needs).toEqual({ total: 912, headstock: 150, scale: 648, behindSaddle: 76, tail: 38 })
    expect(neck.x1 - neck.x0).toBe(912)
  })

  test('a setback moves the box down the neck and takes from the blank', () => {
    const needs = (setback: number) => layoutOf({ saddle: { setback } }).neck.needs
    expect(needs(3).total).toBeCloseTo(needs(0).total + 3, 9)
    expect(needs(3).scale).toBeCloseTo(638, 9)
  })

  test('a neck that ends at a block needs no tail and ends at its tongue', () => {
    const { neck, box } = layoutOf({ neck: { ends: 'at a block', tongue: 90 } })
    expect(neck.x1).toBeCloseTo(box.x0 + 6 + 90, 9)
    expect(neck.needs.tail).toBe(0)
    expect(neck.needs.total).toBeCloseTo(neck.x1 + 150, 9)
    expect(neck.block).toEqual({ minX: box.insideX0, maxX: box.insideX0 + 40, minY: -35, maxY: 35 })
  })
})

describe('the neck under the lid', () => {
  // Common practice, no source: a notch as deep as the lid, so that a 25 mm neck under a lid of 6.4 mm keeps about 19.
  test('a flush neck of 25 mm keeps about 19 under a lid of 6.4', () => {
    const { neck } = layoutOf({ box: { lid: { thickness: 6.4 } }, neck: { thickness: 25, relief: 0 } })
    expect(neck.thinnest.left).toBeCloseTo(18.6, 12)
    expect(Math.round(neck.thinnest.left)).toBe(19)
    expect(neck.thinnest.of).toBe('notch')
  })

  // Common practice, no source: a proud neck, worked through by a builder.
  test('a proud neck of 25 mm: 8 off, 17 left, and the slot 21 deep', () => {
    const layout = layoutOf({ box: LET_IN, neck: { thickness: 25, rise: 4, relief: 0 } })
    const notch = stretch(layout, 'notch')
    expect(layout.neck.top - notch.top).toBe(8)
    expect(notch.top - notch.bottom).toBe(17)
    expect(layout.neck.slots.map((slot) => slot.depth)).toEqual([21, 21])
  })

  test('the relief starts inside each wall and takes what is stated below the lid', () => {
    const layout = layoutOf({ neck: { relief: 3, reliefStart: 10 } })
    const relief = stretch(layout, 'relief')
    expect(relief.x0).toBeCloseTo(layout.box.insideX0 + 10, 9)
    expect(relief.x1).toBeCloseTo(layout.box.insideX1 - 10, 9)
    expect(relief.top).toBe(-7)
    expect(layout.neck.thinnest).toMatchObject({ left: 12, of: 'relief' })
  })

  test('a lid let in between the walls is notched for between the walls only', () => {
    const [on, between] = [layoutOf(), layoutOf({ box: LET_IN })]
    const ends = ({ neck }: Layout) =>
      neck.cuts.filter((cut) => cut.of === 'notch').map(({ x0, x1 }) => [x0, x1])
    expect(ends(on)).toEqual([[on.box.x0, on.box.x1]])
    expect(ends(between)).toEqual([[between.box.insideX0, between.box.insideX1]])
  })

  test('a pickup over the neck is let in with a millimetre to spare, and says so', () => {
    const pickup = { kind: 'pickup', id: 'bar', along: 100, across: 0, sizeAlong: 20, depth: 9 }
    const layout = layoutOf({ things: [pickup] })
    const x = layout.box.x0 + 100
    expect(stretch(layout, 'pickup relief')).toMatchObject({
      x0: x - 11,
      x1: x + 11,
      top: -10,
      because: 'bar',
    })
  })

  test('a pickup beside the neck, or one that does not reach it, takes nothing from it', () => {
    const pickup = (fields: Stated) => [{ kind: 'pickup', id: 'bar', along: 100, depth: 9, ...fields }]
    for (const fields of [{ shape: 'round', across: 60 }, { depth: 0 }]) {
      const { cuts } = layoutOf({ things: pickup(fields) }).neck
      expect(cuts.map((cut) => cut.of)).toEqual(['notch', 'relief'])
    }
  })

  test('of two cuts the deeper counts, wherever they overlap', () => {
    const pickup = (id: string, along: number, depth: number) => ({
      kind: 'pickup',
      id,
      along,
      across: 0,
      sizeAlong: 20,
      depth,
    })
    const { neck, box } = layoutOf({ things: [pickup('a', 100, 9), pickup('b', 110, 11)] })
    const pickups = neck.stretches.filter((one) => one.of === 'pickup relief')
    expect(pickups.map(({ x0, x1, top, because }) => [x0 - box.x0, x1 - box.x0, top, because])).toEqual(
      [
        [89, 99, -10, 'a'],
        [99, 121, -12, 'b'],
      ].map((one) => one.map((each) => (typeof each === 'number' ? expect.closeTo(each, 9) : each))),
    )
  })

  // Plain arithmetic on the cube of the thickness (I = b h³ / 12, Gere, "Mechanics of Materials").
  test.each([
    [3.2, 58],
    [6.4, 29],
    [12.7, 4],
  ])('a stick of 19 mm notched by %d mm keeps %d percent of its stiffness', (notch, percent) => {
    const layout = layoutOf({ box: { lid: { thickness: notch } }, neck: { relief: 0 } })
    const finding = check(layout).find((one) => one.rule === 'neck-left')
    expect(finding?.data?.share).toBe(percent)
    expect(finding?.measured).toBeCloseTo(19 - notch, 12)
  })
})

describe('the slots in the walls', () => {
  // Common practice, no source: with the lid between the walls the slot takes the whole neck; with the lid on the
  // walls it is less deep by the lid.
  test('are as deep as the neck where the lid lies between the walls', () => {
    expect(slotsOf({ box: LET_IN })).toEqual([
      ['neck-end-wall', 19],
      ['tail-end-wall', 19],
    ])
  })

  test('are less deep by the lid where it lies on the walls', () => {
    expect(slotsOf({ box: { lid: { thickness: 4 } } })).toEqual([
      ['neck-end-wall', 15],
      ['tail-end-wall', 15],
    ])
  })

  test('are cut wider than the neck by the play, and only where the neck goes through', () => {
    const { slots } = layoutOf({ neck: { ends: 'at a block', slotPlay: 0.8 } }).neck
    expect(slots.map(({ face, width }) => [face, width])).toEqual([['neck-end-wall', 38.8]])
  })

  test('leave what is left of the wall: below, and beside up to the thicker side wall', () => {
    const [slot] = layoutOf({ box: { depth: 60, width: 120, walls: { bass: 10 } } }).neck.slots
    // 60 - 4 - 4 - 15, and 60 - 10 - 19.2
    expect(slot?.wallLeftBelow).toBeCloseTo(37, 12)
    expect(slot?.wallLeftBeside).toBeCloseTo(30.8, 12)
  })

  test('are none for a neck that lies on top of the walls', () => {
    expect(slotsOf({ neck: { rise: 20 } })).toEqual([
      ['neck-end-wall', 0],
      ['tail-end-wall', 0],
    ])
  })
})

describe('the width of the neck', () => {
  const { neck, box } = layoutOf({ neck: { width: 50, widthAtNut: 40 }, headstock: { width: 60 } })

  test('runs straight from nut to box and stays from there on', () => {
    expect(halfWidthAt(neck, 0)).toBe(20)
    expect(halfWidthAt(neck, box.x0 / 2)).toBeCloseTo(22.5, 12)
    expect(halfWidthAt(neck, box.x0)).toBe(25)
    expect(halfWidthAt(neck, neck.x1)).toBe(25)
  })

  test('is that of the head up to its shoulder, and beyond both ends that of the end', () => {
    expect(halfWidthAt(neck, neck.x0)).toBe(30)
    expect(halfWidthAt(neck, neck.x0 - 100)).toBe(30)
    expect(halfWidthAt(neck, neck.x1 + 100)).toBe(25)
    expect(halfWidthAt(neck, -5)).toBe(20)
  })

  test('has a middle of its own where a head is slanted, and both run straight from corner to corner', () => {
    const halfWidths = [
      { x: 0, half: 20, middle: 4 },
      { x: 100, half: 30, middle: 12 },
      { x: 200, half: 30 },
    ]
    // A quarter of the way: 22.5 wide to a side, about 6; half way back to the centreline: about 6 again.
    expect(sidesOfNeck({ halfWidths }, 25)).toEqual([6 - 22.5, 6 + 22.5])
    expect(sidesOfNeck({ halfWidths }, 150)).toEqual([6 - 30, 6 + 30])
    expect(sidesOfNeck({ halfWidths }, -10)).toEqual([4 - 20, 4 + 20])
    expect(sidesOfNeck({ halfWidths }, 300)).toEqual([-30, 30])
  })
})

describe('the plan of the neck, corner by corner', () => {
  const plan = (stated: Stated) => {
    const { neck, box } = layoutOf({ nut: { thickness: 5, setback: 0 }, ...stated })
    return { box, x1: neck.x1, corners: neck.halfWidths.map(({ x, half, middle = 0 }) => [x, half, middle]) }
  }
  const close = (corners: readonly (readonly number[])[]) =>
    corners.map((corner) => corner.map((value) => expect.closeTo(value, 9)))

  test('of a straight head: its end, its shoulder 8 behind the nut, the nut, the box, the tail', () => {
    const { corners, box, x1 } = plan({
      headstock: { length: 150, width: 60 },
      neck: { width: 50, widthAtNut: 40 },
    })
    expect(corners).toEqual(
      close([
        [-150, 30, 0],
        [-13, 30, 0],
        [-5, 20, 0],
        [0, 20, 0],
        [box.x0, 25, 0],
        [x1, 25, 0],
      ]),
    )
  })

  test('of a slanted head: wherever one of its edges turns, with its middle', () => {
    // Three bass posts from 45 on, 25 apart and each 12 farther in: the bass edge goes from -24 to 0 between 45 and 95.
    const { corners } = plan({
      headstock: {
        ...{ length: 150, width: 48, firstPost: 45, postSpacing: 25, postStep: 12 },
        ...{ bassTuners: 3, trebleTuners: 0 },
      },
      neck: { width: 50, widthAtNut: 40 },
    })
    expect(corners.slice(0, 5)).toEqual(
      close([
        [-150, 12, 12],
        [-95, 12, 12],
        [-45, 24, 0],
        [-13, 24, 0],
        [-5, 20, 0],
      ]),
    )
  })

  test('of a head that ends within its shoulder, slanted or not: as wide at its end as the head is there', () => {
    for (const postStep of [0, 3]) {
      // 20 long, the nut 15 thick: from its back 5 are left of 8, and the head's own width begins at its end.
      const { corners } = plan({
        nut: { thickness: 15, setback: 0 },
        headstock: { length: 20, width: 60, postStep, firstPost: 30 },
        neck: { widthAtNut: 40 },
      })
      expect(corners.slice(0, 3)).toEqual(
        close([
          [-20, 30, 0],
          [-15, 20, 0],
          [0, 20, 0],
        ]),
      )
    }
  })

  test('of a box before the nut: as wide as at the box right from it', () => {
    const { corners, x1, box } = plan({
      scale: { length: 150 },
      saddle: { place: 1000 },
      neck: { width: 50, widthAtNut: 40 },
    })
    expect(box.x1).toBeLessThan(0)
    expect(x1).toBe(1)
    expect(corners.slice(-2)).toEqual(
      close([
        [0, 20, 0],
        [1, 25, 0],
      ]),
    )
  })
})

describe('cuts for the lid', () => {
  test('go a gap beyond the walls it lies on, and to the end of a neck at a block', () => {
    const gap = 0.7
    const on = layoutOf({ box: { lid: { fit: 'on the walls', gap } }, neck: { relief: 0 } })
    const notch = ({ neck }: Layout) => neck.cuts.map(({ x0, x1, of }) => [x0, x1, of])
    expect(notch(on)).toEqual([[on.box.x0 - gap, on.box.x1 + gap, 'notch']])
    const between = layoutOf({ box: { lid: { fit: 'between the walls', gap } }, neck: { relief: 0 } })
    expect(notch(between)).toEqual([[between.box.insideX0, between.box.insideX1, 'notch']])
    const block = layoutOf({
      box: { lid: { fit: 'on the walls', gap } },
      neck: { ends: 'at a block', relief: 3, reliefStart: 10 },
    })
    expect(notch(block)).toEqual([
      [block.box.x0 - gap, block.neck.x1, 'notch'],
      [block.box.insideX0 + 10, block.neck.x1, 'relief'],
    ])
  })

  test('are none over a neck that lies under the lid, nor where the relief has no length', () => {
    const { box } = layoutOf()
    const under = layoutOf({ neck: { rise: box.lidBottom, relief: 3, reliefStart: 10 } })
    expect(under.neck.cuts.map(({ of }) => of)).toEqual(['relief'])
    expect(layoutOf({ neck: { rise: box.lidBottom - 3, relief: 3 } }).neck.cuts).toEqual([])
    // 120 long with walls of 6: 108 between them, 54 from either side.
    const none = layoutOf({
      box: { length: 120, walls: { neckEnd: 6, tailEnd: 6 } },
      neck: { relief: 3, reliefStart: 54 },
    })
    expect(none.neck.cuts.map(({ of }) => of)).toEqual(['notch'])
  })

  test('a pickup takes from the neck as far as it reaches over its edge, on either side, and no farther', () => {
    const [half, size] = [19, 30]
    const cutsOf = (across: number) =>
      layoutOf({
        things: [{ kind: 'pickup', id: 'bar', along: 100, across, shape: 'round', diameter: size, depth: 9 }],
      }).neck.cuts.filter(({ of }) => of === 'pickup relief').length
    for (const side of [-1, 1]) {
      expect(cutsOf(side * (half + size / 2 - 0.5))).toBe(1)
      expect(cutsOf(side * (half + size / 2 + 0.5))).toBe(0)
    }
  })
})

describe('for every design', { timeout: PATIENCE }, () => {
  test('stretches follow each other from the head to the end without a gap or a turn', () => {
    forEveryDesign((design) => {
      const { neck } = solve(design)
      const { stretches } = neck
      const [first, last] = [stretches[0], stretches.at(-1)]
      if (!first || !last) return ['no stretch']
      const gaps = stretches
        .slice(1)
        .filter((one, index) => Math.abs(one.x0 - (stretches[index]?.x1 ?? Number.NaN)) > 2e-3)
      return [
        ...(Math.abs(first.x0 - neck.x0) > 1e-3 || Math.abs(last.x1 - neck.x1) > 1e-3
          ? ['an end is missing']
          : []),
        ...gaps.map((one) => `a gap before ${one.x0}`),
        ...stretches
          .filter((one) => !(one.x1 > one.x0) || one.top < one.bottom || one.top > neck.top)
          .map((one) => `${one.of} is turned`),
      ]
    })
  })

  test('no stretch inside the box is thinner than the thinnest', () => {
    forEveryDesign((design) => {
      const { neck, box } = solve(design)
      const inside = neck.stretches.filter((one) => one.x1 > box.x0 && one.x0 < Math.min(box.x1, neck.x1))
      const least = Math.min(neck.thinnest.left, ...inside.map((one) => one.top - one.bottom))
      return neck.thinnest.left <= least ? [] : [`${neck.thinnest.left} is not ${least}`]
    })
  })
})

describe('designs that once broke the drawing', () => {
  const whole = (stated: Stated) => {
    const { neck } = layoutOf(stated)
    return neck.stretches.map(({ x0, x1, of }) => [of, x0, x1])
  }

  test('a head shorter than its nut is thick', () => {
    const [first] = whole({ headstock: { length: 20 }, nut: { thickness: 30 } })
    expect(first?.slice(0, 2)).toEqual(['neck', -20])
  })

  test('a box that lies before the nut', () => {
    const layout = layoutOf({ scale: { length: 150 }, saddle: { place: 1000 } })
    expect(layout.box.x1).toBeLessThan(0)
    expect(layout.neck.x1).toBeGreaterThan(0)
    expect(layout.neck.stretches.map((one) => one.of)).toEqual(['headstock', 'slope', 'tail'])
  })

  test('a lid thicker than the neck', () => {
    const layout = layoutOf({ box: { lid: { thickness: 19 } } })
    expect(layout.neck.thinnest.left).toBe(0)
  })
})
