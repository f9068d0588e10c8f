/** Tables for a terminal. */

export type Cell = string | number

/** Columns under their headings, as wide as they need: words to the left, the rest to the right. */
export function table(headings: readonly string[], rows: readonly (readonly Cell[])[], words = 1): string[] {
  const texts = [headings, ...rows.map((row) => row.map(String))]
  const widths = headings.map((_, column) => Math.max(...texts.map((row) => [...(row[column] ?? '')].length)))
  return texts.map((row) => {
    const cells = row.map((cell, column) => {
      const padding = ' '.repeat((widths[column] ?? 0) - [...cell].length)
      return column < words ? cell + padding : padding + cell
    })
    return `  ${cells.join('  ').trimEnd()}`
  })
}
