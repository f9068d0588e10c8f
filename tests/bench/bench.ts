/**
 * What the engine and the exporters cost, as ratios from one run, with their spread. `npm run bench` bundles this
 * file first (`run.ts`): what is timed is what ships.
 */
import { readFileSync } from 'node:fs'
import { cpus } from 'node:os'
import { join } from 'node:path'
import { planPrint, printPdf, STANDARD_SETUP, writeDxfSheet } from '../../exporters/index.ts'
import {
  check,
  type Design,
  fittingOf,
  partsOf,
  placeableIn,
  placesBetween,
  placing,
  readDesign,
  solve,
  USUAL_SCALES,
} from '../../geometry/index.ts'
import { bareDxf, bareFile } from './bare-dxf.ts'
import { barePdf, bareSheets } from './bare-pdf.ts'
import { manyHoles, rosetteLid } from './lids.ts'
import { holesByMakerjs, lidByMakerjs } from './makerjs-lid.ts'
import { always, checksum, growth, onEachNew, ratio, ratioLater } from './measure.ts'
import { started } from './started.ts'

const SAMPLE = 'tea-box-three-strings'

function sample(name = SAMPLE): Design {
  const read = readDesign(readFileSync(join('sample-boxes', `${name}.lidwright.json`), 'utf8'))
  if (!read.ok) throw new Error(`the sample ${name} cannot be read: ${read.faults[0]?.sentence}`)
  return read.design
}

const rosette = rosetteLid()

/** One step of dragging the rosette. */
function draggedRosette(step: number): Design {
  const [first, ...others] = rosette.things
  return first ? { ...rosette, things: [{ ...first, along: 140 + (step % 100) / 10 }, ...others] } : rosette
}

let step = 0
const percent = (value: number) => value.toFixed(2)
const line = (
  what: string,
  got: { median: number; low: number; high: number },
  wanted: string,
  more: string,
) =>
  console.log(
    `${`${what.padEnd(58)} ${percent(got.median).padStart(6)}   ${percent(got.low)}–${percent(got.high)}`.padEnd(
      84,
    )}${wanted.padEnd(10)} ${more}`,
  )

const design = sample()
const parts = partsOf(solve(design))
const lid = parts.find((part) => part.id === 'lid')
if (!lid) throw new Error('the sample has no lid')

const derive = (of: Design) => {
  const layout = solve(of)
  check(layout)
  return partsOf(layout)
}

/** What a drag asks for: the first thing moved a little, all else as it was. */
function dragged(step: number): Design {
  const [first, ...others] = design.things
  return first ? { ...design, things: [{ ...first, along: 60 + (step % 100) / 100 }, ...others] } : design
}

console.log(`Node ${process.version}, ${cpus()[0]?.model ?? 'unknown processor'}, sample "${design.title}"`)
console.log(`${'ratio (work by turns in one run)'.padEnd(58)} median   middle half     wanted`)
for (const [what, work] of [
  [
    'solve + check + parts / makerjs writing the same lid as SVG',
    onEachNew(() => structuredClone(design), derive),
  ],
  ['the same for one step of a drag', onEachNew(() => dragged(step++), derive)],
] as const) {
  const engine = ratio(
    work,
    always(() => lidByMakerjs(lid)),
  )
  line(what, engine, 'at most 1', `${engine.ours.toFixed(3)} ms / ${engine.theirs.toFixed(3)} ms`)
}
const rosetteHoles = solve(rosette).placed[0]?.openings ?? []
const rosetteRatio = ratio(
  onEachNew(() => draggedRosette(step++), derive),
  always(() => holesByMakerjs(rosetteHoles)),
)
line(
  `one step of dragging a rosette of ${rosetteHoles.length} / makerjs moving its holes`,
  rosetteRatio,
  'at most 1',
  `${rosetteRatio.ours.toFixed(3)} ms / ${rosetteRatio.theirs.toFixed(3)} ms`,
)
const bare = bareFile(writeDxfSheet(parts, { title: design.title }))
const dxf = ratio(
  onEachNew(
    () => partsOf(solve(structuredClone(design))),
    (anew) => writeDxfSheet(anew, { title: design.title }),
  ),
  always(() => bareDxf(bare)),
)
line(
  'DXF of all parts / bare dxf-writer, same entities',
  dxf,
  'at most 1.5',
  `${dxf.ours.toFixed(3)} ms / ${dxf.theirs.toFixed(3)} ms`,
)
const plan = planPrint(parts, STANDARD_SETUP)
if (!plan.ok) throw new Error(plan.sentence)
const printed = await bareSheets((await printPdf(plan.plan, { title: design.title })).bytes)
const pdf = await ratioLater(
  () => printPdf(plan.plan, { title: design.title }),
  () => barePdf(printed),
)
line(
  `PDF of ${printed.pages.length} sheets / bare pdf-lib, same operators`,
  pdf,
  'at most 1.5',
  `${pdf.ours.toFixed(3)} ms / ${pdf.theirs.toFixed(3)} ms`,
)
const grown = growth(
  (holes) => {
    const lidOfHoles = manyHoles(holes)
    return () => check(solve({ ...lidOfHoles }))
  },
  50,
  5000,
)
line(
  'exponent of growth, solve + check, 50 to 5,000 round holes',
  grown,
  'at most 1.15',
  `${grown.short.toFixed(2)} ms → ${grown.long.toFixed(1)} ms`,
)
/** What a builder waits for: the first answer of a search that goes on getting better. */
function firstPlaces(of: Design): unknown {
  for (const told of placing(of)) if (told?.proposals.length) return told
  return null
}
for (const name of [SAMPLE, 'ferry-crate-electric']) {
  const of = sample(name)
  const many = placeableIn(of).length
  const places = ratio(
    onEachNew(() => structuredClone(of), firstPlaces),
    onEachNew(
      () => structuredClone(of),
      (anew) => check(solve(anew)),
    ),
    { rounds: 9, times: 20, ofOurs: 2, warmUp: 8 },
  )
  line(
    `first answer of place for me, ${many} things / solve + check`,
    places,
    'told',
    `${places.ours.toFixed(1)} ms / ${places.theirs.toFixed(3)} ms`,
  )
}
/** Twelve scales, four counts, nine places of the saddle: 432 rows. */
const TABLE = {
  scales: USUAL_SCALES.map((one) => one.length),
  counts: [2, 3, 4, 6],
  places: placesBetween(0.52, 0.84, 9),
  strings: 'chosen for each',
} as const
const fitTable = (of: Design) => {
  const fitting = fittingOf(of, TABLE)
  while (fitting.step()) {
    // Each step is a row.
  }
  return fitting.rows
}
/** The same with a blank so long that none of the rows is told by sums. */
const longBlank: Design = { ...design, neck: { ...design.neck, length: 1500 } }
for (const [what, of] of [
  ['fit table of 432 rows / one solve + check', design],
  ['the same on a blank long enough for every row', longBlank],
] as const) {
  const table = ratio(
    onEachNew(() => structuredClone(of), fitTable),
    onEachNew(
      () => structuredClone(of),
      (anew) => check(solve(anew)),
    ),
    { rounds: 15, times: 100, ofOurs: 1, warmUp: 8 },
  )
  line(what, table, 'under 150', `${table.ours.toFixed(0)} ms / ${table.theirs.toFixed(3)} ms`)
}
const begun = started()
line(
  'lidwright bundle / Node started and the engine imported',
  begun,
  'at most 2',
  `${begun.ours.toFixed(0)} ms / ${begun.theirs.toFixed(0)} ms`,
)
console.log(`checksum ${checksum()}`)
