/**
 * The sign of a grade: crossed hatching for a stop, one-way hatching for care, a ring for a note, a tick for clear. A style
 * draws it (`style/signs`), no picture of its own: a browser looks after each picture in every frame, and a list may hold
 * thousands.
 */
import type { Finding } from '../../geometry/index.ts'
import { GRADE_WORDS } from './say.ts'

export function Sign({
  grade,
  quiet = false,
}: {
  readonly grade: Finding['grade']
  readonly quiet?: boolean
}) {
  return quiet ? (
    <span className={`sign sign-${grade}`} aria-hidden />
  ) : (
    <span className={`sign sign-${grade}`} role="img" aria-label={GRADE_WORDS[grade]} />
  )
}
