/** The program of a checkout: made once, made anew when the source changed, and made all the same where it cannot be kept. */
import { spawnSync } from 'node:child_process'
import {
  cpSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { project } from '../support/project-files.ts'

const checkout = mkdtempSync(join(tmpdir(), 'lidwright-made-'))
const kept = join(checkout, 'node_modules/.lidwright')
afterAll(() => rmSync(checkout, { recursive: true, force: true }))

beforeAll(() => {
  for (const name of ['geometry', 'exporters', 'package.json', 'package-lock.json', 'tsconfig.json'])
    cpSync(join(project, name), join(checkout, name), { recursive: true })
  mkdirSync(join(checkout, 'node_modules'))
  // The packages of this checkout, but a folder of its own for what is made.
  for (const name of readdirSync(join(project, 'node_modules')))
    if (!name.startsWith('.'))
      symlinkSync(join(project, 'node_modules', name), join(checkout, 'node_modules', name), 'junction')
})

function version(): string {
  const { status, stdout, stderr } = spawnSync(
    process.execPath,
    [join(checkout, 'exporters/bin.cjs'), '--version'],
    {
      encoding: 'utf8',
    },
  )
  expect({ status, stderr }).toEqual({ status: 0, stderr: '' })
  return stdout.trim()
}

const file = join(checkout, 'exporters/cli/version.ts')
const say = (words: string) =>
  writeFileSync(file, readFileSync(file, 'utf8').replace(/'[\d.]+'/, `'${words}'`))

test('is made once, and anew when the source changed, however little', () => {
  say('0.7.1')
  expect(version()).toBe('0.7.1')
  const first = readdirSync(kept)
  expect(first).toHaveLength(1)
  expect(version()).toBe('0.7.1')
  expect(readdirSync(kept)).toEqual(first)
  say('0.7.2')
  expect(version()).toBe('0.7.2')
  const second = readdirSync(kept)
  expect(second).toHaveLength(1)
  expect(second).not.toEqual(first)
}, 60_000)

test('runs, and leaves nothing behind, where nothing can be kept', () => {
  rmSync(kept, { recursive: true, force: true })
  writeFileSync(kept, 'a file where the folder should be')
  const made = () => readdirSync(tmpdir()).filter((name) => name.startsWith('lidwright-program-'))
  const before = made()
  say('0.7.3')
  expect(version()).toBe('0.7.3')
  expect(made()).toEqual(before)
  expect(readFileSync(kept, 'utf8')).toBe('a file where the folder should be')
}, 60_000)
