/**
 * A pull against the breaking load as a bar, with ticks where care and where stop begin: hatched one way over the
 * first, crossed over the second. The figure beside it says the same.
 */
import { useId } from 'react'
import { type Design, formatShare, limitOf } from '../../geometry/index.ts'

const LONG = 120

export function ShareBar({ share, design }: { readonly share: number; readonly design: Design }) {
  const own = useId()
  const limit = limitOf(design)
  const [care, stop] = [limit('stringStrained'), limit('stringBreaking')]
  const grade = share > stop ? 'stop' : share > care ? 'care' : 'clear'
  const at = (part: number) => Math.min(Math.max(part, 0), 1) * LONG
  return (
    <span className="share">
      <svg viewBox={`0 0 ${LONG} 14`} preserveAspectRatio="none" aria-hidden>
        <defs>
          <pattern
            id={own}
            width="5"
            height="5"
            patternUnits="userSpaceOnUse"
            patternTransform="rotate(45)"
            className={`share-hatch ${grade}`}
          >
            <path d={grade === 'stop' ? 'M0 0H5M0 0V5' : 'M0 0V5'} />
          </pattern>
        </defs>
        <rect className="share-whole" x="0.5" y="3" width={LONG - 1} height="8" />
        <rect
          className={`share-part ${grade}`}
          x="0.5"
          y="3"
          width={Math.max(at(share) - 1, 0)}
          height="8"
          {...(grade === 'clear' ? {} : { fill: `url(#${CSS_SAFE(own)})` })}
        />
        <path className="share-mark" d={`M${at(care)} 0V14M${at(stop)} 0V14`} />
      </svg>
      <span>
        {formatShare(share)}
        {grade !== 'clear' && <b className={grade}> {grade}</b>}
      </span>
    </span>
  )
}

/** React's ids may hold characters that mean something inside `url(#…)`. */
const CSS_SAFE = (id: string): string => encodeURIComponent(id)
