/** Photographs as they lie under the drawing: straightened once, remembered, and told when they are ready. */
import type { Bounds, Contour, Corners, Face, Layout, Photo, Point } from '../../geometry/index.ts'
import { type Frame, toScreen } from '../canvas/frame.ts'
import { type Pen, trace } from '../canvas/paint.ts'
import { flatToPhoto, rectangleOf, straightened } from './straighten.ts'

/** Dots of the longest side of a straightened picture: finer than the screen shows at a usual size. */
const LONGEST = 1500

interface Lying {
  readonly of: Photo
  readonly shape: string
  readonly canvas: HTMLCanvasElement
}

const ready = new Map<Face, Lying>()
const onTheWay = new Map<Face, Photo>()
const listeners = new Set<() => void>()

/** Calls back whenever a photograph has become ready; returns how to stop. */
export function onPhotoReady(tell: () => void): () => void {
  listeners.add(tell)
  return () => listeners.delete(tell)
}

/** The dots of a picture as it is kept. Throws where the browser cannot read it. */
export async function dotsOf({
  image,
  width,
  height,
}: Pick<Photo, 'image' | 'width' | 'height'>): Promise<ImageData> {
  const element = new Image()
  element.src = image
  await element.decode()
  const canvas = document.createElement('canvas')
  canvas.width = width
  canvas.height = height
  const pen = canvas.getContext('2d', { willReadFrequently: true })
  if (!pen) throw new Error('no canvas')
  pen.drawImage(element, 0, 0, width, height)
  return pen.getImageData(0, 0, width, height)
}

/** Straightens onto a canvas of this many dots; `onFlat` is where the corners lie on it, if not in its own corners. */
export function straightCanvas(
  dots: ImageData,
  photo: Pick<Photo, 'corners'>,
  width: number,
  height: number,
  onFlat: Corners = rectangleOf(width, height),
) {
  const flat = straightened(dots, flatToPhoto(width, height, photo.corners, onFlat), width, height)
  const canvas = document.createElement('canvas')
  canvas.width = width
  canvas.height = height
  const data = new ImageData(flat.data as Uint8ClampedArray<ArrayBuffer>, width, height)
  canvas.getContext('2d')?.putImageData(data, 0, 0)
  return canvas
}

const sizeOf = ({ minX, maxX, minY, maxY }: Bounds) => {
  const scale = LONGEST / Math.max(maxX - minX, maxY - minY)
  return { width: Math.round((maxX - minX) * scale), height: Math.round((maxY - minY) * scale) }
}

/** Where the corners of a face lie on its straightened picture; a face with rounded corners goes by its bounds. */
function cornersOnFlat(
  outline: Contour,
  frame: Frame,
  bounds: Bounds,
  width: number,
  height: number,
): Corners {
  const square = rectangleOf(width, height)
  if (outline.shape !== 'chain' || outline.vertices.length !== 4) return square
  const on = outline.vertices.map(({ x, y }) => {
    const along = ((x - bounds.minX) / (bounds.maxX - bounds.minX)) * width
    const up = ((y - bounds.minY) / (bounds.maxY - bounds.minY)) * height
    return { x: frame.right > 0 ? along : width - along, y: frame.up > 0 ? height - up : up }
  })
  const far = (one: Point, two: Point) => Math.hypot(one.x - two.x, one.y - two.y)
  const nearest = (corner: Point) =>
    on.reduce((best, one) => (far(one, corner) < far(best, corner) ? one : best))
  return [nearest(square[0]), nearest(square[1]), nearest(square[2]), nearest(square[3])]
}

/** The photograph of a face under what is drawn on it. One that is not ready is fetched, and told of when it is. */
export function paintPhoto(pen: Pen, frame: Frame, layout: Layout, face: Face): void {
  const photo = layout.design.photos.find((one) => one.face === face)
  if (!photo?.shown) return
  const { outline, bounds } = layout.panels[face]
  const { width, height } = sizeOf(bounds)
  const onFlat = cornersOnFlat(outline, frame, bounds, width, height)
  const shape = JSON.stringify(onFlat)
  const lying = ready.get(face)
  if (
    lying &&
    lying.of.image === photo.image &&
    lying.of.corners === photo.corners &&
    lying.shape === shape
  ) {
    const a = toScreen(frame, { x: bounds.minX, y: bounds.minY })
    const b = toScreen(frame, { x: bounds.maxX, y: bounds.maxY })
    pen.save()
    trace(pen, frame, outline)
    pen.clip()
    pen.globalAlpha = photo.opacity
    pen.imageSmoothingQuality = 'high'
    // Upright on the screen whichever way the face's own frame runs: its corners are those of the face as drawn.
    pen.drawImage(
      lying.canvas,
      Math.min(a.x, b.x),
      Math.min(a.y, b.y),
      Math.abs(b.x - a.x),
      Math.abs(b.y - a.y),
    )
    pen.restore()
    return
  }
  if (onTheWay.get(face) === photo) return
  onTheWay.set(face, photo)
  void dotsOf(photo)
    .then((dots) => {
      ready.set(face, { of: photo, shape, canvas: straightCanvas(dots, photo, width, height, onFlat) })
      if (onTheWay.get(face) === photo) onTheWay.delete(face)
      for (const tell of listeners) tell()
    })
    // A picture that cannot be read leaves the drawing as it is; it stays on the way, or it would be tried for ever.
    .catch(() => undefined)
}
