/** A design's text made small, for whatever carries a whole design in few signs: a label's code, a link. DEFLATE, RFC 1951. */
import { deflateSync, Inflate } from 'fflate'

/** A text as few bytes; the same text gives the same bytes. */
export const packText = (text: string): Uint8Array =>
  deflateSync(new TextEncoder().encode(text), { level: 9 })

/**
 * The text of packed bytes, or `null` where they are none, are cut off, or unpack to more than `most` bytes: a little that
 * unpacks to a lot ends there. Example: `unpackText(packText('box'), 100)` is `box`.
 */
export function unpackText(bytes: Uint8Array, most: number): string | null {
  const decoder = new TextDecoder('utf-8', { fatal: true })
  let text = ''
  let size = 0
  let ended = false
  const inflate = new Inflate((piece, last) => {
    size += piece.length
    if (size > most) throw new RangeError('too long')
    text += decoder.decode(piece, { stream: !last })
    ended = last
  })
  try {
    inflate.push(bytes, true)
    return ended ? text : null
  } catch {
    return null
  }
}
