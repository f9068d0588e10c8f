/** Our SVG drawn by librsvg at a known resolution and measured in the picture. */
import { spawnSync } from 'node:child_process'
import { beforeAll, describe, expect, test } from 'vitest'
import { LAYER_TABLE } from '../../exporters/drawing/layers.ts'
import { writeSvg, writeSvgSheet } from '../../exporters/index.ts'
import { needRsvgConvert } from '../support/outsideTools.ts'
import { type Picture, readPng } from '../support/readPng.ts'
import { allParts, hostile, lid } from '../support/sampleParts.ts'

/** 254 pixels to the inch: ten to the millimetre. */
const PER_MILLIMETRE = 10
const options = { title: 'Tea box' }

beforeAll(needRsvgConvert, 300_000)

function render(svg: string, perMillimetre = PER_MILLIMETRE): Picture {
  const dpi = String(perMillimetre * 25.4)
  const { stdout, stderr, status } = spawnSync('rsvg-convert', ['-d', dpi, '-p', dpi, '-b', 'white'], {
    input: svg,
    maxBuffer: 1 << 28,
  })
  if (status !== 0 || stderr.length > 0) throw new Error(`librsvg complains: ${stderr.toString()}`)
  return readPng(stdout)
}

type Rgb = readonly [red: number, green: number, blue: number]
const dark = ([r, g, b]: Rgb) => r + g + b < 500
const reddish = ([r, g, b]: Rgb) => r > g + 60 && r > b + 30

/** Middles of the runs of pixels along a row or column that pass a test, mm. */
function hits(length: number, at: (index: number) => Rgb, passes: (rgb: Rgb) => boolean): number[] {
  const found: number[] = []
  let start = -1
  for (let index = 0; index <= length; index++) {
    const inside = index < length && passes(at(index))
    if (inside && start < 0) start = index
    if (!inside && start >= 0) {
      found.push((start + index) / 2 / PER_MILLIMETRE)
      start = -1
    }
  }
  return found
}

