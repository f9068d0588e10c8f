import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { balancePoint } from '../../../geometry/balance/balance.ts'
import { neckVolume } from '../../../geometry/balance/neck-volume.ts'
import { balanceOf, solve, WOODS } from '../../../geometry/index.ts'
import { designOf, type Stated } from '../../support/designs.ts'

const of = (stated: Stated) => balanceOf(solve(designOf(stated)))
const massOf = (stated: Stated, what: string) => of(stated).pieces.find((one) => one.what === what)?.mass ?? 0

describe('the neck as a lump', () => {
  test('of a straight stick is length times section, its middle half way', () => {
    const layout = solve(designOf({ headstock: { thickness: 19, width: 38 }, neck: { rise: -4, relief: 0 } }))
    const { x0, x1 } = layout.neck
    const { volume, x } = neckVolume(layout, x0, x1)
    expect(volume).toBeCloseTo((x1 - x0) * 38 * 19, 3)
    expect(x).toBeCloseTo((x0 + x1) / 2, 6)
  })

  test('is the sum of its stretches, wherever it is parted', () => {
    const layout = solve(designOf({ neck: { widthAtNut: 34, width: 42 } }))
    const { x0, x1 } = layout.neck
    const whole = neckVolume(layout, x0, x1)
    fc.assert(
      fc.property(fc.double({ min: 0, max: 1, noNaN: true }), (share) => {
        const cut = x0 + share * (x1 - x0)
        const [a, b] = [neckVolume(layout, x0, cut), neckVolume(layout, cut, x1)]
        expect(a.volume + b.volume).toBeCloseTo(whole.volume, 2)
        expect((a.volume * a.x + b.volume * b.x) / whole.volume).toBeCloseTo(whole.x, 4)
      }),
    )
  })
})

describe('weights', () => {
  // Wood Handbook, FPL-GTR-190 (2010): density at 12 % is 1000 × gravity × 1.12; sugar maple 0.63, so 705.6 kg/m³.
  test('a board of sugar maple weighs its volume by 705.6 kg/m³', () => {
    expect(WOODS['maple, sugar'].density).toBeCloseTo(705.6e-9, 12)
    const stated = {
      board: { ends: 'at a length', length: 400, thickness: 5 },
      neck: { widthAtNut: 38, width: 38 },
    }
    expect(massOf(stated, 'board')).toBeCloseTo(400 * 38 * 5 * 705.6e-6, 6)
  })

  test('a lid loses what its holes take', () => {
    const hole = { kind: 'sound-hole', id: 'hole', along: 60, across: 60, diameter: 40 }
    // Plywood of the table: 600 kg/m³.
    expect(massOf({}, 'lid') - massOf({ things: [hole] }, 'lid')).toBeCloseTo(Math.PI * 400 * 4 * 600e-6, 6)
  })

  test('what is bought weighs what is stated, each as often as it is there', () => {
    expect(massOf({ balance: { tuner: 41 } }, 'tuners')).toBe(3 * 41)
    expect(massOf({ balance: { ballast: 55 } }, 'ballast')).toBe(55)
    const ears = { kind: 'pickup', id: 'ears', along: 60, across: 60 }
    expect(massOf({ balance: { pickup: 83 }, things: [ears] }, 'ears')).toBe(83)
  })

  test('a strip glued under the lid weighs as its wood does', () => {
    const strip = {
      kind: 'glued-brace',
      id: 'strip',
      along: 100,
      across: 50,
      sizeAlong: 10,
      sizeAcross: 60,
      height: 8,
    }
    // Sitka spruce, gravity 0.40: 448 kg/m³.
    expect(massOf({ things: [strip] }, 'strip')).toBeCloseTo(10 * 60 * 8 * 448e-6, 6)
  })

  test('all pieces together are the whole, and where it balances is their middle', () => {
    const { pieces, mass, x, fromWall } = of({})
    expect(pieces.reduce((sum, one) => sum + one.mass, 0)).toBeCloseTo(mass, 9)
    expect(pieces.reduce((sum, one) => sum + one.mass * (one.x - x), 0)).toBeCloseTo(0, 6)
    expect(x - fromWall).toBeCloseTo(solve(designOf()).box.x0, 9)
  })

  test('of a uniform stick and a weight at its end the lever law holds', () => {
    // Archimedes, "On the Equilibrium of Planes", I, prop. 6.
    expect(
      balancePoint([
        { mass: 300, x: 400 },
        { mass: 100, x: 0 },
      ]),
    ).toEqual({ mass: 400, x: 300 })
  })
})

describe('held', () => {
  test('nothing drops until it is said how', () => {
    expect(of({}).held).toBeNull()
  })

  // Common practice, no source: hung from a strap the head dives when it balances on the neck's side of the front button.
  test('by a strap the head dives with its button behind the balance point, and stays up before it', () => {
    const { fromWall } = of({})
    const hung = (strapAt: number) => of({ balance: { held: 'by a strap', strapAt } }).held
    expect(hung(fromWall + 30)).toMatchObject({ drops: 'head', arm: expect.closeTo(30, 9) })
    expect(hung(fromWall - 30)).toMatchObject({ drops: 'neither', ballast: null })
  })

  test('by a strap the button on the drawing counts, and not the one at the tail', () => {
    const button = (id: string, face: string, along: number) => ({
      kind: 'strap-button',
      id,
      face,
      along,
      across: 20,
    })
    const { fromWall } = of({})
    const { held, pieces } = of({
      balance: { held: 'by a strap', strapAt: 500 },
      // From the middle of the wall, 120 behind the neck-end face.
      things: [button('front', 'bass-wall', -100), button('rear', 'tail-end-wall', 0)],
    })
    expect((held?.x ?? 0) - solve(designOf()).box.x0).toBeCloseTo(20, 9)
    expect(pieces.filter((one) => ['front', 'rear'].includes(one.what)).map((one) => one.mass)).toEqual([
      30, 30,
    ])
    expect(fromWall).toBeLessThan(0)
  })

  test('on the lap either end may drop', () => {
    const { fromWall } = of({})
    const laid = (lapAt: number) => of({ balance: { held: 'on the lap', lapAt } }).held?.drops
    expect([laid(fromWall + 40), laid(fromWall), laid(fromWall - 40)]).toEqual(['head', 'neither', 'tail'])
  })

  test('the ballast that is asked for makes it level', () => {
    const stated = { held: 'on the lap', lapAt: 60, ballastFromTail: 25 }
    const { held } = of({ balance: stated })
    expect(held?.drops).toBe('head')
    const cured = of({ balance: { ...stated, ballast: held?.ballast } })
    expect(cured.held?.arm).toBeCloseTo(0, 6)
  })

  test('the place that is asked for makes it level', () => {
    const { held } = of({ balance: { held: 'by a strap', strapAt: 40 } })
    const moved = of({ balance: { held: 'by a strap', strapAt: held?.levelAt } })
    expect(moved.held).toMatchObject({ drops: 'neither', atNut: 0 })
  })

  test('the hand at the nut bears the moment over its lever', () => {
    const { held, mass } = of({ balance: { held: 'on the lap', lapAt: 100 } })
    if (!held) throw new Error('not held')
    expect(held.atNut * held.x).toBeCloseTo((mass / 1000) * 9.80665 * held.arm, 6)
  })
})
