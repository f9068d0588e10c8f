/** Measures that stay as notes on the drawing: from one edge, centre or line of a face to another. */
import { z } from 'zod'
import { FACES } from '../../kinds/kind.ts'
import { choice, meta, oneOf, words } from '../fields.ts'
import { ACROSS_LINES, ALONG_LINES, idPattern } from '../place.ts'

const NUMBERED = /^(fret|string) [1-9]\d?$/

/** Lines of a face that can be measured from besides things. Frets and strings have a number behind the word. */
export const MEASURED_LINES: readonly string[] = [...ALONG_LINES, ...ACROSS_LINES]

const end = (which: string) =>
  z
    .strictObject({
      of: z
        .string()
        .max(60)
        .refine((value) => idPattern.test(value) || MEASURED_LINES.includes(value) || NUMBERED.test(value), {
          error: `is neither the id of a thing nor a line; lines are ${MEASURED_LINES.join(', ')}, "fret 12", "string 1"`,
        })
        .meta(
          meta('line or id', {
            label: `${which} end`,
            help: 'The id of a thing on the face, or a line such as "treble edge", "saddle", "fret 12" or "string 1".',
          }),
        ),
      at: oneOf(['edge', 'centre'], 'edge', {
        label: `${which} end, taken at`,
        help: 'The edge of the thing that is nearest to the other end, or its centre; a line has only itself.',
      }),
    })
    .meta({ title: `${which} end` })

export const measured = z.strictObject({
  face: z.enum(FACES).meta(meta('one of', { label: 'Face', help: 'The face it is measured on.' })),
  from: end('First'),
  to: end('Second'),
  way: oneOf(['straight', 'along', 'across'], 'straight', {
    label: 'Measured',
    help: 'The shortest way, or only along or only across the face.',
  }),
  name: words('', 60, {
    label: 'Name',
    help: 'What it is called where it is drawn; empty where its figure says enough.',
  }),
  onSheets: choice(false, {
    label: 'On the sheets',
    help: 'Draws the measure on the sheets too, as a line that is never cut.',
  }),
})
