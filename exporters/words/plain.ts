/**
 * Words written by strangers, made fit for one line of a drawing.
 *
 * A title may hold anything: line breaks that would end a DXF string early, control characters that no
 * XML document may hold, marks that turn the reading direction of everything behind them.
 */

/** Longest line kept. DXF strings are safe up to 255 characters; the rest is room for escapes. */
export const LONGEST_LINE = 250

/** Unicode's marks that turn or isolate the direction of reading, and marks of no width at all. */
const DIRECTION_AND_NO_WIDTH = /[\u061c\u200b-\u200f\u202a-\u202e\u2060-\u2064\u2066-\u206f\ufeff]/gu

/** C0 and C1 control characters, lone halves of surrogate pairs, and the code points that are never characters. */
const NEVER_TEXT = /[\p{Cc}\p{Cs}\ufdd0-\ufdef\ufffe\uffff]/gu

/** Words of ASCII and Latin-1 with single spaces between them: what a line mostly is already. */
const PLAIN = /^[!-~\u00a1-\u00ff]+(?: [!-~\u00a1-\u00ff]+)*$/

/**
 * One line of plain text: line breaks, tabs and every other run of white space become one space; control
 * characters, direction marks and marks without width go; the two ends are trimmed; a line that is too
 * long ends in `...`.
 *
 * @param text any string; anything but a string is misuse and throws
 * @param longest characters (code points) kept at most
 * @example plainLine('Lid\n<of>  tea') // 'Lid <of> tea'
 */
export function plainLine(text: string, longest: number = LONGEST_LINE): string {
  if (typeof text !== 'string') throw new TypeError(`A line of text is ${String(text)}: a string is needed.`)
  if (text.length <= longest && PLAIN.test(text)) return text
  const line = text
    .replace(/\s+/gu, ' ')
    .replace(NEVER_TEXT, '')
    .replace(DIRECTION_AND_NO_WIDTH, '')
    .replace(/ {2,}/g, ' ')
    .trim()
  const characters = [...line]
  return characters.length <= longest
    ? line
    : `${characters
        .slice(0, longest - 3)
        .join('')
        .trimEnd()}...`
}

/**
 * A name for a file made from a title: lower-case letters a to z, digits and single hyphens.
 *
 * @param text any title; accents are dropped, everything else becomes a hyphen
 * @param otherwise what to use when nothing is left
 * @example slug('Söhne’s tea box #2', 'template') // 'sohne-s-tea-box-2'
 */
export function slug(text: string, otherwise: string): string {
  const plain = plainLine(text)
    .normalize('NFD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-|-$/g, '')
    .slice(0, 60)
    .replace(/-$/, '')
  return plain === '' ? otherwise : plain
}
