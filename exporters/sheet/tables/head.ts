/** The head: how it is made, and where each string goes on it. */
import type { Cell, Table } from '../model.ts'
import type { Source } from '../source.ts'

/** Tuners in the order in which they stand, with the string that winds on each. */
export function headTable({ report, say, design }: Source): Table {
  const { headstock, strings } = report
  const fallOf = new Map(strings.map(({ number, breakAngleAtNut }) => [number, breakAngleAtNut]))
  const kinkOf = new Map(strings.map(({ number, sideAngleAtNut }) => [number, sideAngleAtNut]))
  return {
    id: 'head',
    title: 'Tuners on the head',
    columns: [
      { key: 'number', title: 'Tuner', as: 'count' },
      { key: 'side', title: 'Side', as: 'words' },
      { key: 'along', title: 'From the nut, along the face', as: 'length' },
      { key: 'fromCentreline', title: 'From the centreline', as: 'length', signed: true },
      { key: 'hole', title: 'Hole', as: 'length' },
      { key: 'string', title: 'String', as: 'count' },
      { key: 'sideways', title: 'Sideways at the nut', as: 'angle' },
      { key: 'down', title: 'Down behind it', as: 'angle' },
    ],
    rows: headstock.tuners.map(({ number, side, along, fromCentreline, hole }): Cell[] => {
      const string = headstock.paths.find(({ tuner }) => tuner === number)?.string ?? null
      const angle = (of: typeof fallOf) => (string === null ? null : (of.get(string) ?? null))
      return [number, side, along, fromCentreline, hole, string, angle(kinkOf), angle(fallOf)]
    }),
    note: `${madeWords(headstock, say)} Head ${say(design.headstock.length)} long, ${say(design.headstock.width)} wide and ${say(design.headstock.thickness)} thick. From the centreline + is the treble side.`,
  }
}

/** How the head comes out of the stick, one sentence. */
export function madeWords(
  { form, step, scarf, tilt }: Source['report']['headstock'],
  say: Source['say'],
): string {
  const degrees = Math.round((tilt * 1800) / Math.PI) / 10
  if (scarf)
    return `Scarfed: the stick sawn through at ${degrees}°, its end turned over and glued back on under the bevel, over ${say(scarf.glued)}.`
  return form === 'stepped'
    ? `Stepped: its face lies ${say(step)} below the neck’s.`
    : 'Straight, carved down from the front.'
}
