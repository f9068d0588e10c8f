/**
 * The lines that a PDF draws: objects and streams are read by a library that this project did not write and that is
 * told to repair nothing (@cantoo/pdf-lib); operators after ISO 32000-1, 8.5.
 */
import { PDFDict, PDFDocument, PDFName, PDFRawStream } from '@cantoo/pdf-lib'
import type { Point } from '../../geometry/index.ts'
import type { Piece } from './trace.ts'

export interface DrawnPdf {
  readonly pages: number
  /** The lines stroked by each drawing that sheets show, by its name, in the drawing's own millimetres. */
  readonly drawings: ReadonlyMap<string, readonly (readonly Piece[])[]>
  /** The first two numbers by which each sheet stretches what it shows. */
  readonly stretches: readonly (readonly [number, number])[]
}

/** Throws for a file that is not sound. */
export async function drawnPdf(bytes: Uint8Array): Promise<DrawnPdf> {
  const document = await PDFDocument.load(bytes, { throwOnInvalidObject: true, updateMetadata: false })
  const drawings = new Map<string, Piece[][]>()
  const stretches = document.getPages().map((page): [number, number] => {
    const shown = page.node.Resources()?.lookup(PDFName.of('XObject'), PDFDict)
    for (const [name] of shown?.entries() ?? []) {
      const key = name.decodeText()
      if (drawings.has(key)) continue
      const form = shown?.lookup(name)
      if (!(form instanceof PDFRawStream)) throw new Error(`${key} is no stream`)
      drawings.set(key, linesOf(textOf(form)))
    }
    const contents = page.node.Contents()
    if (!(contents instanceof PDFRawStream)) throw new Error('a sheet has no content')
    const stretch = /^(\S+) 0 0 (\S+) 0 0 cm$/m.exec(textOf(contents))
    return [Number(stretch?.[1]), Number(stretch?.[2])]
  })
  return { pages: document.getPageCount(), drawings, stretches }
}

const textOf = (stream: PDFRawStream) => Buffer.from(stream.getContents()).toString('latin1')

function linesOf(content: string): Piece[][] {
  const lines: Piece[][] = []
  let numbers: number[] = []
  let at: Point = { x: Number.NaN, y: Number.NaN }
  let start = at
  const point = (index: number): Point => ({
    x: numbers[index] ?? Number.NaN,
    y: numbers[index + 1] ?? Number.NaN,
  })
  const add = (to: Point, inner: readonly Point[]) => {
    lines.at(-1)?.push({ from: at, inner, to })
    at = to
  }
  for (const word of content.split(/\s+/)) {
    const number = Number(word)
    if (word !== '' && Number.isFinite(number)) {
      numbers.push(number)
      continue
    }
    if (word === 'm') {
      at = point(0)
      start = at
      lines.push([])
    } else if (word === 'l') add(point(0), [middle(at, point(0))])
    else if (word === 'c') {
      const curve = [at, point(0), point(2), point(4)] as const
      add(
        point(4),
        [0.2, 0.4, 0.5, 0.6, 0.8].map((share) => onCurve(curve, share)),
      )
    } else if (word === 'h' && Math.hypot(at.x - start.x, at.y - start.y) > 1e-9)
      add(start, [middle(at, start)])
    numbers = []
  }
  return lines
}

const middle = (a: Point, b: Point): Point => ({ x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 })

/** Bernstein's form of a cubic curve. */
function onCurve([a, b, c, d]: readonly [Point, Point, Point, Point], t: number): Point {
  const [f, g, h, i] = [(1 - t) ** 3, 3 * t * (1 - t) ** 2, 3 * t ** 2 * (1 - t), t ** 3]
  return { x: f * a.x + g * b.x + h * c.x + i * d.x, y: f * a.y + g * b.y + h * c.y + i * d.y }
}
