/**
 * What is used of the packing library. Its main file is of a form that Node does not find its names in, and its types
 * leave out the rectangle that alone can say whether it may be turned; this file is read alike everywhere.
 */
declare module 'maxrects-packer/dist/maxrects-packer.mjs' {
  export class Rectangle<Data> {
    constructor(width: number, height: number, x: number, y: number, turned: boolean, mayTurn: boolean)
    readonly x: number
    readonly y: number
    /** Whether it was turned: width and height are then changed about. */
    readonly rot: boolean
    data: Data
  }
  export class MaxRectsPacker<Data> {
    constructor(
      width: number,
      height: number,
      padding: number,
      options: {
        readonly smart: boolean
        readonly pot: boolean
        readonly square: boolean
        readonly allowRotation: boolean
        readonly border: number
        readonly logic: number
      },
    )
    addArray(rectangles: Rectangle<Data>[]): void
    readonly bins: readonly { readonly rects: readonly Rectangle<Data>[] }[]
  }
  export const PACKING_LOGIC: { readonly MAX_EDGE: number }
}
