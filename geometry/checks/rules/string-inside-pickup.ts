import { stringAt } from '../../solve/solve.ts'
import { gradeLeast, type Measurement, type Rule } from '../finding.ts'
import { capital } from '../say.ts'

export const stringInsidePickup: Rule = {
  name: 'string-inside-pickup',
  title: 'Strings inside the pickup’s active width',
  unit: 'mm',
  wants: 'least',
  limits: ['stringInsidePickup'],
  mendedBy: ['place', 'strings.spanAtSaddle'],
  measure(layout, limit) {
    const found: Measurement[] = []
    for (const { thing, kind, at } of layout.placed) {
      const width = kind.activeWidth?.(thing)
      if (width === undefined || width === null) continue
      const x = at.x + layout.panels.lid.originX
      const rooms = layout.strings.map((string) => {
        const y = stringAt(string, x, layout.saddle.x)
        return { string, y, room: width / 2 - Math.abs(y - at.y) }
      })
      const tightest = rooms.reduce((least, one) => (one.room < least.room ? one : least))
      const wanted = limit('stringInsidePickup')
      const end = at.y + (tightest.y < at.y ? -width / 2 : width / 2)
      found.push({
        about: [thing.id],
        measured: tightest.room,
        limit: wanted,
        grade: gradeLeast(tightest.room, wanted),
        where: { view: 'plan', from: { x, y: tightest.y }, to: { x, y: end } },
        data: { string: tightest.string.number },
      })
    }
    return found
  },
  words({ measured, limit, about, grade, data }, say) {
    const who = capital(say.thing(about[0] ?? ''))
    if ((measured ?? 0) < 0)
      return `String ${data?.string} runs ${say.length(-(measured ?? 0))} outside what ${say.thing(about[0] ?? '')} hears. Bring it under the strings, move it towards the nut, where they lie closer, or choose a wider one.`
    const room = `${who} hears string ${data?.string} ${say.length(measured ?? 0)} inside its active width`
    return grade === 'clear'
      ? `${room}, the outermost.`
      : `${room}; ${say.length(limit ?? 0)} keep the strings even.`
  },
}
