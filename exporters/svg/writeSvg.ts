/** Parts as SVG, one to a page or all on one sheet, in millimetres at 1:1. */
import type { Part } from '../../geometry/index.ts'
import { pathWords } from '../cutting/cut-part.ts'
import { drawPart } from '../drawing/drawing.ts'
import { STOCK_EDGE, styleOf } from '../drawing/layers.ts'
import { type Facts, factsLine, factsOf, type SheetOptions } from '../sheet-layout/facts.ts'
import { type Sheet, sheetOfAll } from '../sheet-layout/sheet.ts'
import { plainLine } from '../words/plain.ts'
import { CAPITAL_HEIGHT } from '../words/width.ts'
import { element, titleElement } from './element.ts'
import { partGroup, strokeOf } from './layerGroups.ts'
import { type PageContent, page, purposeOf, type SvgOptions } from './page.ts'
import { ontoPaper } from './paper.ts'
import { shapeElement } from './shape.ts'
import { textElement } from './textElement.ts'
import type { Row } from './titleBlock.ts'

const UNITS = 'Units: millimetres, one user unit is one millimetre. Print at 100 %, no scaling.'
const PRINT = { label: 'PRINT', value: 'at 100 %, then measure the bars' } as const
const SCALE = { label: 'SCALE', value: '1:1' } as const

function lastRow(options: SheetOptions, parts: readonly Part[]): Row {
  const line = plainLine(options.line ?? pathWords(parts)?.short ?? '')
  const title = { label: 'INSTRUMENT', value: plainLine(options.title) }
  const cells =
    line === ''
      ? [{ ...title, share: 1 }]
      : [
          { ...title, share: 0.6 },
          { label: 'NOTE', value: line, share: 0.4 },
        ]
  return { height: 9, size: 3.2, cells }
}

function partRows(facts: Facts, part: Part, options: SheetOptions): Row[] {
  return [
    {
      height: 12.5,
      size: 6,
      bold: true,
      cells: [
        { label: 'PART', value: facts.title, share: 0.86 },
        { ...SCALE, share: 0.14 },
      ],
    },
    {
      height: 9,
      size: 3.2,
      cells: [
        { label: 'SEEN', value: facts.seen, share: 0.36 },
        { label: 'HEAD END', value: facts.headEnd, share: 0.26 },
        { label: 'HAND', value: facts.hand, share: 0.19 },
        { label: 'THICKNESS', value: facts.thickness, share: 0.19 },
      ],
    },
    {
      height: 9,
      size: 3.2,
      cells: [
        { label: 'OVERALL SIZE', value: `${facts.size}  (${facts.sizeInches})`, share: 0.62 },
        { ...PRINT, share: 0.38 },
      ],
    },
    lastRow(options, [part]),
  ]
}

/**
 * One part as an SVG page at 1:1, with a margin, check bars along both axes, a legend and a title block.
 *
 * @param part lengths in mm, y up, as seen from the face that `part.seen` names
 * @param options the instrument's title and a line more
 * @returns the whole document; the same for the same input
 * @throws when the part cannot be drawn: an open contour to be cut, a number that is not finite
 * @example writeSvg(lid, { title: 'Tea box' })
 */
export function writeSvg(part: Part, options: SvgOptions): string {
  const drawing = drawPart(part, 'mm')
  const facts = factsOf(part, drawing.outline)
  const sentence = `${facts.title}, ${factsLine(facts)}.`
  return page(
    {
      title: [plainLine(options.title), facts.title].filter((word) => word !== '').join(': '),
      description: [sentence, pathWords([part])?.long ?? '', UNITS].filter((words) => words !== '').join(' '),
      extent: drawing.extent,
      layers: drawing.layers,
      titleRows: partRows(facts, part, options),
      draw: (paper) => [partGroup(drawing, sentence, paper, purposeOf(options))],
    },
    options,
  )
}

/**
 * All parts on one SVG page at 1:1, without overlap, each with its title below it.
 *
 * @throws as `writeSvg`, and when there are no parts
 * @example writeSvgSheet([lid, base], { title: 'Tea box' })
 */
