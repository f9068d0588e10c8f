/** A photograph comes in: turned as the camera held it, made smaller, and kept as a JPEG. It never leaves the page. */
import { LARGEST_PICTURE, MOST_DOTS } from '../../geometry/index.ts'

export interface Picture {
  /** `data:image/jpeg;base64,…` */
  readonly image: string
  readonly width: number
  readonly height: number
}

export type TakenIn =
  | { readonly ok: true; readonly picture: Picture }
  | { readonly ok: false; readonly sentence: string }

/** A file larger than this is no photograph that a browser can open. */
const LARGEST_FILE = 250e6
/** Longest side and quality, tried one after another until the picture is small enough to be kept. */
const TRIES = [
  [1800, 0.85],
  [1800, 0.7],
  [1400, 0.7],
  [1000, 0.7],
  [700, 0.6],
] as const

/** Reads a photograph, or says why not. Example: `await takeIn(file)`. */
export async function takeIn(file: Blob, name = 'The file'): Promise<TakenIn> {
  if (file.size > LARGEST_FILE)
    return {
      ok: false,
      sentence: `${name} is larger than 250 megabytes. A photograph of a few megabytes will do.`,
    }
  let whole: ImageBitmap
  try {
    // By default a browser turns a picture as its EXIF says the camera was held.
    whole = await createImageBitmap(file)
  } catch {
    return {
      ok: false,
      sentence: `${name} could not be opened as a picture. JPEG, PNG and WebP are taken; the design stays as it was.`,
    }
  }
  try {
    for (const [longest, quality] of TRIES) {
      const picture = madeSmaller(whole, Math.min(longest, MOST_DOTS), quality)
      if (picture.image.length <= LARGEST_PICTURE) return { ok: true, picture }
    }
  } catch {
    return {
      ok: false,
      sentence: `${name} has more dots than this browser has memory for. Make it smaller first.`,
    }
  } finally {
    whole.close()
  }
  return { ok: false, sentence: `${name} could not be made small enough to be kept with the design.` }
}

function madeSmaller(whole: ImageBitmap, longest: number, quality: number): Picture {
  const scale = Math.min(1, longest / Math.max(whole.width, whole.height))
  const width = Math.max(1, Math.round(whole.width * scale))
  const height = Math.max(1, Math.round(whole.height * scale))
  const canvas = document.createElement('canvas')
  canvas.width = width
  canvas.height = height
  const pen = canvas.getContext('2d')
  if (!pen) throw new Error('no canvas')
  // What is clear in a PNG shows as paper, not as black.
  pen.fillStyle = '#fff'
  pen.fillRect(0, 0, width, height)
  pen.imageSmoothingQuality = 'high'
  pen.drawImage(whole, 0, 0, width, height)
  return { image: canvas.toDataURL('image/jpeg', quality), width, height }
}
