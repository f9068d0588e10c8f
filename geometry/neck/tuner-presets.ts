/** Typical tuners. Sizes are common practice or read off trade pages, never a maker's own: measure yours. */
import type { Design } from '../design/schema.ts'

export interface TunerPreset {
  readonly title: string
  /** Fields of the headstock and what they become. */
  readonly fields: Readonly<Partial<Design['headstock']>>
}

/**
 * Hole sizes: 11/32 in for a bushing pushed in and 25/64 in for one screwed in ("Tuning machine notes"), 8 to 8.3 and 10 mm
 * for their metric kin ("Choosing machine heads"); everything else common practice, from memory.
 */
export const TUNER_PRESETS: readonly TunerPreset[] = [
  {
    title: 'Open gear, no bushing',
    fields: {
      ...{ postHole: 6.5, post: 6, bushing: 'none', bodyLong: 24, bodyIn: 5 },
      ...{ knobWide: 14, knobFrom: 18, knobLong: 15, screws: 2, screwAlong: 9, screwIn: 0 },
    },
  },
  {
    title: 'Bushing pushed in',
    fields: {
      ...{ postHole: 6.6, post: 6.35, bushing: 'let in', bushingHole: 8.7, bushingDepth: 7 },
      ...{ bodyLong: 24, bodyIn: 5, knobWide: 14, knobFrom: 18, knobLong: 15 },
      ...{ screws: 2, screwAlong: 9, screwIn: 0 },
    },
  },
  {
    title: 'Bushing pushed in, 8 mm',
    fields: {
      ...{ postHole: 8, post: 6, bushing: 'none', bodyLong: 22, bodyIn: 5 },
      ...{ knobWide: 14, knobFrom: 18, knobLong: 14, screws: 2, screwAlong: 9, screwIn: 0 },
    },
  },
  {
    title: 'Sealed, screwed in from the front',
    fields: {
      ...{ postHole: 10, post: 6, bushing: 'none', bodyLong: 19, bodyIn: 9.5 },
      ...{ knobWide: 16, knobFrom: 20, knobLong: 16, screws: 1, screwAlong: 9, screwIn: 3 },
    },
  },
]
