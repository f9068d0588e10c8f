/** Our PDF read and drawn by poppler, and measured in its pictures. */
import { beforeAll, describe, expect, test } from 'vitest'
import {
  type MadePdf,
  PAPERS,
  type PrintPlan,
  type PrintSetup,
  planPrint,
  printPdf,
  STANDARD_SETUP,
} from '../../exporters/index.ts'
import { joinMarks } from '../../exporters/pdf/joins.ts'
import { line, type Part, partsOf, rectangle, solve } from '../../geometry/index.ts'
import { needPoppler } from '../support/outsideTools.ts'
import { boxesOf, darkRuns, fontsOf, type GreyPicture, pageOf, wordsOf } from '../support/readPdf.ts'
import { allParts, hostile, lid, neck } from '../support/sampleParts.ts'
import { samples } from '../support/samples.ts'

const DOTS = 400
const PIXEL = 25.4 / DOTS

beforeAll(needPoppler, 300_000)

function planned(parts: readonly Part[], changes: Partial<PrintSetup> = {}): PrintPlan {
  const reading = planPrint(parts, { ...STANDARD_SETUP, ...changes })
  if (!reading.ok) throw new Error(reading.sentence)
  return reading.plan
}

async function printed(
  parts: readonly Part[],
  changes: Partial<PrintSetup> = {},
): Promise<{ plan: PrintPlan; made: MadePdf }> {
  const plan = planned(parts, changes)
  return { plan, made: await printPdf(plan, { title: 'Tea box' }) }
}

/** Middle of the dark run nearest to a place, pixels. Throws when none is within `reach`. */
function lineNear(
  picture: GreyPicture,
  way: 'row' | 'column',
  at: number,
  place: number,
  reach = 12,
): number {
  const [from, to] = [Math.round(place) - reach, Math.round(place) + reach + 1]
  const middles = darkRuns(picture, way, Math.round(at), from, to).map((run) => (run.from + run.to - 1) / 2)
  const nearest = middles.sort((a, b) => Math.abs(a - place) - Math.abs(b - place))[0]
  if (nearest === undefined) throw new Error(`No line within ${reach} pixels of ${place} along ${way} ${at}.`)
  return nearest
}

/** Where a place on paper, mm from its lower left corner, is in a picture of it. */
const pixelX = (x: number) => x / PIXEL - 0.5
const pixelY = (picture: GreyPicture, y: number) => picture.height - y / PIXEL - 0.5

describe('what poppler says', () => {
  test.each(PAPERS)('$title: every page has the box of the real paper, upright or lying', async (paper) => {
    const { made } = await printed([lid], { paper: paper.name })
    // ISO 216 for A sizes, ASME Y14.1 for 8.5 x 11 and 11 x 17 in; sides in mm.
    const sides = [
      ...{
        a4: [210, 297],
        a3: [297, 420],
        a2: [420, 594],
        letter: [215.9, 279.4],
        legal: [215.9, 355.6],
        tabloid: [279.4, 431.8],
      }[paper.name],
    ]
    const boxes = boxesOf(made.bytes, 'MediaBox')
    expect(boxes).toHaveLength(made.pages)
    for (const [left = 1, low = 1, width = 0, height = 0] of boxes) {
      expect([left, low]).toEqual([0, 0])
      const found = [width, height].sort((a, b) => a - b)
      for (const [index, side] of sides.entries()) expect(found[index]).toBeCloseTo(side, 2)
    }
    expect(boxesOf(made.bytes, 'CropBox')).toEqual(boxes)
  })

  test('scaling is forbidden, the tray is chosen by size, the font is embedded and searchable', async () => {
    const { made } = await printed([lid])
    const text = Buffer.from(made.bytes).toString('latin1')
    // ISO 32000-1, Table 150.
    expect(text).toMatch(/\/PrintScaling \/None/)
    expect(text).toMatch(/\/PickTrayByPDFSize true/)
    expect(text).not.toContain('CreationDate')
    const fonts = fontsOf(made.bytes)
    expect(fonts).toHaveLength(1)
    expect(fonts[0]).toMatch(/CID TrueType +Identity-H +yes yes yes/)
  })

  test('every sheet says part, face, head end, hand, row and column, page, paper and scaling', async () => {
    const { plan, made } = await printed([neck])
    const { columns } = plan.parts[0] as (typeof plan.parts)[0]
    expect(columns.length).toBeGreaterThan(2)
    for (let page = 1; page <= made.pages; page++) {
      const words = wordsOf(made.bytes, page)
      for (const wanted of [
        'Tea box: Neck, from the front',
        'seen from the playing side · head end left · right-handed · 21.0 mm (0.827 in) thick',
        `row A of A, column ${page} of ${columns.length} · page ${page} of ${made.pages}`,
        'A4 lying, print at 100 %, no scaling; not corrected for a printer',
        '100 mm',
        '4 in',
      ])
        expect(words).toContain(wanted)
      expect(words.match(/100\s+mm/g), 'bars').toHaveLength(2)
    }
    expect(wordsOf(made.bytes, 2)).toContain('cut along the left edge, lay it on the flap of A1')
  })

  test('titles in Latin, Greek and Cyrillic and the signs of the trade come out as written', async () => {
    const title = 'Čaj, Τσάι, Чай: ⌀6 ± ½″ ♭♯ → 100 °'
    const made = await printPdf(planned([lid]), { title })
    expect(wordsOf(made.bytes, 1)).toContain(title)
    expect(made.cautions).toEqual([])
  })

  test('a title in a script the letters lack is left out, said on paper and to the builder', async () => {
    const made = await printPdf(planned([lid]), { title: '茶箱' })
    expect(wordsOf(made.bytes, 1)).toContain('(not printable in these letters): Lid')
    expect(made.cautions).toEqual([expect.stringMatching(/^"茶箱" cannot be printed .* no 茶 箱\./)])
    const some = await printPdf(planned([lid]), { title: 'Tea 茶 box' })
    expect(wordsOf(some.bytes, 1)).toContain('Tea box: Lid')
    expect(some.cautions).toHaveLength(1)
  })

  test('hostile words and hard arcs are drawn without a complaint', async () => {
    const made = await printPdf(planned([...allParts, hostile].slice(0, 5)), { title: hostile.title })
    for (let page = 1; page <= made.pages; page++)
      expect(pageOf(made.bytes, page, 30).width).toBeGreaterThan(0)
  })
})

