/** The diagram of the wiring as an SVG file of its own. */
import type { Layout } from '../../geometry/index.ts'
import { pictureSvg } from '../sheet/html/picture-svg.ts'
import { wiringDiagram } from './diagram.ts'

/** The text of the file, or `null` where nothing is wired. The same design gives the same bytes. */
export function wiringSvg(layout: Layout): string | null {
  const diagram = wiringDiagram(layout)
  return diagram && `<?xml version="1.0" encoding="UTF-8"?>\n${pictureSvg(diagram.picture).markup}\n`
}
