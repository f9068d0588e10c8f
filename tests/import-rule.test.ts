import { readFileSync } from 'node:fs'
import { resolve } from 'node:path'
import { describe, expect, test } from 'vitest'
import { breaches, isCode } from './support/import-rule.ts'
import { project, projectFiles } from './support/project-files.ts'

const tree = (files: Record<string, string>) => breaches(new Map(Object.entries(files)))

describe('this project', () => {
  const names = projectFiles()
  const files = new Map(
    names.map((name) => [name, isCode(name) ? readFileSync(resolve(project, name), 'utf8') : '']),
  )

  // Every file is read and parsed: seconds where other work is going on.
  test('keeps the rules', { timeout: 60_000 }, () => {
    expect(breaches(files)).toEqual([])
  })

  test.each(['geometry/', 'exporters/', 'app/', 'tests/'])(
    'has code in %s, so the rule has something to look at',
    (room) => {
      expect(names.filter((name) => name.startsWith(room) && isCode(name)).length).toBeGreaterThan(1)
    },
  )

  test.each([
    ...['geometry/index.ts', 'exporters/index.ts', 'exporters/cli.ts', 'app/main.tsx'],
    ...['README.md', 'DEVELOPERS.md', 'LICENSE', 'package.json', 'package-lock.json'],
  ])('has %s', (name) => {
    expect(names).toContain(name)
  })

  test('has at its top only what belongs there', () => {
    const allowed = [
      ...['README.md', 'DEVELOPERS.md', 'LICENSE', 'package.json', 'package-lock.json', 'tsconfig.json'],
      ...['app', 'geometry', 'exporters', 'tests', 'sample-boxes'],
    ]
    const top = [...new Set(names.map((name) => name.split('/')[0] ?? ''))]
    expect(top).toContain('package.json')
    expect(top.filter((name) => !name.startsWith('.') && !allowed.includes(name))).toEqual([])
  })

  test('names no registry in its lock file, so it installs from any', () => {
    const lock = readFileSync(resolve(project, 'package-lock.json'), 'utf8')
    expect(lock).toContain('"lockfileVersion"')
    expect(lock).not.toContain('"resolved"')
  })
})

