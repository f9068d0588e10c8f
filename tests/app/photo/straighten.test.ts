import { describe, expect, it } from 'vitest'
import { flatToPhoto, straightened } from '../../../app/photo/straighten.ts'
import { project } from '../../../geometry/index.ts'
import { pinhole } from '../../support/pinhole.ts'

const face = { long: 254, high: 196 }
const view = { width: 640, height: 480, focal: 700, distance: 520 }

/** Colours that run evenly over the face, so that any place can be read off its colour. */
const colour = (u: number, v: number) => [(u / face.long) * 255, (v / face.high) * 255, 128] as const

function photographed(tilt: number, turn: number, roll: number) {
  const camera = pinhole(face, view, tilt, turn, roll)
  const data = new Uint8ClampedArray(view.width * view.height * 4)
  for (let y = 0; y < view.height; y++)
    for (let x = 0; x < view.width; x++) {
      const { u, v } = camera.place(x + 0.5, y + 0.5)
      data.set([...colour(u, v), 255], (y * view.width + x) * 4)
    }
  const corners = [
    camera.seen(0, 0),
    camera.seen(face.long, 0),
    camera.seen(face.long, face.high),
    camera.seen(0, face.high),
  ] as const
  return { camera, corners, dots: { data, width: view.width, height: view.height } }
}

describe('a face seen by a pinhole camera', () => {
  it.each([
    [0, 0, 0],
    [0.5, 0, 0],
    [0.2, -0.45, 0.1],
    [-0.35, 0.3, 1.2],
    [0.1, 0.1, Math.PI],
  ])('tilted %d, turned %d, rolled %d lies flat at true scale', (tilt, turn, roll) => {
    const { camera, corners, dots } = photographed(tilt, turn, roll)
    const map = flatToPhoto(face.long, face.high, corners)
    // The map is the camera's own at any place, not only at the corners.
    for (const [u, v] of [
      [20, 30],
      [127, 98],
      [250, 4],
    ] as const) {
      const wanted = camera.seen(u, v)
      expect(project(map, { x: u, y: v })?.x).toBeCloseTo(wanted.x, 6)
      expect(project(map, { x: u, y: v })?.y).toBeCloseTo(wanted.y, 6)
    }
    const flat = straightened(dots, map, face.long, face.high)
    let worst = 0
    for (let y = 2; y < face.high - 2; y += 3)
      for (let x = 2; x < face.long - 2; x += 3) {
        const at = (y * face.long + x) * 4
        const [red, green] = colour(x + 0.5, y + 0.5)
        worst = Math.max(worst, Math.abs(flat.data[at]! - red), Math.abs(flat.data[at + 1]! - green))
        expect(flat.data[at + 3]).toBe(255)
      }
    // A dot's colour is rounded twice; a step of the scale is about 1 mm.
    expect(worst).toBeLessThan(1.6)
  })

  it('is clear where the photograph ends', () => {
    const { corners, dots } = photographed(0, 0, 0)
    const beyond = corners.map(({ x, y }) => ({ x: x - 400, y })) as unknown as typeof corners
    const flat = straightened(dots, flatToPhoto(face.long, face.high, beyond), face.long, face.high)
    expect(flat.data[3]).toBe(0)
    expect(flat.data[(face.long - 1) * 4 + 3]).toBe(255)
  })
})
