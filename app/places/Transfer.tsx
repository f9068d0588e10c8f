/** Transfer: the parts as they will be cut, and their templates as files. */
import { lazy, Suspense, useMemo, useState } from 'react'
import { check, partsOf } from '../../geometry/index.ts'
import { downloadAll, saveDesign } from '../actions/files.ts'
import { PartDrawing } from '../drawings/PartDrawing.tsx'
import { ChoiceField } from '../parts/ChoiceField.tsx'
import { useLayout } from '../parts/calm.ts'
import { ACCEPTED } from '../parts/field.ts'
import { ScheduleAside, ScheduleEntry, ScheduleTable } from '../parts/ScheduleTable.tsx'
import { sayLength } from '../parts/say.ts'
import { stops } from '../parts/tightness.ts'
import { ViewButtons } from '../printing/ViewButtons.tsx'
import { goTo } from '../state/index.ts'
import { Cautions } from './Cautions.tsx'
import { ChoiceRows } from './cutting/ChoiceRows.tsx'
import { USUAL } from './cutting/choices.ts'
import { MachineFields, StockFields } from './cutting/MachineFields.tsx'
import { StockSheets } from './cutting/StockSheets.tsx'
import { TestPiece } from './cutting/TestPiece.tsx'
import { ToolCorner, ToolLines } from './cutting/ToolLines.tsx'
import { type Format, type MadeFile, makeTemplates, TYPES } from './templates.ts'

/** Sheets of paper come with the exporters, which the parts themselves do without. */
const PaperPanel = lazy(() =>
  import('../printing/PaperPanel.tsx').then((panel) => ({ default: panel.PaperPanel })),
)
const SheetMap = lazy(() => import('../printing/SheetMap.tsx').then((map) => ({ default: map.SheetMap })))

/** Stands among the ids of parts for the list of all work. */
const SCHEDULE = 'schedule'

