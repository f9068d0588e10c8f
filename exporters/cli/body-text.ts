/** The body in a report for reading: its air, its weight, and how its lid opens. */
import type { Report } from '../report.ts'

const LITRE = 1e6
const DEGREES = 180 / Math.PI

/** `C4 +12 cents`. */
const noteOf = (name: string, cents: number): string => {
  const whole = Math.round(cents)
  return whole === 0 ? name : `${name} ${whole > 0 ? '+' : '−'}${Math.abs(whole)} cents`
}

/** Rows of two cells: what, and what it comes to. Estimates; what each leaves out stands in the README. */
export function bodyRows({ air, weight, opening }: Report, say: (mm: number) => string): [string, string][] {
  const before = weight.fromNeckEnd < 0
  const rows: [string, string][] = [
    ['Room for the air, litres', (air.volume / LITRE).toFixed(2)],
    [
      'Its note',
      air.note ? `${noteOf(air.note.name, air.note.cents)} (${air.note.hertz.toFixed(0)} Hz)` : 'none',
    ],
    ...air.nextSizes.map(({ way, name, cents }): [string, string] => [
      `With the next ${way} bit`,
      `${name}, ${cents > 0 ? 'up' : 'down'} ${Math.abs(cents).toFixed(0)} cents`,
    ]),
    ['Weight, grams', weight.total.toFixed(0)],
    ['Balances', `${say(Math.abs(weight.fromNeckEnd))} ${before ? 'before' : 'behind'} the neck-end face`],
  ]
  if (weight.held)
    rows.push([
      `Held by ${weight.held.by}`,
      weight.held.drops === 'neither' ? 'level' : `the ${weight.held.drops} drops`,
    ])
  if (opening?.by === 'hinge')
    rows.push([
      `Lid, hinged on the ${opening.edge}`,
      `opens ${((opening.angle ?? 0) * DEGREES).toFixed(1)}° of ${((opening.angleWanted ?? 0) * DEGREES).toFixed(1)}°`,
    ])
  if (opening?.by === 'slide')
    rows.push([
      `Lid, slides out over the ${opening.edge}`,
      `comes ${say(opening.travel ?? 0)} of ${say(opening.travelWanted ?? 0)}`,
    ])
  return rows
}
