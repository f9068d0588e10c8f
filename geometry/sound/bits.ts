/** Sizes of bits that holes are made with, as sold in sets: drills, then Forstner bits. Common practice, no source. */

const INCH = 25.4

const steps = (from: number, to: number, step: number): number[] =>
  Array.from({ length: Math.round((to - from) / step) + 1 }, (_, index) => from + index * step)

/** Drills by half millimetres, Forstner bits, hole saws. */
const METRIC = [
  ...steps(1, 9.5, 0.5),
  ...[10, 12, 14, 15, 16, 18, 20, 22, 24, 25, 26, 28, 30, 32, 34, 35, 38, 40, 45, 50],
  ...[54, 57, 60, 64, 68, 76, 83, 89, 95, 102],
]

/** Drills by sixteenths of an inch to 1/2, then bits by eighths. */
const INCHES = [...steps(1, 8, 1).map((n) => (n * INCH) / 16), ...steps(5, 32, 1).map((n) => (n * INCH) / 8)]

/** Nearer than this a hole is of that size; millimetres. */
const SAME = 0.2

/** The next bit up or down from a diameter in mm; `null` beyond the largest and smallest. */
export function nextBit(diameter: number, way: 'larger' | 'smaller', units: 'mm' | 'inches'): number | null {
  const sizes = units === 'mm' ? METRIC : INCHES
  return way === 'larger'
    ? (sizes.find((one) => one > diameter + SAME) ?? null)
    : (sizes.filter((one) => one < diameter - SAME).at(-1) ?? null)
}
