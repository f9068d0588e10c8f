/**
 * The command as its user gets it: packed, installed into an empty folder without a network, and started
 * with `npx`.
 */
import { spawnSync } from 'node:child_process'
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join, resolve } from 'node:path'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { makeBundle } from '../../exporters/bundle/bundle.ts'
import { readDesign } from '../../geometry/index.ts'
import { project } from '../support/project-files.ts'

const teaBox = (() => {
  const file = resolve(project, 'sample-boxes/tea-box-three-strings.lidwright.json')
  const reading = readDesign(readFileSync(file, 'utf8'))
  if (!reading.ok) throw new Error(reading.faults[0]?.sentence)
  return { file, design: reading.design }
})()

const folder = mkdtempSync(join(tmpdir(), 'lidwright-bin-'))
afterAll(() => rmSync(folder, { recursive: true, force: true }))

/** Where the commands started here keep what they keep; each system asks another variable. */
const caches = join(folder, process.platform === 'darwin' ? 'Library/Caches' : 'caches')
const keeping = {
  LOCALAPPDATA: caches,
  XDG_CACHE_HOME: caches,
  ...(process.platform === 'darwin' ? { HOME: folder } : {}),
  // A new npm is no trouble of the command.
  NPM_CONFIG_UPDATE_NOTIFIER: 'false',
}

/** Runs a program in a folder; what npm tells its scripts about this project is none of its business. */
function start(cwd: string, program: string, ...words: string[]) {
  const environment = Object.entries(process.env).filter(([name]) => !/^(npm_|NODE_ENV$|VITEST)/i.test(name))
  const shell = process.platform === 'win32'
  const result = spawnSync(program, words, {
    cwd,
    env: { ...Object.fromEntries(environment), ...keeping },
    encoding: 'utf8',
    shell,
  })
  return { status: result.status, out: result.stdout, err: result.stderr }
}

const fromSource = () => start(folder, process.execPath, resolve(project, 'exporters/bin.cjs'), '--help')

test('in the checkout the command says how it is used, from whatever folder it is started', () => {
  const { status, out, err } = fromSource()
  expect({ status, err }).toEqual({ status: 0, err: '' })
  expect(out).toContain('lidwright')
})

test('in the checkout npx finds the command', () => {
  const byNpx = start(project, 'npx', 'lidwright', '--help')
  expect(byNpx).toMatchObject({ status: 0, out: expect.stringContaining('lidwright') })
  expect(byNpx).toEqual(fromSource())
})

describe('packed and installed', () => {
  beforeAll(() => {
    const packed = start(project, 'npm', 'pack', '--pack-destination', folder)
    expect(packed, 'npm pack').toMatchObject({ status: 0 })
    const archive = readdirSync(folder).find((name) => name.endsWith('.tgz')) ?? 'no archive'
    writeFileSync(join(folder, 'package.json'), '{ "name": "a-shed", "private": true }')
    const installed = start(
      folder,
      'npm',
      'install',
      '--offline',
      '--no-audit',
      '--no-fund',
      join(folder, archive),
    )
    expect(installed, 'npm install').toMatchObject({ status: 0 })
  }, 120_000)

  test('it brings no source and no other package, and the licences of what is bundled', () => {
    const inside = join(folder, 'node_modules/lidwright')
    expect(readdirSync(join(folder, 'node_modules')).filter((name) => !name.startsWith('.'))).toEqual([
      'lidwright',
    ])
    expect(readdirSync(join(inside, 'exporters'), { recursive: true }).sort()).toEqual([
      'bin.cjs',
      'launcher',
      join('launcher', 'compiled.cjs'),
    ])
    expect(existsSync(join(inside, 'dist-cli/licenses.md'))).toBe(true)
    expect(existsSync(join(inside, 'LICENSE'))).toBe(true)
  })

  test('npx finds it, and it says the same as the source', () => {
    expect(start(folder, 'npx', '--offline', 'lidwright', '--help')).toEqual(fromSource())
  })

  test('the bundle of the package is the one that the source makes, byte for byte, from new code and from kept', async () => {
    const { design, file } = teaBox
    const { bytes } = await makeBundle(design)
    const kept = join(caches, 'lidwright', 'bundle.compiled')
    const bundled = () => {
      const { status, err } = start(
        folder,
        'npx',
        '--offline',
        'lidwright',
        'bundle',
        file,
        '--out',
        'all.zip',
      )
      expect({ status, err }).toEqual({ status: 0, err: '' })
      expect(Buffer.compare(readFileSync(join(folder, 'all.zip')), bytes)).toBe(0)
      return statSync(kept).mtimeMs
    }
    expect(existsSync(kept)).toBe(false)
    const written = bundled()
    expect(bundled(), 'what is kept is taken, not written again').toBe(written)
  })

  test('a command it does not know is refused with words and a code, and leaves nothing', () => {
    const { status, err } = start(folder, 'npx', '--offline', 'lidwright', 'paint')
    expect(status).toBeGreaterThan(0)
    expect(err).toContain('paint')
    expect(readdirSync(join(caches, 'lidwright'))).toEqual(['bundle.compiled'])
  })
}, 120_000)
