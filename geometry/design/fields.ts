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

/** Both limits at once: each step of a chain would make the schema anew, and there are hundreds when the engine starts. */
const bounded = <S extends z.ZodNumber>(schema: S, min: number, max: number): S =>
  schema.check(z.gte(min), z.lte(max))

/** The same schema, its words noted beside it: `meta` of the library would make it anew. */
function said<S extends z.ZodType>(schema: S, unit: string, text: FieldWords): S {
  z.globalRegistry.add(schema, meta(unit, text))
  return schema
}

/** A length in millimetres between `min` and `max`. Example: `length(6, 0.5, 60, { label, help })`. */
export const length = (standard: number, min: number, max: number, words: FieldWords) =>
  said(bounded(z.number(), min, max).default(standard), 'mm', words)

/** A quantity that is no length, in the unit named. Example: `measure('newtons', 70, 10, 300, { label, help })`. */
export const measure = (unit: string, standard: number, min: number, max: number, words: FieldWords) =>
  said(bounded(z.number(), min, max).default(standard), unit, words)

/** The name of a wood, of the table or of the builder's own list; whether it is one is checked with the whole file. */
export const woodName = (standard: string, words: FieldWords, unit = 'wood') =>
  said(z.string().check(z.minLength(1), z.maxLength(60)).default(standard), unit, words)

/** A whole number of things. */
export const count = (standard: number, min: number, max: number, words: FieldWords) =>
  said(bounded(z.int(), min, max).default(standard), 'count', words)

/** A yes or no. */
export const choice = (standard: boolean, words: FieldWords) =>
  said(z.boolean().default(standard), 'yes or no', words)

/** One of a few words. The words are what the file holds and what the screen shows. */
export const oneOf = <const W extends readonly [string, ...string[]]>(
  options: W,
  standard: W[number],
  words: FieldWords,
) => said(z.enum(options).default(standard as never), 'one of', words)

/** Words for people, never read by the engine. Control characters are refused: they end up in file headers. */
export const words = (standard: string, max: number, text: FieldWords) =>
  said(
    z
      .string()
      .max(max)
      // biome-ignore lint/suspicious/noControlCharactersInRegex: control characters are exactly what is looked for
      .refine((value) => !/[\u0000-\u0008\u000b-\u001f\u007f]/.test(value), {
        error: 'holds a control character; plain text is wanted',
      })
      .default(standard),
    'text',
    text,
  )

export const meta = (unit: string, text: FieldWords) => ({
  title: text.label,
  description: text.help,
  unit,
  ...(text.when ? { when: text.when } : {}),
})
