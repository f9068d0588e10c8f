/** Every pickup of a layout: where it hears the strings, what it misses, and what it takes from the neck. */
import { loadsOf } from '../loads/loads.ts'
import { piecesOf } from '../loads/neck-pieces.ts'
import { remembered } from '../loads/remembered.ts'
import { neckAt } from '../neck/neck.ts'
import { sectionAt } from '../neck/span.ts'
import type { Layout, NeckStretch, Placed } from '../solve/layout.ts'
import { stringAt } from '../solve/solve.ts'
import { DEAF, HARMONICS, harmonicHeard } from './harmonics.ts'

export interface PickupHearing {
  /** Id of the thing. */
  readonly id: string
  /** Its middle from the saddle, and that as a share of the sounding length of the open string. */
  readonly fromSaddle: number
  readonly share: number
  /** Length along the string that it hears; 0 for a point. */
  readonly heard: number
  /** Harmonics 1 to 16 of the open string, each 0 to 1. */
  readonly harmonics: readonly number[]
  /** The numbers of those it is deaf to: less than a tenth is heard. */
  readonly deafTo: readonly number[]
  /** Width across the strings that it hears, and what the strings take of it where it stands. */
  readonly activeWidth: number
  readonly stringSpan: number
  /** From the outermost string to the end of what it hears; negative outside. */
  readonly room: number
  readonly relief: PickupRelief | null
}

/** What the neck loses to let it in. */
export interface PickupRelief {
  readonly left: number
  /** What would be left there without it. */
  readonly without: number
  /** Bending stiffness there as a share of what it is without this relief. */
  readonly stiffness: number | null
  /** Bow at mid-neck, rise at the nut and action at the octave, with and without; `null` until the pull is known. */
  readonly bow: { readonly as: number; readonly without: number } | null
  readonly nutRise: { readonly as: number; readonly without: number } | null
}

/**
 * The pickups that hear the strings, in the order of the file. Reckoned when asked for, remembered per layout; the neck
 * is bent once more for each that stands over it.
 * Example: `pickupsOf(solve(design))[0].share` is 0.25 a quarter of the string from the saddle.
 */
export const pickupsOf = remembered((layout: Layout): readonly PickupHearing[] =>
  layout.placed.flatMap((placed) => {
    const activeWidth = placed.kind.activeWidth?.(placed.thing)
    return activeWidth === undefined || activeWidth === null || placed.face !== 'lid'
      ? []
      : [hearingOf(layout, placed, activeWidth)]
  }),
)

function hearingOf(layout: Layout, placed: Placed, activeWidth: number): PickupHearing {
  const { saddle, panels, strings } = layout
  const x = placed.at.x + panels.lid.originX
  const fromSaddle = saddle.x - x
  const share = fromSaddle / saddle.x
  const heard = placed.kind.heardLength?.(placed.thing) ?? 0
  const harmonics = Array.from({ length: HARMONICS }, (_, index) =>
    harmonicHeard(index + 1, share, heard / saddle.x),
  )
  const ys = strings.map((string) => stringAt(string, x, saddle.x))
  return {
    id: placed.thing.id,
    fromSaddle,
    share,
    heard,
    harmonics,
    deafTo: harmonics.flatMap((level, index) => (level < DEAF ? [index + 1] : [])),
    activeWidth,
    stringSpan: Math.max(...ys) - Math.min(...ys),
    room: Math.min(...ys.map((y) => activeWidth / 2 - Math.abs(y - placed.at.y))),
    relief: reliefOf(layout, placed),
  }
}

function reliefOf(layout: Layout, placed: Placed): PickupRelief | null {
  const cut = layout.neck.cuts.find((one) => one.because === placed.thing.id)
  if (!cut) return null
  const { design, box, panels, saddle, nut, real } = layout
  const others = layout.placed.filter((one) => one !== placed)
  const neck = neckAt(design, box, others, panels.lid.originX, saddle.x, nut.x0, real)
  const bare: Layout = { ...layout, placed: others, neck }
  const middle = (cut.x0 + cut.x1) / 2
  const here = bendAt(layout, middle)
  const was = bendAt(bare, middle)
  const [as, without] = [loadsOf(layout).neck, loadsOf(bare).neck]
  const both = (of: 'bow' | 'nutRise') => as && without && { as: as[of], without: without[of] }
  return {
    left: leftAt(layout.neck.stretches, middle),
    without: leftAt(neck.stretches, middle),
    stiffness: here !== null && was !== null ? here / was : null,
    bow: both('bow'),
    nutRise: both('nutRise'),
  }
}

function leftAt(stretches: readonly NeckStretch[], x: number): number {
  const stretch = stretches.find((one) => x >= one.x0 && x <= one.x1)
  return stretch ? stretch.top - stretch.bottom : 0
}

/** Bending stiffness of the whole section at x, N·mm²; `null` where no wood is left. */
function bendAt(layout: Layout, x: number): number | null {
  const piece = piecesOf(layout).find((one) => x >= one.x0 && x <= one.x1)
  return (piece && sectionAt(piece, x)?.bend) ?? null
}
