/** Where everything stands on the faces. */
import { type Table, withoutEmpty } from '../../tables/table.ts'
import { FACE_WORDS, type Source } from '../source.ts'

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
