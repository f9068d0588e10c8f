/** Everything on the instrument, by face: a real list, so that what the canvas draws can be read and reached. */
import {
  check,
  FACES,
  type Face,
  type Finding,
  formatMeasure,
  KINDS,
  type Layout,
} from '../../geometry/index.ts'
import { openHere } from '../canvas/here.ts'
import {
  addThing,
  select,
  selectAll,
  selectedThings,
  toggleSelected,
  useBench,
  withGroups,
} from '../state/index.ts'
import { useLayout } from './calm.ts'
import { Measures } from './Measures.tsx'
import { Menu } from './Menu.tsx'
import { Sign } from './Sign.tsx'
import { FACE_TITLES, nameOf } from './say.ts'
import { namesOf, PIECES } from './structure.ts'
import { tightestAbout } from './tightness.ts'

interface Row {
  readonly id: string
  readonly title: string
}

const piece = (id: string): Row[] => PIECES.filter((one) => one.id === id)

export function ThingList() {
  const layout = useLayout()
  const findings = check(layout)
  const shared = { layout, findings }
  return (
    <nav className="things" aria-label="On the faces">
      <Group title="Box" rows={piece('box')} {...shared} />
      {FACES.map((face) => {
        const rows = layout.placed
          .filter((one) => one.face === face)
          .map(({ thing }) => ({ id: thing.id, title: nameOf(thing.id, layout) }))
        const pieces = face === 'lid' ? [...piece('saddle'), ...piece('tailpiece')] : []
        return (
          <Group key={face} title={FACE_TITLES[face]} face={face} rows={[...pieces, ...rows]} {...shared} />
        )
      })}
      <Group
        title="Neck, strings and brace"
        rows={['neck', 'board', 'headstock', 'nut', 'strings', 'brace'].flatMap(piece)}
        {...shared}
      />
      <Measures />
    </nav>
  )
}

interface GroupProps {
  readonly title: string
  readonly face?: Face
  readonly rows: readonly Row[]
  readonly layout: Layout
  readonly findings: readonly Finding[]
}

function Group({ title, face, rows, layout, findings }: GroupProps) {
  return (
    <section className="thing-group" aria-label={title}>
      <header>
        <h2>{title}</h2>
        {face && <PutMenu face={face} />}
      </header>
      <ul>
        {rows.map((row) => (
          <ThingRow key={row.id} row={row} layout={layout} findings={findings} />
        ))}
      </ul>
    </section>
  )
}

/** Kinds that this face can carry. */
function PutMenu({ face }: { face: Face }) {
  const items = Object.values(KINDS)
    .filter((kind) => (kind.faces as readonly Face[]).includes(face))
    .map((kind) => ({
      title: kind.title,
      under: `Put on the ${FACE_TITLES[face].toLowerCase()}`,
      run: () => void addThing(kind.kind, face),
    }))
  return (
    <Menu
      label="Put…"
      name={`Put something on the ${FACE_TITLES[face].toLowerCase()}`}
      className="link"
      items={items}
    />
  )
}

/** With a thing all that is grouped with it. */
function choose(id: string): void {
  const all = withGroups(useBench.getState().design, [id])
  if (all.length > 1) selectAll(all)
  else select(id)
}

function ThingRow({ row, layout, findings }: { row: Row; layout: Layout; findings: readonly Finding[] }) {
  const selected = useBench((bench) => bench.selection === row.id || bench.also.includes(row.id))
  const locked = layout.design.things.some((thing) => thing.id === row.id && thing.locked)
  const tight =
    namesOf(row.id, layout)
      .map((name) => tightestAbout(findings, name))
      .find((one) => one !== null) ?? null
  const wrong = tight && tight.grade !== 'clear'
  return (
    <li>
      <button
        type="button"
        className={selected ? 'thing-row chosen' : 'thing-row'}
        aria-current={selected ? 'true' : undefined}
        onClick={(event) =>
          event.shiftKey || event.ctrlKey || event.metaKey ? toggleSelected(row.id) : choose(row.id)
        }
        onContextMenu={(event) => {
          event.preventDefault()
          if (!selectedThings().includes(row.id)) choose(row.id)
          const box = event.currentTarget.getBoundingClientRect()
          openHere({
            x: event.clientX || box.left + 24,
            y: event.clientY || box.bottom,
            from: event.currentTarget,
          })
        }}
      >
        <span className="thing-name">
          {row.title}
          {locked && <span className="soft small"> locked</span>}
        </span>
        {wrong && <Sign grade={tight.grade} />}
        {tight && tight.measured !== null && (
          <span
            className={`thing-margin ${tight.grade}`}
            title={`Tightest: ${formatMeasure(tight.measured, tight, layout.design.units)}`}
          >
            {formatMeasure(tight.measured, tight, layout.design.units)}
          </span>
        )}
      </button>
    </li>
  )
}
