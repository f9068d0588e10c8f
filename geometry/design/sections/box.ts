/** The box as measured from outside. */
import { z } from 'zod'
import { length, oneOf, woodName } from '../fields.ts'
import { inside } from './inside.ts'
import { lidOpening } from './lid-opening.ts'
import { survey } from './survey.ts'

const wall = (label: string) =>
  length(6, 0.2, 40, { label, help: 'Thickness of this wall, measured where the cut will be.' })

export const box = z
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
        thickness: length(4, 0.2, 30, {
          label: 'Lid',
          help: 'Thickness of the lid, seen at a cut edge or a hole.',
        }),
        kind: oneOf(['lift-off', 'glued', 'hinged', 'sliding'], 'lift-off', {
          label: 'How the lid is held',
          help: 'Lifts off (screws, pins, a tight fit), glued for good, swings on hinges, or slides out in grooves.',
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
        ...lidOpening,
        stuff: woodName(
          'plywood',
          {
            label: 'Lid of',
            help: 'Plywood, pressed board or a wood: a name of the tables, or of your own woods.',
          },
          'lid stuff',
        ),
        grain: oneOf(['along', 'across', 'none'], 'along', {
          label: 'Grain of the lid',
          help: 'Which way the grain of a solid lid runs, along the strings or across; none for sheet of your own that is alike both ways.',
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
    inside,
    survey,
  })
  .prefault({})
