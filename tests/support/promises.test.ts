/** What README and DEVELOPERS say can be run, can be: no command of theirs is gone, and no folder, trial or flag. */
import { existsSync, readFileSync } from 'node:fs'
import { resolve } from 'node:path'
import { describe, expect, test } from 'vitest'
import { TRIALS } from '../fuzz/trials.ts'
import { project } from './project-files.ts'

const textOf = (name: string) => readFileSync(resolve(project, name), 'utf8')
const scripts = Object.keys((JSON.parse(textOf('package.json')) as { scripts: object }).scripts)

/** Commands in a text: the script of each, and the words behind its two dashes. */
const commandsIn = (text: string) =>
  [...text.matchAll(/`npm (?:run )?([\w:]+)(?: -- ([^`]*))?`/g)].map(([whole, script = '', words = '']) => ({
    whole,
    script,
    words: words.split(' ').filter(Boolean),
  }))

const readme = commandsIn(textOf('README.md'))

describe.each(['README.md', 'DEVELOPERS.md'])('%s', (name) => {
  test('names only commands that there are', () => {
    const commands = commandsIn(textOf(name)).map(({ script }) => script)
    expect(commands.length).toBeGreaterThan(5)
    expect(commands.filter((script) => !scripts.includes(script))).toEqual([])
  })
})

test('a promise names tests that there are, and trials that there are', () => {
  const paths = readme.filter(({ script }) => script === 'test').flatMap(({ words }) => words)
  expect(paths.length).toBeGreaterThan(8)
  expect(paths.filter((path) => !existsSync(resolve(project, path)))).toEqual([])
  const trials = readme.flatMap(({ words }) =>
    words.flatMap((word, at) => (word === '--only' ? [words[at + 1]] : [])),
  )
  expect(new Set(trials)).toEqual(new Set(TRIALS.map(({ name }) => name)))
})

test('every flag named is one that the command takes', () => {
  for (const script of ['fuzz', 'mutate']) {
    const source = textOf(`tests/${script}/run.ts`)
    const flags = readme
      .filter((one) => one.script === script)
      .flatMap(({ words }) => words.filter((word) => word.startsWith('--')))
    for (const flag of flags) expect(source).toContain(`  ${flag} `)
  }
})

test('every row of the table of proofs has a promise, a command and what it does', () => {
  const table = textOf('README.md').split('## What proves it')[1]?.split('\n## ')[0] ?? ''
  const rows = table.split('\n').filter((line) => line.startsWith('| ') && !line.includes('---'))
  expect(rows.length).toBeGreaterThan(10)
  for (const row of rows.slice(1)) {
    const [, , command = '', does = ''] = row.split('|').map((cell) => cell.trim())
    expect(command).toMatch(/^`npm .*`$/)
    expect(does.length).toBeGreaterThan(20)
  }
})
