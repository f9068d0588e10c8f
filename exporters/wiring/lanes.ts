/** Where each wire runs: down from its pins into a lane of its own below them. No two lie on each other. */

export interface PinnedWire {
  readonly from: number
  readonly to: number
  /** Least room along its lane: what is written on it. */
  readonly room: number
  /** Ground lies below everything else. */
  readonly ground: boolean
}

export interface Laid {
  /** Where it leaves and reaches its pins. */
  readonly x0: number
  readonly x1: number
  /** 0 is the lane nearest the pins. */
  readonly lane: number
}

/** From one wire at a pin to the next. */
const BESIDE = 1.4

/** Free room between two wires in one lane. */
const BETWEEN = 2.5

/**
 * Lays wires out: at a pin they stand side by side, short ones take the lanes nearest the pins, and wires share a lane
 * where they do not meet. Example: two wires from 0 to 10 and from 20 to 30 lie in lane 0.
 */
export function lay(wires: readonly PinnedWire[]): Laid[] {
  const order = wires
    .map((wire, index) => ({ wire, index }))
    .sort(
      (a, b) =>
        Number(a.wire.ground) - Number(b.wire.ground) ||
        Math.abs(a.wire.to - a.wire.from) - Math.abs(b.wire.to - b.wire.from) ||
        a.index - b.index,
    )
  const ends = endsOf(wires)
  const lanes: { readonly low: number; readonly high: number }[][] = []
  const answer: Laid[] = []
  let firstGround = 0
  for (const { wire, index } of order) {
    const [x0, x1] = ends[index] ?? [wire.from, wire.to]
    const low = Math.min(x0, x1)
    const high = Math.max(Math.max(x0, x1), low + wire.room)
    if (!wire.ground) firstGround = Math.max(firstGround, lanes.length)
    let lane = wire.ground ? firstGround : 0
    while (lanes[lane]?.some((one) => low < one.high + BETWEEN && high > one.low - BETWEEN)) lane += 1
    while (lanes.length <= lane) lanes.push([])
    lanes[lane]?.push({ low, high })
    if (!wire.ground) firstGround = Math.max(firstGround, lanes.length)
    answer[index] = { x0, x1, lane }
  }
  return answer
}

/** Ends side by side at each pin: those that come from the left stand on the left. */
function endsOf(wires: readonly PinnedWire[]): [number, number][] {
  const pins = new Map<number, { readonly index: number; readonly end: 0 | 1; readonly other: number }[]>()
  wires.forEach(({ from, to }, index) => {
    pins.set(from, [...(pins.get(from) ?? []), { index, end: 0, other: to }])
    pins.set(to, [...(pins.get(to) ?? []), { index, end: 1, other: from }])
  })
  const ends = wires.map(({ from, to }): [number, number] => [from, to])
  for (const [x, list] of pins) {
    const sorted = [...list].sort((a, b) => a.other - b.other || a.index - b.index)
    sorted.forEach(({ index, end }, place) => {
      const pair = ends[index]
      if (pair) pair[end] = x + (place - (sorted.length - 1) / 2) * BESIDE
    })
  }
  return ends
}
