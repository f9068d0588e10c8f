/**
 * Rectangles on a sheet: shelf by shelf, tall ones first, each on the first shelf that has room.
 *
 * A plain shelf arrangement wastes some sheet and is always the same, which matters more here: a builder
 * who exports again after a small change finds every part where it was.
 */

export interface Size {
  readonly width: number
  readonly height: number
}

/** Lower left corner of a rectangle on the sheet, mm, y up from the sheet's lower edge. */
export interface Place {
  readonly x: number
  readonly y: number
}

export interface Arrangement {
  /** In the order in which the rectangles were given. */
  readonly places: readonly Place[]
  readonly width: number
  readonly height: number
}

/** A sheet about half as wide again as it is high, and never narrower than its widest rectangle, mm. */
function sheetWidth(sizes: readonly Size[], gap: number): number {
  const area = sizes.reduce((sum, size) => sum + (size.width + gap) * (size.height + gap), 0)
  return Math.max(...sizes.map((size) => size.width), Math.sqrt(1.5 * area))
}

/**
 * Puts rectangles side by side on shelves without turning any: the tallest first, each on the uppermost shelf
 * with room for it.
 *
 * @param sizes mm; each at least zero
 * @param gap mm between neighbours, and between shelves
 * @param room width of a shelf, mm; a rectangle wider than that gets a shelf to itself. Left out, the
 *   sheet comes out about half as wide again as it is high
 * @returns places that never overlap; the same for the same input
 * @throws if there is nothing to arrange or a size is not a number
 * @example arrange([{ width: 10, height: 5 }, { width: 10, height: 5 }], 2, 100).width // 22
 */
export function arrange(sizes: readonly Size[], gap: number, room?: number): Arrangement {
  if (sizes.length === 0) throw new Error('There is no part to arrange on a sheet.')
  for (const { width, height } of sizes) {
    if (!(width >= 0 && height >= 0 && Number.isFinite(width + height))) {
      throw new RangeError(`A part of ${width} by ${height} mm cannot be arranged on a sheet.`)
    }
  }
  const shelfWidth = room ?? sheetWidth(sizes, gap)
  const tallestFirst = [...sizes.entries()].sort(([i, a], [j, b]) => b.height - a.height || i - j)
  const shelves: { height: number; filled: number }[] = []
  const onShelf: { index: number; x: number; shelf: number; height: number }[] = []
  for (const [index, size] of tallestFirst) {
    const free = shelves.findIndex((shelf) => shelf.filled + gap + size.width <= shelfWidth + 1e-9)
    const number = free === -1 ? shelves.push({ height: size.height, filled: -gap }) - 1 : free
    const shelf = shelves[number]
    if (shelf === undefined) continue
    const x = shelf.filled + gap
    onShelf.push({ index, x, shelf: number, height: size.height })
    shelf.filled = x + size.width
  }
  const width = Math.max(...shelves.map((shelf) => shelf.filled))
  const height = shelves.reduce((sum, shelf) => sum + shelf.height, 0) + gap * (shelves.length - 1)
  const tops: number[] = []
  let top = height
  for (const shelf of shelves) {
    tops.push(top)
    top -= shelf.height + gap
  }
  const places: Place[] = sizes.map(() => ({ x: 0, y: 0 }))
  for (const entry of onShelf) {
    places[entry.index] = { x: entry.x, y: (tops[entry.shelf] ?? 0) - entry.height }
  }
  return { places, width, height }
}
