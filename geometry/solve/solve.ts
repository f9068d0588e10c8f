/** From what the builder states to everything that follows. Pure: the same design gives the same layout. */

import { boxAt, lidInset, lidLength, outlinesFor, panelsOf } from '../box/box.ts'
import { graduationOf, type RealBox, realBoxOf } from '../box/real-box.ts'
import type { Design, Thing } from '../design/schema.ts'
import { FACES } from '../kinds/kind.ts'
import { kindOf } from '../kinds/kinds.ts'
import { windingAt } from '../neck/head-form.ts'
import { postsFor, postsOf } from '../neck/headstock.ts'
import { halfWidthAt, neckAt } from '../neck/neck.ts'
import { bounds, type Contour, move, type Point, turn } from '../plane/index.ts'
import { notes } from '../quantity/notes.ts'
import { othersThan, tellOthers } from '../quantity/steady.ts'
import { fretsOf } from '../scale/frets.ts'
import { gaugesFor, stringCentres } from '../strings/spacing.ts'
import { holesFor, tailRow } from '../strings/tail-row.ts'
import type { BoardLayout, BoxLayout, FretLine, Layout, NeckLayout, Placed, StringLine } from './layout.ts'
import { Places } from './places.ts'
import { planExtents, realSurroundings } from './real-surroundings.ts'

/** How far a board goes on behind a zero fret, towards the head. Common practice, no source. */
const BEHIND_ZERO_FRET = 6

const solved = notes<Design, Layout>()

/**
 * Everything derived: box, panels, frets, strings, neck, things in their places.
 * Remembered per design object, so asking twice costs nothing. Never throws for a valid design.
 * Example: `solve(design).frets[11].fromNut` is half the scale length for an octave fret.
 */
export function solve(design: Design): Layout {
  const known = solved.get(design)
  if (known) return known
  const layout = derive(design, null)
  solved.set(design, layout)
  return layout
}

/**
 * The same for a design that is asked about once: not remembered, and what hangs on head and strings alone is taken from
 * the layout of another with the same, if one is given. Example: one design with its saddle at nine places of the lid.
 */
export function solveOnce(design: Design, like: Layout | null): Layout {
  return derive(design, like && likeIn(design, like) ? like : null)
}

/** Sections that posts, spans and the row of holes hang on. The saddle's place and a board's length are not among it. */
const STRUNG = ['scale', 'strings', 'headstock', 'neck', 'nut', 'tailpiece', 'limits'] as const

function likeIn(design: Design, { design: other, saddle }: Layout): boolean {
  const { height, setback } = design.saddle
  return (
    STRUNG.every((section) => design[section] === other[section]) &&
    height === saddle.top &&
    setback === other.saddle.setback
  )
}

function derive(design: Design, like: Layout | null): Layout {
  const saddleX = design.scale.length + design.saddle.setback
  const frets = fretsOf(design.scale)
  const real = design.box.survey ? realOf(design) : null
  const unplaced = panelsOf(design.box, 0, real)
  const inset = lidInset(design.box, real)
  const places = new Places(design, {
    panels: real ? planExtents(design, real, unplaced) : unplaced,
    ...(real ? realSurroundings(design, real) : rectangularSurroundings(design, inset)),
    offsetAlong: { lid: 0, base: unplaced.base.originX - unplaced.lid.originX },
    neckHalf: design.neck.width / 2,
    scale: design.scale.length,
  })
  const saddleAlong = places.saddle()
  const box = boxAt(design.box, saddleX - saddleAlong - inset, real)
  const panels = panelsOf(design.box, box.x0, real)
  const zeroFret = design.scale.start === 'zero fret'
  const board = boardOf(design, frets.at(-1)?.fromNut ?? 0, zeroFret)
  const lidX = panels.lid.originX
  places.strike({ saddle: saddleAlong, boardEnd: (board ? board.x1 : box.x0) - lidX })
  const placed = placeAll(design.things, places, panels)
  const nutFront = zeroFret ? -BEHIND_ZERO_FRET : design.nut.setback
  const nutBack = nutFront - design.nut.thickness
  const neck = neckAt(design, box, placed, lidX, saddleX, nutBack, real)
  const playingTop = board ? board.top : neck.top
  const tailHoles = tailHolesOf(design, box, neck, lidX + lidLength(design.box, real), like)
  const posts =
    like?.posts ??
    postsOf(design.headstock, nutBack).map((post) => ({ ...post, winds: windingAt(design, nutBack, post.x) }))
  return {
    design,
    up: design.hand === 'left' ? -1 : 1,
    box,
    panels,
    frets: fretLines(frets, neck, box, board, design),
    zeroFret,
    strings:
      like && like.playingTop === playingTop
        ? like.strings.map((string) => heldAt(string, saddleX, tailHoles))
        : stringLines(design, saddleX, playingTop, tailHoles, posts),
    neck,
    board: board && { ...board, overLid: Math.max(0, board.x1 - box.x0) },
    playingTop,
    posts,
    nut: { x0: nutBack, x1: nutFront, bottom: neck.top, top: playingTop + design.nut.height },
    saddle: {
      x: saddleX,
      along: saddleAlong,
      top: design.saddle.height,
      foot: {
        minX: saddleX - design.saddle.thickness / 2,
        maxX: saddleX + design.saddle.thickness / 2,
        minY: -design.saddle.length / 2,
        maxY: design.saddle.length / 2,
      },
    },
    tailHoles,
    placed,
    problems: places.problems,
    real,
  }
}

