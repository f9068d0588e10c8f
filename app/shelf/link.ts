/** A design as an address: the whole of it, packed small, behind the `#` that no browser sends anywhere. */
import { packText, unpackText } from '../../exporters/index.ts'
import { type Design, readDesign } from '../../geometry/index.ts'
import { fileText } from '../state/index.ts'
import { LINK_MARK } from './mark.ts'

/** Longer addresses are cut off by some programs that pass them on. */
export const LONGEST_LINK = 32_000
/** What a short address may unpack to; more is no design of ours. */
const MOST_UNPACKED = 5e6

export interface DesignLink {
  readonly address: string
  /** Photographs are too large for an address and stay behind. */
  readonly withoutPhotos: boolean
}

/** The letters of base64url (RFC 4648, section 5), without padding. */
function toLetters(bytes: Uint8Array): string {
  let text = ''
  for (const byte of bytes) text += String.fromCharCode(byte)
  return btoa(text).replaceAll('+', '-').replaceAll('/', '_').replace(/=+$/, '')
}

const fromLetters = (letters: string) =>
  Uint8Array.from(atob(letters.replaceAll('-', '+').replaceAll('_', '/')), (letter) => letter.charCodeAt(0))

/** The address of a design on the page at `page`: the text of its file, packed as a label's code is. */
export async function linkTo(design: Design, page: string): Promise<DesignLink> {
  const written = fileText({ ...design, photos: [] })
  if (!written.ok) throw new Error(written.sentence)
  const compact = JSON.stringify(JSON.parse(written.text))
  return {
    address: page.replace(/#.*$/s, '') + LINK_MARK + toLetters(packText(compact)),
    withoutPhotos: design.photos.length > 0,
  }
}

export type Carried =
  | { readonly ok: true; readonly design: Design }
  | { readonly ok: false; readonly sentences: readonly string[] }

/** The design that an address carries behind its `#`, or what is wrong with it. */
export function designIn(hash: string): Carried {
  const text = textIn(hash.slice(LINK_MARK.length))
  if (text === null)
    return {
      ok: false,
      sentences: [
        'The link is damaged or was cut short on its way. Ask for it again, or for the design as a file.',
      ],
    }
  const reading = readDesign(text)
  if (reading.ok) return { ok: true, design: reading.design }
  return {
    ok: false,
    sentences: reading.faults.map(({ path, sentence }) => (path ? `${path}: ${sentence}` : sentence)),
  }
}

function textIn(letters: string): string | null {
  try {
    return unpackText(fromLetters(letters), MOST_UNPACKED)
  } catch {
    // Letters that are none of base64url.
    return null
  }
}