describe('measured in its pictures', () => {
  test.each([
    ['upright', 1, 1],
    ['lying', 1, 1],
    ['upright', 1.02, 0.985],
    ['lying', 1.02, 0.985],
  ] as const)('%s, corrected %f and %f: bars and frame have their length', async (way, x, y) => {
    // A frame of 120 by 90 mm, alone on its sheet.
    const frame: Part = { ...lid, outline: rectangle(0, 0, 120, 90), operations: [] }
    const { plan, made } = await printed([frame], { way, correction: { x, y } })
    const sheets = plan.parts[0] as (typeof plan.parts)[0]
    const { inner, window, scaleX, scaleY } = sheets.frame
    const picture = pageOf(made.bytes, 1, DOTS)
    // What the printer will shrink or stretch back: the file is drawn by the inverse of its error.
    const [perX, perY] = [scaleX / PIXEL, scaleY / PIXEL]
    expect([scaleX, scaleY].sort()).toEqual([x, y].sort())
    const px = (mm: number) => mm * perX - 0.5
    const py = (mm: number) => picture.height - mm * perY - 0.5
    const barY = inner.minY + 5.2
    const tickRow = Math.round(py(barY + 1.2))
    const zero = lineNear(picture, 'row', tickRow, px(window.minX + 0.5))
    const hundred = lineNear(picture, 'row', tickRow, px(window.minX + 100.5))
    expect(Math.abs(hundred - zero - 100 * perX)).toBeLessThan(1)
    const inchRow = Math.round(py(barY - 1.2))
    const four = lineNear(picture, 'row', inchRow, px(window.minX + 0.5 + 101.6))
    expect(Math.abs(four - zero - 101.6 * perX)).toBeLessThan(1)
    const tickColumn = Math.round(px(inner.minX + 6 - 1.2))
    const low = lineNear(picture, 'column', tickColumn, py(window.minY))
    const high = lineNear(picture, 'column', tickColumn, py(window.minY + 100))
    expect(Math.abs(low - high - 100 * perY)).toBeLessThan(1)
    const { shown } = sheets.tiles[0] as (typeof sheets.tiles)[0]
    const [left, base] = [window.minX - shown.minX, window.minY - shown.minY]
    const row = Math.round(py(base + 70))
    const column = Math.round(px(left + 110))
    const across = lineNear(picture, 'row', row, px(left + 120)) - lineNear(picture, 'row', row, px(left))
    const up =
      lineNear(picture, 'column', column, py(base)) - lineNear(picture, 'column', column, py(base + 90))
    expect(Math.abs(across - 120 * perX)).toBeLessThan(1)
    expect(Math.abs(up - 90 * perY)).toBeLessThan(1)
  })

  test('a neck of 900 mm: marks meet, the outline runs on, and the whole is 900 mm long', async () => {
    const { plan, made } = await printed([neck])
    const sheets = plan.parts[0] as (typeof plan.parts)[0]
    const marks = joinMarks(sheets, plan.setup.overlap)
    const pictures = sheets.tiles.map((_, index) => pageOf(made.bytes, index + 1, DOTS))
    const { window } = sheets.frame
    /** A place of the part, in the picture of a tile. */
    const inGreyPicture = (index: number, x: number, y: number) => {
      const picture = pictures[index] as GreyPicture
      const { shown } = sheets.tiles[index] as (typeof sheets.tiles)[0]
      return {
        picture,
        x: pixelX(window.minX + x - shown.minX),
        y: pixelY(picture, window.minY + y - shown.minY),
      }
    }
    const found = (index: number, mark: (typeof marks)[0]) => {
      const { picture, x, y } = inGreyPicture(index, mark.centre.x, mark.centre.y)
      const away = 3 / PIXEL
      return { x: lineNear(picture, 'row', y - away, x), y: lineNear(picture, 'column', x - away, y) }
    }
    let shift = 0
    for (let index = 0; index + 1 < sheets.tiles.length; index++) {
      const seam = sheets.columns[index + 1]?.from ?? 0
      const [first, second] = marks.filter((mark) => mark.seam === seam)
      if (first === undefined || second === undefined) throw new Error('A seam has two marks.')
      const [a, b] = [found(index, first), found(index, second)]
      const [c, d] = [found(index + 1, first), found(index + 1, second)]
      // Laid by the first mark, the second lies on its partner: 0.1 mm is 1.6 pixels.
      expect(Math.abs(b.x - a.x - (d.x - c.x))).toBeLessThanOrEqual(1)
      expect(Math.abs(b.y - a.y - (d.y - c.y))).toBeLessThanOrEqual(1)
      shift += a.x - c.x
      // And the edge of the neck runs on.
      const before = inGreyPicture(index, seam - 2, 22)
      const after = inGreyPicture(index + 1, seam + 2, 22)
      const edges = [before, after].map((at) => lineNear(at.picture, 'column', at.x, at.y))
      expect(Math.abs((edges[0] ?? 0) - a.y - ((edges[1] ?? 9) - c.y))).toBeLessThanOrEqual(1)
    }
    const start = inGreyPicture(0, -120, 10)
    const end = inGreyPicture(sheets.tiles.length - 1, 780, 10)
    const from = lineNear(start.picture, 'row', start.y, start.x)
    const to = lineNear(end.picture, 'row', end.y, end.x)
    expect(Math.abs((to + shift - from) * PIXEL - 900)).toBeLessThan(0.1)
  })
})

