/** What is sawn and from which stock. */
import { bounds, type Part, partsOf } from '../../../geometry/index.ts'
import type { Table } from '../model.ts'
import { capital, FACE_WORDS, type Source } from '../source.ts'

/** A piece of wood as it is finished, mm. */
interface Piece {
  readonly what: string
  readonly count: number
  readonly length: number
  readonly width: number
  readonly thickness: number
  readonly of: string
}

/** What is sawn larger than it is finished, mm: length, width and thickness. Common practice, no source. */
const ALLOWED = [12, 3, 1.5] as const

/** Parts that are the box itself or only drawings of what stands in the list by another name. */
const NOT_SAWN = new Set([
  ...['lid', 'base', 'neck-end-wall', 'tail-end-wall', 'bass-wall', 'treble-wall'],
  ...['neck-top', 'neck-side', 'neck-top-inside', 'neck-side-inside', 'board', 'tail-strip'],
  ...['neck-block', 'neck-block-inside', 'neck-block-end'],
  ...['headstock', 'headstock-side', 'headstock-inside'],
])

function piecesOf({ design, report, layout }: Source): Piece[] {
  const { neck, board, saddle, brace } = design
  const pieces: (Piece | null)[] = [
    {
      what: 'Neck blank, with head and tail',
      count: 1,
      length: report.neck.needs.total,
      width: Math.max(neck.width, neck.widthAtNut, design.headstock.width),
      thickness: neck.thickness,
      of: neck.wood,
    },
    report.board && {
      what: 'Fretboard',
      count: 1,
      length: report.board.length,
      width: Math.max(neck.width, neck.widthAtNut),
      thickness: board.thickness,
      of: board.wood,
    },
    report.neck.block && layout.neck.bottom > layout.box.baseTop
      ? {
          what: 'Block under the neck',
          count: 1,
          length: report.neck.block.maxX - report.neck.block.minX,
          width: report.neck.block.maxY - report.neck.block.minY,
          thickness: layout.neck.bottom - layout.box.baseTop,
          of: 'as the neck, or any sound hardwood',
        }
      : null,
    {
      what: 'Nut',
      count: 1,
      length: neck.widthAtNut,
      width: report.nut.top - report.nut.bottom,
      thickness: report.nut.x1 - report.nut.x0,
      of: 'bone, hardwood or brass',
    },
    {
      what: 'Saddle',
      count: 1,
      length: saddle.length,
      width: saddle.height,
      thickness: saddle.thickness,
      of: 'hardwood or bone',
    },
    brace.height > 0
      ? {
          what: `Brace under the lid, runs ${brace.runs}`,
          count: 1,
          length:
            brace.runs === 'across'
              ? report.box.insideTreble - report.box.insideBass
              : report.box.insideX1 - report.box.insideX0,
          width: brace.height,
          thickness: brace.width,
          of: brace.wood,
        }
      : null,
    ...partsOf(layout)
      .filter((part) => !NOT_SAWN.has(part.id))
      .map(otherPiece),
  ]
  return pieces.filter(
    (one): one is Piece => one !== null && one.length > 0 && one.width > 0 && one.thickness > 0,
  )
}

function otherPiece(part: Part): Piece {
  const { minX, maxX, minY, maxY } = bounds(part.outline)
  const sides = [maxX - minX, maxY - minY].sort((a, b) => b - a)
  return {
    what: part.title,
    count: 1,
    length: sides[0] ?? 0,
    width: sides[1] ?? 0,
    thickness: part.thickness,
    of: 'as you choose',
  }
}

/** Pieces to saw: as they are finished, and what to saw out for them. */
export function cutList(source: Source): Table {
  return {
    id: 'cut-list',
    title: 'Wood to saw',
    columns: [
      { key: 'what', title: 'Piece', as: 'words' },
      { key: 'count', title: 'Pieces', as: 'count' },
      { key: 'length', title: 'Long', as: 'length' },
      { key: 'width', title: 'Wide', as: 'length' },
      { key: 'thickness', title: 'Thick', as: 'length' },
      { key: 'stockLength', title: 'Stock, long', as: 'length' },
      { key: 'stockWidth', title: 'wide', as: 'length' },
      { key: 'stockThickness', title: 'thick', as: 'length' },
      { key: 'of', title: 'Of', as: 'words' },
    ],
    rows: piecesOf(source).map(({ what, count, length, width, thickness, of }) => [
      what,
      count,
      length,
      width,
      thickness,
      length + ALLOWED[0],
      width + ALLOWED[1],
      thickness + ALLOWED[2],
      of,
    ]),
    note: `Stock is what to saw out: ${ALLOWED.map((mm) => source.say(mm)).join(', ')} more in length, width and thickness, to be planed and sanded away (common practice). The box itself is found, not sawn.`,
  }
}

/** The box as found, face by face. */
export function boxTable({ report }: Source): Table {
  return {
    id: 'box',
    title: 'The box as found',
    columns: [
      { key: 'face', title: 'Face', as: 'words' },
      { key: 'long', title: 'Long', as: 'length' },
      { key: 'across', title: 'Across', as: 'length' },
      { key: 'thickness', title: 'Thick', as: 'length' },
    ],
    rows: [
      ['Outside', report.box.length, report.box.width, report.box.depth],
      ...report.panels.map(({ face, long, across, thickness }) => [
        capital(FACE_WORDS[face] ?? face),
        long,
        across,
        thickness,
      ]),
    ],
    note: 'Of the outside the last figure is the depth, through lid and base.',
  }
}
