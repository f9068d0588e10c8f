/** The sheet as a subject: plan over rule over section, with a camera. */
import { formatLength, headOf, type Layout, wallLinesOf } from '../../geometry/index.ts'
import { useVariants } from '../state/variants.ts'
import { paintBodiesOnPlan } from './bodies.ts'
import { type Camera, fitted, type View, viewOf, zoomed } from './camera.ts'
import { fromScreen, toScreen } from './frame.ts'
import { planHit, sectionHit } from './hit.ts'
import type { Looking } from './lookings.ts'
import { type Looks, THIN, TIE } from './looks.ts'
import { paintOtherCounts } from './other-counts.ts'
import { type Pen, path, shape, slab, stroke } from './paint.ts'
import { lidFrame, paintPlan, paintStrings } from './plan.ts'
import { paintBow, paintSaddleRoom } from './pull.ts'
import { paintRule } from './rule.ts'
import { paintHeights, paintSection, paintThingsInSection } from './section.ts'
import type { Subject } from './subject.ts'
import { dragBox } from './tools/drag-box.ts'
import { dragTailpiece } from './tools/drag-tailpiece.ts'
import { dragThing } from './tools/drag-thing.ts'
import { paintVariants } from './variants-paint.ts'

export interface SheetSubject extends Subject {
  readonly camera: NonNullable<Subject['camera']>
  view(): View
}

