/** What a whole command costs, from nothing: processes started by turns, ours against Node with the engine imported. */
import { spawnSync } from 'node:child_process'
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import { rowOf } from './engine.ts'
import { summed } from './measure.ts'
import type { Row } from './row.ts'

const SAMPLE = join('sample-boxes', 'tea-box-three-strings.lidwright.json')
const ROUNDS = 15

/** Milliseconds from the start of Node to its end. Throws where it fails: a quick failure is no speed. */
function run(script: string): number {
  const start = performance.now()
  const { status, stderr } = spawnSync(process.execPath, ['--input-type=module', '-e', script], {
    encoding: 'utf8',
  })
  if (status !== 0) throw new Error(`the command timed failed: ${stderr}`)
  return performance.now() - start
}

/**
 * `lidwright bundle` of a sample against Node that imports the engine and ends. Both are bundled as the package is:
 * `run.ts` puts them into the folder that the environment names.
 */
export function startedRow(): Row {
  const folder = process.env['LIDWRIGHT_BENCH'] ?? ''
  const engine = pathToFileURL(join(folder, 'engine', 'engine.mjs')).href
  const command = pathToFileURL(join(folder, 'command', 'lidwright.mjs')).href
  const out = mkdtempSync(join(tmpdir(), 'lidwright-bench-'))
  const words = ['bundle', SAMPLE, '--out', join(out, 'everything.zip')]
  const io = '{ out() {}, err: (text) => process.stderr.write(text), cwd: process.cwd() }'
  const ours = `const { run } = await import(${JSON.stringify(command)}); process.exitCode = await run(${JSON.stringify(words)}, ${io})`
  const theirs = `await import(${JSON.stringify(engine)})`
  run(ours)
  run(theirs)
  const pairs = Array.from({ length: ROUNDS }, () => ({ ours: run(ours), theirs: run(theirs) }))
  rmSync(out, { recursive: true, force: true })
  return rowOf('lidwright bundle / Node started and the engine imported', summed(pairs), 2)
}
