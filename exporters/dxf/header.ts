/** The header of a DXF: the variables that say how its numbers are to be read. */
import { type FileFacts, realText } from './fileFacts.ts'
import { linesOf } from './records.ts'

/** Group 70 of `$INSUNITS` (ezdxf manual, "DXF units"). */
const UNIT_CODE = { mm: 4, inches: 1 } as const

/**
 * Version and code page first, as readers expect. `$DWGCODEPAGE` is stated although all text is ASCII, because
 * some readers guess without it.
 */
const BEFORE_EXTENT = linesOf([
  [9, '$ACADVER'],
  [1, 'AC1015'],
  [9, '$DWGCODEPAGE'],
  [3, 'ANSI_1252'],
  [9, '$INSBASE'],
  [10, '0.0'],
  [20, '0.0'],
  [30, '0.0'],
])

const BEHIND_EXTENT = linesOf([
  [9, '$LTSCALE'],
  [40, '1.0'],
  [9, '$LUNITS'],
  [70, '2'],
  [9, '$LUPREC'],
  [70, '4'],
  [9, '$AUNITS'],
  [70, '0'],
])

/**
 * The lines of the HEADER section.
 *
 * `$MEASUREMENT` only picks hatches and line types, but a reader without `$INSUNITS` may go by it.
 *
 * @param facts unit and box of the file, the box in that unit
 * @param handleSeed the next free handle, hexadecimal
 */
export function headerLines({ extent, unit }: FileFacts, handleSeed: string): string {
  const least = `10\n${realText(extent.minX, 'Least x', unit)}\n20\n${realText(extent.minY, 'Least y', unit)}`
  const most = `10\n${realText(extent.maxX, 'Largest x', unit)}\n20\n${realText(extent.maxY, 'Largest y', unit)}`
  return [
    BEFORE_EXTENT,
    `9\n$EXTMIN\n${least}\n30\n0.0`,
    `9\n$EXTMAX\n${most}\n30\n0.0`,
    `9\n$LIMMIN\n${least}`,
    `9\n$LIMMAX\n${most}`,
    BEHIND_EXTENT,
    `9\n$INSUNITS\n70\n${UNIT_CODE[unit]}`,
    `9\n$MEASUREMENT\n70\n${unit === 'mm' ? 1 : 0}`,
    `9\n$HANDSEED\n5\n${handleSeed}`,
  ].join('\n')
}
