/** Reading a stranger's curve, held against makerjs's own reader of path data and against the curves' formulas. */
import makerjs from 'makerjs'
import { describe, expect, test } from 'vitest'
import { area, type Chain, distanceToPoint, faults, flatten, readCurve } from '../../../geometry/index.ts'

const MOST = 400
/** The curve at the largest size it can be asked for, 400 over all. */
function chainOf(text: string): { readonly chain: Chain; readonly scale: number } {
  const reading = readCurve(text)
  if (!reading.ok) throw new Error(reading.sentence)
  const scale = MOST / Math.max(reading.size.x, reading.size.y)
  const vertices = reading.curve.map(([x, y, bulge]) => ({ x: x * scale, y: y * scale, bulge }))
  return { chain: { shape: 'chain', closed: true, vertices }, scale }
}

const sentenceFor = (text: string): string => {
  const reading = readCurve(text)
  return reading.ok ? 'it was read' : reading.sentence
}

const PATHS = {
  'straight lines': 'M0 0 L40 0 L20 30 Z',
  'relative lines, close together': 'm10,10h30v20l-30-5z',
  'cubic curves that go on smoothly': 'M0 0 C 10 -20 30 -20 40 0 S 50 40 20 50 Q 0 40 0 0 Z',
  'quadratic curves': 'M0 0 Q 20 -30 40 0 T 80 0 L 80 40 L 0 40 Z',
  'arcs of a circle':
    'M10 0 H 50 A 10 10 0 0 1 60 10 V 40 A 10 10 0 0 1 50 50 H 10 A 10 10 0 0 1 0 40 V 10 A 10 10 0 0 1 10 0 Z',
  'an ellipse, turned': 'M 0 0 A 30 15 30 0 1 40 20 A 30 15 30 0 1 0 0 Z',
  'a large arc': 'M 0 0 A 20 20 0 1 1 10 10 Z',
}

describe('path data', () => {
  test.each(Object.entries(PATHS))('%s: the area is that of makerjs', (_, path) => {
    const { chain, scale } = chainOf(path)
    const model = makerjs.importer.fromSVGPathData(path, { bezierAccuracy: 0.001 })
    const loop = makerjs.model.findSingleChain(model)
    const points = makerjs.chain.toKeyPoints(loop, 0.05) as [number, number][]
    const shoelace = points.reduce((sum, [x, y], index) => {
      const [nx, ny] = points[(index + 1) % points.length] ?? [x, y]
      return sum + (x * ny - nx * y) / 2
    }, 0)
    expect(Math.abs(area(chain)) / scale ** 2 / Math.abs(shoelace)).toBeCloseTo(1, 2)
    expect(faults(chain).filter((one) => !one.includes('clockwise'))).toEqual([])
  })

  test('a cubic curve is followed to 0.02 mm at the largest size', () => {
    const { chain, scale } = chainOf('M0 0 C 10 -40 60 20 80 0 L 40 60 Z')
    for (let step = 0; step <= 200; step++) {
      // Bernstein's form
      const t = step / 200
      const u = 1 - t
      const x = 3 * u * u * t * 10 + 3 * u * t * t * 60 + t * t * t * 80
      const y = -(3 * u * u * t * -40 + 3 * u * t * t * 20)
      expect(Math.abs(distanceToPoint(chain, { x: x * scale, y: y * scale }))).toBeLessThan(0.02)
    }
  })

  test('an ellipse is followed to 0.02 mm: every place on the curve fulfils its equation', () => {
    const { chain } = chainOf('M 30 0 A 30 15 0 0 1 -30 0 A 30 15 0 0 1 30 0 Z')
    for (const { x, y } of flatten(chain, 0.001)) {
      const [a, b] = [200, 100]
      // First-order distance: the equation's value over the length of its gradient.
      const value = (x / a) ** 2 + (y / b) ** 2 - 1
      const slope = 2 * Math.hypot(x / a ** 2, y / b ** 2)
      expect(Math.abs(value / slope)).toBeLessThan(0.021)
    }
  })

  test('arcs of circles stay arcs, and lines lines', () => {
    const reading = readCurve('M0 0 A 10 10 0 0 1 20 0 L 20 30 L 0 30 Z')
    if (!reading.ok) throw new Error(reading.sentence)
    // Half a circle that rises over its chord in the file, where y runs down.
    expect(reading.curve.map(([, , bulge]) => Math.abs(Math.round(bulge * 1e5) / 1e5))).toEqual([1, 0, 0, 0])
  })
})

