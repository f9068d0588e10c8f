/** Pointers, wheel and fingers on a drawing: finds what lies under them and takes the fitting tool in hand. */
import type { Placed } from '../../geometry/index.ts'
import { announce } from '../parts/Announcer.tsx'
import { focusThingField } from '../parts/focus-field.ts'
import { select, selectAll, selectedThings, toggleSelected, useBench, withGroups } from '../state/index.ts'
import { panned } from './camera.ts'
import { type Handle, handleAt, handlesOf, NEAR_HANDLE, withHandles } from './handles.ts'
import { openHere } from './here.ts'
import type { Hit } from './hit.ts'
import { isField } from './is-field.ts'
import { endTakenAt, moveEnd } from './measure-ends.ts'
import { measureFrom } from './measuring.ts'
import { modeNow } from './mode.ts'
import type { Scene } from './scene.ts'
import { frameChoose } from './tools/frame-choose.ts'
import { pan } from './tools/pan.ts'
import { press } from './tools/press.ts'
import { resizeThing } from './tools/resize.ts'
import type { PointerAt, Tool } from './tools/tool.ts'
import { turnThing } from './tools/turn.ts'

/** How near a pointer must come to something small, pixels. */
const NEAR = { mouse: 5, touch: 20 }
/** A finger that rests so long, in milliseconds, asks for what a right click gives. */
const LONG_PRESS = 550

interface Grasp {
  readonly placed: Placed
  readonly handle: Handle
}

