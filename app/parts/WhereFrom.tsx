/** Where the numbers of a table come from: formulas first, then what the stuff is. Folded away until somebody asks. */
import { type Layout, SOURCES, type SourceName, stuffSources } from '../../geometry/index.ts'

interface WhereFromProps {
  readonly layout: Layout
  readonly formulas: readonly SourceName[]
  readonly stuff?: readonly Parameters<typeof stuffSources>[1][]
}

export function WhereFrom({ layout, formulas, stuff = [] }: WhereFromProps) {
  const lines = [
    ...formulas.map((name) => SOURCES[name]),
    ...new Set(stuff.flatMap((of) => stuffSources(layout, of))),
  ]
  return (
    <details className="where-from">
      <summary className="small">Where these numbers come from</summary>
      <ul className="small soft">
        {lines.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
    </details>
  )
}
