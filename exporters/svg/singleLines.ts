/** The words of a finished page as single strokes, for whatever draws lines and has no letters. */
import type { Point } from '../../geometry/index.ts'
import { numberText } from '../numbers.ts'
import { strokesOf, strokesWidth } from '../words/single-line.ts'
import { CAPITAL_HEIGHT, textWidth } from '../words/width.ts'

/** Text elements as `textElement` writes them: nothing else in this room writes an angle bracket. */
const TEXT = /<text ([^>]*)>([^<]*)<\/text>/g

/** Width of the pen's line, of the height of capitals, where no width is stated. */
const PEN = 0.09

const SIGNS: Readonly<Record<string, string>> = {
  '&amp;': '&',
  '&lt;': '<',
  '&gt;': '>',
  '&quot;': '"',
  '&#39;': "'",
}

const plain = (escaped: string): string =>
  escaped.replace(/&(?:amp|lt|gt|quot|#39);/g, (sign) => SIGNS[sign] ?? sign)

/**
 * A page with each of its lines of words as a path of single strokes, as long as the words would have been or
 * shorter; each path has the words as its title, so that readers still find them.
 *
 * @param markup a page as this room writes it
 * @param width of the strokes, mm; in proportion to the letters where it is `null`
 */
export function inSingleLines(markup: string, width: number | null): string {
  return markup.replace(TEXT, (_, attributes: string, escaped: string) => {
    const read = new Map(
      [...attributes.matchAll(/([a-z-]+)="([^"]*)"/g)].map((one) => [one[1], one[2] ?? '']),
    )
    const text = plain(escaped)
    const size = Number(read.get('font-size'))
    const height = size * CAPITAL_HEIGHT
    const room = textWidth(text, size)
    const long = Math.min(strokesWidth(text, height), room)
    const anchor = read.get('text-anchor')
    const back = anchor === 'middle' ? long / 2 : anchor === 'end' ? long : 0
    const [x, y] = [Number(read.get('x')) - back, Number(read.get('y'))]
    const strokes = strokesOf({ at: { x: 0, y: 0 }, height, turn: 0, text }, room)
    const pair = (point: Point) =>
      `${numberText(x + point.x, 'x of a stroke', 3)} ${numberText(y - point.y, 'y of a stroke', 3)}`
    const d = strokes.map(({ vertices }) => `M ${vertices.map(pair).join(' L ')}`).join(' ')
    if (d === '') return ''
    const transform = read.get('transform')
    const turned = transform === undefined ? '' : ` transform="${transform}"`
    const pen = numberText(width ?? height * PEN, 'Width of a stroke', 3)
    return `<path d="${d}" fill="none" stroke="${read.get('fill') ?? '#000000'}" stroke-width="${pen}" stroke-dasharray="none"${turned}><title>${escaped}</title></path>`
  })
}
