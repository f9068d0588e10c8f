/** Things put on faces: what is common to all kinds, and the fields that each kind brings. */
import { z } from 'zod'
import { FACES } from '../../kinds/kind.ts'
import { KINDS } from '../../kinds/kinds.ts'
import { choice, meta, words } from '../fields.ts'
import { across, along, id } from '../place.ts'

const placed = {
  id: id.meta(meta('id', { label: 'Id', help: 'Short name by which places and findings point at it.' })),
  name: words('', 80, { label: 'Name', help: 'What you call it; the kind’s name where left empty.' }),
  along: along(
    60,
    'Along the face',
    'Lid and base: from the neck-end edge. Walls: from the middle, towards the tail or the treble.',
  ),
  across: across(
    0,
    'Across the face',
    'Lid and base: from the centreline, treble positive. Walls: down from the lid-side edge.',
  ),
  turnDegrees: z
    .number()
    .min(-180)
    .max(180)
    .default(0)
    .meta(
      meta('degrees', {
        label: 'Turned',
        help: 'Turned about its centre, from the tail towards the treble.',
      }),
    ),
}

/** How a thing is handled on the screen: nothing here is cut. */
const handled = {
  locked: choice(false, {
    label: 'Locked',
    help: 'Held where it is: neither drag nor arrow keys move it. A measure typed in its field still does.',
  }),
  group: words('', 40, {
    label: 'Group',
    help: 'Things with the same word here are chosen and moved together; empty for none.',
  }),
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
    ...handled,
    ...(kind.fields as K['fields']),
  })

const [firstKind, ...otherKinds] = Object.values(KINDS).map(thingOf)
export const thing = z.discriminatedUnion('kind', [firstKind as NonNullable<typeof firstKind>, ...otherKinds])
