/** Frets from the nut, as the rule shows them and what the rounding costs; and cents at every fret. */
import { fretRoundingOf } from '../../../geometry/index.ts'
import type { Cell, Table } from '../model.ts'
import type { Source } from '../source.ts'

/** Every fret from the nut: true, as set on the rule, and what that costs in millimetres and cents. */
export function fretTable({ report, layout, design }: Source): Table {
  const rounding = fretRoundingOf(layout)
  const frets = report.frets.filter((one) => one.number > 0)
  const rows = frets.map((fret, index): Cell[] => [
    fret.number,
    fret.fromNut,
    fret.fromNut,
    fret.onRule.error,
    // A rule in millimetres is read to the half: what it costs is reckoned for its whole lines.
    design.units.display === 'mm' ? null : (rounding[index]?.cents ?? null),
    fret.step,
    fret.cents,
    fret.onWood ? (fret.overBox ? 'over the box' : 'on the neck') : 'no wood under it',
  ])
  const inches = design.units.display === 'inches'
  const drop = inches ? [] : [4]
  const columns: Table['columns'] = [
    { key: 'number', title: 'Fret', as: 'count' },
    { key: 'fromNut', title: 'From the nut', as: 'exact' },
    { key: 'onRule', title: 'Set on the rule', as: 'length' },
    { key: 'error', title: 'Off by', as: 'exact', signed: true },
    { key: 'errorCents', title: 'Off by', as: 'cents', signed: true },
    { key: 'step', title: 'From the fret before', as: 'exact' },
    { key: 'cents', title: 'Over the open string', as: 'cents' },
    { key: 'lies', title: 'Lies', as: 'words' },
  ]
  return {
    id: 'frets',
    title: report.scale.fretless ? 'Lines to play to, from the nut' : 'Frets, from the nut',
    columns: columns.filter((_, index) => !drop.includes(index)),
    keep: true,
    rows: rows.map((row) => row.filter((_, index) => !drop.includes(index))),
    note: `Set every fret from ${report.scale.zeroFret ? 'the crown of the zero fret' : 'the nut'}, never from the fret before: the step is only to check the work by.${inches && design.units.fraction !== 0 ? ' What the rule leaves stands in inches and in cents; where it is too much, prick the true figure off the template.' : ''}`,
  }
}

/** Cents off at every fret, a column for each string; `null` where no pitch is known. */
export function centsTable({ report }: Source): Table | null {
  const frets = report.frets.filter((one) => one.number > 0)
  const strings = [...report.strings].reverse()
  if (report.scale.fretless || strings.every((one) => one.centsAtFret.every((cents) => cents === null)))
    return null
  if (frets.length === 0) return null
  return {
    id: 'cents',
    title: 'Cents off at every fret',
    columns: [
      { key: 'number', title: 'Fret', as: 'count' },
      ...strings.map(({ number }) => ({
        key: `string${number}`,
        title: `String ${number}`,
        as: 'cents' as const,
        signed: true,
      })),
    ],
    rows: frets.map((fret, index) => [fret.number, ...strings.map((one) => one.centsAtFret[index] ?? null)]),
  }
}
