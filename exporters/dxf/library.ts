/**
 * The insides of the DXF library that the cures work on and its types leave out: dxf-writer 1.18.4.
 *
 * Everything it writes is an object with a handle, an owner and a method `tags` that pushes its pairs of
 * group code and value onto a list; the file is that list, joined.
 */
import type Drawing from 'dxf-writer'

/** The list of pairs, which is joined with line breaks in the end. */
export interface Tags {
  push(code: number, value: string | number): void
  /** Pairs that are text already, joined with line breaks. */
  pushLines(lines: string): void
}

/** Anything that stands in the file under a handle. */
export interface Entry {
  handle: string
  ownerObjectHandle: string
  tags(tags: Tags): void
}

export interface Table extends Entry {
  readonly name: string
  elements: Entry[]
}

export interface Block extends Entry {
  readonly name: string
  readonly end: Entry
}

export interface Dictionary extends Entry {
  readonly children: Readonly<Record<string, Entry>>
  addChildDictionary(name: string, child: Entry): void
}

/** What is drawn: ours, which write themselves in one piece. The library gives each the layer it is laid on. */
export interface Entity {
  handle: string
  /** All lines, with those from behind the handle to the layer handed in: they are alike all over a layer. */
  lines(between: string): string
}

export interface Layer extends Entry {
  readonly name: string
  readonly shapes: readonly Entity[]
  addShape(shape: Entity): void
}

export interface Insides {
  readonly layers: Readonly<Record<string, Layer>>
  readonly tables: Record<string, Table>
  readonly blocks: Readonly<Record<string, Block>>
  readonly dictionary: Dictionary
  addTable(name: string): Table
  _ltypeTable(): Table
  _layerTable(): Table
}

export function insidesOf(drawing: Drawing): Insides {
  return drawing as unknown as Insides
}
