/**
 * From stated places to measures: follows shares, midways, shares of the scale and mirrored partners.
 *
 * A relation that cannot be followed (a partner that is gone, two things that wait for each other) does not throw:
 * the thing stands in the middle of its face and the problem is told.
 */
import type { Across, Along } from '../design/place.ts'
import type { Design, Thing } from '../design/schema.ts'
import type { Face } from '../kinds/kind.ts'
import type { Bounds, Point } from '../plane/index.ts'
import type { PlaceProblem } from './layout.ts'

/** What a place on a plan face can refer to, in that face's frame. `null`: not known before the saddle is placed. */
export interface Surroundings {
  readonly panels: Readonly<Record<Face, { readonly bounds: Bounds }>>
  /** Origin of lid and base along the neck, relative to the lid's. */
  readonly offsetAlong: Readonly<Partial<Record<Face, number>>>
  readonly insideAlong: readonly [number, number]
  readonly insideAcross: readonly [number, number]
  /** Bass and treble side, or wall, at a place along a face of a surveyed box, whose sides are not parallel. */
  readonly sidesAt?: (of: 'edge' | 'wall', face: Face, along: number) => readonly [number, number]
  readonly neckHalf: number
  readonly scale: number
}

/** Lines that exist only once the saddle is placed, along the lid. */
export interface Struck {
  readonly saddle: number
  readonly boardEnd: number
}

class Unfollowed extends Error {}

/** Partners followed one after another. Nobody needs more, and each takes its share of the program's stack. */
const LONGEST_CHAIN = 100

const isPlan = (face: Face) => face === 'lid' || face === 'base'

/** Answers for one design; made anew for each solve. */
export class Places {
  readonly problems: PlaceProblem[] = []
  private struck: Struck | null = null
  private byId: Map<string, Thing> | null = null
  private readonly known = new Map<string, number>()
  private readonly waiting = new Set<string>()
  private readonly givenUp = new Map<string, Unfollowed>()

  constructor(
    private readonly design: Design,
    private readonly around: Surroundings,
  ) {}

  /** Where the saddle stands, from the lid's neck-end edge; asked first, everything else may hang on it. */
  saddle(): number {
    return this.told('saddle', 'along', this.around.panels.lid.bounds.maxX * 0.7, () =>
      this.along(this.design.saddle.place, 'lid', 'the saddle'),
    )
  }

  /** Makes the lines that hang on the saddle known. */
  strike(struck: Struck): void {
    this.struck = struck
    this.known.clear()
    this.givenUp.clear()
  }

  /** The centre of a thing in its panel's frame. */
  at(thing: Thing): Point {
    const { along, across } = thing
    const stated = typeof across === 'number' ? this.acrossOf(thing) : null
    if (typeof along === 'number' && stated !== null) return { x: along, y: stated }
    const { minX, maxX, minY, maxY } = this.around.panels[thing.face].bounds
    return {
      x:
        typeof along === 'number'
          ? along
          : this.told(thing.id, 'along', (minX + maxX) / 2, () => this.alongOf(thing)),
      y: stated ?? this.told(thing.id, 'across', (minY + maxY) / 2, () => this.acrossOf(thing)),
    }
  }

  private told(of: string, axis: PlaceProblem['axis'], fallback: number, ask: () => number): number {
    try {
      return ask()
    } catch (error) {
      if (!(error instanceof Unfollowed)) throw error
      this.waiting.clear()
      this.problems.push({ of, axis, sentence: error.message })
      return fallback
    }
  }

  private alongOf(thing: Thing): number {
    return typeof thing.along === 'number'
      ? thing.along
      : this.once(`along ${thing.id}`, thing.id, () => this.along(thing.along, thing.face, `"${thing.id}"`))
  }

  /** Where a thing on lid or base lies in the frame of the other. */
  private alongOn(face: Face, thing: Thing): number {
    const { offsetAlong } = this.around
    return this.alongOf(thing) + (offsetAlong[thing.face] ?? 0) - (offsetAlong[face] ?? 0)
  }

  private acrossOf(thing: Thing): number {
    const { across } = thing
    if (typeof across === 'number') return isPlan(thing.face) ? across : -across
    return this.once(`across ${thing.id}`, thing.id, () => this.across(across, thing))
  }

  private once(key: string, id: string, ask: () => number): number {
    const known = this.known.get(key)
    if (known !== undefined) return known
    if (this.waiting.has(key))
      throw new Unfollowed(
        `The place of "${id}" hangs on itself, by way of its partners. Give one of them a measure.`,
      )
    const given = this.givenUp.get(key)
    if (given) throw given
    if (this.waiting.size >= LONGEST_CHAIN) throw this.giveUp(id)
    this.waiting.add(key)
    const value = ask()
    this.waiting.delete(key)
    this.known.set(key, value)
    return value
  }

  /** All in a chain that is too long are given up at once: a file of nothing else must not cost minutes. */
  private giveUp(id: string): Unfollowed {
    const error = new Unfollowed(
      `The place of "${id}" comes after ${LONGEST_CHAIN} partners that follow each other. Give it a measure.`,
    )
    for (const key of this.waiting) this.givenUp.set(key, error)
    return error
  }

