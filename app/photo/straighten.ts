/** A picture straightened: every dot of the flat face is fetched from where the camera saw it. */
import { type Corners, type Homography, homography } from '../../geometry/index.ts'

/** Red, green, blue, strength; row after row from the top. */
export interface Dots {
  readonly data: Uint8ClampedArray
  readonly width: number
  readonly height: number
}

/**
 * The map from the dots of a flat picture of this size to the dots of the photograph. Corners clockwise from upper left;
 * `onFlat` is where they lie on the flat picture, for a face that is out of square.
 */
export const flatToPhoto = (
  width: number,
  height: number,
  corners: Corners,
  onFlat: Corners = rectangleOf(width, height),
): Homography => homography(onFlat, corners)

/** The corners of a picture itself, clockwise from the upper left. */
export const rectangleOf = (width: number, height: number): Corners => [
  { x: 0, y: 0 },
  { x: width, y: 0 },
  { x: width, y: height },
  { x: 0, y: height },
]

/**
 * The flat picture, `width` by `height` dots, between four neighbours each; clear where the photograph ends.
 * The middle of a dot lies at a half: dot 0 is seen at 0.5.
 */
export function straightened(photo: Dots, map: Homography, width: number, height: number): Dots {
  const [a, b, c, d, e, f, g, h] = map
  const data = new Uint8ClampedArray(width * height * 4)
  const from = photo.data
  const right = photo.width - 1
  const low = photo.height - 1
  let to = 0
  for (let row = 0; row < height; row++) {
    const y = row + 0.5
    for (let column = 0; column < width; column++, to += 4) {
      const x = column + 0.5
      const w = g * x + h * y + 1
      const u = (a * x + b * y + c) / w - 0.5
      const v = (d * x + e * y + f) / w - 0.5
      if (!(u >= -0.5 && v >= -0.5 && u <= right + 0.5 && v <= low + 0.5)) continue
      const x0 = u < 0 ? 0 : u > right ? right : Math.floor(u)
      const y0 = v < 0 ? 0 : v > low ? low : Math.floor(v)
      const beside = x0 < right ? 4 : 0
      const below = y0 < low ? photo.width * 4 : 0
      const p = Math.min(Math.max(u - x0, 0), 1)
      const q = Math.min(Math.max(v - y0, 0), 1)
      const at = (y0 * photo.width + x0) * 4
      for (let part = 0; part < 3; part++) {
        const top = from[at + part]! * (1 - p) + from[at + beside + part]! * p
        const foot = from[at + below + part]! * (1 - p) + from[at + below + beside + part]! * p
        data[to + part] = top * (1 - q) + foot * q
      }
      data[to + 3] = 255
    }
  }
  return { data, width, height }
}
