/** What proposals cost, in whole solves and checks of the same design. */
import {
  check,
  type Design,
  fittingOf,
  placeableIn,
  placesBetween,
  placing,
  solve,
  USUAL_SCALES,
} from '../../geometry/index.ts'
import { rowOf } from './engine.ts'
import { sample, teaBox } from './lids.ts'
import { onEachNew, ratio } from './measure.ts'
import type { Row } from './row.ts'

/** Twelve scales, four counts, nine places of the saddle: 432 rows. */
const TABLE = {
  scales: USUAL_SCALES.map((one) => one.length),
  counts: [2, 3, 4, 6],
  places: placesBetween(0.52, 0.84, 9),
  strings: 'chosen for each',
} as const

function fitTable(of: Design) {
  const fitting = fittingOf(of, TABLE)
  while (fitting.step()) {
    // Each step is a row.
  }
  return fitting.rows
}

/** What a builder waits for: the first answer of a search that goes on getting better. */
function firstPlaces(of: Design): unknown {
  for (const told of placing(of)) if (told?.proposals.length) return told
  return null
}

export function* proposalRows(): Generator<Row> {
  const design = teaBox()
  const solved = (of: Design) =>
    onEachNew(
      () => structuredClone(of),
      (anew) => check(solve(anew)),
    )
  // The second has most to place.
  for (const of of [design, sample('ferry-crate-electric')])
    yield rowOf(
      `first answer of place for me, ${placeableIn(of).length} things / solve + check`,
      ratio(
        onEachNew(() => structuredClone(of), firstPlaces),
        solved(of),
        { rounds: 9, times: 20, ofOurs: 2, warmUp: 8 },
      ),
      null,
    )
  for (const [name, of] of [
    ['fit table of 432 rows / solve + check', design],
    // None of these rows is told by sums.
    ['the same on a blank long enough for every row', { ...design, neck: { ...design.neck, length: 1500 } }],
  ] as const)
    yield rowOf(
      name,
      ratio(
        onEachNew(() => structuredClone(of), fitTable),
        solved(of),
        { rounds: 15, times: 100, ofOurs: 1, warmUp: 8 },
      ),
      150,
    )
}
