/**
 * The saved document: what the builder states, nothing that can be computed. Millimetres throughout; the unit
 * that screens and sheets show stands beside. Every field has a default, so a file written by hand may leave out
 * what is usual. `sample-boxes/README.md` is made from this file.
 */
import { z } from 'zod'
import { DRILL_SETS } from '../schedule/stock-drills.ts'
import { meta, oneOf, words } from './fields.ts'
import { LIMITS } from './limits.ts'
import { balance } from './sections/balance.ts'
import { box } from './sections/box.ts'
import { cutting } from './sections/cutting.ts'
import { headstock } from './sections/headstock.ts'
import { brace, saddle, tailpiece } from './sections/holding.ts'
import { artwork } from './sections/inside.ts'
import { measured } from './sections/measures.ts'
import { board, neck } from './sections/neck.ts'
import { photo } from './sections/photos.ts'
import { nut, scale, strings } from './sections/playing.ts'
import { record } from './sections/record.ts'
import { stringing } from './sections/stringing.ts'
import { thing } from './sections/things.ts'
import { rule, tolerances } from './sections/tolerances.ts'
import { wiring } from './sections/wiring.ts'
import { ownWood } from './sections/woods.ts'

export const VERSION = 1

const units = z
  .strictObject({
    display: oneOf(['mm', 'inches'], 'mm', {
      label: 'Unit',
      help: 'What screens and sheets show; the file itself is always in millimetres.',
    }),
    fraction: z
      .union([z.literal(0), z.literal(8), z.literal(16), z.literal(32), z.literal(64)])
      .default(32)
      .meta(
        meta('one of', {
          label: 'Smallest fraction',
          help: 'The finest line on the rule used: 8, 16, 32 or 64 for eighths to sixty-fourths of an inch, 0 for decimals.',
        }),
      ),
  })
  .prefault({})

const limits = z
  .strictObject(
    Object.fromEntries(
      Object.entries(LIMITS).map(([name, limit]) => [
        name,
        z
          .number()
          .min(0)
          .max(1000)
          .optional()
          .meta(meta(limit.unit, { label: limit.label, help: limit.why })),
      ]),
    ) as Record<keyof typeof LIMITS, z.ZodOptional<z.ZodNumber>>,
  )
  .prefault({})

export const designSchema = z.strictObject({
  format: z.literal('lidwright').meta({ description: 'Says that this is a Lidwright design.' }),
  version: z.literal(VERSION).meta({ description: 'Version of this file format.' }),
  title: words('Untitled box', 120, {
    label: 'Title',
    help: 'Names the instrument on screens, sheets and files.',
  }),
  notes: words('', 20000, { label: 'Notes', help: 'What to remember.' }),
  hand: oneOf(['not stated', 'right', 'left'], 'not stated', {
    label: 'Hand',
    help: 'The hand that plucks. A left-handed build is the mirror image; every sheet says which it is.',
  }),
  units,
  drills: oneOf(DRILL_SETS, 'by the unit', {
    label: 'Drills at hand',
    help: 'The set that the schedule names drills from: fractions of an inch on an inch rule and millimetres else, or one you state.',
  }),
  rule,
  box,
  scale,
  strings,
  neck,
  board,
  headstock,
  nut,
  saddle,
  tailpiece,
  stringing,
  brace,
  cutting,
  balance,
  artwork,
  things: z.array(thing).max(10000).default([]),
  wiring,
  measures: z
    .array(measured)
    .max(500)
    .default([])
    .meta(
      meta('list of measures', {
        label: 'Measures',
        help: 'Distances that stay as notes on the drawing.',
      }),
    ),
  photos: z
    .array(photo)
    .max(6)
    .refine((list) => new Set(list.map((one) => one.face)).size === list.length, {
      error: 'holds two photographs of one face; one is kept for each',
    })
    .default([])
    .meta(
      meta('list of photographs', {
        label: 'Photographs',
        help: 'One a face: straightened by its four corners it lies under the drawing at true scale. It leaves this machine only in your own file.',
      }),
    ),
  woods: z
    .array(ownWood)
    .max(60)
    .default([])
    .meta(
      meta('list of woods', {
        label: 'Own woods',
        help: 'Woods and sheets that the tables lack, by the names used for neck, board, lid and brace.',
      }),
    ),
  limits,
  tolerances,
  overruled: z
    .record(z.string().max(200), z.string().max(500))
    .default({})
    .meta(
      meta('finding → reason', {
        label: 'Overruled',
        help: 'Findings you decided to live with, each with your reason.',
      }),
    ),
  record,
})

/** A design as the engine takes it: complete, valid, never changed in place. */
export type Design = z.output<typeof designSchema>
export type Thing = Design['things'][number]
export type Units = Design['units']
export type Hand = Design['hand']
