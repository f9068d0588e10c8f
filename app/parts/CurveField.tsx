/** The builder's own curve: shown small, read anew from a pasted path or a dropped SVG file. */
import { type ChangeEvent, type DragEvent, useId, useState } from 'react'
import { bounds, flatten, readCurve } from '../../geometry/index.ts'
import { LARGEST_CURVE, textOfFile } from '../actions/text-of-file.ts'
import type { Answer } from './field.ts'
import { useHelp } from './Help.tsx'

export type Curve = readonly (readonly [number, number, number])[]

export interface CurveFieldProps {
  readonly label: string
  readonly help: string
  readonly address?: string | undefined
  readonly value: Curve
  readonly onCommit: (next: unknown) => Answer
}

export function CurveField({ label, help, address, value, onCommit }: CurveFieldProps) {
  const [text, setText] = useState('')
  const [said, setSaid] = useState<{ readonly wrong: boolean; readonly words: string } | null>(null)
  const own = useId()
  const asked = useHelp({ id: own, label, help, address })
  const read = (source: string) => {
    const reading = readCurve(source)
    if (!reading.ok) return setSaid({ wrong: true, words: reading.sentence })
    const answer = onCommit(reading.curve)
    if (answer.ok) {
      setText('')
      setSaid({ wrong: false, words: [`Read: ${reading.curve.length} corners.`, ...reading.notes].join(' ') })
    } else setSaid({ wrong: true, words: answer.sentence })
  }
  const readFile = async (file: File | undefined) => {
    if (!file) return
    const found = await textOfFile(file, LARGEST_CURVE)
    if (found.ok) read(found.text)
    else setSaid({ wrong: true, words: found.sentence })
  }
  const onDrop = (event: DragEvent) => {
    const file = event.dataTransfer.files[0]
    if (!file) return
    event.preventDefault()
    void readFile(file)
  }
  const onPick = (event: ChangeEvent<HTMLInputElement>) => {
    void readFile(event.target.files?.[0])
    event.target.value = ''
  }
  return (
    <div className="curve-field">
      <CurvePicture curve={value} label={label} />
      <div className="field-label">
        <label htmlFor={own}>New curve, as a path or an SVG file</label>
        {asked.mark}
      </div>
      {asked.words}
      <textarea
        id={own}
        rows={3}
        spellCheck={false}
        placeholder="M 0 0 C 10 -20 …  Z, pasted or dropped"
        value={text}
        onChange={(event) => setText(event.target.value)}
        onDragOver={(event) => event.preventDefault()}
        onDrop={onDrop}
        aria-describedby={said ? `${own}-said` : undefined}
        aria-invalid={said?.wrong ?? false}
      />
      <div className="curve-actions">
        <button type="button" disabled={text.trim() === ''} onClick={() => read(text)}>
          Read it
        </button>
        <label className="file-button">
          From a file…
          <input type="file" accept=".svg,image/svg+xml" onChange={onPick} />
        </label>
      </div>
      {said && (
        <p id={`${own}-said`} className={said.wrong ? 'wrong small' : 'soft small'} role="status">
          {said.words}
        </p>
      )}
    </div>
  )
}

/** The outline as it stands, drawn from numbers: nothing of a stranger's file comes onto the page. */
function CurvePicture({ curve, label }: { readonly curve: Curve; readonly label: string }) {
  const chain = {
    shape: 'chain' as const,
    closed: true,
    vertices: curve.map(([x, y, bulge]) => ({ x, y, bulge })),
  }
  const { minX, maxX, minY, maxY } = bounds(chain)
  const size = Math.max(maxX - minX, maxY - minY)
  const edge = size * 0.06
  const points = flatten(chain, size / 4000).map(({ x, y }) => `${x},${-y}`)
  return (
    <svg
      className="curve-picture"
      role="img"
      aria-label={`${label}: ${curve.length} corners`}
      viewBox={`${minX - edge} ${-maxY - edge} ${maxX - minX + 2 * edge} ${maxY - minY + 2 * edge}`}
    >
      <polygon points={points.join(' ')} vectorEffect="non-scaling-stroke" />
    </svg>
  )
}
