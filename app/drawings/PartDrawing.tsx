/** A part as it will be cut, drawn from the same operations that the templates are written from. */
import type { ReactNode } from 'react'
import { bounds, type Operation, type Part } from '../../geometry/index.ts'
import { pathOf } from './path.ts'

export interface PartDrawingProps {
  readonly part: Part
  /** Draws notes and lines to measure from too. */
  readonly full?: boolean
  /** Drawn over it, in its own frame with y down. */
  readonly children?: ReactNode
}

/** Room round the outline, as a share of the longer side. */
const AROUND = 0.04

export function PartDrawing({ part, full = false, children }: PartDrawingProps) {
  const { minX, minY, maxX, maxY } = bounds(part.outline)
  const around = Math.max(maxX - minX, maxY - minY) * AROUND + 1.5
  const box = [minX - around, -maxY - around, maxX - minX + 2 * around, maxY - minY + 2 * around]
  return (
    <svg
      className="part-drawing"
      viewBox={box.map((one) => one.toFixed(3)).join(' ')}
      role="img"
      aria-label={`${part.title}, ${part.seen}`}
    >
      <PartShapes part={part} full={full} />
      {children}
    </svg>
  )
}

/** The part itself, in its own millimetres with y turned down, for a drawing that holds more than the part. */
export function PartShapes({ part, full = false }: PartDrawingProps) {
  return (
    <>
      <path className="part-wood" d={pathOf(part.outline)} />
      {inOrder(part.operations).map((operation, index) => (
        <One key={index} operation={operation} full={full} />
      ))}
    </>
  )
}

/** Recesses first: what goes through them is drawn on top. */
const inOrder = (operations: readonly Operation[]) =>
  [...operations].sort((a, b) => Number(b.kind === 'recess') - Number(a.kind === 'recess'))

function One({ operation, full }: { operation: Operation; full: boolean }) {
  switch (operation.kind) {
    case 'cut':
      return <path className="part-cut" d={pathOf(operation.contour)} />
    case 'recess':
      return <path className="part-recess" d={pathOf(operation.contour)} />
    case 'drill':
      return (
        <circle
          className="part-cut"
          cx={operation.centre.x}
          cy={-operation.centre.y}
          r={operation.diameter / 2}
        />
      )
    case 'slot':
      return (
        <line
          className="part-slot"
          x1={operation.from.x}
          y1={-operation.from.y}
          x2={operation.to.x}
          y2={-operation.to.y}
        />
      )
    case 'mark':
      return <path className="part-mark" d={pathOf(operation.contour)} />
    case 'datum':
      return full ? <path className="part-datum" d={pathOf(operation.line)} /> : null
    case 'note':
      return full ? (
        <text
          className="part-note"
          fontSize={operation.height / 0.72}
          transform={`translate(${operation.at.x} ${-operation.at.y}) rotate(${(-operation.turn * 180) / Math.PI})`}
        >
          {operation.text}
        </text>
      ) : null
  }
}
