/** What the strings do to neck, head and lid, each with its limit and what the estimate leaves out. */
import {
  braceThatSuffices,
  CREEP,
  change,
  formatShare,
  type Layout,
  type Loads,
  limitOf,
  loadsOf,
  type StringLoad,
  thinnestStock,
} from '../../geometry/index.ts'
import { commit, setField } from '../state/index.ts'
import { useLayout } from './calm.ts'
import { sayMissing } from './PullTable.tsx'
import { sayLength } from './say.ts'
import { sayDegrees, sayFine, sayPull } from './say-loads.ts'
import { WhereFrom } from './WhereFrom.tsx'

interface Row {
  readonly what: string
  readonly value: string
  readonly limit?: string
  /** Is the value past its limit? */
  readonly past?: boolean
  readonly leaves: string
}

export function NeckAndLid() {
  const layout = useLayout()
  const loads = loadsOf(layout)
  if (loads.missing) return <p className="soft small">{sayMissing(loads.missing, layout)}</p>
  return (
    <section className="fret-table neck-and-lid" aria-label="Neck and lid under the pull">
      {loads.neckTrouble && <p>{TROUBLES[loads.neckTrouble]}</p>}
      <table>
        <caption className="unseen">Neck and lid under the pull; all of it is an estimate</caption>
        <thead>
          <tr>
            <th scope="col">Estimate</th>
            <th scope="col">comes to</th>
            <th scope="col">limit</th>
            <th scope="col" className="left">
              and leaves out
            </th>
          </tr>
        </thead>
        <tbody>
          {[...neckRows(layout, loads), ...bendRows(layout, loads), ...lidRows(layout, loads)].map((row) => (
            <tr key={row.what}>
              <th scope="row">{row.what}</th>
              <td className={row.past ? 'far-off' : ''}>
                {row.value}
                {row.past && ', past it'}
              </td>
              <td className="soft">{row.limit ?? ''}</td>
              <td className="left soft">{row.leaves}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <Cures layout={layout} />
      <WhereFrom layout={layout} formulas={['neck', 'lid', 'heights', 'pull']} stuff={['neck', 'lid']} />
    </section>
  )
}

const TROUBLES: Readonly<Record<NonNullable<Loads['neckTrouble']>, string>> = {
  'nut on the box': 'The nut lies over the box: no neck stands free, and none bends.',
  'no wood left': 'Somewhere between nut and tail no wood is left of the neck. See Prove.',
  'gives way': 'So slender a neck folds under this pull. A thicker blank, a bar or less pull is wanted.',
}

function neckRows(layout: Layout, { neck }: Loads): Row[] {
  if (!neck) return []
  const limit = limitOf(layout.design)
  const { units } = layout.design
  const most = (what: string, mm: number, name: Parameters<typeof limit>[0], leaves: string): Row => ({
    what,
    value: sayFine(mm, units),
    limit: sayFine(limit(name), units),
    past: Math.abs(mm) > limit(name),
    leaves,
  })
  const share = (what: string, part: number, leaves: string): Row => ({
    what,
    value: formatShare(part),
    limit: formatShare(limit('neckStress')),
    past: part > limit('neckStress'),
    leaves,
  })
  return [
    most(
      'Bow at mid-neck',
      neck.bow,
      'neckBow',
      `creep: with the years it grows to about ${CREEP} times that`,
    ),
    most(
      'Rise of the nut, at most',
      neck.nutRise,
      'nutRise',
      'glue and clamping at the walls: an upper bound',
    ),
    most(
      'Action higher at the octave',
      neck.actionChange,
      'actionChange',
      'the same, so an upper bound as well',
    ),
    share(
      `Weakest: the ${neck.weakest.of}, ${sayLength(Math.abs(neck.weakest.x), units)} ${neck.weakest.x < 0 ? 'behind' : 'from'} the nut`,
      neck.weakest.share,
      'sharp corners; held against what the wood bears for good',
    ),
    ...(neck.head
      ? [share('Head, behind the nut', neck.head.share, 'a fall on the floor, and slanting grain')]
      : []),
  ]
}

function bendRows({ design }: Layout, { strings }: Loads): Row[] {
  const limit = limitOf(design)
  const degrees = (name: Parameters<typeof limit>[0]) => `${limit(name)}°`
  const over = range(strings, (one) => one.atSaddle?.total ?? null)
  const nut = range(strings, (one) => one.breakAtNut)
  const turn = Math.PI / 180
  return [
    ...(over
      ? [
          {
            what: 'Break angle at the saddle',
            value: over.words,
            limit: `${degrees('breakAngleAtSaddle')} to ${degrees('breakAngleMost')}`,
            past:
              over.least < limit('breakAngleAtSaddle') * turn || over.most > limit('breakAngleMost') * turn,
            leaves: 'the string’s own stiffness',
          },
        ]
      : []),
    ...(nut
      ? [
          {
            what: 'Break angle at the nut',
            value: nut.words,
            limit: `${degrees('breakAngleAtNut')} or more`,
            past: nut.least < limit('breakAngleAtNut') * turn,
            leaves: 'windings that lead the string lower on its post',
          },
        ]
      : []),
  ]
}

function range(strings: readonly StringLoad[], of: (one: StringLoad) => number | null) {
  const all = strings.map(of).filter((one) => one !== null)
  if (all.length === 0) return null
  const [least, most] = [Math.min(...all), Math.max(...all)]
  const [low, high] = [sayDegrees(least), sayDegrees(most)]
  return { least, most, words: low === high ? low : `${low} to ${high}` }
}

function lidRows(layout: Layout, { lid }: Loads): Row[] {
  if (!lid) return []
  const { units, brace } = layout.design
  const limit = limitOf(layout.design)('lidSag')
  const sag = (what: string, mm: number, leaves: string): Row => ({
    what,
    value: sayFine(mm, units),
    limit: sayFine(limit, units),
    past: mm > limit,
    leaves,
  })
  const press = {
    what: 'Press on the lid',
    value: sayPull(lid.downForce, units),
    leaves: 'the stroke of the hand',
  }
  if (lid.onNeck)
    return [press, { what: 'Lid under the saddle', value: 'lies on the neck', leaves: 'the neck carries it' }]
  return [
    press,
    sag('Lid sags without a brace', lid.bareSag, 'sound holes and creep; edges just held down'),
    ...(brace.height > 0 ? [sag('Lid sags with the brace', lid.sag, 'the same, and the glue')] : []),
  ]
}

/** What would do, each taken over by one press. */
function Cures({ layout }: { readonly layout: Layout }) {
  const { design } = layout
  const { lid, neck } = loadsOf(layout)
  const say = (mm: number) => sayLength(mm, design.units)
  const thick = neck ? thinnestStock(layout) : null
  const limit = limitOf(design)('lidSag')
  const brace = lid && !lid.onNeck && lid.bareSag > limit ? braceThatSuffices(layout) : null
  const own = design.brace
  const braced =
    brace !== null &&
    own.height === brace.height &&
    own.width === brace.width &&
    own.runs === brace.runs &&
    own.offset === brace.offset
  return (
    <div className="cures">
      {neck && (
        <p className="proposal">
          <span className="small">
            {thick === null
              ? 'No blank up to 60 mm holds all of that alone: see the limits, a bar in the neck, or less pull.'
              : `The thinnest blank that holds all of that, all else as it is: ${say(thick)}; stated ${say(design.neck.thickness)}.`}
          </span>
          {thick !== null && thick > design.neck.thickness + 0.01 && (
            <button type="button" onClick={() => setField(['neck', 'thickness'], thick, 'Blank, thick')}>
              Make the blank {say(thick)} thick
            </button>
          )}
        </p>
      )}
      {lid && !lid.onNeck && (
        <p className="proposal">
          <span className="small">
            {lid.bareSag <= limit
              ? 'The lid needs no brace.'
              : brace
                ? `A brace that suffices: ${say(brace.width)} wide, ${say(brace.height)} tall, of ${own.wood}, ${
                    brace.runs === 'across' ? 'across under the saddle' : 'along beside the neck'
                  }.`
                : 'No usual strip suffices. A deeper relief lets a brace cross the neck; a thicker lid or less bend over the saddle helps as well.'}
          </span>
          {brace && (
            <button
              type="button"
              disabled={braced}
              onClick={() =>
                commit(
                  'Brace under the lid',
                  change(
                    design,
                    [['brace', 'height'], brace.height],
                    [['brace', 'width'], brace.width],
                    [['brace', 'runs'], brace.runs],
                    [['brace', 'offset'], brace.offset],
                  ),
                )
              }
            >
              {braced ? 'This brace is taken' : 'Take this brace'}
            </button>
          )}
        </p>
      )}
    </div>
  )
}
