/** Lines of the face and of the instrument over it: centreline, shares of the scale, frets, strings, neck, saddle. */
import { edgesAt, stringAt } from '../../../geometry/index.ts'
import type { Asked, Offer } from './line.ts'

const isPlan = ({ placed: { face } }: Asked) => face === 'lid' || face === 'base'

/** Middle lines of the face. */
export function faceLines(asked: Asked, offer: Offer): void {
  const { layout, placed, at } = asked
  const { minX, maxX, minY, maxY } = edgesAt(layout, placed.face, at)
  const plan = isPlan(asked)
  offer('x', plan ? (minX + maxX) / 2 : 0, () => (plan ? 'middle of the face' : 'centreline of the wall'))
  offer('y', plan ? 0 : (minY + maxY) / 2, () => (plan ? 'centreline' : 'half way down the wall'))
}

const SHARES: readonly (readonly [number, string])[] = [
  [1 / 4, 'a quarter of the scale from the saddle'],
  [1 / 3, 'a third of the scale from the saddle'],
  [1 / 2, 'half the scale from the saddle'],
  [3 / 4, 'three quarters of the scale from the saddle'],
]

/** What lies over or under lid and base. */
export function instrumentLines(asked: Asked, offer: Offer): void {
  if (!isPlan(asked)) return
  const { layout, placed, at } = asked
  const { saddle, design, panels, strings, frets, box } = layout
  const { originX } = panels[placed.face]
  const bounds = edgesAt(layout, placed.face, at)
  const half = design.neck.width / 2
  const here = at.x + originX
  offer('x', saddle.x - originX, () => 'on the saddle line')
  for (const [share, name] of SHARES) offer('x', saddle.x - share * design.scale.length - originX, () => name)
  offer('x', (saddle.x + box.insideX1) / 2 - originX, () => 'midway between saddle and tail-end wall')
  offer('x', (saddle.x + box.x0) / 2 - originX, () => 'midway between saddle and neck-end edge')
  offer('y', (half + bounds.maxY) / 2, () => 'midway between neck and treble edge')
  offer('y', (-half + bounds.minY) / 2, () => 'midway between neck and bass edge')
  if (here > 0 && here < saddle.x)
    for (const string of strings)
      offer('y', stringAt(string, here, saddle.x), () => `under string ${string.number}`)
  for (const fret of frets)
    if (fret.number > 0) offer('x', fret.fromNut - originX, () => `on the line of fret ${fret.number}`)
  for (const [side, name] of [
    [half, 'the neck’s treble side'],
    [-half, 'the neck’s bass side'],
  ] as const) {
    offer('y', side - asked.edges.minY, () => `edge on ${name}`, { shows: side })
    offer('y', side - asked.edges.maxY, () => `edge on ${name}`, { shows: side })
  }
}
