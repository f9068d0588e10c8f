/**
 * What a box can become: every scale × count of strings × place of the saddle that is asked for, each solved and held
 * against the rules. In small steps, so that a screen does a few at a time; pure, so the same questions give the same rows.
 *
 * Far cheaper than a solve and a check for each: a nut on the box and a blank too short are told by sums before anything
 * is solved; a row ends at its first stop; strings that cannot be are not tried at another place; and what lid, walls and
 * neck within the box come to is measured once for all rows that have it in common (`tiers.ts`). What is then shown is what
 * `solve` and `check` say of that very candidate.
 */

import { balanceOf } from '../balance/balance.ts'
import { check } from '../checks/check.ts'
import { limitOf } from '../checks/finding.ts'
import { saddleToTailWall } from '../checks/rules/saddle-place.ts'
import type { Design } from '../design/schema.ts'
import { loadsOf } from '../loads/loads.ts'
import { notes } from '../quantity/notes.ts'
import type { Layout } from '../solve/layout.ts'
import { solve, solveOnce } from '../solve/solve.ts'
import type { Note } from '../sound/sound.ts'
import { Around } from './around.ts'
import {
  type Base,
  baseOf,
  blankLeft,
  boxStart,
  candidate,
  type Stringed,
  type Strung,
  stringed,
} from './candidate.ts'
import { alreadyWrong, movable } from './judged.ts'
import type { Questions } from './questions.ts'
import type { Told } from './verdict.ts'

/** What a row that can be built comes to. Millimetres, newtons, grams, hertz. */
export interface Numbers {
  /** The last fret before the neck-end face, `null` for none, and how far the face lies behind it (or behind the nut). */
  readonly fretAtBody: { readonly fret: number | null; readonly past: number }
  /** From the saddle's foot to the inside of the tail-end wall. */
  readonly saddleToWall: number
  /** From the end of the head to the end of tail or box. */
  readonly overall: number
  /** All strings together; `null` where no tuning is known. */
  readonly pull: number | null
  readonly bow: number | null
  /** The tightest margin that the row itself has; `null` where nothing was measured. */
  readonly tightest: Told | null
  /** How many findings ask for care. */
  readonly cares: number
  /** What could be moved and is in the way, more than in the design as it is: the gravest first. */
  readonly inTheWay: readonly Told[]
  readonly mass: number
  /** Balance point from the neck-end face, towards the tail. */
  readonly balance: number
  /** Which end drops, where it is stated how it is held. */
  readonly drops: 'head' | 'tail' | 'neither' | null
  /** To a millionth of a hertz and of a cent. */
  readonly air: Note | null
}

export interface Row {
  /** Its place in the order of the questions: what never changes by sorting. */
  readonly index: number
  readonly scale: number
  readonly count: number
  readonly place: number
  readonly strung: Strung
  readonly design: Design
  /** `null` where it cannot be built. */
  readonly numbers: Numbers | null
  /** The rule that makes it impossible, `null` where it can be built. `reasonOf` says it in words. */
  readonly impossible: string | null
}

export interface Fitting {
  readonly design: Design
  readonly questions: Questions
  readonly total: number
  readonly done: number
  /** One more row; `false` when there is none left. */
  step(): boolean
  /** The rows that are done, in the order of the questions: place by place, scale by scale, count by count. */
  readonly rows: readonly Row[]
  /** How much was really worked out so far. */
  readonly worked: { readonly solved: number }
}

/** Below nothing by more than this is below nothing; millimetres. */
const HAIR = 1e-6

/**
 * Begins the rows of a design; nothing is worked out before the first step.
 * Example: `const fitting = fittingOf(design, questionsFor(design)); while (fitting.step()); fitting.rows`.
 */
