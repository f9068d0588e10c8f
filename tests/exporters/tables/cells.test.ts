/** Cells as words, in the builder's unit. */
import { expect, test } from 'vitest'
import { cellText, headingOf, NOTHING } from '../../../exporters/tables/cells.ts'
import type { Measure } from '../../../exporters/tables/table.ts'

const MM = { display: 'mm', fraction: 0 } as const
const INCHES = { display: 'inches', fraction: 32 } as const

// 1 in = 25.4 mm, 1 lbf = 4.448 222 N (NIST SP 811, appendix B).
test.each<[Measure, number, string, string]>([
  ['length', 36.35375, '36.4', '1 7/16'],
  ['exact', 36.35375, '36.35', '1.431'],
  ['gauge', 0.4318, '0.43', '0.017'],
  ['pull', 71.2, '71', '71 (16.0)'],
  ['count', 12, '12', '12'],
  ['share', 0.25, '25%', '25%'],
])('%s %d is %s, in inches %s', (as, value, metric, inches) => {
  expect(cellText(value, { as }, MM)).toBe(metric)
  expect(cellText(value, { as }, INCHES)).toBe(inches)
})

test('a column says the unit its figures are in', () => {
  const heading = (as: Measure, units: typeof MM | typeof INCHES) =>
    headingOf({ key: 'one', title: 'Off by', as }, units)
  for (const as of ['length', 'exact', 'gauge'] as const) {
    expect(heading(as, MM)).toBe('Off by, mm')
    expect(heading(as, INCHES)).toBe('Off by, in')
  }
  expect(heading('pull', INCHES)).toBe('Off by, N (lb)')
  expect(heading('words', INCHES)).toBe('Off by')
})

test('a deviation has its sign, unless it shows nought', () => {
  const off = (value: number, units: typeof MM | typeof INCHES) =>
    cellText(value, { as: 'exact', signed: true }, units)
  expect([off(0.3, MM), off(-0.3, MM), off(0.004, MM)]).toEqual(['+0.30', '−0.30', '0.00'])
  expect([off(0.3, INCHES), off(-0.3, INCHES), off(0.012, INCHES)]).toEqual(['+0.012', '−0.012', '0.000'])
  expect(cellText(null, { as: 'exact' }, MM)).toBe(NOTHING)
})
