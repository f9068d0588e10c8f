import { endsOf, sidesAt } from '../../box/outlines.ts'
import type { Point } from '../../plane/index.ts'
import type { Layout } from '../../solve/layout.ts'
import { tailPathsOf } from '../../strings/tail-paths.ts'
import { countsOf } from '../../strings/tail-row.ts'
import {
  degreesOf,
  gradeLeast,
  gradeMost,
  type Measurement,
  ROUNDING,
  type Rule,
  type Where,
} from '../finding.ts'

export const tailHoleWeb: Rule = {
  name: 'tail-hole-web',
  title: 'Wood between string holes',
  unit: 'mm',
  wants: 'least',
  limits: ['tailHoleWeb'],
  mendedBy: ['tailpiece.span', 'tailpiece.diameter'],
  measure(layout, limit) {
    const found: Measurement[] = []
    const { diameter } = layout.design.tailpiece
    const nearest = nearestPair(layout)
    if (!nearest) return found
    const [first, second] = nearest
    const measured = second.y - first.y - diameter
    const wanted = Math.max(limit('tailHoleWeb'), diameter)
    found.push({
      about: ['tailpiece'],
      measured,
      limit: wanted,
      grade: gradeLeast(measured, wanted, 0),
      where: {
        view: 'plan',
        from: { x: first.x, y: first.y + diameter / 2 },
        to: { x: second.x, y: second.y - diameter / 2 },
      },
    })
    return found
  },
  words({ measured, limit, grade }, say) {
    if (grade === 'stop')
      return `The string holes run into each other by ${say.length(-(measured ?? 0))}. Set them farther apart, or drill them smaller.`
    const left = `Between the string holes ${say.length(measured ?? 0)} of wood are left`
    return grade === 'clear'
      ? `${left}.`
      : `${left}; one hole’s width and ${say.length(limit ?? 0)} at least keep the row whole.`
  },
}

type Pair = readonly [Layout['tailHoles'][number], Layout['tailHoles'][number]]

/** The two neighbours with the least wood between them, the first of them from the bass side; `null` for one hole. */
function nearestPair({ tailHoles }: Layout): Pair | null {
  const pairs = tailHoles.slice(1).map((second, index): Pair => [tailHoles[index] ?? second, second])
  const apart = ([first, second]: Pair) => second.y - first.y
  return pairs.reduce<Pair | null>(
    (near, one) => (near && apart(one) > apart(near) - ROUNDING ? near : one),
    null,
  )
}

export const tailHoleToEnd: Rule = {
  name: 'tail-hole-to-end',
  title: 'String holes to the edge',
  unit: 'mm',
  wants: 'least',
  limits: ['tailHoleToEndGrain', 'stringToBoardEdge'],
  mendedBy: ['tailpiece.fromEdge', 'tailpiece.span', 'neck.tail'],
  measure(layout, limit) {
    const found: Measurement[] = []
    const edges = edgesNear(layout)
    if (!edges) return found
    const { end, side } = edges
    const wanted = limit('tailHoleToEndGrain')
    found.push({
      about: ['tailpiece'],
      measured: end.left,
      limit: wanted,
      grade: gradeLeast(end.left, wanted, 0),
      where: end.where,
      data: { to: end.name },
    })
    const wantedBeside = limit('stringToBoardEdge')
    found.push({
      about: ['tailpiece', 'side'],
      measured: side.left,
      limit: wantedBeside,
      grade: gradeLeast(side.left, wantedBeside, 0),
      where: side.where,
      data: { to: side.name },
    })
    return found
  },
  words({ measured, limit, grade, data }, say) {
    if (grade === 'stop')
      return `The string holes break out of ${data?.to} by ${say.length(-(measured ?? 0))}. Move them in.`
    const left = `From the string holes to ${data?.to} are ${say.length(measured ?? 0)}`
    return grade === 'clear'
      ? `${left}.`
      : `${left}; under ${say.length(limit ?? 0)} the wood splits along the grain.`
  },
}

interface Edge {
  /** Wood left between the row of holes and this edge. */
  readonly left: number
  readonly where: Where
  readonly name: string
}

const least = (edges: readonly Edge[]): Edge =>
  edges.reduce((near, one) => (one.left < near.left ? one : near))

/** The edges nearest the row of string holes: along the strings or down the wall, and beside the row. */
function edgesNear(layout: Layout): { readonly end: Edge; readonly side: Edge } | null {
  const { design, panels, box, tailHoles } = layout
  const { at, diameter } = design.tailpiece
  const [first, last] = [tailHoles[0], tailHoles.at(-1)]
  if (!first || !last) return null
  const view = at === 'the tail-end wall' ? 'tail-end-wall' : 'plan'
  const edge = (from: Point, axis: 'x' | 'y', line: number, outward: 1 | -1, name: string): Edge => ({
    left: outward * (line - from[axis]) - diameter / 2,
    where: {
      view,
      from: { x: from.x, y: from.y },
      to: axis === 'x' ? { x: line, y: from.y } : { x: from.x, y: line },
    },
    name,
  })
  if (at === 'the tail of the neck')
    return {
      end: edge({ x: last.x, y: 0 }, 'x', box.x1 + design.neck.tail, 1, 'the end of the tail'),
      side: edge(last, 'y', design.neck.width / 2, 1, 'the side of the neck'),
    }
  if (at === 'the lid') {
    const { originX } = panels.lid
    const [, to] = endsOf(layout, 'lid')
    const [bass, treble] = sidesAt(layout, 'lid', last.x - originX)
    const middle = { x: last.x, y: 0 }
    return {
      end: least([
        edge(middle, 'x', originX + to, 1, 'the tail-end edge of the lid'),
        edge(middle, 'x', originX, -1, 'the neck-end edge of the lid'),
      ]),
      side: least([
        edge(last, 'y', treble, 1, 'the side of the lid'),
        edge(first, 'y', bass, -1, 'the side of the lid'),
      ]),
    }
  }
  const { bounds } = panels['tail-end-wall']
  const down = first.z - box.wallTop
  return {
    end: least([
      edge({ x: 0, y: down }, 'y', bounds.maxY, 1, 'the edge of the wall'),
      edge({ x: 0, y: down }, 'y', bounds.minY, -1, 'the lower edge of the wall'),
    ]),
    // Row and wall are alike on both sides of the centreline.
    side: edge({ x: last.y, y: down }, 'x', bounds.maxX, 1, 'the end of the wall'),
  }
}

