/**
 * Which way round a sheet shows a face, worked out in space and not in the plane. A finished instrument is looked
 * at from outside: what lies on the viewer's right is the direction of sight crossed with up. A left-handed build is
 * the mirror image of a right-handed one, so its treble side lies where the other's bass side is.
 */
import { describe, expect, test } from 'vitest'
import {
  type Drill,
  FACES,
  type Face,
  type Layout,
  type Part,
  partsOf,
  solve,
} from '../../../geometry/index.ts'
import { designOf, type Stated } from '../../support/designs.ts'

type Vector = readonly [x: number, y: number, z: number]
type Hand = 'right' | 'left'

const cross = ([a, b, c]: Vector, [d, e, f]: Vector): Vector => [b * f - c * e, c * d - a * f, a * e - b * d]
const dot = (a: Vector, b: Vector) => a[0] * b[0] + a[1] * b[1] + a[2] * b[2]
const less = (a: Vector, b: Vector): Vector => [a[0] - b[0], a[1] - b[1], a[2] - b[2]]
const minus = (a: Vector): Vector => less([0, 0, 0], a)

/** From nut to tail, and up out of the lid. */
const TAIL: Vector = [1, 0, 0]
const HEAD = minus(TAIL)
const UP: Vector = [0, 0, 1]

/** The sizes of the box, none like another, so that nothing agrees by chance. */
const BOX = {
  length: 300,
  width: 200,
  depth: 80,
  walls: { neckEnd: 5, tailEnd: 7, bass: 8, treble: 10 },
  lid: { thickness: 4 },
  base: { thickness: 3 },
}
const SADDLE = 220
const SCALE = 600
const X0 = SCALE - SADDLE

/** Where treble lies in space: to the viewer's left of a right-handed lid seen with the head up, so +y there. */
const side = (hand: Hand): Vector => (hand === 'right' ? [0, 1, 0] : [0, -1, 0])

/** The origin that the builder measures a face from, the directions he measures in, and the way out of the box. */
function faceInSpace(face: Face, hand: Hand): { origin: Vector; along: Vector; across: Vector; out: Vector } {
  const treble = side(hand)
  const at = (x: number, trebleward: number, z: number): Vector => [x, trebleward * treble[1], z]
  const middle = X0 + BOX.length / 2
  switch (face) {
    case 'lid':
      return { origin: at(X0, 0, 0), along: TAIL, across: treble, out: UP }
    case 'base':
      return { origin: at(X0, 0, -BOX.depth), along: TAIL, across: treble, out: minus(UP) }
    case 'neck-end-wall':
      return { origin: at(X0, 0, -4), along: treble, across: minus(UP), out: HEAD }
    case 'tail-end-wall':
      return { origin: at(X0 + BOX.length, 0, -4), along: treble, across: minus(UP), out: TAIL }
    case 'bass-wall':
      return { origin: at(middle, -BOX.width / 2, -4), along: TAIL, across: minus(UP), out: minus(treble) }
    case 'treble-wall':
      return { origin: at(middle, BOX.width / 2, -4), along: TAIL, across: minus(UP), out: treble }
  }
}

/** What a viewer outside sees of a face: his right, and his up. Walls stand lid up; lid and base lie head left. */
function viewer(face: Face, hand: Hand): { right: Vector; up: Vector; sight: Vector } {
  const sight = minus(faceInSpace(face, hand).out)
  if (face === 'lid' || face === 'base') return { right: TAIL, up: cross(TAIL, sight), sight }
  return { right: cross(sight, UP), up: UP, sight }
}

const part = (layout: Layout, id: string): Part => {
  const found = partsOf(layout).find((one) => one.id === id)
  if (!found) throw new Error(`there is no part ${id}`)
  return found
}
const drills = ({ operations }: Part): Drill[] => operations.filter((one) => one.kind === 'drill')

