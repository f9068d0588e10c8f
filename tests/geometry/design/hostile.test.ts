/** Files made by somebody who means no good, or by a program gone wrong. */
import { describe, expect, test } from 'vitest'
import { readDesign } from '../../../geometry/index.ts'
import { faultsOf, file, proveFaults } from './files.ts'

describe('what is meant to break a reader', () => {
  const NESTED = 100_000

  test('twenty-one million characters', () => {
    const faults = faultsOf(`"${'x'.repeat(21_000_000)}"`)
    proveFaults(faults)
    expect(faults).toHaveLength(1)
    expect(faults[0]?.sentence).toContain('21000002')
  })

  test.each(['x', 'box', 'format', 'title', 'overruled'])(
    'nesting a hundred thousand deep in %s',
    (field) => {
      const deep = `${'['.repeat(NESTED)}${']'.repeat(NESTED)}`
      const head = field === 'format' ? '' : '"format":"lidwright",'
      proveFaults(faultsOf(`{${head}"version":1,"${field}":${deep}}`))
      proveFaults(faultsOf(`{${head}"version":1,"${field}":${'{"a":'.repeat(NESTED)}1${'}'.repeat(NESTED)}}`))
    },
  )

  test('things nested in things', () => {
    proveFaults(
      faultsOf(`{"format":"lidwright","version":1,"things":${'['.repeat(NESTED)}${']'.repeat(NESTED)}}`),
    )
  })

  test.each([
    ['{"format":"lidwright","version":1,"__proto__":{"hand":"left"}}', '__proto__'],
    ['{"format":"lidwright","version":1,"box":{"__proto__":{"length":300}}}', 'box.__proto__'],
    ['{"format":"lidwright","version":1,"limits":{"__proto__":5}}', 'limits.__proto__'],
    ['{"format":"lidwright","version":1,"constructor":{"prototype":{"hand":"left"}}}', 'constructor'],
    [
      '{"format":"lidwright","version":1,"things":[{"kind":"screw","id":"a","__proto__":{"head":0}}]}',
      'things.a.__proto__',
    ],
  ])('a key that is more than a key: %s', (text, path) => {
    const faults = faultsOf(text)
    proveFaults(faults)
    expect(faults.map((one) => one.path)).toEqual([path])
    expect(({} as { hand?: unknown }).hand).toBeUndefined()
  })

  test('a design that hides its format in its prototype', () => {
    expect(readDesign('{"__proto__":{"format":"lidwright","version":1}}').ok).toBe(false)
    expect(
      readDesign('{"format":"lidwright","version":1,"things":[{"__proto__":{"kind":"screw"},"id":"a"}]}').ok,
    ).toBe(false)
  })

  test('a reason filed under the prototype overrules nothing and changes nobody', () => {
    const reading = readDesign(
      '{"format":"lidwright","version":1,"overruled":{"__proto__":"mine","toString":"why not"}}',
    )
    if (!reading.ok) throw new Error('a reason under any name is a reason')
    expect(Object.entries(reading.design.overruled)).toEqual([['toString', 'why not']])
    expect(({} as { mine?: unknown }).mine).toBeUndefined()
  })

  test('a name of ten thousand letters is shortened, and what would turn the words over is not shown', () => {
    const faults = faultsOf(
      file({ ['x'.repeat(10_000)]: 1, 'abc\u202edcba': 2, 'esc\u001b[31m': 3, '\ud800': 4 }),
    )
    proveFaults(faults)
    expect(faults).toHaveLength(4)
    for (const { path, sentence } of faults) expect(path.length + sentence.length).toBeLessThan(300)
    proveFaults(faultsOf(file({ overruled: { ['x'.repeat(300)]: 'why' } })))
  })
})
