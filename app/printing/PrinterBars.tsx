/** What the bars measure on a print of this printer, and the correction that follows. */
import { useState } from 'react'
import {
  type Correction,
  correctionFrom,
  correctionLine,
  isCorrected,
  NO_CORRECTION,
} from '../../exporters/index.ts'
import { ChoiceField } from '../parts/ChoiceField.tsx'
import { useDesign } from '../parts/calm.ts'
import { ACCEPTED } from '../parts/field.ts'
import { LengthField } from '../parts/LengthField.tsx'
import { setPrinter, usePrinter } from './printer.ts'

/** The two scales of every bar, by what stands at their ends; mm. */
const BARS = { '100 mm': 100, '4 in': 101.6 } as const
type BarName = keyof typeof BARS

const PRINTS = ['not corrected', 'corrected as now'] as const

export function PrinterBars({ onPrintBars }: { readonly onPrintBars: (with_: Correction) => void }) {
  const { correction } = usePrinter()
  const { units } = useDesign()
  const [name, setName] = useState<BarName>(units.display === 'mm' ? '100 mm' : '4 in')
  const bar = BARS[name]
  const [x, setX] = useState<number | null>(null)
  const [y, setY] = useState<number | null>(null)
  const [print, setPrint] = useState<(typeof PRINTS)[number]>('not corrected')
  const before = print === 'not corrected' ? NO_CORRECTION : correction
  const measured = x !== null || y !== null
  const reading = correctionFrom(x ?? bar, y ?? bar, bar, before)
  const fine = {
    display: name === '4 in' ? 'inches' : 'mm',
    fraction: units.fraction === 0 ? 0 : 64,
  } as const
  const clear = () => {
    setX(null)
    setY(null)
  }
  const keep = (next: Correction) => {
    setPrinter({ correction: next })
    clear()
  }
  const field = (axis: 'X' | 'Y', edge: string, value: number | null, set: (mm: number) => void) => (
    <LengthField
      label={`Bar ${axis}`}
      help={`The scale of ${name} on the bar marked ${axis} on every sheet. It runs along the ${edge} edge of the paper, whichever way the sheet lies.`}
      value={value ?? bar}
      units={fine}
      beside=""
      onCommit={(mm) => {
        if (!(mm > 0)) return { ok: false, sentence: 'A bar that is printed has some length.' }
        set(mm)
        return ACCEPTED
      }}
    />
  )
  return (
    <details className="printer-bars">
      <summary>
        This printer:{' '}
        {isCorrected(correction)
          ? correctionLine(correction).replace('for this printer: ', '')
          : 'as it prints'}
      </summary>
      <p className="small soft">
        Say what the two bars measure on a print. It stays with this browser and is no part of the design.
      </p>
      <ChoiceField
        label="The scale measured"
        value={name}
        options={Object.keys(BARS)}
        onCommit={(next) => {
          setName(next as BarName)
          clear()
          return ACCEPTED
        }}
      />
      <div className="field-grid">
        {field('X', 'short', x, setX)}
        {field('Y', 'long', y, setY)}
      </div>
      {isCorrected(correction) && (
        <ChoiceField
          label="The print measured was"
          value={print}
          options={PRINTS}
          onCommit={(next) => {
            setPrint(next as (typeof PRINTS)[number])
            return ACCEPTED
          }}
        />
      )}
      {measured && !reading.ok && (
        <p className="small stop" role="alert">
          {reading.sentence}
        </p>
      )}
      {measured && reading.ok && reading.question !== undefined && (
        <p className="small care" role="alert">
          {reading.question}
        </p>
      )}
      <div className="printer-acts">
        {measured && reading.ok && (
          <button type="button" onClick={() => keep(reading.correction)}>
            {reading.question === undefined ? 'Correct further prints' : 'Correct all the same'}
          </button>
        )}
        <button type="button" className="quiet" onClick={() => onPrintBars(before)}>
          Save a sheet with the bars
        </button>
        {isCorrected(correction) && (
          <button type="button" className="quiet" onClick={() => keep(NO_CORRECTION)}>
            Correct no more
          </button>
        )}
      </div>
    </details>
  )
}
