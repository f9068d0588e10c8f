/** The sign of a grade: crossed hatching for a stop, one-way hatching for care, a ring for a note, a bar for clear. */
import type { Finding } from '../../geometry/index.ts'
import { GRADE_WORDS } from './say.ts'

export function Sign({
  grade,
  quiet = false,
}: {
  readonly grade: Finding['grade']
  readonly quiet?: boolean
}) {
  return (
    <svg
      className={`sign sign-${grade}`}
      width="15"
      height="15"
      viewBox="0 0 15 15"
      role="img"
      aria-label={quiet ? undefined : GRADE_WORDS[grade]}
      aria-hidden={quiet}
    >
      {grade === 'stop' && (
        <path d="M1 1h13v13H1zM1 6 6 1M1 11 11 1M3 14 14 3M8 14l6-6M1 9l5 5M1 4l10 10M4 1l10 10M9 1l5 5" />
      )}
      {grade === 'care' && <path d="M7.5 1 14.5 14H.5zM4 13.5 9 5M8 13.5l2.800-4.600" />}
      {grade === 'note' && <path d="M7.500 1.500a6 6 0 1 0 .01 0M7.500 6.500v4.500M7.500 4v.8" />}
      {grade === 'clear' && <path d="M2 8l4 4 7-9" />}
    </svg>
  )
}
