/** Posts on the head and the way each string takes to its own. */
import type { Design } from '../design/schema.ts'
import type { Point } from '../plane/index.ts'
import { listOf } from '../quantity/list-of.ts'
import { onPlan } from './head-form.ts'

type Head = Design['headstock']

export type Post = Point & { readonly side: 'bass' | 'treble' }

/**
 * All posts as they stand on the plan, nearest the nut first, bass row before treble row; `nutBack` is where the head
 * begins, which only matters to one that is tilted.
 */
export function postsOf(headstock: Head, nutBack = 0): Post[] {
  const row = (side: 'bass' | 'treble', howMany: number, behind: number): Post[] =>
    listOf(howMany, (index) => {
      const y = headstock.width / 2 - headstock.postEdge - index * headstock.postStep
      return {
        x: onPlan(headstock, nutBack, headstock.firstPost + behind + index * headstock.postSpacing),
        y: side === 'bass' ? 0 - y : y,
        side,
      }
    })
  return [
    ...row('bass', headstock.bassTuners, 0),
    ...row('treble', headstock.trebleTuners, headstock.stagger),
  ]
}

/**
 * Which post each string winds on, bass string first: the outer strings take the nearest posts of their own side,
 * so that no string crosses another. Where one side has too few posts, strings go over to the other.
 */
export function postsFor<P extends Post>(posts: readonly P[], strings: number): (P | null)[] {
  const nearestFirst = (side: Post['side']) =>
    posts.filter((post) => post.side === side).sort((a, b) => b.x - a.x)
  const bass = nearestFirst('bass')
  const treble = nearestFirst('treble')
  const byBass = Math.min(bass.length, Math.max(strings - treble.length, Math.ceil(strings / 2)))
  const answer: (P | null)[] = listOf<P | null>(strings, () => null)
  for (let index = 0; index < strings; index++) {
    answer[index] = index < byBass ? (bass[index] ?? null) : (treble[strings - 1 - index] ?? null)
  }
  return answer
}

/** Least width left at the end of a head whose edges run together: keeps the outline one. */
const NARROWEST = 4

/** Where both edges would lie, however near they come. */
function edgesMeant(head: Head, along: number): { readonly bass: number; readonly treble: number } {
  const half = head.width / 2
  const inBy = (howMany: number, first: number) => {
    const last = first + (howMany - 1) * head.postSpacing
    return Math.max(0, Math.min(along, last) - first) * (head.postStep / head.postSpacing)
  }
  return {
    bass: -half + inBy(head.bassTuners, head.firstPost),
    treble: half - inBy(head.trebleTuners, head.firstPost + head.stagger),
  }
}

/**
 * The two edges of the head behind its shoulder, at a length along its face: each runs along its row of posts, so that a
 * tuner stands square to it. Before its first post and behind its last it runs straight. Plane geometry.
 */
export function headEdgesAt(head: Head, along: number): { readonly bass: number; readonly treble: number } {
  const edges = edgesMeant(head, along)
  if (edges.treble - edges.bass >= NARROWEST) return edges
  // An edge that runs straight stays where it is.
  if (head.trebleTuners === 0) return { ...edges, bass: edges.treble - NARROWEST }
  if (head.bassTuners === 0) return { ...edges, treble: edges.bass + NARROWEST }
  const middle = (edges.bass + edges.treble) / 2
  return { bass: middle - NARROWEST / 2, treble: middle + NARROWEST / 2 }
}

/** Lengths along the face where an edge of the head takes another direction. None where both run straight. */
export function headCorners(head: Head): number[] {
  if (head.postStep === 0) return []
  const row = (howMany: number, first: number) =>
    howMany > 1 ? [first, first + (howMany - 1) * head.postSpacing] : []
  const corners = [
    ...row(head.bassTuners, head.firstPost),
    ...row(head.trebleTuners, head.firstPost + head.stagger),
  ]
  const wide = (along: number) => {
    const { bass, treble } = edgesMeant(head, along)
    return treble - bass
  }
  // Edges that run together stop doing so where they have come as near as they may; between corners both run straight.
  const stops = [...new Set([0, ...corners, head.length])].sort((a, b) => a - b)
  for (const [index, to] of stops.entries()) {
    const from = stops[index - 1]
    if (from === undefined) continue
    const [near, far] = [wide(from), wide(to)]
    if ((near - NARROWEST) * (far - NARROWEST) < 0)
      corners.push(from + ((near - NARROWEST) / (near - far)) * (to - from))
  }
  return [...new Set(corners)].filter((along) => along < head.length).sort((a, b) => a - b)
}
