/**
 * What is measured within one process, a row for each line of what it writes. `run.ts` bundles this file first: what is
 * timed is what ships.
 */
import { engineRows } from './engine.ts'
import { checksum } from './measure.ts'
import { proposalRows } from './proposals.ts'
import type { Row } from './row.ts'
import { startedRow } from './started.ts'
import { writingRows } from './writing.ts'

const tell = (row: Row) => console.log(JSON.stringify(row))

for await (const row of engineRows()) tell(row)
for await (const row of writingRows()) tell(row)
for (const row of proposalRows()) tell(row)
tell(startedRow())
// What was made is used, or a compiler could leave the making out.
if (!(checksum() > 0)) throw new Error('the bench made nothing')
