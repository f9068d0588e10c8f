/** A short name for exactly this design: the beginning of its SHA-256. */
import { sha256 } from '@noble/hashes/sha2.js'
import { type Design, inOrder, notes } from '../../geometry/index.ts'

/** Figures and letters kept, in groups of four: 64 bits, far more than anybody has boxes. */
const KEPT = 16

const known = notes<Design, string>()

/**
 * The checksum of a design: 16 hexadecimal signs of its SHA-256 (FIPS 180-4), in capitals and groups of four.
 * What is written down after the build, `record`, is left out: another set of strings makes no other design.
 * Throws for a design that is not valid. Example: `checksumOf(design)` is like `3FA2 09C1 77D0 E51B`.
 */
export function checksumOf(design: Design): string {
  const before = known.get(design)
  if (before !== undefined) return before
  const { record: _afterwards, ...planned } = inOrder(design)
  const digest = sha256(new TextEncoder().encode(JSON.stringify(planned)))
  const hex = [...digest].map((byte) => byte.toString(16).padStart(2, '0')).join('')
  const checksum = (hex.slice(0, KEPT).toUpperCase().match(/.{4}/g) ?? []).join(' ')
  known.set(design, checksum)
  return checksum
}
