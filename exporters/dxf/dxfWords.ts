/**
 * Strings and names as a DXF can hold them: one line, ASCII, no codes that the writer did not mean.
 *
 * Whether a reader turns `\U+2300` back into a sign depends on the reader; some show it raw. So signs with
 * a plain spelling get it (`×` becomes `x`, `°` becomes ` deg`, accents are dropped), and only the rest
 * becomes `\U+XXXX`. Signs beyond the first 65 536 have no such form and are named: `[U+1F3B8]`.
 */
import { LONGEST_LINE, plainLine } from '../words/plain.ts'

/** Plain spellings, chosen for a workshop. */
const SPELLINGS = new Map<string, string>([
  ['×', 'x'],
  ['÷', '/'],
  ['±', '+/-'],
  ['°', ' deg'],
  ['⌀', 'dia. '],
  ['−', '-'],
  ['‐', '-'],
  ['‑', '-'],
  ['–', '-'],
  ['—', '-'],
  ['‘', "'"],
  ['’', "'"],
  ['′', "'"],
  ['“', '"'],
  ['”', '"'],
  ['″', '"'],
  ['…', '...'],
  ['•', '-'],
  ['·', '.'],
  ['¼', '1/4'],
  ['½', '1/2'],
  ['¾', '3/4'],
  ['µ', 'u'],
  ['μ', 'u'],
  ['♭', 'b'],
  ['♯', '#'],
  ['ß', 'ss'],
  ['æ', 'ae'],
  ['Æ', 'AE'],
  ['œ', 'oe'],
  ['Œ', 'OE'],
  ['ø', 'o'],
  ['Ø', 'O'],
  ['ł', 'l'],
  ['Ł', 'L'],
  ['đ', 'd'],
  ['Đ', 'D'],
  ['≤', '<='],
  ['≥', '>='],
])

function isAscii(text: string): boolean {
  return /^[\x20-\x7e]*$/.test(text)
}

/** ASCII words with single spaces between them, and no sign in them that can begin a code: `%`, `\` or `^`. */
const HARMLESS = /^[!-$&-[\]_-~]+(?: [!-$&-[\]_-~]+)*$/

/** One character that is not ASCII, in ASCII. */
function spelled(character: string): string {
  const known = SPELLINGS.get(character)
  if (known !== undefined) return known
  const plain = character.normalize('NFKD').replace(/\p{M}/gu, '')
  // A wide percent sign, backslash or caret is no way round the rules for the plain ones.
  if (plain !== '' && isAscii(plain) && !/[%\\^]/.test(plain)) return plain
  const code = (character.codePointAt(0) ?? 0).toString(16).toUpperCase()
  return code.length <= 4 ? `\\U+${code.padStart(4, '0')}` : `[U+${code}]`
}

/** One line of words in ASCII, for letters drawn as strokes: `[U+1F3B8]` where a sign has no plain spelling. */
export function plainAscii(text: string): string {
  return [...plainLine(text)]
    .map((one) => (isAscii(one) ? one : spelled(one).replace(/^\\(U\+[0-9A-F]+)$/, '[$1]')))
    .join('')
}

/** What is not ASCII, and carets: signs that come out as others. */
const STRANGE = /[^ -~]|\^/gu

/** ^J, ^M and so on stand for control characters; ^ with a space behind is the caret itself. */
function written(character: string): string {
  if (character === '^') return '^ '
  return character >= ' ' && character <= '~' ? character : spelled(character)
}

/**
 * A string for a DXF text entity or comment: one line of ASCII, at most 250 characters, in which nothing
 * the user typed is taken for a code. What a sign comes out as is never cut in two.
 *
 * `%%c` and `\U+2300` are codes to some readers and plain letters to others, and so are their escapes. A
 * space inside, `% %c` and `\ U+2300`, is read alike by all of them.
 *
 * @param text anything
 * @example dxfText('⌀6 × 2\n50%%') // 'dia. 6 x 2 50% %'
 */
export function dxfText(text: string): string {
  if (text.length <= LONGEST_LINE && HARMLESS.test(text)) return text
  const line = plainLine(text, Number.POSITIVE_INFINITY)
  const parted = line.replace(/%(?=%)/g, '% ').replace(/\\(?=[UuMm]\+)/g, '\\ ')
  const whole = parted.replace(STRANGE, written)
  if (whole.length <= LONGEST_LINE) return whole
  let kept = ''
  for (const character of parted) {
    const piece = written(character)
    if (kept.length + piece.length > LONGEST_LINE - 3) break
    kept += piece
  }
  return `${kept.trimEnd()}...`
}

/** A name that can stay as it is, as those of our own layers can. */
const GOOD_NAME = /^[A-Za-z](?:-?[A-Za-z0-9$_.]){0,49}$/

/**
 * A name for a layer: letters, digits, `$ - _ .`, at most 100 characters, and never digits alone (the
 * library would move such a layer to the front).
 *
 * @throws when nothing is left of the name
 * @example layerName('Cut: inside?') // 'Cut-inside'
 */
export function layerName(name: string): string {
  if (GOOD_NAME.test(name)) return name
  const plain = plainLine(name)
    .replace(/[^ -~]/gu, spelled)
    .replace(/[^A-Za-z0-9$_.-]+/g, '-')
    .replace(/-{2,}/g, '-')
    .replace(/^-|-$/g, '')
    .slice(0, 100)
  if (plain === '')
    throw new Error(`"${name}" leaves nothing for the name of a layer: letters or digits are needed.`)
  return /^\d+$/.test(plain) ? `L${plain}` : plain
}
