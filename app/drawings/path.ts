/** Contours as the path text of an SVG, arcs as arcs. Millimetres stay millimetres; y points down. */
import type { Contour } from '../../geometry/index.ts'

const n = (value: number) => String(Math.round(value * 1e4) / 1e4 + 0)

/** Radius by bulge and chord; see the definition of a bulge where contours are defined. */
export function pathOf(contour: Contour): string {
  if (contour.shape === 'circle') {
    const { centre, radius } = contour
    const r = n(radius)
    const left = `${n(centre.x - radius)} ${n(-centre.y)}`
    const right = `${n(centre.x + radius)} ${n(-centre.y)}`
    return `M${left}A${r} ${r} 0 0 1 ${right}A${r} ${r} 0 0 1 ${left}Z`
  }
  const { vertices, closed } = contour
  const first = vertices[0]
  if (!first) return ''
  let text = `M${n(first.x)} ${n(-first.y)}`
  const last = closed ? vertices.length : vertices.length - 1
  for (let index = 0; index < last; index++) {
    const from = vertices[index]
    const to = vertices[(index + 1) % vertices.length]
    if (!from || !to) continue
    const end = `${n(to.x)} ${n(-to.y)}`
    if (Math.abs(from.bulge) < 1e-8) text += `L${end}`
    else {
      const chord = Math.hypot(to.x - from.x, to.y - from.y)
      const radius = n((chord * (1 + from.bulge * from.bulge)) / (4 * Math.abs(from.bulge)))
      text += `A${radius} ${radius} 0 ${Math.abs(from.bulge) > 1 ? 1 : 0} ${from.bulge > 0 ? 0 : 1} ${end}`
    }
  }
  return closed ? `${text}Z` : text
}
