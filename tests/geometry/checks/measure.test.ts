import { describe, expect, it } from 'vitest'
import { formatMeasure } from '../../../geometry/index.ts'

const inches = { display: 'inches', fraction: 32 } as const
const mm = { display: 'mm', fraction: 0 } as const

describe('a finding’s numbers as text', () => {
  it('goes finer than the rule where a bend or a sag is meant', () => {
    const bow = { rule: 'neck-bow', unit: 'mm' } as const
    expect(formatMeasure(0.06, bow, mm)).toBe('0.06')
    expect(formatMeasure(0.06, bow, inches, { unit: true })).toBe('0.002 in')
    expect(formatMeasure(2.4, { rule: 'opening-to-edge', unit: 'mm' }, inches)).toBe('3/32')
  })

  it('gives every other unit its own sign', () => {
    const rule = 'neck-stress'
    expect(formatMeasure(7.42, { rule, unit: 'degrees' }, mm)).toBe('7.4°')
    expect(formatMeasure(90, { rule, unit: 'degrees' }, mm)).toBe('90.0°')
    expect(formatMeasure(0.425, { rule, unit: 'share' }, mm)).toBe('43%')
    expect(formatMeasure(72.4, { rule, unit: 'newtons' }, mm)).toBe('72 N')
    expect(formatMeasure(3, { rule, unit: 'count' }, mm)).toBe('3')
  })
})
