/** What the engine costs: whole derivations, steps of a drag, growth with the number of holes. */
import { check, type Design, partsOf, solve } from '../../geometry/index.ts'
import { manyHoles, rosetteLid, teaBox } from './lids.ts'
import { holesByMakerjs, lidByMakerjs } from './makerjs-lid.ts'
import { always, type Growth, growth, onEachNew, type Ratio, ratio } from './measure.ts'
import type { Row } from './row.ts'

export const derive = (of: Design) => {
  const layout = solve(of)
  check(layout)
  return partsOf(layout)
}

const short = (ms: number) => String(Number(ms.toPrecision(3)))

/** A ratio as a row, with both times behind it. */
export const rowOf = (
  name: string,
  { median, low, high, ours, theirs }: Ratio,
  wanted: number | null,
): Row => ({
  name,
  unit: '×',
  median,
  low,
  high,
  wanted,
  more: `${short(ours)} ms / ${short(theirs)} ms`,
})

/** What may grow in step with what there is: with room for the work that sorting and searching add. */
const IN_STEP = 1.15

export const growthRow = (name: string, { median, low, high, short: few, long: many }: Growth): Row => ({
  name,
  unit: 'exponent',
  median,
  low,
  high,
  wanted: IN_STEP,
  more: `${short(few)} ms → ${short(many)} ms`,
})

let step = 0

/** What a drag asks for: the first thing moved a little, all else as it was. */
function dragged(design: Design, along: number): Design {
  const [first, ...others] = design.things
  return first
    ? { ...design, things: [{ ...first, along: along + (step++ % 100) / 100 }, ...others] }
    : design
}

export async function* engineRows(): AsyncGenerator<Row> {
  const design = teaBox()
  const lid = partsOf(solve(design)).find((part) => part.id === 'lid')
  if (!lid) throw new Error('the sample has no lid')
  const byMakerjs = always(() => lidByMakerjs(lid))
  yield rowOf(
    'solve + check / makerjs writing the same lid as SVG',
    ratio(
      onEachNew(
        () => structuredClone(design),
        (of) => check(solve(of)),
      ),
      byMakerjs,
    ),
    1,
  )
  yield rowOf(
    'the same with the parts',
    ratio(
      onEachNew(() => structuredClone(design), derive),
      byMakerjs,
    ),
    1,
  )
  yield rowOf(
    'solve + check + parts for one step of a drag / the same',
    ratio(
      onEachNew(() => dragged(design, 60), derive),
      byMakerjs,
    ),
    1,
  )
  const rosette = rosetteLid()
  const holes = solve(rosette).placed[0]?.openings ?? []
  yield rowOf(
    `a step of dragging a rosette of ${holes.length} / makerjs moving its holes`,
    ratio(
      onEachNew(() => dragged(rosette, 140), derive),
      always(() => holesByMakerjs(holes)),
    ),
    1,
  )
  yield growthRow(
    'growth of solve + check from 50 to 5,000 round holes',
    await growth(
      (howMany) => {
        const lidOfHoles = manyHoles(howMany)
        return () => check(solve({ ...lidOfHoles }))
      },
      50,
      5000,
    ),
  )
}
