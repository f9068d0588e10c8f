/**
 * The four entities that a template holds, each written in one piece.
 *
 * The library's own shapes have two flaws. Layer, line type, colour and weight stand behind the second
 * subclass marker, so that 90 is not the first tag of a polyline (and one widespread program then leaves it
 * open). And each shape pushes its pairs one by one, which costs more than all the rest of the writing. These
 * lie on the library's layers like its own shapes, and are written when it writes them.
 *
 * Numbers come as text, from `numbers.ts`; words from `dxfWords.ts`. Source of the codes: Autodesk DXF
 * Reference, "Common Group Codes for Entities", CIRCLE, LINE, LWPOLYLINE, TEXT.
 */
import type { Entity } from './library.ts'

/** An entity of some type: its lines from the first to the handle, and `own`, those behind the layer. */
class Written implements Entity {
  handle = '0'
  readonly #start: string
  readonly #own: string

  constructor(start: string, own: string) {
    this.#start = start
    this.#own = own
  }

  lines(between: string): string {
    return this.#start + this.handle + between + this.#own
  }
}

export function circleEntity(x: string, y: string, radius: string): Entity {
  return new Written('0\nCIRCLE\n5\n', `100\nAcDbCircle\n10\n${x}\n20\n${y}\n30\n0.0\n40\n${radius}`)
}

export function lineEntity(x1: string, y1: string, x2: string, y2: string): Entity {
  return new Written(
    '0\nLINE\n5\n',
    `100\nAcDbLine\n10\n${x1}\n20\n${y1}\n30\n0.0\n11\n${x2}\n21\n${y2}\n31\n0.0`,
  )
}

/** @param bulge empty where the segment that begins here is straight */
export function vertexLines(x: string, y: string, bulge: string): string {
  return bulge === '' ? `\n10\n${x}\n20\n${y}` : `\n10\n${x}\n20\n${y}\n42\n${bulge}`
}

/** @param points what `vertexLines` gives for each of `count` points */
export function polylineEntity(count: number, closed: boolean, points: string): Entity {
  const head = '6\nByLayer\n62\n256\n370\n-1\n100\nAcDbPolyline'
  return new Written('0\nLWPOLYLINE\n5\n', `${head}\n90\n${count}\n70\n${closed ? 1 : 0}${points}`)
}

/** @param degrees by which the line of words is turned, counter-clockwise */
export function textEntity(x: string, y: string, height: string, degrees: string, text: string): Entity {
  return new Written(
    '0\nTEXT\n5\n',
    `100\nAcDbText\n10\n${x}\n20\n${y}\n30\n0.0\n40\n${height}\n1\n${text}\n50\n${degrees}\n100\nAcDbText`,
  )
}
