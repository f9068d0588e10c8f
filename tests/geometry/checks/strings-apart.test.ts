/** Strings from centre to centre, at nut and saddle: the nearest two are told. */
import { describe, expect, test } from 'vitest'
import type { Stated } from '../../support/designs.ts'
import { told } from './told.ts'

describe.each([
  ['nut', 'spanAtNut', 'stringsApartAtNut', 0, 6.5],
  ['saddle', 'spanAtSaddle', 'stringsApartAtSaddle', 635, 9],
] as const)('at the %s', (spot, span, limit, x, wanted) => {
  const saysOf = (strings: Stated, limits: Stated = {}) =>
    told(`strings-apart-at-${spot}`, { strings, limits })

  test('just enough and just too little', () => {
    const wide = 2 * wanted
    expect(saysOf({ [span]: wide })).toEqual([
      `clear ${spot}: ${wanted} of ${wanted}, plan (${x}, ${-wanted}) to (${x}, 0)`,
    ])
    expect(saysOf({ [span]: wide - 0.02 })[0]).toMatch(`care ${spot}: ${wanted - 0.01} of ${wanted},`)
  })

  test('strings that touch cannot be played, and less than they are thick cannot be wanted', () => {
    // 3 and 2 thick: from centre to centre 2.5 at the least.
    const gauges = { count: 2, gauges: [3, 2] }
    expect(saysOf({ ...gauges, [span]: 2.5 })[0]).toMatch(`care ${spot}: 2.5 of ${wanted},`)
    expect(saysOf({ ...gauges, [span]: 2.49 })[0]).toMatch(`stop ${spot}: 2.49 of ${wanted},`)
    expect(saysOf({ ...gauges, [span]: 2.6 }, { [limit]: 1 })[0]).toMatch(`clear ${spot}: 2.6 of 2.5,`)
    expect(saysOf({ ...gauges, [span]: 2.4 }, { [limit]: 1 })[0]).toMatch(`stop ${spot}: 2.4 of 2.5,`)
  })

  test('with equal room between them, thin ones lie nearest from centre to centre', () => {
    const uneven = { spacing: 'equal gaps', gauges: [4, 1, 1], [span]: 40 }
    // From the first middle to the last 40 = 2 + gap + 1 + gap + 0.5: gaps of 18.25, so 20.75 and then 19.25 from middle to middle.
    expect(saysOf(uneven)).toEqual([`clear ${spot}: 19.25 of ${wanted}, plan (${x}, 0.75) to (${x}, 20)`])
  })

  test('one string has none beside it', () => expect(saysOf({ count: 1 })).toEqual([]))
})
