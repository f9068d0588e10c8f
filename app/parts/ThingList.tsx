/** Everything on the instrument, by face: a real list, so that what the canvas draws can be read and reached. */
import { type MouseEvent, memo } from 'react'
import {
  check,
  FACES,
  type Face,
  type Finding,
  formatMeasure,
  GROUPS,
  KINDS,
  type Layout,
  ruleOf,
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
import { FACE_TITLES, nameOfPlaced } from './say.ts'
import { namesOf, PIECES } from './structure.ts'
import { tightestAbout } from './tightness.ts'

interface Row {
  readonly id: string
  readonly title: string
  readonly locked?: boolean
}

const piece = (id: string): Row[] => PIECES.filter((one) => one.id === id)

export function ThingList() {
  const layout = useLayout()
  const findings = check(layout)
  const selection = useBench((bench) => bench.selection)
  const also = useBench((bench) => bench.also)
  const shared = { layout, findings, chosen: new Set([selection, ...also]) }
  return (
    <nav className="things" aria-label="On the faces">
      <Group title="Box" rows={piece('box')} {...shared} />
      {FACES.map((face) => {
        const rows = layout.placed
          .filter((one) => one.face === face)
          .map((one) => ({ id: one.thing.id, title: nameOfPlaced(one), locked: one.thing.locked }))
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
  /** Ids of what is selected: asked once for all, since thousands of rows that each ask take longer than a frame. */
  readonly chosen: ReadonlySet<string | null>
}

function Group({ title, face, rows, layout, findings, chosen }: GroupProps) {
  return (
    <section className="thing-group" aria-label={title}>
      <header>
        <h2>{title}</h2>
        {face && <PutMenu face={face} />}
      </header>
      <ul>
        {rows.map((row) => (
          <ThingRow
            key={row.id}
            id={row.id}
            title={row.title}
            locked={row.locked === true}
            selected={chosen.has(row.id)}
            tight={tightestOf(row.id, layout, findings)}
            units={layout.design.units}
          />
        ))}
      </ul>
    </section>
  )
}

/** Kinds that this face can carry. */
function PutMenu({ face }: { face: Face }) {
  const items = GROUPS.flatMap((group) =>
    Object.values(KINDS)
      .filter((kind) => kind.group === group && (kind.faces as readonly Face[]).includes(face))
      .map((kind) => ({ title: kind.title, under: group, run: () => void addThing(kind.kind, face) })),
  )
  return (
    <Menu
      label="Put…"
      name={`Put something on the ${FACE_TITLES[face].toLowerCase()}`}
      className="link"
      items={items}
    />
  )
}

const tightestOf = (id: string, layout: Layout, findings: readonly Finding[]): Finding | null =>
  namesOf(id, layout)
    .map((name) => tightestAbout(findings, name))
    .find((one) => one !== null) ?? null

/** With a thing all that is grouped with it. */
function choose(id: string): void {
  const all = withGroups(useBench.getState().design, [id])
  if (all.length > 1) selectAll(all)
  else select(id)
}

interface ThingRowProps {
  readonly id: string
  readonly title: string
  readonly locked: boolean
  readonly selected: boolean
  readonly tight: Finding | null
  readonly units: Layout['design']['units']
}

/** Made anew only when something in it is another: a list of thousands follows a drag that way. */
const ThingRow = memo(
  function ThingRow({ id, title, locked, selected, tight, units }: ThingRowProps) {
    const wrong = tight && tight.grade !== 'clear'
    const menu = (event: MouseEvent<HTMLElement>) => {
      event.preventDefault()
      if (!selectedThings().includes(id)) choose(id)
      const box = event.currentTarget.getBoundingClientRect()
      const at = { x: event.clientX || box.left + 24, y: event.clientY || box.bottom }
      openHere({ ...at, from: event.currentTarget })
    }
    return (
      <li>
        <button
          type="button"
          className={selected ? 'thing-row chosen' : 'thing-row'}
          aria-current={selected ? 'true' : undefined}
          onClick={(event) =>
            event.shiftKey || event.ctrlKey || event.metaKey ? toggleSelected(id) : choose(id)
          }
          onContextMenu={menu}
        >
          <span className="thing-name">
            {title}
            {locked && <span className="soft small"> locked</span>}
          </span>
          {wrong && <Sign grade={tight.grade} />}
          {tight && tight.measured !== null && (
            <span
              className={`thing-margin ${tight.grade}`}
              title={`Tightest: ${ruleOf(tight.rule).title.toLowerCase()}, ${formatMeasure(tight.measured, tight, units, { unit: true })}`}
            >
              {formatMeasure(tight.measured, tight, units)}
            </span>
          )}
        </button>
      </li>
    )
  },
  (a, b) =>
    a.title === b.title &&
    a.locked === b.locked &&
    a.selected === b.selected &&
    a.units === b.units &&
    a.tight?.rule === b.tight?.rule &&
    a.tight?.grade === b.tight?.grade &&
    a.tight?.measured === b.tight?.measured,
)
