/** How each place looked at its sheet last: kept while another place is on screen. */
import type { Camera, Fitting } from './camera.ts'

export interface Looking {
  camera: Camera | null
  /** Fitted anew when the window or the box changes, until somebody pans or zooms. */
  auto: Fitting | null
  /** What the place shows at first, and again when another instrument comes on the bench. */
  readonly opens: Fitting
  /** Shows what the strings do: the bow of the neck, the slant of the saddle and the room it needs. */
  pull: boolean
  /** Shows the ways of the other counts of strings that the tailpiece is made for. */
  counts: boolean
  /** Shows the variants that are held beside the design. */
  readonly variants: boolean
}

const lookings = new Map<string, Looking>()

/** How a place looks at its sheet; `opens` is what it shows at first. Only where strings are chosen their pull shows. */
export function lookingOf(place: string, opens: Fitting): Looking {
  const known = lookings.get(place)
  if (known) return known
  const choosing = place === 'choose'
  const made: Looking = {
    camera: null,
    auto: opens,
    opens,
    pull: choosing,
    counts: false,
    variants: choosing,
  }
  lookings.set(place, made)
  return made
}

/** Forgets all views: another instrument is on the bench. */
export function forgetViews(): void {
  for (const looking of lookings.values()) {
    looking.camera = null
    looking.auto = looking.opens
  }
}
