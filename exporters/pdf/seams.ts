/**
 * Where one sheet ends and the next begins, along one way.
 *
 * Sheets lie side by side and overlap. The seam is where the upper sheet is cut: it shall run through no centre
 * of a hole and along no fret line, because there half a millimetre of a badly glued sheet would be felt.
 */

/** What a sheet shows along one way, mm. */
export interface Span {
  /** Where this sheet begins: its cut edge, if a sheet lies before it. */
  readonly from: number
  readonly to: number
}

/** Something a seam keeps away from: the place itself strictly, what lies within `reach` of it if there is a choice. */
export interface Avoided {
  readonly at: number
  readonly reach: number
}

/** A seam keeps this far from every centre and fret line, mm. */
export const SEAM_CLEARANCE = 3

/** Places for a seam are tried at this step, mm. */
const STEP = 1

/** How many sheets of `window` a length takes. */
export function sheetsFor(length: number, window: number, overlap: number): number {
  return Math.max(1, Math.ceil((length - overlap) / (window - overlap) - 1e-9))
}

interface Seam {
  readonly at: number
  readonly hits: number
  readonly cuts: number
}

function seamAt(at: number, avoided: readonly Avoided[]): Seam {
  let hits = 0
  let cuts = 0
  for (const one of avoided) {
    const away = Math.abs(at - one.at)
    if (away < SEAM_CLEARANCE) hits++
    else if (away < one.reach + 1) cuts++
  }
  return { at, hits, cuts }
}

/** The best place in an interval: no centre hit, as few openings cut as can be, near the even place. */
function bestSeam(least: number, most: number, even: number, avoided: readonly Avoided[]): Seam {
  const count = Math.max(0, Math.ceil((most - least) / STEP - 1e-9))
  let best = seamAt(Math.min(Math.max(even, least), most), avoided)
  const better = (seam: Seam) =>
    seam.hits !== best.hits
      ? seam.hits < best.hits
      : seam.cuts !== best.cuts
        ? seam.cuts < best.cuts
        : Math.abs(seam.at - even) < Math.abs(best.at - even)
  for (let index = 0; index <= count; index++) {
    const seam = seamAt(count === 0 ? least : least + ((most - least) * index) / count, avoided)
    if (better(seam)) best = seam
  }
  return best
}

export interface Spans {
  readonly spans: readonly Span[]
  /** How many seams could not keep clear of a centre or fret line. */
  readonly hits: number
}

function spansOf(
  from: number,
  to: number,
  window: number,
  overlap: number,
  avoided: readonly Avoided[],
  count: number,
): Spans {
  const step = window - overlap
  const starts = [from]
  let hits = 0
  for (let index = 1; index < count; index++) {
    const before = starts.at(-1) ?? from
    // What comes after must still reach the end, and no sheet may be wider than the window.
    const least = Math.max(to - window - (count - 1 - index) * step, before + overlap)
    const most = before + step
    const even = before + (to - overlap - before) / (count - index + 1)
    const seam = bestSeam(Math.min(least, most), most, even, avoided)
    hits += seam.hits > 0 ? 1 : 0
    starts.push(seam.at)
  }
  return {
    hits,
    spans: starts.map((start, index) => {
      const next = starts[index + 1]
      return { from: start, to: next === undefined ? to : next + overlap }
    }),
  }
}

/**
 * Divides a length among sheets: as few as can be; one more where a seam could not keep clear otherwise.
 *
 * @param from mm, beginning of what is drawn
 * @param to mm, its end
 * @param window mm, most that a sheet shows
 * @param overlap mm that two neighbours share; less than half the window
 * @param avoided what seams keep away from
 * @returns spans in order, each from its cut edge to the end of its flap; together they cover the length
 * @example spansAlong(0, 600, 277, 10, []).spans.length // 3
 */
export function spansAlong(
  from: number,
  to: number,
  window: number,
  overlap: number,
  avoided: readonly Avoided[],
): Spans {
  if (!(window > 2 * overlap && overlap >= 0 && to >= from && Number.isFinite(window + to - from))) {
    throw new RangeError(
      `A length from ${from} to ${to} cannot be divided among sheets of ${window} mm with an overlap of ${overlap} mm.`,
    )
  }
  const count = sheetsFor(to - from, window, overlap)
  const fewest = spansOf(from, to, window, overlap, avoided, count)
  if (fewest.hits === 0) return fewest
  const oneMore = spansOf(from, to, window, overlap, avoided, count + 1)
  return oneMore.hits < fewest.hits ? oneMore : fewest
}
