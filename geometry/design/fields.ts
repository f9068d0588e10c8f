/**
 * The few sorts of field a design is made of. Each states its unit, default, limits, label and help once;
 * reading, the inspector, the command line and the documentation all read them from here.
 */
import { z } from 'zod'

export interface FieldWords {
  /** What a builder calls it, for the inspector: sentence case, no unit. */
  readonly label: string
  /** One sentence: what is measured, from where to where. */
  readonly help: string
  /** `{ field: value }`: the inspector shows the field only while its neighbour holds one of these. */
  readonly when?: Readonly<Record<string, readonly (string | boolean)[]>>
}

/** A length in millimetres between `min` and `max`. Example: `length(6, 0.5, 60, { label, help })`. */
export const length = (standard: number, min: number, max: number, words: FieldWords) =>
  z.number().min(min).max(max).default(standard).meta(meta('mm', words))

/** A quantity that is no length, in the unit named. Example: `measure('newtons', 70, 10, 300, { label, help })`. */
export const measure = (unit: string, standard: number, min: number, max: number, words: FieldWords) =>
  z.number().min(min).max(max).default(standard).meta(meta(unit, words))

/** The name of a wood, of the table or of the builder's own list; whether it is one is checked with the whole file. */
export const woodName = (standard: string, words: FieldWords, unit = 'wood') =>
  z.string().min(1).max(60).default(standard).meta(meta(unit, words))

/** A whole number of things. */
export const count = (standard: number, min: number, max: number, words: FieldWords) =>
  z.int().min(min).max(max).default(standard).meta(meta('count', words))

/** A yes or no. */
export const choice = (standard: boolean, words: FieldWords) =>
  z.boolean().default(standard).meta(meta('yes or no', words))

/** One of a few words. The words are what the file holds and what the screen shows. */
export const oneOf = <const W extends readonly [string, ...string[]]>(
  options: W,
  standard: W[number],
  words: FieldWords,
) =>
  z
    .enum(options)
    .default(standard as never)
    .meta(meta('one of', words))

/** Words for people, never read by the engine. Control characters are refused: they end up in file headers. */
export const words = (standard: string, max: number, text: FieldWords) =>
  z
    .string()
    .max(max)
    // biome-ignore lint/suspicious/noControlCharactersInRegex: control characters are exactly what is looked for
    .refine((value) => !/[\u0000-\u0008\u000b-\u001f\u007f]/.test(value), {
      error: 'holds a control character; plain text is wanted',
    })
    .default(standard)
    .meta(meta('text', text))

export const meta = (unit: string, text: FieldWords) => ({
  title: text.label,
  description: text.help,
  unit,
  ...(text.when ? { when: text.when } : {}),
})
