/** What a laser or router cannot cut. Cut by hand, nothing is asked and nothing is reckoned. */
import { type Feature, featuresOf, narrowestWeb, widestFor } from '../../cutting/features.ts'
import { toolFor } from '../../cutting/tool.ts'
import { FACES, type Face } from '../../kinds/kind.ts'
import type { Part } from '../../parts/part.ts'
import { partsOf } from '../../parts/parts.ts'
import { flipOf, flipPoint } from '../../parts/sheet-frame.ts'
import { bounds, type Point } from '../../plane/index.ts'
import type { Layout } from '../../solve/layout.ts'
import { gradeLeast, type Measurement, type Rule, type Where } from '../finding.ts'
import { capital } from '../say.ts'

const isFace = (id: string): id is Face => (FACES as readonly string[]).includes(id)

/** Two places of a part's sheet on the drawing that shows that part. */
function whereOn(layout: Layout, part: Part, from: Point, to: Point): Where {
  if (isFace(part.id)) {
    const flip = flipOf(part.id, layout.up)
    return { view: part.id, from: flipPoint(from, flip), to: flipPoint(to, flip) }
  }
  if (part.id === 'neck-side') return { view: 'section', from, to }
  if (part.id === 'tail-strip') return onRow(layout, from, to)
  const flip = layout.up === 1 ? 'none' : 'y'
  return { view: 'plan', from: flipPoint(from, flip), to: flipPoint(to, flip) }
}

/** The strip lies where the row of string holes is drilled, its edge on the edge it is held against. */
function onRow({ box, design, tailHoles, up }: Layout, from: Point, to: Point): Where {
  const { at, fromEdge } = design.tailpiece
  const [one, other] = [from, to].map((point) => flipPoint(point, up === 1 ? 'none' : 'x')) as [Point, Point]
  if (at === 'the tail-end wall') return { view: 'tail-end-wall', from: one, to: other }
  const edge = (tailHoles[0]?.x ?? box.x1) + (at === 'the lid' ? fromEdge : -fromEdge)
  const inPlan = ({ x, y }: Point): Point => ({ x: edge - y, y: x })
  return { view: 'plan', from: inPlan(one), to: inPlan(other) }
}

function acrossOf({ contour }: Feature): readonly [Point, Point] {
  const { minX, minY, maxX, maxY } = bounds(contour)
  return [
    { x: minX, y: (minY + maxY) / 2 },
    { x: maxX, y: (minY + maxY) / 2 },
  ]
}

const WHAT: Readonly<Record<Exclude<Feature['kind'], 'outline'>, string>> = {
  opening: 'opening',
  hole: 'hole',
  recess: 'recess',
  slot: 'slot',
}

/** Openings, notches and recesses must let the tool in. */
export const toolFits: Rule = {
  name: 'tool-fits',
  title: 'Room for the tool',
  unit: 'mm',
  wants: 'least',
  limits: [],
  mendedBy: ['cutting.cutter'],
  measure(layout) {
    const found: Measurement[] = []
    if (layout.design.cutting.process === 'by hand') return found
    for (const part of partsOf(layout)) {
      const tool = toolFor(layout.design, part.id)
      if (!tool?.width) continue
      const seen = new Map<string, number>()
      for (const feature of featuresOf(part, tool)) {
        if (feature.follow === 'whole') continue
        const name = feature.kind === 'outline' ? 'its outline' : `${WHAT[feature.kind]} ${feature.of}`
        const number = (seen.get(name) ?? 0) + 1
        seen.set(name, number)
        const [from, to] = acrossOf(feature)
        found.push({
          about: [`part ${part.id}`, number === 1 ? name : `${name} ${number}`],
          measured: widestFor(feature, tool.width),
          limit: tool.width,
          grade: feature.follow === 'rounded' ? 'care' : 'stop',
          where: whereOn(layout, part, from, to),
          data: { of: feature.of, kind: feature.kind, follow: feature.follow, part: part.title },
        })
      }
    }
    return found
  },
  words({ measured, limit, data }, say, { design }) {
    const tool = design.cutting.process === 'router' ? 'cutter' : 'kerf'
    const width = say.fine(limit ?? 0)
    const room = say.fine(measured ?? 0)
    const where = `${String(data?.part)}: `
    const of = String(data?.of)
    const name = data?.kind === 'outline' ? of : `“${of}”`
    if (data?.follow === 'rounded')
      return `${where}a ${tool} of ${width} rounds the curves of ${name} more than drawn; ${room} or less follows them. Take a finer one, or draw them wider.`
    if (data?.follow === 'gone')
      return `${where}${name} has room for ${room} and the ${tool} is ${width} wide: nothing of it could be cut. Take a finer one, drill it, or make it wider.`
    if (data?.follow === 'closed')
      return `${where}a notch in ${name} lets in ${room} and the ${tool} is ${width} wide. Take a finer one, saw it by hand, or make it wider.`
    return `${where}${name} narrows to ${room} and a ${tool} of ${width} cannot pass: it would come out in pieces. Take a finer one, or make it wider.`
  },
}

/** Wood between two cuts that is thinner than this breaks or burns away. */
export const webLeft: Rule = {
  name: 'web-left',
  title: 'Web between cuts',
  unit: 'mm',
  wants: 'least',
  limits: [],
  mendedBy: ['place', 'size'],
  measure(layout) {
    const found: Measurement[] = []
    const { process, web } = layout.design.cutting
    if (process === 'by hand') return found
    for (const part of partsOf(layout)) {
      const narrowest = narrowestWeb(part)
      if (narrowest === null) continue
      found.push({
        about: [`part ${part.id}`],
        measured: narrowest.width,
        limit: web,
        grade: gradeLeast(narrowest.width, web, web),
        where: whereOn(layout, part, narrowest.from, narrowest.to),
        data: { of: narrowest.of.join('” and “'), sides: narrowest.of.length, part: part.title },
      })
    }
    return found
  },
  words({ measured, limit, grade, data }, say) {
    const between =
      data?.sides === 2 ? `between “${String(data.of)}”` : `between “${String(data?.of)}” and the edge`
    const left = `${capital(String(data?.part))}: ${between} ${say.length(measured ?? 0)} of wood are left at the narrowest`
    if (grade === 'clear') return `${left}.`
    return `${left}; ${say.length(limit ?? 0)} are wanted where a machine cuts. Move them apart, or cut one of them by hand.`
  },
}
