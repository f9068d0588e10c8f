/**
 * The typeface as a font of a PDF: a composite font whose codes are numbers of outlines, with the outlines that
 * the document uses embedded (ISO 32000-1, 9.7.4 and 9.9) and a table back to signs, so that words on a sheet
 * can be searched and read aloud (9.10.3).
 */
import { array, dictionary, type PdfFile, type Value } from '../file.ts'
import { fileOf, onlyOutlines, table } from './sfnt.ts'
import type { Letter, SetLine, Typeface } from './typeface.ts'

/** Six capitals and a plus say that a font is a part of a larger one (ISO 32000-1, 9.6.4). */
const NAME = '/LIDWRI+DejaVuSans'

/** Height of a capital and weight of a stem in thousandths of the em: DejaVu Sans, its OS/2 table and measured. */
const CAPITALS = 729
const STEM = 90

/** Bit 6: the letters are those of the Latin standard, not of a symbol font. */
const NONSYMBOLIC = 32

const hex = (value: number) => value.toString(16).padStart(4, '0')

/** A code point as UTF-16 in hexadecimal digits. */
const utf16 = (sign: string) =>
  Array.from({ length: sign.length }, (_, index) => hex(sign.charCodeAt(index))).join('')

/** Which code stands for which sign, in the language of character maps: at most 100 to a block. */
function toUnicode(letters: readonly Letter[]): string {
  const lines = letters.map(({ code, sign }) => `<${code}> <${utf16(sign)}>`)
  const blocks: string[] = []
  for (let start = 0; start < lines.length; start += 100) {
    const block = lines.slice(start, start + 100)
    blocks.push(`${block.length} beginbfchar\n${block.join('\n')}\nendbfchar`)
  }
  return [
    '/CIDInit /ProcSet findresource begin\n12 dict begin\nbegincmap',
    '/CIDSystemInfo << /Registry (Adobe) /Ordering (UCS) /Supplement 0 >> def',
    '/CMapName /Adobe-Identity-UCS def\n/CMapType 2 def',
    '1 begincodespacerange\n<0000> <ffff>\nendcodespacerange',
    ...blocks,
    'endcmap\nCMapName currentdict /CMap defineresource pop\nend\nend\n',
  ].join('\n')
}

/** The letters of some lines, one for each outline, in the order of their numbers. */
function lettersOf(lines: ReadonlySet<SetLine>): Letter[] {
  const letters = new Map<number, Letter>()
  for (const line of lines) for (const letter of line.letters) letters.set(letter.outline, letter)
  return [...letters.values()].sort((a, b) => a.outline - b.outline)
}

/**
 * Puts the font into a document.
 *
 * @param used the lines that the document writes
 * @returns the reference by which pages name the font
 */
export function embedTypeface(file: PdfFile, typeface: Typeface, used: ReadonlySet<SetLine>): Value {
  const letters = lettersOf(used)
  const numbers = letters.map(({ outline }) => outline)
  const outlines = fileOf(onlyOutlines(typeface.tables, numbers))
  const program = file.stream(outlines, { Length1: String(outlines.length) })
  const head = table(typeface.tables, 'head')
  const hhea = table(typeface.tables, 'hhea')
  const short = (bytes: Uint8Array, at: number) =>
    Math.round((new DataView(bytes.buffer, bytes.byteOffset).getInt16(at) * 1000) / 2048)
  const descriptor = file.add(
    dictionary({
      Type: '/FontDescriptor',
      FontName: NAME,
      Flags: String(NONSYMBOLIC),
      FontBBox: array([36, 38, 40, 42].map((at) => short(head, at))),
      ItalicAngle: '0',
      Ascent: String(short(hhea, 4)),
      Descent: String(short(hhea, 6)),
      CapHeight: String(CAPITALS),
      StemV: String(STEM),
      FontFile2: program,
    }),
  )
  const widths = letters.map(({ outline, width }) => `${outline} [${Math.round(width)}]`)
  const descendant = file.add(
    dictionary({
      Type: '/Font',
      Subtype: '/CIDFontType2',
      BaseFont: NAME,
      CIDSystemInfo: dictionary({ Registry: '(Adobe)', Ordering: '(Identity)', Supplement: '0' }),
      FontDescriptor: descriptor,
      DW: '0',
      W: array(widths),
      CIDToGIDMap: '/Identity',
    }),
  )
  return file.add(
    dictionary({
      Type: '/Font',
      Subtype: '/Type0',
      BaseFont: NAME,
      Encoding: '/Identity-H',
      DescendantFonts: array([descendant]),
      ToUnicode: file.stream(toUnicode(letters)),
    }),
  )
}
