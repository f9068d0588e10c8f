/** Rows and their numbers as the screen says them. */
import {
  formatFine,
  formatLength,
  formatMeasure,
  type Numbers,
  type Row,
  ruleOf,
  type Told,
} from '../../geometry/index.ts'

type Units = Row['design']['units']

export const sayPlace = (place: number): string => `${Math.round(place * 1000) / 10} %`

/** `25 in, 3 strings, saddle at 72 %`. */
export const sayRow = ({ scale, count, place, design }: Row): string =>
  `${formatLength(scale, design.units, { unit: true })}, ${sayCount(count)}, saddle at ${sayPlace(place)}`

export const sayCount = (count: number): string => (count === 1 ? '1 string' : `${count} strings`)

export const sayMargin = (told: Told, units: Units): string =>
  formatMeasure(told.margin ?? 0, told, units).replace('-', '−')

export const sayRule = ({ rule }: Pick<Told, 'rule'>): string => ruleOf(rule).title

export interface Shown {
  readonly name: string
  readonly head: string
  readonly help: string
  readonly say: (numbers: Numbers, units: Units) => string
  /** Words that stand left. */
  readonly left?: boolean
}

const NOT_KNOWN = '–'

/** What is shown of a row, in the order of the columns. */
export const SHOWN: readonly Shown[] = [
  {
    name: 'fret',
    head: 'Fret at body',
    help: 'The last fret before the box',
    say: ({ fretAtBody }) => (fretAtBody.fret === null ? 'none' : String(fretAtBody.fret)),
  },
  {
    name: 'wall',
    head: 'To tail wall',
    help: 'From the saddle’s foot to the inside of the tail-end wall',
    say: ({ saddleToWall }, units) => formatLength(saddleToWall, units),
  },
  {
    name: 'overall',
    head: 'Overall',
    help: 'From the end of the head to the end of the tail',
    say: ({ overall }, units) => formatLength(overall, units),
  },
  {
    name: 'pull',
    head: 'Pull, N',
    help: 'All strings together, newtons',
    say: ({ pull }) => (pull === null ? NOT_KNOWN : pull.toFixed(0)),
  },
  {
    name: 'bow',
    head: 'Bow',
    help: 'Of the neck under the pull, by estimate',
    say: ({ bow }, units) => (bow === null ? NOT_KNOWN : formatFine(bow, units)),
  },
  {
    name: 'balance',
    head: 'Balance',
    help: 'From the neck-end face of the box, towards the tail',
    say: ({ balance, drops }, units) =>
      `${formatLength(balance, units).replace('-', '−')}${drops === 'head' ? ', head drops' : drops === 'tail' ? ', tail drops' : ''}`,
  },
  {
    name: 'air',
    head: 'Air',
    help: 'The note that the air of the box speaks best',
    say: ({ air }) => (air ? air.name : 'none'),
  },
  {
    name: 'cares',
    head: 'Cares',
    help: 'Findings of the instrument itself that ask for care',
    say: ({ cares }) => String(cares),
  },
  {
    name: 'way',
    head: 'In the way',
    help: 'Things already placed that would be in the way, more than they are now; they can be moved',
    say: ({ inTheWay }) => String(inTheWay.length),
  },
  {
    name: 'margin',
    head: 'Tightest margin',
    help: 'The least share of its limit, of what the instrument itself has',
    say: ({ tightest }, units) =>
      tightest ? `${sayMargin(tightest, units)} ${sayRule(tightest).toLowerCase()}` : NOT_KNOWN,
    left: true,
  },
]
