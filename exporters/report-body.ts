/** The body of the instrument in the report: its air, its weight and how it balances. */
import { balanceOf, type Layout, soundOf } from '../geometry/index.ts'

/** The air in the box and its note; volumes in cubic millimetres. */
export function airOf(layout: Layout) {
  const { inside, mouths, blind, note, steps } = soundOf(layout)
  return {
    emptyVolume: inside.empty,
    volume: inside.air,
    taken: inside.taken.map(({ what, volume }) => ({ what, volume })),
    openings: mouths.map(({ of, area, thickness, conductance }) => ({ of, area, thickness, conductance })),
    blind: [...blind],
    note: note && { ...note },
    nextSizes: steps.map(({ way, sizes, note: then, cents }) => ({
      way,
      sizes: [...sizes],
      name: then.name,
      hertz: then.hertz,
      cents,
    })),
  }
}

/** Weight and balance; masses in grams. */
export function weightOf(layout: Layout) {
  const { mass, x, fromWall, held, pieces } = balanceOf(layout)
  return {
    total: mass,
    balancePoint: x,
    fromNeckEnd: fromWall,
    pieces: pieces.map(({ what, mass: its, x: at, from, wood }) => ({
      what,
      mass: its,
      fromNut: at,
      from,
      wood: wood ?? null,
    })),
    held: held && {
      by: held.by,
      fromNut: held.x,
      drops: held.drops,
      arm: held.arm,
      atNut: held.atNut,
      ballast: held.ballast,
      levelAt: held.levelAt,
    },
  }
}
