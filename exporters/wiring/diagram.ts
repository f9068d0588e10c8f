/** The wiring of a design as a picture: symbols in a row, wires in lanes below them, each with its colour written on it. */
import {
  type Chain,
  type Component,
  circle,
  componentName,
  type Design,
  formatLength,
  type Layout,
  type Point,
  TERMINAL_NAMES,
  terminalsOf,
  type Wire,
  wiringOf,
} from '../../geometry/index.ts'
import {
  area,
  box,
  type Picture,
  type Shape,
  scaled,
  segment,
  some,
  stroke,
  words,
} from '../sheet/pictures/picture.ts'
import type { Table } from '../tables/table.ts'
import { plainLine } from '../words/plain.ts'
import { lay } from './lanes.ts'
import { PITCH, symbolOf, TOP } from './symbols.ts'

export interface DrawnWire {
  /** Index into the design's wires. */
  readonly index: number
  readonly colour: string
  readonly path: Chain
}

export interface WiringDiagram {
  readonly picture: Picture
  /** The wires again, for a screen that shows them in their colours. */
  readonly wires: readonly DrawnWire[]
}

/** Between two components; from lane to lane; around everything. */
const GAP = 8
const LANE = 4.6
const AROUND = 5
const NAME = 2.9
const SMALL = 2.3
/** Width of a letter as a share of its size, near enough for a drawing font. */
const LETTER = 0.58

/** Wider than an A4 or Letter page can hold, the picture is made smaller as a whole. */
const WIDEST = 176

/** In the order in which sound goes through them. */
const ORDER: readonly Component['part'][] = [
  ...([
    'coil pickup',
    'piezo pickup',
    'switch',
    'pot',
    'resistor',
    'capacitor',
    'jack',
    'metal part',
  ] as const),
]

/**
 * The diagram of a layout's wiring; `null` where nothing is wired. Symbols after IEC 60617; wires that cross are not
 * joined. The same design gives the same picture.
 * Example: `wiringDiagram(solve(design))?.picture.table` lists the wires with their lengths.
 */
export function wiringDiagram(layout: Layout): WiringDiagram | null {
  const { wiring } = layout.design
  if (wiring.components.length === 0) return null
  const components = wiring.components
    .map((one, index) => ({ one, index }))
    .sort((a, b) => ORDER.indexOf(a.one.part) - ORDER.indexOf(b.one.part) || a.index - b.index)
    .map(({ one }) => one)
  const places = new Map<string, number>()
  let x = AROUND + 4
  const firsts = components.map((one) => {
    const first = x
    const names = terminalsOf(one)
    for (const [index, name] of names.entries()) places.set(`${one.id}.${name}`, first + index * PITCH)
    x += Math.max((names.length - 1) * PITCH, widthOf(shortName(one), NAME) - 4) + GAP
    return first
  })
  const wide = x - GAP + AROUND + 4
  const laid = lay(
    wiring.wires.map((wire) => ({
      from: places.get(wire.from) ?? 0,
      to: places.get(wire.to) ?? 0,
      room: widthOf(wire.colour, SMALL) + 2,
      ground: isGround(layout, wire),
    })),
  )
  const deep = (Math.max(-1, ...laid.map(({ lane }) => lane)) + 1) * LANE + 4
  const base = AROUND + deep
  const wires = wiring.wires.map((wire, index): DrawnWire => {
    const { x0, x1, lane } = laid[index] ?? { x0: 0, x1: 0, lane: 0 }
    const y = -(lane + 1) * LANE - 1.5
    return { index, colour: wire.colour, path: chain([at(x0, -1), at(x0, y), at(x1, y), at(x1, -1)]) }
  })
  const shapes: Shape[] = [
    ...wires.map(({ path }) => stroke(path, 'strong')),
    ...components.flatMap((one, index) => labelled(one, firsts[index] ?? 0)),
    ...[...places].flatMap(([terminal, pin]) => joint(terminal, pin, wiring.wires)),
    ...wires.flatMap((wire) => colourWords(wire, wires)),
  ]
  const factor = Math.min(1, WIDEST / wide)
  const height = (base + TOP + 9 + AROUND) * factor
  return {
    picture: {
      id: 'wiring',
      title: 'Wiring',
      description: `${components.map(shortName).join(', ')}, joined by ${wiring.wires.length} wires. The table says which leads where.`,
      width: wide * factor,
      height,
      shapes: shapes.map((one) => shrunk(one, factor, base * factor)),
      caption: captionOf(components),
      table: wireTable(layout),
    },
    wires: wires.map((one) => ({ ...one, path: scaled(one.path, factor, 0, base * factor) as Chain })),
  }
}

const at = (x: number, y: number): Point => ({ x, y })
const chain = (points: readonly Point[]): Chain => ({
  shape: 'chain',
  closed: false,
  vertices: points.map((point) => ({ ...point, bulge: 0 })),
})
const widthOf = (text: string, size: number) => plainLine(text).length * size * LETTER

/** Names too long for their symbol are cut; the table has them whole. */
function shortName(one: Component): string {
  const name = plainLine(componentName(one))
  return name.length > 22 ? `${name.slice(0, 21)}…` : name
}

function isGround(layout: Layout, { from }: Wire): boolean {
  const facts = wiringOf(layout)
  const [id, terminal] = from.split('.')
  const component = layout.design.wiring.components.find((one) => one.id === id)
  return Boolean(facts && component && terminal && facts.circuit.nodeOf(component, terminal) === 0)
}

