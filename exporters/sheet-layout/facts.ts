/** What a sheet says about a part, in words: the same on paper and in a DXF. */
import type { Bounds, Part } from '../../geometry/index.ts'
import { bothUnits, lengthLabel, numberText } from '../numbers.ts'
import { plainLine } from '../words/plain.ts'

/** What every exported file may say beside its parts. No date: the same design gives the same bytes. */
export interface SheetOptions {
  /** The instrument's name, as the builder wrote it. */
  readonly title: string
  /** One more line for the title block: a revision, a customer, a date the builder typed. */
  readonly line?: string | undefined
}

export interface Facts {
  readonly title: string
  readonly seen: string
  readonly headEnd: string
  readonly hand: string
  readonly thickness: string
  readonly size: string
  readonly sizeInches: string
}

const HANDS: Readonly<Record<Part['hand'], string>> = {
  left: 'left-handed',
  right: 'right-handed',
  'not stated': 'either hand',
}

function inches(length: number, what: string): string {
  return numberText(length / 25.4, what, 3)
}

/**
 * The facts about a part that stand in its title block.
 *
 * @param part lengths in mm
 * @param outline the box of its outline, mm
 * @throws RangeError when the thickness is not a number above zero
 * @example factsOf(lid, bounds(lid.outline)).size // '300.0 × 200.0 mm'
 */
export function factsOf(part: Part, outline: Bounds): Facts {
  if (!(part.thickness > 0)) {
    throw new RangeError(`The thickness of ${part.id} is ${part.thickness}: a part needs one above zero.`)
  }
  const width = outline.maxX - outline.minX
  const height = outline.maxY - outline.minY
  const w = 'Width of a part'
  const h = 'Height of a part'
  const seen = plainLine(part.seen)
  return {
    title: plainLine(part.title) || plainLine(part.id),
    seen: part.mirrored ? `${seen}, as a mirror image` : seen,
    headEnd: part.headEnd,
    hand: HANDS[part.hand],
    thickness: bothUnits(part.thickness, `Thickness of ${part.id}`),
    size: `${lengthLabel(width, w, 2)} × ${lengthLabel(height, h, 2)} mm`,
    sizeInches: `${inches(width, w)} × ${inches(height, h)} in`,
  }
}

/** The facts as lines of a caption: how to look at the part, and what it is. */
export function factsLines(facts: Facts): string[] {
  return [
    `seen ${facts.seen}, head end ${facts.headEnd}`,
    `${facts.hand}, ${facts.thickness} thick, ${facts.size}`,
  ]
}

/** The facts as one sentence without its full stop, for descriptions. */
export function factsLine(facts: Facts): string {
  return factsLines(facts).join(', ')
}
