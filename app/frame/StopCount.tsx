/** How many findings block the work, beside the name of the place that tells of them. */
import { check } from '../../geometry/index.ts'
import { useLayout } from '../parts/calm.ts'
import { stops } from '../parts/tightness.ts'

export function StopCount() {
  const howMany = stops(check(useLayout()))
  if (howMany === 0) return null
  return (
    <span className="stop-count">
      {howMany}
      <span className="unseen"> {howMany === 1 ? 'stop' : 'stops'}</span>
    </span>
  )
}