test('a board on six sheets: marks of every seam meet, along and across, to a pixel', async () => {
  const board: Part = {
    ...lid,
    outline: rectangle(0, 0, 600, 400),
    operations: [
      { kind: 'mark', contour: line({ x: 5, y: 5 }, { x: 595, y: 395 }), of: 'Slant' },
      { kind: 'mark', contour: line({ x: 5, y: 395 }, { x: 595, y: 5 }), of: 'Slant' },
    ],
  }
  const { plan, made } = await printed([board], { way: 'lying' })
  const sheets = plan.parts[0] as (typeof plan.parts)[0]
  expect([sheets.rows.length, sheets.columns.length]).toEqual([3, 3])
  const { window } = sheets.frame
  const pictures = sheets.tiles.map((_, index) => pageOf(made.bytes, index + 1, 300))
  const dot = 25.4 / 300
  for (const mark of joinMarks(sheets, plan.setup.overlap)) {
    /** Where the mark is on each sheet that shows it, less where that sheet's own paper has it. */
    const offs = sheets.tiles.flatMap(({ shown }, index) => {
      const { x, y } = mark.centre
      if (x < shown.minX || x > shown.maxX || y < shown.minY || y > shown.maxY) return []
      const picture = pictures[index] as GreyPicture
      const at = {
        x: (window.minX + x - shown.minX) / dot - 0.5,
        y: picture.height - (window.minY + y - shown.minY) / dot - 0.5,
      }
      const away = 2.6 / dot
      return [
        {
          x: lineNear(picture, 'row', at.y + away, at.x, 5) - at.x,
          y: lineNear(picture, 'column', at.x + away, at.y, 5) - at.y,
        },
      ]
    })
    expect(offs, mark.name).toHaveLength(2)
    for (const off of offs)
      expect(Math.max(Math.abs(off.x), Math.abs(off.y)), mark.name).toBeLessThanOrEqual(1)
  }
})

test('every sample on A4 and Letter, with the same bytes each time', async () => {
  for (const { design } of samples()) {
    const parts = partsOf(solve(design))
    for (const paper of ['a4', 'letter'] as const) {
      const plan = planned(parts, { paper })
      const first = await printPdf(plan, { title: design.title })
      const again = await printPdf(planned(parts, { paper }), { title: design.title })
      expect(Buffer.compare(Buffer.from(first.bytes), Buffer.from(again.bytes))).toBe(0)
      expect(first.cautions).toEqual([])
      expect(boxesOf(first.bytes, 'MediaBox')).toHaveLength(first.pages)
    }
  }
}, 60_000)
