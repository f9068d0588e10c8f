/** What the exporters cost over the bare libraries that write the same. */
import { makeBundle, planPrint, printPdf, STANDARD_SETUP, writeDxfSheet } from '../../exporters/index.ts'
import { partsOf, solve } from '../../geometry/index.ts'
import { bareDxf, bareFile } from './bare-dxf.ts'
import { barePdf, bareSheets } from './bare-pdf.ts'
import { growthRow, rowOf } from './engine.ts'
import { manyHoles, teaBox } from './lids.ts'
import { always, growth, onEachNew, ratio, ratioLater } from './measure.ts'
import type { Row } from './row.ts'

export async function* writingRows(): AsyncGenerator<Row> {
  const design = teaBox()
  const { title } = design
  const parts = partsOf(solve(design))
  const bare = bareFile(writeDxfSheet(parts, { title }))
  yield rowOf(
    'DXF of all parts / bare dxf-writer, same entities',
    ratio(
      onEachNew(
        () => partsOf(solve(structuredClone(design))),
        (anew) => writeDxfSheet(anew, { title }),
      ),
      always(() => bareDxf(bare)),
    ),
    1.5,
  )
  const plan = planPrint(parts, STANDARD_SETUP)
  if (!plan.ok) throw new Error(plan.sentence)
  const print = () => printPdf(plan.plan, { title })
  const printed = await bareSheets((await print()).bytes)
  yield rowOf(
    `PDF of ${printed.pages.length} sheets / bare pdf-lib, same operators`,
    await ratioLater(print, () => barePdf(printed)),
    1.5,
  )
  yield growthRow(
    'growth of everything in one bundle from 1,000 to 4,000 round holes',
    await growth(
      (howMany) => {
        const lidOfHoles = manyHoles(howMany)
        return () => makeBundle({ ...lidOfHoles })
      },
      1000,
      4000,
      { rounds: 3, times: 1 },
    ),
  )
}
