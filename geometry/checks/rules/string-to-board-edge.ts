import { halfWidthAt } from '../../neck/neck.ts'
import { stringAt } from '../../solve/solve.ts'
import { gradeLeast, type Rule } from '../finding.ts'
import { capital } from '../say.ts'

/** The outer strings are straight and so is the board's edge, yet each fret is looked at: tapers end where they end. */
export const stringToBoardEdge: Rule = {
  name: 'string-to-board-edge',
  title: 'String to the edge of the board',
  unit: 'mm',
  wants: 'least',
  limits: ['stringToBoardEdge'],
  *measure(layout, limit) {
    const { strings, neck, frets, saddle } = layout
    const places = [{ fromNut: 0, name: 'the nut' }, ...frets.filter((fret) => fret.onWood && fret.number > 0).map((fret) => ({ fromNut: fret.fromNut, name: `fret ${fret.number}` }))]
    for (const side of ['bass', 'treble'] as const) {
      const string = side === 'bass' ? strings[0] : strings.at(-1)
      if (!string || (side === 'treble' && strings.length === 1)) continue
      const margins = places.map((place) => {
        const y = stringAt(string, place.fromNut, saddle.x)
        const half = halfWidthAt(neck, place.fromNut)
        const left = half - Math.abs(y) - string.gauge / 2
        return { ...place, y, edge: y < 0 || (y === 0 && side === 'bass') ? -half : half, left }
      })
      const tightest = margins.reduce((least, one) => (one.left < least.left ? one : least))
      const wanted = limit('stringToBoardEdge')
      yield {
        about: [`string ${string.number}`],
        measured: tightest.left,
        limit: wanted,
        grade: gradeLeast(tightest.left, wanted, 0),
        where: {
          view: 'plan',
          from: { x: tightest.fromNut, y: tightest.y },
          to: { x: tightest.fromNut, y: tightest.edge },
        },
        data: { at: tightest.name },
      }
    }
  },
  words({ measured, limit, about, grade, data }, say) {
    const who = capital(say.thing(about[0] ?? ''))
    if (grade === 'stop') return `${who} runs ${say.length(-(measured ?? 0))} beside the board at ${data?.at}. Bring the strings closer or widen the neck.`
    const left = `${who} runs ${say.length(measured ?? 0)} inside the edge of the board at ${data?.at}`
    return grade === 'clear' ? `${left}, its nearest.` : `${left}; under ${say.length(limit ?? 0)} it slips off when pressed.`
  },
}
