/**
 * What the DXF library writes, put right.
 *
 * The library's objects write themselves, in the library's order; what is wrong with them is cured before,
 * one function with a name for each flaw, and what is wrong with single pairs in `curedTags.ts`. What is drawn is
 * ours altogether (`entities.ts`). The structure aimed at is that of DXF version AC1015 (release 2000), the oldest
 * that has polylines with arcs in one entity: it asks least of a reader. Sources: Autodesk DXF Reference (group codes
 * of each record); ezdxf manual, "DXF file structure" and "Block management".
 */
import type Drawing from 'dxf-writer'
import { CuredTags } from './curedTags.ts'
import type { FileFacts } from './fileFacts.ts'
import { headerLines } from './header.ts'
import { type Entry, type Insides, insidesOf, type Table } from './library.ts'
import {
  blockRecord,
  DimensionStyles,
  PLOT_STYLE_CLASSES,
  placeholder,
  plotStyleDictionary,
  viewport,
} from './records.ts'

/** The entry of the root dictionary under which readers look for plot styles. */
const PLOT_STYLES = 'ACAD_PLOTSTYLENAME'

/** Flaw: no dimension style, though every drawing has one called Standard. */
function cureDimensionStyle({ tables }: Insides): void {
  tables['DIMSTYLE'] = new DimensionStyles()
}

/** Flaw: the viewport says neither where it looks nor how it is shaped, so a reader opens somewhere else. */
function cureViewport({ tables }: Insides, facts: FileFacts): void {
  const table = tables['VPORT']
  if (table === undefined) throw new Error('The DXF has no table of viewports.')
  table.elements = [viewport(facts)]
}

/** Flaw: block records carry tags that came with release 2007, four versions after the one stated. */
function cureVersion(insides: Insides): readonly Entry[] {
  const records = Object.values(insides.blocks).map((block) => blockRecord(block.name))
  insides.addTable('BLOCK_RECORD').elements = records
  return records
}

/** Flaw: the plot style of a layer is the root dictionary; it must be a placeholder in a dictionary of its own. */
function curePlotStyles({ dictionary }: Insides): Entry {
  const normal = placeholder()
  dictionary.addChildDictionary(PLOT_STYLES, plotStyleDictionary(normal))
  return normal
}

/**
 * Flaw: handles are counted on from drawing to drawing, so the same drawing written twice gives two files.
 * Here they are handed out anew, in the order of the file.
 *
 * @returns the next free handle
 */
function cureHandles(insides: Insides, tables: readonly Table[], plotStyle: Entry): string {
  const { blocks, layers, dictionary } = insides
  const entries: { handle: string }[] = []
  for (const table of tables) entries.push(table, ...table.elements)
  for (const block of Object.values(blocks)) entries.push(block, block.end)
  for (const layer of Object.values(layers)) for (const shape of layer.shapes) entries.push(shape)
  entries.push(dictionary, ...Object.values(dictionary.children), plotStyle)
  let count = 0
  for (const entry of entries) entry.handle = handleText(++count)
  return handleText(count + 1)
}

function handleText(count: number): string {
  return count.toString(16).toUpperCase()
}

/**
 * Flaw: entities belong to the BLOCK and blocks to nothing; both belong to the block's BLOCK_RECORD. What
 * belongs to a table or a dictionary has to learn the new handle of that.
 *
 * @returns the record of the model space, which entities belong to
 */
function cureOwners(
  insides: Insides,
  tables: readonly Table[],
  records: readonly Entry[],
  plotStyle: Entry,
): Entry {
  for (const table of tables) for (const element of table.elements) element.ownerObjectHandle = table.handle
  for (const [index, block] of Object.values(insides.blocks).entries()) {
    const record = records[index]
    if (record === undefined) throw new Error(`The block ${block.name} has no record.`)
    block.ownerObjectHandle = record.handle
    block.end.ownerObjectHandle = record.handle
  }
  const { handle, children } = insides.dictionary
  for (const child of Object.values(children)) child.ownerObjectHandle = handle
  plotStyle.ownerObjectHandle = children[PLOT_STYLES]?.handle ?? handle
  const [modelSpace] = records
  if (modelSpace === undefined) throw new Error('The DXF has no model space to draw in.')
  return modelSpace
}

/**
 * The library's drawing as the text of a file, every known flaw cured, a comment as its first line and a line
 * break as its last.
 *
 * @throws when a number is not finite or a string holds a line break
 */
export function curedText(drawing: Drawing, facts: FileFacts): string {
  const insides = insidesOf(drawing)
  cureDimensionStyle(insides)
  cureViewport(insides, facts)
  const records = cureVersion(insides)
  const plotStyle = curePlotStyles(insides)
  const tables = [insides._ltypeTable(), insides._layerTable(), ...Object.values(insides.tables)]
  const seed = cureHandles(insides, tables, plotStyle)
  const modelSpace = cureOwners(insides, tables, records, plotStyle)

  const tags = new CuredTags(facts.unit, plotStyle.handle)
  tags.push(999, facts.comment)
  tags.start('HEADER')
  tags.pushLines(headerLines(facts, seed))
  tags.end()
  tags.start('CLASSES')
  tags.pushLines(PLOT_STYLE_CLASSES)
  tags.end()
  tags.start('TABLES')
  for (const table of tables) table.tags(tags)
  tags.end()
  tags.start('BLOCKS')
  for (const block of Object.values(insides.blocks)) block.tags(tags)
  tags.end()
  tags.start('ENTITIES')
  for (const { name, shapes } of Object.values(insides.layers)) {
    const between = `\n330\n${modelSpace.handle}\n100\nAcDbEntity\n8\n${name}\n`
    for (const shape of shapes) tags.pushLines(shape.lines(between))
  }
  tags.end()
  tags.start('OBJECTS')
  insides.dictionary.tags(tags)
  plotStyle.tags(tags)
  tags.end()
  tags.push(0, 'EOF')
  return `${tags.toDxfString()}\n`
}
