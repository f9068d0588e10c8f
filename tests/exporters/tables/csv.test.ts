/** RFC 4180 as an independent reader has it, and cells that a spreadsheet would run. */
import { describe, expect, it } from 'vitest'
import type { Table } from '../../../exporters/sheet/model.ts'
import { harmless, writeCsv } from '../../../exporters/tables/csv.ts'
import { readCsv } from '../../support/readCsv.ts'

const inches = { display: 'inches', fraction: 16 } as const

const table = (rows: Table['rows']): Table => ({
  id: 'probe',
  title: 'Probe',
  columns: [
    { key: 'words', title: 'Words, "quoted"', as: 'words' },
    { key: 'long', title: 'Long', as: 'length' },
    { key: 'cents', title: 'Cents', as: 'cents' },
  ],
  rows,
})

describe('a CSV file', () => {
  it('gives back commas, quotes and apostrophes as they were (RFC 4180, rules 5 to 7)', () => {
    const rows = [
      ['plain, with a comma', 281, -3.25],
      ['he said "eleven"', 0, 0],
      ['', null, null],
    ]
    const read = readCsv(writeCsv(table(rows), inches))
    expect(read.headings).toEqual(['Words, "quoted"', 'Long (mm)', 'Long (on the rule)', 'Cents (cents)'])
    expect(read.rows).toEqual([
      ['plain, with a comma', '281', '11 1/16 in', '-3.25'],
      ['he said "eleven"', '0', '0 in', '0'],
      ['', '', '', ''],
    ])
  })

  it('ends every line in CRLF (RFC 4180, rule 1)', () => {
    const text = writeCsv(table([['one', 1, 1]]), inches)
    expect(text.split('\r\n')).toHaveLength(3)
    expect(text.replaceAll('\r\n', '')).not.toMatch(/[\r\n]/)
  })

  it('refuses a number that is none', () => {
    expect(() => writeCsv(table([['bad', Number.NaN, 0]]), inches)).toThrow(/NaN/)
  })
})

describe('words that a spreadsheet would run', () => {
  // The signs that begin a formula: OWASP, "CSV Injection".
  it.each(['=1+1', '+1+1', '-1+1', '@SUM(A1)', '\t=1', '\r=1', '\u202e=1', '\u200b=1', '＝1', '  =1'])(
    'shows %j and does not reckon it',
    (words) => {
      const [cell = ''] = readCsv(writeCsv(table([[words, 1, 1]]), inches)).column('Words, "quoted"')
      expect(cell).toMatch(/^'/)
      expect(cell).not.toMatch(/[\t\r\n\u202e\u200b]/)
    },
  )

  it.each(['-3.25', '0', '12'])('leaves the figure %s to be reckoned with', (figure) => {
    expect(harmless(figure)).toBe(figure)
  })

  it('leaves a true minus sign alone, which runs nothing', () => {
    expect(harmless('−3/8')).toBe('−3/8')
  })
})
