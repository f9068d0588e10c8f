/** The page map: a part under its sheets, drawn true from the plan that is printed. */
import { useMemo } from 'react'
import { type PartSheets, paperNamed, planPrint } from '../../exporters/index.ts'
import type { Part } from '../../geometry/index.ts'
import { PartShapes } from '../drawings/PartDrawing.tsx'
import { usePrinter } from './printer.ts'

export function SheetMap({ part }: { readonly part: Part }) {
  const setup = usePrinter()
  const reading = useMemo(() => planPrint([part], setup), [part, setup])
  const sheets = reading.ok ? reading.plan.parts[0] : undefined
  if (!sheets) return <p className="sheet-map-none">{reading.ok ? '' : reading.sentence}</p>
  return <OnSheets sheets={sheets} paper={paperNamed(setup.paper).title} />
}

/** How the sheets of a part lie, in words. */
export function saySheets({ tiles, rows, columns, frame, hits }: PartSheets, paper: string): string {
  const first = tiles[0]?.name ?? ''
  const last = tiles.at(-1)?.name ?? ''
  const lie =
    tiles.length === 1
      ? `one sheet of ${paper}, ${frame.way}`
      : `${tiles.length} sheets of ${paper}, ${frame.way}: ${first} to ${last}, ${
          rows.length === 1 ? 'side by side' : columns.length === 1 ? 'one above the other' : 'in rows'
        }`
  return hits === 0 ? lie : `${lie}; a seam runs close by a hole or fret line`
}

function OnSheets({ sheets, paper }: { readonly sheets: PartSheets; readonly paper: string }) {
  const { part, tiles, frame, columns, rows } = sheets
  const { window } = frame
  // The paper round each tile: its lower left corner, from the place where the window stands on it.
  const [width, height] = [frame.width / frame.scaleX, frame.height / frame.scaleY]
  const papers = tiles.map(({ shown }) => ({ x: shown.minX - window.minX, y: shown.minY - window.minY }))
  const minX = Math.min(...papers.map(({ x }) => x))
  const maxX = Math.max(...papers.map(({ x }) => x + width))
  const minY = Math.min(...papers.map(({ y }) => y))
  const maxY = Math.max(...papers.map(({ y }) => y + height))
  const around = 4
  const box = [minX - around, -maxY - around, maxX - minX + 2 * around, maxY - minY + 2 * around]
  const scale = Math.max(maxX - minX, maxY - minY)
  const right = (column: number, end: number) => columns[column + 1]?.from ?? end
  const top = (row: number, end: number) => rows[row - 1]?.from ?? end
  return (
    <figure className="sheet-map">
      <svg
        className="part-drawing"
        viewBox={box.map((value) => value.toFixed(2)).join(' ')}
        role="img"
        aria-label={`${part.title} on ${saySheets(sheets, paper)}`}
      >
        {papers.map(({ x, y }, index) => (
          <rect
            key={tiles[index]?.name}
            className="map-paper"
            x={x}
            y={-y - height}
            width={width}
            height={height}
          />
        ))}
        <PartShapes part={part} full={false} />
        {tiles.map(({ name, row, column, shown }) => {
          const [r, t] = [right(column, shown.maxX), top(row, shown.maxY)]
          return (
            <g key={name}>
              {r < shown.maxX && (
                <rect
                  className="map-flap"
                  x={r}
                  y={-shown.maxY}
                  width={shown.maxX - r}
                  height={shown.maxY - shown.minY}
                />
              )}
              {t < shown.maxY && (
                <rect
                  className="map-flap"
                  x={shown.minX}
                  y={-shown.maxY}
                  width={r - shown.minX}
                  height={shown.maxY - t}
                />
              )}
              <rect
                className="map-tile"
                x={shown.minX}
                y={-t}
                width={r - shown.minX}
                height={t - shown.minY}
              />
              <text
                className="map-name"
                x={shown.minX + scale * 0.008}
                y={-t + scale * 0.03}
                fontSize={scale * 0.026}
              >
                {name}
              </text>
            </g>
          )
        })}
      </svg>
      <figcaption className="small soft">
        {saySheets(sheets, paper)}. Tinted: flaps that the next sheet is glued on.
      </figcaption>
    </figure>
  )
}
