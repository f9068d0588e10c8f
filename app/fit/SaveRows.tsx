/** Every row as a file for a spreadsheet, also those that cannot be built, with their reasons. */
import { useState } from 'react'
import type { Row } from '../../geometry/index.ts'
import { downloadAll } from '../actions/files.ts'
import { announce } from '../parts/Announcer.tsx'
import { committed } from '../state/index.ts'
import { useAsked } from './asked.ts'

export function SaveRows({ inOrder }: { readonly inOrder: readonly Row[] }) {
  const [fault, setFault] = useState<string | null>(null)
  const write = async () => {
    try {
      const { fitCsv, slug } = await import('../../exporters/index.ts')
      const design = committed()
      const { weights, note } = useAsked.getState()
      const wishes = { weights, note, pull: design.stringing.wantedPull }
      const name = `${slug(design.title, 'box')}-fit.csv`
      await downloadAll([{ name, text: fitCsv(design, inOrder, wishes), type: 'text/csv' }])
      setFault(null)
      announce(`Saved ${name}.`)
    } catch (error) {
      setFault(`Nothing was written: ${error instanceof Error ? error.message : String(error)}`)
    }
  }
  return (
    <>
      <button
        type="button"
        className="quiet"
        title="Every row that was asked, the impossible ones with their reasons"
        onClick={write}
      >
        Save as CSV
      </button>
      {fault && (
        <p className="field-fault" role="alert">
          {fault}
        </p>
      )}
    </>
  )
}
