/** The body of the instrument in the report: its air, its weight and how it balances. */
import { artworkOf, balanceOf, insidePiecesOf, type Layout, lidMotionOf, soundOf } from '../geometry/index.ts'

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

/** What stands in the box, in the instrument frame. */
export function insideOf(layout: Layout) {
  return insidePiecesOf(layout).map(({ piece, box }) => ({
    id: piece.id,
    name: piece.name,
    sort: piece.sort,
    fixed: piece.fixed,
    room: { ...box },
  }))
}

/** Pictures that are to stay whole, each in its face's own frame. */
export function keptOf(layout: Layout) {
  return artworkOf(layout).map(({ art, face, bounds }) => ({
    id: art.id,
    name: art.name,
    face,
    shape: art.shape,
    keep: art.keep,
    bounds: { ...bounds },
  }))
}

/** How a hinged or sliding lid opens; null for one that lifts off or is glued. */
export function openingOf(layout: Layout) {
  const motion = lidMotionOf(layout)
  if (!motion) return null
  if (motion.by === 'slide') {
    const { reached, wanted, stopped } = motion.slide
    return {
      by: motion.by,
      edge: motion.section.edge,
      angle: null,
      angleWanted: null,
      travel: reached,
      travelWanted: wanted,
      meets: stopped.map(({ moving, standing, bite, after }) => ({
        moving,
        standing,
        bite,
        room: 0,
        angle: null,
        after,
      })),
    }
  }
  const { reached, wanted, encounters } = motion.swing
  return {
    by: motion.by,
    edge: motion.section.edge,
    angle: reached,
    angleWanted: wanted,
    travel: null,
    travelWanted: null,
    meets: encounters.map(({ moving, standing, bite, room, angle }) => ({
      moving,
      standing,
      bite,
      room,
      angle,
      after: null,
    })),
  }
}
