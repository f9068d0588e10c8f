/** How findings speak: lengths in the builder's unit, things by the names he gave them. */

import { thingCalled } from '../design/called.ts'
import { namelessPiece } from '../design/piece-name.ts'
import type { Design } from '../design/schema.ts'
import { kindOf } from '../kinds/kinds.ts'
import { formatAngle, formatFine, formatLength, formatShare } from '../quantity/index.ts'

export interface Say {
  /** A length with its unit: `3/32 in`, `12.0 mm`. */
  length(mm: number): string
  angle(degrees: number): string
  /** A length too fine for a rule: `0.24 mm`, `0.009 in`. */
  fine(mm: number): string
  /** A force: `72 N`. */
  pull(newtons: number): string
  share(share: number): string
  /** A thing by its name, as it stands inside a sentence: `sound hole “treble”`, `the saddle`. */
  thing(id: string): string
}

/** Speech for one design. Example: `sayFor(design).length(25.4)` is `1 in` on an inch rule. */
export function sayFor(design: Design): Say {
  const others = otherNames(design)
  return {
    length: (mm) => formatLength(mm, design.units, { unit: true }),
    angle: (degrees) => formatAngle((degrees * Math.PI) / 180),
    fine: (mm) => formatFine(mm, design.units, { unit: true }),
    pull: (newtons) => `${newtons < 10 ? newtons.toFixed(1) : Math.round(newtons)} N`,
    share: (share) => formatShare(share),
    thing: (id) => {
      // Strings and holes are numbered; what an instrument has only one of takes an article.
      const other = others?.get(id)
      if (other) return other
      // Asked for among thousands, once for every finding: no list of all is made for it.
      const thing = thingCalled(design, id)
      if (!thing) return /\d$/.test(id) ? id : `the ${id}`
      if (thing.name) return `“${thing.name}”`
      const title = kindOf(thing.kind).title.toLowerCase()
      // An id that begins with its kind, as those that are given by themselves do, would say it twice.
      if (id === thing.kind) return `the ${title}`
      return `${title} ${id.startsWith(`${thing.kind}-`) ? id.slice(thing.kind.length + 1) : id}`
    },
  }
}

/** Pieces inside and pictures by their names; `null` where there are none. */
function otherNames({ box, artwork }: Design): ReadonlyMap<string, string> | null {
  if (box.inside.length === 0 && artwork.length === 0) return null
  return new Map([
    ...box.inside.map(({ id, name, sort }) => [id, name ? `“${name}”` : namelessPiece(sort, id)] as const),
    ...artwork.map(({ id, name }) => [id, name ? `“${name}”` : namelessPiece('artwork', id)] as const),
  ])
}

/** The first letter of a sentence. */
export const capital = (text: string): string =>
  text.replace(/^(“?)(.)/u, (_, quote, first) => quote + first.toUpperCase())
