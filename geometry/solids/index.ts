/** The door of this room: what stands in the box as solids, and how they keep clear of each other. */
export { type Between, inSolid, type Point3, roomBetween } from './between.ts'
export { thingSolids } from './bodies.ts'
export { type Conflict, conflictsOf } from './conflicts.ts'
export {
  type Axis,
  type Box3,
  behindFace,
  block,
  type Named,
  onFace,
  prism,
  type Solid,
  type SolidSort,
} from './solid.ts'
export { solidsNear, solidsOf } from './solids.ts'
