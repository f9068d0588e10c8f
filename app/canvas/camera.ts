/**
 * Where the sheet lies under the window: plan over rule over section, all on one x axis.
 *
 * A camera is three numbers: pixels per millimetre, and the pixel at which the nut's edge meets the centreline in
 * the plan. Rule and section hang below the plan. The drawing's element carries them for whoever looks at the page
 * from outside: `data-scale`, `data-origin-x`, `data-origin-y` (a place x, y in the instrument's plan is on the
 * screen at `originX + x * scale`, `originY - up * y * scale`, with `data-up` 1 or -1) and `data-section-y`
 * (height z in the section is at `sectionY - z * scale`); pixels count from the element's top left corner.
 * The drawing of the walls and the base carries `data-faces`: by face the `Frame` (see frame.ts) it is drawn in, as JSON.
 */
import { faceHeight, type Layout } from '../../geometry/index.ts'
import type { Frame } from './frame.ts'

export interface Camera {
  readonly scale: number
  readonly x: number
  readonly y: number
}

export interface Size {
  readonly width: number
  readonly height: number
}

/** The sheet as it lies on the screen now. */
export interface View {
  readonly camera: Camera
  readonly size: Size
  /** The instrument's plan: x along, y to the treble. */
  readonly plan: Frame
  /** The centreline section: x along, y is the height over the lid. */
  readonly section: Frame
  /** Top of the rule where it is drawn: it stays in the window when the plan is larger than that. */
  readonly ruleTop: number
  /** The line between plan and section if the rule were not held in the window. */
  readonly fold: number
}

export const RULE_HEIGHT = 34
const ABOVE_PLAN = 18
const ABOVE_RULE = 26
const ABOVE_SECTION = 26
const BELOW_SECTION = 22
const BESIDE = 34
const LEAST_SCALE = 0.15
const MOST_SCALE = 60
/** A fitted view does not blow a small box up beyond this: pixels per millimetre. */
const MOST_FITTED = 7

/** Half the width of the plan: the widest of box, neck and head. */
export function halfPlan(layout: Layout): number {
  return layout.neck.halfWidths.reduce((most, one) => Math.max(most, one.half), layout.box.halfWidth)
}

/** Highest and lowest of the section. */
export function sectionReach(layout: Layout): { top: number; bottom: number } {
  const { saddle, nut, box, neck } = layout
  return {
    top: Math.max(saddle.top, nut.top) + 2,
    bottom: Math.min(box.baseBottom, neck.bottom, headLow(layout)),
  }
}

/** How low the end of the head lies: only a tilted one falls below its own face. */
function headLow({ design, neck, nut }: Layout): number {
  const head = neck.stretches.find((one) => one.of === 'headstock')
  const deep = head ? head.top - head.bottom : 0
  return faceHeight(design, nut.x0, neck.x0) - deep
}

export function viewOf(camera: Camera, layout: Layout, size: Size): View {
  const { scale, x, y } = camera
  const ruleFree = y + halfPlan(layout) * scale + ABOVE_RULE
  const fold = ruleFree + RULE_HEIGHT / 2
  const sectionY = ruleFree + RULE_HEIGHT + ABOVE_SECTION + sectionReach(layout).top * scale
  return {
    camera,
    size,
    plan: { ox: x, oy: y, scale, right: 1, up: layout.up },
    section: { ox: x, oy: sectionY, scale, right: 1, up: 1 },
    ruleTop: Math.min(Math.max(ruleFree, 0), Math.max(0, size.height - RULE_HEIGHT)),
    fold,
  }
}

export type Fitting = 'box' | 'all'

/** The camera that shows the whole of the box, or of the instrument, with rule and section. */
export function fitted(layout: Layout, size: Size, what: Fitting): Camera {
  const { box, neck, board } = layout
  const tail = Math.max(box.x1, neck.x1)
  const boxFrom = Math.min(box.x0, board ? Math.min(board.x1, box.x0) : box.x0)
  const [from, to] =
    what === 'all'
      ? [Math.min(neck.x0, box.x0), tail]
      : [boxFrom - 0.12 * (box.x1 - box.x0), Math.min(tail, box.x1 + 0.25 * (box.x1 - box.x0))]
  const reach = sectionReach(layout)
  const tall = 2 * halfPlan(layout) + reach.top - reach.bottom
  const fixed = ABOVE_PLAN + ABOVE_RULE + RULE_HEIGHT + ABOVE_SECTION + BELOW_SECTION
  const scale = clampScale(
    Math.min((size.width - 2 * BESIDE) / (to - from), (size.height - fixed) / tall, MOST_FITTED),
  )
  const spare = Math.max(0, size.height - fixed - tall * scale)
  // Room to spare beside the box goes to the neck, as far as there is neck to show.
  const beside = size.width - 2 * BESIDE - (to - from) * scale
  const neckLeft = Math.max(0, from - Math.min(neck.x0, box.x0)) * scale
  return {
    scale,
    x: size.width - BESIDE - to * scale - Math.max(beside / 2 - neckLeft / 2, 0),
    y: ABOVE_PLAN + spare / 2 + halfPlan(layout) * scale,
  }
}

const clampScale = (scale: number) => Math.min(MOST_SCALE, Math.max(LEAST_SCALE, scale))

/** Zooms about a pixel: what lies under it stays there, be it in the plan, on the rule or in the section. */
export function zoomed(view: View, layout: Layout, at: { x: number; y: number }, factor: number): Camera {
  const { camera, section } = view
  const scale = clampScale(camera.scale * factor)
  const k = scale / camera.scale
  const x = at.x - (at.x - camera.x) * k
  if (at.y < view.fold - RULE_HEIGHT / 2) return { scale, x, y: at.y - (at.y - camera.y) * k }
  const half = halfPlan(layout)
  if (at.y < view.fold + RULE_HEIGHT / 2) return { scale, x, y: camera.y + half * (camera.scale - scale) }
  const height = (section.oy - at.y) / camera.scale
  const top = sectionReach(layout).top
  const fixed = ABOVE_RULE + RULE_HEIGHT + ABOVE_SECTION
  return { scale, x, y: at.y + height * scale - fixed - (half + top) * scale }
}

export const panned = (camera: Camera, dx: number, dy: number): Camera => ({
  ...camera,
  x: camera.x + dx,
  y: camera.y + dy,
})
