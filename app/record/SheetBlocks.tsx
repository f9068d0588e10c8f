/** The blocks of the build sheet as the page shows them: the same data as the printed sheet, read by React. */
import {
  type Block,
  type Column,
  cellText,
  headingOf,
  isFigure,
  type Sheet,
  type Table,
} from '../../exporters/index.ts'
import { unbroken } from '../../geometry/index.ts'
import { SheetPicture } from './SheetPicture.tsx'

type Units = Sheet['units']

export function SheetBlock({ block, units }: { readonly block: Block; readonly units: Units }) {
  switch (block.kind) {
    case 'table':
      return <SheetTable table={block.table} units={units} />
    case 'picture':
      return (
        <>
          <figure>
            <SheetPicture picture={block.picture} />
            <figcaption>
              {block.picture.title}. {block.picture.caption}
            </figcaption>
          </figure>
          {block.picture.table && <SheetTable table={block.picture.table} units={units} />}
        </>
      )
    case 'words':
      return block.lines.map((line, index) => (
        <p key={index} dir="auto">
          {unbroken(line)}
        </p>
      ))
    case 'steps':
      return (
        <ol className="work-steps">
          {block.steps.map((step) => (
            <li key={step.title}>
              <h4>{step.title}</h4>
              <p>{unbroken(step.words)}</p>
              {step.caution && (
                <p className="step-caution">
                  <b>Mind:</b> {step.caution}
                </p>
              )}
            </li>
          ))}
        </ol>
      )
  }
}

const align = (column: Column) => (isFigure(column) ? 'figure' : undefined)

function SheetTable({ table, units }: { readonly table: Table; readonly units: Units }) {
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a wide table scrolls, so keys must be able to reach it
    <section className="sheet-table" aria-label={table.title} tabIndex={0}>
      <table>
        <caption>{table.title}</caption>
        <thead>
          <tr>
            {table.columns.map((column) => (
              <th key={column.key} scope="col" className={align(column)}>
                {headingOf(column, units)}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {table.rows.map((row, index) => (
            <tr key={index}>
              {table.columns.map((column, at) => (
                <td key={column.key} className={align(column)}>
                  {unbroken(cellText(row[at] ?? null, column, units))}
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
      {table.note && <p className="sheet-note">{unbroken(table.note)}</p>}
    </section>
  )
}
