/** What is played: scale, frets, strings and the nut. */
import { z } from 'zod'
import { ratioOf } from '../../scale/ratio.ts'
import { choice, count, length, meta, oneOf } from '../fields.ts'

const rises = (list: readonly number[]) =>
  list.every((value, index) => index === 0 || value > (list[index - 1] ?? value))
const RISING = { error: 'does not rise from each to the next; list the frets from the nut on' }

const numbers = (what: string, min: number, max: number) =>
  z.array(z.number().gt(min).max(max)).min(1).max(60).refine(rises, RISING).meta({ description: what })

const frets = z
  .discriminatedUnion('by', [
    z.strictObject({
      by: z.literal('equal'),
      count: count(18, 0, 36, {
        label: 'Frets',
        help: 'How many, by equal temperament, twelve to the octave.',
      }),
    }),
    z.strictObject({
      by: z.literal('steps'),
      list: numbers('Semitones above the open string, as in [2, 4, 5, 7, 9, 10, 12].', 0, 48),
    }),
    z.strictObject({
      by: z.literal('cents'),
      list: numbers('Cents above the open string, rising.', 0, 4800),
    }),
    z.strictObject({
      by: z.literal('ratios'),
      list: z
        .array(
          z.string().regex(/^\d{1,6}(\/\d{1,6})?$/, {
            error: 'is no ratio; whole numbers with a stroke are wanted, as in "3/2"',
          }),
        )
        .min(1)
        .max(60)
        .refine((list) => list.every((ratio) => ratioOf(ratio) > 1 && ratioOf(ratio) <= 16), {
          error: 'holds a ratio that is not between 1 and 16; a fret raises the open string',
        })
        .refine((list) => rises(list.map(ratioOf)), RISING)
        .meta({
          description: 'Frequency ratios to the open string, rising, as in ["9/8", "5/4", "3/2", "2"].',
        }),
    }),
  ])
  .default({ by: 'equal', count: 18 })
  .meta(
    meta('fret list', {
      label: 'Frets',
      help: 'Equal temperament by count, or a list of semitone steps, of cents or of ratios.',
    }),
  )

export const scale = z
  .strictObject({
    length: length(635, 150, 1300, {
      label: 'Scale length',
      help: 'From the nut (or the zero fret) to the saddle: twice the way to the octave fret.',
    }),
    start: oneOf(['nut', 'zero fret'], 'nut', {
      label: 'The string starts at',
      help: 'The front edge of the nut, or the crown of a zero fret. All positions are measured from there.',
    }),
    frets,
    fretless: choice(false, {
      label: 'Fretless',
      help: 'The positions are marked but not slotted, for slide or for the fingers.',
    }),
    slotWidth: length(0.6, 0.2, 3, {
      label: 'Fret slot, wide',
      help: 'Width of the saw line: the tang of the wire without its barbs and a hair.',
    }),
    slotDepth: length(2, 0.3, 10, {
      label: 'Fret slot, deep',
      help: 'Depth of the saw line below the board.',
    }),
    crown: length(1.1, 0.2, 4, {
      label: 'Fret crown',
      help: 'Height of the fret wire over the board.',
      when: { fretless: [false] },
    }),
  })
  .prefault({})

export const strings = z
  .strictObject({
    count: count(3, 1, 12, { label: 'Strings', help: 'How many strings.' }),
    spacing: oneOf(['equal centres', 'equal gaps'], 'equal centres', {
      label: 'Spacing',
      help: 'Equal from centre to centre, or equal wood between the edges of strings of different gauge.',
    }),
    spanAtNut: length(24, 0, 200, {
      label: 'Outer strings at the nut',
      help: 'From the centre of the first string to the centre of the last, at the nut.',
    }),
    spanAtSaddle: length(26, 0, 300, {
      label: 'Outer strings at the saddle',
      help: 'From the centre of the first string to the centre of the last, at the saddle.',
    }),
    gauges: z
      .array(z.number().min(0.1).max(5))
      .max(12)
      .default([])
      .meta(
        meta('mm, a list', {
          label: 'Gauges',
          help: 'Diameters from the bass string to the treble; the last one given stands for any that are missing.',
        }),
      ),
  })
  .prefault({})

export const nut = z
  .strictObject({
    thickness: length(5, 1, 30, {
      label: 'Nut, thick',
      help: 'Along the strings; it stands behind the zero line.',
    }),
    height: length(2, 0, 20, {
      label: 'Strings over the board at the nut',
      help: 'From the top of the board (or of the bare neck) to the underside of the strings at the nut.',
    }),
    setback: length(0, 0, 1, {
      label: 'Nut set forward',
      help: 'How far the nut is moved towards the frets, so that the first frets are true too; the frets stay.',
    }),
  })
  .prefault({})
