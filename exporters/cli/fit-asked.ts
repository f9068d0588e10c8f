/** What `lidwright fit` is asked, from the words of the command: lists of lengths, counts, shares and weights. */
import {
  CARES,
  type Care,
  type Design,
  formatLength,
  type Questions,
  questionsFor,
  readLength,
  readPitch,
  USUAL_WEIGHTS,
  type Weights,
} from '../../geometry/index.ts'
import type { FitWishes } from '../fit/fit-answer.ts'
import { Trouble } from './io.ts'

export interface FitOptions {
  readonly scales?: string
  readonly strings?: string
  readonly places?: string
  readonly ownStrings?: boolean
  readonly care: readonly string[]
  readonly note?: string
}

const listed = (text: string): string[] => text.split(',').map((one) => one.trim())

/** The questions put to one design. Lengths without a unit are taken in its own. Throws a `Trouble` for what cannot be read. */
export function askedOf(design: Design, { scales, strings, places, ownStrings }: FitOptions): Questions {
  return questionsFor(design, {
    ...(scales === undefined ? {} : { scales: listed(scales).map((text) => scaleOf(text, design)) }),
    ...(strings === undefined ? {} : { counts: listed(strings).flatMap(countsOf) }),
    ...(places === undefined ? {} : { places: listed(places).map(placeOf) }),
    strings: ownStrings ? 'as stated' : 'chosen for each',
  })
}

function scaleOf(text: string, { units }: Design): number {
  const read = readLength(text, units.display)
  if (!read.ok) throw new Trouble(`--scales: ${read.sentence}`)
  if (read.mm >= 150 && read.mm <= 1300) return read.mm
  const say = (mm: number) => formatLength(mm, units, { unit: true })
  throw new Trouble(`--scales "${text}": that is ${say(read.mm)}; from ${say(150)} to ${say(1300)} is taken.`)
}

/** `3`, or `2-4` for all of them. */
function countsOf(text: string): number[] {
  const found = /^(\d{1,2})(?:\s*-\s*(\d{1,2}))?$/.exec(text)
  const [low, high] = [Number(found?.[1]), Number(found?.[2] ?? found?.[1])]
  if (!found || low < 1 || high > 12 || low > high)
    throw new Trouble(`--strings "${text}": counts from 1 to 12 are wanted, as in "3,4" or "2-4".`)
  return Array.from({ length: high - low + 1 }, (_, index) => low + index)
}

/** `68%` or `0.68` of the lid. */
function placeOf(text: string): number {
  const found = /^(\d+(?:\.\d+)?|\.\d+)\s*(%?)$/.exec(text)
  const share = Number(found?.[1]) / (found?.[2] ? 100 : 1)
  if (found && share >= 0.02 && share <= 0.98) return share
  throw new Trouble(`--places "${text}": shares of the lid from 2% to 98% are wanted, as in "60%,68%,75%".`)
}

/** What counts for how much. Throws a `Trouble` for a care that is none. */
export function wishesOf(design: Design, { care, note }: FitOptions): FitWishes {
  const weights: Record<Care, number> = { ...USUAL_WEIGHTS }
  for (const text of care) {
    const [name = '', amount = ''] = text.split('=').map((one) => one.trim())
    const known = CARES.find((one) => one === name)
    if (!known || !/^\d+(\.\d+)?$/.test(amount))
      throw new Trouble(
        `--care "${text}": one of ${CARES.join(', ')} with a weight from 0 on is wanted, as in "short=2".`,
      )
    weights[known] = Number(amount)
  }
  let hertz: number | null = null
  if (note !== undefined) {
    const read = readPitch(note, design.stringing.a4)
    if (!read.ok) throw new Trouble(`--note: ${read.sentence}`)
    hertz = read.hertz
    if (weights.note === 0 && !care.some((text) => text.startsWith('note'))) weights.note = 2
  }
  return { weights: weights satisfies Weights, pull: design.stringing.wantedPull, note: hertz }
}
