/** What must not matter to what is found, and what a mirror must do: each law as a question put to a design. */
import {
  type Across,
  type Along,
  type Contour,
  check,
  type Design,
  type Finding,
  mirrorPart,
  type Part,
  type Point,
  partsOf,
  solve,
  type Thing,
} from '../../geometry/index.ts'
import { designOf } from '../support/designs.ts'
import { walk } from '../support/walk.ts'
import type { Law, Wrong } from './engine-laws.ts'

export const WHAT_MUST_NOT_MATTER: readonly Law[] = [
  { name: 'the order of things', wrong: order },
  { name: 'the names of things', wrong: names },
  { name: 'the hand, to any measure', wrong: hand },
  { name: 'the unit, to any number', wrong: unit },
]

export const WHAT_A_MIRROR_DOES: readonly Law[] = [
  { name: 'says that it is one, and twice gives the part back', wrong: mirroredTwice },
  { name: 'keeps the head where the sheet says it lies', wrong: headKeepsItsEnd },
]

function order(design: Design): string[] {
  const turned = { ...design, things: [...design.things].reverse() }
  const rotated = { ...design, things: [...design.things.slice(1), ...design.things.slice(0, 1)] }
  const before = check(solve(design))
  return [turned, rotated].flatMap((one) => differences(before, check(solve(one))))
}

function names(design: Design): string[] {
  const names = new Map(
    design.things.map(({ id }, index) => [id as string, `z${design.things.length - index}-${index}`]),
  )
  const { things, wiring } = design
  const components = wiring.components.map((one) => ({ ...one, thing: names.get(one.thing) ?? one.thing }))
  const renamed = {
    ...design,
    things: things.map((thing) => withNames(thing, names)),
    wiring: { ...wiring, components },
  }
  return differences(check(solve(design)), check(solve(designOf(renamed))))
}

function hand(design: Design): string[] {
  return differences(check(solve({ ...design, hand: 'right' })), check(solve({ ...design, hand: 'left' })))
}

function unit(design: Design): string[] {
  // How finely the rule reads follows the unit where nothing is said of it, so it is said.
  const [metric, inches] = (['mm', 'inches'] as const).map((display) =>
    solve({ ...design, rule: { graduation: 1 }, units: { display, fraction: 64 } }),
  )
  if (!metric || !inches) return ['no layout']
  const same = JSON.stringify(check(metric)) === JSON.stringify(check(inches))
  const parts = JSON.stringify(partsOf(metric)) === JSON.stringify(partsOf(inches))
  return same && parts ? [] : ['findings or parts hang on the unit']
}

function mirroredTwice(design: Design): string[] {
  return partsOf(solve(design)).flatMap((part) => {
    const once = mirrorPart(part)
    const twice = mirrorPart(once)
    const said = once.mirrored !== part.mirrored && twice.mirrored === part.mirrored
    return said && near(numbers(twice), numbers(part)) ? [] : [`${part.id} is not itself again`]
  })
}

function headKeepsItsEnd(design: Design): string[] {
  return partsOf(solve(design)).flatMap((part) => {
    const once = mirrorPart(part)
    // Left or right, the way along the neck must stay; at the top, the way down the strip.
    const axis = part.headEnd === 'left' || part.headEnd === 'right' ? 'x' : 'y'
    const [before, after] = [part, once].map((one) => extent(one.outline, axis))
    return once.headEnd === part.headEnd && before && after && near(before, after)
      ? []
      : [`${part.id} turned round`]
  })
}

/** Parts that both hands have, and the axis along which one is turned over to be the other. */
export const MIRRORED = [
  ['lid', 'y'],
  ['base', 'y'],
  ['neck-end-wall', 'x'],
  ['tail-end-wall', 'x'],
  ['bass-wall', 'x'],
  ['treble-wall', 'x'],
  ['neck-top', 'y'],
  ['board', 'y'],
  ['tail-strip', 'x'],
] as const

type Both = readonly [right: readonly Part[], left: readonly Part[]]

const built = new WeakMap<Design, Both>()

/** The parts of a design built for either hand; each part is asked for by a law of its own. */
function bothHands(design: Design): Both {
  const known = built.get(design)
  if (known) return known
  const both: Both = [
    partsOf(solve({ ...design, hand: 'right' })),
    partsOf(solve({ ...design, hand: 'left' })),
  ]
  built.set(design, both)
  return both
}

