/** As built beside as planned, and who strung it when. */
import { plannedMeasures } from '../measures.ts'
import type { Cell, Table } from '../model.ts'
import type { Source } from '../source.ts'

/** A measure of the finished instrument beside the planned one it names. */
export interface BuiltRow {
  readonly what: string
  /** Millimetres where it names a planned measure, the builder's own words where it does not. */
  readonly planned: number | string
  readonly built: number
  /** Built less planned, or `null` where nothing was planned in figures. */
  readonly difference: number | null
  readonly note: string
}

/** The builder's measures, each with what was planned looked up. */
export function builtRows(source: Source): BuiltRow[] {
  const measures = new Map(plannedMeasures(source).map((one) => [one.name, one]))
  return source.design.record.built.map(({ what, planned, built, note }) => {
    const measure = measures.get(planned)
    return {
      what: what || (measure?.title ?? planned),
      planned: measure ? measure.mm : planned,
      built,
      difference: measure ? built - measure.mm : null,
      note,
    }
  })
}

/** As built beside as planned. Without any measure it stands empty, for a pencil. */
export function builtTable(source: Source): Table {
  return {
    id: 'as-built',
    title: 'As built, beside the plan',
    columns: [
      { key: 'what', title: 'Measure', as: 'words' },
      { key: 'planned', title: 'Planned', as: 'length' },
      { key: 'built', title: 'Built', as: 'length' },
      { key: 'difference', title: 'More or less', as: 'exact', signed: true },
      { key: 'note', title: 'Note', as: 'words' },
    ],
    rows: builtRows(source).map((one): Cell[] => [
      one.what,
      one.planned,
      one.built,
      one.difference,
      one.note,
    ]),
  }
}

/** Who, when, which strings. */
export const historyTable = ({ design }: Source): Table => ({
  id: 'history',
  title: 'Strung and looked after',
  columns: [
    { key: 'who', title: 'Who', as: 'words' },
    { key: 'when', title: 'When', as: 'words' },
    { key: 'strings', title: 'Strings', as: 'words' },
    { key: 'note', title: 'Work', as: 'words' },
  ],
  rows: design.record.history.map(({ who, when, strings, note }) => [who, when, strings, note]),
})
