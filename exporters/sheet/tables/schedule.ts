/** Every hole and cut in the order of the work, with the drill to take. */
import { measuredFrom, scheduleOf, scheduleWords } from '../../../geometry/index.ts'
import type { Cell, Table } from '../../tables/table.ts'
import type { Source } from '../source.ts'

/** The drill and cut schedule. Its numbers are those of the report; drills and sizes are told in words. */
export function scheduleTable({ layout, report, design }: Source): Table {
  const rows = scheduleOf(layout)
  const words = rows.map((row) => scheduleWords(row, design.units))
  return {
    id: 'schedule',
    title: 'Holes and cuts, in the order of the work',
    columns: [
      { key: 'order', title: 'No.', as: 'count' },
      { key: 'part', title: 'In', as: 'words' },
      { key: 'work', title: 'Work', as: 'words', whole: true },
      { key: 'of', title: 'For', as: 'words' },
      { key: 'size', title: 'Size', as: 'words', whole: true },
      { key: 'drill', title: 'Drill', as: 'words' },
      { key: 'fromEdge', title: 'From the edge', as: 'length' },
      { key: 'fromLine', title: 'Across', as: 'length' },
      { key: 'towards', title: 'Towards', as: 'words' },
      { key: 'depth', title: 'Deep', as: 'length' },
    ],
    rows: report.schedule.map((row, index): Cell[] => {
      const slots = row.work === 'saw slots'
      return [
        row.order,
        row.partTitle,
        row.work,
        words[index]?.what ?? row.of,
        words[index]?.size ?? '',
        words[index]?.drill ?? '',
        slots ? 'see Frets' : row.edge.distance,
        slots ? '' : row.line.distance,
        slots ? '' : row.line.towards,
        row.through ? 'through' : row.depth,
      ]
    }),
    note: whereFrom(layout),
  }
}

/** Where the tape is hooked, part by part. */
function whereFrom(layout: Source['layout']): string {
  const parts = new Map<string, string>()
  for (const row of scheduleOf(layout))
    if (row.work !== 'saw slots' && !parts.has(row.partTitle)) parts.set(row.partTitle, measuredFrom(row))
  const said = [...parts].map(([title, from]) => `${title}: ${from}`)
  return `Measured to the middle of each, or to the near side of what runs out over an edge. ${said.join('. ')}.`
}
