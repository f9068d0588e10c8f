/** The whole instrument, from the front and from the side on one x axis, with its dimensions from the nut. */
import {
  circle,
  formatLength,
  headOf,
  type Layout,
  line,
  neckProfile,
  type Point,
  polygon,
  stringAt,
} from '../../../geometry/index.ts'
import { type Dimension, dimensions } from './dimensions.ts'
import {
  box,
  PICTURE_WIDTH,
  type Picture,
  type Shape,
  scaled,
  scaleFor,
  segment,
  shifted,
  some,
  stroke,
  through,
  words,
} from './picture.ts'

/** Room for figures beside the views, and between them. */
const ROOM_RIGHT = 24
const BETWEEN = 8

/** Plan and side of an instrument, to one scale. Never throws for the layout of a valid design. */
export function wholePicture(layout: Layout): Picture {
  const { design, neck, box: body } = layout
  const { units } = design
  const [x0, x1] = [Math.min(neck.x0, body.x0), Math.max(neck.x1, body.x1)]
  const scale = scaleFor(x1 - x0, PICTURE_WIDTH - ROOM_RIGHT - 4)
  const say = (mm: number) => formatLength(mm, units)
  const half = Math.max(body.halfWidth, ...neck.halfWidths.map((one) => one.half))
  const plan = planShapes(layout, scale)
  const top = Math.max(layout.saddle.top, layout.nut.top, layout.board?.top ?? 0, 0)
  const bottom = Math.min(body.baseBottom, ...neckProfile(layout).map(({ y }) => y))
  const side = sideShapes(layout, scale)
  const sidePaper = { minX: x0 / scale, maxX: x1 / scale, minY: bottom / scale, maxY: top / scale }
  const planBox = {
    minX: x0 / scale,
    maxX: x1 / scale,
    minY: -body.halfWidth / scale,
    maxY: body.halfWidth / scale,
  }
  const octave = layout.frets.find((fret) => Math.abs(fret.cents - 1200) < 1e-6)
  const from = (x: number): Dimension => ({ at: x / scale, text: say(Math.abs(x)) })
  const stops = [
    neck.x0,
    body.x0,
    body.x1,
    layout.saddle.x,
    ...(neck.x1 > body.x1 + 1 ? [neck.x1] : []),
    ...(octave ? [octave.fromNut] : []),
  ]
  const along = dimensions(sidePaper, 'below', 0, stops.map(from))
  const across = dimensions(planBox, 'right', planBox.minY, [
    { at: planBox.maxY, text: say(layout.real?.width ?? design.box.width) },
  ])
  const deep = dimensions(
    { ...sidePaper, minY: body.baseBottom / scale, maxY: 0 },
    'right',
    body.baseBottom / scale,
    [{ at: 0, text: say(design.box.depth) }],
  )
  const below = along.reach + 1
  const sideTall = (top - bottom) / scale
  const planAt = below + sideTall + BETWEEN + Math.max(half / scale, 4)
  const left = Math.max(along.before - Math.max(0, -x0 / scale), 1) + 1
  const shapes = [
    ...shifted([...side, ...along.shapes, ...deep.shapes], left - x0 / scale, below - bottom / scale),
    ...shifted([...plan, ...across.shapes], left - x0 / scale, planAt),
  ]
  return {
    id: 'instrument',
    title: 'The instrument',
    description:
      'The instrument from the front and below it from the side, with the distances of head, octave fret, box, saddle and tail from the nut.',
    width: left + (x1 - x0) / scale + Math.max(across.reach, deep.reach) + 7,
    height: planAt + Math.max(half / scale, 4) + 2,
    shapes,
    caption: `From the front, and from the ${layout.up === 1 ? 'bass' : 'treble'} side. Every length along it is measured from the nut. Drawn 1 : ${scale}, dimensions in ${units.display === 'mm' ? 'mm' : 'inches'}.`,
  }
}

