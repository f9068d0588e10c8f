/**
 * What is alike in many rows is measured once. While the saddle stays where it is on the lid, a longer scale or another
 * string leaves lid, walls, what hangs behind them and the neck within the box as they were: rules that look at nothing
 * else give the same answer, to the last digits that arithmetic leaves.
 */
import type { Measurement, Rule } from '../checks/finding.ts'
import type { LimitName } from '../design/limits.ts'
import { thingSolids } from '../solids/bodies.ts'
import type { Layout } from '../solve/layout.ts'
import { type Note, soundOf } from '../sound/sound.ts'

/**
 * Rules that look at faces, at what stands in the box and at the neck within it, and never at strings, frets, head or
 * the neck before the box. A rule that is not in this list is measured anew for every row: slower, never wrong.
 */
const WITHIN: ReadonlySet<string> = new Set([
  ...['opening-to-edge', 'between-openings', 'opening-to-neck', 'opening-to-wall', 'opening-to-inside'],
  ...['room-under-hardware', 'rim-depth', 'rim-ledge', 'recess-left', 'rosette-holes', 'rosette-web'],
  ...['thread-through', 'bore-wide', 'face-for-bushing', 'shaft-in-knob', 'knob-off-face'],
  ...['cover-on-face', 'covers-apart', 'screw-holds', 'screw-beside', 'screw-point', 'head-flush'],
  ...['inside-fits', 'inside-clear-of-neck', 'neck-block-height', 'artwork-kept'],
])

/** A lid that opens towards the neck may meet all of it. */
const OPENING: ReadonlySet<string> = new Set(['lid-clears', 'lid-reach', 'hinge-parallel'])
/** What stands out before the lid may meet strings. */
const PARTS = 'parts-clear'

/** Millimetres: what differs by less is alike. */
const ALIKE = 1e-7

interface Known {
  readonly layout: Layout
  readonly measured: Map<Rule, readonly Measurement[]>
  air?: { readonly note: Note | null }
}

/** What has been measured of the rows of one place of the saddle. */
export class Around {
  private known: Known[] = []
  private current: Known | null = null
  private standsOut: boolean | null = null

  /** Turns to a row; what was measured of one alike is found again. */
  turnTo(layout: Layout): void {
    this.current = this.known.find((one) => alike(one.layout, layout)) ?? null
    if (this.current) return
    this.current = { layout, measured: new Map() }
    // Rows of another place are over: nothing of them comes again.
    this.known = this.known.filter((one) => near(one.layout.saddle.along, layout.saddle.along))
    this.known.push(this.current)
  }

  /** What a rule measures on the row turned to. */
  measure(rule: Rule, layout: Layout, limit: (name: LimitName) => number): Iterable<Measurement> {
    const { current } = this
    if (!current || !this.shares(rule.name, current.layout, layout)) return rule.measure(layout, limit)
    const before = current.measured.get(rule)
    if (before) return before
    const measured = [...rule.measure(layout, limit)]
    current.measured.set(rule, measured)
    return measured
  }

  /** The note of the air of the row turned to. */
  note(layout: Layout): Note | null {
    const { current } = this
    if (!current) return soundOf(layout).note
    current.air ??= { note: soundOf(layout).note }
    return current.air.note
  }

  private shares(rule: string, known: Layout, layout: Layout): boolean {
    if (WITHIN.has(rule)) return true
    if (rule === PARTS) {
      this.standsOut ??= thingSolids(layout).some((one) => one.box.maxZ > -ALIKE)
      return !this.standsOut
    }
    if (!OPENING.has(rule)) return false
    const { kind, hingeEdge, slidesTo } = layout.design.box.lid
    const towards = kind === 'sliding' ? slidesTo : hingeEdge
    return towards !== 'neck end' || (near(known.box.x0, layout.box.x0) && sameHead(known, layout))
  }
}

const near = (a: number, b: number): boolean => Math.abs(a - b) <= ALIKE

const sameHead = (a: Layout, b: Layout): boolean =>
  a.design.headstock === b.design.headstock && a.design.strings === b.design.strings

/** Are lid, walls, what stands on them and the neck within the box the same, each from the neck-end face? */
function alike(a: Layout, b: Layout): boolean {
  const [at, bt] = [a.box.x0, b.box.x0]
  return (
    near(a.saddle.along, b.saddle.along) &&
    a.design.box === b.design.box &&
    a.placed.length === b.placed.length &&
    a.placed.every((one, index) => one === b.placed[index]) &&
    near(overLid(a), overLid(b)) &&
    near(a.neck.x1 - at, b.neck.x1 - bt) &&
    a.neck.cuts.length === b.neck.cuts.length &&
    a.neck.cuts.every((cut, index) => {
      const its = b.neck.cuts[index]
      return its && near(cut.x0 - at, its.x0 - bt) && near(cut.x1 - at, its.x1 - bt) && near(cut.top, its.top)
    }) &&
    a.tailHoles.length === b.tailHoles.length &&
    a.tailHoles.every((hole, index) => {
      const its = b.tailHoles[index]
      return its && near(hole.x - at, its.x - bt) && near(hole.y, its.y)
    })
  )
}

/** A board that ends before the box is as good as any other. */
const overLid = ({ board }: Layout): number => board?.overLid ?? 0