const known = notes<RealBox, Layout['real']>()

/** The same object for the same box, so that what hangs on it is known by it. */
function realOf(design: Design): Layout['real'] {
  const real = realBoxOf(design.box, graduationOf(design))
  if (!real) return null
  const before = known.get(real)
  if (before) return before
  const outlined = { ...real, ...outlinesFor(design.box, real) }
  known.set(real, outlined)
  return outlined
}

function rectangularSurroundings({ box }: Design, inset: number) {
  const insideAlong: [number, number] = [box.walls.neckEnd - inset, box.length - box.walls.tailEnd - inset]
  const insideAcross: [number, number] = [-box.width / 2 + box.walls.bass, box.width / 2 - box.walls.treble]
  return { insideAlong, insideAcross }
}

function boardOf(design: Design, lastFret: number, zeroFret: boolean): Omit<BoardLayout, 'overLid'> | null {
  const { board, neck } = design
  if (!board.fitted) return null
  return {
    x0: zeroFret ? -BEHIND_ZERO_FRET : design.nut.setback,
    x1: board.ends === 'at a length' ? board.length : lastFret + board.beyond,
    bottom: neck.rise,
    top: neck.rise + board.thickness,
  }
}

function fretLines(
  frets: ReturnType<typeof fretsOf>,
  neck: NeckLayout,
  box: BoxLayout,
  board: Omit<BoardLayout, 'overLid'> | null,
  design: Design,
): FretLine[] {
  // Without a board the frets stand in the neck itself, as far as its top is not cut away for the lid.
  const bareEnd = neck.stretches.find((one) => one.of === 'notch' || one.of === 'relief')?.x0 ?? neck.x1
  const end = board ? board.x1 : bareEnd
  const lines =
    design.scale.start === 'zero fret' ? [{ number: 0, fromNut: 0, step: 0, cents: 0 }, ...frets] : frets
  return lines.map((fret) => {
    const half = halfWidthAt(neck, fret.fromNut)
    return {
      number: fret.number,
      fromNut: fret.fromNut,
      step: fret.step,
      cents: fret.cents,
      yBass: -half,
      yTreble: half,
      overBox: fret.fromNut > box.x0,
      onWood: fret.fromNut <= end,
    }
  })
}

function tailHolesOf(design: Design, box: BoxLayout, neck: NeckLayout, lidEnd: number, like: Layout | null) {
  const { tailpiece } = design
  const at = {
    'the tail of the neck': { x: box.x1 + tailpiece.fromEdge, z: neck.top },
    'the tail-end wall': { x: box.x1, z: box.wallTop - tailpiece.fromEdge },
    'the lid': { x: lidEnd - tailpiece.fromEdge, z: 0 },
  }[tailpiece.at]
  return like
    ? like.tailHoles.map(({ y }) => ({ x: at.x, z: at.z, y }))
    : tailRow(design).map((y) => ({ x: at.x, z: at.z, y }))
}

function stringLines(
  design: Design,
  saddleX: number,
  playingTop: number,
  tailHoles: Layout['tailHoles'],
  posts: Layout['posts'],
): StringLine[] {
  const { strings } = design
  const gauges = gaugesFor(strings.gauges, strings.count)
  const atNut = stringCentres(strings.count, strings.spanAtNut, strings.spacing, gauges)
  const atSaddle = stringCentres(strings.count, strings.spanAtSaddle, strings.spacing, gauges)
  const serving = holesFor(design, strings.count)
  const winding = postsFor(posts, strings.count)
  return gauges.map((gauge, index) => {
    const yAtNut = atNut[index] ?? 0
    const yAtSaddle = atSaddle[index] ?? 0
    const slope = Math.atan2(yAtSaddle - yAtNut, saddleX)
    const hole = serving[index]
    const post = winding[index] ?? null
    return {
      index,
      number: strings.count - index,
      gauge,
      yAtNut,
      yAtSaddle,
      zAtNut: playingTop + design.nut.height,
      zAtSaddle: design.saddle.height,
      ...endOf(hole, { yAtNut, yAtSaddle }, saddleX, tailHoles),
      post: post && { x: post.x, y: post.y, winds: post.winds },
      sideAngleAtNut: post ? Math.abs(Math.atan2(yAtNut - post.y, -post.x) - slope) : 0,
    }
  })
}

