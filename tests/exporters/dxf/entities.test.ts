/** Our entities beside the shapes of dxf-writer: the same pairs, in the order that readers want. */
import Drawing from 'dxf-writer'
import { expect, test } from 'vitest'
import { curedText } from '../../../exporters/dxf/cures.ts'
import {
  circleEntity,
  lineEntity,
  polylineEntity,
  textEntity,
  vertexLines,
} from '../../../exporters/dxf/entities.ts'
import { type Entity, insidesOf } from '../../../exporters/dxf/library.ts'
import { rawRecords } from '../../support/readDxf.ts'

const facts = { unit: 'mm', comment: 'A test', extent: { minX: 0, minY: 0, maxX: 40, maxY: 30 } } as const
const bent = [
  [0.5, 0.5, 0.25],
  [9.5, 0.5, -0.5],
  [9.5, 9.5],
] as const
const bentLines = bent.map(([x, y, bulge]) =>
  vertexLines(String(x), String(y), bulge === undefined ? '' : String(bulge)),
)

/** The pairs of the only entity of a drawing, without its handle and its owner. */
function pairsOf(text: string): (readonly [code: number, value: string])[] {
  const [, entity] = rawRecords(text).filter(({ section }) => section === 'ENTITIES')
  return (entity?.pairs ?? []).filter(([code]) => code !== 5 && code !== 330)
}

/** Sorted, and numbers as numbers: the library writes 3 where we write 3.0. */
function sorted(pairs: (readonly [code: number, value: string])[]): string[] {
  return pairs.map(([code, value]) => `${code} ${Number.isNaN(Number(value)) ? value : Number(value)}`).sort()
}

function both(entity: Entity, draw: (drawing: Drawing) => Drawing) {
  const drawing = new Drawing()
  insidesOf(drawing).layers['0']?.addShape(entity)
  return { ours: pairsOf(curedText(drawing, facts)), theirs: pairsOf(draw(new Drawing()).toDxfString()) }
}

test.each<[string, Entity, (drawing: Drawing) => Drawing, readonly number[]]>([
  [
    'a circle',
    circleEntity('3.5', '4.0', '5.0'),
    (drawing) => drawing.drawCircle(3.5, 4, 5),
    [100, 8, 100, 10, 20, 30, 40],
  ],
  [
    'a line',
    lineEntity('1.0', '2.0', '3.0', '4.5'),
    (drawing) => drawing.drawLine(1, 2, 3, 4.5),
    [100, 8, 100, 10, 20, 30, 11, 21, 31],
  ],
  [
    'a closed polyline with bulges',
    polylineEntity(3, true, bentLines.join('')),
    (drawing) => drawing.drawPolyline(bent as unknown as [number, number][], true),
    [100, 8, 6, 62, 370, 100, 90, 70, 10, 20, 42, 10, 20, 42, 10, 20],
  ],
  [
    'an open polyline',
    polylineEntity(3, false, bentLines.join('')),
    (drawing) => drawing.drawPolyline(bent as unknown as [number, number][], false),
    [100, 8, 6, 62, 370, 100, 90, 70, 10, 20, 42, 10, 20, 42, 10, 20],
  ],
  [
    'a line of words',
    textEntity('1.0', '2.0', '3.5', '90.0', 'Lid'),
    (drawing) => drawing.drawText(1, 2, 3.5, 90, 'Lid'),
    [100, 8, 100, 10, 20, 30, 40, 1, 50, 100],
  ],
])('%s holds what the library writes, common codes first', (_, entity, draw, order) => {
  const { ours, theirs } = both(entity, draw)
  expect(sorted(ours)).toEqual(sorted(theirs))
  expect(ours.map(([code]) => code)).toEqual(order)
})