function labelled(one: Component, first: number): Shape[] {
  const value = valueWords(one)
  return [
    ...symbolOf(one, first),
    words(at(first - 2, TOP + 3.6), shortName(one), { size: NAME, bold: true }),
    ...(value ? [words(at(first - 2, TOP), value, { size: SMALL })] : []),
    ...terminalsOf(one).map((name, index) =>
      words(at(first + index * PITCH - 0.7, 1.6), pinWords(name), { size: SMALL, upright: true }),
    ),
  ]
}

/** What stands at a pin: room for eight millimetres. */
const pinWords = (name: string): string => (name === 'common' ? 'com.' : name)

export function valueWords({ part, kilohms, nanofarads, ways }: Component): string {
  if (part === 'coil pickup' || part === 'pot' || part === 'resistor')
    return kilohms >= 1000 ? `${trimmed(kilohms / 1000)} MΩ` : `${trimmed(kilohms)} kΩ`
  if (part === 'capacitor' || part === 'piezo pickup') return `${trimmed(nanofarads)} nF`
  return part === 'switch' ? ways : ''
}

const trimmed = (value: number): string => String(Number(value.toPrecision(4)))

/** The pin itself: a ring, and a bar where several wires stand side by side. */
function joint(terminal: string, x: number, wires: Design['wiring']['wires']): Shape[] {
  const count = wires.filter(({ from, to }) => from === terminal || to === terminal).length
  const half = ((count - 1) * 1.4) / 2
  return [
    ...(count > 1 ? [segment(at(x - half, -1), at(x + half, -1), 'strong')] : []),
    ...(count > 0 ? [segment(at(x, -1), at(x, 0), 'strong')] : []),
    stroke(circle(at(x, 0), 0.75), 'outline', count > 0 ? 'ink' : 'paper'),
  ]
}

/** The colour on its lane, where the fewest other wires come down through the word. */
function colourWords({ path, colour }: DrawnWire, all: readonly DrawnWire[]): Shape[] {
  const [start, low, far] = path.vertices
  const text = plainLine(colour)
  if (!start || !low || !far || text === '') return []
  const [from, to] = [Math.min(low.x, far.x), Math.max(low.x, far.x)]
  const wide = widthOf(text, SMALL)
  // Where the ends of other wires come down past this lane.
  const crossing = all.flatMap((other) => {
    const [first, , , last] = other.path.vertices
    const bottom = other.path.vertices[1]?.y ?? 0
    return other.path === path || bottom >= low.y + 0.5 ? [] : [first?.x ?? 0, last?.x ?? 0]
  })
  const steps = Math.max(0, Math.floor(to - from - wide - 1))
  const starts = Array.from({ length: steps + 1 }, (_, index) => from + 0.8 + index)
  const through = (x: number) => crossing.filter((one) => one > x - 0.6 && one < x + wide + 0.6).length
  const x = starts.reduce((best, one) => (through(one) < through(best) ? one : best), from + 0.8)
  const back = box(x - 0.3, low.y + 0.5, x + wide + 0.3, low.y + 0.7 + SMALL)
  return some(
    through(x) > 0 && back ? area(back, 'paper') : null,
    words(at(x, low.y + 0.8), text, { size: SMALL }),
  )
}

function shrunk(one: Shape, factor: number, dy: number): Shape {
  if (one.kind === 'text')
    return { ...one, size: one.size * factor, at: { x: one.at.x * factor, y: one.at.y * factor + dy } }
  return one.kind === 'line' || one.kind === 'area'
    ? { ...one, contour: scaled(one.contour, factor, 0, dy) }
    : one
}

const LEGEND: Readonly<Record<Component['part'], string>> = {
  'coil pickup': 'half rounds: coil, the bar over them its magnet',
  'piezo pickup': 'block between plates: piezo',
  pot: 'rectangle with an arrow: pot and its wiper',
  switch: 'slanted line: blade of a switch',
  jack: 'black bar and spring: sleeve and tip of the jack',
  capacitor: 'two plates: capacitor',
  resistor: 'rectangle: resistor',
  'metal part': 'line with strokes: metal under the hand',
}

function captionOf(components: readonly Component[]): string {
  const parts = ORDER.filter((part) => components.some((one) => one.part === part))
  const framed = components.some((one) => one.bare && ['pot', 'switch', 'coil pickup'].includes(one.part))
  return `Symbols after IEC 60617: ${parts.map((part) => LEGEND[part]).join('; ')}${framed ? '; broken frame: its metal case' : ''}. Wires that cross are not joined. Lugs are counted with the shaft towards you and the lugs down.`
}

/** Every wire with its ends, its colour and how long to cut it. */
export function wireTable(layout: Layout): Table {
  const { wiring, units } = layout.design
  const runs = wiringOf(layout)?.runs ?? []
  const end = (terminal: string): string => {
    const [id, pin] = terminal.split('.')
    const component = wiring.components.find((one) => one.id === id)
    return component && pin ? `${componentName(component)}, ${TERMINAL_NAMES[pin] ?? pin}` : terminal
  }
  return {
    id: 'wires',
    title: 'Wires',
    columns: [
      { key: 'from', title: 'From', as: 'words' },
      { key: 'to', title: 'To', as: 'words' },
      { key: 'colour', title: 'Colour', as: 'words' },
      { key: 'length', title: 'Cut to', as: 'length' },
    ],
    rows: wiring.wires.map((wire, index) => [
      end(wire.from),
      end(wire.to),
      wire.colour,
      runs.find((run) => run.wire === index)?.length ?? null,
    ]),
    note: `Lengths run square along the box between the things, with ${formatLength(wiring.slack, units, { unit: true })} of slack. A dash: an end stands nowhere on the box.`,
  }
}
