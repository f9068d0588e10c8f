/** Rules about where the instrument balances; silent until the builder says how it is held. */
import { balanceOf } from '../../balance/balance.ts'
import { gradeLeast, gradeMost, type Measurement, type Rule, type Where } from '../finding.ts'

const between = (from: number, to: number): Where => ({
  view: 'plan',
  from: { x: from, y: 0 },
  to: { x: to, y: 0 },
})

export const balanceNearWall: Rule = {
  name: 'balance-near-wall',
  title: 'Balance point near the neck-end face',
  unit: 'mm',
  wants: 'most',
  limits: ['balanceOff'],
  mendedBy: ['balance.ballast'],
  measure(layout, limit) {
    const found: Measurement[] = []
    if (layout.design.balance.held === 'not stated') return found
    const { fromWall, x, mass } = balanceOf(layout)
    const measured = Math.abs(fromWall)
    const wanted = limit('balanceOff')
    found.push({
      about: ['box'],
      measured,
      limit: wanted,
      grade: gradeMost(measured, wanted),
      where: between(layout.box.x0, x),
      data: { side: fromWall < 0 ? 'before' : 'behind', mass },
    })
    return found
  },
  words({ measured, limit, grade, data }, say) {
    const place = `By estimate it weighs ${Math.round(Number(data?.mass))} g and balances ${say.length(measured ?? 0)} ${data?.side} the neck-end face`
    if (grade === 'clear') return `${place}.`
    const cure =
      data?.side === 'before'
        ? 'A lighter head, a thinner neck or ballast at the tail brings it nearer.'
        : 'Less ballast or a lighter tail brings it nearer.'
    return `${place}; within ${say.length(limit ?? 0)} is usual. ${cure}`
  },
}

export const headDrops: Rule = {
  name: 'head-drops',
  title: 'Head level when it is held',
  unit: 'mm',
  wants: 'least',
  limits: [],
  mendedBy: ['balance.ballast', 'balance.strapAt', 'balance.lapAt'],
  measure(layout) {
    const found: Measurement[] = []
    if (layout.design.balance.held === 'not stated') return found
    const { held, x } = balanceOf(layout)
    if (!held) return found
    // What is as good as level is level.
    const isLevel = held.arm > 0 && held.drops !== 'head'
    const measured = isLevel ? 0 : -held.arm
    found.push({
      about: ['headstock'],
      measured,
      limit: 0,
      grade: gradeLeast(measured, 0),
      where: between(held.x, isLevel ? held.x : x),
      data: {
        by: held.by,
        atNut: held.atNut,
        ballast: held.ballast ?? 0,
        levelAt: held.levelAt,
      },
    })
    return found
  },
  words({ measured, grade, data }, say) {
    const by = data?.by === 'the strap' ? 'the front strap button' : 'the leg'
    if (grade === 'clear') return `It balances ${say.length(measured ?? 0)} behind ${by}: the head stays up.`
    const ballast = Number(data?.ballast)
    const level = Number(data?.levelAt)
    const move = `${data?.by === 'the strap' ? 'the button' : 'the leg'} ${say.length(Math.abs(level))} ${level < 0 ? 'before' : 'behind'} the neck-end face`
    return `It balances ${say.length(-(measured ?? 0))} on the neck’s side of ${by}: the head goes down, and the hand bears ${say.pull(Number(data?.atNut))} at the nut. ${
      ballast > 0 ? `Cured by ${Math.ceil(ballast)} g where the ballast lies, or by` : 'Cured by'
    } ${move}.`
  },
}
