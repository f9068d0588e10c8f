/** The dimensions that a margin hangs on most, each with how far it may be off: what was measured finer is said here. */
import { type Finding, formatMeasure, type MarginPart } from '../../geometry/index.ts'
import { setField } from '../state/index.ts'
import { useDesign } from './calm.ts'
import { LengthField } from './LengthField.tsx'

/** Tolerances are finer than the rule, so they are shown in decimals. */
export function HangsOn({ finding, parts }: { finding: Finding; parts: readonly MarginPart[] }) {
  const { tolerances, units } = useDesign()
  if (parts.length === 0) return null
  return (
    <div className="hangs-on">
      <p className="small soft">It hangs most on these; say where you measured finer, or less fine:</p>
      <ul aria-label="Dimensions it hangs on">
        {parts.map(({ path, label, tolerance, effect }) => (
          <li key={path}>
            <LengthField
              label={label}
              value={tolerance}
              units={{ ...units, fraction: 0 }}
              beside={`moves it ${formatMeasure(effect, finding, units, { unit: true })}`}
              onCommit={(next) => setField(['tolerances', path], next, `Tolerance of ${label}`)}
            />
            {Object.hasOwn(tolerances, path) && (
              <button
                type="button"
                className="link"
                onClick={() => setField(['tolerances', path], undefined, `Tolerance of ${label}`)}
              >
                As the rule reads
              </button>
            )}
          </li>
        ))}
      </ul>
    </div>
  )
}
