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
function run(words: readonly string[], environment: Readonly<Record<string, string>>): number {
  const start = performance.now()
  const { status, stderr } = spawnSync(process.execPath, words, {
    encoding: 'utf8',
    env: { ...process.env, ...environment },
  })
  if (status !== 0) throw new Error(`the command timed failed: ${stderr}`)
  return performance.now() - start
}

/**
 * `lidwright bundle` of a sample against Node that imports the engine and ends, both as the package has them: `run.ts` puts
 * them into the folder that the environment names. A person uses a command more than once, so what is wanted is asked of
 * a use that finds its code compiled; what the first use costs stands beside it.
 */
export function startedRows(): Row[] {
  const folder = process.env['LIDWRIGHT_BENCH'] ?? ''
  const out = mkdtempSync(join(tmpdir(), 'lidwright-bench-'))
  const caches = { HOME: out, LOCALAPPDATA: out, XDG_CACHE_HOME: out }
  const command = join(folder, 'command', 'exporters', 'bin.cjs')
  const words = [command, 'bundle', SAMPLE, '--out', join(out, 'everything.zip')]
  const engine = pathToFileURL(join(folder, 'engine', 'engine.mjs')).href
  const again = () => run(words, { ...caches, NODE_DISABLE_COMPILE_CACHE: '' })
  const first = () => run(words, { ...caches, NODE_DISABLE_COMPILE_CACHE: '1' })
  const theirs = () => run(['--input-type=module', '-e', `await import(${JSON.stringify(engine)})`], caches)
  for (const one of [again, first, theirs]) one()
  const rounds = Array.from({ length: ROUNDS }, () => ({
    again: again(),
    first: first(),
    theirs: theirs(),
  }))
  rmSync(out, { recursive: true, force: true })
  const against = (ours: 'again' | 'first') =>
    summed(rounds.map((round) => ({ ours: round[ours], theirs: round.theirs })))
  return [
    rowOf('lidwright bundle / Node started and the engine imported', against('again'), 2),
    rowOf('lidwright bundle, its first use / Node started and the engine imported', against('first'), null),
  ]
}