function planShapes(layout: Layout, scale: number): Shape[] {
  const { neck, box: body, board, frets, strings, saddle, up, placed, panels } = layout
  const k = 1 / scale
  const at = (x: number, y: number): Point => ({ x: x * k, y: y * up * k })
  const across = (x: number, y0: number, y1: number) => ({ from: at(x, y0), to: at(x, y1) })
  const sideLine = (sign: number) =>
    neck.halfWidths.map(({ x, half, middle = 0 }) => at(x, middle + sign * half))
  const outline = [...sideLine(-1), ...sideLine(1).reverse()]
  const lid = box(body.x0 * k, -body.halfWidth * k, body.x1 * k, body.halfWidth * k)
  const over = neck.halfWidths.filter(({ x }) => x <= body.x0 + 1e-6)
  const boardEnd = board?.x1 ?? 0
  const head = headOf(layout)
  const onPlan = (on: Point) => {
    const { x, y } = head.toPlan(on)
    return at(x, y)
  }
  const winds = new Map(head.paths.map(({ index, to }) => [index, onPlan(to)]))
  return [
    ...some(
      (outline.length > 2 && stroke(polygonOf(outline), 'outline', 'wood')) || null,
      lid && stroke(lid, 'outline', 'wood'),
    ),
    // The neck under the lid shows as a hidden line.
    ...some(
      ...[-1, 1].map((sign) => {
        const hidden = through([
          at(body.x0, sign * (over.at(-1)?.half ?? 0)),
          at(Math.min(neck.x1, body.x1), sign * (neck.halfWidths.at(-1)?.half ?? 0)),
        ])
        return hidden && stroke(hidden, 'hidden')
      }),
    ),
    ...(board && boardEnd > 0 ? boardShapes(layout, at) : []),
    ...frets
      .filter((fret) => fret.number > 0 && fret.onWood && fret.yTreble - fret.yBass > 0.1)
      .map((fret) => {
        const { from, to } = across(fret.fromNut, fret.yBass, fret.yTreble)
        return segment(from, to, 'thin')
      }),
    ...placed
      .filter((one) => one.face === 'lid')
      .flatMap((one) =>
        one.openings.map((opening) =>
          stroke(flipped(scaled(opening, k, panels.lid.originX * k, 0), up), 'outline', 'paper'),
        ),
      ),
    ...head.tuners.flatMap(({ hole, knob }) => [
      ...(knob ? [stroke(polygonOf(knob.vertices.map(onPlan)), 'thin', 'paper')] : []),
      stroke(circle(onPlan(hole.centre), hole.radius * k), 'thin', 'paper'),
    ]),
    ...strings.flatMap((string) => {
      const end = string.tail ?? { x: saddle.x, y: string.yAtSaddle }
      const chain = through([
        ...(winds.has(string.index) ? [winds.get(string.index) as Point] : []),
        at(0, string.yAtNut),
        at(saddle.x, stringAt(string, saddle.x, saddle.x)),
        at(end.x, end.y),
      ])
      return chain ? [stroke(chain, 'thin')] : []
    }),
    ...some(
      (() => {
        const { minX, maxX, minY, maxY } = saddle.foot
        const foot = box(
          minX * k,
          Math.min(minY * up, maxY * up) * k,
          maxX * k,
          Math.max(minY * up, maxY * up) * k,
        )
        return foot && stroke(foot, 'outline', 'dark')
      })(),
    ),
    segment(
      at(0, -(neck.halfWidths.find(({ x }) => x >= 0)?.half ?? 5)),
      at(0, neck.halfWidths.find(({ x }) => x >= 0)?.half ?? 5),
      'outline',
    ),
    words({ x: 0, y: (Math.max(...neck.halfWidths.map((one) => one.half)) + 3) * k + 0.6 }, 'nut', {
      anchor: 'middle',
      size: 2.8,
    }),
  ]
}

function boardShapes({ board, frets, neck }: Layout, at: (x: number, y: number) => Point): Shape[] {
  if (!board) return []
  const real = frets.filter((fret) => fret.fromNut >= board.x0 && fret.fromNut <= board.x1)
  const first = neck.halfWidths.find(({ x }) => x >= 0)?.half ?? 0
  const last = real.at(-1)
  const wide = last ? (last.yTreble - last.yBass) / 2 : first
  if (first <= 0 || wide <= 0) return []
  return [
    stroke(
      polygonOf([at(board.x0, -first), at(board.x1, -wide), at(board.x1, wide), at(board.x0, first)]),
      'outline',
      'dark',
    ),
  ]
}

function sideShapes(layout: Layout, scale: number): Shape[] {
  const { box: body, board, saddle, nut, strings, design } = layout
  const k = 1 / scale
  const at = (x: number, z: number): Point => ({ x: x * k, y: z * k })
  const blank = neckProfile(layout).map(({ x, y }) => at(x, y))
  const { lid, base } = design.box
  const [string] = strings
  const tail = string?.tail
  const bodyBox = box(body.x0 * k, body.baseBottom * k, body.x1 * k, 0)
  const boardBox = board && box(board.x0 * k, board.bottom * k, board.x1 * k, board.top * k)
  const saddleBox = box(saddle.foot.minX * k, 0, saddle.foot.maxX * k, saddle.top * k)
  const nutBox = box(nut.x0 * k, nut.bottom * k, nut.x1 * k, nut.top * k)
  const winds = string?.post?.winds
  const path = through([
    ...(winds ? [at(winds.x, winds.z)] : []),
    at(0, nut.top),
    at(saddle.x, saddle.top),
    ...(tail ? [at(tail.x, tail.z)] : []),
  ])
  return some(
    bodyBox && stroke(bodyBox, 'outline', 'wood'),
    stroke(line(at(body.x0, -lid.thickness), at(body.x1, -lid.thickness)), 'thin'),
    stroke(
      line(at(body.x0, body.baseBottom + base.thickness), at(body.x1, body.baseBottom + base.thickness)),
      'thin',
    ),
    blank.length > 2 ? stroke(polygonOf(blank), 'outline', 'wood') : null,
    boardBox && stroke(boardBox, 'outline', 'dark'),
    saddleBox && stroke(saddleBox, 'outline', 'dark'),
    nutBox && stroke(nutBox, 'outline', 'dark'),
    path && stroke(path, 'thin'),
  )
}

const flipped = (contour: Parameters<typeof scaled>[0], up: 1 | -1) => {
  if (up === 1) return contour
  if (contour.shape === 'circle') return { ...contour, centre: { x: contour.centre.x, y: -contour.centre.y } }
  return {
    ...contour,
    vertices: contour.vertices.map((one) => ({ x: one.x, y: -one.y, bulge: -one.bulge })),
  }
}

/** A closed chain that may touch or cross itself: a picture of what cannot be built is drawn as it is. */
const polygonOf = (points: readonly Point[]) => {
  const open = through(points)
  return open
    ? { ...open, closed: true }
    : polygon([
        { x: 0, y: 0 },
        { x: 1, y: 0 },
        { x: 0, y: 1 },
      ])
}
