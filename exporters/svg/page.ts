/**
 * The page: drawings above, a pair of bars along each axis, what the lines mean, and the title block.
 *
 * One user unit is one millimetre, because width and height in millimetres are the same numbers as those of
 * the viewBox, which starts at 0 0.
 */
import type { Bounds, Point } from '../../geometry/index.ts'
import type { Layer } from '../drawing/drawing.ts'
import { numberText } from '../numbers.ts'
import type { SheetOptions } from '../sheet-layout/facts.ts'
import { BAR_END, BAR_LENGTH, BAR_SIDE, checkBars, SCRIBED_HIGH, SCRIBED_LEAST, scribedBar } from './bars.ts'
import { element, type Markup, textNode, titleElement } from './element.ts'
import { legend, legendHeight } from './legend.ts'
import { type OnPaper, ontoPaper } from './paper.ts'
import { PURPOSES, type Purpose, SVG_PURPOSES, type SvgPurpose, type SvgWords } from './purposes.ts'
import { inSingleLines } from './singleLines.ts'
import { BLOCK_WIDTH, type Row, titleBlock, titleBlockHeight } from './titleBlock.ts'

/** Free edge all round, mm: more than any usual printer leaves white. */
const MARGIN = 10

/** The same of a page for a machine, and from its drawing to the bars, mm. */
const BARE = MARGIN / 2

/** From the edge of a sheet of stock to the bars on its rim, and from there to the parts at least, mm. */
const RIM_EDGE = 1

/** From the drawing to the bars and from there to the words, mm. */
const GAP = 6

/** Narrowest legend beside a title block; with less room it stands above it, mm. */
const LEGEND_WIDTH = 150

/** What a page is filled with. */
export interface PageContent {
  readonly title: string
  readonly description: string
  /** The box of what is drawn, mm, y up. */
  readonly extent: Bounds
  /** Layers that the legend explains. */
  readonly layers: readonly Layer[]
  readonly titleRows: readonly Row[]
  /** The page is a sheet of stock, with a rim free of parts, mm. */
  readonly rim?: number
  /** The drawings, once it is known where they lie. */
  draw(paper: OnPaper): readonly Markup[]
}

/** What a page is for, and how words are written on it. */
export interface SvgOptions extends SheetOptions {
  /** Print unless stated. */
  readonly purpose?: SvgPurpose | undefined
  /** As the purpose has them unless stated. */
  readonly words?: SvgWords | undefined
}

/** @returns the whole SVG document as text, with a line break at its end */
export function page(content: PageContent, options: SvgOptions): string {
  const purpose = purposeOf(options)
  const markup = purpose.furniture ? furnished(content, purpose) : bare(content, purpose)
  const lines = (options.words ?? purpose.words) === 'single lines'
  return `<?xml version="1.0" encoding="UTF-8"?>\n${lines ? inSingleLines(markup, purpose.width) : markup}\n`
}

/** The settings of a page. @throws for a purpose that there is not */
export function purposeOf({ purpose = 'print' }: SvgOptions): Purpose {
  const found = PURPOSES[purpose]
  if (found === undefined)
    throw new Error(`"${String(purpose)}" is not what an SVG can be for: ${SVG_PURPOSES.join(', ')}.`)
  return found
}

/**
 * Only what is drawn and a bar along each axis. A sheet of stock is the page itself, with the bars on its rim where that
 * is wide enough; any other page is a little larger than what is drawn.
 */
function bare(content: PageContent, purpose: Purpose): string {
  const { minX, minY, maxX, maxY } = content.extent
  const { rim } = content
  const inset = rim ?? BARE + SCRIBED_HIGH + BARE
  const edge = rim === undefined ? BARE : RIM_EDGE
  const wide = rim === undefined ? Math.max(maxX - minX, SCRIBED_LEAST) + inset + BARE : maxX - minX
  const tall = rim === undefined ? Math.max(maxY - minY, SCRIBED_LEAST) + inset + BARE : maxY - minY
  const from = rim === undefined ? { x: inset, y: BARE } : { x: 0, y: 0 }
  const paper = ontoPaper({ x: minX, y: maxY }, from)
  const bars =
    inset < edge + SCRIBED_HIGH + RIM_EDGE
      ? []
      : [
          scribedBar(inset, tall - edge, 'across', wide - inset - edge, purpose),
          scribedBar(edge, tall - inset, 'up', tall - inset - edge, purpose),
        ]
  return svg(content, numberText(wide, 'Width of the page'), numberText(tall, 'Height of the page'), [
    ...bars.filter((bar) => bar !== null),
    ...content.draw(paper),
  ])
}

function svg(content: PageContent, width: string, height: string, inside: readonly Markup[]): string {
  return element(
    'svg',
    {
      xmlns: 'http://www.w3.org/2000/svg',
      version: '1.1',
      width: `${width}mm`,
      height: `${height}mm`,
      viewBox: `0 0 ${width} ${height}`,
      role: 'img',
      'aria-labelledby': 'title description',
      'font-family': 'sans-serif',
    },
    [
      titleElement(content.title, 'title'),
      element('desc', { id: 'description' }, [textNode(content.description)]),
      ...inside,
    ],
  ).markup
}

function furnished(content: PageContent, purpose: Purpose): string {
  const width = content.extent.maxX - content.extent.minX
  const height = content.extent.maxY - content.extent.minY
  const roomX = Math.max(width, BLOCK_WIDTH, BAR_LENGTH + BAR_END)
  const roomY = Math.max(height, BAR_LENGTH + BAR_END)
  const left = MARGIN + 2 * BAR_SIDE + GAP
  const bottom = MARGIN + roomY
  const upperLeft: Point = { x: left + (roomX - width) / 2, y: MARGIN + (roomY - height) / 2 }
  const barsAt = bottom + GAP + BAR_SIDE

  const below = barsAt + BAR_SIDE + GAP / 2
  const beside = roomX >= BLOCK_WIDTH + GAP + LEGEND_WIDTH
  const keyHeight = legendHeight(content.layers, purpose)
  const blockHeight = titleBlockHeight(content.titleRows)
  const block = beside
    ? { x: left + roomX - BLOCK_WIDTH, y: below }
    : { x: left, y: below + keyHeight + GAP / 2 }
  const legendWidth = beside ? roomX - BLOCK_WIDTH - GAP : roomX
  const end = Math.max(below + keyHeight, block.y + blockHeight)

  // Whole millimetres, so that no program that rounds a page size changes the scale with it.
  const pageWidth = numberText(Math.ceil(left + roomX + MARGIN), 'Width of the page')
  const pageHeight = numberText(Math.ceil(end + MARGIN), 'Height of the page')
  const paper = ontoPaper({ x: content.extent.minX, y: content.extent.maxY }, upperLeft)
  return svg(content, pageWidth, pageHeight, [
    element('g', { id: 'sheet' }, [
      titleElement('SHEET: never cut'),
      checkBars(left, barsAt, 'across'),
      checkBars(MARGIN + BAR_SIDE, bottom, 'up'),
      legend(content.layers, purpose, left, below, legendWidth),
      titleBlock(content.titleRows, block.x, block.y),
    ]),
    ...content.draw(paper),
  ])
}
