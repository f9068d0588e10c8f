/**
 * How wide a line of text may come out in a font that is not known.
 *
 * A template's text is set by whatever sans-serif face its reader has. The widths here are upper bounds
 * over DejaVu Sans and Liberation Sans (read from the `hmtx` tables of the two fonts), the widest and
 * the most usual of them, so that a box laid out with these numbers holds the words everywhere.
 */

/** Height of a capital as a share of the font size: 0.688 in Liberation Sans, 0.729 in DejaVu Sans. */
export const CAPITAL_HEIGHT = 0.71

/** Room below the baseline for g, p and y, as a share of the font size. */
export const DESCENT = 0.25

/** How much wider than the regular face the bold one is, at most. */
export const BOLD = 1.17

const NARROW = new Set([..." .,:;|!'/\\()[]ijlftIÌÍÎÏ-"])
const CALCULATION = new Set([...'#+<=>~^¬±×÷'])
const WIDE = new Set([...'mwMW@%&¼½¾©®æÆœŒ—…'])

function share(character: string): number {
  if (NARROW.has(character)) return 0.41
  if (WIDE.has(character)) return 1.02
  if (CALCULATION.has(character)) return 0.84
  if (character >= '\u0250') return 1.05
  return /\p{Lu}/u.test(character) ? 0.79 : 0.64
}

/** The shares of ASCII characters by their codes: most text is made of nothing else. */
const ASCII = Float64Array.from({ length: 128 }, (_, code) => share(String.fromCharCode(code)))

/**
 * An upper estimate of the width of a line of text in the regular face.
 *
 * @param text one line
 * @param size font size (the em), mm
 * @returns mm; characters beyond the Latin ones count as 1.05 em, which some emoji exceed
 * @example textWidth('Lid', 5) // 9.2
 */
export function textWidth(text: string, size: number): number {
  let sum = 0
  for (let index = 0; index < text.length; index++) {
    const code = text.charCodeAt(index)
    if (code < ASCII.length) {
      sum += ASCII[code] ?? 0
      continue
    }
    const character = String.fromCodePoint(text.codePointAt(index) ?? code)
    sum += share(character)
    index += character.length - 1
  }
  return sum * size
}

/** A line and the size at which it fits. */
export interface FittedLine {
  readonly text: string
  readonly size: number
}

/**
 * A line made to fit a width: set smaller, down to `smallest`, and cut with `...` if that is not enough.
 *
 * @param text one line
 * @param size font size wanted, mm
 * @param smallest least font size that can still be read, mm
 * @param room width there is, mm
 * @example fitLine('Treble wall', 5, 2, 20) // { text: 'Treble wall', size: about 3.4 }
 */
export function fitLine(text: string, size: number, smallest: number, room: number): FittedLine {
  const width = textWidth(text, size)
  if (width <= room) return { text, size }
  const shrunk = Math.max(Math.min(smallest, size), (size * room) / width)
  if (textWidth(text, shrunk) <= room + 1e-9) return { text, size: shrunk }
  const characters = [...text]
  while (characters.length > 0 && textWidth(`${characters.join('')}...`, shrunk) > room) characters.pop()
  return { text: `${characters.join('').trimEnd()}...`, size: shrunk }
}