describe.each(['right', 'left'] as const)('a %s-handed build', (hand) => {
  const built = (stated: Stated) =>
    solve(designOf({ hand, box: BOX, scale: { length: SCALE }, saddle: { place: SADDLE }, ...stated }))

  test.each(FACES)('shows what is drilled in the %s where a viewer outside sees it', (face) => {
    const measured = { along: 31, across: 17 }
    const layout = built({ things: [{ kind: 'screw', id: 'it', name: 'it', face, head: 0, ...measured }] })
    const space = faceInSpace(face, hand)
    const eye = viewer(face, hand)
    const point: Vector = [0, 1, 2].map(
      (i) =>
        (space.origin[i] ?? 0) +
        measured.along * (space.along[i] ?? 0) +
        measured.across * (space.across[i] ?? 0),
    ) as unknown as Vector
    const seen = less(point, space.origin)
    const [hole] = drills(part(layout, face)).filter((one) => one.of === 'it')
    expect(hole?.centre.x).toBeCloseTo(dot(seen, eye.right), 9)
    expect(hole?.centre.y).toBeCloseTo(dot(seen, eye.up), 9)
  })

  test.each(FACES)('says where the head lies as the %s is seen', (face) => {
    const { right, sight } = viewer(face, hand)
    const { headEnd, seen, mirrored } = part(built({}), face)
    expect(seen).toBe('from outside')
    expect(mirrored).toBe(false)
    const sideways = dot(HEAD, right)
    const away = dot(HEAD, sight)
    if (sideways !== 0) expect(headEnd).toBe(sideways > 0 ? 'right' : 'left')
    else expect(headEnd).toBe(away > 0 ? 'away from the viewer' : 'towards the viewer')
  })

  test.each(['bass-wall', 'treble-wall'] as const)(
    'has the same outline for the %s from either side, hung from its lid edge',
    (face) => {
      const { outline } = part(built({}), face)
      if (outline.shape !== 'chain') throw new Error('a wall is no circle')
      const ys = outline.vertices.map((one) => one.y)
      expect([Math.min(...ys), Math.max(...ys)]).toEqual([-73, 0])
    },
  )

  test('shows the posts on the head as the player of the lid side sees them, head left', () => {
    const layout = built({
      headstock: { width: 50, postEdge: 10, firstPost: 40, bassTuners: 2, trebleTuners: 1 },
    })
    const treble = side(hand)
    const up = cross(TAIL, minus(UP))
    const posts = drills(part(layout, 'neck-top')).filter((one) => one.of === 'Tuner post')
    // Two on the bass side, 15 mm from the middle, one on the treble side.
    const wanted = [-15, -15, 15].map((trebleward) => trebleward * dot(treble, up))
    expect(posts.map((post) => post.centre.y)).toEqual(wanted)
    expect(posts.map((post) => post.centre.x)).toEqual([-40, -72, -40])
  })

  test('is seen from the side that is nearer the reader of the plan', () => {
    const { seen } = part(built({}), 'neck-side')
    // With the head left and the strings up, the reader below the plan looks along the plan's up.
    const sight = cross(TAIL, minus(UP))
    expect(dot(side(hand), sight) > 0).toBe(seen === 'from the bass side')
  })

  test.each(['the tail of the neck', 'the lid'] as const)(
    'has its drilling strip for %s head up, from the front',
    (at) => {
      const strip = part(built({ tailpiece: { at, fromEdge: 20 } }), 'tail-strip')
      expect(strip).toMatchObject({ headEnd: 'top', seen: 'from the playing side' })
      // The strip hooks on the edge at its zero line. Down the tail is away from the head; on the lid the holes lie
      // between that edge and the head.
      const ys = drills(strip).map((one) => one.centre.y)
      expect(ys).toEqual(ys.map(() => (at === 'the lid' ? 20 : -20)))
    },
  )

  test('has its drilling strip for the wall as the wall is seen from behind', () => {
    const layout = built({ tailpiece: { at: 'the tail-end wall', fromEdge: 20 } })
    const [strip, wall] = [part(layout, 'tail-strip'), part(layout, 'tail-end-wall')]
    expect(strip).toMatchObject({ headEnd: wall.headEnd, seen: wall.seen })
    const centres = (one: Part) => drills(one).map(({ centre }) => [centre.x, centre.y])
    expect(centres(strip)).toEqual(centres(wall))
  })
})
