/** How the instrument is held, and what its hardware weighs. */
import { z } from 'zod'
import { length, measure, oneOf, woodName } from '../fields.ts'

const grams = (standard: number, label: string, help: string) =>
  measure('g', standard, 0, 5000, { label, help })

export const balance = z
  .strictObject({
    held: oneOf(['not stated', 'on the lap', 'by a strap'], 'not stated', {
      label: 'How it is held',
      help: 'On the lap, or hung from a strap; until it is stated only the weight is reckoned.',
    }),
    lapAt: length(120, -200, 1500, {
      label: 'Rests on the leg at',
      help: 'From the neck-end face of the box, towards the tail, to where it lies on the leg.',
      when: { held: ['on the lap'] },
    }),
    strapAt: length(0, -600, 1500, {
      label: 'Front strap button',
      help: 'From the neck-end face of the box, towards the tail, to the front button; before the box, on the neck, negative. A strap button put on a face goes before this.',
      when: { held: ['by a strap'] },
    }),
    ballast: grams(0, 'Ballast', 'Weight added to make it balance; 0 for none.'),
    ballastFromTail: length(20, -200, 1500, {
      label: 'Ballast lies',
      help: 'From the inside of the tail-end wall towards the neck, to the middle of the ballast.',
    }),
    walls: woodName(
      'plywood',
      { label: 'Walls and base of', help: 'What the box is made of, its lid apart.' },
      'lid stuff',
    ),
    tuner: grams(
      40,
      'A tuner',
      'One with its button; sealed ones weigh 35 to 45 g (common practice). Weigh yours.',
    ),
    pickup: grams(60, 'A pickup', 'One with its wires. Weigh yours.'),
    hardware: grams(30, 'Other hardware, each', 'A control, a jack, a switch. Weigh yours.'),
    tailpiece: grams(0, 'Tailpiece', 'Of metal, with its screws; 0 where the neck itself holds the strings.'),
    saddleAndNut: grams(10, 'Saddle and nut', 'Both together.'),
  })
  .prefault({})
