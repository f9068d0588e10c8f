/** Everything on the instrument, by face: a real list, so that what the canvas draws can be read and reached. */
import { check, FACES, type Face, type Finding, KINDS, type Layout } from '../../geometry/index.ts'
import { addThing, select, useBench } from '../state/index.ts'
import { useLayout } from './calm.ts'
import { Menu } from './Menu.tsx'
import { FACE_TITLES, nameOf, sayMeasure } from './say.ts'
import { Sign } from './Sign.tsx'
import { tightestAbout } from './tightness.ts'

interface Row {
  readonly id: string
  readonly title: string
  /** Names by which findings speak of it. */
  readonly about: readonly string[]
}

const STRUCTURE: readonly (readonly [string, readonly Row[]])[] = [
  [
    'Neck and strings',
    [
      { id: 'neck', title: 'Neck', about: ['neck'] },
      { id: 'board', title: 'Fretboard', about: ['board'] },
      { id: 'headstock', title: 'Headstock', about: ['headstock', 'posts', 'head'] },
      { id: 'nut', title: 'Nut', about: ['nut'] },
    ],
  ],
]

const ON_LID: readonly Row[] = [
  { id: 'saddle', title: 'Saddle', about: ['saddle'] },
  { id: 'tailpiece', title: 'String holes', about: ['tailpiece', 'tail holes'] },
]

export function ThingList() {
  const layout = useLayout()
  const findings = check(layout)
  return (
    <nav className="things" aria-label="On the faces">
      <Group title="Box" rows={[{ id: 'box', title: 'The box itself', about: ['box'] }]} layout={layout} findings={findings} />
      {FACES.map((face) => {
        const rows = layout.placed
          .filter((one) => one.face === face)
          .map(({ thing }) => ({ id: thing.id, title: nameOf(thing.id, layout), about: [thing.id] }))
        return (
          <Group
            key={face}
            title={FACE_TITLES[face]}
            face={face}
            rows={face === 'lid' ? [...ON_LID, ...rows] : rows}
            layout={layout}
            findings={findings}
          />
        )
      })}
      {STRUCTURE.map(([title, rows]) => (
        <Group key={title} title={title} rows={rows} layout={layout} findings={findings} />
      ))}
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
        <h3>{title}</h3>
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
    .map((kind) => ({ title: kind.title, under: `Put on the ${FACE_TITLES[face].toLowerCase()}`, run: () => void addThing(kind.kind, face) }))
  return <Menu label="Put…" name={`Put something on the ${FACE_TITLES[face].toLowerCase()}`} className="link" items={items} />
}

function ThingRow({ row, layout, findings }: { row: Row; layout: Layout; findings: readonly Finding[] }) {
  const selected = useBench((bench) => bench.selection === row.id)
  const tight = row.about.map((name) => tightestAbout(findings, name)).find((one) => one !== null) ?? null
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
          <span className={`thing-margin ${tight.grade}`} title={`Tightest: ${sayMeasure(tight.measured, tight.unit, layout.design.units)}`}>
            {sayMeasure(tight.measured, tight.unit, layout.design.units)}
          </span>
        )}
      </button>
    </li>
  )
}