describe('SVG files', () => {
  test('shapes are read, and nothing else is kept', () => {
    const evil = `<svg xmlns="http://www.w3.org/2000/svg" onload="steal()"><script>steal()</script>
      <a href="javascript:steal()"><path d="M0 0h900v900z"/></a><style>@import url(x)</style>
      <circle cx="10" cy="10" r="5" onclick="steal()" fill="url(#x)"/></svg>`
    const reading = readCurve(evil)
    if (!reading.ok) throw new Error(reading.sentence)
    expect(reading.size).toEqual({ x: 10, y: 10 })
    expect(JSON.stringify(reading.curve)).not.toMatch(/[a-z]/i)
    expect(reading.notes.join(' ')).toMatch(/script.*link|link.*script/)
  })

  test('of several curves the largest is taken, and said so', () => {
    const reading = readCurve('<svg><rect width="5" height="5"/><polygon points="0,0 50,0 20,40"/></svg>')
    if (!reading.ok) throw new Error(reading.sentence)
    expect(reading.curve).toHaveLength(3)
    expect(reading.notes).toEqual(['Of 2 curves the largest was taken.'])
  })

  test.each([
    ['entities', '<!DOCTYPE svg [<!ENTITY a "b">]><svg><path d="M0 0h1v1z"/></svg>', 'entities'],
    ['a transform', '<svg><path transform="scale(2)" d="M0 0h1v1z"/></svg>', 'transform'],
    ['no shape', '<svg><text>M0 0h1v1z</text></svg>', 'no path'],
  ])('%s: refused with a reason', (_, text, word) => {
    expect(sentenceFor(text)).toContain(word)
  })
})

describe('a stranger’s file', () => {
  const SQUARE = '<path d="M0 0h40v40h-40z"/>'
  const read = (inner: string) => readCurve(`<svg xmlns="http://www.w3.org/2000/svg">${inner}${SQUARE}</svg>`)

  test.each([
    ['foreign content', '<foreignObject><iframe src="http://x/"/><path d="M0 0h900v900z"/></foreignObject>'],
    ['a picture', '<image href="http://x/a.png" width="900" height="900"/>'],
    ['a link', '<use xlink:href="http://x/a.svg#b"/>'],
    ['a link', '<path d="M0 0h1v1z" xlink:href="http://x/"/>'],
    ['a style', '<style>@import url(http://x/a.css)</style>'],
    ['a script', '<script href="http://x/a.js"/>'],
    ['definitions', '<symbol><path d="M0 0h900v900z"/></symbol>'],
  ])('%s is left out and named', (what, inner) => {
    const reading = read(inner)
    if (!reading.ok) throw new Error(reading.sentence)
    expect(reading.size).toEqual({ x: 40, y: 40 })
    expect(reading.notes.join(' ')).toContain(what)
    expect(JSON.stringify(reading.curve)).not.toMatch(/[a-z]/i)
  })

  test('entities that laugh a thousand million times are refused before one is opened', () => {
    // M. Klein, "XML entity expansion", 2002: ten lines, each of ten of the line before.
    const lol = Array.from({ length: 9 }, (_, n) => `<!ENTITY l${n + 1} "${`&l${n};`.repeat(10)}">`).join('')
    expect(
      sentenceFor(`<!DOCTYPE svg [<!ENTITY l0 "ha">${lol}]><svg><title>&l9;</title>${SQUARE}</svg>`),
    ).toBe('The file declares entities of its own, which can hide anything. Save it again as plain SVG.')
  })

  // A million segments in as few letters as they take, and beginnings without an end, which a careless pattern
  // reads to the end of the file from each of them.
  test.each([
    [
      'a path of a million segments',
      `M0 0${'h1'.repeat(999_000)}`,
      'The path has more than 20000 segments. Draw it simpler.',
    ],
    [
      'the same in a file',
      `<svg><path d="M0 0${'h1'.repeat(900_000)}"/></svg>`,
      'The path has more than 20000 segments. Draw it simpler.',
    ],
    [
      'half a million tags',
      `<svg>${'<a '.repeat(600_000)}`,
      'The file holds no path, circle, rectangle or polygon.',
    ],
    ['half a million comments', `<svg>${'<!--'.repeat(490_000)}`, 'The file holds no path'],
    ['as many of another sort', `<svg>${'<![CDATA['.repeat(220_000)}`, 'The file holds no path'],
    ['quotes that never close', `<svg ${'"'.repeat(999_999)}`, 'The file holds no path'],
  ])('%s: told in less than a second', (_, text, words) => {
    const began = process.cpuUsage()
    expect(sentenceFor(text)).toContain(words)
    expect(process.cpuUsage(began).user).toBeLessThan(1e6)
  })
})

describe('what cannot be cut is refused in a sentence', () => {
  test.each([
    ['open', 'M 0 0 L 40 0 L 20 30', 'open: it ends 36.06 from where it began'],
    ['crossing itself', 'M0 0 L40 40 L40 0 L0 40 Z', 'cross or touch'],
    ['running back along itself', 'M0 0 L40 0 L20 0 Z', 'cannot be cut'],
    ['no path', 'hello', 'begins with M'],
    ['cut off', 'M 0 0 L 40', 'ends in the middle'],
    ['something else in it', 'M 0 0 L 40 0 <script>', '"<"'],
    ['a number without end', 'M 0 0 L 1e400 0 L 3 3 Z', '1e400'],
    ['nothing', '  ', 'Nothing was pasted'],
    ['one place', 'M 3 3 Z', 'no length'],
    ['too many segments', `M0 0${' l1 1'.repeat(20001)}`, 'more than 20000'],
    ['too long a file', `<svg>${' '.repeat(2_000_001)}</svg>`, 'characters'],
  ])('%s', (_, text, words) => {
    const began = performance.now()
    expect(sentenceFor(text)).toContain(words)
    expect(performance.now() - began).toBeLessThan(2000)
  })
})
