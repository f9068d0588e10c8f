/** Everything on the instrument, by face: a real list, so that what the canvas draws can be read and reached. */
import {
  check,
  FACES,
  type Face,
  type Finding,
  formatMeasure,
  GROUPS,
  KINDS,
  type Layout,
} from '../../geometry/index.ts'
import { addThing, select, useBench } from '../state/index.ts'
import { useLayout } from './calm.ts'
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

function ThingRow({ row, layout, findings }: { row: Row; layout: Layout; findings: readonly Finding[] }) {
  const selected = useBench((bench) => bench.selection === row.id)
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
        onClick={() => select(row.id)}
      >
        <span className="thing-name">{row.title}</span>
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
