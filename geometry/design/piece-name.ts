/** What a piece that nobody has named is called. */

/**
 * What it is, and its id where that says more than the number: no word twice.
 *
 * @example namelessPiece('corner block', 'block-2') // 'corner block 2'
 * @example namelessPiece('artwork', 'burnt-mark') // 'artwork burnt mark'
 */
export function namelessPiece(sort: string, id: string): string {
  const last = sort.split(' ').at(-1) ?? sort
  const rest = id === last ? '' : id.startsWith(`${last}-`) ? id.slice(last.length + 1) : id
  return `${sort} ${rest.replaceAll('-', ' ')}`.trimEnd()
}
