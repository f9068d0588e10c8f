/** The outer strings from the edge of the board, where they come nearest to it. */
import { describe, expect, test } from 'vitest'
import { check, sentenceOf, solve } from '../../../geometry/index.ts'
import { designOf, type Stated } from '../../support/designs.ts'
import { at, to4, told } from './told.ts'

const saysOf = (stated: Stated) => told('string-to-board-edge', stated)

describe('at the nut', () => {
  // Half of 38 less half the span less half of 0.4; the strings come in on the way to the saddle.
  test.each([
    [32.6, 'clear', 2.5],
    [32.62, 'care', 2.49],
    [37.6, 'care', 0],
    [37.62, 'stop', -0.01],
  ])('with strings %d over all', (spanAtNut, grade, left) => {
    const y = spanAtNut / 2
    expect(saysOf({ strings: { spanAtNut, spanAtSaddle: 20 } })).toEqual([
      `${grade} string 3: ${left} of 2.5, plan ${at(0, -y)} to (0, -19)`,
      `${grade} string 1: ${left} of 2.5, plan ${at(0, y)} to (0, 19)`,
    ])
  })

  test('strings near the middle go by the edge on their own side', () => {
    expect(saysOf({ strings: { count: 2, spanAtNut: 1, spanAtSaddle: 1 } })).toEqual([
      'clear string 2: 18.3 of 2.5, plan (0, -0.5) to (0, -19)',
      'clear string 1: 18.3 of 2.5, plan (0, 0.5) to (0, 19)',
    ])
  })

  test('each side by its own string', () => {
    // 1 and 0.4 thick at ±16.
    expect(saysOf({ strings: { spanAtNut: 32, spanAtSaddle: 20, gauges: [1, 0.6, 0.4] } })).toEqual([
      'clear string 3: 2.5 of 2.5, plan (0, -16) to (0, -19)',
      'clear string 1: 2.8 of 2.5, plan (0, 16) to (0, 19)',
    ])
  })
})

describe('at the last fret', () => {
  test('where the strings spread more than the board', () => {
    // Fret 18 of 635: by 2^(-18/12). There the strings have gone so much of the way from 12 to 20.
    const fret = 635 * (1 - 2 ** -1.5)
    const y = 12 + (8 * fret) / 635
    expect(saysOf({ strings: { spanAtSaddle: 40 } })).toEqual([
      `care string 3: ${to4(19 - y - 0.2)} of 2.5, plan ${at(fret, -y)} to ${at(fret, -19)}`,
      `care string 1: ${to4(19 - y - 0.2)} of 2.5, plan ${at(fret, y)} to ${at(fret, 19)}`,
    ])
  })

  test('a fret without wood under it is not looked at', () => {
    // A board that ends at 320: of its frets the twelfth, at 317.5, is the last; half way the strings are 16 aside.
    const short = {
      board: { ends: 'at a length', length: 320 },
      strings: { spanAtSaddle: 40 },
      neck: { rise: -4 },
    }
    const [line] = saysOf({ ...short, scale: { frets: { by: 'equal', count: 12 } } })
    expect(line).toBe('clear string 3: 2.8 of 2.5, plan (317.5, -16) to (317.5, -19)')
  })

  test('is told as the nut or as a fret', () => {
    const said = (strings: Stated) => {
      const layout = solve(designOf({ strings }))
      const finding = check(layout).find(({ rule }) => rule === 'string-to-board-edge')
      if (!finding) throw new Error('nothing is said')
      return sentenceOf(finding, layout)
    }
    expect(said({ spanAtNut: 30, spanAtSaddle: 20 })).toContain('at the nut')
    expect(said({ spanAtSaddle: 40 })).toContain('at fret 18')
    // A fan of strings as wide at both ends is as near everywhere: the nut is named, being the first.
    expect(said({ spanAtNut: 26, spanAtSaddle: 26 })).toContain('at the nut')
  })
})

describe('a board that tapers', () => {
  test('is nearest to strings that do not', () => {
    // 44 wide at the nut and 56 where the box begins, 462.2 on; fret 18 lies at 410.49, but is wider there: nearest at the nut.
    const wide = {
      neck: { widthAtNut: 44, width: 56, length: 950 },
      strings: { spanAtNut: 30, spanAtSaddle: 30 },
    }
    expect(saysOf(wide)[0]).toBe('clear string 3: 6.8 of 2.5, plan (0, -15) to (0, -22)')
  })
})

describe('one string', () => {
  test('is asked once, and in the middle either edge is as far', () => {
    expect(saysOf({ strings: { count: 1 } })).toEqual([
      'clear string 1: 18.8 of 2.5, plan (0, 0) to (0, -19)',
    ])
  })
})
