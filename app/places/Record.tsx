/** Record: the sheet that goes with the instrument, with room to write how it came out. */
import { type ReactNode, useMemo } from 'react'
import { buildSheet, type Section } from '../../exporters/index.ts'
import { fieldsOf, unbroken } from '../../geometry/index.ts'
import { useDesign } from '../parts/calm.ts'
import { AsBuilt } from '../record/AsBuilt.tsx'
import { Handing } from '../record/Handing.tsx'
import { History } from '../record/History.tsx'
import { SheetBlock } from '../record/SheetBlocks.tsx'
import { Written } from '../record/Written.tsx'
import { setField } from '../state/index.ts'

export function Record() {
  const design = useDesign()
  const sheet = useMemo(() => buildSheet(design), [design])
  const labels = new Map(fieldsOf('record').map((one) => [one.name, one.label]))
  const { maker, made } = design.record
  const line = (name: 'maker' | 'made', value: string) => (
    <div>
      <dt>{labels.get(name)}</dt>
      <dd>
        <Written
          label={labels.get(name) ?? name}
          value={value}
          take={(text) => setField(['record', name], text, labels.get(name) ?? name)}
        />
      </dd>
    </div>
  )
  return (
    <>
      <nav className="column sheet-contents" aria-label="Parts of the sheet">
        <h2>The sheet</h2>
        <ul>
          {sheet.sections.map((one) => (
            <li key={one.id}>
              <button type="button" className="link" onClick={() => showSection(one.id)}>
                {one.title}
              </button>
            </li>
          ))}
        </ul>
      </nav>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: it scrolls, so keys must be able to reach it */}
      <section className="desk" aria-label="Build sheet" tabIndex={0}>
        <article className="build-sheet">
          <header>
            <h2 dir="auto">{sheet.title}</h2>
            <dl className="record-head">
              {sheet.head
                .filter(([label]) => label !== 'Made by' && label !== 'Made')
                .map(([label, value]) => (
                  <div key={label}>
                    <dt>{label}</dt>
                    <dd dir="auto">{unbroken(value)}</dd>
                  </div>
                ))}
              {line('maker', maker)}
              {line('made', made)}
            </dl>
          </header>
          {sheet.sections.map((section) => (
            <SheetSection key={section.id} section={section} units={sheet.units} />
          ))}
          <p className="sheet-note">Design {sheet.checksum}. All loads are estimates.</p>
        </article>
      </section>
      <Handing />
    </>
  )
}

function showSection(id: string): void {
  const section = document.getElementById(`sheet-${id}`)
  const desk = section?.closest<HTMLElement>('.desk')
  if (section && desk)
    desk.scrollTop += section.getBoundingClientRect().top - desk.getBoundingClientRect().top - 12
}

interface SectionProps {
  readonly section: Section
  readonly units: ReturnType<typeof buildSheet>['units']
}

/** Sections that are written on have their own hands; all others are shown as they are printed. */
function SheetSection({ section, units }: SectionProps) {
  const inside: Readonly<{ [id: string]: ReactNode }> = {
    'as-built': (
      <>
        <AsBuilt />
        <MakersNotes />
      </>
    ),
    history: <History />,
  }
  return (
    <section id={`sheet-${section.id}`} aria-label={section.title}>
      <h3>{section.title}</h3>
      {inside[section.id] ??
        section.blocks.map((block, index) => <SheetBlock key={index} block={block} units={units} />)}
    </section>
  )
}

function MakersNotes() {
  const { notes } = useDesign().record
  const label = fieldsOf('record').find((one) => one.name === 'notes')?.label ?? 'Notes'
  return (
    <div className="makers-notes">
      <h4>{label}</h4>
      <Written
        label={label}
        long
        value={notes}
        placeholder="How it came out, what you would do otherwise, what was hard to find"
        take={(text) => setField(['record', 'notes'], text, label)}
      />
    </div>
  )
}
