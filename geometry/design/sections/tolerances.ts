/** How finely things were measured: the rule that was used, and what was measured more or less finely than that. */
import { z } from 'zod'
import { length, meta } from '../fields.ts'

export const rule = z
  .strictObject({
    graduation: length(0, 0, 25.4, {
      label: 'Rule divided into',
      help: 'The finest line on the rule that measured the box. 0 takes one step of the unit shown: 1 mm, or the smallest fraction. A dimension counts as good to half of it.',
    }),
  })
  .prefault({})

/** Dotted paths as they stand in the file; things by their id. */
const MOST_TOLERANCES = 500

export const tolerances = z
  .record(z.string().max(200), z.number().min(0).max(100))
  .refine((value) => Object.keys(value).length <= MOST_TOLERANCES, {
    error: `names more than ${MOST_TOLERANCES} dimensions`,
  })
  .default({})
  .meta(
    meta('dimension → mm', {
      label: 'Tolerances',
      help: 'Dimensions that are known more or less finely than the rule reads, each by its path, as in “box.lid.thickness”, with how far it may be off.',
    }),
  )
