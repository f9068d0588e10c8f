/** What a tape measure says of the box as it really is: sides, diagonals and wall heights, as often as they were taken. */
import { z } from 'zod'
import { type FieldWords, meta } from '../fields.ts'

/** Shortest and longest reading taken, in millimetres. A slip of the pen must still be read, to be asked about. */
const SHORTEST = 1
const LONGEST = 10_000

/** Nobody measures one side more often than this. */
const MOST_READINGS = 30

const readings = (words: FieldWords) =>
  z
    .array(z.number().min(SHORTEST).max(LONGEST))
    .max(MOST_READINGS)
    .default([])
    .meta(meta('mm, readings', words))

const side = (label: string, help: string) => readings({ label, help: `${help} Every reading taken of it.` })

/** The section is left out of a box that was measured once, by length and width: nothing is then adjusted. */
export const survey = z
  .strictObject({
    bass: side('Bass side', 'Outside, along the bass wall, corner to corner.'),
    treble: side('Treble side', 'Outside, along the treble wall, corner to corner.'),
    neckEnd: side('Neck end', 'Outside, across the neck-end wall, corner to corner.'),
    tailEnd: side('Tail end', 'Outside, across the tail-end wall, corner to corner.'),
    diagonalFromBass: side(
      'Diagonal from neck-end bass',
      'Outside, from the neck-end bass corner to the tail-end treble corner.',
    ),
    diagonalFromTreble: side(
      'Diagonal from neck-end treble',
      'Outside, from the neck-end treble corner to the tail-end bass corner.',
    ),
    heightNeckBass: side('Wall at neck-end bass', 'Height of the walls alone, without lid and base.'),
    heightNeckTreble: side('Wall at neck-end treble', 'Height of the walls alone, without lid and base.'),
    heightTailTreble: side('Wall at tail-end treble', 'Height of the walls alone, without lid and base.'),
    heightTailBass: side('Wall at tail-end bass', 'Height of the walls alone, without lid and base.'),
  })
  .optional()