  private along(place: Along, face: Face, who: string): number {
    if (typeof place === 'number') return place
    const { minX, maxX } = this.around.panels[face].bounds
    if ('share' in place) return minX + place.share * (maxX - minX)
    if ('ofScale' in place)
      return this.toFace(this.lines(who).saddle - place.ofScale * this.around.scale, face, who)
    if ('mirror' in place) return this.partner(place.mirror, face, who, (thing) => this.alongOn(face, thing))
    if ('from' in place)
      return this.partner(place.from, face, who, (thing) => this.alongOn(face, thing)) + place.by
    const [a, b] = place.midway
    return (this.alongLine(a, face, who) + this.alongLine(b, face, who)) / 2
  }

  private across(place: Exclude<Across, number>, thing: Thing): number {
    const { face } = thing
    const who = `"${thing.id}"`
    const [minY, maxY] = this.sides('edge', thing)
    if ('share' in place) {
      if (!isPlan(face)) return -place.share * (maxY - minY)
      return place.share >= 0 ? place.share * maxY : -place.share * minY
    }
    if ('mirror' in place)
      return this.partner(place.mirror, face, who, (thing) =>
        isPlan(face) ? -this.acrossOf(thing) : this.acrossOf(thing),
      )
    // On a wall measures count down from the lid side, and the frame's y runs up.
    if ('from' in place)
      return (
        this.partner(place.from, face, who, (thing) => this.acrossOf(thing)) +
        (isPlan(face) ? place.by : -place.by)
      )
    const [a, b] = place.midway
    return (this.acrossLine(a, thing, who) + this.acrossLine(b, thing, who)) / 2
  }

  /** Edges of the face, or inner faces of the walls, where the thing stands along it. */
  private sides(of: 'edge' | 'wall', thing: Thing): readonly [number, number] {
    const { panels, sidesAt, insideAcross } = this.around
    if (sidesAt && isPlan(thing.face)) return sidesAt(of, thing.face, this.alongOf(thing))
    const { minY, maxY } = panels[thing.face].bounds
    return of === 'edge' ? [minY, maxY] : insideAcross
  }

  private alongLine(line: string, face: Face, who: string): number {
    const { minX, maxX } = this.around.panels[face].bounds
    switch (line) {
      case 'neck-end edge':
        return minX
      case 'tail-end edge':
        return maxX
      case 'neck-end wall':
        return this.toFace(this.around.insideAlong[0], face, who)
      case 'tail-end wall':
        return this.toFace(this.around.insideAlong[1], face, who)
      case 'saddle':
        return this.toFace(this.lines(who).saddle, face, who)
      case 'board end':
        return this.toFace(this.lines(who).boardEnd, face, who)
      default:
        return this.partner(line, face, who, (thing) => this.alongOn(face, thing))
    }
  }

  private acrossLine(line: string, thing: Thing, who: string): number {
    const { face } = thing
    const [minY, maxY] = this.sides('edge', thing)
    if (!isPlan(face)) {
      if (line === 'bass edge' || line === 'treble edge' || line.includes(' '))
        throw new Unfollowed(`The place of ${who} names "${line}", which a wall does not have.`)
    }
    switch (line) {
      case 'centreline':
        return isPlan(face) ? 0 : (minY + maxY) / 2
      case 'bass edge':
        return minY
      case 'treble edge':
        return maxY
      case 'bass wall':
        return this.sides('wall', thing)[0]
      case 'treble wall':
        return this.sides('wall', thing)[1]
      case 'neck bass side':
        return -this.around.neckHalf
      case 'neck treble side':
        return this.around.neckHalf
      default:
        return this.partner(line, face, who, (thing) => this.acrossOf(thing))
    }
  }

  private lines(who: string): Struck {
    if (!this.struck)
      throw new Unfollowed(
        `The place of ${who} hangs on a line that itself hangs on the saddle. Give it a measure or a share.`,
      )
    return this.struck
  }

  /** Lid and base share an axis but not always an origin. */
  private toFace(lidAlong: number, face: Face, who: string): number {
    const offset = this.around.offsetAlong[face]
    if (offset === undefined)
      throw new Unfollowed(`The place of ${who} names a line that this wall does not have.`)
    return lidAlong - offset
  }

  private partner(id: string, face: Face, who: string, ask: (thing: Thing) => number): number {
    // Nothing is looked up where every place is a measure.
    this.byId ??= new Map(this.design.things.map((one) => [one.id, one]))
    const thing = this.byId.get(id)
    if (!thing)
      throw new Unfollowed(
        `The place of ${who} follows "${id}", and there is no such thing. Choose another partner or a measure.`,
      )
    if (isPlan(thing.face) !== isPlan(face))
      throw new Unfollowed(
        `The place of ${who} follows "${id}", which is on a face of another sort. Choose a partner on the same face.`,
      )
    return ask(thing)
  }
}