const size = (svg: string, name: string) => Number(new RegExp(`${name}="(\\d+)mm"`).exec(svg)?.[1])
const barOf = (svg: string, id: string) =>
  (/ d="M ([\d.]+) ([\d.]+) L/.exec(svg.slice(svg.indexOf(`id="${id}"`))) ?? []).slice(1).map(Number)

describe('drawn by librsvg', () => {
  const svg = writeSvg(lid, options)
  let picture: Picture
  beforeAll(() => {
    picture = render(svg)
  }, 60_000)

  const row = (y: number, passes: (rgb: Rgb) => boolean) =>
    hits(picture.width, (x) => picture.pixel(x, Math.round(y * PER_MILLIMETRE)), passes)
  const column = (x: number, passes: (rgb: Rgb) => boolean) =>
    hits(picture.height, (y) => picture.pixel(Math.round(x * PER_MILLIMETRE), y), passes)

  test('the page is as large as it says', () => {
    expect(picture.width).toBe(size(svg, 'width') * PER_MILLIMETRE)
    expect(picture.height).toBe(size(svg, 'height') * PER_MILLIMETRE)
  })

  test('100 mm across and 100 mm up measure 100 mm, ten ticks of 10 mm', () => {
    const [acrossX = 0, acrossY = 0] = barOf(svg, 'check-mm-across')
    const ticks = row(acrossY - 1, dark).filter((x) => x > acrossX - 1 && x < acrossX + 101)
    expect(ticks).toHaveLength(11)
    const [upX = 0, upY = 0] = barOf(svg, 'check-mm-up')
    const steps = column(upX - 1, dark).filter((y) => y < upY + 1 && y > upY - 101)
    expect(steps).toHaveLength(11)
    for (const list of [ticks, steps]) {
      for (const [index, place] of list.entries())
        expect(Math.abs(place - (list[0] ?? 0) - 10 * index)).toBeLessThan(0.15)
    }
  })

  test('4 inches across measure 101.6 mm', () => {
    const [x = 0, y = 0] = barOf(svg, 'check-in-across')
    const ticks = row(y + 1, dark).filter((each) => each > x - 1 && each < x + 102.6)
    expect(ticks).toHaveLength(9)
    expect(Math.abs((ticks.at(-1) ?? 0) - (ticks[0] ?? 0) - 101.6)).toBeLessThan(0.15)
  })

  test('the sound hole is 52.8 mm wide and high, and stands where the part has it, the right way up', () => {
    // The outline runs from x = 0 to 300 and from y = -100 to 100; the hole's centre is at (82.25, 3.125).
    const middle = size(svg, 'height') / 3
    const edges = row(middle, dark).filter((x) => x > 25)
    const left = edges[0] ?? 0
    const top = column(left + 150, dark)[0] ?? 0
    const across = row(top + 100 - 3.125, reddish).filter((x) => x < left + 120)
    expect(across).toHaveLength(2)
    expect(Math.abs((across[1] ?? 0) - (across[0] ?? 0) - 52.8)).toBeLessThan(0.15)
    expect(Math.abs((across[0] ?? 0) - left - (82.25 - 26.4))).toBeLessThan(0.15)
    const down = column(left + 82.25, reddish).filter((y) => y < top + 200)
    expect(down).toHaveLength(2)
    expect(Math.abs((down[0] ?? 0) - top - (100 - 3.125 - 26.4))).toBeLessThan(0.15)
  })
})

test('the bars that a laser scribes measure 100 mm along both axes', () => {
  // As thin as a beam follows them no pixel would show: drawn wider, in the same place.
  const svg = writeSvg(lid, { ...options, purpose: 'laser' }).replaceAll(
    'stroke-width="0.01"',
    'stroke-width="0.2"',
  )
  const picture = render(svg)
  const [acrossX = 0, acrossY = 0] = barOf(svg, 'bar-across')
  const [upX = 0, upY = 0] = barOf(svg, 'bar-up')
  const green = ([r, g, b]: Rgb) => g > r + 60 && g > b + 60
  const at = (mm: number) => Math.round(mm * PER_MILLIMETRE)
  const ends = hits(picture.width, (x) => picture.pixel(x, at(acrossY - 1.5)), green).filter(
    (x) => x > acrossX - 1 && x < acrossX + 100.5,
  )
  const steps = hits(picture.height, (y) => picture.pixel(at(upX + 1.5), y), green).filter(
    (y) => y < upY + 1 && y > upY - 100.5,
  )
  for (const [first = 0, last = 0, ...more] of [ends, steps]) {
    expect(more).toEqual([])
    expect(Math.abs(last - first - 100)).toBeLessThan(0.15)
  }
})

test('pages with hostile words and the sheet of all parts are drawn without a complaint', () => {
  expect(render(writeSvg(hostile, options), 4).width).toBeGreaterThan(0)
  expect(render(writeSvgSheet(allParts, options), 2).width).toBeGreaterThan(0)
})

test('what is dashed in the table is drawn with gaps, what is continuous without', () => {
  const styles = new Map(LAYER_TABLE.map((style) => [style.kind, style]))
  const svg = writeSvg(lid, options)
  const picture = render(svg)
  const legendAt = [...svg.matchAll(/<path d="M ([\d.]+) ([\d.]+) L ([\d.]+) [\d.]+" fill="none"/g)]
  const runs = legendAt.map(([, x1, y, x2]) => {
    const [from, to, row] = [x1, x2, y].map((value) => Math.round(Number(value) * PER_MILLIMETRE))
    const pixels = Array.from({ length: (to ?? 0) - (from ?? 0) - 4 }, (_, index) =>
      picture.pixel((from ?? 0) + 2 + index, row ?? 0),
    )
    return pixels.some(([r, g, b]) => r + g + b > 740)
  })
  // Swatches 18 mm long come in the order of the legend; crosses and frames are of other lengths.
  const swatches = runs.filter(
    (_, index) => Math.abs(Number(legendAt[index]?.[3]) - Number(legendAt[index]?.[1]) - 18) < 0.01,
  )
  const kinds = ['datum', 'mark', 'recess', 'recess', 'drill', 'drill', 'cut-inside', 'cut-outside'] as const
  expect(swatches).toEqual(kinds.map((kind) => styles.get(kind)?.lineType !== 'CONTINUOUS'))
})
