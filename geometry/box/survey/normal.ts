/** Normal equations of a handful of unknowns, dense. Rows are plain arrays. */

export type Matrix = readonly (readonly number[])[]

/** A pivot smaller than this share of its diagonal has nothing to stand on: the unknown is not determined. */
const NO_PIVOT = 1e-12

/**
 * The inverse of a symmetric positive definite matrix by Cholesky factors (Golub and Van Loan, "Matrix Computations",
 * 4.2; from memory), or `null` where the matrix is singular: something that is asked for was never measured.
 * Example: `inverseOf([[2, 0], [0, 4]])` is `[[0.5, 0], [0, 0.25]]`.
 */
export function inverseOf(matrix: Matrix): number[][] | null {
  const size = matrix.length
  const lower: number[][] = []
  for (let row = 0; row < size; row++) {
    const here: number[] = []
    lower.push(here)
    for (let column = 0; column <= row; column++) {
      let sum = matrix[row]?.[column] ?? 0
      for (let k = 0; k < column; k++) sum -= (here[k] ?? 0) * (lower[column]?.[k] ?? 0)
      if (column < row) here.push(sum / (lower[column]?.[column] ?? 1))
      else {
        if (!(sum > NO_PIVOT * Math.abs(matrix[row]?.[row] ?? 0))) return null
        here.push(Math.sqrt(sum))
      }
    }
  }
  return Array.from({ length: size }, (_, of) => {
    const forward: number[] = []
    for (let row = 0; row < size; row++) {
      let sum = row === of ? 1 : 0
      for (let k = 0; k < row; k++) sum -= (lower[row]?.[k] ?? 0) * (forward[k] ?? 0)
      forward.push(sum / (lower[row]?.[row] ?? 1))
    }
    const back = new Array<number>(size).fill(0)
    for (let row = size - 1; row >= 0; row--) {
      let sum = forward[row] ?? 0
      for (let k = row + 1; k < size; k++) sum -= (lower[k]?.[row] ?? 0) * (back[k] ?? 0)
      back[row] = sum / (lower[row]?.[row] ?? 1)
    }
    return back
  })
}

/** `row · matrix · row`: the variance of a quantity whose derivatives are `row`, from the unknowns' covariance. */
export function quadratic(row: readonly number[], matrix: Matrix): number {
  let sum = 0
  for (let i = 0; i < row.length; i++)
    for (let k = 0; k < row.length; k++) sum += (row[i] ?? 0) * (row[k] ?? 0) * (matrix[i]?.[k] ?? 0)
  return sum
}