/** Is this part of a left-handed build the mirror image of that of a right-handed one? */
export function mirrorsTheOther(id: string, axis: 'x' | 'y'): Wrong {
  return (design) => {
    const [right, left] = bothHands(design).map((parts) => parts.find((one) => one.id === id))
    if (!right || !left) return right === left ? [] : [`only one hand has a ${id}`]
    if (left.hand !== 'left' || right.hand !== 'right' || left.mirrored || right.mirrored)
      return ['the hand is not said']
    const wanted = sorted(cutsOf(right).map((one) => turnedOver(one, axis)))
    return near(wanted, sorted(cutsOf(left))) ? [] : [`the ${id} is not the mirror image`]
  }
}

/** How deep two outlines lie in each other is searched for to a thousandth of a millimetre, from either side. */
const SEARCHED = 0.002

const measures = (findings: readonly Finding[]) =>
  findings
    .map(({ rule, grade, measured }) => ({ rule, grade, measured: measured ?? 0 }))
    .sort((a, b) => (a.rule < b.rule ? -1 : a.rule > b.rule ? 1 : a.measured - b.measured))

/** How two lists of findings differ in rule, grade or measure; where each stands does not count. */
function differences(before: readonly Finding[], after: readonly Finding[]): string[] {
  const [one, other] = [measures(before), measures(after)]
  if (one.length !== other.length) return [`${one.length} findings and ${other.length}`]
  return one.flatMap((here, index) => {
    const there = other[index]
    const near =
      there &&
      Math.abs(here.measured - there.measured) <= (here.rule === 'between-openings' ? SEARCHED : 1e-9)
    return there && near && here.rule === there.rule && here.grade === there.grade
      ? []
      : [`${JSON.stringify(here)} became ${JSON.stringify(there)}`]
  })
}

/** A thing under its new name, and pointing at others by theirs. */
function withNames(thing: Thing, names: ReadonlyMap<string, string>): Thing {
  const put = (place: Along | Across): Along | Across => {
    if (typeof place === 'number') return place
    if ('from' in place) return { ...place, from: names.get(place.from) ?? place.from }
    if ('mirror' in place) return { mirror: names.get(place.mirror) ?? place.mirror }
    if (!('midway' in place)) return place
    const [a, b] = place.midway
    return { midway: [names.get(a) ?? a, names.get(b) ?? b] }
  }
  return {
    ...thing,
    id: names.get(thing.id) ?? thing.id,
    along: put(thing.along),
    across: put(thing.across),
  } as Thing
}

/** All numbers of a part, in order. */
function numbers(value: unknown): number[] {
  const found: number[] = []
  walk(value, (one) => typeof one === 'number' && found.push(one))
  return found
}

const near = (a: readonly number[], b: readonly number[]) =>
  a.length === b.length && a.every((one, index) => Math.abs(one - (b[index] ?? Number.NaN)) < 1e-9)

function extent(contour: Contour, axis: 'x' | 'y'): number[] {
  const points = contour.shape === 'circle' ? [contour.centre] : contour.vertices
  return [Math.min(...points.map((one) => one[axis])), Math.max(...points.map((one) => one[axis]))]
}

/** Every point that is cut, drilled or drawn, words aside: they are never mirrored. */
function cutsOf(part: Part): Point[] {
  const points: Point[] = []
  walk([part.outline, part.operations.filter((one) => one.kind !== 'note')], (value) => {
    if (value !== null && typeof value === 'object' && 'x' in value && 'y' in value)
      points.push(value as Point)
  })
  return points
}

const turnedOver = ({ x, y }: Point, axis: 'x' | 'y'): Point => (axis === 'x' ? { x: -x, y } : { x, y: -y })

const sorted = (points: readonly Point[]): number[] =>
  points
    .map(({ x, y }) => ({ x: Math.round(x * 1e6) / 1e6 + 0, y: Math.round(y * 1e6) / 1e6 + 0 }))
    .sort((a, b) => a.x - b.x || a.y - b.y)
    .flatMap(({ x, y }) => [x, y])
