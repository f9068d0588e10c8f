/**
 * Contours on paper as SVG shapes: `circle` for circles, `path` with A commands for arcs.
 */
import {
  type Arc,
  arcBetween,
  type Contour,
  isStraight,
  type Point,
  type Vertex,
} from '../../geometry/index.ts'
import { LARGEST, numberText } from '../numbers.ts'
import { type Attributes, element, type Markup } from './element.ts'

/**
 * Widest arc written as one command, radians. An A command gives ends and radius and leaves the centre to
 * the reader, who finds it by a root: near a half circle a rounding of 1e-6 mm in the radius would move
 * the centre by several micrometres (r = 10: sqrt(2 * 10 * 1e-6) = 0.0045 mm). Up to a third of a turn the
 * error at most doubles. A third is also far from the full turn, of which an A command draws nothing.
 */
const WIDEST_ARC = (2 * Math.PI) / 3

/** How far straight pieces may stray from an arc too flat to be written as one, mm. */
const FLAT_ERROR = 0.0005

const text = (value: number, what: string) => numberText(value, what)

function pair({ x, y }: Point, what: string): string {
  return `${text(x, `x of ${what}`)} ${text(y, `y of ${what}`)}`
}

/** The point of an arc after a share of its sweep. */
function pointOn({ centre, radius, startAngle, sweep }: Arc, share: number): Point {
  const angle = startAngle + sweep * share
  return { x: centre.x + radius * Math.cos(angle), y: centre.y + radius * Math.sin(angle) }
}

/** Straight pieces along an arc of a kilometre's radius or more, whose middle rises by `rise` over its chord. */
function flatSteps(from: Vertex, to: Point): string[] {
  const rise = (Math.abs(from.bulge) * Math.hypot(to.x - from.x, to.y - from.y)) / 2
  const count = Math.max(1, Math.ceil(Math.sqrt(rise / FLAT_ERROR)))
  // So flat an arc is as good as a parabola: at share t it stands 4 t (1 - t) of the rise to the right of travel.
  return Array.from({ length: count }, (_, index) => {
    if (index === count - 1) return `L ${pair(to, 'a point')}`
    const share = (index + 1) / count
    const off = 2 * from.bulge * share * (1 - share)
    const [dx, dy] = [to.x - from.x, to.y - from.y]
    return `L ${pair({ x: from.x + dx * share + dy * off, y: from.y + dy * share - dx * off }, 'a point')}`
  })
}

/** The commands that lead from one vertex of a chain to the next. */
function commandsTo(from: Vertex, to: Point): string[] {
  if (isStraight(from.bulge)) return [`L ${pair(to, 'a point')}`]
  const arc = arcBetween(from, to)
  if (arc.radius >= LARGEST) return flatSteps(from, to)
  const radius = text(arc.radius, 'The radius of an arc')
  const count = Math.ceil(Math.abs(arc.sweep) / WIDEST_ARC - 1e-9)
  // On paper y points down, so what runs counter-clockwise by the numbers runs clockwise for the eye: flag 1.
  const flags = arc.sweep > 0 ? '0 1' : '0 0'
  return Array.from({ length: count }, (_, index) => {
    const end = index === count - 1 ? to : pointOn(arc, (index + 1) / count)
    return `A ${radius} ${radius} 0 ${flags} ${pair(end, 'the end of an arc')}`
  })
}

/**
 * A contour that lies on paper (mm, y down) as an element.
 *
 * @param attributes what the element carries beside its shape
 * @throws RangeError when a number is not finite or not below a million
 * @example shapeElement({ shape: 'circle', centre: { x: 5, y: 5 }, radius: 2 }).markup // '<circle cx="5" cy="5" r="2"/>'
 */
export function shapeElement(contour: Contour, attributes: Attributes = {}): Markup {
  if (contour.shape === 'circle') {
    const { centre, radius } = contour
    return element('circle', {
      cx: text(centre.x, 'x of a centre'),
      cy: text(centre.y, 'y of a centre'),
      r: text(radius, 'A radius'),
      ...attributes,
    })
  }
  return element('path', { d: pathData(contour.vertices, contour.closed), ...attributes })
}

function pathData(vertices: readonly Vertex[], closed: boolean): string {
  const first = vertices[0]
  if (first === undefined) throw new Error('A path without points cannot be drawn.')
  const commands = [`M ${pair(first, 'a first point')}`]
  for (const [index, from] of vertices.entries()) {
    const next = vertices[index + 1]
    if (next !== undefined) commands.push(...commandsTo(from, next))
    // Z draws the last side itself if it is straight; an arc has to be drawn before.
    else if (closed && !isStraight(from.bulge)) commands.push(...commandsTo(from, first))
  }
  return [...commands, ...(closed ? ['Z'] : [])].join(' ')
}
