/** Proposes, for the tuning and the pull wanted, the nearest strings of the stock, and takes them over by one press. */
import { type ChosenGauge, change, chooseGauges } from '../../geometry/index.ts'
import { commit } from '../state/index.ts'
import { useDesign } from './calm.ts'
import { sayPull } from './PullTable.tsx'

export function GaugeChooser() {
  const design = useDesign()
  const chosen = chooseGauges(design)
  if (!chosen) return null
  const strings = chosen.strings.filter((one): one is ChosenGauge => one !== null)
  if (strings.length < chosen.strings.length)
    return (
      <p className="soft small field-span">
        No string of the stock stands each of these pitches on this scale.
      </p>
    )
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
    <div className="field-span">
      <p className="soft small">
        Nearest of the stock to {sayPull(design.stringing.wantedPull, design.units)} each:{' '}
        <b>{strings.map((one) => one.name).join(', ')}</b>, pulling{' '}
        {sayPull(Math.min(...pulls), design.units)} to {sayPull(Math.max(...pulls), design.units)}.
      </p>
      <button type="button" disabled={same} onClick={take}>
        {same ? 'These gauges are taken' : 'Take these gauges'}
      </button>
    </div>
  )
}
