/** The parts as they lie on sheets of stock, and how full each sheet is. */
import { useEffect, useState } from 'react'
import type { NestedSheet, Nesting } from '../../../exporters/index.ts'
import { type Layout, move, type Part } from '../../../geometry/index.ts'
import { pathOf } from '../../drawings/path.ts'
import { useLayout } from '../../parts/calm.ts'
import { sayLength } from '../../parts/say.ts'
import { nestedParts } from '../templates.ts'
import type { Choices } from './choices.ts'

export interface StockSheetsProps {
  /** Ids of the parts wanted. */
  readonly only: readonly string[]
  readonly lines: Choices['lines']
}

export function StockSheets({ only, lines }: StockSheetsProps) {
  const layout = useLayout()
  const nesting = useNesting(layout, only, lines)
  if (nesting === null) return <p className="soft stock-words">Laying out…</p>
  if (!nesting.ok)
    return (
      <div className="stock-words" role="alert">
        {nesting.sentences.map((sentence) => (
          <p key={sentence}>{sentence}</p>
        ))}
      </div>
    )
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: it scrolls, so keys must be able to reach it
    <section className="stock-scroll" aria-label="Stock" tabIndex={0}>
      <ol className="stock-sheets" aria-label="Sheets of stock">
        {nesting.sheets.map((sheet, index) => (
          <li key={index}>
            <OneSheet sheet={sheet} number={index + 1} />
            <p className="small soft">
              Sheet {index + 1}: {sayLength(sheet.thickness, layout.design.units)} thick,{' '}
              {Math.round(sheet.full * 100)} % full. {sheet.parts.map(({ part }) => part.title).join(', ')}.
            </p>
          </li>
        ))}
      </ol>
    </section>
  )
}

function OneSheet({ sheet, number }: { sheet: NestedSheet; number: number }) {
  const { stock, parts } = sheet
  const rim = Math.max(stock.length, stock.width) * 0.01
  return (
    <svg
      className="stock-sheet"
      viewBox={`${-rim} ${-stock.width - rim} ${stock.length + 2 * rim} ${stock.width + 2 * rim}`}
      role="img"
      aria-label={`Sheet ${number}: ${parts.map(({ part }) => part.title).join(', ')}`}
    >
      <rect className="stock-edge" x={0} y={-stock.width} width={stock.length} height={stock.width} />
      {parts.map(({ part, shift }) => (
        <g key={part.id}>
          <path className="part-wood" d={pathOf(move(part.outline, shift.x, shift.y))} />
          {openingsOf(part).map((contour, index) => (
            <path key={index} className="part-cut" d={pathOf(move(contour, shift.x, shift.y))} />
          ))}
        </g>
      ))}
    </svg>
  )
}

const openingsOf = (part: Part) => part.operations.flatMap((one) => (one.kind === 'cut' ? [one.contour] : []))

/** The nesting of the parts wanted, reckoned anew when one of them changes; `null` until the first is there. */
function useNesting(layout: Layout, only: readonly string[], lines: Choices['lines']): Nesting | null {
  const [nesting, setNesting] = useState<Nesting | null>(null)
  const names = only.join(' ')
  useEffect(() => {
    let current = true
    nestedParts(layout, names.split(' '), lines)
      .then((found) => current && setNesting(found))
      .catch((error: unknown) => {
        const sentence = error instanceof Error ? error.message : String(error)
        if (current) setNesting({ ok: false, sentences: [sentence] })
      })
    return () => {
      current = false
    }
  }, [layout, names, lines])
  return nesting
}
