/** The diagram of the wiring: the very picture of the sheet, with each wire in the colour its builder named. */
import type { Picture, WiringDiagram } from '../../exporters/index.ts'
import { pathOf } from './path.ts'

type Shape = Picture['shapes'][number]

/** Colours by the words builders use for them; any other is drawn in ink. */
const COLOURS: Readonly<Record<string, string>> = {
  red: '#c2362b',
  white: '#f4f2ec',
  black: '#26282a',
  green: '#2f8a4c',
  yellow: '#d9b22a',
  blue: '#2f62b8',
  brown: '#7a4a2a',
  grey: '#8b8f93',
  gray: '#8b8f93',
  orange: '#d9772a',
  violet: '#7c4fa8',
  purple: '#7c4fa8',
  pink: '#d98aa6',
  bare: '#b98a52',
}

export interface WiringDrawingProps {
  readonly diagram: WiringDiagram
  /** The wire pointed at in the list, drawn thicker. */
  readonly marked: number | null
}

export function WiringDrawing({ diagram: { picture, wires }, marked }: WiringDrawingProps) {
  const { width, height, shapes } = picture
  return (
    <svg
      className="wiring-drawing"
      viewBox={`0 ${-height} ${width} ${height}`}
      role="img"
      aria-label={`${picture.title}: ${picture.description}`}
    >
      {shapes.map((shape, index) => (
        <One key={index} shape={shape} />
      ))}
      {wires.map(({ index, colour, path }) => (
        <path
          key={index}
          d={pathOf(path)}
          className={index === marked ? 'wiring-wire marked' : 'wiring-wire'}
          stroke={COLOURS[colour.trim().toLowerCase()] ?? 'var(--ink)'}
        />
      ))}
      {/* Words again, over the colours. */}
      {shapes.map((shape, index) => (shape.kind === 'text' ? <One key={index} shape={shape} /> : null))}
    </svg>
  )
}

function One({ shape }: { readonly shape: Shape }) {
  if (shape.kind === 'text') {
    const { x, y } = shape.at
    return (
      <text
        x={x}
        y={-y}
        fontSize={shape.size}
        className={shape.bold ? 'wiring-words bold' : 'wiring-words'}
        textAnchor={shape.anchor}
        transform={shape.upright ? `rotate(-90 ${x} ${-y})` : undefined}
      >
        {shape.text}
      </text>
    )
  }
  if (shape.kind === 'area') return <path d={pathOf(shape.contour)} className={`wiring-fill-${shape.fill}`} />
  if (shape.kind !== 'line') return null
  return (
    <path
      d={pathOf(shape.contour)}
      className={`wiring-${shape.stroke} wiring-fill-${shape.fill ?? 'none'}`}
    />
  )
}
