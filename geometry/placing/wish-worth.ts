/** What is wished beside room: how much an arrangement meets of it, and how that is said. */
import { sayFor } from '../checks/say.ts'
import type { Layout, Placed } from '../solve/layout.ts'
import { soundOf } from '../sound/sound.ts'
import { centsBetween } from '../strings/pitch.ts'
import type { PlacingWishes } from './wishes.ts'

/** A wish as it was met or missed, in words. */
export interface Answered {
  readonly words: string
  readonly met: boolean
}

/** Against the tightest margin at its limit, which counts 0, and half as much again as wanted, which counts 5. */
const JACK = 8
const CONTROL = 0.5
const SPREAD = 4

/** Within so many cents a note counts as the one wished: an estimate is no better. */
const NEAR_NOTE = 60

/** Does a cable from here meet no knee? See `PlacingWishes.jackOffKnee`. */
export function isOffKnee({ face, at }: Placed, { panels }: Layout): boolean {
  if (face === 'tail-end-wall') return true
  const { minX, maxX } = panels['treble-wall'].bounds
  return face === 'treble-wall' && at.x >= maxX - (maxX - minX) / 3
}

/** What the wishes add to the worth of an arrangement. */
export function wishWorth(layout: Layout, about: ReadonlySet<string>, wishes: PlacingWishes): number {
  let sum = 0
  const screws: Placed[] = []
  for (const placed of layout.placed) {
    const { kind } = placed.thing
    if (kind === 'screw') screws.push(placed)
    if (!about.has(placed.thing.id)) continue
    if (kind === 'jack' && wishes.jackOffKnee && isOffKnee(placed, layout)) sum += JACK
    // The hand that plucks reaches the treble side. Common practice, no source.
    if ((kind === 'pot' || kind === 'switch') && placed.face === 'lid' && placed.at.y > 0) sum += CONTROL
  }
  return sum + SPREAD * spreadOf(screws, about)
}

/** Screws hold a lid that stand apart: the least way between two of a face as a share of what 12 mm short of its corner would give. */
function spreadOf(screws: readonly Placed[], about: ReadonlySet<string>): number {
  let least = 1
  screws.forEach((a, index) => {
    for (const b of screws.slice(index + 1)) {
      if (a.face !== b.face || !(about.has(a.thing.id) || about.has(b.thing.id))) continue
      least = Math.min(least, Math.hypot(a.at.x - b.at.x, a.at.y - b.at.y) / FAR)
    }
  })
  return least
}

/** Screws so far apart are far enough; millimetres. Common practice, no source. */
const FAR = 120

/** Every wish with what came of it. */
export function answered(layout: Layout, wishes: PlacingWishes): Answered[] {
  const say = sayFor(layout.design)
  const all: Answered[] = []
  if (wishes.hertz !== undefined) {
    const note = soundOf(layout).note
    const off = note ? centsBetween(wishes.hertz, note.hertz) : null
    all.push({
      words: note
        ? `Air at ${note.hertz.toFixed(0)} Hz (${note.name}), ${wishes.hertz.toFixed(0)} Hz wished`
        : 'No air comes out of the box',
      met: off !== null && Math.abs(off) <= NEAR_NOTE,
    })
  }
  for (const placed of layout.placed) {
    const { kind, id } = placed.thing
    if (kind === 'jack' && wishes.jackOffKnee) {
      const met = isOffKnee(placed, layout)
      all.push({ words: `${say.thing(id)} ${met ? 'off the knee' : 'where a knee may meet the cable'}`, met })
    }
    if (kind === 'pickup' && wishes.pickupAt !== undefined && placed.face === 'lid') {
      const x = placed.at.x + layout.panels.lid.originX
      const share = (layout.saddle.x - x) / layout.design.scale.length
      all.push({
        words: `${say.thing(id)} at ${say.share(share)} of the scale`,
        met: Math.abs(share - wishes.pickupAt) < 1e-6,
      })
    }
  }
  return all
}
