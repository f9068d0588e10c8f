/**
 * What an SVG draws, read by two libraries that this project did not write: saxes takes the XML apart and refuses what
 * is not well formed, makerjs reads the data of paths. No browser, so that thousands can be read.
 */
import makerjs from 'makerjs'
import { SaxesParser } from 'saxes'
import type { Bounds, Point } from '../../geometry/index.ts'
import type { DrawnCircle } from './segments.ts'
import type { Piece } from './trace.ts'

export type SvgShape =
  | { readonly circle: DrawnCircle }
  | { readonly pieces: readonly Piece[]; readonly box: Bounds }

/** Circles and paths by the id of the group that holds them, y up. Throws for what is not well formed. */
export function drawnSvg(text: string): ReadonlyMap<string, readonly SvgShape[]> {
  const groups = new Map<string, SvgShape[]>()
  const open: string[] = []
  const parser = new SaxesParser()
  parser.on('error', (error) => {
    throw error
  })
  parser.on('opentag', ({ name, attributes }) => {
    open.push(attributes.id ?? '')
    const group = open.at(-2) ?? ''
    const put = (shape: SvgShape) => groups.set(group, [...(groups.get(group) ?? []), shape])
    const number = (key: string) => Number(attributes[key] ?? Number.NaN)
    if (name === 'circle')
      put({ circle: { centre: { x: number('cx'), y: -number('cy') }, radius: number('r') } })
    if (name === 'path') put(pathOf(attributes.d ?? ''))
  })
  parser.on('closetag', () => open.pop())
  parser.write(text).close()
  return groups
}

const apart = (a: Point, b: Point) => Math.hypot(a.x - b.x, a.y - b.y)

/** The pieces of one line, each turned the way in which it follows the one before. */
function pathOf(data: string): SvgShape {
  const model = makerjs.importer.fromSVGPathData(data)
  const { low, high } = makerjs.measure.modelExtents(model) as MakerJs.IMeasure
  const [least, most] = [pointOf(low), pointOf(high)]
  const box = { minX: least.x, maxX: most.x, minY: least.y, maxY: most.y }
  const pieces = Object.values(model.paths ?? {}).map(pieceOf)
  return { box, pieces: following(pieces) }
}

/** Arcs are read counter-clockwise, whichever way the file ran them. */
function following(pieces: readonly Piece[]): Piece[] {
  const [first, second] = pieces
  if (!first || !second) return [...pieces]
  const touches = (end: Point) => Math.min(apart(end, second.from), apart(end, second.to))
  const run = [touches(first.to) <= touches(first.from) ? first : turned(first)]
  for (const piece of pieces.slice(1)) {
    const at = run.at(-1)?.to ?? piece.from
    run.push(apart(at, piece.from) <= apart(at, piece.to) ? piece : turned(piece))
  }
  return run
}

const turned = ({ from, inner, to }: Piece): Piece => ({ from: to, inner: [...inner].reverse(), to: from })

function pieceOf(path: MakerJs.IPath): Piece {
  const [from = [0, 0], to = [0, 0]] = makerjs.point.fromPathEnds(path)
  const at = (share: number): Point => pointOf(makerjs.point.middle(path, share))
  return { from: pointOf(from), inner: [at(0.25), at(0.5), at(0.75)], to: pointOf(to) }
}

const pointOf = ({ 0: x = Number.NaN, 1: y = Number.NaN }: MakerJs.IPoint): Point => ({ x, y })
