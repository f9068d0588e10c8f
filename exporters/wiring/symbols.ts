/**
 * Symbols of the diagram after IEC 60617: resistor as a rectangle, its moving contact an arrow; coil as half rounds;
 * capacitor two plates; crystal between electrodes; contacts as a blade; frame as a line with strokes. Millimetres on
 * paper; pins stand on the line y = 0, everything else above it.
 */
import { type Component, type Point, polygon, rectangle, terminalsOf } from '../../geometry/index.ts'
import { area, type Shape, segment, some, stroke, through } from '../sheet/pictures/picture.ts'

/** From pin to pin; height of the leads' upper ends, where the names of pins stand, and of the tallest symbol. */
export const PITCH = 7
export const LEAD = 10
export const TOP = 21

const at = (x: number, y: number): Point => ({ x, y })
const line = (...points: Point[]): Shape[] => some(asShape(through(points)))
const asShape = (chain: ReturnType<typeof through>) => chain && stroke(chain, 'thin')
const thick = (from: Point, to: Point): Shape => segment(from, to, 'strong')

/** The symbol of a component whose first pin stands at x. */
export function symbolOf(component: Component, x: number): Shape[] {
  const pins = new Map(terminalsOf(component).map((name, index) => [name, x + index * PITCH]))
  const pin = (name: string): number => pins.get(name) ?? x
  const framed = ['case', 'frame', 'cover'].find((name) => pins.has(name))
  return [
    ...drawn(component, pin),
    ...(framed
      ? frame(
          pin(framed),
          x,
          [...pins.values()].filter((one) => one !== pin(framed)),
        )
      : []),
  ]
}

function drawn({ part, ways }: Component, pin: (name: string) => number): Shape[] {
  switch (part) {
    case 'coil pickup':
      return coil(pin('hot'), pin('ground'))
    case 'piezo pickup':
      return crystal(pin('hot'), pin('ground'))
    case 'pot':
      return pot(pin('1'), pin('2'), pin('3'))
    case 'resistor':
      return [...leads(pin('a'), pin('b'), 15), body(pin('a'), pin('b'))]
    case 'capacitor':
      return capacitor(pin('a'), pin('b'))
    case 'switch':
      return ways === 'on and off'
        ? blade(pin('common'), [pin('a')])
        : blade(pin('common'), [pin('a'), pin('b')])
    case 'jack':
      return jack(pin('tip'), pin('sleeve'))
    case 'metal part':
      return chassis(pin('metal'))
  }
}

/** Two leads up from their pins and in towards the middle. */
const leads = (a: number, b: number, y: number): Shape[] => [
  ...line(at(a, 0), at(a, y), at(a + 1, y)),
  ...line(at(b, 0), at(b, y), at(b - 1, y)),
]

const body = (a: number, b: number, y = 15): Shape =>
  stroke(rectangle(a + 1, y - 1.3, b - 1, y + 1.3), 'outline', 'paper')

function coil(a: number, b: number): Shape[] {
  const turns = 4
  const wide = (b - a - 1) / turns
  const humps = Array.from({ length: turns + 1 }, (_, index) => ({
    ...at(a + 0.5 + index * wide, 14),
    // Half a round, over the line from left to right: clockwise.
    bulge: index < turns ? -1 : 0,
  }))
  return [
    ...line(at(a, 0), at(a, 14), at(a + 0.5, 14)),
    ...line(at(b, 0), at(b, 14), at(b - 0.5, 14)),
    stroke({ shape: 'chain', closed: false, vertices: humps }, 'outline'),
    thick(at(a + 0.5, 16.2), at(b - 0.5, 16.2)),
  ]
}

function crystal(a: number, b: number): Shape[] {
  const middle = (a + b) / 2
  return [
    ...line(at(a, 0), at(a, 15), at(middle - 1.6, 15)),
    ...line(at(b, 0), at(b, 15), at(middle + 1.6, 15)),
    thick(at(middle - 1.6, 12.8), at(middle - 1.6, 17.2)),
    thick(at(middle + 1.6, 12.8), at(middle + 1.6, 17.2)),
    stroke(rectangle(middle - 0.8, 12.4, middle + 0.8, 17.6), 'outline', 'paper'),
  ]
}

function pot(one: number, two: number, three: number): Shape[] {
  return [
    ...leads(one, three, 15),
    body(one, three),
    ...line(at(two, 0), at(two, 12.2)),
    area(polygon([at(two, 13.7), at(two - 0.8, 11.6), at(two + 0.8, 11.6)]), 'ink'),
  ]
}

function capacitor(a: number, b: number): Shape[] {
  const middle = (a + b) / 2
  return [
    ...line(at(a, 0), at(a, 15), at(middle - 0.7, 15)),
    ...line(at(b, 0), at(b, 15), at(middle + 0.7, 15)),
    thick(at(middle - 0.7, 12.6), at(middle - 0.7, 17.4)),
    thick(at(middle + 0.7, 12.6), at(middle + 0.7, 17.4)),
  ]
}

function blade(common: number, ways: readonly number[]): Shape[] {
  const [first] = ways
  const to = first ?? common + PITCH
  const lean = to > common ? 1 : -1
  return [
    ...line(at(common, 0), at(common, 11)),
    // The blade stands before the first contact without touching it.
    segment(at(common, 11), at(to - lean * 0.9, 16.2), 'outline'),
    ...ways.flatMap((way) => line(at(way, 0), at(way, 11), at(way, 15.4))),
  ]
}

function jack(tip: number, sleeve: number): Shape[] {
  return [
    ...line(at(sleeve, 0), at(sleeve, 12.5)),
    stroke(rectangle(sleeve - 1, 12.5, sleeve + 1, 18), 'outline', 'ink'),
    ...line(at(tip, 0), at(tip, 15.5), at(sleeve - 3, 15.5), at(sleeve - 2.2, 16.5), at(sleeve - 1.4, 15.5)),
  ]
}

function chassis(x: number): Shape[] {
  return [
    ...line(at(x, 0), at(x, 13)),
    thick(at(x - 2.6, 13), at(x + 2.6, 13)),
    ...[-2, 0, 2].flatMap((from) => line(at(x + from, 13), at(x + from + 1.4, 15.6))),
  ]
}

/** Metal around a component: a dashed frame with a lead to its own pin. */
function frame(own: number, first: number, others: readonly number[]): Shape[] {
  const last = Math.max(...others)
  return [
    stroke(rectangle(first - 2, LEAD + 0.6, last + 2, TOP - 2), 'hidden'),
    ...line(at(own, 0), at(own, TOP - 5), at(last + 2, TOP - 5)),
  ]
}
