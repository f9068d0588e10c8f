/** What the schema cannot say of pieces inside and of artwork: names that are taken, outlines that are none. */
import { faults, polygon } from '../plane/index.ts'
import type { Design } from './schema.ts'

/** As in `read.ts`: where, and a sentence. */
interface Fault {
  readonly path: string
  readonly sentence: string
}

/** Faults of the lists `box.inside` and `artwork`. `things` have been looked at before. */
export function pieceFaults(design: Design): Fault[] {
  const { things, box, artwork } = design
  if (box.inside.length === 0 && artwork.length === 0) return []
  const taken = new Map(things.map((thing, index) => [thing.id, `things[${index}]`]))
  const found: Fault[] = []
  const name = (id: string, path: string) => {
    const first = taken.get(id)
    if (first === undefined) taken.set(id, path)
    else
      found.push({
        path: `${path}.id`,
        sentence: `The id "${id}" is already that of ${first}; everything needs its own.`,
      })
  }
  box.inside.forEach(({ id }, index) => {
    name(id, `box.inside[${index}]`)
  })
  artwork.forEach((piece, index) => {
    const path = `artwork[${index}]`
    name(piece.id, path)
    if (piece.shape === 'drawn') found.push(...outlineFaults(piece.outline, `${path}.outline`))
  })
  return found
}

/** Nearer than this two corners are one; as in `plane/`. */
const ONE_PLACE = 1e-6

function outlineFaults(outline: Design['artwork'][number]['outline'], path: string): Fault[] {
  const apart = outline.filter(([x, y], index) => {
    const [px, py] = outline[(index + 1) % outline.length] ?? [x, y]
    return Math.hypot(x - px, y - py) > ONE_PLACE
  })
  if (apart.length < 3)
    return [
      {
        path,
        sentence: `The outline has ${apart.length} corners apart from each other; at least 3 are wanted.`,
      },
    ]
  const wrong = faults(polygon(apart.map(([x, y]) => ({ x, y }))))
  return wrong.length === 0
    ? []
    : [
        {
          path,
          sentence: `The outline crosses itself or encloses nothing; one that goes round once is wanted.`,
        },
      ]
}
