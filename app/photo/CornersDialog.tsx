/** Four handles on a photograph, put on the corners of the face; what comes of it is shown straightened beside. */
import { type KeyboardEvent, type PointerEvent, useEffect, useRef, useState } from 'react'
import {
  type Corners,
  type Face,
  type Layout,
  type Photo,
  type Point,
  photoCornersFault,
} from '../../geometry/index.ts'
import { useLayout } from '../parts/calm.ts'
import { Dialog } from '../parts/Dialog.tsx'
import type { Answer } from '../parts/field.ts'
import { dotsOf, straightCanvas } from './lying.ts'
import type { Picture } from './take-in.ts'

export interface CornersDialogProps {
  readonly title: string
  readonly face: Face
  readonly picture: Picture
  readonly corners: Photo['corners'] | null
  readonly onClose: () => void
  readonly onUse: (corners: Photo['corners']) => Answer
}

const NAMES = ['upper left', 'upper right', 'lower right', 'lower left'] as const
/** A new picture begins with its corners so far from the edge, as a share of its size. */
const INSET = 0.1
/** How much the glass enlarges, and its radius in dots of the picture's own width. */
const TIMES = 4

function starting({ width, height }: Picture): Photo['corners'] {
  const [x0, x1, y0, y1] = [width * INSET, width * (1 - INSET), height * INSET, height * (1 - INSET)]
  return [
    { x: x0, y: y0 },
    { x: x1, y: y0 },
    { x: x1, y: y1 },
    { x: x0, y: y1 },
  ]
}

const faceSize = (layout: Layout, face: Face) => {
  const { minX, maxX, minY, maxY } = layout.panels[face].bounds
  return { long: maxX - minX, high: maxY - minY }
}

export function CornersDialog({ title, face, picture, corners: before, onClose, onUse }: CornersDialogProps) {
  const layout = useLayout()
  const [corners, setCorners] = useState<Photo['corners']>(before ?? starting(picture))
  const [held, setHeld] = useState<number | null>(null)
  const [refusal, setRefusal] = useState<string | null>(null)
  const drawing = useRef<SVGSVGElement>(null)
  const words = photoCornersFault(corners)
  const put = (index: number, { x, y }: Point) => {
    const at = {
      x: Math.round(Math.min(Math.max(x, 0), picture.width) * 10) / 10,
      y: Math.round(Math.min(Math.max(y, 0), picture.height) * 10) / 10,
    }
    setCorners(corners.map((one, here) => (here === index ? at : one)) as unknown as Photo['corners'])
  }
  /** From the page to dots of the picture. */
  const dotAt = (event: PointerEvent): Point | null => {
    const matrix = drawing.current?.getScreenCTM()?.inverse()
    return matrix ? new DOMPoint(event.clientX, event.clientY).matrixTransform(matrix) : null
  }
  const onKeyDown = (index: number) => (event: KeyboardEvent) => {
    const step = event.shiftKey ? 10 : event.altKey ? 0.2 : 1
    const by = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, -1], ArrowDown: [0, 1] }[event.key]
    const corner = corners[index]
    if (!by || !corner) return
    event.preventDefault()
    put(index, { x: corner.x + by[0]! * step, y: corner.y + by[1]! * step })
  }
  const turn = () => setCorners([corners[1], corners[2], corners[3], corners[0]])
  const dot = Math.max(picture.width, picture.height) / 100
  return (
    <Dialog title={title} wide onClose={onClose}>
      <div className="corners">
        {/* biome-ignore lint/a11y/useSemanticElements: a drawing is no set of form fields */}
        <svg
          ref={drawing}
          className="corners-picture"
          viewBox={`0 0 ${picture.width} ${picture.height}`}
          role="group"
          aria-label="The photograph, with a handle for each corner"
          onPointerMove={(event) => {
            const at = held === null ? null : dotAt(event)
            if (at && held !== null) put(held, at)
          }}
          onPointerUp={() => setHeld(null)}
          onPointerCancel={() => setHeld(null)}
        >
          <image href={picture.image} width={picture.width} height={picture.height} />
          <polygon
            className={words ? 'corners-line wrong' : 'corners-line'}
            points={corners.map(({ x, y }) => `${x},${y}`).join(' ')}
          />
          {corners.map((corner, index) => (
            // biome-ignore lint/a11y/useSemanticElements: a handle inside a drawing
            <g
              key={NAMES[index]}
              className={held === index ? 'corner held' : 'corner'}
              role="button"
              tabIndex={0}
              aria-label={`Corner ${NAMES[index]} of the face, at ${Math.round(corner.x)}, ${Math.round(corner.y)}. Arrow keys move it.`}
              onKeyDown={onKeyDown(index)}
              onFocus={() => setHeld(null)}
              onPointerDown={(event) => {
                event.preventDefault()
                event.currentTarget.focus()
                drawing.current?.setPointerCapture(event.pointerId)
                setHeld(index)
              }}
            >
              <circle cx={corner.x} cy={corner.y} r={2.6 * dot} className="corner-reach" />
              <circle cx={corner.x} cy={corner.y} r={1.1 * dot} className="corner-ring" />
              <path
                className="corner-cross"
                d={`M${corner.x - 2 * dot} ${corner.y}h${4 * dot}M${corner.x} ${corner.y - 2 * dot}v${4 * dot}`}
              />
            </g>
          ))}
          {held !== null && corners[held] && <Glass picture={picture} at={corners[held]} radius={10 * dot} />}
        </svg>
        <div className="corners-beside">
          <p>
            The drawing shows the face from outside
            {face === 'lid' || face === 'base'
              ? ', the head of the instrument at the left'
              : ', the lid side up'}
            . Put each handle on its corner: {NAMES.join(', ')}.
          </p>
          <Straight picture={picture} corners={corners} good={words === null} {...faceSize(layout, face)} />
          {words && (
            <p className="field-fault" role="alert">
              The picture {words}.
            </p>
          )}
          {refusal && (
            <p className="field-fault" role="alert">
              {refusal}
            </p>
          )}
          <div className="field-row">
            <button
              type="button"
              className="main"
              disabled={words !== null}
              onClick={() => {
                const answer = onUse(corners)
                setRefusal(answer.ok ? null : answer.sentence)
              }}
            >
              Use these corners
            </button>
            <button type="button" className="quiet" onClick={turn}>
              Turn by a quarter
            </button>
          </div>
          <p className="soft small">
            Arrow keys move a handle by one dot, with Shift by ten, with Alt by a fifth.
          </p>
        </div>
      </div>
    </Dialog>
  )
}

