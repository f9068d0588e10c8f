/**
 * The lint rule and the table in support/rooms.ts state one thing twice: the lint rule so that an editor
 * says at once why an import is refused, the table because it can resolve and walk. This runs the real
 * linter over one probe per import and compares.
 */
import { spawnSync } from 'node:child_process'
import { cpSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { dirname, join, resolve } from 'node:path'
import { afterAll, expect, test } from 'vitest'
import { breaches } from './support/import-rule.ts'
import { project } from './support/project-files.ts'

const places = ['geometry/plane/probe', 'exporters/svg/probe', 'exporters/cli/probe', 'app/canvas/probe']
const targets = [
  ...['../../geometry/index.ts', '../../geometry/plane/point.ts', '../../exporters/index.ts'],
  ...['../../exporters/svg/write.ts', '../../app/state/store.ts', '../../tests/support/rooms.ts'],
  ...[
    './own.ts',
    'zod',
    'flatbush',
    'dxf-writer',
    'makerjs',
    'commander',
    'react',
    'react-dom/client',
    'konva',
  ],
  ...[
    'react-konva',
    'zustand',
    'zustand/vanilla',
    'idb',
    'lodash',
    '@scope/other',
    'node:fs',
    'node:fs/promises',
  ],
]
const folder = mkdtempSync(join(tmpdir(), 'lidwright-lint-'))
afterAll(() => rmSync(folder, { recursive: true, force: true }))

/** Every path the probes lead to, so that the table looks at the room and not for the file. */
const there = Object.fromEntries(
  [
    ...['geometry/index.ts', 'geometry/plane/point.ts', 'exporters/index.ts', 'exporters/svg/write.ts'],
    ...[
      'app/state/store.ts',
      'tests/support/rooms.ts',
      ...places.map((place) => join(dirname(place), 'own.ts')),
    ],
  ].map((path) => [path, '']),
)

const probes = places.flatMap((place) =>
  targets.map((target, index) => ({
    file: `${place}-${index}.ts`,
    target,
    text: `import type { X } from '${target}'\nexport type Y = X\n`,
  })),
)

test('the linter refuses exactly the imports the table refuses, and says why', () => {
  cpSync(resolve(project, '.biome.jsonc'), join(folder, '.biome.jsonc'))
  for (const { file, text } of probes) {
    mkdirSync(dirname(join(folder, file)), { recursive: true })
    writeFileSync(join(folder, file), text)
  }
  const linted = spawnSync(
    process.execPath,
    [
      resolve(project, 'node_modules/@biomejs/biome/bin/biome'),
      ...['lint', '--only=style/noRestrictedImports', '--max-diagnostics=none', '--reporter=json'],
    ],
    { cwd: folder, encoding: 'utf8', maxBuffer: 1 << 26 },
  )
  const { diagnostics } = JSON.parse(linted.stdout) as {
    diagnostics: { category: string; location: { path: string }; message: string }[]
  }
  const refused = new Map(diagnostics.map((one) => [one.location.path.replaceAll('\\', '/'), one.message]))
  const say = (isRefused: (file: string, text: string) => boolean) =>
    probes.map(
      ({ file, target, text }) =>
        `${dirname(file)}: ${target}: ${isRefused(file, text) ? 'refused' : 'allowed'}`,
    )
  const byLinter = say((file) => refused.has(file))
  const byTable = say(
    (file, text) => breaches(new Map(Object.entries({ ...there, [file]: text }))).length > 0,
  )
  expect(byLinter).toEqual(byTable)
  expect(new Set(byTable.map((line) => line.split(': ').at(-1)))).toEqual(new Set(['refused', 'allowed']))
  for (const message of refused.values()) expect(message).toMatch(/geometry|exporters|page|command line/)
})
