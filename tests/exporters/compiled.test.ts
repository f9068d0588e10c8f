/** Code kept compiled between runs: taken only as it was left, for the same program, and never missed. */
import {
  chmodSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  writeFileSync,
} from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterEach, beforeEach, expect, test, vi } from 'vitest'
import { compiled } from '../../exporters/launcher/compiled.cjs'

let folder = ''
let program = ''
let kept = ''

const says = (word: string) =>
  writeFileSync(program, `(function (exports, require, module) { exports.say = () => '${word}' })\n`)

/** What the program says; and whether it was compiled anew, which shows in that it is kept anew. */
function run(command = 'check'): { said: string; anew: boolean } {
  const { exports, keep } = compiled(program, command)
  const said = exports.say()
  const before = existsSync(kept) ? readFileSync(kept) : null
  rmSync(kept, { force: true })
  keep()
  const anew = existsSync(kept)
  if (!anew && before) writeFileSync(kept, before, { mode: 0o600 })
  return { said, anew }
}

const changed = (at: number) => {
  const bytes = readFileSync(kept)
  bytes.writeUInt8(bytes.readUInt8(at) ^ 1, at)
  writeFileSync(kept, bytes)
}

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'lidwright-compiled-'))
  program = join(folder, 'program.js')
  // Each system has its own of these.
  vi.stubEnv('HOME', folder)
  vi.stubEnv('LOCALAPPDATA', folder)
  vi.stubEnv('XDG_CACHE_HOME', join(folder, process.platform === 'darwin' ? 'Library/Caches' : ''))
  const caches = process.platform === 'darwin' ? join(folder, 'Library/Caches') : folder
  kept = join(caches, 'lidwright', 'check.compiled')
  vi.stubEnv('NODE_DISABLE_COMPILE_CACHE', undefined)
  says('teak')
})

afterEach(() => {
  vi.unstubAllEnvs()
  rmSync(folder, { recursive: true, force: true })
})

test('the first run compiles, the second does not, and both say the same', () => {
  expect(run()).toEqual({ said: 'teak', anew: true })
  expect(run()).toEqual({ said: 'teak', anew: false })
  expect(run()).toEqual({ said: 'teak', anew: false })
})

test('only whoever ran it may read or change what is kept', { skip: process.platform === 'win32' }, () => {
  run()
  expect(statSync(kept).mode & 0o777).toBe(0o600)
  expect(statSync(join(kept, '..')).mode & 0o777).toBe(0o700)
  chmodSync(kept, 0o620)
  expect(run()).toEqual({ said: 'teak', anew: true })
})

test('each command keeps what it needs by itself, and nothing else lies beside it', () => {
  run()
  run('bundle')
  expect(readdirSync(join(kept, '..')).sort()).toEqual(['bundle.compiled', 'check.compiled'])
})

test('another program of the same length is another program', () => {
  run()
  says('pine')
  expect(run()).toEqual({ said: 'pine', anew: true })
  expect(run()).toEqual({ said: 'pine', anew: false })
})

test.each([
  ['at its beginning', 0],
  ['in its middle', 200],
  ['in its sums', -3],
])('what was damaged %s is compiled again', (_, at) => {
  run()
  changed(at < 0 ? statSync(kept).size + at : at)
  expect(run()).toEqual({ said: 'teak', anew: true })
  expect(run()).toEqual({ said: 'teak', anew: false })
})

test.each([0, 5, 8, 100])('what was cut off after %i bytes is compiled again', (length) => {
  run()
  writeFileSync(kept, readFileSync(kept).subarray(0, length))
  expect(run()).toEqual({ said: 'teak', anew: true })
})

test('where nothing can be kept the program runs all the same', () => {
  writeFileSync(join(folder, 'a-file'), '')
  vi.stubEnv('HOME', join(folder, 'a-file'))
  vi.stubEnv('LOCALAPPDATA', join(folder, 'a-file'))
  vi.stubEnv('XDG_CACHE_HOME', join(folder, 'a-file'))
  expect(run()).toEqual({ said: 'teak', anew: false })
})

test('what is no file is left alone', () => {
  mkdirSync(kept, { recursive: true })
  expect(compiled(program, 'check').exports.say()).toBe('teak')
  expect(statSync(kept).isDirectory()).toBe(true)
})

test('nothing is kept where Node is told to keep none, nor for what is no command', () => {
  for (const word of ['', '--help', '../check', 'check/..', 'CHECK']) {
    compiled(program, word).keep()
    expect(existsSync(join(folder, 'lidwright')), word).toBe(false)
  }
  vi.stubEnv('NODE_DISABLE_COMPILE_CACHE', '1')
  expect(run()).toEqual({ said: 'teak', anew: false })
})
