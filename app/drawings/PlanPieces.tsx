/**
 * What stands in the box and the pictures on its lid, over the plan: dashed and hatched, dragged with the mouse or
 * nudged with the arrow keys. While something is drawn, the plan takes its corners.
 */
import { type KeyboardEvent, type PointerEvent, useEffect, useId, useRef, useState } from 'react'
import {
  artworkOf,
  type Change,
  type Design,
  insidePiecesOf,
  type Layout,
  type Point,
  stepOf,
} from '../../geometry/index.ts'
import { type Drawing, movedTo } from '../parts/PieceList.tsx'
import { added, type ListName, onStep, started, titleOf } from '../parts/pieces.ts'
import { beginGesture, commit, type Gesture } from '../state/index.ts'
import { pathOf } from './path.ts'

/** Where the plan lies on the screen: the middle of the box's neck-end edge, pixels per millimetre, and its turn. */
export interface PlanFrame {
  readonly x: number
  readonly y: number
  readonly s: number
  readonly up: 1 | -1
}

export interface PlanPiecesProps {
  readonly layout: Layout
  readonly frame: PlanFrame
  readonly chosen: string | null
  readonly choose: (id: string | null) => void
  readonly drawing: Drawing | null
  readonly draw: (what: Drawing | null) => void
}

export function PlanPieces({ layout, frame, chosen, choose, drawing, draw }: PlanPiecesProps) {
  const { x, y, s, up } = frame
  const { design, box, panels } = layout
  const hatching = useId()
  const lidFrom = panels.lid.originX - box.x0
  return (
    <g>
      <defs>
        <pattern
          id={hatching}
          width={7}
          height={7}
          patternUnits="userSpaceOnUse"
          patternTransform="rotate(-45)"
        >
          <path className="artwork-hatch" d="M0 3.5H7" />
        </pattern>
      </defs>
      {artworkOf(layout)
        .filter((one) => one.face === 'lid')
        .map(({ art, contour, at }) => (
          <Movable
            key={art.id}
            design={design}
            list="artwork"
            id={art.id}
            name={titleOf(art)}
            along={art.along}
            across={art.across}
            frame={frame}
            choose={choose}
          >
            <g transform={`translate(${x + lidFrom * s} ${y}) scale(${s} ${up * s})`}>
              <path
                className={chosen === art.id ? 'artwork chosen' : 'artwork'}
                d={pathOf(contour)}
                fill={`url(#${hatching})`}
                vectorEffect="non-scaling-stroke"
              />
            </g>
            <text
              className="artwork-sign"
              x={x + (lidFrom + at.x) * s}
              y={y - up * at.y * s + 4}
              textAnchor="middle"
            >
              keep
            </text>
          </Movable>
        ))}
      {insidePiecesOf(layout).map(({ piece, box: room }) => (
        <Movable
          key={piece.id}
          design={design}
          list="inside"
          id={piece.id}
          name={titleOf(piece)}
          along={piece.along}
          across={piece.across}
          frame={frame}
          choose={choose}
        >
          <rect
            className={chosen === piece.id ? 'inside-piece chosen' : 'inside-piece'}
            x={x + (room.minX - box.x0) * s}
            y={y - (up === 1 ? room.maxY : -room.minY) * s}
            width={(room.maxX - room.minX) * s}
            height={(room.maxY - room.minY) * s}
          />
        </Movable>
      ))}
      {drawing && (
        <Pencil
          layout={layout}
          frame={frame}
          what={drawing}
          done={(id) => {
            draw(null)
            choose(id)
          }}
        />
      )}
    </g>
  )
}

interface MovableProps {
  readonly design: Design
  readonly list: ListName
  readonly id: string
  readonly name: string
  readonly along: number
  readonly across: number
  readonly frame: PlanFrame
  readonly choose: (id: string | null) => void
  readonly children: React.ReactNode
}

/** Something on the plan that the mouse drags and the arrow keys nudge. */
function Movable({ design, list, id, name, along, across, frame, choose, children }: MovableProps) {
  const held = useRef<{ gesture: Gesture; from: Point; along: number; across: number } | null>(null)
  useEffect(() => () => held.current?.gesture.cancel(), [])
  const moved = (start: Design, toAlong: number, toAcross: number): Change =>
    movedTo(start, list, id, onStep(toAlong, design.units), onStep(toAcross, design.units))
  const down = (event: PointerEvent<SVGGElement>) => {
    if (event.button !== 0) return
    event.currentTarget.setPointerCapture(event.pointerId)
    choose(id)
    held.current = {
      gesture: beginGesture(`Move ${name}`),
      from: { x: event.clientX, y: event.clientY },
      along,
      across,
    }
  }
  const move = (event: PointerEvent<SVGGElement>) => {
    const one = held.current
    if (!one) return
    const dx = (event.clientX - one.from.x) / frame.s
    const dy = (-frame.up * (event.clientY - one.from.y)) / frame.s
    // A press that hardly moves is no drag.
    if (Math.hypot(dx, dy) * frame.s < 3) return
    one.gesture.preview(moved(one.gesture.start, one.along + dx, one.across + dy))
  }
  const up = () => {
    held.current?.gesture.finish()
    held.current = null
  }
  const key = (event: KeyboardEvent) => {
    if (event.key === 'Escape') {
      held.current?.gesture.cancel()
      held.current = null
      return
    }
    const ways: Readonly<Record<string, readonly [number, number]>> = {
      ArrowLeft: [-1, 0],
      ArrowRight: [1, 0],
      ArrowUp: [0, frame.up],
      ArrowDown: [0, -frame.up],
    }
    const way = ways[event.key]
    if (way) {
      event.preventDefault()
      event.stopPropagation()
      const step = stepOf(design.units) * (event.shiftKey ? 10 : 1)
      commit(`Move ${name}`, movedTo(design, list, id, along + way[0] * step, across + way[1] * step))
    } else if (event.key === 'Enter' || event.key === ' ') {
      event.preventDefault()
      choose(id)
    }
  }
  return (
    // biome-ignore lint/a11y/useSemanticElements: no button can stand inside a drawing
    <g
      className="movable"
      role="button"
      tabIndex={0}
      aria-label={`${name} ${id}: arrow keys move it`}
      onPointerDown={down}
      onPointerMove={move}
      onPointerUp={up}
      onPointerCancel={up}
      onKeyDown={key}
    >
      {children}
    </g>
  )
}

