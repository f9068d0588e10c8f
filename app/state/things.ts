/** Things come and go: each is one entry of history. The answer is the id of what is new, or `null` where nothing is. */
import {
  change,
  checkDesign,
  type Design,
  type Face,
  kindOf,
  type Path,
  type Placed,
  type Point,
  placedCalled,
  setWithCompanions,
  solve,
  type Thing,
} from '../../geometry/index.ts'
import { useBench } from './bench.ts'
import { commit, enter, type Outcome, settledBench } from './commit.ts'
import {
  followed,
  freeName,
  idPathIndex,
  indexOf,
  measuresOf,
  placesOf,
  renamed,
  unsoldered,
} from './relations.ts'
import { roomFor } from './room.ts'

/** Two things nearer than this to the same spot are one on top of the other; millimetres. */
const SAME_SPOT = 0.01

/**
 * Adds a thing of a kind where its face has most room, and selects it. The face is the kind's usual one where it is
 * left out. `null` where the face cannot carry it or the list is full. Throws for a kind that does not exist.
 * Example: `addThing('sound-hole', 'base')` is `'sound-hole'`.
 */
export function addThing(kindName: string, face?: Face): string | null {
  const kind = kindOf(kindName)
  const on = face ?? kind.faces[0]
  const design = settledBench()
  const id = freeName(kindName, design)
  const plain = standardThing(kindName, id, on)
  if (!plain) return null
  const spot = roomFor(solve(design), kindName, on, kind.size(plain))
  return put(
    design,
    { ...plain, ...measuresOf({ face: on, at: spot }) },
    `Add the ${kind.title.toLowerCase()}`,
  )
}

/** Gives a thing typical sizes, all in one step of history. Nothing happens where there is no such thing. */
export function takeSizes(id: string, sizes: Readonly<Record<string, unknown>>, title: string): void {
  const design = settledBench()
  const index = indexOf(design, id)
  if (index === null) return
  const fields = Object.entries(sizes).map(([name, value]): [Path, unknown] => [
    ['things', index, name],
    value,
  ])
  commit(`Sizes of ${title}`, change(design, ...fields))
}

/**
 * Takes a thing away. Places that follow it become measures, so that nothing else moves; findings overruled for it
 * and measures taken from it are forgotten with it, and what is soldered to it goes with its wires. Nothing happens where there is no such thing.
 */
export const removeThing = (id: string): void => removeThings([id])

/** The same for several, as one entry of history. */
export function removeThings(ids: readonly string[]): void {
  const design = settledBench()
  const going = new Set(ids)
  const indexes = design.things.flatMap((thing, index) => (going.has(thing.id) ? [index] : []))
  const first = design.things[indexes[0] ?? -1]
  if (!first) return
  const layout = solve(design)
  const standing = new Map(layout.placed.map((one) => [one.thing.id, measuresOf(one)]))
  const places = placesOf(design)
    .filter(({ of, place }) => !going.has(of) && followed(place).some((name) => going.has(name)))
    .map(({ path, of }): [Path, unknown] => {
      const measure =
        path[0] === 'saddle' ? layout.saddle.along : standing.get(of)?.[path[2] as 'along' | 'across']
      return [path, measure]
    })
  const forgotten = Object.keys(design.overruled)
    .filter((key) =>
      key
        .split(' ')
        .slice(1)
        .some((name) => going.has(name)),
    )
    .map((key): [Path, unknown] => [['overruled', key], undefined])
  const measured = design.measures.flatMap(({ from, to }, index): [Path, unknown][] =>
    going.has(from.of) || going.has(to.of) ? [[['measures', index], undefined]] : [],
  )
  // The lists last and from their ends: what stands before goes by index.
  const removals = indexes.map((index): [Path, unknown] => [['things', index], undefined])
  const label = indexes.length === 1 ? `Remove ${titleOf(first)}` : `Remove ${indexes.length} things`
  const soldered = unsoldered(design, going)
  commit(
    label,
    change(design, ...places, ...forgotten, ...measured.reverse(), ...soldered, ...removals.reverse()),
  )
}

