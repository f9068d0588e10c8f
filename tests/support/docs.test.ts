import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { REPORT_KEYS } from '../../exporters/report-keys.ts'
import {
  checkDesign,
  fieldsOf,
  fieldsOfKind,
  KINDS,
  LIMITS,
  RULES,
  sections,
  startingDesign,
} from '../../geometry/index.ts'
import { Bench } from './commandLine.ts'
import { samplesReadme } from './docs.ts'
import { MEND, readmeNow, readmePath, samplesIn } from './write-docs.ts'

test('sample-boxes/README.md is what the schema says now', () => {
  const fresh = readFileSync(readmePath, 'utf8') === readmeNow()
  expect(fresh, `sample-boxes/README.md is stale: "${MEND}" writes it anew`).toBe(true)
})

describe('the page', () => {
  const page = samplesReadme([])

  test('says first that it is made and by which command', () => {
    expect(page.split('\n')[0]).toContain(MEND)
  })

  test('names every field, limit, rule and key of the report', () => {
    const names = [
      ...fieldsOf('').map(({ name }) => name),
      ...sections().flatMap((section) => fieldsOf(section).map(({ name }) => `${section}.${name}`)),
      ...Object.keys(KINDS).flatMap((kind) => fieldsOfKind(kind).map(({ name }) => name)),
      ...Object.keys(LIMITS).map((name) => `limits.${name}`),
      ...RULES.map(({ name }) => name),
      ...REPORT_KEYS.map(({ key }) => key),
    ]
    expect(names.length).toBeGreaterThan(250)
    expect(names.filter((name) => !page.includes(`| \`${name}\` |`))).toEqual([])
  })

  test('every row of every table has as many cells as its heading', () => {
    for (const block of page.split('\n\n').filter((text) => text.startsWith('|'))) {
      const counts = block
        .trimEnd()
        .split('\n')
        .map((line) => line.replace(/\\\|/g, '').split('|').length)
      expect(new Set(counts).size, block.trimEnd().split('\n')[0]).toBe(1)
    }
  })

  test('its examples are designs that are read', () => {
    const examples = [...page.matchAll(/```json\n([\s\S]*?)\n```/g)].map(
      ([, text]) => JSON.parse(text ?? '') as object,
    )
    expect(examples.length).toBeGreaterThan(2)
    for (const example of examples)
      expect(checkDesign({ format: 'lidwright', version: 1, ...example })).toMatchObject({ ok: true })
  })

  test('does without samples, and without their folder', () => {
    expect(page).toContain('There are none yet.')
    expect(samplesIn(join(new Bench().folder, 'gone'))).toEqual([])
  })

  test('lists the samples of a folder in order of name, with what is expected of them', () => {
    const bench = new Bench()
    bench.put('b.lidwright.json', startingDesign({ title: 'Bread | box', strings: 2, scale: 600 }))
    bench.put('a.lidwright.json', startingDesign({ title: 'Apple box', hand: 'left' }))
    bench.put('expected/a/report.json', '{}')
    const text = samplesReadme(samplesIn(bench.folder))
    expect(text).toContain(
      '| [a.lidwright.json](a.lidwright.json) | Apple box | left | 3 | 635.0 mm | [`a`](expected/a) |\n' +
        '| [b.lidwright.json](b.lidwright.json) | Bread \\| box | not stated | 2 | 600.0 mm |  |',
    )
  })

  test('a sample that cannot be read is named', () => {
    const bench = new Bench()
    bench.put('a.lidwright.json', '{"format":"lidwright","version":1,"box":{"length":1}}')
    expect(() => samplesIn(bench.folder)).toThrow(/a\.lidwright\.json: box\.length: Read 1/)
  })
})
