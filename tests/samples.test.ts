/** Every sample box is walked: it reads, it can be built, its exports are the expected ones and say what the engine says. */
import { readdirSync, readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { blocks, check, KINDS, partsOf, RULES, sentenceOf, solve } from '../geometry/index.ts'
import { expectedFolder, expectedOf, exportsOf, samples } from './support/samples.ts'

const all = samples()

describe('the set of samples', () => {
  it('has at least six, with 1, 2, 3, 4 and 6 strings, a fretless one, a short scale and a left-handed one', () => {
    expect(all.length).toBeGreaterThanOrEqual(6)
    const counts = new Set(all.map(({ design }) => design.strings.count))
    for (const count of [1, 2, 3, 4, 6]) expect(counts).toContain(count)
    expect(all.some(({ design }) => design.scale.fretless)).toBe(true)
    expect(all.some(({ design }) => design.scale.length < 432)).toBe(true)
    expect(all.some(({ design }) => design.hand === 'left')).toBe(true)
  })

  it('uses every kind of thing', () => {
    const used = new Set(all.flatMap(({ design }) => design.things.map((thing) => thing.kind)))
    for (const kind of Object.keys(KINDS)) expect(used).toContain(kind)
  })

  it('has no expected folder without its sample', () => {
    const folders = readdirSync(new URL('..', expectedFolder('x')))
    expect(folders.sort()).toEqual(all.map(({ name }) => name))
  })
})

describe.each(all.map((sample) => ({ title: sample.name, sample })))('$title', ({ title, sample }) => {
  const layout = solve(sample.design)
  const findings = check(layout)

  it('can be built: nothing blocks, every rule that speaks has words', () => {
    expect(findings.filter(blocks).map((one) => sentenceOf(one, layout))).toEqual([])
    expect(findings.length).toBeGreaterThan(RULES.length / 2)
    expect(layout.problems).toEqual([])
  })

  it('overrules only findings that exist', () => {
    const keys = new Set(findings.filter((one) => one.grade !== 'clear').map((one) => one.key))
    for (const key of Object.keys(sample.design.overruled)) expect(keys).toContain(key)
  })

  it('exports what is expected, byte for byte (npm run samples rewrites after a change that was meant)', () => {
    const expected = expectedOf(sample)
    const kept = readdirSync(expectedFolder(title))
    expect(kept.sort()).toEqual([...expected.keys()].sort())
    for (const [name, text] of expected)
      expect(readFileSync(new URL(name, expectedFolder(title)), 'utf8')).toBe(text)
  })

  it('exports every part in both formats and both sheets', () => {
    const names = exportsOf(sample).map((file) => file.name)
    for (const part of partsOf(layout))
      for (const format of ['svg', 'dxf'])
        expect(names.some((name) => name.endsWith(`-${part.id}.${format}`))).toBe(true)
    expect(names.filter((name) => name.includes('-all-parts.')).length).toBe(2)
  })
})

it('one sample is tight on purpose: several findings ask for care', () => {
  const tight = all.find(({ name }) => name.includes('tight'))
  if (!tight) throw new Error('the tight sample is missing')
  const layout = solve(tight.design)
  expect(check(layout).filter((one) => one.grade === 'care').length).toBeGreaterThanOrEqual(4)
})
