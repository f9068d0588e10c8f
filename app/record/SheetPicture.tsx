/** A picture of the build sheet on the page, in the page's own ink and tints. */
import { useId } from 'react'
import { FILLS, type Picture, runsPath, type Shape, STROKES } from '../../exporters/index.ts'
import { pathOf } from '../drawings/path.ts'

export function SheetPicture({ picture }: { readonly picture: Picture }) {
  const own = useId()
  const { width, height, title, description, shapes } = picture
  return (
    <svg
      className="sheet-picture"
      viewBox={`0 ${-height} ${width} ${height}`}
      style={{ width: `${width}mm` }}
      role="img"
      aria-labelledby={`${own}-title ${own}-desc`}
    >
      <title id={`${own}-title`}>{title}</title>
      <desc id={`${own}-desc`}>{description}</desc>
      {shapes.map((shape, index) => (
        <OneShape key={index} shape={shape} />
      ))}
    </svg>
  )
}

function OneShape({ shape }: { readonly shape: Shape }) {
  if (shape.kind === 'text') {
    const { at, text, size, anchor, upright, bold } = shape
    return (
      <text
        x={at.x}
        y={-at.y}
        fontSize={size}
        fontWeight={bold ? 700 : 400}
        textAnchor={anchor}
        transform={upright ? `rotate(-90 ${at.x} ${-at.y})` : undefined}
      >
        {text}
      </text>
    )
  }
  if (shape.kind === 'squares') {
    const place = `translate(${shape.at.x} ${-shape.at.y}) scale(${shape.side})`
    return <path className="tint-ink" shapeRendering="crispEdges" transform={place} d={runsPath(shape)} />
  }
  if (shape.kind === 'area') return <path className={`tint-${shape.fill}`} d={pathOf(shape.contour)} />
  const { width, dash } = STROKES[shape.stroke]
  const fill = shape.fill ?? 'none'
  return (
    <path
      className={`pen tint-${fill in FILLS ? fill : 'none'}`}
      strokeWidth={width}
      strokeDasharray={dash.join(' ')}
      d={pathOf(shape.contour)}
    />
  )
}
