/** Things of a design by their id. */
import { byName } from '../quantity/called.ts'
import type { Design, Thing } from './schema.ts'

/** The number of the thing called so in the design's list, or -1. Example: `indexOfThing(design, 'hole-1')`. */
export const indexOfThing = ({ things }: Pick<Design, 'things'>, id: string | null | undefined): number =>
  id == null ? -1 : ofThings(things, id)

/** The thing called so, if there is one. Example: `thingCalled(design, 'hole-1')?.locked`. */
export const thingCalled = (
  design: Pick<Design, 'things'>,
  id: string | null | undefined,
): Thing | undefined => design.things[indexOfThing(design, id)]

const ofThings = byName(({ id }: Thing) => id)
