/** Where it balances, from the neck-end face, and from where it is held. The point itself is proved with the weights. */
import { describe, expect, test } from 'vitest'
import { balanceOf, check, sentenceOf, solve } from '../../../geometry/index.ts'
import { designOf, type Stated } from '../../support/designs.ts'
import { at, graded, to4, told } from './told.ts'

const held = (balance: Stated, more: Stated = {}): Stated => ({
  ...more,
  balance: { held: 'on the lap', ...balance },
})
const pointOf = (stated: Stated) => balanceOf(solve(designOf(stated)))
/** The box begins 635 - 172.8 behind the nut. */
const FACE = 462.2

describe('the balance point from the neck-end face', () => {
  test.each([
    ['before it', held({})],
    ['behind it', held({ ballast: 3000 })],
  ])('%s', (side, design) => {
    const { x } = pointOf(design)
    expect(side).toBe(x < FACE ? 'before it' : 'behind it')
    const off = Math.abs(x - FACE)
    expect(told('balance-near-wall', design)).toEqual([
      `${off > 60 ? 'care' : 'clear'} box: ${to4(off)} of 60, plan (462.2, 0) to ${at(x, 0)}`,
    ])
    const grade = (balanceOff: number) => graded('balance-near-wall', { ...design, limits: { balanceOff } })
    expect(grade(off + 1e-6)).toEqual(['clear'])
    expect(grade(off - 1e-6)).toEqual(['care'])
    const layout = solve(designOf(design))
    const finding = check(layout).find(({ rule }) => rule === 'balance-near-wall')
    if (!finding) throw new Error('nothing is said')
    expect(sentenceOf(finding, layout)).toContain(`${side.replace(' it', '')} the neck-end face`)
  })
})

describe('the head level', () => {
  // Where it is held moves nothing of what it weighs: the lap is set before and behind the point of balance.
  const heavy = held({ ballast: 3000 })
  const fromFace = pointOf(heavy).x - FACE
  const lap = (by: number) => told('head-drops', held({ ballast: 3000, lapAt: fromFace + by }))
  const x = FACE + fromFace

  test('on the lap, where it balances behind it, it stays up', () => {
    expect(lap(-20)).toEqual([`clear headstock: 20 of 0, plan ${at(x - 20, 0)} to ${at(x, 0)}`])
    expect(lap(-0.3)).toEqual([`clear headstock: 0.3 of 0, plan ${at(x - 0.3, 0)} to ${at(x, 0)}`])
  })

  test('on the lap, where it balances on the neck’s side of it, the head goes down by as much', () => {
    expect(lap(20)).toEqual([`care headstock: -20 of 0, plan ${at(x + 20, 0)} to ${at(x, 0)}`])
    expect(lap(0.6)).toEqual([`care headstock: -0.6 of 0, plan ${at(x + 0.6, 0)} to ${at(x, 0)}`])
  })

  test('on the lap, within half a millimetre, it is as good as level', () => {
    expect(lap(0.4)).toEqual([`clear headstock: 0 of 0, plan ${at(x + 0.4, 0)} to ${at(x + 0.4, 0)}`])
  })

  test('on a strap it turns about the front button', () => {
    const strap = (by: number) =>
      told('head-drops', held({ held: 'by a strap', ballast: 3000, strapAt: fromFace + by }))
    expect(strap(20)).toEqual([`care headstock: -20 of 0, plan ${at(x + 20, 0)} to ${at(x, 0)}`])
    expect(strap(-20)).toEqual([`clear headstock: 20 of 0, plan ${at(x - 20, 0)} to ${at(x, 0)}`])
  })

  test('tells what would cure it', () => {
    const layout = solve(designOf(held({ ballast: 3000, lapAt: fromFace + 20 })))
    const finding = check(layout).find(({ rule }) => rule === 'head-drops')
    const { held: its } = balanceOf(layout)
    if (!finding || !its) throw new Error('nothing is said')
    const said = sentenceOf(finding, layout)
    expect(said).toContain(`the leg ${its.levelAt.toFixed(1)} mm behind the neck-end face`)
    if (its.ballast) expect(said).toContain(`Cured by ${Math.ceil(its.ballast)} g`)
    // Where no ballast can, none is offered.
    const none = solve(designOf(held({ ballastFromTail: 234, lapAt: 120 })))
    const other = check(none).find(({ rule }) => rule === 'head-drops')
    if (!other) throw new Error('nothing is said')
    expect(sentenceOf(other, none)).toContain('Cured by the leg')
  })
})

test('nobody knows where it is not stated how it is held', () => {
  expect(told('balance-near-wall', {})).toEqual([])
  expect(told('head-drops', {})).toEqual([])
})
