/** What follows from the choices: the numbers a builder would otherwise work out on paper. */
import { type Layout, loadsOf } from '../../geometry/index.ts'
import { useLayout } from '../parts/calm.ts'
import { exactly, FACE_TITLES, sayLength } from '../parts/say.ts'
import { sayFine, sayPull } from '../parts/say-loads.ts'

interface Row {
  readonly label: string
  readonly value: string
  readonly title?: string
}

export function Follows() {
  const layout = useLayout()
  return (
    <section
      className="follows"
      aria-label="What follows"
      // biome-ignore lint/a11y/noNoninteractiveTabindex: it scrolls, so keys must be able to reach it
      tabIndex={0}
    >
      <h2>What follows</h2>
      <dl>
        {rowsOf(layout).map((row) => (
          <div key={row.label} title={row.title}>
            <dt>{row.label}</dt>
            <dd>{row.value}</dd>
          </div>
        ))}
      </dl>
    </section>
  )
}

export function rowsOf(layout: Layout): Row[] {
  const { design, strings, box, neck, frets, saddle, board } = layout
  const say = (mm: number) => sayLength(mm, design.units)
  const long = (label: string, mm: number): Row => ({ label, value: say(mm), title: exactly(mm) })
  const [first, second] = strings
  const real = frets.filter((fret) => fret.number > 0)
  const before = real.filter((fret) => fret.fromNut <= box.x0).at(-1)
  const over = real.filter((fret) => fret.overBox && fret.onWood)
  return [
    ...(first && second
      ? [
          long('Between strings at the nut', second.yAtNut - first.yAtNut),
          long('Between strings at the saddle', second.yAtSaddle - first.yAtSaddle),
        ]
      : []),
    long('Nut to the box', box.x0),
    {
      label: 'Fret at the box',
      value: before ? `${before.number}, ${say(box.x0 - before.fromNut)} off` : 'none before it',
    },
    {
      label: 'Frets over the box',
      value: over.length === 0 ? 'none' : `${over.length} (${over[0]?.number}–${over.at(-1)?.number})`,
    },
    ...(board ? [long('Board over the lid', board.overLid)] : []),
    long('Saddle on the lid', saddle.along),
    long('Nut to the saddle line', saddle.x),
    {
      label: 'Blank used',
      value: `${say(neck.needs.total)} of ${say(design.neck.length)}`,
      title: exactly(neck.needs.total),
    },
    ...neck.slots.map((slot) => ({
      label: `Slot in the ${FACE_TITLES[slot.face].toLowerCase()}`,
      value: `${say(slot.width)} × ${say(slot.depth)}`,
      title: `${exactly(slot.width)} wide, ${exactly(slot.depth)} deep`,
    })),
    {
      label: 'Neck left, thinnest',
      value: `${say(neck.thinnest.left)} (${neck.thinnest.of})`,
      title: exactly(neck.thinnest.left),
    },
    ...loadRows(layout),
  ]
}

/** What the strings do to neck and lid. Estimates all; the rule behind each says what it leaves out. */
function loadRows(layout: Layout): Row[] {
  const { units } = layout.design
  const { totalPull, neck, saddle, lid } = loadsOf(layout)
  const fine = (label: string, mm: number, title: string): Row => ({
    label,
    value: sayFine(mm, units),
    title,
  })
  return [
    ...(totalPull === null ? [] : [{ label: 'Pull of all strings', value: sayPull(totalPull, units) }]),
    {
      label: 'Saddle wanted for the action',
      value: sayLength(saddle.heightWanted, units),
      title: `${exactly(saddle.heightWanted)} from the lid to the underside of the strings`,
    },
    ...(neck
      ? [
          fine('Neck bows at mid-neck, about', neck.bow, 'An estimate: walls rigid, creep left out'),
          fine(
            'Nut rises, at most',
            neck.nutRise,
            'An upper bound: glue and clamping at the walls are left out',
          ),
        ]
      : []),
    ...(lid
      ? [
          { label: 'Press on the lid', value: sayPull(lid.downForce, units) },
          lid.onNeck
            ? { label: 'Lid under the saddle', value: 'lies on the neck' }
            : fine('Lid sags, about', lid.sag, 'An estimate: a plate held at its edges, openings left out'),
        ]
      : []),
  ]
}
