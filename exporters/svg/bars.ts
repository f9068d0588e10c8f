/**
 * Bars of 100 mm and of 4 inches to be measured on the print, one pair along each axis: a printer's carriage
 * and its feed err by different amounts.
 */
import { numberText } from '../numbers.ts'
import { element, type Markup, titleElement } from './element.ts'
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
