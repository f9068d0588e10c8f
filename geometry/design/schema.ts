/**
 * The saved document: what the builder states, nothing that can be computed. Millimetres throughout; the unit
 * that screens and sheets show stands beside. Every field has a default, so a file written by hand may leave out
 * what is usual. `sample-boxes/README.md` is made from this file.
 */
import { z } from 'zod'
import { FACES } from '../kinds/kind.ts'
import { KINDS } from '../kinds/kinds.ts'
import { choice, count, length, meta, oneOf, words } from './fields.ts'
import { LIMITS } from './limits.ts'
import { across, along, id } from './place.ts'

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

const wall = (label: string) =>
  length(6, 0.2, 40, { label, help: 'Thickness of this wall, measured where the cut will be.' })

const box = z
  .strictObject({
    length: length(240, 40, 1500, {
      label: 'Length',
      help: 'Outside, along the neck, from the neck-end edge to the tail-end edge.',
    }),
    width: length(180, 20, 1000, { label: 'Width', help: 'Outside, across the neck.' }),
    depth: length(55, 5, 500, {
      label: 'Depth',
      help: 'Outside, lid closed, from the outer face of the lid to the outer face of the base.',
    }),
    cornerRadius: length(0, 0, 200, {
      label: 'Corner radius',
      help: 'Outside radius of the four upright corners; 0 for square.',
    }),
    walls: z
      .strictObject({
        neckEnd: wall('Neck-end wall'),
        tailEnd: wall('Tail-end wall'),
        bass: wall('Bass wall'),
        treble: wall('Treble wall'),
      })
      .prefault({}),
    lid: z
      .strictObject({
        thickness: length(4, 0.2, 30, { label: 'Lid', help: 'Thickness of the lid, seen at a cut edge or a hole.' }),
        kind: oneOf(['lift-off', 'glued'], 'lift-off', {
          label: 'How the lid is held',
          help: 'Lifts off (screws, pins, a tight fit), or glued for good.',
        }),
        fit: oneOf(['on the walls', 'between the walls'], 'on the walls', {
          label: 'How the lid lies',
          help: 'Laid on top of the walls, or let in between them; this decides how deep the neck slot is.',
        }),
        play: length(0.5, 0, 5, {
          label: 'Play round the lid',
          help: 'Gap on each side of a lid let in between the walls.',
          when: { fit: ['between the walls'] },
        }),
      })
      .prefault({}),
    base: z
      .strictObject({
        thickness: length(4, 0.2, 30, { label: 'Base', help: 'Thickness of the base.' }),
        fit: oneOf(['under the walls', 'between the walls'], 'under the walls', {
          label: 'How the base lies',
          help: 'Fixed under the walls, or let in between them.',
        }),
      })
      .prefault({}),
  })
  .prefault({})

const numbers = (what: string, min: number, max: number) =>
  z.array(z.number().gt(min).max(max)).min(1).max(60).meta({ description: what })

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
    z.strictObject({ by: z.literal('cents'), list: numbers('Cents above the open string, rising.', 0, 4800) }),
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
        .meta({ description: 'Frequency ratios to the open string, rising, as in ["9/8", "5/4", "3/2", "2"].' }),
    }),
  ])
  .default({ by: 'equal', count: 18 })
  .meta(
    meta('fret list', {
      label: 'Frets',
      help: 'Equal temperament by count, or a list of semitone steps, of cents or of ratios.',
    }),
  )

const scale = z
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
    slotDepth: length(2, 0.3, 10, { label: 'Fret slot, deep', help: 'Depth of the saw line below the board.' }),
  })
  .prefault({})

const strings = z
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

