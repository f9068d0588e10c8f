/**
 * DXF read by others: the libraries dxf-parser and dxf, and the bare pairs of code and value.
 */
import { type Entity as DxfEntity, parseString } from 'dxf'
import DxfParser from 'dxf-parser'
import { bulgedSegments, type Drawn } from './segments.ts'

export interface ReadDxf {
  /** Contours by layer, in the order of the file. */
  readonly contours: ReadonlyMap<string, readonly Drawn[]>
  /** Types of entities by layer, in the order of the file. */
  readonly types: ReadonlyMap<string, readonly string[]>
  /** Layers in the order in which their entities come, each as often as the file turns to it. */
  readonly turns: readonly string[]
  readonly words: readonly {
    text: string
    layer: string
    x: number
    y: number
    height: number
    degrees: number
  }[]
  readonly layers: ReadonlyMap<string, { colour: number | undefined }>
  readonly insUnits: unknown
}

interface Entity {
  readonly type: string
  readonly layer: string
  readonly drawn?: Drawn
  readonly words?: Omit<ReadDxf['words'][number], 'layer'>
}

function collect(entities: readonly Entity[]): Pick<ReadDxf, 'contours' | 'types' | 'turns' | 'words'> {
  const contours = new Map<string, Drawn[]>()
  const types = new Map<string, string[]>()
  const turns: string[] = []
  for (const { type, layer, drawn } of entities) {
    types.set(layer, [...(types.get(layer) ?? []), type])
    if (drawn !== undefined) contours.set(layer, [...(contours.get(layer) ?? []), drawn])
    if (turns.at(-1) !== layer) turns.push(layer)
  }
  const words = entities.flatMap(({ layer, words }) => (words === undefined ? [] : [{ layer, ...words }]))
  return { contours, types, turns, words }
}

function fromDxf(entity: DxfEntity): Entity {
  const { type, layer, x = Number.NaN, y = Number.NaN, r = Number.NaN } = entity
  switch (type) {
    case 'CIRCLE':
      return { type, layer, drawn: { centre: { x, y }, radius: r } }
    case 'LINE':
      return { type, layer, drawn: bulgedSegments([entity.start ?? { x, y }, entity.end ?? { x, y }], false) }
    case 'POLYLINE':
    case 'LWPOLYLINE':
      return { type, layer, drawn: bulgedSegments(entity.vertices ?? [], entity.closed === true) }
    case 'TEXT': {
      const words = {
        text: entity.string ?? '',
        x,
        y,
        height: entity.textHeight ?? 0,
        degrees: entity.rotation ?? 0,
      }
      return { type, layer, words }
    }
    default:
      throw new Error(`The DXF holds a ${type}, which no template should.`)
  }
}

/** @throws when the file cannot be read or holds an entity that a template has no use for */
export function readWithDxf(text: string): ReadDxf {
  const { entities, header, tables } = parseString(text)
  const layers = Object.values(tables.layers).map(
    (layer) => [layer.name, { colour: layer.colorNumber }] as const,
  )
  return { ...collect(entities.map(fromDxf)), layers: new Map(layers), insUnits: header['insUnits'] }
}

interface ParserEntity {
  type: string
  layer: string
  shape?: boolean
  center?: { x: number; y: number }
  radius?: number
  vertices?: { x: number; y: number; bulge?: number }[]
  text?: string
  startPoint?: { x: number; y: number }
  textHeight?: number
  rotation?: number
}

function fromParser(entity: ParserEntity): Entity {
  const { type, layer } = entity
  const nowhere = { x: Number.NaN, y: Number.NaN }
  switch (type) {
    case 'CIRCLE':
      return { type, layer, drawn: { centre: entity.center ?? nowhere, radius: entity.radius ?? Number.NaN } }
    case 'LINE':
      return { type, layer, drawn: bulgedSegments(entity.vertices ?? [], false) }
    case 'POLYLINE':
    case 'LWPOLYLINE':
      return { type, layer, drawn: bulgedSegments(entity.vertices ?? [], entity.shape === true) }
    case 'TEXT': {
      const { x, y } = entity.startPoint ?? nowhere
      const words = {
        text: entity.text ?? '',
        x,
        y,
        height: entity.textHeight ?? 0,
        degrees: entity.rotation ?? 0,
      }
      return { type, layer, words }
    }
    default:
      throw new Error(`The DXF holds a ${type}, which no template should.`)
  }
}

/** @throws as `readWithDxf` */
export function readWithDxfParser(text: string): ReadDxf {
  const parsed = new DxfParser().parseSync(text)
  if (parsed === null) throw new Error('dxf-parser found nothing to read.')
  const layers = Object.values(parsed.tables.layer.layers).map(
    (layer) => [layer.name, { colour: layer.colorIndex }] as const,
  )
  const entities = (parsed.entities as unknown as ParserEntity[]).map(fromParser)
  return { ...collect(entities), layers: new Map(layers), insUnits: parsed.header['$INSUNITS'] }
}

/** A record of a DXF: its type and its pairs, read with nothing but a split at line breaks. */
export interface RawRecord {
  readonly section: string
  readonly type: string
  readonly pairs: readonly (readonly [code: number, value: string])[]
}

export function rawRecords(text: string): RawRecord[] {
  const lines = text.replace(/\n$/, '').split('\n')
  const records: { section: string; type: string; pairs: [number, string][] }[] = []
  let section = ''
  for (let index = 0; index + 1 < lines.length; index += 2) {
    const code = Number(lines[index])
    const value = lines[index + 1] ?? ''
    const record = records.at(-1)
    if (code === 0) records.push({ section, type: value, pairs: [] })
    else record?.pairs.push([code, value])
    // A section's own name comes one pair after its record has begun.
    if (code === 2 && record?.type === 'SECTION' && record.pairs.length === 1) {
      section = value
      record.section = value
    }
  }
  return records
}

export function rawValue(record: RawRecord | undefined, code: number): string | undefined {
  return record?.pairs.find(([each]) => each === code)?.[1]
}