export function Transfer() {
  const layout = useLayout()
  const parts = partsOf(layout)
  const [left, setLeft] = useState<ReadonlySet<string>>(new Set())
  const [chosen, setChosen] = useState<string>('lid')
  const [format, setFormat] = useState<Format | 'both'>('svg')
  const [dxfUnits, setDxfUnits] = useState<'mm' | 'inches'>('mm')
  const [choices, setChoices] = useState(USUAL)
  const [confirmed, setConfirmed] = useState(false)
  const [made, setMade] = useState<string | null>(null)
  const wanted = useMemo(() => parts.filter((part) => !left.has(part.id)), [parts, left])
  const [onPaper, setOnPaper] = useState(false)
  const listed = chosen === SCHEDULE
  const part = listed ? undefined : (parts.find((one) => one.id === chosen) ?? parts[0])
  const blocked = stops(check(layout))
  const toggle = (id: string) => {
    const next = new Set(left)
    if (!next.delete(id)) next.add(id)
    setLeft(next)
  }
  const write = async (only: readonly string[]) => {
    setMade('Writing…')
    try {
      const { files, said } = await makeTemplates(layout, { format, dxfUnits, only, choices })
      await downloadAll(files.map((file) => ({ ...file, type: TYPES[file.format] })))
      setMade([saySaved(files), ...said].join(' '))
    } catch (error) {
      setMade(`Nothing was written: ${error instanceof Error ? error.message : String(error)}`)
    }
  }
  const barred = blocked > 0 && !confirmed
  return (
    <>
      <div className="column parts-column">
        <h2>Work</h2>
        <ScheduleEntry listed={listed} onChoose={() => setChosen(SCHEDULE)} />
        <h2>Parts</h2>
        <ul className="part-list" aria-label="Parts to export">
          {parts.map((one) => (
            <li key={one.id} className={one.id === part?.id ? 'part-row chosen' : 'part-row'}>
              <label className="check">
                <input
                  type="checkbox"
                  checked={!left.has(one.id)}
                  onChange={() => toggle(one.id)}
                  aria-label={`Export ${one.title}`}
                />
              </label>
              <button
                type="button"
                className="part-pick"
                aria-current={one.id === part?.id ? 'true' : undefined}
                onClick={() => setChosen(one.id)}
              >
                <span className="part-thumb">
                  <PartDrawing part={one} />
                </span>
                <span>
                  {one.title}
                  <span className="small soft">{one.seen}</span>
                </span>
              </button>
            </li>
          ))}
        </ul>
      </div>
      <section className="sheet part-sheet" aria-label={listed ? 'The work' : 'The chosen part'}>
        {listed ? (
          <ScheduleTable />
        ) : choices.come === 'laid out on stock' ? (
          <StockSheets only={wanted.map((one) => one.id)} lines={choices.lines} />
        ) : (
          part && (
            <>
              <header className="part-head">
                <div className="part-title">
                  <h2>{part.title}</h2>
                  <ViewButtons onPaper={onPaper} onChange={setOnPaper} />
                </div>
                <p className="soft">
                  {part.seen}
                  {part.mirrored ? ', mirrored' : ''}; {headWords(part.headEnd)};{' '}
                  {sayLength(part.thickness, layout.design.units)} thick
                </p>
              </header>
              <div className="part-large">
                {onPaper ? (
                  <Suspense fallback={null}>
                    <SheetMap part={part} />
                  </Suspense>
                ) : (
                  <>
                    <PartDrawing part={part} full>
                      <ToolLines part={part} />
                    </PartDrawing>
                    <ToolCorner part={part} />
                  </>
                )}
              </div>
              <ul className="part-legend" aria-label="Lines">
                <li className="legend-cut">cut through</li>
                <li className="legend-recess">recess, to a depth</li>
                <li className="legend-mark">mark, never cut</li>
                <li className="legend-datum">line to measure from</li>
                {layout.design.cutting.process !== 'by hand' && (
                  <li className="legend-tool">middle of the tool, and what it takes away</li>
                )}
              </ul>
            </>
          )
        )}
      </section>
      <aside className="inspector" aria-label="Export">
        {listed && <ScheduleAside />}
        <h2>Templates, 1 to 1</h2>
        <ChoiceField
          label="Files"
          value={format}
          options={['svg', 'dxf', 'both']}
          name={(one) => (one === 'both' ? 'both' : one.toUpperCase())}
          onCommit={(next) => {
            setFormat(next as Format | 'both')
            return ACCEPTED
          }}
        />
        {format !== 'svg' && (
          <ChoiceField
            label="Numbers in the DXF are"
            value={dxfUnits}
            options={['mm', 'inches']}
            onCommit={(next) => {
              setDxfUnits(next as 'mm' | 'inches')
              return ACCEPTED
            }}
          />
        )}
        <ChoiceRows choices={choices} format={format} onChange={setChoices} />
        {choices.come === 'laid out on stock' && <StockFields />}
        {blocked > 0 && (
          <div className="barred">
            <p>
              <b className="stop">
                {blocked === 1 ? 'One stop is' : `${blocked} stops are`} neither mended nor overruled.
              </b>{' '}
              What is cut from these templates cannot be built as it stands, or will fail.
            </p>
            <button type="button" className="link" onClick={() => goTo('prove')}>
              See {blocked === 1 ? 'it' : 'them'} in Prove
            </button>
            <label className="check">
              <input
                type="checkbox"
                checked={confirmed}
                onChange={(event) => setConfirmed(event.target.checked)}
              />
              Export all the same
            </label>
          </div>
        )}
        <button
          type="button"
          className="main"
          disabled={barred || wanted.length === 0}
          onClick={() => write(wanted.map((one) => one.id))}
        >
          {wanted.length === 0
            ? 'No part is chosen'
            : wanted.length === 1
              ? 'Save one part'
              : `Save ${wanted.length} parts`}
        </button>
        {part && (
          <button type="button" disabled={barred} onClick={() => write([part.id])}>
            Save only “{part.title}”
          </button>
        )}
        <p className="small soft" role="status" aria-live="polite">
          {made ?? 'Every drawing carries its title, its scale bar and the face it is seen from.'}
        </p>
        <h2>How it is cut</h2>
        <MachineFields />
        <TestPiece format={format} dxfUnits={dxfUnits} choices={choices} />
        <Suspense fallback={null}>
          <PaperPanel parts={wanted} barred={barred} />
        </Suspense>
        <h2>The design itself</h2>
        <p className="small soft">A file of plain text that opens here again, on any machine.</p>
        <button type="button" onClick={saveDesign}>
          Save design
        </button>
        <Cautions />
      </aside>
    </>
  )
}

function headWords(end: 'left' | 'right' | 'top' | 'towards the viewer' | 'away from the viewer'): string {
  if (end === 'left' || end === 'right') return `the head lies to the ${end}`
  if (end === 'top') return 'the head lies at the top'
  return `the head points ${end}`
}

function saySaved(files: readonly MadeFile[]): string {
  if (files.length === 1) return `Saved ${files[0]?.name}.`
  return `Saved ${files.length} files. If some are missing, allow this page to save several files.`
}
