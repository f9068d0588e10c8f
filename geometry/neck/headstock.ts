/** Posts on the head and the way each string takes to its own. */
import type { Design } from '../design/schema.ts'
import type { Point } from '../plane/index.ts'

export type Post = Point & { readonly side: 'bass' | 'treble' }

/** All posts, in the instrument frame, nearest the nut first, bass row before treble row. */
export function postsOf(headstock: Design['headstock']): Post[] {
  const y = headstock.width / 2 - headstock.postEdge
  const row = (side: 'bass' | 'treble', howMany: number, behind: number): Post[] =>
    Array.from({ length: howMany }, (_, index) => ({
      x: -(headstock.firstPost + behind + index * headstock.postSpacing),
      y: side === 'bass' ? -y : y,
      side,
    }))
  return [
    ...row('bass', headstock.bassTuners, 0),
    ...row('treble', headstock.trebleTuners, headstock.stagger),
  ]
}

/**
 * Which post each string winds on, bass string first: the outer strings take the nearest posts of their own side,
 * so that no string crosses another. Where one side has too few posts, strings go over to the other.
 */
export function postsFor(posts: readonly Post[], strings: number): (Post | null)[] {
  const nearestFirst = (side: Post['side']) =>
    posts.filter((post) => post.side === side).sort((a, b) => b.x - a.x)
  const bass = nearestFirst('bass')
  const treble = nearestFirst('treble')
  const byBass = Math.min(bass.length, Math.max(strings - treble.length, Math.ceil(strings / 2)))
  const answer: (Post | null)[] = Array.from({ length: strings }, () => null)
  for (let index = 0; index < strings; index++) {
    answer[index] = index < byBass ? (bass[index] ?? null) : (treble[strings - 1 - index] ?? null)
  }
  return answer
}
