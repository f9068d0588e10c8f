/** Places for what is to stand on the faces, proposed three at a time. */
export { type Placing, type Proposal, placeFor, placing } from './place.ts'
export type { Answered } from './wish-worth.ts'
export { ADDABLE, movableIn, type PlacingWishes, placeableIn } from './wishes.ts'