const neck = z
  .strictObject({
    length: length(914, 100, 2500, { label: 'Blank, long', help: 'Length of the neck blank before any cut.' }),
    width: length(38, 8, 200, { label: 'Blank, wide', help: 'Width of the neck blank, and of the neck at the box.' }),
    thickness: length(19, 3, 100, { label: 'Blank, thick', help: 'Thickness of the neck blank without a board.' }),
    widthAtNut: length(38, 8, 200, {
      label: 'Width at the nut',
      help: 'The same as the blank for a straight neck, less for one that tapers towards the nut.',
    }),
    ends: oneOf(['through the box', 'at a block'], 'through the box', {
      label: 'The neck ends',
      help: 'It runs through both end walls, or ends inside on a block glued to the neck-end wall and the base.',
    }),
    tail: length(38, 0, 300, {
      label: 'Tail',
      help: 'How far a through neck stands out behind the tail-end wall.',
      when: { ends: ['through the box'] },
    }),
    tongue: length(80, 5, 600, {
      label: 'Tongue',
      help: 'How far a neck that ends at a block reaches into the box, from the inside of the neck-end wall.',
      when: { ends: ['at a block'] },
    }),
    blockLength: length(40, 5, 300, {
      label: 'Block, long',
      help: 'Length of the block under the tongue, from the inside of the neck-end wall.',
      when: { ends: ['at a block'] },
    }),
    blockWidth: length(70, 5, 300, {
      label: 'Block, wide',
      help: 'Width of the block across the box.',
      when: { ends: ['at a block'] },
    }),
    rise: length(0, -60, 60, {
      label: 'Neck above the lid',
      help: 'Height of the neck’s top over the outer face of the lid: 0 is flush, below 0 is let in deeper.',
    }),
    relief: length(3, 0, 40, {
      label: 'Relief under the lid',
      help: 'How much deeper than the lid the notch goes, so that the lid is free of the neck.',
    }),
    reliefStart: length(10, 0, 100, {
      label: 'Relief starts',
      help: 'How far inside each end wall the relief begins; there the lid lies on the neck.',
    }),
    slotPlay: length(0.4, 0, 5, {
      label: 'Play in the slots',
      help: 'How much wider than the neck the slots in the walls are cut, both sides together.',
    }),
  })
  .prefault({})

const board = z
  .strictObject({
    fitted: choice(true, {
      label: 'Fretboard',
      help: 'A board glued on the neck; without one the frets go into the neck itself.',
    }),
    thickness: length(5, 1, 30, {
      label: 'Board, thick',
      help: 'Thickness of the fretboard.',
      when: { fitted: [true] },
    }),
    ends: oneOf(['after the last fret', 'at a length'], 'after the last fret', {
      label: 'The board ends',
      help: 'A little behind the last fret, or at a length that you give.',
      when: { fitted: [true] },
    }),
    beyond: length(12, 0, 400, {
      label: 'Behind the last fret',
      help: 'How far the board goes on behind its last fret.',
      when: { ends: ['after the last fret'] },
    }),
    length: length(440, 20, 1200, {
      label: 'Board, long',
      help: 'Length of the board from the nut.',
      when: { ends: ['at a length'] },
    }),
  })
  .prefault({})

const headstock = z
  .strictObject({
    length: length(150, 20, 400, { label: 'Headstock, long', help: 'From the front edge of the nut to the end of the head.' }),
    width: length(38, 8, 300, {
      label: 'Headstock, wide',
      help: 'Width of the head; wider than the blank means cheeks glued on.',
    }),
    thickness: length(14, 3, 100, {
      label: 'Headstock, thick',
      help: 'What is left after the head’s front is carved down; 13 to 16 mm suits ordinary tuners (common practice).',
    }),
    ramp: length(20, 0, 150, {
      label: 'Slope behind the nut',
      help: 'Length of the slope from the nut down to the face of the head.',
    }),
    bassTuners: count(2, 0, 12, { label: 'Tuners, bass side', help: 'Tuner posts along the bass edge of the head.' }),
    trebleTuners: count(1, 0, 12, { label: 'Tuners, treble side', help: 'Tuner posts along the treble edge.' }),
    firstPost: length(45, 1, 300, {
      label: 'First post behind the nut',
      help: 'From the front edge of the nut to the centre of the nearest post.',
    }),
    postSpacing: length(32, 5, 100, { label: 'Between posts', help: 'From centre to centre along one edge.' }),
    stagger: length(0, -50, 50, {
      label: 'Treble posts farther back',
      help: 'How far the treble row stands behind the bass row.',
    }),
    postEdge: length(12, 3, 80, { label: 'Post to edge', help: 'From the edge of the head to the centre of each post.' }),
    postHole: length(8, 1, 20, { label: 'Post hole', help: 'Diameter of the hole for the post or its bushing. Measure yours.' }),
  })
  .prefault({})

const nut = z
  .strictObject({
    thickness: length(5, 1, 30, { label: 'Nut, thick', help: 'Along the strings; it stands behind the zero line.' }),
    height: length(2, 0, 20, {
      label: 'Strings over the board at the nut',
      help: 'From the top of the board (or of the bare neck) to the underside of the strings at the nut.',
    }),
  })
  .prefault({})

const saddle = z
  .strictObject({
    place: along(
      { share: 0.72 },
      'Saddle along the lid',
      'From the neck-end edge of the lid to the saddle line. This decides where the box sits under the strings.',
    ),
    setback: length(0, -10, 20, {
      label: 'Setback',
      help: 'How far behind the bare scale length the saddle line is drawn, because fretting sharpens.',
    }),
    thickness: length(5, 1, 40, { label: 'Saddle, thick', help: 'Foot of the saddle, along the strings.' }),
    length: length(50, 3, 300, { label: 'Saddle, long', help: 'Across the strings.' }),
    height: length(12, 1, 80, {
      label: 'Saddle, tall',
      help: 'From the outer face of the lid to the underside of the strings. A little under half an inch is usual.',
    }),
    freeBand: length(6, 0, 40, {
      label: 'Free to move',
      help: 'How far before and behind its line a loose saddle must be able to move.',
    }),
  })
  .prefault({})

