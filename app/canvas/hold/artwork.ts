/** Pictures on the face: a thing beside one just keeps the distance that it asks for. */
import { artworkOf } from '../../../geometry/index.ts'
import { nameOf } from '../../parts/say.ts'
import type { Asked, Offer } from './line.ts'

/** Over a picture nothing takes hold: only beside it, where the thing would meet it when pushed. */
export function artworkLines(asked: Asked, offer: Offer): void {
  const { layout, placed, at, edges } = asked
  for (const { art, face, bounds } of artworkOf(layout)) {
    if (face !== placed.face) continue
    const name = () => `${art.keep > 0 ? 'clear of' : 'beside'} ${nameOf(art.id, layout)}`
    const { minX, maxX, minY, maxY } = bounds
    const kept = {
      minX: minX - art.keep,
      maxX: maxX + art.keep,
      minY: minY - art.keep,
      maxY: maxY + art.keep,
    }
    if (at.y + edges.maxY > kept.minY && at.y + edges.minY < kept.maxY) {
      offer('x', kept.minX - edges.maxX, name, { shows: kept.minX })
      offer('x', kept.maxX - edges.minX, name, { shows: kept.maxX })
    }
    if (at.x + edges.maxX > kept.minX && at.x + edges.minX < kept.maxX) {
      offer('y', kept.minY - edges.maxY, name, { shows: kept.minY })
      offer('y', kept.maxY - edges.minY, name, { shows: kept.maxY })
    }
  }
}
