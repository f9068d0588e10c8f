/** CSV read by a library that this project did not write. */
import papa from 'papaparse'

export interface CsvTable {
  readonly headings: readonly string[]
  readonly rows: readonly (readonly string[])[]
  /** A column by its heading. Throws for one that is not there. */
  column(heading: string): string[]
}

export function readCsv(text: string): CsvTable {
  const { data, errors } = papa.parse(text.replace(/\r\n$/, ''))
  if (errors.length > 0 && data.length > 1) throw new Error(errors.map((one) => one.message).join('; '))
  const [headings = [], ...rows] = data
  return {
    headings,
    rows,
    column(heading) {
      const index = headings.indexOf(heading)
      if (index < 0) throw new Error(`there is no column "${heading}" but ${headings.join(' | ')}`)
      return rows.map((row) => row[index] ?? '')
    },
  }
}
