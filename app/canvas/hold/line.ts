/** What a line that takes hold is, and what those who offer lines are told. */
import type { Bounds, Layout, Placed, Point } from '../../../geometry/index.ts'

export type AxisName = 'x' | 'y'

/** A way that is as long as another one, drawn while it holds. */
export interface Gap {
  readonly from: Point
  readonly to: Point
}

/** A line that has taken hold. */
export interface Line {
  readonly axis: AxisName
  /** Where the centre of the thing comes to lie on that axis. */
  readonly at: number
  /** Where the line itself is: at an edge of the thing, or at its centre. */
  readonly shows: number
  readonly name: string
  readonly gaps: readonly Gap[]
}

/** What is moved, where it would come to lie, and among what. Places are in the face's own frame. */
export interface Asked {
  readonly layout: Layout
  readonly placed: Placed
  readonly at: Point
  /** Edges of what is moved, counted from its centre. */
  readonly edges: {
    readonly minX: number
    readonly maxX: number
    readonly minY: number
    readonly maxY: number
  }
  /** Things on the same face that stay where they are. */
  readonly others: readonly Placed[]
  /** The places near enough to take hold, none on an axis that is not asked for. Looked at before anything costly. */
  readonly near: Bounds
}

/** Whether a place on an axis lies in the window of those that are near. */
export const isNear = ({ near }: Pick<Asked, 'near'>, axis: AxisName, at: number): boolean =>
  axis === 'x' ? at >= near.minX && at <= near.maxX : at >= near.minY && at <= near.maxY

export interface Offered {
  readonly shows?: number
  readonly gaps?: readonly Gap[]
}

/** Told once for each line near by. The name is asked for only if the line wins. */
export type Offer = (axis: AxisName, at: number, name: () => string, more?: Offered) => void

/** Somebody who knows of lines. `after`: it hangs on where the other axis came to rest, so it is asked last. */
export interface Holder {
  readonly after?: boolean
  readonly lines: (asked: Asked, offer: Offer) => void
}