interface PencilProps {
  readonly layout: Layout
  readonly frame: PlanFrame
  readonly what: Drawing
  readonly done: (id: string | null) => void
}

/** Nearer than this to the first corner, in pixels, and an outline is closed. */
const CLOSES = 10

/** Takes corners pressed or dragged on the plan and makes a piece or a picture of them. */
function Pencil({ layout, frame, what, done }: PencilProps) {
  const { design, box, panels } = layout
  const [corners, setCorners] = useState<readonly Point[]>([])
  const [now, setNow] = useState<Point | null>(null)
  const sheet = useRef<SVGRectElement>(null)
  const list: ListName = what === 'piece' ? 'inside' : 'artwork'
  const offset = what === 'piece' ? 0 : panels.lid.originX - box.x0
  useEffect(() => {
    const giveUp = (event: globalThis.KeyboardEvent) => {
      if (event.key === 'Escape') done(null)
    }
    window.addEventListener('keydown', giveUp)
    return () => window.removeEventListener('keydown', giveUp)
  })
  /** Along from the face's own edge and across, on the builder's rule. */
  const placeOf = (event: PointerEvent): Point => {
    const corner = sheet.current?.ownerSVGElement?.getBoundingClientRect()
    const px = event.clientX - (corner?.left ?? 0)
    const py = event.clientY - (corner?.top ?? 0)
    return {
      x: onStep((px - frame.x) / frame.s - offset, design.units),
      y: onStep((-frame.up * (py - frame.y)) / frame.s, design.units),
    }
  }
  const onScreen = ({ x, y }: Point): Point => ({
    x: frame.x + (x + offset) * frame.s,
    y: frame.y - frame.up * y * frame.s,
  })
  const put = (known: object) => {
    const entry = started(design, list, known)
    const outcome = commit(what === 'piece' ? 'Draw a piece' : 'Draw artwork', added(design, list, entry))
    done(outcome.ok ? String(entry.id) : null)
  }
  const finishBox = (a: Point, b: Point) => {
    const [long, wide] = [Math.abs(b.x - a.x), Math.abs(b.y - a.y)]
    if (long < 0.5 || wide < 0.5) return setCorners([])
    const tall = Math.max(0.5, box.lidBottom - box.baseTop)
    put({
      along: (a.x + b.x) / 2,
      across: (a.y + b.y) / 2,
      long,
      wide,
      ...(what === 'piece' ? { tall } : { face: 'lid', shape: 'rectangle' }),
    })
  }
  const finishOutline = (all: readonly Point[]) => {
    const [xs, ys] = [all.map((one) => one.x), all.map((one) => one.y)]
    const middle = { x: (Math.min(...xs) + Math.max(...xs)) / 2, y: (Math.min(...ys) + Math.max(...ys)) / 2 }
    put({
      along: middle.x,
      across: middle.y,
      face: 'lid',
      shape: 'drawn',
      outline: all.map(({ x, y }) => [x - middle.x, y - middle.y]),
    })
  }
  const down = (event: PointerEvent<SVGRectElement>) => {
    if (event.button !== 0) return
    event.currentTarget.setPointerCapture(event.pointerId)
    const at = placeOf(event)
    if (what !== 'outline') return setCorners([at])
    const first = corners[0]
    if (first && corners.length > 2) {
      const [a, b] = [onScreen(first), onScreen(at)]
      if (Math.hypot(a.x - b.x, a.y - b.y) < CLOSES) return finishOutline(corners)
    }
    setCorners([...corners, at])
  }
  const up = (event: PointerEvent<SVGRectElement>) => {
    const [first] = corners
    if (what !== 'outline' && first) finishBox(first, placeOf(event))
  }
  const shown = [...corners, ...(now && corners.length > 0 ? [now] : [])].map(onScreen)
  const [a, b] = shown
  const { length, width } = design.box
  return (
    <g>
      {what === 'outline' && shown.length > 0 && (
        <polyline className="pencil" points={shown.map((one) => `${one.x},${one.y}`).join(' ')} />
      )}
      {what === 'outline' && a && <circle className="pencil-end" cx={a.x} cy={a.y} r={4} />}
      {what !== 'outline' && a && b && (
        <rect
          className="pencil"
          x={Math.min(a.x, b.x)}
          y={Math.min(a.y, b.y)}
          width={Math.abs(b.x - a.x)}
          height={Math.abs(b.y - a.y)}
        />
      )}
      <rect
        ref={sheet}
        className="pencil-sheet"
        x={frame.x - 12}
        y={frame.y - (width / 2) * frame.s - 12}
        width={length * frame.s + 24}
        height={width * frame.s + 24}
        onPointerDown={down}
        onPointerMove={(event) => setNow(placeOf(event))}
        onPointerUp={up}
      />
    </g>
  )
}
