/** Contours as the path text of an SVG, arcs as arcs. Millimetres stay millimetres; y points down. */
import { arcBetween, type Contour, isStraight } from '../../geometry/index.ts'

const n = (value: number) => String(Math.round(value * 1e4) / 1e4 + 0)

/** @example pathOf(circle({ x: 0, y: 0 }, 5)) // 'M-5 0A5 5 0 0 1 5 0A5 5 0 0 1 -5 0Z' */
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
    if (isStraight(from.bulge)) text += `L${end}`
    else {
      const { radius, sweep } = arcBetween(from, to)
      text += `A${n(radius)} ${n(radius)} 0 ${Math.abs(sweep) > Math.PI ? 1 : 0} ${sweep > 0 ? 0 : 1} ${end}`
    }
  }
  return closed ? `${text}Z` : text
}
