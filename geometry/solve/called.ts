/** Placed things of a layout by their id. */
import { byName } from '../quantity/called.ts'
import type { Layout, Placed } from './layout.ts'

/** The thing called so where it stands, if there is one. Example: `placedCalled(layout, 'hole-1')?.at`. */
export const placedCalled = (
  { placed }: Pick<Layout, 'placed'>,
  id: string | null | undefined,
): Placed | undefined => (id == null ? undefined : placed[ofPlaced(placed, id)])

const ofPlaced = byName(({ thing }: Placed) => thing.id)
