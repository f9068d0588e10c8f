/** The fit table as a table for a spreadsheet: a row for each that was asked, the best first, with why others cannot be built. */
import {
  type Design,
  formatMeasure,
  marksOf,
  type Row,
  reasonOf,
  ruleOf,
  setOf,
} from '../../geometry/index.ts'
import { writeCsv } from '../tables/csv.ts'
import type { Cell, Column, Table } from '../tables/table.ts'
import type { FitWishes } from './fit-answer.ts'

const COLUMNS: readonly Column[] = [
  { key: 'box', title: 'Box', as: 'words' },
  { key: 'scale', title: 'Scale', as: 'length' },
  { key: 'strings', title: 'Strings', as: 'count' },
  { key: 'saddlePlace', title: 'Saddle along the lid', as: 'share' },
  { key: 'fits', title: 'Can be built', as: 'words' },
  { key: 'reason', title: 'Why not', as: 'words' },
  { key: 'marks', title: 'Marks', as: 'share' },
  { key: 'fretAtBody', title: 'Fret at the body', as: 'count' },
  { key: 'bodyBehindFret', title: 'Body behind that fret', as: 'length' },
  { key: 'saddleToTailWall', title: 'Saddle to the tail-end wall', as: 'length' },
  { key: 'overall', title: 'Overall', as: 'length' },
  { key: 'pull', title: 'Pull', as: 'pull' },
  { key: 'bow', title: 'Bow', as: 'exact' },
  { key: 'balance', title: 'Balance behind the neck-end face', as: 'length' },
  { key: 'drops', title: 'Drops', as: 'words' },
  { key: 'mass', title: 'Mass (g)', as: 'count' },
  { key: 'air', title: 'Air', as: 'words' },
  { key: 'hertz', title: 'Air', as: 'hertz' },
  { key: 'cares', title: 'Cares', as: 'count' },
  { key: 'inTheWay', title: 'In the way', as: 'count' },
  { key: 'tightest', title: 'Tightest margin', as: 'words' },
  { key: 'tightestRule', title: 'Tightest margin of', as: 'words' },
  { key: 'pitches', title: 'Pitches', as: 'words' },
  { key: 'gauges', title: 'Gauges', as: 'words' },
  { key: 'from', title: 'Strings are', as: 'words' },
]

/** The rows of a design in the order given. `box` names it, for tables of many. */
export function fitTable(
  { units }: Design,
  inOrder: readonly Row[],
  { weights, ...wishes }: FitWishes,
  box: string,
): Table {
  return {
    id: 'fit',
    title: 'What fits',
    columns: COLUMNS,
    rows: inOrder.map((row): Cell[] => {
      const { numbers } = row
      const { pitches, gauges, from } = setOf(row)
      const asked = [box, row.scale, row.count, row.place, numbers ? 'yes' : 'no', reasonOf(row)]
      const strings = [pitches, gauges, from]
      if (!numbers) return [...asked, ...NOTHING, ...strings]
      const { fretAtBody, tightest, air } = numbers
      return [
        ...asked,
        marksOf(row, weights, wishes),
        fretAtBody.fret,
        fretAtBody.past,
        numbers.saddleToWall,
        numbers.overall,
        numbers.pull,
        numbers.bow,
        numbers.balance,
        numbers.drops,
        Math.round(numbers.mass),
        air?.name ?? null,
        air?.hertz ?? null,
        numbers.cares,
        numbers.inTheWay.length,
        tightest && formatMeasure(tightest.margin ?? 0, tightest, units, { unit: true }),
        tightest && ruleOf(tightest.rule).title,
        ...strings,
      ]
    }),
  }
}

/** A row that cannot be built has none of the numbers between its reason and its strings. */
const NOTHING: readonly null[] = Array.from(
  {
    length:
      COLUMNS.findIndex(({ key }) => key === 'pitches') - COLUMNS.findIndex(({ key }) => key === 'marks'),
  },
  () => null,
)

/**
 * All rows as CSV (RFC 4180). The same design, questions and wishes give the same text.
 * Example: `fitCsv(design, rows, wishes)` begins `Box,Scale (mm),Scale (on the rule),Strings`.
 */
export const fitCsv = (
  design: Design,
  inOrder: readonly Row[],
  wishes: FitWishes,
  box = design.title,
): string => writeCsv(fitTable(design, inOrder, wishes, box), design.units)