export function fittingOf(design: Design, questions: Questions): Fitting {
  const { scales, counts, places, strings } = questions
  const total = scales.length * counts.length * places.length
  const rows: Row[] = []
  const worked = { solved: 0 }
  /** A set of strings is chosen once, for all the places that the saddle may have. */
  const strung: Stringed[] = []
  let begun: ReturnType<typeof begin> | null = null
  return {
    design,
    questions,
    total,
    get done() {
      return rows.length
    },
    step() {
      const index = rows.length
      const pair = index % (scales.length * counts.length)
      const place = places[Math.floor(index / (scales.length * counts.length))]
      const scale = scales[Math.floor(pair / counts.length)]
      const count = counts[pair % counts.length]
      if (place === undefined || scale === undefined || count === undefined) return false
      begun ??= begin(design)
      const { base, around } = begun
      const one = strung[pair] ?? stringed(base, scale, count, strings)
      strung[pair] = one
      rows.push(rowOf({ index, base, one, place, around, worked }))
      return rows.length < total
    },
    rows,
    worked,
  }
}

function begin(design: Design): { readonly base: Base; readonly around: Around } {
  const wrong = alreadyWrong(check(solve(design)))
  const judge = { things: movable(design), wrong, overruled: design.overruled }
  return { base: baseOf(design), around: new Around(judge) }
}

interface Asked {
  readonly index: number
  readonly base: Base
  readonly one: Stringed
  readonly place: number
  readonly around: Around
  readonly worked: { solved: number }
}

function rowOf({ index, base, one, place, around, worked }: Asked): Row {
  const { scale, count, strung } = one
  const design = candidate(base, one, place)
  const row = (numbers: Numbers | null, impossible: string | null): Row => ({
    index,
    scale,
    count,
    place,
    strung,
    design,
    numbers,
    impossible,
  })
  if (boxStart(base, one, place) < -HAIR) return row(null, 'neck-before-box')
  if (blankLeft(base, one, place) < -HAIR) return row(null, 'blank-length')
  const forbids = around.forbids(one)
  if (forbids) return row(null, forbids.name)
  worked.solved += 1
  // Nobody keeps it: a table must not hold hundreds of layouts.
  const layout = solveOnce(design, around.like(one))
  const { numbers, impossible } = judged(layout, around, one)
  return row(numbers, impossible)
}

/** A layout held against the rules, and what it comes to where none forbids it. */
function judged(
  layout: Layout,
  around: Around,
  stringed: Stringed | null,
): Pick<Row, 'numbers' | 'impossible'> {
  const { impossible, cares, tightest, inTheWay } = around.judged(layout, stringed)
  if (impossible) return { numbers: null, impossible: impossible.name }
  return { numbers: { ...comesTo(layout), air: around.note(), cares, tightest, inTheWay }, impossible: null }
}

const alone = notes<Design, Pick<Row, 'numbers' | 'impossible'>>()

/**
 * The numbers of a design as it is, as a row would show them; all that things are in the way of is counted. Remembered
 * per design. Example: `fitOf(design).numbers?.overall`.
 */
export function fitOf(design: Design): Pick<Row, 'numbers' | 'impossible'> {
  const before = alone.get(design)
  if (before) return before
  const judge = { things: movable(design), wrong: new Map(), overruled: design.overruled }
  const answer = judged(solve(design), new Around(judge), null)
  alone.set(design, answer)
  return answer
}

/** What follows from a layout alone. */
function comesTo(layout: Layout): Omit<Numbers, 'air' | 'cares' | 'tightest' | 'inTheWay'> {
  const { totalPull, neck } = loadsOf(layout)
  const balance = balanceOf(layout)
  const { neck: stick, box } = layout
  return {
    fretAtBody: fretAtBody(layout),
    saddleToWall: saddleToWallOf(layout),
    overall: Math.max(stick.x1, box.x1) - stick.x0,
    pull: totalPull,
    bow: neck?.bow ?? null,
    mass: balance.mass,
    balance: balance.fromWall,
    drops: balance.held?.drops ?? null,
  }
}

/** As its rule measures it. */
function saddleToWallOf(layout: Layout): number {
  for (const { measured } of saddleToTailWall.measure(layout, limitOf(layout.design))) return measured ?? 0
  return 0
}

/** The last fret before the neck-end face, and how far behind it the face lies. */
export function fretAtBody({ frets, box }: Pick<Layout, 'frets' | 'box'>): Numbers['fretAtBody'] {
  const last = frets.filter((fret) => fret.number > 0 && fret.fromNut <= box.x0).at(-1)
  return last ? { fret: last.number, past: box.x0 - last.fromNut } : { fret: null, past: box.x0 }
}
