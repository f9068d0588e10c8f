export { neckProfile } from './neck-profile.ts'
export type * from './part.ts'
export { partsOf } from './parts.ts'
export { type Flip, flipOf, mirrorPart } from './sheet-frame.ts'
