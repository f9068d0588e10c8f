import { gradeLeast, type Measurement, type Rule } from '../finding.ts'

export const boardBehindLastFret: Rule = {
  name: 'board-behind-last-fret',
  title: 'Board behind the last fret',
  unit: 'mm',
  wants: 'least',
  limits: ['beyondLastFret'],
  mendedBy: ['board.beyond', 'board.length', 'scale.frets.count'],
  measure(layout, limit) {
    const found: Measurement[] = []
    const last = layout.frets.at(-1)
    if (!last || last.number === 0) return found
    const bare =
      layout.neck.stretches.find((one) => one.of === 'notch' || one.of === 'relief')?.x0 ?? layout.neck.x1
    const end = layout.board ? layout.board.x1 : bare
    const measured = end - last.fromNut
    const wanted = limit('beyondLastFret')
    found.push({
      about: [layout.board ? 'board' : 'neck'],
      measured,
      limit: wanted,
      grade: gradeLeast(measured, wanted, 0),
      where: { view: 'plan', from: { x: last.fromNut, y: 0 }, to: { x: end, y: 0 } },
      data: { fret: last.number },
    })
    return found
  },
  words({ measured, limit, grade, about, data }, say) {
    const end = about[0] === 'board' ? 'the end of the board' : 'where the neck goes under the lid'
    if (grade === 'stop')
      return `Fret ${data?.fret} falls ${say.length(-(measured ?? 0))} behind ${end}, where there is no wood to slot. Use fewer frets or a longer board.`
    const left = `From fret ${data?.fret} to ${end} are ${say.length(measured ?? 0)}`
    return grade === 'clear'
      ? `${left}.`
      : `${left}; a slot nearer than ${say.length(limit ?? 0)} breaks out.`
  },
}

/** A board that runs on over the lid must lie on it or above it, never in it. */
export const boardOverLid: Rule = {
  name: 'board-over-lid',
  title: 'Board over the lid',
  unit: 'mm',
  wants: 'least',
  limits: [],
  mendedBy: ['neck.rise', 'board.beyond', 'board.length'],
  measure(layout) {
    const found: Measurement[] = []
    const { board, box } = layout
    if (!board || board.overLid <= 0) return found
    const measured = board.bottom
    found.push({
      about: ['board'],
      measured,
      limit: 0,
      grade: gradeLeast(measured, 0, 0),
      where: { view: 'section', from: { x: box.x0, y: board.bottom }, to: { x: board.x1, y: board.bottom } },
    })
    return found
  },
  words({ measured, grade }, say) {
    return grade === 'clear'
      ? `The board passes over the lid with ${say.length(measured ?? 0)} between them.`
      : `The board lies ${say.length(-(measured ?? 0))} too low and would run into the lid. Raise the neck, or end the board before the box.`
  },
}
