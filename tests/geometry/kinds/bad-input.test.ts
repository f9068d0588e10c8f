/** What is too much, too large or broken is said in a sentence; nothing is lost and nothing freezes. */
import { describe, expect, test } from 'vitest'
import { check, checkDesign, partsOf, sentenceOf, solve } from '../../../geometry/index.ts'
import { designOf, type Stated } from '../../support/designs.ts'

const read = (...things: Stated[]) => checkDesign({ format: 'lidwright', version: 1, hand: 'right', things })

const told = (...things: Stated[]) => {
  const layout = solve(designOf({ things }))
  return check(layout)
    .filter((one) => one.grade === 'stop' || one.grade === 'care')
    .map((one) => sentenceOf(one, layout))
    .join('\n')
}

describe('a curve in a file', () => {
  test('that crosses itself is refused by the name of its segments', () => {
    const reading = read({
      kind: 'own-curve',
      id: 'bow',
      curve: [
        [0, 0, 0],
        [40, 40, 0],
        [40, 0, 0],
        [0, 40, 0],
      ],
    })
    expect(reading).toMatchObject({ ok: false, faults: [{ path: 'things.bow' }] })
    if (!reading.ok) expect(reading.faults[0]?.sentence).toContain('Segments 1 and 3 cross or touch')
  })

  test('with numbers that are none, or too many corners, is refused', () => {
    expect(read({ kind: 'own-curve', id: 'a', curve: [[0, 0, 0]] }).ok).toBe(false)
    expect(
      read({
        kind: 'own-curve',
        id: 'a',
        curve: [
          ['0', 0, 0],
          [1, 1, 0],
          [2, 0, 0],
        ],
      }).ok,
    ).toBe(false)
    const many = Array.from({ length: 4001 }, (_, index) => [index, index % 2, 0])
    expect(read({ kind: 'own-curve', id: 'a', curve: many }).ok).toBe(false)
  })
})

describe('ten thousand holes', () => {
  test('in one rosette are counted and not laid out, in no time', () => {
    const began = performance.now()
    const words = told({
      kind: 'rosette',
      id: 'sieve',
      along: 120,
      across: 0,
      shape: 'rectangular',
      sizeAlong: 200,
      sizeAcross: 150,
      pattern: 'rows',
      hole: 0.6,
      pitch: 1.2,
    })
    expect(words).toContain('would have about 20833 holes')
    expect(performance.now() - began).toBeLessThan(500)
  })

  test('as ten thousand screws are read, solved and checked within seconds, and none is lost', {
    timeout: 30_000,
  }, () => {
    const screws = Array.from({ length: 10_000 }, (_, index) => ({
      kind: 'screw',
      id: `s-${index}`,
      along: 20 + 12 * (index % 100),
      across: -600 + 12 * Math.floor(index / 100),
      head: 6,
    }))
    const reading = checkDesign({
      format: 'lidwright',
      version: 1,
      hand: 'right',
      box: { length: 1400, width: 1000 },
      things: screws,
    })
    if (!reading.ok) throw new Error(reading.faults[0]?.sentence)
    const layout = solve(reading.design)
    expect(layout.placed).toHaveLength(10_000)
    expect(check(layout).length).toBeGreaterThan(10_000)
  })
})

describe('hardware larger than its face', () => {
  test.each([
    [
      'a pot in a low wall',
      { kind: 'pot', face: 'treble-wall', along: 0, across: 20, knob: 60 },
      'over the edge',
    ],
    [
      'a hatch wider than the base',
      { kind: 'hatch', along: 120, across: 0, sizeAcross: 300 },
      'beyond the edge',
    ],
    [
      'a pickup deeper than the box',
      { kind: 'pickup', along: 60, across: 50, sizeAcross: 30, depth: 60 },
      'deeper than the box',
    ],
    [
      'a jack as tall as its wall, that reaches the neck',
      { kind: 'jack', face: 'bass-wall', along: 0, across: 25, bodyDepth: 80, bodyDiameter: 40, thread: 12 },
      'want the same room',
    ],
    ['a name plate thicker than the wall', { kind: 'name-plate', depth: 20 }, 'falls through'],
  ])('%s: a sentence, and every part is still drawn', (_, thing, words) => {
    const stated = { id: 'it', ...thing } as Stated
    expect(told(stated)).toContain(words)
    expect(partsOf(solve(designOf({ things: [stated] }))).length).toBeGreaterThan(8)
  })
})
