/** Mutants are real ones: each is other text that still runs, and with none on the program is as it was. */
import { describe, expect, test } from 'vitest'
import { mutantsOf, withSwitches } from './mutants.ts'

const texts = (source: string) => mutantsOf('a.ts', source).map(({ text }) => text)

describe('what is put in place of what', () => {
  test.each([
    ['b + 1', ['(b) - (1)', '2']],
    ['a < b', ['(a) <= (b)', '(a) >= (b)']],
    ['a === b && !c', ['(a === b) || (!c)', '(a) !== (b)', '!!(c)']],
    ['Math.min(a, -b)', ['Math.max(a, -b)', '(b)']],
    ['true', ['false']],
    ['0.5', ['0.55']],
    ['1e-6', ['0.001']],
  ])('%s', (source, wanted) => expect(texts(source).sort()).toEqual([...wanted].sort()))

  test('words, types, indexes, sentences and what throws are left alone', () => {
    expect(texts("const a: 1 | 2 = list[0] + 'x'")).toEqual([])
    expect(texts('type A = 1; interface B { c: 2 }')).toEqual([])
    expect(texts('throw new Error(String(1 + 1))')).toEqual([])
    expect(texts('const rule = { words: (a) => a + 1 }')).toEqual([])
  })
})

/** Runs JavaScript with one mutant on. */
function run(source: string, on: number): unknown {
  const mutants = mutantsOf('a.ts', source).map((one, id) => ({ ...one, id }))
  const given: { sum?: number } = {}
  new Function('__mutant', 'given', withSwitches(source, mutants))((id: number) => id === on, given)
  return given.sum
}

test('with none on all is as ever, with one on something is another', () => {
  const source = `
    let sum = 1
    sum += 2 * (3 + 4)
    sum -= Math.max(sum / 5, 1)
    if (sum > 3 && sum !== 7) sum *= 2
    given.sum = sum`
  const all = mutantsOf('a.ts', source).length
  expect(all).toBeGreaterThan(12)
  expect(run(source, -1)).toBe(24)
  const others = Array.from({ length: all }, (_, id) => run(source, id))
  expect(others.filter((one) => one !== 24).length).toBeGreaterThan(10)
  expect(others.every((one) => typeof one === 'number')).toBe(true)
})
