/** Where everything stands on the faces, and every hole to drill. */
import { bounds, type Part, partsOf } from '../../../geometry/index.ts'
import { type Cell, type Table, withoutEmpty } from '../../tables/table.ts'
import { capital, FACE_WORDS, type Source } from '../source.ts'

/** Every thing by its letter: where its middle lies, from an edge and from the centreline. */
export function placeTable({ report, letters }: Source): Table {
  return withoutEmpty({
    id: 'places',
    title: 'On the faces, to the middle of each',
    columns: [
      { key: 'letter', title: 'Mark', as: 'words' },
      { key: 'what', title: 'What', as: 'words' },
      { key: 'face', title: 'Face', as: 'words' },
      { key: 'fromEdge', title: 'From the edge', as: 'length' },
      { key: 'fromCentreline', title: 'From the centreline', as: 'length', signed: true },
      { key: 'fromLidEdge', title: 'Below the lid-side edge', as: 'length' },
      { key: 'along', title: 'Size, along', as: 'length' },
      { key: 'across', title: 'across', as: 'length' },
    ],
    rows: report.things.map((one) => [
      letters.get(one.id) ?? '',
      one.name ? `${one.name}: ${one.what}` : one.what,
      FACE_WORDS[one.face] ?? one.face,
      one.fromEdge,
      one.fromCentreline,
      one.fromLidEdge,
      one.size.along,
      one.size.across,
    ]),
    note: 'The edge is the one at the neck; on an end wall, the one at the bass side. Treble positive; on a side wall, the tail.',
  })
}

/** One row of the drill schedule before rows alike are put together. */
interface Hole {
  readonly part: Part
  readonly of: string
  readonly diameter: number
  readonly depth: number | 'through'
  readonly fromLeft: number
  readonly fromLower: number
}

/** Holes of all parts, part by part; the strip that repeats the string holes is left out. */
function holesOf({ layout }: Source): Hole[] {
  return partsOf(layout)
    .filter((part) => part.id !== 'tail-strip')
    .flatMap((part) => {
      const { minX, minY } = bounds(part.outline)
      return part.operations.flatMap((one): Hole[] =>
        one.kind === 'drill'
          ? [
              {
                part,
                of: one.of,
                diameter: one.diameter,
                depth: one.depth,
                fromLeft: one.centre.x - minX,
                fromLower: one.centre.y - minY,
              },
            ]
          : [],
      )
    })
    .sort((a, b) => a.diameter - b.diameter)
}

/** Every round hole a drill makes, the smallest bit first, so that each bit is put in once. */
export function drillTable(source: Source): Table {
  return {
    id: 'drills',
    title: 'Drill schedule',
    columns: [
      { key: 'diameter', title: 'Bit', as: 'length' },
      { key: 'exact', title: 'exactly', as: 'exact' },
      { key: 'part', title: 'In', as: 'words' },
      { key: 'of', title: 'For', as: 'words' },
      { key: 'depth', title: 'Deep', as: 'length' },
      { key: 'fromLeft', title: 'From the left edge', as: 'length' },
      { key: 'fromLower', title: 'From the lower edge', as: 'length' },
    ],
    rows: holesOf(source).map(({ part, of, diameter, depth, fromLeft, fromLower }): Cell[] => [
      diameter,
      diameter,
      capital(part.title),
      of,
      depth === 'through' ? 'through' : depth,
      fromLeft,
      fromLower,
    ]),
    note: 'As the templates lie: seen from outside or from the playing side. Smallest bit first. Larger openings are sawn.',
  }
}