/** Where a string is held, and how far it turns on its way there. */
function endOf(
  hole: number | undefined,
  { yAtNut, yAtSaddle }: Pick<StringLine, 'yAtNut' | 'yAtSaddle'>,
  saddleX: number,
  tailHoles: Layout['tailHoles'],
): Pick<StringLine, 'tail' | 'sideAngleAtSaddle'> {
  const end = hole === undefined ? undefined : tailHoles[hole]
  if (hole === undefined || !end) return { tail: null, sideAngleAtSaddle: 0 }
  const turned = Math.atan2(end.y - yAtSaddle, Math.max(end.x - saddleX, 0))
  const slope = Math.atan2(yAtSaddle - yAtNut, saddleX)
  return {
    tail: { hole, x: end.x, y: end.y, z: end.z },
    sideAngleAtSaddle: Math.abs(turned - slope),
  }
}

/** The same string, held by the same hole where that has come to lie. */
const heldAt = (string: StringLine, saddleX: number, tailHoles: Layout['tailHoles']): StringLine => ({
  ...string,
  ...endOf(string.tail?.hole, string, saddleX, tailHoles),
})

/** Things where they stood in the layout solved last: among thousands nearly all stand there still. */
interface Stood {
  readonly things: Design['things']
  readonly placed: readonly Placed[]
  /** Numbers of those whose place is no measure: it hangs on others, and has to be asked again. */
  readonly hanging: readonly number[]
  readonly panels: Layout['panels']
}

let stood: Stood | null = null

function placeAll(things: Design['things'], places: Places, panels: Layout['panels']): Placed[] {
  const put = (thing: Thing) => place(thing, places.at(thing), panels[thing.face].thickness)
  const before = stood
  const asBefore =
    before !== null &&
    before.things.length === things.length &&
    FACES.every((face) => before.panels[face].thickness === panels[face].thickness)
  if (!asBefore) {
    const placed = things.map(put)
    stood = { things, placed, hanging: hangingOf(things), panels }
    return placed
  }
  const placed = before.placed.slice()
  const others = othersThan(things, before.things) ?? []
  let asMany = true
  for (const number of others) {
    const thing = things[number]!
    if (hangs(thing) || hangs(before.things[number]!)) asMany = false
    if (!hangs(thing)) placed[number] = put(thing)
  }
  const hanging = asMany ? before.hanging : hangingOf(things)
  for (const number of hanging) placed[number] = put(things[number]!)
  tellOthers(placed, before.placed, [...others, ...hanging])
  stood = { things, placed, hanging, panels }
  return placed
}

const hangs = ({ along, across }: Thing): boolean => typeof along !== 'number' || typeof across !== 'number'

const hangingOf = (things: Design['things']): number[] =>
  things.flatMap((thing, number) => (hangs(thing) ? number : []))

const standing = notes<Thing, { readonly placed: Placed; readonly thickness: number }>()

/** A thing where it stands. Remembered with the thing: while another is dragged, nothing of this one is made anew. */
function place(thing: Thing, at: Point, thickness: number): Placed {
  const before = standing.get(thing)
  if (before && before.thickness === thickness && before.placed.at.x === at.x && before.placed.at.y === at.y)
    return before.placed
  const kind = kindOf(thing.kind)
  const put = (contour: Contour) => {
    const turned = thing.turnDegrees === 0 ? contour : turn(contour, (thing.turnDegrees * Math.PI) / 180)
    return move(turned, at.x, at.y)
  }
  const footprint = put(kind.footprint(thing))
  const taken = kind.taken ? kind.taken(thing) : undefined
  const placed: Placed = {
    thing,
    kind,
    face: thing.face,
    at,
    openings: kind.openings(thing).map(put),
    footprint,
    taken: taken === undefined ? footprint : taken && put(taken),
    bounds: bounds(footprint),
    reach: kind.reach(thing, thickness),
  }
  standing.set(thing, { placed, thickness })
  return placed
}

/** Where a string runs across the neck at x, straight from nut to saddle. */
export const stringAt = (
  string: Pick<StringLine, 'yAtNut' | 'yAtSaddle'>,
  x: number,
  saddleX: number,
): number => string.yAtNut + ((string.yAtSaddle - string.yAtNut) * x) / saddleX
