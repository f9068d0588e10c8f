import { spawnSync } from 'node:child_process'
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join, resolve } from 'node:path'
import { expect, test } from 'vitest'
import { project } from './support/project-files.ts'

/** The names TypeScript does not know, or not as values, in a file compiled by a room's own settings. */
function unknownNames(room: string, names: readonly string[]): string[] {
  const folder = mkdtempSync(join(tmpdir(), 'lidwright-types-'))
  try {
    const settings = {
      extends: resolve(project, room, 'tsconfig.json'),
      compilerOptions: { typeRoots: [resolve(project, 'node_modules/@types')] },
      files: ['probe.ts'],
    }
    writeFileSync(join(folder, 'tsconfig.json'), JSON.stringify(settings))
    writeFileSync(join(folder, 'probe.ts'), `export const probes = [${names.join(', ')}]\n`)
    const tsc = resolve(project, 'node_modules/typescript/bin/tsc')
    const { stdout } = spawnSync(process.execPath, [tsc, '-p', folder, '--pretty', 'false'], {
      encoding: 'utf8',
    })
    return names.filter((name) => new RegExp(`TS\\d+: Cannot find name '${name}'`).test(stdout))
  } finally {
    rmSync(folder, { recursive: true, force: true })
  }
}

const page = ['window', 'document', 'localStorage', 'indexedDB']
const machine = ['process', 'Buffer', 'setTimeout', 'console', 'performance']

test('in geometry neither page nor machine compiles', () => {
  expect(unknownNames('geometry', [...page, ...machine, 'Math'])).toEqual([...page, ...machine])
})

test('in exporters no page compiles, since the command line has none', () => {
  expect(unknownNames('exporters', [...page, 'Uint8Array', 'TextEncoder'])).toEqual(page)
})

test('in the page all of it compiles, so the two tests above see what they say they see', () => {
  expect(unknownNames('.', [...page, ...machine])).toEqual([])
})