/** `moved` is called when the view has changed and everything has to be painted again. */
export function sheetSubject(
  looking: Looking,
  isDragging: () => boolean,
  moved: (view: View) => void,
): SheetSubject {
  let view: View | null = null
  let shown: Layout | null = null
  const now = (): View => {
    if (!view) throw new Error('the sheet is asked for its view before it was arranged')
    return view
  }
  const camera = () => now().camera
  const set = (next: Camera) => {
    looking.camera = next
    looking.auto = null
    moved(now())
  }
  return {
    faces: ['lid'],
    view: now,
    arrange(layout, size) {
      shown = layout
      if (!looking.camera || (looking.auto && !isDragging()))
        looking.camera = fitted(layout, size, looking.auto ?? 'box')
      const next = viewOf(looking.camera, layout, size)
      const changed = !view || !sameView(view, next)
      view = next
      if (changed) moved(next)
    },
    frameOf(of) {
      const { plan, section } = now()
      if (of === 'plan') return plan
      if (of === 'section') return section
      return of === 'lid' && shown ? lidFrame(now(), shown) : null
    },
    groundOf: (layout) => {
      const { artwork, box, rule, scale, neck, board, headstock, nut, units, hand } = layout.design
      return [
        artwork,
        box,
        rule,
        scale,
        neck,
        board,
        headstock,
        nut,
        units,
        hand,
        layout.box.x0,
        layout.board?.x1,
        layout.saddle.x,
        layout.design.photos,
      ]
    },
    paintGround(pen, looks, layout) {
      paintPlan(pen, looks, now(), layout)
      paintTies(pen, looks, now(), layout)
      paintRule(pen, looks, now(), layout)
    },
    paintOver(pen, looks, layout) {
      const v = now()
      paintBodiesOnPlan(pen, looks, v, layout)
      if (looking.counts) paintOtherCounts(pen, looks, v, layout)
      paintStrings(pen, looks, v, layout)
      if (looking.pull) paintSaddleRoom(pen, looks, v, layout)
      if (looking.variants) paintVariants(pen, looks, v, useVariants.getState().held)
      underTheRule(pen, v, () => {
        paintSection(pen, looks, v, layout)
        paintHeights(pen, looks, v, layout, (mm) => formatLength(mm, layout.design.units, { unit: true }))
        if (looking.pull) paintBow(pen, looks, v, layout)
      })
    },
    stillOf: ({ design, box, saddle, board, neck }) => [
      ...Object.entries(design).map(([section, value]) => (section === 'things' ? null : value)),
      box.x0,
      saddle.x,
      board?.x1,
      // What a pickup takes from the neck shows in the section.
      ...neck.cuts.flatMap(({ x0, x1, top }) => [x0, x1, top]),
    ],
    paintMoving(pen, looks, layout) {
      const v = now()
      paintBodiesOnPlan(pen, looks, v, layout)
      underTheRule(pen, v, () => paintThingsInSection(pen, looks, v, layout))
    },
    hit(layout, at, near) {
      const v = now()
      if (at.y >= v.ruleTop && at.y <= v.ruleTop + 34) return null
      if (at.y < v.fold) return planHit(layout, fromScreen(v.plan, at), near / v.camera.scale)
      return sectionHit(layout, fromScreen(v.section, at), near / v.camera.scale)
    },
    drag(layout, hit, at) {
      if (hit.of === 'thing') return dragThing(layout, lidFrame(now(), layout), 'lid', hit.placed, at)
      if (hit.name === 'tailpiece') return dragTailpiece(now, at)
      if (hit.name !== 'saddle' && hit.name !== 'box') return null
      const start = camera()
      const slide = (pixels: number) => set({ ...start, x: start.x + pixels })
      looking.auto = null
      return dragBox({ holds: hit.name, view: now, slide }, at)
    },
    paintSelection,
    camera: {
      get: camera,
      set,
      zoom: (layout, at, factor) => set(zoomed(now(), layout, at, factor)),
      fit(what) {
        looking.camera = null
        looking.auto = what
        moved(now())
      },
    },
  }

  function paintSelection(pen: Pen, looks: Looks, layout: Layout, name: string): void {
    const v = now()
    const line = { stroke: looks.accent, width: 2.4 }
    const { saddle, neck, nut, board } = layout
    if (name === 'box') shape(pen, v.plan, wallLinesOf(layout).outside, line)
    if (name === 'saddle')
      slab(
        pen,
        v.plan,
        saddle.foot.minX - 2,
        saddle.foot.minY - 2,
        saddle.foot.maxX + 2,
        saddle.foot.maxY + 2,
        line,
      )
    const span = {
      neck: [nut.x1, neck.x1],
      nut: [nut.x0, nut.x1],
      board: board ? [board.x0, board.x1] : null,
    }[name]
    if (span) {
      const [from = 0, to = 0] = span
      const half = neck.halfWidths.reduce((most, one) => Math.max(most, one.half), 0)
      path(
        pen,
        v.plan,
        [
          { x: from, y: -half },
          { x: to, y: -half },
        ],
        line,
      )
      path(
        pen,
        v.plan,
        [
          { x: from, y: half },
          { x: to, y: half },
        ],
        line,
      )
    }
    if (name === 'headstock') {
      const { outline, toPlan } = headOf(layout)
      path(pen, v.plan, [...outline.vertices, ...outline.vertices.slice(0, 1)].map(toPlan), line)
    }
    if (name === 'tailpiece')
      for (const hole of layout.tailHoles) {
        const at = toScreen(v.plan, hole)
        pen.beginPath()
        pen.arc(at.x, at.y, 9, 0, 2 * Math.PI)
        pen.strokeStyle = looks.accent
        pen.lineWidth = 1.6
        pen.stroke()
      }
  }
}

/** The section hangs under the rule and must not climb over it when the plan fills the window. */
function underTheRule(pen: Pen, { fold, ruleTop, size }: View, paint: () => void): void {
  pen.save()
  pen.beginPath()
  pen.rect(0, Math.min(fold, ruleTop) + 17, size.width, size.height)
  pen.clip()
  paint()
  pen.restore()
}

/** Thin uprights that tie saddle, nut and the ends of the box in plan and section. */
function paintTies(pen: Pen, looks: Looks, v: View, layout: Layout): void {
  const { box, saddle } = layout
  const low = v.section.oy - box.baseBottom * v.section.scale
  for (const [x, colour] of [
    [0, looks.soft],
    [box.x0, looks.soft],
    [saddle.x, looks.accent],
    [box.x1, looks.soft],
  ] as const) {
    const at = v.plan.ox + x * v.plan.scale
    stroke(pen, { x: at, y: v.plan.oy }, { x: at, y: low }, { stroke: colour, width: THIN, dash: TIE })
  }
}

const sameView = (a: View, b: View) =>
  a.camera.scale === b.camera.scale &&
  a.camera.x === b.camera.x &&
  a.camera.y === b.camera.y &&
  a.section.oy === b.section.oy &&
  a.size.width === b.size.width &&
  a.size.height === b.size.height &&
  a.plan.up === b.plan.up
