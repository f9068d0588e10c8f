/**
 * `npm test`: types, lint, tests, in that order. Says which stage runs, stops at the first that fails,
 * and ends with one line that counts the tests. A test that was skipped counts as failed: nobody sees a
 * skipped test. Arguments go to vitest, so `npm test -- tests/geometry/plane` runs one folder.
 */
import { spawnSync } from 'node:child_process'
import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join, resolve } from 'node:path'
import { type Count, countTests } from './count-tests.ts'

const project = resolve(import.meta.dirname, '../..')
const scratch = mkdtempSync(join(tmpdir(), 'lidwright-test-'))
const resultFile = join(scratch, 'results.json')

interface Stage {
  readonly title: string
  /** A package's own program, and its arguments. */
  readonly commands: readonly (readonly string[])[]
}

const tsc = 'node_modules/typescript/bin/tsc'
const stages: readonly Stage[] = [
  {
    title: 'Types',
    commands: [
      [tsc, '-p', 'geometry'],
      [tsc, '-p', 'exporters'],
      [tsc, '-p', '.'],
    ],
  },
  { title: 'Lint', commands: [['node_modules/@biomejs/biome/bin/biome', 'check', '--error-on-warnings']] },
  {
    title: 'Tests',
    commands: [
      [
        'node_modules/vitest/vitest.mjs',
        ...['run', '--config', 'tests/vitest.config.ts'],
        ...['--reporter=default', '--reporter=json', `--outputFile.json=${resultFile}`],
        ...process.argv.slice(2),
      ],
    ],
  },
]

const failedStage = stages.find((stage, index) => {
  console.log(`\n== ${index + 1} of ${stages.length}: ${stage.title}`)
  const started = performance.now()
  const good = stage.commands.every(
    (command) => spawnSync(process.execPath, command, { cwd: project, stdio: 'inherit' }).status === 0,
  )
  const seconds = ((performance.now() - started) / 1000).toFixed(1)
  console.log(`== ${stage.title}: ${good ? 'good' : 'FAILED'} after ${seconds} s`)
  return !good
})

const count = counted()
rmSync(scratch, { recursive: true, force: true })
for (const name of count.notRun) console.log(`Did not run, so it counts as failed: ${name}`)
console.log(`\n${count.passed} passed, ${count.failed} failed`)
process.exitCode = count.failed === 0 ? 0 : 1

/** What the run comes to. A stage that fails without naming a failed test is one failure of its own. */
function counted(): Count {
  const tests = existsSync(resultFile)
    ? countTests(JSON.parse(readFileSync(resultFile, 'utf8')))
    : { passed: 0, failed: 0, notRun: [] }
  const unseen = failedStage !== undefined && tests.failed === 0
  const nothing = failedStage === undefined && tests.passed === 0
  return { ...tests, failed: tests.failed + (unseen || nothing ? 1 : 0) }
}
