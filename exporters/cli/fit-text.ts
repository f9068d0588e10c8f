/** The fit table for reading: the best place of the saddle for each scale and count, and why others cannot be built. */
import {
  type Design,
  formatLength,
  formatMeasure,
  proposals,
  type Row,
  reasonOf,
  reasonsOf,
  ruleOf,
  setOf,
} from '../../geometry/index.ts'
import { counted } from './io.ts'
import { type Cell, table } from './table.ts'

const HEADINGS = [
  'scale',
  'strings',
  'saddle at',
  'fret at body',
  'to wall',
  'overall',
  'pull',
  'bow',
  'balance',
  'air',
  'in the way',
  'tightest margin',
]

/** The rows in the order given, as text in the builder's own unit. */
export function fitText(design: Design, inOrder: readonly Row[], all: boolean): string {
  const fitting = inOrder.filter((row) => row.numbers)
  const shown = all ? fitting : proposals(inOrder)
  const impossible = inOrder.length - fitting.length
  const head = `${design.title}: ${fitting.length} of ${counted(inOrder.length, 'row')} can be built, lengths in ${design.units.display}`
  const lines = [head]
  if (shown.length > 0)
    lines.push(
      '',
      all
        ? 'All that can be built, best first'
        : 'The best place of the saddle for each scale and count, best first',
      ...table(
        HEADINGS,
        shown.map((row) => cellsOf(row, design)),
        0,
      ),
      '',
      'Strings taken for granted, bass first',
      ...setLines(shown),
    )
  if (impossible > 0) {
    lines.push('', `Cannot be built: ${counted(impossible, 'row')}`)
    for (const { title, count, example } of reasonsOf(inOrder))
      lines.push(
        `  ${title}, ${counted(count, 'row')}; as on ${say(design, example.scale)}: ${reasonOf(example)}`,
      )
    if (all)
      lines.push(
        '',
        ...inOrder
          .filter((row) => !row.numbers)
          .map(
            (row) =>
              `  ${say(design, row.scale)}, ${counted(row.count, 'string')}, saddle at ${share(row)}: ${reasonOf(row)}`,
          ),
      )
  }
  return lines.join('\n')
}

const say = ({ units }: Design, mm: number) => formatLength(mm, units)
const share = ({ place }: Row) => `${Math.round(place * 1000) / 10}%`

function cellsOf(row: Row, design: Design): Cell[] {
  const { numbers } = row
  if (!numbers) return []
  const { fretAtBody, tightest, air } = numbers
  const fine = (mm: number) =>
    formatLength(mm, { ...design.units, fraction: 0 }, { decimals: design.units.display === 'mm' ? 2 : 3 })
  return [
    say(design, row.scale),
    row.count,
    share(row),
    fretAtBody.fret === null ? 'none' : fretAtBody.fret,
    say(design, numbers.saddleToWall),
    say(design, numbers.overall),
    numbers.pull === null ? 'not known' : `${Math.round(numbers.pull)} N`,
    numbers.bow === null ? 'not known' : fine(numbers.bow),
    say(design, numbers.balance),
    air ? air.name : 'none',
    numbers.inTheWay.length,
    tightest
      ? `${formatMeasure(tightest.margin ?? 0, tightest, design.units)} ${ruleOf(tightest.rule).title.toLowerCase()}`
      : 'none',
  ]
}

/** Each set once: rows of one scale and count share it. */
function setLines(rows: readonly Row[]): string[] {
  const seen = new Map<string, string>()
  for (const row of rows) {
    const { pitches, gauges, from } = setOf(row)
    seen.set(
      `${say(row.design, row.scale)} ${row.count}`,
      `  ${say(row.design, row.scale)}, ${counted(row.count, 'string')}: ${[pitches, gauges].filter(Boolean).join(', ')}${pitches ? ' ' : ''}(${from})`,
    )
  }
  return [...seen.values()]
}
