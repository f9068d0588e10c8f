/** What every file made for a saw or a printer must say, read again by readers that are not ours: 1 µm, same bytes. */
import { type Drawing, drawPart } from '../../exporters/drawing/drawing.ts'
import { r12Name } from '../../exporters/dxf/r12.ts'
import {
  type DxfRelease,
  followed,
  planPrint,
  printPdf,
  STANDARD_SETUP,
  templates,
  writeDxf,
  writeSvg,
} from '../../exporters/index.ts'
import { idFrom } from '../../exporters/svg/element.ts'
import {
  type Bounds,
  bounds,
  type Design,
  type Part,
  type Point,
  partsOf,
  solve,
} from '../../geometry/index.ts'
import { drawnPdf } from '../support/drawnPdf.ts'
import { drawnSvg, type SvgShape } from '../support/drawnSvg.ts'
import { type ReadDxf, readWithDxf, readWithDxfParser } from '../support/readDxf.ts'
import { drawnOn, readAllByEzdxf } from '../support/readEzdxf.ts'
import { type Drawn, drawnError, drawnOf, isCircle, worstError } from '../support/segments.ts'
import { type Piece, strayed } from '../support/trace.ts'

/** The promise of every template. */
const MICROMETRE = 0.001

export interface ExportLaw {
  readonly name: string
  readonly wrong: (design: Design) => readonly string[] | Promise<readonly string[]>
  readonly every?: number
}

export const EXPORT_LAWS: readonly ExportLaw[] = [
  { name: 'SVG, read by saxes and makerjs, is true to a micrometre', wrong: svgIsTrue },
  {
    name: 'DXF, read by dxf and dxf-parser, is true to a micrometre',
    wrong: (one) => dxfIsTrue(one, '2000'),
  },
  { name: 'DXF of release 12, read by both, is true to a micrometre', wrong: (one) => dxfIsTrue(one, '12') },
  { name: 'PDF, read by pdf-lib, is true to a micrometre', wrong: pdfIsTrue },
  { name: 'the same design gives the same bytes', wrong: sameBytes },
]

/** Parts as they are drawn, and once more as the tool follows them where there is one. */
export function drawnParts(design: Design): readonly Part[] {
  const parts = partsOf(solve(design))
  if (design.cutting.process === 'by hand') return parts
  const ways = followed(parts, design)
  for (const sentence of [...ways.byHand, ...ways.wrong])
    if (!/^\S.*\.$/su.test(sentence)) throw new Error(`no sentence: ${sentence}`)
  return [...parts, ...ways.parts]
}

const titled = (design: Design) => ({ title: design.title, line: design.notes.slice(0, 80) })

const contoursIn = (drawing: Drawing) => drawing.layers.filter(({ contours }) => contours.length > 0)

function dxfIsTrue(design: Design, release: DxfRelease): string[] {
  return drawnParts(design).flatMap((part) => {
    const text = writeDxf(part, { ...titled(design), release })
    const layers = contoursIn(drawPart(part, 'mm'))
    return [readWithDxf(text), readWithDxfParser(text)].flatMap((file, reader) =>
      differencesOf(file, layers, release).map((one) => `${part.id}, reader ${reader}: ${one}`),
    )
  })
}

/** The same read by ezdxf, for some designs at once. */
export function wrongByEzdxf(designs: readonly Design[]): string[] {
  const releases: readonly DxfRelease[] = ['2000', '12']
  const files = designs.flatMap((design) =>
    drawnParts(design).flatMap((part) => releases.map((release) => ({ design, part, release }))),
  )
  const texts = files.map(({ design, part, release }) => writeDxf(part, { ...titled(design), release }))
  return readAllByEzdxf(texts).flatMap((found, index) => {
    const { part, release } = files[index] as (typeof files)[number]
    const names = new Set(
      found.entities.filter((one) => one.circle ?? one.segments).map(({ layer }) => layer),
    )
    const contours = new Map([...names].map((name) => [name, drawnOn(found, name)]))
    const wrong = differencesOf({ contours }, contoursIn(drawPart(part, 'mm')), release)
    return [...found.errors, ...found.fixes, ...wrong].map((one) => `${part.id}, release ${release}: ${one}`)
  })
}

/** How a file that was read differs from the layers that were wanted. */
export function differencesOf(
  file: Pick<ReadDxf, 'contours'>,
  layers: Drawing['layers'],
  release: DxfRelease,
): string[] {
  const nameOf = (name: string) => (release === '12' ? r12Name(name) : name)
  const wanted = new Map<string, Drawn[]>()
  for (const { name, contours } of layers)
    wanted.set(nameOf(name), [...(wanted.get(nameOf(name)) ?? []), ...contours.map(drawnOf)])
  const names = [...file.contours.keys()].sort().join()
  if (names !== [...wanted.keys()].sort().join()) return [`layers ${names}`]
  return [...wanted].flatMap(([name, drawn]) => {
    const error = inOrder(drawn, file.contours.get(name) ?? [])
    return error < MICROMETRE ? [] : [`${name} is off by ${error}`]
  })
}

