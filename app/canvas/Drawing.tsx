/** The drawing that stays on screen: plan over rule over section. */
import { useEffect, useMemo, useRef } from 'react'
import { check, solve } from '../../geometry/index.ts'
import { useBench } from '../state/index.ts'
import { useVariants } from '../state/variants.ts'
import { drawingAtHand } from './at-hand.ts'
import type { Fitting, View } from './camera.ts'
import { dragging } from './dragging.ts'
import { toScreen } from './frame.ts'
import { Layers } from './Layers.tsx'
import { lookingOf } from './lookings.ts'
import type { Scene } from './scene.ts'
import { sheetSubject } from './sheet.ts'

export interface DrawingProps {
  readonly place: string
  readonly opens: Fitting
  /** Shows what the strings do. */
  readonly pull?: boolean
  /** Shows the ways of other counts of strings. */
  readonly counts?: boolean
}

export function Drawing({ place, opens, pull = false, counts = false }: DrawingProps) {
  const scene = useRef<Scene>(null)
  const subject = useMemo(() => {
    return sheetSubject(lookingOf(place, opens), dragging.isOn, (view) => {
      scene.current?.viewMoved()
      if (scene.current) stamp(scene.current.element, view)
    })
  }, [place, opens])

  useEffect(() => {
    const { camera } = subject
    const forget = drawingAtHand.set({
      fit: (what) => {
        camera.fit(what)
        scene.current?.schedule()
      },
      zoom: (factor) => {
        const made = scene.current
        if (made)
          camera.zoom(made.layout(), { x: made.element.clientWidth / 2, y: subject.view().plan.oy }, factor)
      },
    })
    const unlit = useBench.subscribe((state, before) => {
      if (state.litFinding && state.litFinding !== before.litFinding)
        bringIntoView(state.litFinding, scene.current, subject)
    })
    const unheld = useVariants.subscribe(() => scene.current?.viewMoved())
    return () => {
      forget()
      unlit()
      unheld()
    }
  }, [subject])

  useEffect(() => {
    const looking = lookingOf(place, opens)
    if (looking.pull === pull && looking.counts === counts) return
    looking.pull = pull
    looking.counts = counts
    scene.current?.viewMoved()
  }, [place, opens, pull, counts])

  return (
    <Layers
      ref={scene}
      subject={subject}
      label="Drawing: plan from the front, rule, and section on the centreline"
    />
  )
}

/** Numbers from which a place on the instrument can be found on the screen; see camera.ts. */
function stamp(element: HTMLElement, view: View): void {
  element.dataset.scale = String(view.camera.scale)
  element.dataset.originX = String(view.camera.x)
  element.dataset.originY = String(view.camera.y)
  element.dataset.up = String(view.plan.up)
  element.dataset.sectionY = String(view.section.oy)
}

const MARGIN = 60

/** Pans, without zooming, to a finding that lies outside the window. */
function bringIntoView(key: string, scene: Scene | null, subject: ReturnType<typeof sheetSubject>): void {
  if (!scene?.ready) return
  const finding = check(solve(useBench.getState().design)).find((one) => one.key === key)
  const frame = finding && subject.frameOf(finding.where.view)
  if (!finding || !frame) return
  const a = toScreen(frame, finding.where.from)
  const b = toScreen(frame, finding.where.to)
  const at = { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 }
  const { size, camera } = subject.view()
  const off = (value: number, most: number) =>
    value < MARGIN || value > most - MARGIN ? most / 2 - value : 0
  const dx = off(at.x, size.width)
  const dy = off(at.y, size.height)
  if (dx !== 0 || dy !== 0) subject.camera.set({ ...camera, x: camera.x + dx, y: camera.y + dy })
}
