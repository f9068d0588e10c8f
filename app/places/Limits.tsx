/** The limits that findings are held against: each with its usual value, why it is that, and the builder's own. */
import { formatShare, LIMITS, type LimitName } from '../../geometry/index.ts'
import { useDesign } from '../parts/calm.ts'
import { HelpWords } from '../parts/Help.tsx'
import { LengthField } from '../parts/LengthField.tsx'
import { NumberField } from '../parts/NumberField.tsx'
import { Rule } from '../parts/Rule.tsx'
import { sayLength } from '../parts/say.ts'
import { limitNames } from '../parts/tightness.ts'
import { setField } from '../state/index.ts'

export function Limits() {
  return (
    <>
      <p className="soft small limits-words">
        Each finding is held against one of these. They belong to this design; change one where your wood or
        your way of working asks for it.
      </p>
      <Rule />
      <ul className="limits" aria-label="Limits">
        {limitNames.map((name) => (
          <li key={name}>
            <LimitRow name={name} />
          </li>
        ))}
      </ul>
    </>
  )
}

function LimitRow({ name }: { name: LimitName }) {
  const { limits, units } = useDesign()
  const { label, why, unit, value: usual } = LIMITS[name]
  const own = limits[name]
  const value = own ?? usual
  const take = (next: number | undefined) => setField(['limits', name], next, `Limit: ${label}`)
  const usually =
    unit === 'mm'
      ? sayLength(usual, units)
      : unit === 'degrees'
        ? `${usual}°`
        : unit === 'newtons'
          ? `${usual} N`
          : formatShare(usual)
  return (
    <div className={own === undefined ? 'limit' : 'limit limit-own'}>
      {unit === 'mm' ? (
        <LengthField label={label} value={value} onCommit={take} />
      ) : unit === 'degrees' ? (
        <NumberField label={label} value={value} min={0} max={90} onCommit={take} beside="degrees" />
      ) : unit === 'newtons' ? (
        <NumberField label={label} value={value} min={0} max={1000} onCommit={take} beside="newtons" />
      ) : (
        <NumberField
          label={label}
          value={Math.round(value * 1000) / 10}
          min={0}
          max={1000}
          onCommit={(percent) => take(percent / 100)}
          beside="per cent"
        />
      )}
      <HelpWords help={why} address={`limits.${name}`} />
      {own !== undefined && (
        <button type="button" className="link" onClick={() => take(undefined)}>
          Back to the usual {usually}
        </button>
      )}
    </div>
  )
}