/** Files keep the order, so each is held against its own; only where that fails is the nearest looked for. */
function inOrder(wanted: readonly Drawn[], found: readonly Drawn[]): number {
  if (wanted.length !== found.length) return Number.POSITIVE_INFINITY
  const worst = Math.max(0, ...wanted.map((one, index) => drawnError(one, found[index] as Drawn)))
  return worst < MICROMETRE ? worst : worstError(wanted, found)
}

function svgIsTrue(design: Design): string[] {
  return drawnParts(design).flatMap((part) => {
    const groups = drawnSvg(writeSvg(part, titled(design)))
    const drawing = drawPart(part, 'mm')
    const shapes = (name: string) => groups.get(idFrom(part.id, name)) ?? []
    const outside = contoursIn(drawing).filter(({ kind }) => kind === 'cut-outside')
    const [first] = outside
    const read = shapes(first?.name ?? '')
    if (!first || read.length !== first.contours.length) return [`${part.id}: no outline`]
    const shift = between(boxOf(read), joined(first.contours.map(bounds)))
    return contoursIn(drawing).flatMap(({ name, contours }) => {
      const found = shapes(name)
      if (found.length !== contours.length) return [`${part.id}: ${found.length} lines on ${name}`]
      const error = Math.max(
        ...contours.map((one, index) => shapeError(drawnOf(one), moved(found[index] as SvgShape, shift))),
      )
      return error < MICROMETRE ? [] : [`${part.id}: ${name} is off by ${error}`]
    })
  })
}

function shapeError(wanted: Drawn, found: SvgShape): number {
  if ('pieces' in found) return strayed(wanted, found.pieces)
  return isCircle(wanted) ? drawnError(wanted, found.circle) : Number.POSITIVE_INFINITY
}

function moved(shape: SvgShape, by: Point): SvgShape {
  const to = ({ x, y }: Point): Point => ({ x: x + by.x, y: y + by.y })
  if ('circle' in shape) return { circle: { ...shape.circle, centre: to(shape.circle.centre) } }
  return {
    box: shape.box,
    pieces: shape.pieces.map(({ from, inner, to: end }) => ({
      from: to(from),
      inner: inner.map(to),
      to: to(end),
    })),
  }
}

const between = (from: Bounds, to: Bounds): Point => ({ x: to.minX - from.minX, y: to.minY - from.minY })

const joined = (all: readonly Bounds[]): Bounds => ({
  minX: Math.min(...all.map((one) => one.minX)),
  maxX: Math.max(...all.map((one) => one.maxX)),
  minY: Math.min(...all.map((one) => one.minY)),
  maxY: Math.max(...all.map((one) => one.maxY)),
})

function boxOf(shapes: readonly SvgShape[]): Bounds {
  return joined(
    shapes.map((shape) => ('box' in shape ? shape.box : bounds({ shape: 'circle', ...shape.circle }))),
  )
}

async function pdfIsTrue(design: Design): Promise<string[]> {
  const parts = drawnParts(design)
  const plan = planPrint(parts, STANDARD_SETUP)
  if (!plan.ok) return [plan.sentence]
  const { bytes, pages } = await printPdf(plan.plan, titled(design))
  const file = await drawnPdf(bytes)
  const wrong = file.pages === pages ? [] : [`${file.pages} pages instead of ${pages}`]
  // Points of a PDF in a millimetre: 72 to the inch (ISO 32000-1, 8.3.2.3).
  for (const [x, y] of file.stretches)
    if (Math.abs(x - 72 / 25.4) > 1e-8 || Math.abs(y - 72 / 25.4) > 1e-8) wrong.push(`stretched ${x} ${y}`)
  plan.plan.parts.forEach(({ drawing, part }, index) => {
    const lines = file.drawings.get(`Part-${index}`)
    wrong.push(...missing(drawing, lines ?? []).map((one) => `${part.id}: ${one}`))
  })
  return wrong
}

/** Lines of a drawing that do not come, in their order, among the lines of a sheet; and lines that nobody wanted. */
function missing(drawing: Drawing, lines: readonly (readonly Piece[])[]): string[] {
  let next = 0
  const wrong: string[] = []
  for (const { name, contours } of contoursIn(drawing)) {
    for (const contour of contours.map(drawnOf)) {
      const from = next
      while (next < lines.length && !(strayed(contour, lines[next] ?? []) < MICROMETRE)) next++
      if (next === lines.length) {
        const least = Math.min(...lines.slice(from).map((line) => strayed(contour, line)))
        wrong.push(`a line of ${name} is off by ${least}`)
        next = from
        continue
      }
      // Crosses on holes and lines to join sheets on stand between: each is one straight stroke.
      if (lines.slice(from, next).some((line) => line.length > 1)) wrong.push(`${name}: a line nobody wanted`)
      next++
    }
  }
  return wrong
}

async function sameBytes(design: Design): Promise<string[]> {
  const made = async (one: Design) => {
    const parts = partsOf(solve(one))
    const files = templates(parts, { ...titled(one), formats: ['svg', 'dxf'] })
    const plan = planPrint(parts.slice(0, 2), STANDARD_SETUP)
    const printed = plan.ok
      ? Buffer.from((await printPdf(plan.plan, titled(one))).bytes).toString('latin1')
      : ''
    return JSON.stringify([files, printed])
  }
  return (await made(design)) === (await made(structuredClone(design))) ? [] : ['other bytes']
}
