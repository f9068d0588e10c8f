/** The wiring as it will be soldered: diagram, what it does, every wire with its length, and what can hurt. */
import { useEffect, useState } from 'react'
import type { WiringDiagram } from '../../exporters/index.ts'
import {
  componentName,
  decibels,
  type Layout,
  TERMINAL_NAMES,
  type WiringFacts,
  wiringOf,
} from '../../geometry/index.ts'
import { downloadAll } from '../actions/files.ts'
import { WiringDrawing } from '../drawings/WiringDrawing.tsx'
import { useLayout } from './calm.ts'
import { sayLength } from './say.ts'

type Exporters = typeof import('../../exporters/index.ts')

/** The exporters, fetched when a diagram is first wanted. */
function useExporters(): Exporters | null {
  const [exporters, setExporters] = useState<Exporters | null>(null)
  useEffect(() => {
    let gone = false
    import('../../exporters/index.ts')
      .then((module) => {
        if (!gone) setExporters(module)
      })
      .catch(() => undefined)
    return () => {
      gone = true
    }
  }, [])
  return exporters
}

export function WiringSheet() {
  const layout = useLayout()
  const exporters = useExporters()
  const [marked, setMarked] = useState<number | null>(null)
  const facts = wiringOf(layout)
  const diagram = exporters && facts ? exporters.wiringDiagram(layout) : null
  return (
    <section className="sheet wiring-sheet" aria-label="Wiring">
      <header className="wiring-head">
        <h2>Wiring, lugs seen from the shaft side</h2>
        {diagram && exporters && <SaveDiagram layout={layout} exporters={exporters} />}
      </header>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: it scrolls, so keys must be able to reach it */}
      <section className="wiring-scroll" tabIndex={0} aria-label="Diagram and wires">
        {!facts && (
          <p className="soft">
            Nothing is wired yet. Take one of the usual circuits on the right, or add components one by one.
          </p>
        )}
        {diagram && <Drawn diagram={diagram} marked={marked} />}
        {facts && <Does facts={facts} />}
        {facts && <Wires layout={layout} facts={facts} onMark={setMarked} />}
        <Cautions />
      </section>
    </section>
  )
}

function Drawn({ diagram, marked }: { readonly diagram: WiringDiagram; readonly marked: number | null }) {
  return (
    <>
      <WiringDrawing diagram={diagram} marked={marked} />
      <p className="small soft">{diagram.picture.caption}</p>
    </>
  )
}

function SaveDiagram({ layout, exporters }: { readonly layout: Layout; readonly exporters: Exporters }) {
  const save = () => {
    const text = exporters.wiringSvg(layout)
    const name = `${exporters.slug(layout.design.title, 'box')}-wiring.svg`
    if (text) void downloadAll([{ name, text, type: 'image/svg+xml' }])
  }
  return (
    <button type="button" className="quiet" onClick={save}>
      Save as SVG
    </button>
  )
}

const hertz = (value: number) => `${value < 100 ? value.toFixed(1) : value.toFixed(0)} Hz`

function Does({ facts }: { readonly facts: WiringFacts }) {
  const rows: [string, string, string][] = [
    ...facts.pickups.map(({ component, most, bassCorner }): [string, string, string] => [
      componentName(component),
      most > 0
        ? `${(most * 100).toFixed(0)}% (${decibels(most).toFixed(1).replace('-', '−')} dB) of the lowest note at the jack`
        : 'not heard',
      bassCorner === null
        ? 'divider R / (R + Rₛ), knobs for most'
        : `its bass gives way below ${hertz(bassCorner)}: 1 / (2 π R C)`,
    ]),
    ...facts.tones.map(({ pot, capacitor, own, down }): [string, string, string] => [
      `${componentName(pot)} with ${componentName(capacitor).toLowerCase()}`,
      down === null ? `corner ${hertz(own)} by itself` : `turned down, treble goes above ${hertz(down)}`,
      `1 / (2 π R C); ${hertz(own)} for the pot’s own track`,
    ]),
  ]
  if (rows.length === 0) return null
  return (
    <div className="fret-table">
      <table>
        <caption className="unseen">What the circuit does, by estimate</caption>
        <thead>
          <tr>
            <th scope="col" className="left">
              What it does
            </th>
            <th scope="col" className="left">
              comes to
            </th>
            <th scope="col" className="left">
              by
            </th>
          </tr>
        </thead>
        <tbody>
          {rows.map(([who, what, by], index) => (
            <tr key={index}>
              <th scope="row" className="left">
                {who}
              </th>
              <td className="left">{what}</td>
              <td className="left soft">{by}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <p className="small soft">
        Coils count by the resistance of their wire; their inductance, which shapes the treble, and the cable
        are left out.
      </p>
    </div>
  )
}

interface WiresProps {
  readonly layout: Layout
  readonly facts: WiringFacts
  readonly onMark: (wire: number | null) => void
}

function Wires({ layout, facts, onMark }: WiresProps) {
  const { wiring, units } = layout.design
  const end = (terminal: string) => {
    const [id, pin] = terminal.split('.')
    const component = wiring.components.find((one) => one.id === id)
    return component ? `${componentName(component)}, ${TERMINAL_NAMES[pin ?? ''] ?? pin}` : terminal
  }
  if (wiring.wires.length === 0) return <p className="soft small">No wires yet.</p>
  const lost = new Set(facts.runs.flatMap((run) => run.lost))
  const names = wiring.components.filter((one) => lost.has(one.id)).map(componentName)
  return (
    <div className="fret-table">
      <table>
        <caption className="unseen">Wires, with the length to cut them to</caption>
        <thead>
          <tr>
            <th scope="col" className="left">
              From
            </th>
            <th scope="col" className="left">
              To
            </th>
            <th scope="col" className="left">
              Colour
            </th>
            <th scope="col">Cut to</th>
          </tr>
        </thead>
        <tbody>
          {wiring.wires.map((wire, index) => {
            const length = facts.runs[index]?.length ?? null
            return (
              <tr key={index} onPointerEnter={() => onMark(index)} onPointerLeave={() => onMark(null)}>
                <td className="left">{end(wire.from)}</td>
                <td className="left">{end(wire.to)}</td>
                <td className="left">{wire.colour}</td>
                <td>{length === null ? '–' : sayLength(length, units)}</td>
              </tr>
            )
          })}
        </tbody>
      </table>
      <p className="small soft">
        Square along the box between the things, {sayLength(wiring.slack, units)} of slack included.
        {names.length > 0 &&
          ` No length where an end stands nowhere: ${names.join(', ')}. Say where under “Stands at”.`}
      </p>
    </div>
  )
}

function Cautions() {
  return (
    <ul className="small soft wiring-cautions" aria-label="Before you solder">
      <li>
        Solder where air moves, and keep your face out of the fumes: flux harms the lungs. Lead-free solder,
        or wash your hands.
      </li>
      <li>The iron burns long after it is pulled out. Try the harness on the amplifier before it goes in.</li>
      <li>
        An amplifier that runs on mains power is for a qualified person and for your local codes: nothing here
        grounds it.
      </li>
    </ul>
  )
}
