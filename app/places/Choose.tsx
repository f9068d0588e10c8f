/** Choose: strings, scale, neck and what goes with them, with what follows from each choice beside it. */
import { Fragment, lazy, Suspense, useEffect } from 'react'
import { type Field, fieldsOf } from '../../geometry/index.ts'
import { useFitOpen } from '../fit/open.ts'
import { useLayout } from '../parts/calm.ts'
import { Fields } from '../parts/Fields.tsx'
import { FretList } from '../parts/FretList.tsx'
import { GaugeChooser } from '../parts/GaugeChooser.tsx'
import { Gauges } from '../parts/Gauges.tsx'
import { useNarrow } from '../parts/narrow.ts'
import { OwnWoods } from '../parts/OwnWoods.tsx'
import { PlaceField } from '../parts/PlaceField.tsx'
import { SheetPanel } from '../parts/SheetPanel.tsx'
import { Stock } from '../parts/Stock.tsx'
import { StringRows } from '../parts/StringRows.tsx'
import { Tuning } from '../parts/Tuning.tsx'
import { TypicalTuners } from '../parts/TypicalTuners.tsx'
import { useBench } from '../state/index.ts'
import { Follows } from './Follows.tsx'
import { LoadTabs, type Side } from './LoadTabs.tsx'

const GROUPS: readonly (readonly [section: string, title: string])[] = [
  ['strings', 'Strings'],
  ['stringing', 'Stringing'],
  ['scale', 'Scale and frets'],
  ['neck', 'Neck'],
  ['board', 'Fretboard'],
  ['headstock', 'Headstock'],
  ['nut', 'Nut'],
  ['saddle', 'Saddle'],
  ['tailpiece', 'Tailpiece'],
  ['brace', 'Brace under the lid'],
  ['balance', 'Weight and balance'],
]

/** Not a section of fields but a list; it stands at the end of the form. */
const OWN_WOODS = 'woods'

/** Brings a group into view by scrolling the form alone; in a window so small that the page scrolls, the page. */
function showGroup(section: string): void {
  const group = document.getElementById(`group-${section}`)
  const form = group?.closest<HTMLElement>('.form-scroll')
  if (!group || !form) return
  if (form.scrollHeight <= form.clientHeight) group.scrollIntoView?.({ block: 'start' })
  else form.scrollTop += group.getBoundingClientRect().top - form.getBoundingClientRect().top
}

/** What is selected on the drawing has its fields brought into view. */
function useFollowing(): void {
  const selection = useBench((bench) => bench.selection)
  useEffect(() => {
    if (selection) showGroup(selection)
  }, [selection])
}

/** On a narrow page what follows has no column of its own. */
const FOLLOWS_TOO: readonly Side[] = [['What follows', Follows]]

/** What fits the box is asked now and then, and fetched when it is. */
const FitPlace = lazy(() => import('../fit/FitPlace.tsx').then((page) => ({ default: page.FitPlace })))

export function Choose() {
  const asking = useFitOpen((state) => state.open)
  return asking ? (
    <Suspense fallback={null}>
      <FitPlace />
    </Suspense>
  ) : (
    <Choices />
  )
}

function Choices() {
  useFollowing()
  const narrow = useNarrow()
  return (
    <>
      <div className="column form-column">
        <p className="fit-opener">
          <button type="button" onClick={() => useFitOpen.setState({ open: true })}>
            What fits this box?
          </button>
        </p>
        <nav className="jump" aria-label="Groups of choices">
          {[...GROUPS, [OWN_WOODS, 'Own woods'] as const].map(([section, title]) => (
            <button key={section} type="button" className="link" onClick={() => showGroup(section)}>
              {title}
            </button>
          ))}
        </nav>
        <form className="form-scroll" aria-label="Choices" onSubmit={(event) => event.preventDefault()}>
          {GROUPS.map(([section, title]) => (
            <Group key={section} section={section} title={title} />
          ))}
          <section className="form-group" id={`group-${OWN_WOODS}`} aria-label="Own woods">
            <h2>Own woods</h2>
            <OwnWoods />
          </section>
        </form>
      </div>
      <div className="middle">
        <SheetPanel place="choose" opens="all" />
        <div className="follows-row">
          {!narrow && <Follows />}
          <LoadTabs first={narrow ? FOLLOWS_TOO : []} />
        </div>
      </div>
    </>
  )
}

/** One section of the design as a form. */
export function Group({ section, title }: { section: string; title: string }) {
  const layout = useLayout()
  const fields = fieldsOf(section)
  const place = fields.find((one) => one.unit === 'place')
  return (
    <section className="form-group" id={`group-${section}`} aria-label={title}>
      <h2>{title}</h2>
      {place && (
        <PlaceField
          layout={layout}
          label={place.label}
          help={place.help}
          address={place.address}
          path={[section, place.name]}
          axis="along"
          place={layout.design.saddle.place}
          at={layout.saddle.along}
          thing={null}
        />
      )}
      <div className="field-grid">
        <InOrder fields={fields} section={section} />
        {section === 'stringing' && <GaugeChooser />}
        {section === 'headstock' && <TypicalTuners />}
      </div>
    </section>
  )
}

/** The fields of a section in the order of the file, lists with their own widgets where they stand. */
function InOrder({ fields, section }: { fields: readonly Field[]; section: string }) {
  return fields.map((field) => {
    if (field.unit === 'fret list') return <FretList key={field.name} field={field} />
    if (section === 'stringing' && field.name === 'tuning')
      return (
        <Fragment key={field.name}>
          <Tuning field={field} />
          <StringRows />
        </Fragment>
      )
    if (section === 'stringing' && field.name === 'stock') return <Stock key={field.name} field={field} />
    if (field.name === 'gauges') return <Gauges key={field.name} field={field} />
    return <Fields key={field.name} fields={[field]} base={[section]} />
  })
}