/** Puts a copy beside a thing, on whichever side there is more of the face, and selects it. */
export function duplicateThing(id: string): string | null {
  const design = settledBench()
  const placed = placedBy(design, id)
  if (!placed) return null
  const { minX, maxX } = solve(design).panels[placed.face].bounds
  const width = placed.bounds.maxX - placed.bounds.minX
  const towardsTail = maxX - placed.bounds.maxX >= placed.bounds.minX - minX
  const beside = placed.at.x + (towardsTail ? 1 : -1) * Math.ceil(width * 1.5)
  const at = { x: Math.max(minX + width / 2, Math.min(beside, maxX - width / 2)), y: placed.at.y }
  const copy = {
    ...placed.thing,
    id: freeName(placed.thing.kind, design),
    along: measuresOf({ ...placed, at }).along,
  }
  return put(design, copy, `Duplicate ${titleOf(placed.thing)}`)
}

/**
 * Adds a partner that follows a thing on the other side of the centreline, or on the opposite wall, and selects it.
 * `null` where the partner would stand on the thing itself or on one that is there already.
 */
export function mirrorThing(id: string): string | null {
  const design = settledBench()
  const placed = placedBy(design, id)
  if (!placed) return null
  const { thing } = placed
  const { face, at } = mirrorOf(placed)
  const inTheWay = solve(design).placed.some(
    (one) => one.face === face && Math.hypot(one.at.x - at.x, one.at.y - at.y) < SAME_SPOT,
  )
  if (inTheWay) return null
  const onEndWall = face === 'neck-end-wall' || face === 'tail-end-wall'
  const partner = {
    ...thing,
    id: freeName(thing.kind, design),
    face,
    // Along an end wall is across the box, and no place follows with its sign turned.
    along: onEndWall ? measuresOf({ face, at }).along : { mirror: id },
    across: { mirror: id },
    turnDegrees: -thing.turnDegrees + 0,
    ...(kindOf(thing.kind).handed ? { flipped: !(thing as { flipped?: boolean }).flipped } : {}),
  } as Thing
  return put(design, partner, `Mirror ${titleOf(thing)}`)
}

/**
 * Sets one field. The sentence says what is wrong where the value does not do. A thing that gets another id takes
 * along what points at it; a size or turn is set on all companions that had the same.
 * Example: `setField(['box', 'length'], 250, 'Length')`.
 */
export function setField(path: Path, value: unknown, label: string): Outcome {
  const design = settledBench()
  const index = idPathIndex(design, path)
  const from = index === null ? undefined : design.things[index]?.id
  if (from === undefined || typeof value !== 'string' || value === from)
    return commit(label, change(design, ...withCompanions(design, path, value)))
  // Judged alone first, so that the fault told is that of the id and not of a place that follows it.
  const alone = checkDesign({
    ...design,
    things: design.things.map((one, at) => (at === index ? { ...one, id: value } : one)),
  })
  if (!alone.ok) return { ok: false, sentence: alone.faults[0]?.sentence ?? 'This id will not do.' }
  const selecting = useBench.getState().selection === from ? { selecting: value } : {}
  return enter(label, change(design, [path, value], ...renamed(design, from, value)), selecting)
}

/** A size or a turn of one of a pair or a row is that of all that had the same. */
function withCompanions(design: Design, path: Path, value: unknown): (readonly [Path, unknown])[] {
  const [list, index, name] = path
  return path.length === 3 && list === 'things' && typeof index === 'number' && typeof name === 'string'
    ? setWithCompanions(design, index, name, value)
    : [[path, value]]
}

function put(design: Design, thing: Thing, label: string): string | null {
  const outcome = enter(label, change(design, [['things', design.things.length], thing]), {
    selecting: thing.id,
  })
  return outcome.ok ? thing.id : null
}

function standardThing(kind: string, id: string, face: Face): Thing | null {
  const reading = checkDesign({ format: 'lidwright', version: 1, things: [{ kind, id, face }] })
  return reading.ok ? (reading.design.things[0] ?? null) : null
}

function placedBy(design: Design, id: string): Placed | undefined {
  return placedCalled(solve(design), id)
}

function mirrorOf({ face, at }: Placed): { face: Face; at: Point } {
  if (face === 'bass-wall') return { face: 'treble-wall', at }
  if (face === 'treble-wall') return { face: 'bass-wall', at }
  if (face === 'lid' || face === 'base') return { face, at: { x: at.x, y: -at.y } }
  return { face, at: { x: -at.x, y: at.y } }
}

const titleOf = (thing: Thing): string => thing.name || `the ${kindOf(thing.kind).title.toLowerCase()}`