export function writeSvgSheet(parts: readonly Part[], options: SvgOptions): string {
  const sheet = sheetOfAll(parts.map((part) => drawPart(part, 'mm')))
  const facts = sheet.placed.map(({ drawing }) => factsOf(drawing.part, drawing.outline))
  const sentences = facts.map((each) => `${each.title}, ${factsLine(each)}.`)
  const count = `${parts.length} part${parts.length === 1 ? '' : 's'}`
  return page(
    {
      title: [plainLine(options.title), 'all parts'].filter((word) => word !== '').join(': '),
      description: [...sentences, pathWords(parts)?.long ?? '', UNITS]
        .filter((words) => words !== '')
        .join(' '),
      extent: sheet.extent,
      layers: sheet.placed.flatMap(({ drawing }) => drawing.layers),
      titleRows: [
        {
          height: 12.5,
          size: 6,
          bold: true,
          cells: [
            { label: 'SHEET', value: `All parts (${count})`, share: 0.86 },
            { ...SCALE, share: 0.14 },
          ],
        },
        { height: 9, size: 3.2, cells: [{ ...PRINT, share: 1 }] },
        lastRow(options, parts),
      ],
      draw: (paper) =>
        sheet.placed.map(({ drawing, shift, caption }, index) => {
          const ownPaper = ontoPaper({ x: 0, y: 0 }, paper.point(shift))
          const lines = caption.map((line) => {
            const { at, height, text, turn } = paper.words(line)
            return textElement(at.x, at.y, height / CAPITAL_HEIGHT, text, { turn })
          })
          return element('g', {}, [
            titleElement(`${facts[index]?.title ?? ''} with its caption`),
            partGroup(drawing, sentences[index] ?? '', ownPaper, purposeOf(options)),
            ...(purposeOf(options).without.includes('notes') ? [] : lines),
          ])
        }),
    },
    options,
  )
}

/** What a page of parts laid out on stock says of itself. */
export interface LaidOutWords {
  readonly title: string
  readonly description: string
}

/**
 * Parts on a sheet of stock as SVG, each where it is to be cut. Where nothing stands beside it the page is the sheet.
 *
 * @throws as `writeSvg`
 */
export function writeSvgLaidOut(sheet: Sheet, words: LaidOutWords, options: SvgOptions): string {
  const purpose = purposeOf(options)
  const { stock } = sheet
  const parts = sheet.placed.map(({ drawing }) => drawing.part)
  const content: PageContent = {
    title: [plainLine(options.title), words.title].filter((word) => word !== '').join(': '),
    description: [words.description, pathWords(parts)?.long ?? '', UNITS]
      .filter((line) => line !== '')
      .join(' '),
    extent: sheet.extent,
    ...(sheet.rim === undefined ? {} : { rim: sheet.rim }),
    layers: sheet.placed.flatMap(({ drawing }) => drawing.layers),
    titleRows: [
      {
        height: 12.5,
        size: 6,
        bold: true,
        cells: [
          { label: 'SHEET', value: words.title, share: 0.86 },
          { ...SCALE, share: 0.14 },
        ],
      },
      { height: 9, size: 3.2, cells: [{ ...PRINT, share: 1 }] },
      lastRow(options, parts),
    ],
    draw: (paper) => [
      ...(stock === undefined || purpose.without.includes('datum')
        ? []
        : [
            element('g', { id: STOCK_EDGE.name, ...strokeOf(styleOf(STOCK_EDGE.kind), purpose) }, [
              titleElement(`${STOCK_EDGE.name}: ${STOCK_EDGE.meaning}`),
              shapeElement(paper.contour(stock)),
            ]),
          ]),
      ...sheet.placed.map(({ drawing, shift, caption }) => {
        const facts = factsOf(drawing.part, drawing.outline)
        const ownPaper = ontoPaper({ x: 0, y: 0 }, paper.point(shift))
        const lines = caption.map((line) => {
          const { at, height, text, turn } = paper.words(line)
          return textElement(at.x, at.y, height / CAPITAL_HEIGHT, text, { turn })
        })
        return element('g', {}, [
          titleElement(facts.title),
          partGroup(drawing, `${facts.title}, ${factsLine(facts)}.`, ownPaper, purpose),
          ...(purpose.without.includes('notes') ? [] : lines),
        ])
      }),
    ],
  }
  return page(content, options)
}
