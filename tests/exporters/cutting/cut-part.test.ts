import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { begun, lengthOf, stretchOf } from '../../../exporters/cutting/along.ts'
import { type CutPart, cutPart, isCutPart } from '../../../exporters/cutting/cut-part.ts'
import { tabsOf } from '../../../exporters/cutting/tabs.ts'
import { testDesign, testPiece } from '../../../exporters/cutting/test-piece.ts'
import { writeDxf, writeSvg, writeSvgSheet } from '../../../exporters/index.ts'
import {
  area,
  bounds,
  type Chain,
  type Contour,
  circle,
  type Design,
  distanceToPoint,
  length,
  type Operation,
  type Part,
  rectangle,
  roundedRectangle,
} from '../../../geometry/index.ts'
import { sampled, stars } from '../../geometry/plane/shapes.ts'
import { designOf } from '../../support/designs.ts'
import { readWithDxf } from '../../support/readDxf.ts'

const laser = (fields = {}): Design => designOf({ cutting: { process: 'laser', ...fields } })
const router = (fields = {}): Design => designOf({ cutting: { process: 'router', ...fields } })

function plate(...operations: Operation[]): Part {
  return {
    id: 'lid',
    title: 'Lid',
    seen: 'from outside',
    mirrored: false,
    headEnd: 'left',
    hand: 'right',
    thickness: 4,
    outline: rectangle(0, 0, 100, 50),
    operations,
  }
}
const cut = (contour: Contour, of = 'Opening'): Operation => ({ kind: 'cut', side: 'inside', contour, of })

function followed(part: Part, design: Design): CutPart {
  const way = cutPart(part, design)
  if (!way.ok) throw new Error(way.sentence)
  return way.part
}
const inside = (part: Part) => part.operations.flatMap((one) => (one.kind === 'cut' ? [one.contour] : []))

/** Counter-clockwise is positive, whichever way `area` is asked. */
const way = (contour: Contour) => Math.sign(area(contour))

describe('a part as its tool follows it', () => {
  test('outlines run clockwise and openings counter-clockwise, from the middle of the longest straight side', () => {
    const part = followed(plate(cut(rectangle(20, 10, 60, 30))), router({ relief: 'none' }))
    expect([way(part.outline), ...inside(part).map(way)]).toEqual([-1, 1])
    const [opening] = inside(part) as [Chain]
    expect(opening.vertices[0]).toMatchObject({ x: expect.closeTo(40, 9) })
    expect((part.outline as Chain).vertices[0]).toMatchObject({ x: expect.closeTo(50, 9) })
  })

  test('marks, datums, words and drilled holes of a router stay to the last digit', () => {
    const kept: Operation[] = [
      { kind: 'mark', contour: rectangle(1, 1, 9, 9), of: 'Mark' },
      { kind: 'datum', line: { ...rectangle(1, 1, 9, 9), closed: true }, of: 'Line' },
      { kind: 'note', at: { x: 1, y: 2 }, height: 3, text: 'Words', turn: 0.5, of: 'Note' },
      { kind: 'drill', centre: { x: 30, y: 20 }, diameter: 6, depth: 'through', of: 'Post' },
      { kind: 'slot', from: { x: 50, y: 0 }, to: { x: 50, y: 50 }, width: 0.6, depth: 2, of: 'Fret' },
    ]
    expect(followed(plate(...kept), router()).operations).toEqual(kept)
  })

  test('each material has its kerf', () => {
    const design = laser({ kerfs: 'for each material', kerfLid: 0.4, kerfWalls: 0.1, kerf: 0.3 })
    const width = (id: string) => {
      const { minX, maxX } = bounds(followed({ ...plate(), id }, design).outline)
      return maxX - minX
    }
    expect(['lid', 'bass-wall', 'tail-strip'].map(width)).toEqual([
      expect.closeTo(100.4, 9),
      expect.closeTo(100.1, 9),
      expect.closeTo(100.3, 9),
    ])
  })

  test('a slot is cut to its width where the machine cuts slots: two flanks, out over the edge', () => {
    const slot: Operation = {
      kind: 'slot',
      from: { x: 50, y: 0 },
      to: { x: 50, y: 50 },
      width: 0.6,
      depth: 2,
      of: 'Fret',
    }
    const part = followed(plate(slot), laser({ slots: 'cut by the machine' }))
    const [recess] = part.operations.flatMap((one) => (one.kind === 'recess' ? [one] : []))
    expect(recess?.depth).toBe(2)
    const box = bounds(recess?.contour as Contour)
    expect(box.maxX - box.minX).toBeCloseTo(0.4, 9)
    expect([box.minY <= 0, box.maxY >= 50]).toEqual([true, true])
  })

  test('a kerf wider than a hole leaves a mark and a sentence; an outline that parts is no drawing', () => {
    const hole = cutPart(plate(cut(circle({ x: 50, y: 25 }, 0.1), 'Pin')), laser({ kerf: 0.3 }))
    expect(hole).toMatchObject({
      ok: true,
      byHand: [expect.stringMatching(/^Lid: Pin is too narrow .* 0\.3 mm/)],
    })
    expect(hole.ok && hole.part.operations[0]).toMatchObject({ kind: 'mark', of: 'Pin, by hand' })
    const split = cutPart(plate(cut(rectangle(40, -1, 60, 51))), laser())
    expect(split).toEqual({ ok: false, sentence: expect.stringContaining('cannot follow its outline') })
  })

  test('by hand there is nothing to follow', () => {
    expect(() => cutPart(plate(), designOf({}))).toThrow('by hand')
    expect(isCutPart(plate())).toBe(false)
  })
})

