/** What is asked of the box and cared for: a way of looking, not part of the design. */
import { create } from 'zustand'
import {
  type Care,
  type Design,
  placesBetween,
  type Questions,
  questionsFor,
  USUAL_SCALES,
  USUAL_WEIGHTS,
  type Weights,
} from '../../geometry/index.ts'

export interface Asked {
  /** Scale lengths that are asked for, millimetres; the design's own is asked besides. */
  readonly scales: readonly number[]
  readonly counts: readonly number[]
  /** Shares of the lid, the first place and the last, and how many. */
  readonly from: number
  readonly to: number
  readonly places: number
  readonly strings: Questions['strings']
  readonly weights: Weights
  /** Hertz, `null` for no wish; and as it was written. */
  readonly note: number | null
  readonly noteText: string
  /** Filters of what is shown. */
  readonly onlyBest: boolean
  readonly noCares: boolean
  readonly nothingInTheWay: boolean
  readonly strung: number | null
  readonly longest: number | null
}

export const useAsked = create<Asked>()(() => ({
  scales: USUAL_SCALES.map((one) => one.length),
  counts: [2, 3, 4, 6],
  from: 0.52,
  to: 0.84,
  places: 9,
  strings: 'chosen for each',
  weights: USUAL_WEIGHTS,
  note: null,
  noteText: '',
  onlyBest: true,
  noCares: false,
  nothingInTheWay: false,
  strung: null,
  longest: null,
}))

/** The questions put to a design. */
export function questionsOf(design: Design, asked: Asked): Questions {
  const own = design.saddle.place
  const share = typeof own === 'object' && 'share' in own ? [own.share] : []
  return questionsFor(design, {
    scales: [...asked.scales, design.scale.length],
    counts: asked.counts,
    places: [...placesBetween(asked.from, asked.to, asked.places), ...share],
    strings: asked.strings,
  })
}

export const setWeight = (care: Care, weight: number): void =>
  useAsked.setState(({ weights }) => ({ weights: { ...weights, [care]: weight } }))
