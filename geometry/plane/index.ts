/** The door of this room: points, circles and chains of lines and arcs, and everything measured on them. */
export * from './arcs.ts'
export * from './clearance.ts'
export { takenOut, united } from './combine.ts'
export { depthAt, isInside } from './contains.ts'
export type * from './contour.ts'
export * from './deepest.ts'
export {
  distance,
  distanceToPoint,
  type Nearest,
  nearest,
  nearestPoint,
} from './distance.ts'
export * from './faults.ts'
export * from './flatten.ts'
export * from './gap.ts'
export * from './homography.ts'
export * from './makers.ts'
export * from './measure.ts'
export * from './neighbours.ts'
export { type Offset, offset } from './offset.ts'
export type { Loops } from './stretches.ts'
export * from './tolerance.ts'
export * from './transform.ts'
