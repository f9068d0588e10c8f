/** The neck of a starting design: as thin as holds what the strings pull, and as the box has room for. */
import { thinnest } from '../neck/cure.ts'
import { LIMITS } from './limits.ts'
import type { Rounding } from './rounding.ts'
import type { Design } from './schema.ts'

/** Stock and set of a neck; lengths in mm. */
export interface Stick {
  readonly thickness: number
  /** Over the lid. */
  readonly rise: number
  readonly relief: number
  readonly wood: string
  readonly bar: Pick<Design['neck']['bar'], 'kind' | 'width' | 'height'> | null
}

/** A stick sold as 1 × 2 inches measures this; one of 5/4 inch stock the other. */
const USUAL = 19
const NEXT = 26
const THICKEST = 45
const RELIEF = 3
/** Higher, the saddle becomes taller than stands well. */
const MOST_RISE = 9.5
const WOOD = 'maple, sugar'
const STIFFER = 'hickory, mockernut'
const BAR = { kind: 'steel bar', width: 10, height: 12 } as const

/** What is left over the box must be stiff enough: this much of the thickness, since it goes with the cube. */
const SHARE = Math.cbrt(LIMITS.neckStiffnessLeft.value) + 0.01

/** The thinnest neck that leaves enough wood over the box, with the usual relief. */
export function thinnestStick(box: Design['box'], rounded: Rounding): Stick {
  return stickOf(box, rounded, leastThickness(box, rounded, rounded.near(RELIEF)), rounded.near(RELIEF))
}

function leastThickness(box: Design['box'], rounded: Rounding, relief: number): number {
  const cut = box.lid.thickness + relief
  const wanted = Math.max(USUAL, cut + LIMITS.neckLeft.value, cut / (1 - SHARE))
  return Math.min(100, rounded.up(wanted))
}

/**
 * Height and relief for a thickness. What is left over the box is the thickness less the notch and its relief, and must
 * be both thick and stiff enough; what is left of the wall below it is what the box is deep, less base and neck. A
 * shallow box lifts the neck; then the relief gives way first, the wall next, the neck last.
 */
function stickOf(box: Design['box'], rounded: Rounding, thickness: number, relief: number): Stick {
  const spare = thickness - box.lid.thickness - Math.max(LIMITS.neckLeft.value, thickness * SHARE)
  const below = box.depth - box.base.thickness - thickness
  const wanted = rounded.up(LIMITS.wallUnderSlot.value + 0.5 - below)
  const rise = Math.max(0, Math.min(wanted, rounded.down(spare), 60))
  return {
    thickness,
    rise,
    relief: Math.min(relief, rounded.down(Math.max(0, spare - rise))),
    wood: WOOD,
    bar: null,
  }
}

/**
 * The first that holds: a little thicker with the usual relief; without relief, so that the lid lies on the neck; of a
 * stiffer wood; with a bar let in. Where none does, the stiffest that the box has room for.
 */
export function stickThatHolds(
  box: Design['box'],
  thin: Stick,
  rounded: Rounding,
  holds: (stick: Stick) => boolean,
): Stick {
  const step = rounded.up(0.1)
  const fits = (thickness: number) => {
    const { rise } = stickOf(box, rounded, thickness, 0)
    const wall = box.depth - box.base.thickness - (thickness - rise)
    return wall >= LIMITS.wallUnderSlot.value && rise <= MOST_RISE
  }
  let thickest = thin.thickness
  while (thickest + step <= THICKEST && fits(thickest + step)) thickest += step
  const tries: readonly (readonly [relief: number, most: number, more: Partial<Stick>])[] = [
    [rounded.near(RELIEF), Math.min(thickest, NEXT), {}],
    [0, thickest, {}],
    [0, thickest, { wood: STIFFER }],
    [0, thickest, { wood: STIFFER, bar: BAR }],
  ]
  let last = thin
  for (const [relief, most, more] of tries) {
    const from = Math.max(relief === 0 ? leastThickness(box, rounded, 0) : thin.thickness, USUAL)
    const made = (thickness: number): Stick => ({ ...stickOf(box, rounded, thickness, relief), ...more })
    const found = thinnest((thickness) => holds(made(thickness)), Math.min(from, most), most, step)
    if (found !== null) return made(Math.round(found * 1e4) / 1e4)
    last = made(Math.round(most * 1e4) / 1e4)
  }
  return last
}
