/** The drawing that is on screen, for actions and keys that mean "the drawing" wherever they are pressed. */
import type { Fitting } from './camera.ts'

export interface DrawingAtHand {
  fit(what: Fitting): void
  zoom(factor: number): void
}

let current: DrawingAtHand | null = null

export const drawingAtHand = {
  set(drawing: DrawingAtHand): () => void {
    current = drawing
    return () => {
      if (current === drawing) current = null
    }
  },
  get: () => current,
}
