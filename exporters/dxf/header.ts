/** The header of a DXF: the variables that say how its numbers are to be read. */
import type { FileFacts } from './fileFacts.ts'
import type { Tags } from './library.ts'
import { pushAll, type Tag } from './records.ts'

/** Group 70 of `$INSUNITS` (ezdxf manual, "DXF units"). */
const UNIT_CODE = { mm: 4, inches: 1 } as const

/**
 * The variables of the HEADER section, version first as readers expect it.
 *
 * `$MEASUREMENT` only picks hatches and line types, but a reader without `$INSUNITS` may go by it.
 * `$DWGCODEPAGE` is stated although all text is ASCII, because some readers guess without it.
 *
 * @param facts unit and box of the file, the box in that unit
 * @param handleSeed the next free handle, hexadecimal
 */
export function pushHeader(tags: Tags, facts: FileFacts, handleSeed: string): void {
  const { minX, minY, maxX, maxY } = facts.extent
  const point = (x: number, y: number): Tag[] => [
    [10, x],
    [20, y],
  ]
  const variables: [name: string, values: Tag[]][] = [
    ['$ACADVER', [[1, 'AC1015']]],
    ['$DWGCODEPAGE', [[3, 'ANSI_1252']]],
    ['$INSBASE', [...point(0, 0), [30, 0]]],
    ['$EXTMIN', [...point(minX, minY), [30, 0]]],
    ['$EXTMAX', [...point(maxX, maxY), [30, 0]]],
    ['$LIMMIN', point(minX, minY)],
    ['$LIMMAX', point(maxX, maxY)],
    ['$LTSCALE', [[40, 1]]],
    ['$LUNITS', [[70, 2]]],
    ['$LUPREC', [[70, 4]]],
    ['$AUNITS', [[70, 0]]],
    ['$INSUNITS', [[70, UNIT_CODE[facts.unit]]]],
    ['$MEASUREMENT', [[70, facts.unit === 'mm' ? 1 : 0]]],
    ['$HANDSEED', [[5, handleSeed]]],
  ]
  for (const [name, values] of variables) {
    tags.push(9, name)
    pushAll(tags, values)
  }
}