const tailpiece = z
  .strictObject({
    at: oneOf(['the tail of the neck', 'the tail-end wall', 'the lid'], 'the tail of the neck', {
      label: 'Strings are held at',
      help: 'Holes down through the tail of a through neck, through the tail-end wall, or through the lid.',
    }),
    holes: count(3, 1, 24, {
      label: 'Holes',
      help: 'Holes in one row; more than strings serve several counts, as five serve four and three.',
    }),
    span: length(26, 0, 300, {
      label: 'Outer holes',
      help: 'From the centre of the first hole to the centre of the last.',
    }),
    fromEdge: length(14, 1, 300, {
      label: 'Holes from the edge',
      help: 'On the tail, from the tail-end wall’s outer face; on the wall, down from its lid-side edge; on the lid, from its tail-end edge.',
    }),
    diameter: length(2.4, 0.5, 12, {
      label: 'Hole',
      help: 'Diameter: 2 to 2.5 mm for the string alone, 5 mm where the ball end goes through (common practice).',
    }),
    takes: oneOf(['the string alone', 'the ball end'], 'the string alone', {
      label: 'The holes take',
      help: 'The string alone, with the ball end behind; or the ball end, pushed through from the front.',
    }),
  })
  .prefault({})

const placed = {
  id: id.meta(meta('id', { label: 'Id', help: 'Short name by which places and findings point at it.' })),
  name: words('', 80, { label: 'Name', help: 'What you call it; the kind’s name where left empty.' }),
  along: along(60, 'Along the face', 'Lid and base: from the neck-end edge. Walls: from the middle, towards the tail or the treble.'),
  across: across(0, 'Across the face', 'Lid and base: from the centreline, treble positive. Walls: down from the lid-side edge.'),
  turnDegrees: z
    .number()
    .min(-180)
    .max(180)
    .default(0)
    .meta(meta('degrees', { label: 'Turned', help: 'Turned about its centre, from the tail towards the treble.' })),
}

const faceOf = (faces: readonly [string, ...string[]]) =>
  z
    .enum(FACES)
    .refine((face) => faces.includes(face), { error: `cannot carry this; it goes on: ${faces.join(', ')}` })
    .default(faces[0] as never)
    .meta(meta('one of', { label: 'Face', help: 'The face it is put on.' }))

const thingOf = <K extends (typeof KINDS)[keyof typeof KINDS]>(kind: K) =>
  z.strictObject({
    kind: z.literal(kind.kind),
    ...placed,
    face: faceOf(kind.faces),
    ...(kind.fields as K['fields']),
  })

const [firstKind, ...otherKinds] = Object.values(KINDS).map(thingOf)
const thing = z.discriminatedUnion('kind', [firstKind as NonNullable<typeof firstKind>, ...otherKinds])

const limits = z
  .strictObject(
    Object.fromEntries(
      Object.entries(LIMITS).map(([name, limit]) => [
        name,
        z.number().min(0).max(1000).optional().meta(meta(limit.unit, { label: limit.label, help: limit.why })),
      ]),
    ) as Record<keyof typeof LIMITS, z.ZodOptional<z.ZodNumber>>,
  )
  .prefault({})

export const designSchema = z.strictObject({
  format: z.literal('lidwright').meta({ description: 'Says that this is a Lidwright design.' }),
  version: z.literal(VERSION).meta({ description: 'Version of this file format.' }),
  title: words('Untitled box', 120, { label: 'Title', help: 'Names the instrument on screens, sheets and files.' }),
  notes: words('', 20000, { label: 'Notes', help: 'Anything worth remembering.' }),
  hand: oneOf(['not stated', 'right', 'left'], 'not stated', {
    label: 'Hand',
    help: 'The hand that plucks. A left-handed build is the mirror image; every sheet says which it is.',
  }),
  units,
  box,
  scale,
  strings,
  neck,
  board,
  headstock,
  nut,
  saddle,
  tailpiece,
  things: z.array(thing).max(10000).default([]),
  limits,
  overruled: z
    .record(z.string().max(200), z.string().max(500))
    .default({})
    .meta(meta('finding → reason', { label: 'Overruled', help: 'Findings you decided to live with, each with your reason.' })),
})

/** A design as the engine takes it: complete, valid, never changed in place. */
export type Design = z.output<typeof designSchema>
export type Thing = Design['things'][number]
export type Units = Design['units']
export type Hand = Design['hand']
