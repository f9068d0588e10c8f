/** What goes with the finished instrument: who made it, what was built beside what was planned, how it was strung. */
import { z } from 'zod'
import { length, meta, words } from '../fields.ts'

const built = z.strictObject({
  what: words('', 120, {
    label: 'Measured',
    help: 'What was measured; the name of the planned measure where left empty.',
  }),
  planned: words('', 120, {
    label: 'Planned',
    help: 'Name of a planned measure, such as saddle.fromEdge, which is then shown beside what was built; or what was planned, in your own words.',
  }),
  built: length(0, -3000, 3000, { label: 'Built', help: 'What the finished instrument measures there.' }),
  note: words('', 400, { label: 'Note', help: 'Why it is so, or what to do on the next one.' }),
})
export type AsBuilt = z.output<typeof built>

const strung = z.strictObject({
  who: words('', 120, { label: 'Who', help: 'Who strung it, owned it or worked on it.' }),
  when: words('', 60, { label: 'When', help: 'The date as you write it.' }),
  strings: words('', 400, { label: 'Strings', help: 'Gauges and tuning that were put on.' }),
  note: words('', 400, { label: 'Work', help: 'What else was done, or found.' }),
})
export type HistoryRow = z.output<typeof strung>

export const record = z
  .strictObject({
    maker: words('', 120, { label: 'Made by', help: 'Who made it, for sheet and label.' }),
    made: words('', 60, { label: 'Made', help: 'When, or where and when, as you write it.' }),
    notes: words('', 20000, { label: 'Maker’s notes', help: 'How it came out, for whoever repairs it.' }),
    built: z
      .array(built)
      .max(500)
      .default([])
      .meta(
        meta('list of built measures', {
          label: 'As built',
          help: 'Measures of the finished instrument, each beside what was planned.',
        }),
      ),
    history: z
      .array(strung)
      .max(500)
      .default([])
      .meta(
        meta('list of dates', {
          label: 'Strung',
          help: 'Who strung it or worked on it, when, and with which strings.',
        }),
      ),
  })
  .prefault({})
