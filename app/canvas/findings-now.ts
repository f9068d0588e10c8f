/**
 * Findings for the drawing. At rest all of them; while things are dragged only what moves is measured anew, among
 * what is near it, and the rest is as it was when the drag began: no frame waits for thousands of things that stand still.
 */
import {
  type Bounds,
  check,
  type Finding,
  findingsAbout,
  type Layout,
  limitOf,
  notes,
  type Placed,
} from '../../geometry/index.ts'
import { among, sizeOf } from './among.ts'
import { dragging } from './dragging.ts'

/** Up to so many things a full check is as quick. */
const FEW = 24
/** Rules between two things look this many times as far as they ask for. */
const LOOK_AROUND = 2
/** What they ask for, besides the size of the larger of the two. */
const BETWEEN_THINGS = ['betweenOpenings', 'screwToOpening', 'coversApart', 'partsApart'] as const

export interface FindingsNow {
  /** About what moves; all of them where nothing does. */
  readonly news: readonly Finding[]
  /** About what stands still while something moves: the very same list in every frame of a drag. */
  readonly standing: readonly Finding[]
}

const known = notes<Layout, FindingsNow>()
const NONE: readonly Finding[] = []

export function findingsNow(layout: Layout): FindingsNow {
  const moving = dragging.moving()
  const start = dragging.start()
  if (!start || moving.size === 0 || layout.placed.length <= FEW)
    return { news: check(layout), standing: NONE }
  const before = known.get(layout)
  if (before) return before
  const isMoving = (name: string) => moving.has(name)
  const news = findingsAbout({ ...layout, placed: around(layout, start, moving) }, isMoving)
  const now = { news, standing: standingIn(start, moving) }
  known.set(layout, now)
  return now
}

const standing = notes<
  Layout,
  { readonly moving: ReadonlySet<string>; readonly findings: readonly Finding[] }
>()

/** What the layout a drag began from says of all that does not move. */
function standingIn(start: Layout, moving: ReadonlySet<string>): readonly Finding[] {
  const before = standing.get(start)
  if (before?.moving === moving) return before.findings
  const findings = check(start).filter((one) => !one.about.some((name) => moving.has(name)))
  standing.set(start, { moving, findings })
  return findings
}

/** What moves, and what is near enough to have to do with it. */
function around(layout: Layout, start: Layout, moving: ReadonlySet<string>): readonly Placed[] {
  const limit = limitOf(layout.design)
  const asked = Math.max(...BETWEEN_THINGS.map(limit))
  const isNear = (mover: Placed, one: Placed) =>
    // What hangs behind two faces may meet inside, wherever on them it stands.
    mover.face !== one.face
      ? mover.kind.bodies !== undefined && one.kind.bodies !== undefined
      : gap(mover.bounds, one.bounds) < LOOK_AROUND * Math.max(asked, sizeOf(mover), sizeOf(one))
  const them = among(layout, start)
  if (!them) return layout.placed
  const found = new Set<Placed>()
  for (const mover of them.withIds(moving)) {
    found.add(mover)
    const size = Math.max(asked, sizeOf(mover))
    for (const one of them.near(mover.bounds, LOOK_AROUND * size)) if (isNear(mover, one)) found.add(one)
    for (const one of them.larger(size)) if (isNear(mover, one)) found.add(one)
    if (mover.kind.bodies) for (const one of them.bodied()) if (isNear(mover, one)) found.add(one)
  }
  return them.inOrder(found)
}

const gap = (a: Bounds, b: Bounds) =>
  Math.max(a.minX - b.maxX, b.minX - a.maxX, a.minY - b.maxY, b.minY - a.maxY)