/** What lies under the pointer, enlarged, away from the hand. */
function Glass({ picture, at, radius }: { picture: Picture; at: Point; radius: number }) {
  // On the side of the picture where the hand is not.
  const x = at.x < picture.width / 2 ? picture.width - radius * 1.15 : radius * 1.15
  const y = radius * 1.15
  return (
    <g className="glass" pointerEvents="none">
      <clipPath id="glass-edge">
        <circle cx={x} cy={y} r={radius} />
      </clipPath>
      <circle cx={x} cy={y} r={radius} className="glass-ground" />
      <g clipPath="url(#glass-edge)">
        <image
          href={picture.image}
          width={picture.width}
          height={picture.height}
          transform={`translate(${x - at.x * TIMES} ${y - at.y * TIMES}) scale(${TIMES})`}
        />
      </g>
      <path
        className="corner-cross"
        d={`M${x - radius * 0.6} ${y}h${radius * 1.2}M${x} ${y - radius * 0.6}v${radius * 1.2}`}
      />
      <circle cx={x} cy={y} r={radius} className="glass-rim" />
    </g>
  )
}

const SHOWN = 320

interface StraightProps {
  readonly picture: Picture
  readonly corners: Corners
  readonly good: boolean
  readonly long: number
  readonly high: number
}

/** The face as it comes out, at its true proportions. */
function Straight({ picture, corners, good, long, high }: StraightProps) {
  const holder = useRef<HTMLDivElement>(null)
  const [dots, setDots] = useState<ImageData | null>(null)
  useEffect(() => {
    let gone = false
    dotsOf(picture).then(
      (read) => !gone && setDots(read),
      () => undefined,
    )
    return () => {
      gone = true
    }
  }, [picture])
  useEffect(() => {
    if (!dots || !good) return
    const frame = requestAnimationFrame(() => {
      const scale = SHOWN / Math.max(long, high)
      const canvas = straightCanvas(
        dots,
        { corners: corners as unknown as Photo['corners'] },
        Math.max(1, Math.round(long * scale)),
        Math.max(1, Math.round(high * scale)),
      )
      holder.current?.replaceChildren(canvas)
    })
    return () => cancelAnimationFrame(frame)
  }, [dots, corners, good, long, high])
  return (
    <div
      ref={holder}
      className={good ? 'straight' : 'straight stale'}
      role="img"
      aria-label="The face, straightened"
    />
  )
}
