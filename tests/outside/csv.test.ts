/** The schedule read by Python's own csv module, which this project did not write. */
import { spawnSync } from 'node:child_process'
import { expect, test } from 'vitest'
import { scheduleCsv } from '../../exporters/index.ts'
import { scheduleOf, solve } from '../../geometry/index.ts'
import { designOf } from '../support/designs.ts'
import { PYTHON } from '../support/outsideTools.ts'

const SCRIPT =
  'import csv,io,json,sys;print(json.dumps(list(csv.reader(io.StringIO(sys.stdin.buffer.read().decode("utf-8"),newline="")))))'

test('names with quotes and commas come out whole, one record to a row', () => {
  const things = [{ kind: 'sound-hole', id: 'a', name: 'say "oh", twice – é', along: 60, across: 40 }]
  const design = designOf({ things })
  const read = spawnSync(PYTHON, ['-c', SCRIPT], { input: scheduleCsv(design), encoding: 'utf8' })
  expect(read.stderr).toBe('')
  const records = JSON.parse(read.stdout) as string[][]
  const rows = scheduleOf(solve(design))
  expect(records).toHaveLength(rows.length + 1)
  const at = records[0]?.indexOf('what') ?? -1
  expect(records.slice(1).map((record) => record[at])).toEqual(rows.map((row) => row.of))
})
