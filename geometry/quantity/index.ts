/** Quantities: lengths as people write and read them, millimetres inside. */

export { byName } from './called.ts'
export {
  type FormatOptions,
  formatAngle,
  formatFine,
  formatLength,
  formatShare,
  type RoundedLength,
  roundedLength,
} from './format.ts'
export { type Notes, notes } from './notes.ts'
export { printable } from './printable.ts'
export { type Reading, readLength } from './read.ts'
export { othersThan, steadyFilter, tellOthers } from './steady.ts'
export { unbroken } from './unbroken.ts'
export { inchesToMm, mmToInches, stepOf, type Units, unitName } from './units.ts'
