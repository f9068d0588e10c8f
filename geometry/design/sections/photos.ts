/** A photograph of a face, kept with the design so that what is on the box lies under the drawing at true scale. */
import { z } from 'zod'
import { FACES } from '../../kinds/kind.ts'
import type { Point } from '../../plane/contour.ts'
import { type CornerFault, type Corners, cornerFault, windingOf } from '../../plane/homography.ts'
import { choice, count, meta } from '../fields.ts'

/** Letters of the picture itself: some 450 kilobytes as a file. */
export const LARGEST_PICTURE = 600_000
/** Longest side of a picture that is kept, in its own dots. */
export const MOST_DOTS = 2400

const dot = z
  .number()
  .min(-MOST_DOTS)
  .max(2 * MOST_DOTS)
const corner = z.strictObject({ x: dot, y: dot })

const CORNER_WORDS: Readonly<Record<CornerFault | 'mirrored', string>> = {
  together: 'holds two corners in one place; put each on its own corner of the face',
  'in line': 'holds three corners in one line; a face of a box has none',
  crossed: 'holds corners that cross; go round the face in one direction',
  hollow: 'holds a corner that lies inside the other three; no camera sees a rectangle so',
  mirrored:
    'holds corners that run the other way round, so that the picture would lie mirrored; go round clockwise',
}

/**
 * What is wrong with four corners in a picture (dots, y down), as words that follow a name; `null` where nothing is.
 * Example: a bow tie `holds corners that cross; …`.
 */
export function photoCornersFault(corners: Corners): string | null {
  const fault = cornerFault(corners)
  if (fault) return CORNER_WORDS[fault]
  const [a, b, c, d] = corners
  const upward = ({ x, y }: Point): Point => ({ x, y: -y })
  return windingOf([upward(a), upward(b), upward(c), upward(d)]) === 1 ? CORNER_WORDS.mirrored : null
}

export const photo = z.strictObject({
  face: z
    .enum(FACES)
    .default('lid')
    .meta(meta('one of', { label: 'Face', help: 'The face that was photographed, from outside.' })),
  image: z
    .string()
    .max(LARGEST_PICTURE)
    .regex(/^data:image\/jpeg;base64,[A-Za-z0-9+/]+=*$/, {
      error: 'is no picture as it is kept here: JPEG, written as data:image/jpeg;base64,…',
    })
    .meta(
      meta('picture', {
        label: 'Picture',
        help: 'The photograph itself, made smaller, as a JPEG in base64.',
      }),
    ),
  width: count(1, 1, MOST_DOTS, { label: 'Dots across', help: 'Width of the kept picture.' }),
  height: count(1, 1, MOST_DOTS, { label: 'Dots down', help: 'Height of the kept picture.' }),
  corners: z
    .tuple([corner, corner, corner, corner])
    .check((context) => {
      const message = photoCornersFault(context.value)
      if (message) context.issues.push({ code: 'custom', input: context.value, message })
    })
    .meta(
      meta('four places in the picture', {
        label: 'Corners',
        help: 'Where the corners of the face lie in the picture, in dots from its upper left, clockwise: upper left, upper right, lower right, lower left of the face as it is drawn from outside (lid: head to the left; walls: lid side up).',
      }),
    ),
  opacity: z
    .number()
    .min(0.05)
    .max(1)
    .default(0.6)
    .meta(meta('share', { label: 'Strength', help: 'How strongly the picture shows under the drawing.' })),
  shown: choice(true, { label: 'Shown', help: 'Whether it lies under the drawing.' }),
})

export type Photo = z.output<typeof photo>
