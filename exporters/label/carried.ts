/**
 * A whole design as one short text, for a QR code on a label: what differs from the usual values, compressed (DEFLATE,
 * RFC 1951) and written in Base45 (RFC 9285) behind a checksum.
 *
 * `LIDWRIGHT1:` checksum `:` text. The checksum is that of the design, so a text that was read wrongly, or by a program
 * whose usual values are others, is refused rather than opened as another instrument.
 */
import { checkDesign, type Design, type DesignReading, inOrder, printable } from '../../geometry/index.ts'
import { fromBase45, toBase45 } from './base45.ts'
import { checksumOf } from './checksum.ts'
import { packText, unpackText } from './packing.ts'
import { withoutUsual } from './usual.ts'

const MARK = 'LIDWRIGHT1:'

/** Longest design taken from a carried text, in bytes: far more than any code holds. */
const LARGEST = 4_000_000

const refused = (sentence: string): DesignReading => ({ ok: false, faults: [{ path: '', sentence }] })

/** The design as a text that `readCarried` reads back. Throws for a design that is not valid. */
export function carry(design: Design): string {
  const short = JSON.stringify(withoutUsual(inOrder(design)))
  return `${MARK}${checksumOf(design).replaceAll(' ', '')}:${toBase45(packText(short))}`
}

/** Does a text look as if it were carried by a label? */
export const isCarried = (text: string): boolean => text.trim().startsWith('LIDWRIGHT')

/**
 * The design that a label carries. Spaces at the ends and line breaks do not matter. Never throws: what cannot be read
 * is a sentence. Example: `readCarried(carry(design))` is `{ ok: true, design }`.
 */
export function readCarried(text: string): DesignReading {
  const plain = text.replace(/[\r\n\t]/g, '').trim()
  if (!plain.startsWith(MARK))
    return refused(
      plain.startsWith('LIDWRIGHT')
        ? 'The label was written by a newer Lidwright. Open it with that one.'
        : `A label’s text begins with ${MARK}; read “${printable(plain.slice(0, 20))}”. Read the whole code, with its first letters.`,
    )
  const rest = plain.slice(MARK.length)
  const colon = rest.indexOf(':')
  const bytes = colon < 0 ? null : fromBase45(rest.slice(colon + 1))
  const json = bytes && unpackText(bytes, LARGEST)
  if (!json) return refused('The label’s text is cut off or was changed on the way. Read the code again.')
  let value: unknown
  try {
    value = JSON.parse(json)
  } catch {
    return refused('The label’s text is cut off or was changed on the way. Read the code again.')
  }
  const reading = checkDesign(value)
  if (!reading.ok) return reading
  if (checksumOf(reading.design).replaceAll(' ', '') !== rest.slice(0, colon))
    return refused(
      'The label’s text gives another design than its checksum says: it was changed on the way, or written by a Lidwright with other usual values. Open the design’s own file instead.',
    )
  return reading
}
