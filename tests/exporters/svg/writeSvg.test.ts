// @vitest-environment jsdom
/** Pages read again from their XML by the browser's own parser. */
import { describe, expect, test } from 'vitest'
import { drawPart } from '../../../exporters/drawing/drawing.ts'
import { LAYER_TABLE } from '../../../exporters/drawing/layers.ts'
import { writeSvg, writeSvgSheet } from '../../../exporters/svg/writeSvg.ts'
import { textWidth } from '../../../exporters/words/width.ts'
import { bounds, type Part, type Point } from '../../../geometry/index.ts'
import { offPaper, type ReadSvg, readSvg, shapesIn } from '../../support/readSvg.ts'
import { allParts, HOSTILE, hardArcs, hostile, lid, neck, nut } from '../../support/sampleParts.ts'
import { type Drawn, drawnOf, isCircle, worstError } from '../../support/segments.ts'

const MICROMETRE = 0.001
const options = { title: 'Tea box', line: 'Revision B' }

/** Leftmost and lowest end of an outline, by the numbers: where paper and part are held together. */
function corner(drawn: Drawn | undefined, lowest: 'least y' | 'greatest y'): Point {
  if (drawn === undefined || isCircle(drawn)) throw new Error('The outline should be a chain.')
  const ends = drawn.flatMap(({ from, to }) => [from, to])
  const ys = ends.map((end) => end.y)
  return {
    x: Math.min(...ends.map((end) => end.x)),
    y: lowest === 'least y' ? Math.min(...ys) : Math.max(...ys),
  }
}

/** Every contour of a part as drawn, turned back into the part's own sheet, by layer. */
function readBack(svg: ReadSvg, part: Part): (layer: string) => Drawn[] {
  const at = corner(shapesIn(svg, `${part.id}-CUT-OUTSIDE`)[0], 'greatest y')
  const own = corner(drawnOf(part.outline), 'least y')
  return (layer) => shapesIn(svg, `${part.id}-${layer}`).map((drawn) => offPaper(drawn, at, own))
}

const groupIds = (svg: ReadSvg) => [...svg.root.querySelectorAll('g[id]')].map((group) => group.id)