/** Holes down through the tail need a tail: a neck that ends inside the box has none. */
export const tailToHold: Rule = {
  name: 'tail-to-hold',
  title: 'A tail to hold the strings',
  unit: 'mm',
  wants: 'least',
  limits: [],
  mendedBy: ['neck.tail', 'tailpiece.fromEdge', 'tailpiece.at'],
  measure(layout) {
    const found: Measurement[] = []
    const { tailpiece, neck } = layout.design
    if (tailpiece.at !== 'the tail of the neck') return found
    const measured = neck.ends === 'through the box' ? neck.tail : 0
    const { x1 } = layout.box
    found.push({
      about: ['tailpiece', 'neck'],
      measured,
      limit: tailpiece.fromEdge,
      grade: gradeLeast(measured, tailpiece.fromEdge, tailpiece.fromEdge),
      where: { view: 'plan', from: { x: x1, y: 0 }, to: { x: x1 + tailpiece.fromEdge, y: 0 } },
    })
    return found
  },
  words({ measured, limit, grade }, say) {
    return grade === 'clear'
      ? `The tail stands out ${say.length(measured ?? 0)} and holds the strings at ${say.length(limit ?? 0)}.`
      : `The strings are to be held ${say.length(limit ?? 0)} behind the box, but the tail stands out ${say.length(measured ?? 0)}. Lengthen the tail, or hold them at the tail-end wall or the lid.`
  },
}

export const tailHolesForStrings: Rule = {
  name: 'tail-holes-for-strings',
  title: 'A hole for every string',
  unit: 'count',
  wants: 'least',
  limits: [],
  mendedBy: ['tailpiece.holes', 'tailpiece.row'],
  measure(layout) {
    const found: Measurement[] = []
    const holes = layout.tailHoles.length
    const strings = layout.strings.length
    found.push({
      about: ['tailpiece'],
      measured: holes,
      limit: strings,
      grade: gradeLeast(holes, strings, strings),
      where: { view: 'plan', from: layout.tailHoles[0]!, to: layout.tailHoles.at(-1)! },
    })
    return found
  },
  words({ measured, limit, grade }) {
    return grade === 'clear'
      ? `${measured} holes hold ${limit} ${limit === 1 ? 'string' : 'strings'}.`
      : `There are ${limit} strings and only ${measured} ${measured === 1 ? 'hole' : 'holes'} to hold them. Add holes to the row.`
  },
}

/** The holes serve other counts of strings as well: so must the way from saddle to hole. */
export const tailOtherCounts: Rule = {
  name: 'tail-other-counts',
  title: 'Sideways angle with another count of strings',
  unit: 'degrees',
  wants: 'most',
  limits: ['sideAngleAtSaddle'],
  mendedBy: ['tailpiece.holes', 'tailpiece.span', 'tailpiece.row'],
  measure(layout, limit) {
    const found: Measurement[] = []
    // Straight across is no way to a hole: more than that cannot be borne with.
    const wanted = Math.min(limit('sideAngleAtSaddle'), 90)
    const own = layout.design.strings.count
    for (const count of countsOf(layout.design)) {
      if (count === own) continue
      const paths = tailPathsOf(layout).filter((one) => one.count === count)
      const worst = paths.reduce((most, one) =>
        (one.sideways ?? Number.POSITIVE_INFINITY) > (most.sideways ?? Number.POSITIVE_INFINITY) ? one : most,
      )
      const hole = worst.hole === null ? undefined : layout.tailHoles[worst.hole]
      const measured = degreesOf(worst.sideways ?? Math.PI / 2)
      const from = { x: layout.saddle.x, y: worst.ySaddle }
      found.push({
        about: ['tailpiece', `${count} strings`],
        measured,
        limit: wanted,
        grade: worst.sideways === null ? 'stop' : gradeMost(measured, wanted),
        where: { view: 'plan', from, to: hole ?? from },
        data: { count, string: worst.string, holes: layout.tailHoles.length },
      })
    }
    return found
  },
  words({ measured, limit, grade, data }, say) {
    if (grade === 'stop')
      return `With ${data?.count} strings the row of ${data?.holes} has no hole for string ${data?.string}; it would have to turn ${say.angle(measured ?? 0)}. Add holes, or a hole for each count.`
    const turns = `With ${data?.count} strings, string ${data?.string} turns ${say.angle(measured ?? 0)} sideways over the saddle`
    return grade === 'clear'
      ? `${turns}, the most of all.`
      : `${turns}; up to ${say.angle(limit ?? 0)} is usual. More holes in the row, or a hole for each count, bring it straighter.`
  },
}
