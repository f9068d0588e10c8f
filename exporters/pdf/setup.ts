/** How somebody prints: the paper, which way round, what the printer leaves white, and how sheets overlap. */
import type { Bounds } from '../../geometry/index.ts'
import { lengthLabel } from '../numbers.ts'
import { type Correction, judged, NO_CORRECTION } from './correction.ts'
import { type Paper, type PaperName, paperNamed } from './papers.ts'

export type Way = 'upright' | 'lying'

export interface PrintSetup {
  readonly paper: PaperName
  /** `fewest` takes, for each part, the way that needs fewer sheets. */
  readonly way: Way | 'fewest'
  /** White edge all round that the printer cannot or should not print, mm. */
  readonly margin: number
  /** What neighbouring sheets share, mm. */
  readonly overlap: number
  readonly correction: Correction
}

/** 10 mm is more than usual printers leave white and wide enough to glue on: common practice, no source. */
export const STANDARD_SETUP: PrintSetup = {
  paper: 'a4',
  way: 'fewest',
  margin: 10,
  overlap: 10,
  correction: NO_CORRECTION,
}

/** The strip at the left with the upright bars, and the one at the bottom with bars, words and map, mm. */
export const LEFT_STRIP = 12
export const BOTTOM_STRIP = 27

/** Least that remains for the drawing, mm: less and the bars of 100 mm and 4 in, or the words, find no room. */
const LEAST_WIDTH = 142
const LEAST_HEIGHT = 108

const LEAST_OVERLAP = 6
const MOST_OVERLAP = 40

/**
 * A sheet as it is drawn on: millimetres as they shall come out on paper, from the lower left corner, y up.
 * `scaleX` and `scaleY` turn them into millimetres of the file.
 */
export interface Frame {
  readonly paper: Paper
  readonly way: Way
  /** The paper, mm of the file. */
  readonly width: number
  readonly height: number
  readonly scaleX: number
  readonly scaleY: number
  /** What may be printed on. */
  readonly inner: Bounds
  /** What a part may be drawn on. */
  readonly window: Bounds
}

export type SetupReading =
  | { readonly ok: true; readonly frames: readonly Frame[] }
  | { readonly ok: false; readonly sentence: string }

function frameOf(setup: PrintSetup, way: Way): Frame {
  const paper = paperNamed(setup.paper)
  const upright = way === 'upright'
  const [width, height] = upright ? [paper.width, paper.height] : [paper.height, paper.width]
  const { x, y } = setup.correction
  const [scaleX, scaleY] = upright ? [x, y] : [y, x]
  const inner = {
    minX: setup.margin / scaleX,
    minY: setup.margin / scaleY,
    maxX: (width - setup.margin) / scaleX,
    maxY: (height - setup.margin) / scaleY,
  }
  const window = { ...inner, minX: inner.minX + LEFT_STRIP, minY: inner.minY + BOTTOM_STRIP }
  return { paper, way, width, height, scaleX, scaleY, inner, window }
}

const millimetres = (length: number) => `${lengthLabel(length, 'A length', 1)} mm`

/**
 * The sheets that a setup allows, one for each way round.
 *
 * @returns frames, or a sentence where margins or overlap leave too little of the paper or the correction is none
 * @throws for a paper that is not in the table
 */
export function framesOf(setup: PrintSetup): SetupReading {
  const { margin, overlap } = setup
  if (!Number.isFinite(margin) || margin < 0)
    return { ok: false, sentence: `The margin is ${margin}: it has to be a length, nothing or more.` }
  if (!(overlap >= LEAST_OVERLAP && overlap <= MOST_OVERLAP)) {
    const said = Number.isFinite(overlap) ? millimetres(overlap) : String(overlap)
    return {
      ok: false,
      sentence: `The overlap is ${said}: sheets need ${LEAST_OVERLAP} to ${MOST_OVERLAP} mm to be glued on.`,
    }
  }
  const judgement = judged(setup.correction)
  if (!judgement.ok) return judgement
  const ways: readonly Way[] = setup.way === 'fewest' ? ['lying', 'upright'] : [setup.way]
  const frames = ways.map((way) => frameOf(setup, way))
  const fits = frames.filter(
    ({ window }) => window.maxX - window.minX >= LEAST_WIDTH && window.maxY - window.minY >= LEAST_HEIGHT,
  )
  if (fits.length > 0) return { ok: true, frames: fits }
  const { title, width, height } = paperNamed(setup.paper)
  const most = Math.max(
    ...frames.map((frame) =>
      Math.min(
        (frame.width - (LEAST_WIDTH + LEFT_STRIP) * frame.scaleX) / 2,
        (frame.height - (LEAST_HEIGHT + BOTTOM_STRIP) * frame.scaleY) / 2,
      ),
    ),
  )
  return {
    ok: false,
    sentence: `A margin of ${millimetres(margin)} leaves too little of ${title} (${millimetres(width)} by ${millimetres(height)}) for a part, its title and the bars: up to ${Math.floor(most)} mm will do, or take a larger paper.`,
  }
}