describe('what is drawn', () => {
  test.each(allParts)('$id has every contour in its group within a micrometre', (part) => {
    const read = readBack(readSvg(writeSvg(part, options)), part)
    for (const layer of drawPart(part, 'mm').layers) {
      expect(worstError(layer.contours.map(drawnOf), read(layer.name))).toBeLessThan(MICROMETRE)
    }
  })

  test('on the sheet of all parts every contour is the same', () => {
    const svg = readSvg(writeSvgSheet(allParts, options))
    for (const part of allParts) {
      const read = readBack(svg, part)
      for (const layer of drawPart(part, 'mm').layers) {
        expect(worstError(layer.contours.map(drawnOf), read(layer.name))).toBeLessThan(MICROMETRE)
      }
    }
  })

  test('is turned over once: what is up on the part is up on paper, left stays left, letters stay readable', () => {
    const svg = readSvg(writeSvg(lid, options))
    const note = [...svg.root.querySelectorAll('[id="lid-NOTES"] text')]
    const place = (index: number) => ['x', 'y'].map((name) => Number(note[index]?.getAttribute(name)))
    const [grainX = 0, grainY = 0] = place(0)
    const [edgeX = 0, edgeY = 0] = place(1)
    // The parts have the notes at (12, 84) and at (8, -80), the second turned to read upwards.
    expect(grainX - edgeX).toBeCloseTo(4, 6)
    expect(edgeY - grainY).toBeCloseTo(164, 6)
    expect(note[1]?.getAttribute('transform')).toBe(`rotate(-90 ${edgeX} ${edgeY})`)
    expect(writeSvg(lid, options)).not.toContain('scale(')
  })

  test('circles are circles and arcs are A commands of a third of a turn at most', () => {
    const text = writeSvg(hardArcs, options)
    const arcs = [...text.matchAll(/([\d.]+) ([\d.]+) A ([\d.]+) ([\d.]+) 0 ([01]) [01] ([\d.]+) ([\d.]+)/g)]
    // Half a turn, nearly half and more than half: two commands each; a shallow one, one; the flat one, none.
    expect(text.match(/A /g)).toHaveLength(7)
    expect(arcs.length).toBeGreaterThan(2)
    for (const [, x1, y1, rx, ry, large, x2, y2] of arcs) {
      expect([ry, large]).toEqual([rx, '0'])
      const chord = Math.hypot(Number(x2) - Number(x1), Number(y2) - Number(y1))
      expect(chord).toBeLessThan(2 * Number(rx) * Math.sin(Math.PI / 3) + 1e-5)
    }
    expect(shapesIn(readSvg(writeSvg(lid, options)), 'lid-DRILL-THROUGH').every(isCircle)).toBe(true)
  })

  test('an arc of a radius of many kilometres keeps to its curve within a micrometre', () => {
    const side = { x: 0, y: 0, bulge: 0 }
    // Chord 2000 mm, bulge 4e-4: rise 0.4 mm, radius c (1 + b^2) / (4 b) = 1.25 km.
    const flat: Part = {
      ...nut,
      outline: {
        shape: 'chain',
        closed: true,
        vertices: [
          side,
          { x: 2000, y: 0, bulge: 0 },
          { x: 2000, y: 50, bulge: -4e-4 },
          { x: 0, y: 50, bulge: 0 },
        ],
      },
    }
    const [outline] = readBack(readSvg(writeSvg(flat, options)), flat)('CUT-OUTSIDE')
    if (outline === undefined || isCircle(outline)) throw new Error('The outline should be a chain.')
    const along = outline.filter(({ from, to }) => from.y > 45 && to.y > 45)
    expect(along.length).toBeGreaterThan(10)
    const radius = (2000 * (1 + 4e-4 ** 2)) / (4 * 4e-4)
    const centreY = 50 + (radius - 0.4)
    for (const { from, middle, to } of along) {
      for (const point of [from, middle, to]) {
        expect(Math.abs(Math.hypot(point.x - 1000, point.y - centreY) - radius)).toBeLessThan(MICROMETRE)
      }
    }
  })

  test('the outline is the last group, after every hole', () => {
    const layers = groupIds(readSvg(writeSvg(lid, options))).filter((id) => id.startsWith('lid-'))
    expect(layers.at(-1)).toBe('lid-CUT-OUTSIDE')
    expect(layers.at(-2)).toBe('lid-CUT-INSIDE')
  })

  test('every hole to drill has a cross on its centre, and nothing else has', () => {
    const svg = readSvg(writeSvg(lid, options))
    const crosses = readBack(svg, lid)('CENTRES').flatMap((drawn) => (isCircle(drawn) ? [] : drawn))
    const holes = lid.operations.flatMap((each) => (each.kind === 'drill' ? [each] : []))
    expect(crosses).toHaveLength(2 * holes.length)
    for (const { centre, diameter } of holes) {
      const own = crosses.filter(
        ({ middle }) => Math.hypot(middle.x - centre.x, middle.y - centre.y) < MICROMETRE,
      )
      expect(own).toHaveLength(2)
      for (const { from, to } of own)
        expect(Math.hypot(to.x - from.x, to.y - from.y)).toBeGreaterThan(diameter)
    }
    expect(groupIds(readSvg(writeSvg(nut, options)))).not.toContain('nut-CENTRES')
  })
})

