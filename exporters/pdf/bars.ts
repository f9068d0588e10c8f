/**
 * Bars of 100 mm and of 4 inches along both edges of every sheet. X is the bar along the paper's short edge, Y the
 * one along its long edge, whichever way round the sheet is drawn: that is how a printer errs.
 */
import type { Point } from '../../geometry/index.ts'
import { CAPITAL_HEIGHT } from '../words/width.ts'
import { INK, type Ink } from './ink.ts'

const INCH = 25.4
const LINE = { colour: '#000000', width: 0.12 }
const TICK = 1.8
const LONG_TICK = 2.8
const FIGURE = 2.1

/** Length of the longer of the two bars, mm. */
export const BAR_LENGTH = 4 * INCH

interface Scale {
  readonly length: number
  readonly step: number
  /** 1 above (or left of) the line, -1 below (or right of) it. */
  readonly side: 1 | -1
  figure(count: number): string | undefined
}

const MILLIMETRES: Scale = {
  length: 100,
  step: 10,
  side: 1,
  figure: (count) => (count === 10 ? '100 mm' : count % 5 === 0 ? String(count * 10) : undefined),
}

const INCHES: Scale = {
  length: BAR_LENGTH,
  step: INCH / 2,
  side: -1,
  figure: (count) => (count === 8 ? '4 in' : count % 2 === 0 ? String(count / 2) : undefined),
}

/**
 * The pair of bars along one way.
 *
 * @param zero where both begin
 * @param up whether they run up the sheet instead of across it
 * @param name `X` or `Y`
 */
export function drawBars(ink: Ink, zero: Point, up: boolean, name: string): void {
  const at = (along: number, aside: number): Point =>
    up ? { x: zero.x - aside, y: zero.y + along } : { x: zero.x + along, y: zero.y + aside }
  const turn = up ? Math.PI / 2 : 0
  for (const { length, step, side, figure } of [MILLIMETRES, INCHES]) {
    const count = Math.round(length / step)
    const numbers = Array.from({ length: count + 1 }, (_, index) => index)
    ink.lines(
      [
        [at(0, 0), at(length, 0)],
        ...numbers.map((index): [Point, Point] => {
          const reach = side * (figure(index) === undefined ? TICK : LONG_TICK)
          return [at(index * step, 0), at(index * step, reach)]
        }),
      ],
      LINE,
    )
    for (const index of numbers) {
      const text = figure(index)
      if (text === undefined) continue
      const aside = side === 1 ? LONG_TICK + 0.6 : -(LONG_TICK + 0.6 + CAPITAL_HEIGHT * FIGURE)
      const anchor = index === count ? 'end' : index === 0 ? 'start' : 'middle'
      const along = index === count ? length + 1.5 : index === 0 ? -0.6 : index * step
      ink.words(at(along, aside), FIGURE, text, { turn, anchor, colour: INK })
    }
  }
  ink.words(at(BAR_LENGTH + 2.6, -1.1), 3.4, name, { turn })
}
