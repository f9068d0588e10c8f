/** The very lid of a part as a makerjs model: the same contours, handed to a general-purpose drawing library. */
import makerjs from 'makerjs'
import { arcBetween, type Contour, type Operation, type Part } from '../../geometry/index.ts'

const degrees = (radians: number) => (radians * 180) / Math.PI

function modelOf(contour: Contour): makerjs.IModel {
  if (contour.shape === 'circle')
    return {
      paths: { circle: new makerjs.paths.Circle([contour.centre.x, contour.centre.y], contour.radius) },
    }
  const { vertices, closed } = contour
  const paths: Record<string, makerjs.IPath> = {}
  vertices.forEach((from, index) => {
    const to = vertices[index + 1] ?? (closed ? vertices[0] : undefined)
    if (!to) return
    if (from.bulge === 0) {
      paths[`line${index}`] = new makerjs.paths.Line([from.x, from.y], [to.x, to.y])
      return
    }
    const arc = arcBetween(from, to)
    const [start, end] = [arc.startAngle, arc.startAngle + arc.sweep].sort((a, b) => a - b) as [
      number,
      number,
    ]
    paths[`arc${index}`] = new makerjs.paths.Arc(
      [arc.centre.x, arc.centre.y],
      arc.radius,
      degrees(start),
      degrees(end),
    )
  })
  return { paths }
}

function contourOf(operation: Operation): Contour | null {
  switch (operation.kind) {
    case 'cut':
    case 'recess':
    case 'mark':
      return operation.contour
    case 'drill':
      return { shape: 'circle', centre: operation.centre, radius: operation.diameter / 2 }
    case 'datum':
      return operation.line
    case 'slot':
    case 'note':
      return null
  }
}

/** Builds the model and writes it as SVG, as a program that used makerjs for everything would on every change. */
export function lidByMakerjs(part: Part): string {
  const models: Record<string, makerjs.IModel> = { outline: modelOf(part.outline) }
  part.operations.forEach((operation, index) => {
    const contour = contourOf(operation)
    if (contour) models[`${operation.kind}${index}`] = modelOf(contour)
  })
  return makerjs.exporter.toSVG({ models, units: makerjs.unitType.Millimeter })
}

/** So many round holes as a model, moved to where they stand: what any drawing library does in a drag. */
export function holesByMakerjs(holes: readonly Contour[]): string {
  const models = Object.fromEntries(holes.map((hole, index) => [`hole${index}`, modelOf(hole)]))
  const model = makerjs.model.originate(makerjs.model.moveRelative({ models }, [1, 2]))
  return String(Object.keys(model.models ?? {}).length)
}