describe('the page', () => {
  const pages = [...allParts.map((part) => writeSvg(part, options)), writeSvgSheet(allParts, options)]

  test.each(pages.map((text, index) => [index, text] as const))(
    'number %i is in millimetres: width and height are the numbers of a viewBox from 0 0',
    (_, text) => {
      const svg = readSvg(text)
      expect(svg.viewBox).toEqual([0, 0, svg.width, svg.height])
      expect(svg.root.getAttribute('transform')).toBeNull()
      expect(svg.root.getAttribute('preserveAspectRatio')).toBeNull()
    },
  )

  test.each(pages.map((text, index) => [index, text] as const))(
    'number %i holds everything with a margin of 9 mm or more, words included',
    (_, text) => {
      const svg = readSvg(text)
      const xs: number[] = []
      const ys: number[] = []
      for (const id of groupIds(svg)) {
        for (const drawn of shapesIn(svg, id)) {
          const points = isCircle(drawn)
            ? [-1, 1].map((s) => ({
                x: drawn.centre.x + s * drawn.radius,
                y: drawn.centre.y + s * drawn.radius,
              }))
            : drawn.flatMap(({ from, middle, to }) => [from, middle, to])
          xs.push(...points.map((point) => point.x))
          ys.push(...points.map((point) => point.y))
        }
      }
      for (const words of svg.root.querySelectorAll('text')) {
        const [x = 0, y = 0, size = 0] = ['x', 'y', 'font-size'].map((name) =>
          Number(words.getAttribute(name)),
        )
        const width = textWidth(words.textContent ?? '', size)
        const start = words.getAttribute('text-anchor') === 'middle' ? -width / 2 : 0
        if (words.getAttribute('transform') === null) {
          xs.push(x + start, x + start + width)
          ys.push(y - size, y + size / 4)
        } else {
          xs.push(x - size, x + size / 4)
          ys.push(y - start, y - start - width)
        }
      }
      expect(Math.min(...xs)).toBeGreaterThanOrEqual(9)
      expect(Math.min(...ys)).toBeGreaterThanOrEqual(9)
      expect(Math.max(...xs)).toBeLessThanOrEqual(svg.width - 9)
      expect(Math.max(...ys)).toBeLessThanOrEqual(svg.height - 9)
    },
  )

  test.each(['across', 'up'])('has bars of 100 mm and of 4 inches %s', (axis) => {
    const svg = readSvg(writeSvg(nut, options))
    for (const [id, length] of [
      ['mm', 100],
      ['in', 101.6],
    ] as const) {
      const [bar, ...ticks] = shapesIn(svg, `check-${id}-${axis}`).flatMap((drawn) =>
        isCircle(drawn) ? [] : [drawn],
      )
      const [line] = bar ?? []
      if (line === undefined) throw new Error('There is no bar.')
      const along = axis === 'across' ? line.to.x - line.from.x : line.from.y - line.to.y
      expect(along).toBeCloseTo(length, 6)
      // The outer ticks stand on the very ends.
      for (const end of [line.from, line.to]) {
        expect(
          ticks.some(
            ([tick]) => tick !== undefined && Math.hypot(tick.from.x - end.x, tick.from.y - end.y) < 1e-6,
          ),
        ).toBe(true)
      }
    }
  })

  test('bars and words keep clear of the drawing', () => {
    for (const part of allParts) {
      const svg = readSvg(writeSvg(part, options))
      const at = corner(shapesIn(svg, `${part.id}-CUT-OUTSIDE`)[0], 'greatest y')
      for (const id of ['check-mm-across', 'check-in-across']) {
        for (const drawn of shapesIn(svg, id)) {
          if (!isCircle(drawn))
            for (const { from, to } of drawn) expect(Math.min(from.y, to.y)).toBeGreaterThan(at.y + 3)
        }
      }
      for (const id of ['check-mm-up', 'check-in-up']) {
        for (const drawn of shapesIn(svg, id)) {
          if (!isCircle(drawn))
            for (const { from, to } of drawn) expect(Math.max(from.x, to.x)).toBeLessThan(at.x - 3)
        }
      }
    }
  })

  test('the title block says part, face, head end, hand, thickness, size in both units, scale and how to print', () => {
    const words = [...readSvg(writeSvg(lid, options)).root.querySelectorAll('[id="title-block"] text')].map(
      (each) => each.textContent,
    )
    expect(words).toEqual([
      'PART',
      'Lid',
      'SCALE',
      '1:1',
      'SEEN',
      'from outside',
      'HEAD END',
      'left',
      'HAND',
      'right-handed',
      'THICKNESS',
      '4.0 mm (0.157 in)',
      'OVERALL SIZE',
      '300.0 × 200.0 mm (11.811 × 7.874 in)',
      'PRINT',
      'at 100 %, then measure the bars',
      'INSTRUMENT',
      'Tea box',
      'NOTE',
      'Revision B',
    ])
  })

  test('a mirrored drawing says so in the block and in the description', () => {
    const text = writeSvg({ ...lid, mirrored: true }, options)
    expect(text.match(/from outside, as a mirror image/g)?.length).toBeGreaterThanOrEqual(2)
    expect(writeSvg(lid, options)).not.toContain('mirror')
  })

  test('the legend explains every layer that is drawn, with the holes counted', () => {
    const words = [...readSvg(writeSvg(lid, options)).root.querySelectorAll('[id="legend"] text')].map(
      (each) => each.textContent,
    )
    for (const layer of drawPart(lid, 'mm').layers) {
      if (layer.contours.length > 0) expect(words).toContain(layer.name)
    }
    expect(words).toContain('drill right through: 2 of 9.5 mm (0.374 in)')
    expect(words).toContain('drill 12.0 mm (0.472 in) deep: 2 of 2.0 mm (0.079 in)')
  })
})

