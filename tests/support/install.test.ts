import { spawnSync } from 'node:child_process'
import { cpSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join, resolve } from 'node:path'
import { afterEach, beforeEach, expect, test } from 'vitest'

let folder: string
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'lidwright-install-'))
  mkdirSync(join(folder, 'tests/support'), { recursive: true })
  cpSync(resolve(import.meta.dirname, 'install.mjs'), join(folder, 'tests/support/install.mjs'))
  // Stands in for npm and only says how it was called.
  writeFileSync(
    join(folder, 'npm-cli.js'),
    `console.log('npm', ...process.argv.slice(2)); process.exit(Number(process.env.NPM_ENDS ?? 0))`,
  )
})
afterEach(() => rmSync(folder, { recursive: true, force: true }))

function lock(path: string, packages: Record<string, object>) {
  mkdirSync(join(folder, path, '..'), { recursive: true })
  writeFileSync(join(folder, path), JSON.stringify({ packages }))
}

function install(environment: Record<string, string> = {}) {
  const env = { ...process.env, npm_execpath: join(folder, 'npm-cli.js'), ...environment }
  const result = spawnSync(process.execPath, [join(folder, 'tests/support/install.mjs')], {
    env,
    encoding: 'utf8',
  })
  return { status: result.status, out: result.stdout, err: result.stderr }
}

const wanted = { '': { version: '1.0.0' }, 'node_modules/saw': { version: '2.0.0' } }
const elsewhere = { 'node_modules/saw-for-other-machines': { version: '2.0.0', optional: true } }

test('installs when there is nothing yet', () => {
  lock('package-lock.json', wanted)
  const { status, out } = install()
  expect(status).toBe(0)
  expect(out).toMatch(/^Installing packages: there are none yet\.\nnpm ci /)
})

test('installs when a package is missing or of another version', () => {
  lock('package-lock.json', wanted)
  lock('node_modules/.package-lock.json', {})
  expect(install().out).toContain('node_modules/saw 2.0.0 is wanted and missing')
  lock('node_modules/.package-lock.json', { 'node_modules/saw': { version: '1.9.0' } })
  expect(install().out).toContain('node_modules/saw 2.0.0 is wanted and 1.9.0 is there')
})

test('is silent when all is there but what is for other machines', () => {
  lock('package-lock.json', { ...wanted, ...elsewhere })
  lock('node_modules/.package-lock.json', wanted)
  expect(install()).toEqual({ status: 0, out: '', err: '' })
})

test('stops with a sentence when npm fails', () => {
  lock('package-lock.json', wanted)
  const { status, err } = install({ NPM_ENDS: '1' })
  expect(status).toBe(1)
  expect(err).toContain('could not be installed')
})
