/** A piece to find the real kerf by. */
import { useState } from 'react'
import { downloadAll } from '../../actions/files.ts'
import { useLayout } from '../../parts/calm.ts'
import { ACCEPTED } from '../../parts/field.ts'
import { LengthField } from '../../parts/LengthField.tsx'
import { type Format, makeTestPiece, TYPES } from '../templates.ts'
import type { Choices } from './choices.ts'

export interface TestPieceProps {
  readonly format: Format | 'both'
  readonly dxfUnits: 'mm' | 'inches'
  readonly choices: Choices
}

export function TestPiece({ format, dxfUnits, choices }: TestPieceProps) {
  const layout = useLayout()
  const [thickness, setThickness] = useState(layout.design.box.lid.thickness)
  const [said, setSaid] = useState<string | null>(null)
  const { process } = layout.design.cutting
  if (process === 'by hand') return null
  const save = async () => {
    try {
      const files = await makeTestPiece(layout, thickness, { format, dxfUnits, choices })
      await downloadAll(files.map((file) => ({ ...file, type: TYPES[file.format] })))
      setSaid(files.length === 1 ? `Saved ${files[0]?.name}.` : `Saved ${files.length} files.`)
    } catch (error) {
      setSaid(`Nothing was written: ${error instanceof Error ? error.message : String(error)}`)
    }
  }
  return (
    <>
      <h2>Test piece</h2>
      <p className="small soft">
        A row of slots of falling width. A strip of the same stock, edge on, holds tightly in one of them; the
        figure beside it is the real {process === 'laser' ? 'kerf' : 'diameter of the cutter'}.
      </p>
      <LengthField
        label="Stock, thick"
        help="Measured, of the stock that will be cut."
        value={thickness}
        onCommit={(next) => {
          setThickness(next)
          return ACCEPTED
        }}
      />
      <button type="button" onClick={save}>
        Save the test piece
      </button>
      <p className="small soft" role="status" aria-live="polite">
        {said}
      </p>
    </>
  )
}
