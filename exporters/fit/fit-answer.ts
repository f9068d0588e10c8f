/** The fit table of a design as data: what was asked, every row in the order of what is cared for, and why others fail. */
import {
  type Design,
  fittingOf,
  marksOf,
  type Questions,
  type Row,
  ranked,
  reasonOf,
  reasonsOf,
  ruleOf,
  setOf,
  type Weights,
  type Wishes,
} from '../../geometry/index.ts'
import { tidied } from '../report.ts'

export interface FitWishes extends Wishes {
  readonly weights: Weights
}

/** All rows of a design, the best first. */
export function rankedFit(design: Design, questions: Questions, { weights, ...wishes }: FitWishes): Row[] {
  const fitting = fittingOf(design, questions)
  while (fitting.step()) {
    // Each step is a row.
  }
  return ranked(fitting.rows, weights, wishes)
}

/**
 * The rows as JSON: millimetres, newtons, grams, hertz, shares. The same design and questions give the same text.
 * Example: `fitAnswer(design, questions, rows, wishes).rows[0].fits`.
 */
export function fitAnswer(
  design: Design,
  questions: Questions,
  inOrder: readonly Row[],
  { weights, ...wishes }: FitWishes,
) {
  return tidied({
    title: design.title,
    asked: { ...questions, cares: weights, notePitch: wishes.note },
    fits: inOrder.filter((row) => row.numbers).length,
    impossible: reasonsOf(inOrder).map(({ rule, title, count, example }) => ({
      rule,
      title,
      rows: count,
      example: reasonOf(example),
    })),
    rows: inOrder.map((row) => rowAnswer(row, marksOf(row, weights, wishes))),
  })
}

function rowAnswer(row: Row, marks: number | null) {
  const { numbers } = row
  const { tightest } = numbers ?? {}
  return {
    scale: row.scale,
    strings: row.count,
    saddlePlace: row.place,
    strung: setOf(row),
    fits: numbers !== null,
    reason: reasonOf(row),
    marks: marks,
    numbers: numbers && {
      fretAtBody: numbers.fretAtBody.fret,
      bodyBehindFret: numbers.fretAtBody.past,
      saddleToTailWall: numbers.saddleToWall,
      overall: numbers.overall,
      pull: numbers.pull,
      bow: numbers.bow,
      cares: numbers.cares,
      tightest: tightest && {
        rule: tightest.rule,
        title: ruleOf(tightest.rule).title,
        about: tightest.about,
        margin: tightest.margin,
        unit: tightest.unit,
      },
      inTheWay: numbers.inTheWay.map(({ rule, about, grade }) => ({ rule, about, grade })),
      mass: numbers.mass,
      balanceFromBody: numbers.balance,
      drops: numbers.drops,
      air: numbers.air && {
        hertz: numbers.air.hertz,
        name: numbers.air.name,
        cents: numbers.air.cents,
      },
    },
  }
}
