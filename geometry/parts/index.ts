export type * from './part.ts'
export { partsOf } from './parts.ts'
export { mirrorPart } from './sheet-frame.ts'
