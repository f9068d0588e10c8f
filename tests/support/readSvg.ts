/**
 * SVG read back from the format alone: groups by id, circles, and paths of M, L, A and Z (SVG 1.1, 8.3; centres
 * of arcs by its implementation notes F.6.5). Needs a DOMParser, so its tests run in jsdom.
 */
import type { Point } from '../../geometry/index.ts'
import type { Drawn, Segment } from './segments.ts'

export interface ReadSvg {
  readonly root: Element
  /** Size of the page as its attributes state it, mm. */
  readonly width: number
  readonly height: number
  readonly viewBox: readonly number[]
}

/** @throws when the text is not well-formed XML or its root is not an svg with a size in mm */
export function readSvg(text: string): ReadSvg {
  const document = new DOMParser().parseFromString(text, 'image/svg+xml')
  const root = document.documentElement
  if (root.nodeName !== 'svg')
    throw new Error(`The root is ${root.nodeName}: ${root.textContent?.slice(0, 200)}`)
  const size = (name: string): number => {
    const match = /^(\d+(?:\.\d+)?)mm$/.exec(root.getAttribute(name) ?? '')
    if (match === null) throw new Error(`The ${name} is "${root.getAttribute(name)}", not a number of mm.`)
    return Number(match[1])
  }
  const viewBox = (root.getAttribute('viewBox') ?? '').split(' ').map(Number)
  return { root, width: size('width'), height: size('height'), viewBox }
}

const near = (a: Point, b: Point) => Math.hypot(a.x - b.x, a.y - b.y) < 1e-3

interface Piece extends Segment {
  readonly arc?: { readonly centre: Point; readonly radius: number; readonly sweep: number }
}

/** SVG 1.1, F.6.5, for a circle: equal radii, no rotation. */
function arcPiece(from: Point, to: Point, r: number, large: boolean, positive: boolean): Piece {
  const half = { x: (from.x - to.x) / 2, y: (from.y - to.y) / 2 }
  const square = half.x ** 2 + half.y ** 2
  const radius = Math.max(r, Math.sqrt(square))
  const factor = (large === positive ? -1 : 1) * Math.sqrt(Math.max(0, radius ** 2 / square - 1))
  const centre = { x: factor * half.y + (from.x + to.x) / 2, y: -factor * half.x + (from.y + to.y) / 2 }
  const start = Math.atan2(from.y - centre.y, from.x - centre.x)
  const turn = Math.PI * 2
  const raw = Math.atan2(to.y - centre.y, to.x - centre.x) - start
  const sweep = positive ? ((raw % turn) + turn) % turn : -(((-raw % turn) + turn) % turn)
  const on = (angle: number) => ({
    x: centre.x + radius * Math.cos(angle),
    y: centre.y + radius * Math.sin(angle),
  })
  return { from, middle: on(start + sweep / 2), to, arc: { centre, radius, sweep } }
}

/** Arcs that a writer has split come together again where centre, radius and sense are the same. */
function joined(pieces: readonly Piece[]): Piece[] {
  const out: Piece[] = []
  for (const piece of pieces) {
    const last = out.at(-1)
    const [a, b] = [last?.arc, piece.arc]
    const same =
      a !== undefined && b !== undefined && near(a.centre, b.centre) && Math.abs(a.radius - b.radius) < 1e-3
    if (last === undefined || !same || Math.sign(a.sweep) !== Math.sign(b.sweep)) {
      out.push(piece)
      continue
    }
    const sweep = a.sweep + b.sweep
    const angle = Math.atan2(last.from.y - a.centre.y, last.from.x - a.centre.x) + sweep / 2
    const middle = { x: a.centre.x + a.radius * Math.cos(angle), y: a.centre.y + a.radius * Math.sin(angle) }
    out[out.length - 1] = { from: last.from, middle, to: piece.to, arc: { ...a, sweep } }
  }
  return out
}

/** The segments of path data, lists of them where it has several subpaths. */
export function readPath(data: string): Segment[][] {
  const subpaths: Piece[][] = []
  const commands = [...data.matchAll(/([A-Za-z])([^A-Za-z]*)/g)]
  let at: Point = { x: Number.NaN, y: Number.NaN }
  let first = at
  for (const [, command, rest = ''] of commands) {
    const numbers = rest
      .trim()
      .split(/[\s,]+/)
      .filter(Boolean)
      .map(Number)
    if (numbers.some((number) => !Number.isFinite(number)))
      throw new Error(`"${rest}" is not a list of numbers.`)
    const to: Point = { x: numbers.at(-2) ?? Number.NaN, y: numbers.at(-1) ?? Number.NaN }
    const straight = (end: Point) => ({
      from: at,
      middle: { x: (at.x + end.x) / 2, y: (at.y + end.y) / 2 },
      to: end,
    })
    if (command === 'M') {
      subpaths.push([])
      first = to
    } else if (command === 'L') subpaths.at(-1)?.push(straight(to))
    else if (command === 'A') {
      subpaths.at(-1)?.push(arcPiece(at, to, numbers[0] ?? Number.NaN, numbers[3] === 1, numbers[4] === 1))
    } else if (command === 'Z') {
      if (Math.hypot(at.x - first.x, at.y - first.y) > 0) subpaths.at(-1)?.push(straight(first))
    } else throw new Error(`The path has a command ${command}, which no template should need.`)
    at = command === 'Z' ? first : to
  }
  return subpaths.map(joined)
}

const numberOf = (element: Element, name: string) => Number(element.getAttribute(name) ?? Number.NaN)

/** Circles and paths that are children of a group. */
export function shapesIn(svg: ReadSvg, id: string): Drawn[] {
  const group = svg.root.querySelector(`[id="${id}"]`)
  if (group === null) throw new Error(`There is no group "${id}".`)
  return [...group.children].flatMap((child): Drawn[] => {
    if (child.nodeName === 'circle') {
      const centre = { x: numberOf(child, 'cx'), y: numberOf(child, 'cy') }
      return [{ centre, radius: numberOf(child, 'r') }]
    }
    return child.nodeName === 'path' ? readPath(child.getAttribute('d') ?? '') : []
  })
}

/** What is drawn on paper, turned back into the part's own sheet: y up, `corner` where the paper has `at`. */
export function offPaper(drawn: Drawn, at: Point, corner: Point): Drawn {
  const back = ({ x, y }: Point): Point => ({ x: x - at.x + corner.x, y: at.y - y + corner.y })
  if ('radius' in drawn) return { centre: back(drawn.centre), radius: drawn.radius }
  return drawn.map(({ from, middle, to }) => ({ from: back(from), middle: back(middle), to: back(to) }))
}
