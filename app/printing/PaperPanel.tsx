/** On paper: which paper, how many sheets, and the PDF made beside the page. */
import { useEffect, useMemo, useRef, useState } from 'react'
import { PAPER_NAMES, type PaperName, paperNamed, planPrint, printFileName } from '../../exporters/index.ts'
import type { Part } from '../../geometry/index.ts'
import { download } from '../actions/files.ts'
import { ChoiceField } from '../parts/ChoiceField.tsx'
import { useDesign } from '../parts/calm.ts'
import { ACCEPTED } from '../parts/field.ts'
import { LengthField } from '../parts/LengthField.tsx'
import { PrinterBars } from './PrinterBars.tsx'
import { setPrinter, usePrinter } from './printer.ts'
import { type Printing, startPrinting } from './start-printing.ts'

const WAYS = {
  fewest: 'as needs fewest',
  upright: 'all upright',
  lying: 'all lying',
} as const
type WayWord = keyof typeof WAYS

/** A job that takes longer shows how far it is, milliseconds. */
const LONG = 500

interface Running {
  readonly printing: Printing
  readonly done: number
  readonly of: number
  readonly shown: boolean
}

export function PaperPanel({ parts, barred }: { readonly parts: readonly Part[]; readonly barred: boolean }) {
  const setup = usePrinter()
  const { title } = useDesign()
  const reading = useMemo(() => planPrint(parts, setup), [parts, setup])
  const [running, setRunning] = useState<Running | null>(null)
  const [said, setSaid] = useState<readonly string[]>([])
  const current = useRef<Printing | null>(null)
  useEffect(() => () => current.current?.stop(), [])

  const print = async (wanted: readonly Part[], name: string, correction = setup.correction) => {
    const printing = startPrinting({ parts: wanted, setup: { ...setup, correction }, title }, (done, of) =>
      setRunning((now) => now && { ...now, done, of }),
    )
    current.current = printing
    setSaid([])
    setRunning({ printing, done: 0, of: 0, shown: false })
    const timer = window.setTimeout(() => setRunning((now) => now && { ...now, shown: true }), LONG)
    try {
      const { bytes, pages, keys, cautions } = await printing.made
      download(name, bytes, 'application/pdf')
      const sheets = pages === 1 ? 'one sheet' : `${pages} sheets`
      const key = keys === 0 ? '' : keys === 1 ? ', the last a key to the lines' : `, the last ${keys} a key`
      setSaid([`Saved ${name}: ${sheets}${key}. Print at 100 % and measure the bars.`, ...cautions])
    } catch (error) {
      setSaid([`Nothing was saved: ${error instanceof Error ? error.message : String(error)}`])
    } finally {
      window.clearTimeout(timer)
      current.current = null
      setRunning(null)
    }
  }
  const stop = () => {
    current.current?.stop()
    current.current = null
    setRunning(null)
    setSaid(['Stopped. Nothing was saved.'])
  }
  const paper = paperNamed(setup.paper)
  return (
    <section className="paper-panel" aria-label="On paper">
      <h2>On paper, to print and join</h2>
      <ChoiceField
        label="Paper"
        value={setup.paper}
        options={PAPER_NAMES}
        name={(name) => paperNamed(name as PaperName).title}
        onCommit={(name) => {
          setPrinter({ paper: name as PaperName })
          return ACCEPTED
        }}
      />
      <ChoiceField
        label="Sheets lie"
        value={setup.way}
        options={Object.keys(WAYS)}
        name={(way) => WAYS[way as WayWord]}
        onCommit={(way) => {
          setPrinter({ way: way as WayWord })
          return ACCEPTED
        }}
      />
      <div className="field-grid">
        <LengthField
          label="White edge"
          help="What the printer leaves white all round. Most leave 3 to 7 mm; 10 mm is safe."
          value={setup.margin}
          beside=""
          onCommit={(margin) => changed({ margin })}
        />
        <LengthField
          label="Overlap"
          help="What neighbouring sheets share: the flap to glue on, with the joining marks."
          value={setup.overlap}
          beside=""
          onCommit={(overlap) => changed({ overlap })}
        />
      </div>
      <PrinterBars onPrintBars={(before) => print([], `bars-${setup.paper}.pdf`, before)} />
      {reading.ok ? (
        <p className="small">
          {reading.plan.count === 1 ? 'One sheet' : `${reading.plan.count} sheets`} of {paper.title}
          {parts.length > 1 ? ` for ${parts.length} parts.` : '.'}
        </p>
      ) : (
        parts.length > 0 && (
          <p className="small stop" role="alert">
            {reading.sentence}
          </p>
        )
      )}
      {running?.shown ? (
        <div className="print-progress">
          <progress
            aria-label="Sheets drawn"
            max={running.of || 1}
            value={running.of ? running.done : undefined}
          />
          <span className="small">
            {running.of ? `sheet ${running.done} of ${running.of}` : 'fetching letters and library'}
          </span>
          <button type="button" onClick={stop}>
            Stop
          </button>
        </div>
      ) : (
        <button
          type="button"
          className="main"
          disabled={barred || !reading.ok || running !== null}
          onClick={() => print(parts, printFileName(title, parts, setup.paper))}
        >
          {running !== null
            ? 'Making the PDF…'
            : parts.length === 1
              ? 'Save the PDF of one part'
              : `Save the PDF of ${parts.length} parts`}
        </button>
      )}
      <div className="small soft print-said" role="status" aria-live="polite">
        {said.map((sentence) => (
          <p key={sentence}>{sentence}</p>
        ))}
      </div>
    </section>
  )

  /** Takes a length over where some sheet could be printed with it. */
  function changed(changes: { readonly margin?: number; readonly overlap?: number }) {
    const one = parts[0]
    const next = one && planPrint([one], { ...setup, ...changes })
    if (next && !next.ok) return { ok: false, sentence: next.sentence } as const
    setPrinter(changes)
    return ACCEPTED
  }
}
