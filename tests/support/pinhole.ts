/**
 * A pinhole camera over a flat face, by rays and planes and not by any map of corners: what the straightening is held
 * against. Source: R. Hartley and A. Zisserman, "Multiple View Geometry", 2nd ed., sec. 6.1, `x = K [R | t] X`.
 */
export interface Pinhole {
  /** Where a place of the face (mm from its upper left, y down) is seen, in dots. */
  seen(u: number, v: number): { readonly x: number; readonly y: number }
  /** Which place of the face a dot shows. */
  place(x: number, y: number): { readonly u: number; readonly v: number }
}

type Vector = readonly [number, number, number]

/** A face of `long` × `high` mm, tilted and turned about its middle, seen from `distance` mm into `width` × `height` dots. */
export function pinhole(
  face: { readonly long: number; readonly high: number },
  view: {
    readonly width: number
    readonly height: number
    readonly focal: number
    readonly distance: number
  },
  tilt: number,
  turn: number,
  roll: number,
): Pinhole {
  const [ct, st, cu, su, cr, sr] = [tilt, turn, roll].flatMap((angle) => [
    Math.cos(angle),
    Math.sin(angle),
  ]) as [number, number, number, number, number, number]
  /** Tilt about x, then turn about y, then roll about the axis of view. */
  const rotated = ([x, y, z]: Vector): Vector => {
    const [y1, z1] = [ct * y - st * z, st * y + ct * z]
    const [x2, z2] = [cu * x + su * z1, -su * x + cu * z1]
    return [cr * x2 - sr * y1, sr * x2 + cr * y1, z2]
  }
  const [e1, e2, normal] = [rotated([1, 0, 0]), rotated([0, 1, 0]), rotated([0, 0, 1])]
  const dot = (a: Vector, b: Vector) => a[0] * b[0] + a[1] * b[1] + a[2] * b[2]
  return {
    seen(u, v) {
      const [x, y, z] = rotated([u - face.long / 2, v - face.high / 2, 0])
      const share = view.focal / (z + view.distance)
      return { x: view.width / 2 + x * share, y: view.height / 2 + y * share }
    },
    place(x, y) {
      const ray: Vector = [x - view.width / 2, y - view.height / 2, view.focal]
      const far = (normal[2] * view.distance) / dot(normal, ray)
      const on: Vector = [ray[0] * far, ray[1] * far, ray[2] * far - view.distance]
      return { u: dot(on, e1) + face.long / 2, v: dot(on, e2) + face.high / 2 }
    },
  }
}
