/** Proposes the nearest strings of the stock for the pull wanted, or the scale for the strings; one press takes it over. */
import {
  type ChosenGauge,
  change,
  chooseGauges,
  type Design,
  formatShare,
  scaleSuiting,
} from '../../geometry/index.ts'
import { commit, setField } from '../state/index.ts'
import { useDesign } from './calm.ts'
import { sayLength } from './say.ts'
import { onTheRule, sayPull } from './say-loads.ts'

export function GaugeChooser() {
  const design = useDesign()
  return (
    <div className="field-span proposals">
      <NearestGauges design={design} />
      <FittingScale design={design} />
    </div>
  )
}

function NearestGauges({ design }: { readonly design: Design }) {
  const chosen = chooseGauges(design)
  if (!chosen) return null
  const strings = chosen.strings.filter((one): one is ChosenGauge => one !== null)
  if (strings.length < chosen.strings.length)
    return <p className="soft small">No string of the stock stands each of these pitches on this scale.</p>
  const { units } = design
  const pulls = strings.map((one) => one.tension)
  const same =
    JSON.stringify(strings.map((one) => one.gauge)) === JSON.stringify(design.strings.gauges) &&
    JSON.stringify(strings.map((one) => one.make)) === JSON.stringify(design.stringing.makes)
  const take = () =>
    commit(
      'Choose the gauges',
      change(
        design,
        [['strings', 'gauges'], strings.map((one) => one.gauge)],
        [['stringing', 'makes'], strings.map((one) => one.make)],
      ),
    )
  return (
    <div className="proposal">
      <p className="soft small">
        Nearest of the stock to {sayPull(design.stringing.wantedPull, units)} each, bass string first:{' '}
        <b>{strings.map((one) => one.name).join(', ')}</b>, pulling {sayPull(Math.min(...pulls), units)} to{' '}
        {sayPull(Math.max(...pulls), units)}
        {pulls.length > 1 && `: within ${formatShare(chosen.spread.apart)} of each other`}.
      </p>
      <button type="button" disabled={same} onClick={take}>
        {same ? 'These gauges are taken' : 'Take these gauges'}
      </button>
    </div>
  )
}

function FittingScale({ design }: { readonly design: Design }) {
  const fitting = scaleSuiting(design)
  if (!fitting) return null
  const { units, scale } = design
  const said = sayLength(fitting.length, units)
  const same = said === sayLength(scale.length, units)
  return (
    <div className="proposal">
      <p className="soft small">
        A scale that suits these strings at {sayPull(design.stringing.wantedPull, units)} each: <b>{said}</b>.
        Beyond {sayLength(fitting.longest, units)} one of them is strained.
      </p>
      <button
        type="button"
        disabled={same}
        onClick={() => setField(['scale', 'length'], onTheRule(fitting.length, units), 'Scale length')}
      >
        {same ? 'This scale is taken' : 'Take this scale'}
      </button>
    </div>
  )
}
