/**
 * Path data and simple shapes out of an SVG file of unknown origin. Nothing of the file is kept but numbers: it is
 * scanned as text, never made into a document, and what is not named here is passed over.
 */

export interface Found {
  /** Path data of every path, circle, ellipse, rectangle and polygon, in order. */
  readonly paths: readonly string[]
  /** What was passed over and might be missed: `a script`, `a link`. */
  readonly ignored: readonly string[]
}

export type SvgReading = ({ readonly ok: true } & Found) | { readonly ok: false; readonly sentence: string }

/** Longer files are pictures, not curves. */
export const LONGEST_SVG = 2_000_000
const MOST_ELEMENTS = 20000

const refuse = (sentence: string): SvgReading => ({ ok: false, sentence })

/** Reads the shapes of an SVG text. A sentence for what is no plain SVG, or has a transform. */
export function shapesIn(text: string): SvgReading {
  if (text.length > LONGEST_SVG)
    return refuse(`The file has ${text.length} characters; a curve has no more than ${LONGEST_SVG}.`)
  if (/<!DOCTYPE|<!ENTITY/i.test(text))
    return refuse(
      'The file declares entities of its own, which can hide anything. Save it again as plain SVG.',
    )
  const bare = without(without(text, '<!--', '-->'), '<![CDATA[', ']]>')
  const paths: string[] = []
  const ignored = new Set<string>()
  let skipping = ''
  let count = 0
  for (const [, end, name = '', attributes = ''] of bare.matchAll(TAG)) {
    count += 1
    if (count > MOST_ELEMENTS) return refuse(`The file has more than ${MOST_ELEMENTS} elements.`)
    const own = name.toLowerCase().replace(/^svg:/, '')
    if (skipping) {
      if (end && own === skipping) skipping = ''
      continue
    }
    if (end) continue
    const passed = PASSED[own]
    if (passed) {
      ignored.add(passed)
      if (!attributes.trimEnd().endsWith('/')) skipping = own
      continue
    }
    if (/\son[a-z]+\s*=/i.test(attributes)) ignored.add('a script')
    if (/[\s:]href\s*=|url\s*\(/i.test(attributes)) ignored.add('a link')
    if (attribute(attributes, 'transform') && own !== 'svg')
      return refuse(
        'The drawing moves or turns its shapes with "transform". Save it with the transforms applied, or paste the path itself.',
      )
    const data = dataOf(own, attributes)
    if (data) paths.push(data)
  }
  return { ok: true, paths, ignored: [...ignored] }
}

/** No "<" among the attributes: a file of nothing but beginnings would be read to its end from each of them. */
const TAG = /<(\/?)([A-Za-z][\w:.-]*)((?:"[^"]*"|'[^']*'|[^<>"'])*)>/g

/** The text without what stands between two marks; what is never closed goes with all behind it. */
function without(text: string, opens: string, closes: string): string {
  let left = ''
  let at = 0
  for (let from = text.indexOf(opens); from >= 0; from = text.indexOf(opens, at)) {
    left += text.slice(at, from)
    const end = text.indexOf(closes, from + opens.length)
    if (end < 0) return left
    at = end + closes.length
  }
  return left + text.slice(at)
}

/** Elements that are passed over with all that stands in them, as one says it. */
const PASSED: Readonly<Record<string, string>> = {
  script: 'a script',
  style: 'a style',
  image: 'a picture',
  foreignobject: 'foreign content',
  text: 'lettering',
  use: 'a link',
  a: 'a link',
  iframe: 'foreign content',
  defs: 'definitions',
  mask: 'a mask',
  clippath: 'a mask',
  pattern: 'a pattern',
  marker: 'a pattern',
  symbol: 'definitions',
}

function attribute(attributes: string, name: string): string | null {
  const found = new RegExp(`(?:^|\\s)${name}\\s*=\\s*(?:"([^"]*)"|'([^']*)')`).exec(attributes)
  return found ? (found[1] ?? found[2] ?? '') : null
}

function numberOf(attributes: string, name: string, standard = 0): number {
  const value = attribute(attributes, name)
  const number = value === null ? standard : Number.parseFloat(value)
  return Number.isFinite(number) ? number : standard
}

/** Shapes as the path that W3C SVG 2, "Basic Shapes", says they are. */
function dataOf(name: string, attributes: string): string | null {
  const n = (key: string) => numberOf(attributes, key)
  switch (name) {
    case 'path':
      return attribute(attributes, 'd')
    case 'circle':
      return ellipse(n('cx'), n('cy'), n('r'), n('r'))
    case 'ellipse':
      return ellipse(n('cx'), n('cy'), n('rx'), n('ry'))
    case 'rect': {
      const [x, y, w, h] = [n('x'), n('y'), n('width'), n('height')]
      return w > 0 && h > 0 ? `M ${x} ${y} h ${w} v ${h} h ${-w} Z` : null
    }
    case 'polygon':
      return `M ${attribute(attributes, 'points') ?? ''} Z`
    default:
      return null
  }
}

const ellipse = (cx: number, cy: number, rx: number, ry: number): string | null =>
  rx > 0 && ry > 0
    ? `M ${cx + rx} ${cy} A ${rx} ${ry} 0 0 1 ${cx - rx} ${cy} A ${rx} ${ry} 0 0 1 ${cx + rx} ${cy} Z`
    : null
