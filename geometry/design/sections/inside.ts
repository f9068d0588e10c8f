/** What stands in the box already, and pictures on it that are to stay whole. */
import { z } from 'zod'
import { FACES } from '../../kinds/kind.ts'
import { length, meta, oneOf, words } from '../fields.ts'
import { id } from '../place.ts'

const named = {
  id: id.meta(meta('id', { label: 'Id', help: 'Short name by which findings point at it.' })),
  name: words('', 80, { label: 'Name', help: 'What you call it; may be left empty.' }),
}

export const insidePiece = z.strictObject({
  ...named,
  sort: oneOf(['corner block', 'neck block', 'liner', 'batten', 'hinge', 'clasp'], 'corner block', {
    label: 'It is a',
    help: 'Corner blocks, liners and battens are wood that screws may go into; a neck block carries the neck; hinges and clasps are metal with their footprint inside.',
  }),
  fixed: oneOf(['on the base', 'on the walls', 'under the lid'], 'on the base', {
    label: 'It is fixed',
    help: 'On the base, on the walls, or under the lid, with which it then moves.',
  }),
  along: length(16, -200, 1700, {
    label: 'Along the box',
    help: 'From the neck-end face of the box to its middle, towards the tail.',
  }),
  across: length(0, -600, 600, {
    label: 'Across the box',
    help: 'From the centreline to its middle, treble positive.',
  }),
  long: length(20, 0.5, 1500, { label: 'Long', help: 'Its size along the box.' }),
  wide: length(20, 0.5, 1000, { label: 'Wide', help: 'Its size across the box.' }),
  tall: length(40, 0.5, 500, { label: 'Tall', help: 'Its size from base to lid.' }),
  below: length(0, 0, 450, {
    label: 'Below the lid',
    help: 'From the inside of the lid down to its upper side.',
    when: { fixed: ['on the walls'] },
  }),
})

export const inside = z
  .array(insidePiece)
  .max(60)
  .default([])
  .meta(
    meta('list of solids', {
      label: 'Inside',
      help: 'Blocks, liners, battens, hinges and clasps that stand in the box.',
    }),
  )

const corner = z.tuple([z.number().min(-1500).max(1500), z.number().min(-1500).max(1500)])

export const artworkPiece = z.strictObject({
  ...named,
  face: z
    .enum(FACES)
    .default('lid')
    .meta(meta('one of', { label: 'Face', help: 'The face it is on.' })),
  shape: oneOf(['rectangle', 'oval', 'drawn'], 'rectangle', {
    label: 'Shape',
    help: 'A rectangle, an oval, or an outline of your own.',
  }),
  along: length(120, -1600, 1700, {
    label: 'Along the face',
    help: 'To its middle. Lid and base: from the neck-end edge. Walls: from the middle, towards the tail or the treble.',
  }),
  across: length(0, -600, 600, {
    label: 'Across the face',
    help: 'To its middle. Lid and base: from the centreline, treble positive. Walls: down from the lid-side edge.',
  }),
  long: length(60, 0.5, 1500, {
    label: 'Long',
    help: 'Its size along the face.',
    when: { shape: ['rectangle', 'oval'] },
  }),
  wide: length(40, 0.5, 1000, {
    label: 'Wide',
    help: 'Its size across the face.',
    when: { shape: ['rectangle', 'oval'] },
  }),
  outline: z
    .array(corner)
    .max(400)
    .default([])
    .meta(
      meta('list of corners', {
        label: 'Outline',
        help: 'Corners from its middle, [along, across] in millimetres, in the order in which they follow each other.',
        when: { shape: ['drawn'] },
      }),
    ),
  keep: length(3, 0, 100, {
    label: 'Keep clear by',
    help: 'Nothing is cut nearer to it than this. 3 mm is common practice.',
  }),
})

export const artwork = z
  .array(artworkPiece)
  .max(40)
  .default([])
  .meta(
    meta('list of artwork', {
      label: 'Artwork',
      help: 'Pictures, labels and burnt marks that are to stay whole.',
    }),
  )
