/** The head of a starting design: a post for every string, none of them pulled far sideways at the nut. */
import { LIMITS } from './limits.ts'
import type { Rounding } from './rounding.ts'

/** From the edge of the head to each post, as the plates of ordinary single machines want it. */
const POST_EDGE = 9
const SPACING = 32
const FIRST_POST = 45
/** Wood behind the last post. */
const BEHIND_POSTS = 25
/** A degree and a half under the limit. */
const SIDE_ANGLE = ((LIMITS.sideAngleAtNut.value - 1.5) * Math.PI) / 180

/**
 * Posts in two rows, bass first; the outer strings take the nearest. Lengths in mm.
 * Common practice, no source. Example: three strings get two posts on the bass side and one on the treble side.
 */
export function startingHead(count: number, spanAtNut: number, width: number, rounded: Rounding) {
  const postEdge = rounded.near(Math.min(POST_EDGE, width / 2))
  const y = Math.max(0, width / 2 - postEdge)
  const bassTuners = Math.ceil(count / 2)
  const trebleTuners = count - bassTuners
  // Where the rows are too near each other to stand side by side, one stands half a step behind.
  const stepsBeside = LIMITS.postsApart.value + 1
  const narrow = trebleTuners > 0 && 2 * y < stepsBeside
  const postSpacing =
    narrow && 2 * y < Math.sqrt(stepsBeside ** 2 - (SPACING / 2) ** 2) ? 2 * stepsBeside : rounded.up(SPACING)
  const stagger = narrow ? postSpacing / 2 : 0
  const between = count > 1 ? spanAtNut / (count - 1) : 0
  let firstPost = FIRST_POST
  for (let row = 0; row < bassTuners; row++) {
    const sideways = Math.abs(spanAtNut / 2 - row * between - y)
    firstPost = Math.max(firstPost, sideways / Math.tan(SIDE_ANGLE) - row * postSpacing)
  }
  firstPost = Math.min(300, rounded.up(firstPost))
  const lastPost =
    firstPost + Math.max((bassTuners - 1) * postSpacing, stagger + (trebleTuners - 1) * postSpacing)
  return {
    length: Math.min(400, rounded.up(lastPost + BEHIND_POSTS)),
    width,
    bassTuners,
    trebleTuners,
    firstPost,
    postSpacing,
    stagger,
    postEdge,
  }
}