/** Listens on the scene's element; the answer stops listening. */
export function listen(scene: Scene): () => void {
  const { element, subject } = scene
  const fingers = new Map<number, PointerAt>()
  const stop = new AbortController()
  const { signal } = stop
  let space = false
  let resting = 0
  /** Fingers have pinched: none of them means anything else until all are up. */
  let pinched = false

  const at = (event: PointerEvent | WheelEvent | MouseEvent): PointerAt => {
    const box = element.getBoundingClientRect()
    const touch = 'pointerType' in event && event.pointerType === 'touch'
    return {
      x: event.clientX - box.left,
      y: event.clientY - box.top,
      free: event.altKey,
      shift: event.shiftKey,
      touch,
    }
  }
  const nearOf = (here: PointerAt) => (here.touch ? NEAR.touch : NEAR.mouse)
  const hit = (here: PointerAt): Hit | null => subject.hit(scene.layout(), here, nearOf(here))

  const grasp = (here: PointerAt): Grasp | null => {
    const { selection, also } = useBench.getState()
    const placed = withHandles(scene.layout(), selection, also)
    const frame = placed && subject.faces.includes(placed.face) ? subject.frameOf(placed.face) : null
    if (!placed || !frame) return null
    const handle = handleAt(
      handlesOf(placed, frame),
      here,
      here.touch ? NEAR_HANDLE.touch : NEAR_HANDLE.mouse,
    )
    if (!handle) return null
    // A finger is broad: on the body of a thing it means the thing, not the handle beside it.
    if (here.touch && Math.hypot(handle.at.x - here.x, handle.at.y - here.y) > NEAR_HANDLE.mouse) {
      const under = hit({ ...here, touch: false })
      if (under?.of === 'thing' && under.placed.thing.id === placed.thing.id) return null
    }
    return { placed, handle }
  }

  const pull = ({ placed, handle }: Grasp, here: PointerAt): Tool => {
    const frame = subject.frameOf(placed.face)
    if (!frame) throw new Error(`a handle was taken of something that is not drawn: ${placed.thing.id}`)
    const layout = scene.layout()
    return handle.does === 'turn'
      ? turnThing(layout, frame, placed, here)
      : resizeThing(layout, frame, placed, handle, here)
  }

  const down = (event: PointerEvent) => {
    const here = at(event)
    element.setPointerCapture(event.pointerId)
    if (here.touch) fingers.set(event.pointerId, here)
    window.clearTimeout(resting)
    if (fingers.size >= 2) {
      pinched = true
      if (scene.holds) scene.drop('cancel')
      return
    }
    if (event.button !== 0 && event.button !== 1) return
    const { camera } = subject
    const sheet = () => (camera ? pan(camera.get(), here, camera.set) : null)
    if (space || event.button === 1) {
      event.preventDefault()
      const tool = sheet()
      if (tool) scene.hold(tool)
      return
    }
    if (modeNow() === 'measure') {
      const measure = measureFrom(scene, here)
      if (measure) scene.hold(measure)
      return
    }
    const frame = () =>
      frameChoose(
        scene.layout,
        subject.faces,
        (face) => subject.frameOf(face),
        here,
        here.shift ? selectedThings() : [],
      )
    if (modeNow() === 'frame') {
      scene.hold(frame())
      return
    }
    const taken = grasp(here)
    if (taken) {
      scene.hold(
        press(
          here,
          'grab',
          () => focusField(taken),
          () => pull(taken, here),
        ),
      )
      return
    }
    const found = hit(here)
    const id = found && (found.of === 'thing' ? found.placed.thing.id : found.name)
    const end = endTakenAt(scene, here, found?.of !== 'thing')
    if (end) {
      scene.hold(
        press(
          here,
          'move',
          () => choose(id, here),
          () => moveEnd(scene, end, here),
        ),
      )
      return
    }
    if (here.touch) resting = window.setTimeout(() => rest(here, id), LONG_PRESS)
    scene.hold(
      press(
        here,
        found ? 'grab' : 'default',
        () => choose(id, here),
        () => {
          window.clearTimeout(resting)
          if (here.shift && !found) return frame()
          if (found?.of === 'structure' && here.shift && found.name === 'box') return frame()
          const movable = found && canMove(found) ? subject.drag(scene.layout(), found, here) : null
          if (movable && id !== null && !selectedThings().includes(id)) select(id)
          else if (found && isLocked(found)) tellLocked(found)
          return movable ?? sheet()
        },
      ),
    )
  }

  const choose = (id: string | null, here: PointerAt) => {
    if (id === null) {
      if (!here.shift) select(null)
      return
    }
    if (here.shift) {
      toggleSelected(id)
      return
    }
    const { design } = useBench.getState()
    const all = withGroups(design, [id])
    if (all.length > 1) selectAll(all)
    else select(id)
  }

  /** A finger rested: what a right click gives. */
  const rest = (here: PointerAt, id: string | null) => {
    scene.drop('cancel')
    pinched = true
    if (id !== null && !selectedThings().includes(id)) choose(id, here)
    showHere(here)
  }

  const showHere = (here: PointerAt) => {
    const box = element.getBoundingClientRect()
    openHere({ x: here.x + box.left, y: here.y + box.top, from: element })
  }

  const menu = (event: MouseEvent) => {
    event.preventDefault()
    // A finger that rests brings this event too in some browsers; the menu is open by then.
    if (pinched || fingers.size > 0) return
    const byKey = event.clientX === 0 && event.clientY === 0
    const here = byKey ? middleOf(element) : at(event)
    const found = byKey ? null : hit(here)
    const id = found && (found.of === 'thing' ? found.placed.thing.id : found.name)
    if (id !== null && !selectedThings().includes(id)) choose(id, { ...here, shift: false })
    showHere(here)
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
    if (pinched) return
    element.style.cursor = cursorAt(here)
  }

  const cursorAt = (here: PointerAt): string => {
    if (space) return 'grab'
    if (modeNow() !== 'hold') return 'crosshair'
    if (here.touch) return ''
    const taken = grasp(here)
    if (taken) return taken.handle.does === 'turn' ? 'grab' : taken.handle.along ? 'ew-resize' : 'ns-resize'
    const found = hit(here)
    if (endTakenAt(scene, here, found?.of !== 'thing')) return 'move'
    return found ? (canMove(found) ? 'grab' : 'pointer') : ''
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
    window.clearTimeout(resting)
    if (fingers.size === 0) pinched = false
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
  element.addEventListener('contextmenu', menu, { signal })
  element.addEventListener('wheel', wheel, { signal, passive: false })
  window.addEventListener('keydown', key, { signal })
  window.addEventListener('keyup', key, { signal })
  return () => {
    window.clearTimeout(resting)
    stop.abort()
  }
}

const middleOf = (element: HTMLElement): PointerAt => ({
  x: element.clientWidth / 2,
  y: element.clientHeight / 2,
  free: false,
  shift: false,
  touch: false,
})

/** A handle pressed and let go is typed: the field that says the same gets the keyboard. */
function focusField({ placed, handle }: Grasp): void {
  focusThingField(placed.thing.id, handle.does === 'turn' ? 'turn' : handle.along ? 'along' : 'across')
}

/** The box fills the sheet, so it moves only once it is selected: a drag on it means the sheet before. */
function canMove(found: Hit): boolean {
  if (found.of === 'thing') return !found.placed.thing.locked
  if (found.name === 'saddle' || found.name === 'tailpiece') return true
  return found.name === 'box' && useBench.getState().selection === 'box'
}

const isLocked = (found: Hit): found is Extract<Hit, { of: 'thing' }> =>
  found.of === 'thing' && found.placed.thing.locked

const tellLocked = (found: Extract<Hit, { of: 'thing' }>) =>
  announce(`${found.placed.thing.name || found.placed.kind.title} is locked. L lets it go.`)
