import { halfWidthAt } from '../../neck/neck.ts'
import type { Layout, StringLine } from '../../solve/layout.ts'
import { stringAt } from '../../solve/solve.ts'
import { gradeLeast, type Measurement, type Rule } from '../finding.ts'
import { capital } from '../say.ts'

/** The outer strings are straight and so is the board's edge, yet each fret is looked at: tapers end where they end. */
export const stringToBoardEdge: Rule = {
  name: 'string-to-board-edge',
  title: 'String to the edge of the board',
  unit: 'mm',
  wants: 'least',
  limits: ['stringToBoardEdge'],
  mendedBy: ['strings.spanAtNut', 'neck.widthAtNut', 'neck.width'],
  measure(layout, limit) {
    const found: Measurement[] = []
    const wanted = limit('stringToBoardEdge')
    for (const side of ['bass', 'treble'] as const) {
      const string = side === 'bass' ? layout.strings[0] : layout.strings.at(-1)
      if (!string || (side === 'treble' && layout.strings.length === 1)) continue
      const { x, y, edge, left, fret } = tightest(layout, string, side)
      found.push({
        about: [`string ${string.number}`],
        measured: left,
        limit: wanted,
        grade: gradeLeast(left, wanted, 0),
        where: { view: 'plan', from: { x, y }, to: { x, y: edge } },
        data: { at: fret === 0 ? 'the nut' : `fret ${fret}` },
      })
    }
    return found
  },
  words({ measured, limit, about, grade, data }, say) {
    const who = capital(say.thing(about[0] ?? ''))
    if (grade === 'stop')
      return `${who} runs ${say.length(-(measured ?? 0))} beside the board at ${data?.at}. Bring the strings closer or widen the neck.`
    const left = `${who} runs ${say.length(measured ?? 0)} inside the edge of the board at ${data?.at}`
    return grade === 'clear'
      ? `${left}, its nearest.`
      : `${left}; under ${say.length(limit ?? 0)} it slips off when pressed.`
  },
}

/** Looks at the nut and at every fret on wood, nearest the nut first; of equally tight ones the first. */
function tightest(layout: Layout, string: StringLine, side: 'bass' | 'treble') {
  let x = 0
  let number = 0
  let left = leftAt(layout, string, 0, halfWidthAt(layout.neck, 0))
  for (const fret of layout.frets) {
    if (!fret.onWood || fret.number === 0) continue
    const here = leftAt(layout, string, fret.fromNut, fret.yTreble)
    if (here >= left) continue
    left = here
    x = fret.fromNut
    number = fret.number
  }
  const y = stringAt(string, x, layout.saddle.x)
  const half = halfWidthAt(layout.neck, x)
  return { x, y, edge: y < 0 || (y === 0 && side === 'bass') ? -half : half, left, fret: number }
}

const leftAt = (layout: Layout, string: StringLine, x: number, half: number): number =>
  half - Math.abs(stringAt(string, x, layout.saddle.x)) - string.gauge / 2
