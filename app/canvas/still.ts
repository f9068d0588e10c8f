/**
 * One picture of all layers that rest. A browser copies every canvas that stands on the page with every frame in which any of
 * them changes; a picture handed over once is not copied again. So the layers at rest are drawn out of sight, laid together
 * here whenever one of them was painted, and only what lives stays a canvas that the page shows itself.
 */
import type { Layer } from 'konva/lib/Layer.js'

export interface Still {
  /** Lays the layers together, the first lowest. */
  show(layers: readonly Layer[]): void
}

/** For a canvas on the page; `null` where the browser has no canvas out of sight, and then the layers have to be shown. */
export function stillOn(canvas: HTMLCanvasElement): Still | null {
  const shown = typeof OffscreenCanvas === 'undefined' ? null : canvas.getContext('bitmaprenderer')
  if (!shown) return null
  let sheet: OffscreenCanvas | null = null
  return {
    show(layers) {
      const pictures = layers.map((layer) => layer.getNativeCanvasElement())
      const { width, height } = pictures[0] ?? canvas
      if (width === 0 || height === 0) return
      // The size is set anew for each picture only where it is another: setting it clears, and makes new memory.
      if (sheet?.width !== width || sheet.height !== height) sheet = new OffscreenCanvas(width, height)
      const pen = sheet.getContext('2d')
      for (const picture of pictures) pen?.drawImage(picture, 0, 0)
      // What is handed over leaves the sheet empty.
      shown.transferFromImageBitmap(sheet.transferToImageBitmap())
    },
  }
}
