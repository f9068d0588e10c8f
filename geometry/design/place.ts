/**
 * Where a thing stands on its face: a measure, or an intent that follows when the box changes.
 *
 * `60` is sixty millimetres, whatever the box. `{ share: 0.68 }` is 68 % of the face. `{ midway: [a, b] }` is half
 * way between two lines. `{ ofScale: 0.25 }` is a quarter of the scale from the saddle towards the nut.
 * `{ mirror: id }` follows a partner, on the other side of the centreline. `{ from: id, by: 12 }` stands so far from
 * another thing, counted as measures on that face are: this is how the rest of a row or a ring follows its first.
 */
import { z } from 'zod'
import { FACES } from '../kinds/kind.ts'
import { meta } from './fields.ts'

/** Lines across the box that a place along it can be midway between. */
export const ALONG_LINES = [
  'neck-end edge',
  'tail-end edge',
  'neck-end wall',
  'tail-end wall',
  'board end',
  'saddle',
] as const

/** Lines along the box that a place across it can be midway between. */
export const ACROSS_LINES = [
  'centreline',
  'bass edge',
  'treble edge',
  'bass wall',
  'treble wall',
  'neck bass side',
  'neck treble side',
] as const

export const idPattern = /^[a-z][a-z0-9-]{0,39}$/
const LINES: readonly string[] = [...ALONG_LINES, ...ACROSS_LINES]

/** Names by which findings point at what every instrument has. */
const STRUCTURE: readonly string[] = [
  ...FACES,
  ...['along', 'across', 'board', 'box', 'brace', 'hand', 'headstock', 'neck', 'nut', 'posts', 'side'],
  ...['strings', 'tailpiece', 'wiring'],
]

/** The name by which places and findings point at a thing. Names of lines and of the instrument's parts are taken. */
export const id = z
  .string()
  .regex(idPattern, {
    error: 'is no usable id; small letters, figures and dashes are wanted, as in "hole-treble"',
  })
  .refine((value) => !LINES.includes(value) && !STRUCTURE.includes(value), {
    error: 'is the name of a line or of a part of every instrument; give the thing another id',
  })

const line = (lines: readonly string[]) =>
  z.string().refine((value) => lines.includes(value) || idPattern.test(value), {
    error: `is no line of this face; say one of ${lines.map((name) => `"${name}"`).join(', ')}, or the id of a thing`,
  })

const measure = z.number().min(-3000).max(3000)
const share = z.strictObject({ share: z.number().min(-1.5).max(1.5) })
const mirror = z.strictObject({ mirror: id })
const midway = (lines: readonly string[]) => z.strictObject({ midway: z.tuple([line(lines), line(lines)]) })
const from = z.strictObject({ from: id, by: z.number().min(-3000).max(3000) })
const ofScale = z.strictObject({ ofScale: z.number().min(0).max(1) })

const alongUnion = z.union([measure, share, midway(ALONG_LINES), ofScale, mirror, from])
const acrossUnion = z.union([measure, share, midway(ACROSS_LINES), mirror, from])

export type Along = z.output<typeof alongUnion>
export type Across = z.output<typeof acrossUnion>
export type Place = Along | Across

/** A place along a face: from its neck-end edge on lid and base, from the middle of its lid-side edge on a wall. */
export const along = (standard: Along, label: string, help: string) =>
  alongUnion.default(standard as never).meta(meta('place', { label, help }))

/** A place across a face: from the centreline, treble positive; on a wall, down from its lid-side edge. */
export const across = (standard: Across, label: string, help: string) =>
  acrossUnion.default(standard as never).meta(meta('place', { label, help }))