describe('walking along a contour', () => {
  test('begins elsewhere and runs the other way without changing a place of it', () => {
    fc.assert(
      fc.property(stars, fc.boolean(), (star, clockwise) => {
        const again = begun(star, clockwise)
        expect(Math.abs(area(again))).toBeCloseTo(area(star), 6)
        expect(Math.sign(area(again))).toBe(clockwise ? -1 : 1)
        for (const point of sampled(again, 4)) expect(distanceToPoint(star, point)).toBeLessThan(1e-6)
      }),
      { numRuns: 200 },
    )
  })

  test('stretches lie on it and are as long as asked for, over the first vertex too', () => {
    const unit = fc.integer({ min: 0, max: 1000 }).map((share) => share / 1000)
    fc.assert(
      fc.property(stars, unit, fc.integer({ min: 1, max: 900 }), (star, start, share) => {
        const around = length(star)
        expect(lengthOf(star)).toBeCloseTo(around, 6)
        const stretch = stretchOf(star, start * around, (start + share / 1000) * around)
        expect(length(stretch)).toBeCloseTo((share / 1000) * around, 5)
        for (const point of sampled(stretch, 3)) expect(distanceToPoint(star, point)).toBeLessThan(1e-6)
      }),
      { numRuns: 300 },
    )
  })
})

describe('tabs', () => {
  test('and what lies between them make the whole path, and lie clear of corners', () => {
    const path = roundedRectangle({ x: 0, y: 0 }, 120, 60, 4)
    const tabs = tabsOf(path, 5, 6)
    if (tabs === null) throw new Error('there is room')
    expect(tabs.tabs.map((tab) => length(tab))).toEqual(Array(5).fill(expect.closeTo(6, 6)))
    const all = [...tabs.tabs, ...tabs.between].reduce((sum, one) => sum + length(one), 0)
    expect(all).toBeCloseTo(length(path), 5)
    for (const { vertices } of tabs.tabs) expect(vertices).toHaveLength(2)
    expect(tabsOf(circle({ x: 0, y: 0 }, 50), 4, 5)?.tabs).toHaveLength(4)
  })

  test('that take more than half of an outline are refused in a sentence', () => {
    const way = cutPart({ ...plate(), outline: rectangle(0, 0, 10, 10) }, laser({ tabs: 12, tabWidth: 4 }))
    expect(way).toEqual({ ok: false, sentence: expect.stringContaining('more than half of its outline') })
  })

  test('a laser leaves gaps as wide as the tab and the kerf; a router lifts along lines of their height', () => {
    const gaps = readWithDxf(writeDxf(followed(plate(), laser({ tabs: 3, tabWidth: 4 })), { title: 'T' }))
    expect(gaps.contours.get('TABBED-OUTSIDE')).toHaveLength(3)
    expect(gaps.contours.has('CUT-OUTSIDE')).toBe(false)
    const lifts = readWithDxf(
      writeDxf(followed(plate(), router({ tabs: 3, tabHeight: 1.5 })), { title: 'T' }),
    )
    expect(lifts.contours.get('TAB-1.5')).toHaveLength(3)
    expect(lifts.contours.get('CUT-OUTSIDE')).toHaveLength(1)
  })
})

