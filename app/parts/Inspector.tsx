/** What is selected, with all its fields: made from the schema, so nothing here knows the kinds by name. */
import {
  check,
  companionsOf,
  fieldsOf,
  fieldsOfKind,
  indexOfThing,
  kindOf,
  type Layout,
  type Placed,
  placedCalled,
} from '../../geometry/index.ts'
import { act, actionOf } from '../actions/actions.ts'
import { TOGETHER_ACTIONS } from '../actions/together.ts'
import { select, selectedThings, takeSizes, useBench } from '../state/index.ts'
import { useLayout } from './calm.ts'
import { Fields } from './Fields.tsx'
import { FindingNote } from './FindingNote.tsx'
import { Menu } from './Menu.tsx'
import { PickupHearing } from './PickupHearing.tsx'
import { PlaceField } from './PlaceField.tsx'
import { FACE_TITLES, nameOf, sayStep } from './say.ts'
import { namesOf, type Piece, pieceOf } from './structure.ts'
import { TypicalTuners } from './TypicalTuners.tsx'
import { wrongAbout } from './tightness.ts'

export function Inspector() {
  const layout = useLayout()
  const selection = useBench((bench) => bench.selection)
  const placed = placedCalled(layout, selection)
  const several = useBench((bench) => bench.also.length > 0 && selectedThings(bench).length > 1)
  const piece = pieceOf(selection)
  return (
    <aside className="inspector" aria-label="What is selected">
      {several ? (
        <SeveralSelected layout={layout} />
      ) : placed ? (
        <ThingInspector key={placed.thing.id} layout={layout} placed={placed} />
      ) : piece ? (
        <PieceInspector key={piece.id} layout={layout} piece={piece} />
      ) : (
        <NothingSelected layout={layout} />
      )}
    </aside>
  )
}

function ThingInspector({ layout, placed }: { layout: Layout; placed: Placed }) {
  const { thing, kind, at } = placed
  const index = indexOfThing(layout.design, thing.id)
  const base = ['things', index]
  const fields = fieldsOfKind(thing.kind)
  const field = (name: string) => fields.find((one) => one.name === name)
  const place = (axis: 'along' | 'across') => (
    <PlaceField
      layout={layout}
      label={field(axis)?.label ?? axis}
      help={field(axis)?.help ?? ''}
      address={field(axis)?.address}
      path={[...base, axis]}
      axis={axis}
      place={thing[axis]}
      at={axis === 'along' ? at.x : at.y}
      thing={thing}
    />
  )
  const own = fields.filter((one) => ![...COMMON, 'along', 'across', 'id'].includes(one.name))
  return (
    <>
      <header>
        <h2>{nameOf(thing.id, layout)}</h2>
        <p className="soft">
          {kind.title}, {kindOf(thing.kind).describe(thing)}, on the {FACE_TITLES[placed.face].toLowerCase()}
        </p>
      </header>
      <Wrong layout={layout} about={[thing.id]} />
      {(kind.presets?.length ?? 0) > 0 && (
        <p className="soft small">
          <Menu
            label="Typical sizes…"
            className="quiet"
            items={(kind.presets ?? []).map(({ title, fields: sizes }) => ({
              title,
              under: 'Common practice: measure yours',
              run: () => takeSizes(thing.id, sizes, nameOf(thing.id, layout)),
            }))}
          />
        </p>
      )}
      <Fields fields={own} base={base} />
      <h3>Where it stands</h3>
      {place('along')}
      {place('across')}
      <p className="soft small">
        Arrow keys move it by {sayStep(layout.design.units)}, with Shift by ten times that; Alt and an arrow
        make it larger or smaller. Alt while dragging lets go of every line, Shift on a handle keeps the far
        edge.
      </p>
      <Fields fields={fields.filter((one) => COMMON.includes(one.name))} base={base} />
      <PickupHearing layout={layout} id={thing.id} />
      <Companions layout={layout} thing={thing} />
      <ActionButtons ids={['duplicate', 'mirror', 'row', 'lock', 'remove']} />
    </>
  )
}

/** Fields that every kind has, shown after its own. */
const COMMON = ['turnDegrees', 'face', 'name', 'group', 'locked']

