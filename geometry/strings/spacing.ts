/** Where the strings cross the nut and the saddle, and which holes of the tail strip they use. */
import { listOf } from '../quantity/list-of.ts'

/** Used where a design states no gauges at all: a plain string of middling size, from memory. */
const USUAL_GAUGE = 0.4

/** One diameter per string, bass first; the last one stated stands for those that are missing. */
export function gaugesFor(stated: readonly number[], strings: number): number[] {
  return listOf(strings, (index) => stated[index] ?? stated.at(-1) ?? USUAL_GAUGE)
}

/**
 * Centres of the strings across the centreline, bass first, `span` from the first centre to the last.
 * `equal gaps` keeps the open width between the edges of neighbours equal, so thick strings stand farther apart.
 * A single string lies on the centreline. Plane geometry: `span = sum (d_i + d_i+1) / 2 + (n - 1) gap`.
 * Example: `stringCentres(4, 52.3875, 'equal centres', [])` steps by 17.4625 mm, 11/16 in.
 */
export function stringCentres(
  strings: number,
  span: number,
  spacing: 'equal centres' | 'equal gaps',
  gauges: readonly number[],
): number[] {
  if (strings < 2) return [0]
  if (spacing === 'equal centres') return listOf(strings, (index) => span * (index / (strings - 1) - 0.5))
  const half = (index: number) => (gauges[index] ?? 0) / 2
  let wood = 0
  for (let index = 1; index < strings; index++) wood += half(index - 1) + half(index)
  const gap = (span - wood) / (strings - 1)
  const centres = [-span / 2]
  for (let index = 1; index < strings; index++)
    centres.push((centres[index - 1] ?? 0) + half(index - 1) + gap + half(index))
  return centres
}

/** Centres of a row of equal holes across the centreline, bass first. A single hole lies on the centreline. */
export const holeCentres = (holes: number, span: number): number[] =>
  stringCentres(holes, span, 'equal centres', [])

/**
 * Which holes of a row serve a number of strings: spread as evenly as the row allows, alike on both sides of the
 * centreline. Holes are counted from the bass side, from 0. With fewer holes than strings the outer strings get
 * `undefined`.
 * Common practice, no source: five equal holes serve four strings by leaving out the middle one and three by using
 * every second one. Example: `holesServing(5, 4)` is `[0, 1, 3, 4]`.
 */
export function holesServing(holes: number, strings: number): (number | undefined)[] {
  if (strings > holes) {
    const first = Math.floor((strings - holes) / 2)
    return listOf(strings, (index) => {
      const hole = index - first
      return hole >= 0 && hole < holes ? hole : undefined
    })
  }
  if (strings === 1) return [Math.floor((holes - 1) / 2)]
  const last = strings - 1
  return listOf(strings, (index) => {
    const mirrored = index > last / 2
    const fromBass = mirrored ? last - index : index
    const hole = Math.max(0, Math.ceil((fromBass * (holes - 1)) / last - 0.5))
    return mirrored ? holes - 1 - hole : hole
  })
}
