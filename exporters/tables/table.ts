/** A table as data: columns that say what they hold, rows of words and numbers. */

/** What a column holds. */
export type Measure =
  /** Words, as they are. */
  | 'words'
  /** A whole number. */
  | 'count'
  /** Millimetres, shown on the builder's rule. */
  | 'length'
  /** Millimetres, shown to the hundredth or to the thousandth of an inch, whatever the rule. */
  | 'exact'
  /** The same of a wire: a spreadsheet gets it twice, since strings are bought by what is shown. */
  | 'gauge'
  | 'cents'
  | 'hertz'
  /** Newtons; pounds beside them where the rule is in inches. */
  | 'pull'
  /** A part of one, shown in per cent. */
  | 'share'
  /** Radians, shown in degrees. */
  | 'angle'

export interface Column {
  /** Stable, for CSV and tests: `fromNut`. */
  readonly key: string
  readonly title: string
  readonly as: Measure
  /** Figures with their sign, as deviations have it. */
  readonly signed?: boolean
  /** Words that stay on one line. */
  readonly whole?: boolean
}

/** A cell; `null` where nothing is known. */
export type Cell = string | number | null

export interface Table {
  /** Stable, file-name safe: `frets`. */
  readonly id: string
  readonly title: string
  readonly columns: readonly Column[]
  readonly rows: readonly (readonly Cell[])[]
  /** One or two sentences below: what is an estimate, what to mind. */
  readonly note?: string
  /** Kept on one page where a page holds it: read down on the bench. */
  readonly keep?: boolean
}

/** A table without the columns in which nothing stands. */
export function withoutEmpty(one: Table): Table {
  const kept = one.columns.map((_, index) => one.rows.some((row) => row[index] !== null && row[index] !== ''))
  const keep = <T>(list: readonly T[]): T[] => list.filter((_, index) => kept[index])
  return { ...one, columns: keep(one.columns), rows: one.rows.map(keep) }
}