/** Buttons for actions, those that would do nothing now left out. */
function ActionButtons({ ids }: { readonly ids: readonly string[] }) {
  return (
    <div className="inspector-actions">
      {ids
        .map(actionOf)
        .filter((action) => action.enabled?.() !== false)
        .map((action) => (
          <button
            key={action.id}
            type="button"
            title={action.keys ? `${action.title} (${action.keys[0]})` : action.title}
            onClick={() => act(action.id)}
          >
            {action.title.replace(/[:,].*/, '')}
          </button>
        ))}
    </div>
  )
}

/** Who keeps the same sizes, and how to part from them. */
function Companions({ layout, thing }: { readonly layout: Layout; readonly thing: Placed['thing'] }) {
  const others = companionsOf(layout.design, thing.id)
  if (others.length === 0) return null
  const names = others.slice(0, 3).map((one) => nameOf(one.thing.id, layout))
  const more = others.length > 3 ? ` and ${others.length - 3} more` : ''
  return (
    <p className="soft small">
      Sizes that are alike stay alike with {names.join(', ')}
      {more}.{' '}
      {actionOf('part').enabled?.() && (
        <button type="button" className="link" onClick={() => act('part')}>
          Part from it
        </button>
      )}
    </p>
  )
}

function SeveralSelected({ layout }: { readonly layout: Layout }) {
  const ids = useBench((bench) => selectedThings(bench).join(' ')).split(' ')
  const lead = ids.at(-1) ?? ''
  return (
    <>
      <header>
        <h2>{ids.length} things</h2>
        <p className="soft">
          Dragged and moved by arrow keys together. Others line up with {nameOf(lead, layout)}, chosen last.
        </p>
      </header>
      <ul className="several">
        {ids.map((id) => (
          <li key={id}>
            <button type="button" className="link" onClick={() => select(id)}>
              {nameOf(id, layout)}
            </button>
          </li>
        ))}
      </ul>
      <ActionButtons ids={TOGETHER_ACTIONS.filter((action) => !action.hidden).map((action) => action.id)} />
      <ActionButtons ids={['duplicate', 'lock', 'remove']} />
    </>
  )
}

function PieceInspector({ layout, piece }: { layout: Layout; piece: Piece }) {
  const fields = fieldsOf(piece.section)
  const place = fields.find((one) => one.unit === 'place')
  return (
    <>
      <header>
        <h2>{piece.title}</h2>
        {piece.hint && <p className="soft">{piece.hint}</p>}
      </header>
      <Wrong layout={layout} about={namesOf(piece.id, layout)} />
      {place && (
        <PlaceField
          layout={layout}
          label={place.label}
          help={place.help}
          address={place.address}
          path={[piece.section, place.name]}
          axis="along"
          place={layout.design.saddle.place}
          at={layout.saddle.along}
          thing={null}
        />
      )}
      {piece.section === 'headstock' && <TypicalTuners />}
      <Fields fields={fields} base={[piece.section]} />
    </>
  )
}

function Wrong({ layout, about }: { layout: Layout; about: readonly string[] }) {
  const findings = check(layout)
  const wrong = about.flatMap((name) => wrongAbout(findings, name))
  if (wrong.length === 0) return null
  return (
    <ul className="inspector-wrong">
      {wrong.map((finding) => (
        <li key={finding.key}>
          <FindingNote finding={finding} layout={layout} />
        </li>
      ))}
    </ul>
  )
}

function NothingSelected({ layout }: { layout: Layout }) {
  return (
    <>
      <header>
        <h2>Nothing is selected</h2>
      </header>
      <p className="soft">
        Press something on the drawing or in the list to see its measures. Drag sound holes, pickup and screws
        where you want them; drag the saddle to slide neck and strings over the box.
      </p>
      <dl className="keys">
        <dt>B</dt>
        <dd>show the box</dd>
        <dt>F</dt>
        <dd>show the whole instrument</dd>
        <dt>Wheel, pinch</dt>
        <dd>zoom about the pointer</dd>
        <dt>Arrows</dt>
        <dd>move what is selected by {sayStep(layout.design.units)}, with Shift by ten times that</dd>
        <dt>Alt</dt>
        <dd>held while dragging: no line takes hold</dd>
        <dt>Shift</dt>
        <dd>with a press: one more; with a drag over the sheet: all in a frame</dd>
        <dt>H</dt>
        <dd>history, and versions by name</dd>
        <dt>[ and ]</dt>
        <dd>the thing before, the thing after</dd>
      </dl>
    </>
  )
}