describe('the files', () => {
  const part = followed(plate(cut(rectangle(20, 10, 60, 30))), router({ relief: 'none' }))

  test('tell the size as it comes out, the tool, the start and the direction', () => {
    for (const text of [writeSvg(part, { title: 'T' }), writeDxf(part, { title: 'T' })]) {
      expect(text).toMatch(/100\.0 (×|x) 50\.0 mm/)
      expect(text).toMatch(/router, cutter 3\.175 mm/)
      expect(text).toMatch(/outlines clockwise, each from the middle of its longest/)
    }
  })

  test('run on paper as on the wood: an opening counter-clockwise to the eye', () => {
    const svg = writeSvg(part, { title: 'T' })
    const turns = [...svg.matchAll(/<path d="M ([^"]*) Z"/g)]
      .map(([, d]) => String(d).replace(/[A-Z]/g, '').trim().split(/\s+/).map(Number))
      .filter((numbers) => numbers.length >= 8 && numbers.length <= 12)
      .map((numbers) => {
        let sum = 0
        for (let i = 0; i < numbers.length; i += 2) {
          const [x1, y1] = [numbers[i] as number, numbers[i + 1] as number]
          const [x2, y2] = [
            numbers[(i + 2) % numbers.length] as number,
            numbers[(i + 3) % numbers.length] as number,
          ]
          // y points down: what is negative here is counter-clockwise to the eye.
          sum += x1 * y2 - x2 * y1
        }
        return Math.sign(sum)
      })
    expect(turns).toContain(-1)
  })

  test('each purpose has its own layers and inks; single lines leave no letters, and the words as titles', () => {
    const noted = plate({
      kind: 'note',
      at: { x: 5, y: 5 },
      height: 3,
      text: 'Up <here>',
      turn: 0,
      of: 'Note',
    })
    const laserSvg = writeSvg(noted, { title: 'T', purpose: 'laser' })
    expect(laserSvg).not.toMatch(/<text|legend|check-bars|Up/)
    expect(laserSvg).toContain('stroke-width="0.01"')
    const pens = writeSvg(noted, { title: 'T', purpose: 'plotter' })
    expect(pens).not.toContain('<text')
    expect(pens).toContain('<title>Up &lt;here&gt;</title>')
    expect(pens).not.toMatch(/stroke-dasharray="\d/)
    expect(writeSvg(noted, { title: 'T', purpose: 'plotter', words: 'text' })).toContain(
      '>Up &lt;here&gt;</text>',
    )
    expect(() => writeSvgSheet([noted], { title: 'T', purpose: 'frame' as 'print' })).toThrow('"frame"')
    for (const text of [laserSvg, pens]) {
      const [, wide, high, box] = /width="([\d.]+)mm" height="([\d.]+)mm" viewBox="([^"]+)"/.exec(text) ?? []
      expect(box).toBe(`0 0 ${wide} ${high}`)
    }
  })
})

describe('the test piece', () => {
  test('has slots of falling width: the tool that really cuts w + t - k wide makes one of them tight', () => {
    const piece = testPiece(4, 'laser')
    const widths = inside(piece).map((slot) => bounds(slot).maxX - bounds(slot).minX)
    // Stock of 4 mm: slots drawn 4.00, 3.95 … 3.50, for kerfs of 0.00, 0.05 … 0.50.
    expect(widths).toEqual(Array.from({ length: 11 }, (_, index) => expect.closeTo(4 - 0.05 * index, 9)))
    const cutAsDrawn = followed(piece, testDesign(laser({ kerf: 0.3 })))
    expect(inside(cutAsDrawn).map((slot) => bounds(slot).maxX - bounds(slot).minX)).toEqual(
      widths.map((one) => expect.closeTo(one, 9)),
    )
    expect(piece.operations.some(({ kind, of }) => kind === 'mark' && of === '0.25')).toBe(true)
  })

  test('for a router the slot for the stated cutter is as wide as the stock', () => {
    const piece = testPiece(6, 'router', 3)
    const slots = piece.operations.flatMap((one) => (one.kind === 'cut' ? [one] : []))
    const stated = slots.find(({ of }) => of === 'Slot for 3.0')
    expect(bounds(stated?.contour as Contour).maxX - bounds(stated?.contour as Contour).minX).toBeCloseTo(
      6,
      9,
    )
    expect(
      followed(piece, testDesign(router({ cutter: 3 }))).operations.filter(({ kind }) => kind === 'cut'),
    ).toHaveLength(11)
    expect(() => testPiece(2, 'router', 6)).toThrow('too thin')
  })
})
