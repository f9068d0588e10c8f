/** Moves the sheet under the window. */
import { type Camera, panned } from '../camera.ts'
import type { PointerAt, Tool } from './tool.ts'

export function pan(start: Camera, from: PointerAt, set: (camera: Camera) => void): Tool {
  return {
    cursor: 'grabbing',
    move: (at) => set(panned(start, at.x - from.x, at.y - from.y)),
    finish: () => {},
    cancel: () => set(start),
  }
}
