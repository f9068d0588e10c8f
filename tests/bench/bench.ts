/**
 * What is measured within Node, a row for each line of what it writes. `run.ts` bundles this file first: what is timed is
 * what ships. Each group runs in a process of its own, named by the first argument: what a compiler made of shared
 * functions for one group is no burden to the next.
 */
import { engineRows } from './engine.ts'
import { checksum } from './measure.ts'
import { proposalRows } from './proposals.ts'
import type { Row } from './row.ts'
import { startedRows } from './started.ts'
import { writingRows } from './writing.ts'

const GROUPS: Readonly<Record<string, () => Iterable<Row> | AsyncIterable<Row>>> = {
  engine: engineRows,
  writing: writingRows,
  proposals: proposalRows,
  started: () => startedRows(),
}

const name = process.argv[2] ?? ''
const group = GROUPS[name]
if (group === undefined) throw new Error(`"${name}" is no group of rows: ${Object.keys(GROUPS).join(', ')}.`)
for await (const row of group()) console.log(JSON.stringify(row))
// What was made is used, or a compiler could leave the making out.
if (name !== 'started' && !(checksum() > 0)) throw new Error('the bench made nothing')
