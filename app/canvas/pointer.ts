/** Pointers, wheel and fingers on a drawing: finds what lies under them and takes the fitting tool in hand. */
import { select, useBench } from '../state/index.ts'
import { panned } from './camera.ts'
import type { Hit } from './hit.ts'
import type { Scene } from './scene.ts'
import { pan } from './tools/pan.ts'
import { press } from './tools/press.ts'
import type { PointerAt } from './tools/tool.ts'

/** How near a pointer must come to something small, pixels. */
const NEAR = { mouse: 5, touch: 20 }

/** Listens on the scene's element; the answer stops listening. */
export function listen(scene: Scene): () => void {
  const { element, subject } = scene
  const fingers = new Map<number, PointerAt>()
  const stop = new AbortController()
  const { signal } = stop
  let space = false

  const at = (event: PointerEvent | WheelEvent): PointerAt => {
    const box = element.getBoundingClientRect()
    const touch = 'pointerType' in event && event.pointerType === 'touch'
    return { x: event.clientX - box.left, y: event.clientY - box.top, free: event.altKey, touch }
  }
  const hit = (here: PointerAt): Hit | null =>
    subject.hit(scene.layout(), here, here.touch ? NEAR.touch : NEAR.mouse)

  const down = (event: PointerEvent) => {
    const here = at(event)
    element.setPointerCapture(event.pointerId)
    if (here.touch) fingers.set(event.pointerId, here)
    if (fingers.size === 2) {
      if (scene.holds) scene.drop('cancel')
      return
    }
    if (fingers.size > 2 || (event.button !== 0 && event.button !== 1)) return
    const { camera } = subject
    const sheet = () => (camera ? pan(camera.get(), here, camera.set) : null)
    if (space || event.button === 1) {
      event.preventDefault()
      const tool = sheet()
      if (tool) scene.hold(tool)
      return
    }
    const found = hit(here)
    const id = found && (found.of === 'thing' ? found.placed.thing.id : found.name)
    scene.hold(
      press(
        here,
        found ? 'grab' : 'default',
        () => select(id),
        () => {
          const movable = found && canMove(found) ? subject.drag(scene.layout(), found, here) : null
          if (movable) select(id)
          return movable ?? sheet()
        },
      ),
    )
  }

  const move = (event: PointerEvent) => {
    const here = at(event)
    const before = fingers.get(event.pointerId)
    if (before) fingers.set(event.pointerId, here)
    if (fingers.size === 2 && before) {
      pinch(before, here, [...fingers].find(([pointer]) => pointer !== event.pointerId)?.[1])
      return
    }
    if (scene.holds) {
      scene.point(here)
      return
    }
    const found = here.touch ? null : hit(here)
    element.style.cursor = space ? 'grab' : found ? (canMove(found) ? 'grab' : 'pointer') : ''
  }

  const pinch = (before: PointerAt, now: PointerAt, other: PointerAt | undefined) => {
    const { camera } = subject
    if (!camera || !other) return
    const apart = (a: PointerAt) => Math.hypot(a.x - other.x, a.y - other.y)
    const middle = { x: (now.x + other.x) / 2, y: (now.y + other.y) / 2 }
    camera.set(panned(camera.get(), (now.x - before.x) / 2, (now.y - before.y) / 2))
    if (apart(before) > 4) camera.zoom(scene.layout(), middle, apart(now) / apart(before))
  }

  const up = (event: PointerEvent) => {
    fingers.delete(event.pointerId)
    if (!scene.holds) return
    if (event.type === 'pointercancel') scene.drop('cancel')
    else {
      scene.point(at(event))
      scene.drop('finish')
    }
  }

  const wheel = (event: WheelEvent) => {
    const { camera } = subject
    if (!camera) return
    event.preventDefault()
    if (scene.holds) return
    const lines = event.deltaMode === WheelEvent.DOM_DELTA_LINE ? 16 : 1
    if (event.shiftKey) camera.set(panned(camera.get(), -(event.deltaX + event.deltaY) * lines, 0))
    else
      camera.zoom(
        scene.layout(),
        at(event),
        Math.exp(-event.deltaY * lines * (event.ctrlKey ? 0.01 : 0.0016)),
      )
  }

  const key = (event: KeyboardEvent) => {
    if (event.code !== 'Space') return
    space = event.type === 'keydown' && !isField(event.target)
    if (space && document.activeElement === element) event.preventDefault()
  }

  element.addEventListener('pointerdown', down, { signal })
  element.addEventListener('pointermove', move, { signal })
  element.addEventListener('pointerup', up, { signal })
  element.addEventListener('pointercancel', up, { signal })
  element.addEventListener('wheel', wheel, { signal, passive: false })
  window.addEventListener('keydown', key, { signal })
  window.addEventListener('keyup', key, { signal })
  return () => stop.abort()
}

/** The box fills the sheet, so it moves only once it is selected: a drag on it means the sheet before. */
function canMove(found: Hit): boolean {
  if (found.of === 'thing' || found.name === 'saddle' || found.name === 'tailpiece') return true
  return found.name === 'box' && useBench.getState().selection === 'box'
}

/** Does typing belong to this element? */
export const isField = (target: EventTarget | null): boolean =>
  target instanceof HTMLElement &&
  (target.isContentEditable || /^(INPUT|SELECT|TEXTAREA)$/.test(target.tagName))