describe('lines', () => {
  test('have the colour, the real width and the line type of the table, and are never filled', () => {
    const svg = readSvg(writeSvgSheet(allParts, options))
    for (const style of LAYER_TABLE.filter(({ kind }) => kind !== 'notes' && kind !== 'tab')) {
      const groups = [...svg.root.querySelectorAll('g[id]')].filter(({ id }) =>
        allParts.some(
          (part) => id === `${part.id}-${style.name}` || id.startsWith(`${part.id}-${style.name}-`),
        ),
      )
      expect(groups.length).toBeGreaterThan(0)
      for (const group of groups) {
        const exact = LAYER_TABLE.find(({ name }) => group.id.endsWith(name)) ?? style
        expect(group.getAttribute('stroke')).toBe(exact.ink)
        expect(Number(group.getAttribute('stroke-width'))).toBe(exact.width)
        expect(group.getAttribute('fill')).toBe('none')
        expect(group.hasAttribute('stroke-dasharray')).toBe(exact.lineType !== 'CONTINUOUS')
      }
    }
    expect(writeSvg(lid, options)).not.toContain('non-scaling-stroke')
  })
})

describe('words', () => {
  const text = writeSvg(hostile, { title: HOSTILE, line: '"><script>x</script>' })
  const svg = readSvg(text)

  test('of a stranger stay words: no element and no attribute comes of them', () => {
    const names = new Set([...svg.root.querySelectorAll('*')].map((each) => each.nodeName))
    expect([...names].sort()).toEqual(
      ['circle', 'desc', 'g', 'path', 'text', 'title'].filter((name) => names.has(name)),
    )
    for (const each of svg.root.querySelectorAll('*')) {
      for (const { name } of each.attributes) expect(name).not.toMatch(/^on|href|style/)
    }
    expect(text).not.toContain('<script')
    expect(svg.root.querySelector('title')?.textContent).toContain(
      '<script>alert("1")</script> & gnp.lid 0 SECTION ⌀6',
    )
  })

  test('hold no control character, no mark of direction and no half character', () => {
    expect(text).toMatch(
      /^[\n\u0020-\u007e\u00a0-\u200a\u2010-\u2027\u2030-\u205f\u2070-\ud7ff\ue000-\ufefe\uff00-\ufffd\u{10000}-\u{10ffff}]*$/u,
    )
  })

  test('title the root and every group', () => {
    expect(svg.root.firstElementChild?.nodeName).toBe('title')
    expect(svg.root.getAttribute('aria-labelledby')).toBe('title description')
    for (const page of [svg, readSvg(writeSvgSheet(allParts, options))]) {
      const groups = [...page.root.querySelectorAll('g')].filter(
        (group) => !group.id.startsWith('check-bars'),
      )
      for (const group of groups) {
        expect(group.firstElementChild?.nodeName).toBe('title')
        expect(group.firstElementChild?.textContent).not.toBe('')
      }
    }
    expect(
      readSvg(writeSvg({ ...lid, title: '\u0000' }, { title: '' })).root.querySelector('title')?.textContent,
    ).toBe('lid')
  })

  test('describe face, head end, hand, units and how to print', () => {
    const description = readSvg(writeSvg(neck, options)).root.querySelector('desc')?.textContent
    expect(description).toBe(
      'Neck, from the front, seen from the playing side, head end left, right-handed, 21.0 mm (0.827 in) thick, ' +
        '900.0 × 44.0 mm. Units: millimetres, one user unit is one millimetre. Print at 100 %, no scaling.',
    )
  })

  test('ids are unique, on the sheet of all parts too', () => {
    const ids = [...readSvg(writeSvgSheet(allParts, options)).root.querySelectorAll('[id]')].map(
      ({ id }) => id,
    )
    expect(new Set(ids).size).toBe(ids.length)
  })
})

test('no number is in exponent form, not finite, or a minus nought', () => {
  for (const part of allParts) {
    const data = [
      ...writeSvg(part, options).matchAll(/(?:[^a-z]d|viewBox|[xyr]|width|height|cx|cy)="([^"]*)"/g),
    ]
    expect(data.length).toBeGreaterThan(20)
    for (const [, value] of data) expect(value).not.toMatch(/NaN|Infinity|undefined|\d[eE]|-0(?![.\d])/)
  }
})

test('the same parts give the same bytes', () => {
  expect(writeSvg(lid, options)).toBe(writeSvg(lid, options))
  expect(writeSvgSheet(allParts, options)).toBe(writeSvgSheet(allParts, options))
})

test('the page is no wider than a part needs, and a small part fits a sheet of A4 (ISO 216: 210 by 297)', () => {
  const page = readSvg(writeSvg(nut, options))
  expect(page.width).toBeLessThanOrEqual(210)
  expect(page.height).toBeLessThanOrEqual(297)
  const { minX, maxX } = bounds(neck.outline)
  expect(readSvg(writeSvg(neck, options)).width).toBeLessThan(maxX - minX + 60)
})
