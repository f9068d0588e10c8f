/** Every fret: from the nut, on the user's rule and how far that is off, and the step to check the work by. */
import { type FretLine, formatFine, type Layout, roundedLength, unitName } from '../../geometry/index.ts'
import { useLayout } from './calm.ts'

export function FretTable() {
  const layout = useLayout()
  const { units } = layout.design
  const unit = unitName(units)
  const frets = layout.frets.filter((fret) => fret.number > 0)
  return (
    <section
      className="fret-table"
      aria-label="Frets"
      // biome-ignore lint/a11y/noNoninteractiveTabindex: it scrolls, so keys must be able to reach it
      tabIndex={0}
    >
      <table>
        <caption className="unseen">Frets, every one measured from the nut</caption>
        <thead>
          <tr>
            <th scope="col">Fret</th>
            <th scope="col">from the nut, {unit}</th>
            <th scope="col">{`on the rule, ${unit}`}</th>
            <th scope="col" title="How far the rounded figure lies from the true place">
              off by, {unit}
            </th>
            <th scope="col" title="From the fret before, only to check the work by">
              step, {unit}
            </th>
            <th scope="col">lies</th>
          </tr>
        </thead>
        <tbody>
          {frets.map((fret) => (
            <Row key={fret.number} fret={fret} units={units} />
          ))}
        </tbody>
      </table>
      {frets.length === 0 && <p className="soft small">No frets.</p>}
    </section>
  )
}

function Row({ fret, units }: { fret: FretLine; units: Layout['design']['units'] }) {
  const shown = roundedLength(
    fret.fromNut,
    units.display === 'mm' ? { display: 'mm', fraction: 0 } : units,
    units.display === 'mm' ? { decimals: 1 } : {},
  )
  const off = formatFine(shown.errorMm, units)
  return (
    <tr className={fret.number % 12 === 0 ? 'octave' : undefined}>
      <th scope="row">{fret.number}</th>
      <td>{formatFine(fret.fromNut, units)}</td>
      <td>{shown.text}</td>
      <td className={Math.abs(shown.errorMm) >= 0.25 ? 'far-off' : 'soft'}>
        {shown.errorMm > 0 && /[1-9]/.test(off) ? `+${off}` : off}
      </td>
      <td>{formatFine(fret.step, units)}</td>
      <td className="soft">
        {fret.overBox ? (fret.onWood ? 'over box' : 'beyond') : fret.onWood ? 'neck' : 'beyond'}
      </td>
    </tr>
  )
}
