/** The build sheet and the label as PDF, from the same data as their HTML and SVG. */
import { bind, POINTS } from '../../pdf/bind.ts'
import { openTypeface, type SetLine } from '../../pdf/font/typeface.ts'
import { Ink } from '../../pdf/ink.ts'
import { type PaperName, paperNamed } from '../../pdf/papers.ts'
import { Wording } from '../../pdf/words.ts'
import type { Block, Sheet, Step } from '../model.ts'
import type { Picture } from '../pictures/picture.ts'
import { drawPicture } from './draw-picture.ts'
import { drawTable } from './draw-table.ts'
import { Flow, LEADING } from './flow.ts'

const TEXT = 3.2
const SMALL = 2.7

/** A PDF, and what is in it otherwise than written: signs that its letters lack. */
export interface MadeSheet {
  readonly bytes: Uint8Array
  readonly cautions: readonly string[]
}

/**
 * The build sheet as a PDF on a paper. The same sheet gives the same bytes. Throws for a number that is not finite.
 * Example: `const { bytes } = writeSheetPdf(buildSheet(design), 'a4')`.
 */
export function writeSheetPdf(sheet: Sheet, paper: PaperName): MadeSheet {
  const typeface = openTypeface()
  const wording = new Wording(typeface)
  const size = paperNamed(paper)
  const flow = new Flow(wording, size, `${sheet.title} · build sheet`)
  drawHead(flow, sheet)
  for (const section of sheet.sections) {
    flow.need(Math.min(roomFor(section.blocks[0]), flow.tallest))
    flow.down(flow.y > size.height - 20 ? 0 : 5)
    flow.line(section.title, 4.6)
    flow.down(0.8)
    flow.rule(0.35)
    flow.down(2.5)
    for (const block of section.blocks) drawBlock(flow, block, sheet)
  }
  flow.paragraph(
    `Design ${sheet.checksum}: the label in the box carries the same figures. All loads are estimates.`,
    SMALL,
    { faint: true },
  )
  const { width, height } = size
  const pages = flow.finished().map((content) => ({ width, height, content }))
  const bytes = bind(pages, [], typeface, flow.used, `${wording.printable(sheet.title)}: build sheet`)
  return { bytes, cautions: wording.cautions }
}

/** Height a section's heading and what follows it at once need, so that none stands alone at the foot of a page. */
function roomFor(first: Block | undefined): number {
  const heading = 20
  if (first?.kind === 'picture') return heading + first.picture.height + 12
  if (first?.kind !== 'table') return heading + 15
  const { rows } = first.table
  return heading + (rows.length === 0 ? 65 : Math.min(rows.length, 14) * 8 + 15)
}

/** Facts in the head stand in three columns. */
const COLUMNS = 3

function drawHead(flow: Flow, sheet: Sheet): void {
  for (const line of flow.broken(sheet.title, 7, flow.width)) flow.line(line, 7)
  flow.down(2)
  flow.rule(0.35)
  flow.down(1)
  const width = flow.width / COLUMNS
  for (let start = 0; start < sheet.head.length; start += COLUMNS) {
    const row = sheet.head.slice(start, start + COLUMNS)
    const cells = row.map(([, value]) => flow.broken(value, TEXT, width - 4))
    const tall = Math.max(...cells.map((cell) => cell.length)) * TEXT * LEADING + SMALL * LEADING + 2
    flow.need(tall)
    for (const [index, [label]] of row.entries()) {
      const x = flow.left + index * width
      flow.ink.words({ x, y: flow.y - SMALL * 1.1 }, 2.4, flow.wording.printable(label), {
        colour: '#5a5a5a',
      })
      for (const [number, text] of (cells[index] ?? []).entries())
        flow.ink.words({ x, y: flow.y - SMALL * LEADING - (number + 0.8) * TEXT * LEADING }, TEXT, text)
    }
    flow.down(tall)
  }
  flow.rule(0.35)
  flow.down(2)
}

function drawBlock(flow: Flow, block: Block, sheet: Sheet): void {
  switch (block.kind) {
    case 'table':
      drawTable(flow, block.table, sheet)
      return
    case 'words':
      for (const line of block.lines) flow.paragraph(line, TEXT, { width: Math.min(flow.width, 165) })
      flow.down(3)
      return
    case 'steps':
      for (const [index, step] of block.steps.entries()) drawStep(flow, step, index + 1)
      return
    case 'picture': {
      const { picture } = block
      const caption = flow.broken(`${picture.title}. ${picture.caption}`, SMALL, Math.min(flow.width, 150))
      const words = caption.length * SMALL * LEADING + 2
      const factor = Math.min(1, flow.width / picture.width, (flow.tallest - words) / picture.height)
      const tall = picture.height * factor
      flow.need(Math.min(tall + words, flow.tallest))
      flow.down(tall)
      drawPicture(flow.ink, flow.wording, picture, { x: flow.left, y: flow.y }, factor)
      flow.down(1)
      for (const line of caption) flow.line(line, SMALL, { faint: true })
      flow.down(3.5)
      if (picture.table) drawTable(flow, picture.table, sheet)
    }
  }
}

function drawStep(flow: Flow, { title, words, caution }: Step, number: number): void {
  const indent = 8
  const width = Math.min(flow.width, 165) - indent
  const text = flow.broken(words, TEXT, width)
  const minding = caution === undefined ? [] : flow.broken(`Mind: ${caution}`, TEXT, width - 3)
  flow.need((1 + text.length + minding.length) * TEXT * LEADING + 4)
  flow.ink.words({ x: flow.left, y: flow.y - TEXT * LEADING + TEXT * 0.36 }, TEXT, `${number}`)
  flow.line(title, 3.4, { indent })
  for (const line of text) flow.line(line, TEXT, { indent })
  if (minding.length > 0) {
    flow.down(0.8)
    const top = flow.y
    for (const line of minding) flow.line(line, TEXT, { indent: indent + 3 })
    const x = flow.left + indent + 0.5
    flow.ink.lines(
      [
        [
          { x, y: top },
          { x, y: flow.y },
        ],
      ],
      { colour: '#1a1a1a', width: 0.7 },
    )
  }
  flow.down(2.6)
}

/** A picture, such as the label, as a PDF page of just its size, so that nothing is scaled. */
export function writeLabelPdf(picture: Picture): MadeSheet {
  const typeface = openTypeface()
  const wording = new Wording(typeface)
  const used = new Set<SetLine>()
  const page = new Ink(typeface, used)
  page.within({ scale: { x: POINTS, y: POINTS } }, () => drawPicture(page, wording, picture, { x: 0, y: 0 }))
  const { width, height } = picture
  const pages = [{ width, height, content: page.content }]
  const bytes = bind(pages, [], typeface, used, wording.printable(picture.title))
  return { bytes, cautions: wording.cautions }
}
