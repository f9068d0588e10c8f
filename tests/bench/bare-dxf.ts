/**
 * The entities of a DXF handed straight to dxf-writer, without any guard: what the library's own work costs.
 *
 * They are read from our own file with nothing but a split at line breaks, once and before any time is taken, so
 * the library gets the same layers, coordinates and words, captions and headings included, already rounded and
 * already spelled in ASCII.
 */
import DxfDrawing from 'dxf-writer'
import { type RawRecord, rawRecords } from '../support/readDxf.ts'

interface BareLayer {
  readonly name: string
  readonly colour: number
  readonly lineType: string
}

type Point = [x: number, y: number, bulge?: number]

type BareEntity = { readonly layer: string } & (
  | { readonly type: 'CIRCLE'; readonly at: Point; readonly radius: number }
  | { readonly type: 'LINE'; readonly from: Point; readonly to: Point }
  | { readonly type: 'LWPOLYLINE'; readonly points: readonly Point[]; readonly closed: boolean }
  | {
      readonly type: 'TEXT'
      readonly at: Point
      readonly height: number
      readonly degrees: number
      readonly text: string
    }
)

interface BareLineType {
  readonly name: string
  readonly elements: readonly number[]
}

export interface BareFile {
  readonly lineTypes: readonly BareLineType[]
  readonly layers: readonly BareLayer[]
  readonly entities: readonly BareEntity[]
}

function groupOf({ type, pairs }: RawRecord, code: number): string {
  const value = pairs.find(([each]) => each === code)?.[1]
  if (value === undefined) throw new Error(`A ${type} in the DXF has no group ${code}.`)
  return value
}

function entityOf(record: RawRecord): BareEntity {
  const number = (code: number) => Number(groupOf(record, code))
  const layer = groupOf(record, 8)
  const at: Point = [number(10), number(20)]
  switch (record.type) {
    case 'CIRCLE':
      return { type: record.type, layer, at, radius: number(40) }
    case 'LINE':
      return { type: record.type, layer, from: at, to: [number(11), number(21)] }
    case 'TEXT':
      return {
        type: record.type,
        layer,
        at,
        height: number(40),
        degrees: number(50),
        text: groupOf(record, 1),
      }
    case 'LWPOLYLINE':
      return { type: record.type, layer, points: pointsOf(record), closed: number(70) === 1 }
    default:
      throw new Error(`The DXF holds a ${record.type}, which no template should.`)
  }
}

function pointsOf({ pairs }: RawRecord): Point[] {
  const points: Point[] = []
  for (const [code, value] of pairs) {
    if (code === 10) points.push([Number(value), 0])
    const last = points.at(-1)
    if (code === 20 && last) last[1] = Number(value)
    if (code === 42 && last) last[2] = Number(value)
  }
  return points
}

/** What a DXF of ours holds, as the library's calls want it. Throws when the file holds another entity than ours do. */
export function bareFile(text: string): BareFile {
  const records = rawRecords(text)
  const within = ({ section, type }: RawRecord, name: string) =>
    section === name && type !== 'SECTION' && type !== 'ENDSEC'
  return {
    lineTypes: records
      .filter(({ type }) => type === 'LTYPE')
      .map((record) => ({
        name: groupOf(record, 2),
        elements: record.pairs.filter(([code]) => code === 49).map(([, value]) => Number(value)),
      })),
    layers: records
      .filter(({ type }) => type === 'LAYER')
      .map((record) => ({
        name: groupOf(record, 2),
        colour: Number(groupOf(record, 62)),
        lineType: groupOf(record, 6),
      })),
    entities: records.filter((record) => within(record, 'ENTITIES')).map(entityOf),
  }
}

/** The same entities on the same layers, drawn and written by the library alone. */
export function bareDxf({ lineTypes, layers, entities }: BareFile): string {
  const drawing = new DxfDrawing()
  drawing.setUnits('Millimeters')
  for (const { name, elements } of lineTypes) drawing.addLineType(name, name, elements as number[])
  for (const { name, colour, lineType } of layers) drawing.addLayer(name, colour, lineType)
  for (const entity of entities) {
    drawing.setActiveLayer(entity.layer)
    switch (entity.type) {
      case 'CIRCLE':
        drawing.drawCircle(entity.at[0], entity.at[1], entity.radius)
        break
      case 'LINE':
        drawing.drawLine(entity.from[0], entity.from[1], entity.to[0], entity.to[1])
        break
      case 'TEXT':
        drawing.drawText(entity.at[0], entity.at[1], entity.height, entity.degrees, entity.text)
        break
      case 'LWPOLYLINE':
        // The library takes a bulge as a third number; its types do not say so.
        drawing.drawPolyline(entity.points as unknown as [number, number][], entity.closed)
    }
  }
  return drawing.toDxfString()
}
