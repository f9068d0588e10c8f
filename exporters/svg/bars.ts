/**
 * Bars of 100 mm and of 4 inches to be measured on the print, one pair along each axis: a printer's carriage
 * and its feed err by different amounts.
 */
import { styleOf } from '../drawing/layers.ts'
import { numberText } from '../numbers.ts'
import { element, type Markup, titleElement } from './element.ts'
import { strokeOf } from './layerGroups.ts'
import type { Purpose } from './purposes.ts'
import { INK, textElement } from './textElement.ts'

export type Axis = 'across' | 'up'

const MILLIMETRES_PER_INCH = 25.4

/** Length of the longer of the two bars, mm. */
export const BAR_LENGTH = 4 * MILLIMETRES_PER_INCH

/** Room a pair of bars needs on each side of its line, mm. */
export const BAR_SIDE = 7

/** Room its last figure needs beyond the ends, mm. */
export const BAR_END = 4

const TICK = 2
const LONG_TICK = 3.2
const FIGURE_SIZE = 2.6
const LINE_WIDTH = '0.1'

/** A scale on one side of the line: where its ticks stand and what they are called. */
interface Scale {
  readonly id: string
  readonly title: string
  readonly length: number
  readonly step: number
  readonly side: 1 | -1
  /** The figure under a tick; none where undefined, and the tick is short. */
  figure(count: number): string | undefined
}

const SCALES: readonly Scale[] = [
  {
    id: 'mm',
    title: 'This bar is 100 mm long',
    length: 100,
    step: 10,
    side: 1,
    figure: (count) => (count === 10 ? '100 mm' : count % 5 === 0 ? String(count * 10) : undefined),
  },
  {
    id: 'in',
    title: 'This bar is 4 inches long',
    length: BAR_LENGTH,
    step: MILLIMETRES_PER_INCH / 2,
    side: -1,
    figure: (count) => (count === 8 ? '4 in' : count % 2 === 0 ? String(count / 2) : undefined),
  },
]

/**
 * The two bars along one axis.
 *
 * @param x mm on paper, the zero of both bars
 * @param y mm on paper, the line they share
 * @param axis `across` runs to the right with millimetres above; `up` runs upwards with millimetres to the left
 */
export function checkBars(x: number, y: number, axis: Axis): Markup {
  const write = (value: number) => numberText(value, 'A check bar')
  const at = (along: number, aside: number) =>
    axis === 'across' ? { x: x + along, y: y - aside } : { x: x - aside, y: y - along }
  const pair = (along: number, aside: number) => {
    const point = at(along, aside)
    return `${write(point.x)} ${write(point.y)}`
  }
  const groups = SCALES.map((scale) => {
    const count = Math.round(scale.length / scale.step)
    const ticks = Array.from({ length: count + 1 }, (_, index) => {
      const reach = scale.side * (scale.figure(index) === undefined ? TICK : LONG_TICK)
      return `M ${pair(index * scale.step, 0)} L ${pair(index * scale.step, reach)}`
    })
    const figures = Array.from({ length: count + 1 }, (_, index) => {
      const figure = scale.figure(index)
      if (figure === undefined) return []
      const aside = scale.side === 1 ? LONG_TICK + 0.9 : -(LONG_TICK + 0.9 + 0.72 * FIGURE_SIZE)
      const point = at(index * scale.step, aside)
      const turn = axis === 'across' ? 0 : -Math.PI / 2
      return [textElement(point.x, point.y, FIGURE_SIZE, figure, { anchor: 'middle', turn })]
    })
    return element('g', { id: `check-${scale.id}-${axis}` }, [
      titleElement(scale.title),
      element('path', {
        d: [`M ${pair(0, 0)} L ${pair(scale.length, 0)}`, ...ticks].join(' '),
        fill: 'none',
        stroke: INK,
        'stroke-width': LINE_WIDTH,
      }),
      ...figures.flat(),
    ])
  })
  return element('g', { id: `check-bars-${axis}` }, groups)
}

/** Lengths of a scribed bar, mm: the longest for which there is room. */
const SCRIBED = [100, 50, 20]
/** Height of a scribed bar with its long ticks, size of its words and their room behind its end, mm. */
export const SCRIBED_HIGH = 2
const SCRIBED_WORDS = 2.2
const SCRIBED_END = 10

/** Room that the shortest scribed bar takes along itself, mm. */
export const SCRIBED_LEAST = Math.min(...SCRIBED) + SCRIBED_END

/**
 * A bar that a machine scribes beside a part, to be measured before the rest is trusted: a pure mark, as a machine has
 * two axes that may err and no paper.
 *
 * @param x mm on the page, the zero of the bar
 * @param y mm on the page, its line
 * @param axis `across` runs to the right with ticks upwards, `up` runs upwards with ticks to the right
 * @param room along it, mm
 * @returns `null` where there is no room for the shortest
 */
export function scribedBar(x: number, y: number, axis: Axis, room: number, purpose: Purpose): Markup | null {
  const length = SCRIBED.find((one) => one + SCRIBED_END <= room + 1e-9)
  if (length === undefined) return null
  const mark = styleOf('mark')
  const at = (along: number, aside: number) =>
    axis === 'across' ? { x: x + along, y: y - aside } : { x: x + aside, y: y - along }
  const pair = (along: number, aside: number) => {
    const point = at(along, aside)
    return `${numberText(point.x, 'A bar')} ${numberText(point.y, 'A bar')}`
  }
  const ticks = Array.from({ length: length / 10 + 1 }, (_, index) => {
    const reach = index === 0 || index * 10 === length ? SCRIBED_HIGH : SCRIBED_HIGH / 2
    return `M ${pair(index * 10, 0)} L ${pair(index * 10, reach)}`
  })
  // Words upwards are read from the right, with their feet away from the edge.
  const words = axis === 'across' ? at(length + 1, 0) : at(length + 1, SCRIBED_HIGH)
  return element('g', { id: `bar-${axis}`, ...strokeOf(mark, purpose) }, [
    titleElement(`${mark.name}: this bar is ${length} mm long; measure it before you trust the rest`),
    element('path', { d: [`M ${pair(0, 0)} L ${pair(length, 0)}`, ...ticks].join(' ') }),
    textElement(words.x, words.y, SCRIBED_WORDS, `${length} mm`, {
      turn: axis === 'across' ? 0 : -Math.PI / 2,
      colour: purpose.ink.mark,
    }),
  ])
}
