/**
 * A circuit solved for one frequency: currents at every node sum to nought (Kirchhoff), `Y v = i` with complex
 * admittances. Any text on circuits; checked against dividers and filters worked by hand.
 */

/** A passive between two nodes. Ohms, farads. */
export type Passive =
  | { readonly ohms: number; readonly from: number; readonly to: number }
  | { readonly farads: number; readonly from: number; readonly to: number }

/** A voltage of 1 behind a passive. */
export interface Source {
  readonly behind: Passive
}

/** So little leaks from every node that it changes nothing, and a node without a path is still defined. Ohms. */
const LEAK = 1e13

/**
 * How much of a source of 1 V is found between node `out` and node 0, 0 to 1.
 *
 * @param nodes how many nodes there are; node 0 is the one measured from
 * @example share(3, [{ ohms: 1000, from: 1, to: 2 }, { ohms: 2000, from: 2, to: 0 }], { behind: … }, 2, 1000)
 */
export function share(
  nodes: number,
  passives: readonly Passive[],
  { behind }: Source,
  out: number,
  hertz: number,
): number {
  const size = nodes - 1
  const real = Array.from({ length: size }, () => new Float64Array(size + 1))
  const imaginary = Array.from({ length: size }, () => new Float64Array(size + 1))
  const put = (rows: Float64Array[], row: number, column: number, value: number) => {
    const line = row > 0 ? rows[row - 1] : undefined
    if (line && column > 0) line[column - 1] = (line[column - 1] ?? 0) + value
  }
  const stamp = (one: Passive) => {
    const [rows, y] = 'ohms' in one ? [real, 1 / one.ohms] : [imaginary, 2 * Math.PI * hertz * one.farads]
    put(rows, one.from, one.from, y)
    put(rows, one.to, one.to, y)
    put(rows, one.from, one.to, -y)
    put(rows, one.to, one.from, -y)
    return { rows, y }
  }
  for (const one of passives) stamp(one)
  for (let node = 1; node <= size; node++) put(real, node, node, 1 / LEAK)
  // 1 V behind an admittance is the same as a current of y beside it (Norton).
  const { rows, y } = stamp(behind)
  const push = (node: number, value: number) => {
    const line = node > 0 ? rows[node - 1] : undefined
    if (line) line[size] = (line[size] ?? 0) + value
  }
  push(behind.from, y)
  push(behind.to, -y)
  const [re, im] = solved(real, imaginary, out - 1)
  return out === 0 ? 0 : Math.hypot(re, im)
}

/** One unknown of a complex system, by elimination with the largest pivot. */
function solved(real: Float64Array[], imaginary: Float64Array[], wanted: number): [number, number] {
  const size = real.length
  const re = (row: number, column: number) => real[row]?.[column] ?? 0
  const im = (row: number, column: number) => imaginary[row]?.[column] ?? 0
  for (let column = 0; column < size; column++) {
    let best = column
    for (let row = column + 1; row < size; row++)
      if (Math.hypot(re(row, column), im(row, column)) > Math.hypot(re(best, column), im(best, column)))
        best = row
    swap(real, column, best)
    swap(imaginary, column, best)
    const [a, b] = [re(column, column), im(column, column)]
    const below = a * a + b * b
    for (let row = 0; row < size; row++) {
      if (row === column || below === 0) continue
      const [c, d] = [re(row, column), im(row, column)]
      if (c === 0 && d === 0) continue
      const [p, q] = [(c * a + d * b) / below, (d * a - c * b) / below]
      const [realRow, imaginaryRow] = [real[row], imaginary[row]]
      if (!realRow || !imaginaryRow) continue
      for (let at = column; at <= size; at++) {
        const [u, v] = [re(column, at), im(column, at)]
        realRow[at] = (realRow[at] ?? 0) - (p * u - q * v)
        imaginaryRow[at] = (imaginaryRow[at] ?? 0) - (p * v + q * u)
      }
    }
  }
  if (wanted < 0) return [0, 0]
  const [a, b, u, v] = [re(wanted, wanted), im(wanted, wanted), re(wanted, size), im(wanted, size)]
  const below = a * a + b * b
  return below === 0 ? [0, 0] : [(u * a + v * b) / below, (v * a - u * b) / below]
}

function swap(rows: Float64Array[], one: number, other: number): void {
  const [a, b] = [rows[one], rows[other]]
  if (a && b) [rows[one], rows[other]] = [b, a]
}
