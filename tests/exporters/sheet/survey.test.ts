/** A surveyed box on the sheet: corners, sides and diagonals say the same, by the theorem of Pythagoras. */
import { expect, test } from 'vitest'
import { buildSheet } from '../../../exporters/sheet/build-sheet.ts'
import { tablesOf } from '../../../exporters/sheet/model.ts'
import type { Design } from '../../../geometry/index.ts'
import { samples } from '../../support/samples.ts'

const sample = (start: string) => samples().find(({ name }) => name.startsWith(start))?.design as Design
const tables = (design: Design) => new Map(tablesOf(buildSheet(design)).map((one) => [one.id, one]))

test('every side and diagonal is as long as its two corners are apart', () => {
  const found = tables(sample('bread-bin-out-of-square'))
  const corners = (found.get('survey-corners')?.rows ?? []).map((row) => row.slice(2, 4).map(Number))
  const apart = (a: number, b: number) =>
    Math.hypot(
      (corners[a]?.[0] ?? 0) - (corners[b]?.[0] ?? 0),
      (corners[a]?.[1] ?? 0) - (corners[b]?.[1] ?? 0),
    )
  const long = (found.get('survey-outline')?.rows ?? []).map((row) => Number(row[1]))
  expect(corners).toHaveLength(4)
  // Bass side, treble side, neck end, tail end, the two diagonals: corners counted from neck-end bass along the bass side.
  const pairs = [
    [0, 1],
    [3, 2],
    [0, 3],
    [1, 2],
    [0, 2],
    [3, 1],
  ] as const
  for (const [index, [a, b]] of pairs.entries()) expect(apart(a, b)).toBeCloseTo(long[index] ?? 0, 4)
  // What the builder read of the bass side: 300.5, 301 and 300.5, say; all readings move it by less than their spread.
  const design = sample('bread-bin-out-of-square')
  const readings = design.box.survey?.bass ?? []
  expect(long[0]).toBeGreaterThan(Math.min(...readings) - 1)
  expect(long[0]).toBeLessThan(Math.max(...readings) + 1)
})

test('a box that was measured once has no such tables', () => {
  const found = tables(sample('tea-box'))
  expect(found.has('survey-corners')).toBe(false)
  expect(found.has('survey-outline')).toBe(false)
})
