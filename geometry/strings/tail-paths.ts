/** How the strings of every count run from saddle to hole. */
import type { Layout } from '../solve/layout.ts'
import { stringCentres } from './spacing.ts'
import { countsOf, holesFor } from './tail-row.ts'

export interface TailPath {
  readonly count: number
  /** As the trade counts: 1 is the treble string. */
  readonly string: number
  /** Counted from the bass side, from 0; `null` where there are too few holes. */
  readonly hole: number | null
  readonly yNut: number
  readonly ySaddle: number
  /** Radians sideways over the saddle and down behind it, from the string's own line; `null` without a hole. */
  readonly sideways: number | null
  readonly down: number | null
}

/** Paths of every count that the tailpiece is made for: strings spread evenly over the spans at nut and saddle. */
export function tailPathsOf(layout: Layout): TailPath[] {
  const { design, saddle, tailHoles } = layout
  const { spanAtNut, spanAtSaddle } = design.strings
  return countsOf(design).flatMap((count) => {
    const atNut = stringCentres(count, spanAtNut, 'equal centres', [])
    const atSaddle = stringCentres(count, spanAtSaddle, 'equal centres', [])
    const serving = holesFor(design, count)
    return atSaddle.map((ySaddle, index): TailPath => {
      const number = serving[index]
      const hole = number === undefined ? undefined : tailHoles[number]
      const slope = Math.atan2(ySaddle - (atNut[index] ?? 0), saddle.x)
      const behind = hole ? Math.max(hole.x - saddle.x, 0) : 0
      return {
        count,
        string: count - index,
        hole: hole && number !== undefined ? number : null,
        yNut: atNut[index] ?? 0,
        ySaddle,
        sideways: hole ? Math.abs(Math.atan2(hole.y - ySaddle, behind) - slope) : null,
        down: hole ? Math.atan2(saddle.top - hole.z, behind) : null,
      }
    })
  })
}
