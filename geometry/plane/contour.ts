/**
 * The shapes everything else is made of: points, circles, and chains of lines and arcs.
 *
 * A chain is a list of vertices; each vertex carries the bulge of the segment that starts there,
 * the tangent of a quarter of the arc's sweep: 0 is a straight line, 1 a half circle, positive runs
 * counter-clockwise (Autodesk ActiveX reference, "GetBulge"). Arcs therefore stay arcs from the engine to
 * the saw. Lengths are millimetres, y points up, closed contours run counter-clockwise.
 */
export interface Point {
  readonly x: number
  readonly y: number
}

/** A corner of a chain; `bulge` belongs to the segment from here to the next vertex. */
export interface Vertex extends Point {
  readonly bulge: number
}

export interface Circle {
  readonly shape: 'circle'
  readonly centre: Point
  readonly radius: number
}

/** Lines and arcs end to end. A closed chain never repeats its first vertex; its last bulge closes it. */
export interface Chain {
  readonly shape: 'chain'
  readonly closed: boolean
  readonly vertices: readonly Vertex[]
}

export type Contour = Circle | Chain

/** An axis-parallel box, `minX <= maxX` and `minY <= maxY`. */
export interface Bounds {
  readonly minX: number
  readonly minY: number
  readonly maxX: number
  readonly maxY: number
}
