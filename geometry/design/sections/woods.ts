/** A wood of the builder's own: what it takes to reckon with it. */
import { z } from 'zod'
import { measure, meta } from '../fields.ts'

export const ownWood = z.strictObject({
  name: z
    .string()
    .min(1)
    .max(60)
    .regex(/^\P{C}*$/u, { error: 'holds a control character; plain text is wanted' })
    .meta(meta('text', { label: 'Name', help: 'What you call it; no name of the tables.' })),
  density: measure('kg/m³', 600, 50, 25_000, { label: 'Density', help: 'At the moisture it is used at.' }),
  stiffness: measure('N/mm²', 10_000, 100, 500_000, {
    label: 'Stiffness',
    help: 'Modulus of elasticity along the grain, from a bending test; one N/mm² is one MPa.',
  }),
  strength: measure('N/mm²', 70, 1, 5000, {
    label: 'Strength',
    help: 'Modulus of rupture along the grain; of a metal, where it begins to yield.',
  }),
})