describe('the rule refuses', () => {
  const geometry = { 'geometry/index.ts': '', 'geometry/plane/point.ts': '' }
  const all = {
    ...geometry,
    'exporters/index.ts': '',
    'exporters/svg/write.ts': '',
    'app/main.tsx': '',
    'tests/a.test.ts': '',
  }

  test.each([
    ['geometry/a.ts', `import { x } from '../exporters/index.ts'`],
    ['geometry/a.ts', `import type { X } from '../exporters/index.ts'`],
    ['geometry/a.ts', `export * from '../app/main.tsx'`],
    ['geometry/a.ts', `export { x } from '../tests/a.test.ts'`],
    ['geometry/a.ts', `type X = import('../exporters/index.ts').X`],
    ['geometry/a.ts', `const x = await import('../exporters/index.ts')`],
    ['geometry/a.ts', `const x = await import(name)`],
    ['geometry/a.ts', `import x = require('../exporters/index.ts')`],
    ['geometry/a.ts', `const x = require('../exporters/index.ts')`],
    ['geometry/a.ts', `const x = new Worker(new URL('../app/main.tsx', import.meta.url))`],
    ['geometry/a.ts', `const x = import.meta.glob(['../app/*.tsx'])`],
    ['geometry/a.ts', `import fs from 'fs'`],
    ['geometry/a.ts', `import fs from 'node:fs/promises'`],
    ['geometry/a.ts', `import makerjs from 'makerjs'`],
    ['exporters/a.ts', `import { x } from '../geometry/plane/point.ts'`],
    ['exporters/a.ts', `import { x } from '../app/main.tsx'`],
    ['exporters/a.ts', `import { readFileSync } from 'node:fs'`],
    ['exporters/a.ts', `import { Command } from 'commander'`],
    ['exporters/cli.ts', `import { x } from '../geometry/plane/point.ts'`],
    ['exporters/cli.ts', `import { x } from '../app/main.tsx'`],
    ['app/a.tsx', `import { x } from '../geometry/plane/point.ts'`],
    ['app/a.tsx', `import { x } from '../exporters/svg/write.ts'`],
    ['app/a.tsx', `import { x } from '../tests/a.test.ts'`],
    ['app/a.tsx', `import { x } from 'lodash'`],
    ['app/a.tsx', `import { x } from 'react-dominion'`],
    ['app/a.tsx', `import { readFileSync } from 'node:fs'`],
    ['app/a.tsx', `import { x } from './nothing.ts'`],
    ['sample-boxes/a.ts', `import { x } from '../geometry/index.ts'`],
    ['other/a.ts', ''],
  ])('%s: %s', (file, text) => {
    const found = tree({ ...all, [file]: `// a line above\n${text}` })
    expect(found).toHaveLength(1)
    expect(found[0]).toMatch(file.startsWith('other') ? 'no room' : `${file}:2: imports`)
  })

  test('a page or exporter that imports the command line', () => {
    const cli = { ...all, 'exporters/cli.ts': '', 'exporters/cli/files.ts': '' }
    expect(tree({ ...cli, 'exporters/a.ts': `import './cli.ts'` })).toHaveLength(1)
    expect(tree({ ...cli, 'exporters/a.ts': `import './cli/files.ts'` })).toHaveLength(1)
    expect(tree({ ...cli, 'app/a.ts': `import '../exporters/cli.ts'` })).toHaveLength(1)
    expect(tree({ ...cli, 'exporters/cli/more.ts': `import './files.ts'` })).toEqual([])
  })

  test('a circle, also one of types only, also of one file', () => {
    const found = tree({
      'geometry/a.ts': `import type { B } from './b.ts'`,
      'geometry/b.ts': `import './c.ts'`,
      'geometry/c.ts': `import type { A } from './a.ts'`,
      'app/self.ts': `import './self.ts'`,
    })
    expect(found).toEqual([
      'app/self.ts: imports itself in a circle: app/self.ts → app/self.ts',
      'geometry/a.ts: imports itself in a circle: geometry/a.ts → geometry/b.ts → geometry/c.ts → geometry/a.ts',
    ])
  })

  test.each([
    ...['Math.random()', 'Date.now()', 'new Date()', 'new Date(0)', 'Intl.NumberFormat()'],
    ...['(1).toLocaleString()', `'a'.localeCompare('b')`, `'a'?.toLocaleUpperCase()`],
    ...['performance.now()', 'crypto.randomUUID()', '[1].map(Math.random)', '[1].map(Date)'],
  ])('%s where results must be exact', (use) => {
    const text = `export const x = ${use}`
    expect(tree({ 'geometry/a.ts': text })).toHaveLength(1)
    expect(tree({ 'exporters/a.ts': text })).toHaveLength(1)
    expect(tree({ 'exporters/cli.ts': text, 'app/a.ts': text })).toEqual([])
  })

  test('chance by another name', () => {
    expect(tree({ 'geometry/a.ts': 'const { random } = Math' })).toHaveLength(1)
  })

  test('a file of 401 lines', () => {
    expect(tree({ 'app/a.ts': '\n'.repeat(401) })).toEqual(['app/a.ts: 401 lines, and 400 are the most'])
    expect(tree({ 'app/a.ts': '\n'.repeat(400) })).toEqual([])
  })
})

test('the rule lets pass what the rooms are for', () => {
  const found = tree({
    'geometry/index.ts': `export * from './plane/point.ts'`,
    'geometry/plane/point.ts': `import { z } from 'zod'\nimport Flatbush from 'flatbush'\nexport const sheet = { Date: 'a name', layout: z.Date }`,
    'exporters/index.ts': `import type { Part } from '../geometry/index.ts'\nimport Drawing from 'dxf-writer'\nimport { x } from './svg/write.ts'`,
    'exporters/svg/write.ts': `import type { Part } from '../../geometry/index.ts'`,
    'exporters/cli.ts': `import { writeFileSync } from 'node:fs'\nimport { Command } from 'commander'\nimport './index.ts'`,
    'exporters/bin.cjs': `const { run } = await import(where)\nawait import('vite')`,
    'app/main.tsx': `import { createRoot } from 'react-dom/client'\nimport './style.css'\nimport logo from './logo.svg?url'\nimport '../geometry/index.ts'\nimport '../exporters/index.ts'\nconst boxes = import.meta.glob('../sample-boxes/*.json')\nconst when = new Date()`,
    'app/style.css': '',
    'app/logo.svg': '',
    'sample-boxes/tea.json': '{}',
    'tests/a.test.ts': `import '../geometry/plane/point.ts'\nimport fc from 'fast-check'`,
  })
  expect(found).toEqual([])
})
