/** The entities of parts handed straight to dxf-writer, without any guard: what its own work costs. */
import DxfDrawing from 'dxf-writer'
import type { Contour, Part } from '../../geometry/index.ts'

/** One sheet with all parts' entities on one layer for each kind of operation. */
export function bareDxf(parts: readonly Part[]): string {
  const drawing = new DxfDrawing()
  drawing.setUnits('Millimeters')
  const layers = ['outline', ...new Set(parts.flatMap((part) => part.operations.map((one) => one.kind)))]
  for (const layer of layers) drawing.addLayer(layer, DxfDrawing.ACI.WHITE, 'CONTINUOUS')
  for (const part of parts) {
    drawing.setActiveLayer('outline')
    add(drawing, part.outline)
    for (const one of part.operations) {
      drawing.setActiveLayer(one.kind)
      if (one.kind === 'drill') drawing.drawCircle(one.centre.x, one.centre.y, one.diameter / 2)
      else if (one.kind === 'slot') drawing.drawLine(one.from.x, one.from.y, one.to.x, one.to.y)
      else if (one.kind === 'note') drawing.drawText(one.at.x, one.at.y, one.height, 0, one.text)
      else add(drawing, one.kind === 'datum' ? one.line : one.contour)
    }
  }
  return drawing.toDxfString()
}

function add(drawing: DxfDrawing, contour: Contour): void {
  if (contour.shape === 'circle') {
    drawing.drawCircle(contour.centre.x, contour.centre.y, contour.radius)
    return
  }
  const [from, to] = contour.vertices
  if (!contour.closed && contour.vertices.length === 2 && from && to && from.bulge === 0) {
    drawing.drawLine(from.x, from.y, to.x, to.y)
    return
  }
  drawing.drawPolyline(
    contour.vertices.map(({ x, y, bulge }) => [x, y, bulge] as unknown as [number, number]),
    contour.closed,
  )
}
