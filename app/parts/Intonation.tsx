/** Where the saddle must stand and how tall, so that the strings lie as wanted and play in tune. */
import {
  formatFine,
  formatLength,
  fretRoundingOf,
  intonationOf,
  type Layout,
  loadsOf,
  type SaddleLoads,
  stepOf,
  unitName,
} from '../../geometry/index.ts'
import { setField } from '../state/index.ts'
import { CentsPlot } from './CentsPlot.tsx'
import { useLayout } from './calm.ts'
import { sayLength, sayStep } from './say.ts'
import { onTheRule, sayCents, sayDegrees, sayFine } from './say-loads.ts'
import { WhereFrom } from './WhereFrom.tsx'

export function Intonation() {
  const layout = useLayout()
  return (
    <div className="intonation">
      <div className="beside">
        <SaddleHeight layout={layout} />
        <Setback layout={layout} />
      </div>
      <CentsPlot />
      <Rounding layout={layout} />
      <WhereFrom layout={layout} formulas={['setback', 'heights']} stuff={['strings']} />
    </div>
  )
}

/** Under what the builder's rule can tell apart, two lengths are one. */
const alike = (a: number, b: number, { design }: Layout) =>
  formatLength(a, design.units) === formatLength(b, design.units)

function SaddleHeight({ layout }: { readonly layout: Layout }) {
  const { saddle } = loadsOf(layout)
  const { design } = layout
  const say = (mm: number) => sayLength(mm, design.units)
  const same = alike(saddle.heightWanted, design.saddle.height, layout)
  const wanted = onTheRule(saddle.heightWanted, design.units)
  return (
    <section aria-label="Height of the saddle">
      <h3>Height of the saddle</h3>
      <p>
        An action of {say(design.saddle.action)} wants the strings <b>{say(saddle.heightWanted)}</b> over the
        lid; stated {same ? 'as that' : `are ${say(design.saddle.height)}`}, which gives {say(saddle.action)}
        {saddle.actionUnderPull !== null &&
          `, and up to ${say(saddle.actionUnderPull)} once the strings bend the neck`}
        .
      </p>
      {saddle.cure ? (
        <p className="small">{sayCure(saddle.cure, layout)}</p>
      ) : (
        <button
          type="button"
          disabled={same}
          onClick={() => setField(['saddle', 'height'], wanted, 'Saddle height')}
        >
          {same ? 'The saddle is as tall as wanted' : `Make the saddle ${say(wanted)} tall`}
        </button>
      )}
    </section>
  )
}

function sayCure({ raise, tilt }: NonNullable<SaddleLoads['cure']>, { design }: Layout): string {
  const up = raise > 0
  const raised = `${up ? 'Raise' : 'Lower'} the neck by ${sayLength(Math.abs(raise), design.units)}`
  const tilted =
    tilt === null
      ? ''
      : `, or tilt it ${tilt > 0 ? 'back' : 'forward'} by ${sayDegrees(Math.abs(tilt))} at the box`
  return `So ${up ? 'low' : 'tall'} a saddle cannot well be built. ${raised}${tilted}.`
}

function Setback({ layout }: { readonly layout: Layout }) {
  const loads = loadsOf(layout)
  const { line } = loads.saddle
  const { design } = layout
  const { units } = design
  if (!line || loads.missing)
    return design.scale.fretless ? (
      <section aria-label="Setback">
        <h3>Setback of the saddle</h3>
        <p className="soft">None is wanted: a slide, or a finger on a bare board, finds its own pitch.</p>
      </section>
    ) : null
  const same = Math.abs(line.atCentre - design.saddle.setback) < 0.05
  const wanted = Math.round(line.atCentre * 100) / 100
  const octaves = octavesOf(layout)
  return (
    <section aria-label="Setback" className="fret-table">
      <h3>Setback of the saddle</h3>
      <table>
        <caption className="unseen">Setback wanted by each string, treble string first</caption>
        <thead>
          <tr>
            <th scope="col">String</th>
            <th scope="col">wants, {unitName(units)}</th>
            <th scope="col">on the line, {unitName(units)}</th>
            <th scope="col" title="With the saddle as stated">
              octave off, cents
            </th>
          </tr>
        </thead>
        <tbody>
          {[...loads.strings].reverse().map(({ index, number, atPitch }) => (
            <tr key={index}>
              <th scope="row">{number}</th>
              <td>{atPitch?.setback == null ? 'none will do' : formatFine(atPitch.setback, units)}</td>
              <td>{formatFine(line.setbacks[index] ?? 0, units)}</td>
              <td>{sayCents(octaves[index] ?? null)}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <p className="small">
        The straight saddle that suits them best stands {sayFine(line.atCentre, units)} behind the bare scale
        at its middle
        {loads.strings.length > 1 &&
          `, ${
            Math.abs(line.slant) < 0.001
              ? 'square across'
              : `slanted ${sayDegrees(Math.abs(line.slant))} with its ${line.slant > 0 ? 'treble' : 'bass'} end farther back`
          }`}
        . An estimate.
      </p>
      <button
        type="button"
        disabled={same}
        onClick={() => setField(['saddle', 'setback'], wanted, 'Setback')}
      >
        {same ? 'The saddle stands there' : `Set the saddle back ${sayFine(wanted, units)}`}
      </button>
    </section>
  )
}

/** Cents at the fret of the octave, string by string; where no fret sounds it there is nothing to say. */
function octavesOf(layout: Layout): (number | null)[] {
  const half = layout.design.scale.length / 2
  const frets = layout.frets.filter((fret) => fret.number > 0)
  const octave = frets.findIndex((fret) => Math.abs(fret.fromNut - half) < 0.01)
  return intonationOf(layout).map((one) => one?.asStated[octave] ?? null)
}

/** What the lines of the builder's own rule cost. */
function Rounding({ layout }: { readonly layout: Layout }) {
  const frets = fretRoundingOf(layout)
  const worst = frets.reduce(
    (far, one, index) => (Math.abs(one.cents) > Math.abs(frets[far]?.cents ?? 0) ? index : far),
    0,
  )
  const { units } = layout.design
  const one = frets[worst]
  if (!one || stepOf(units) <= 0) return null
  return (
    <details className="fret-table">
      <summary className="small">
        Frets marked by the lines of a rule in {sayStep(units)}: the worst is fret {worst + 1},{' '}
        {sayCents(one.cents)} cents. As a table
      </summary>
      <table>
        <thead>
          <tr>
            <th scope="col">Fret</th>
            <th scope="col">on the rule</th>
            <th scope="col">off by, {unitName(units)}</th>
            <th scope="col">cents</th>
          </tr>
        </thead>
        <tbody>
          {frets.map((fret, index) => (
            <tr key={index}>
              <th scope="row">{index + 1}</th>
              <td>{sayLength(fret.cut, units)}</td>
              <td>{formatFine(fret.off, units)}</td>
              <td>{sayCents(fret.cents)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </details>
  )
}
