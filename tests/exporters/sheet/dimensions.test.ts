/** ISO 129-1: no dimension line is crossed by an extension line, arrows are closed, figures stand over their line. */
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { dimensions } from '../../../exporters/sheet/pictures/dimensions.ts'
import type { Shape } from '../../../exporters/sheet/pictures/picture.ts'
import type { Point } from '../../../geometry/index.ts'

const part = { minX: 0, maxX: 120, minY: 0, maxY: 80 }

type Line = readonly [Point, Point]

function straight(shapes: readonly Shape[]): Line[] {
  return shapes.flatMap((one): Line[] => {
    if (one.kind !== 'line' || one.stroke !== 'thin' || one.contour.shape !== 'chain') return []
    const [from, to] = one.contour.vertices
    return from && to ? [[from, to]] : []
  })
}

/** Do an upright and a level line cross, ends touching not counted? */
function cross([a, b]: Line, [c, d]: Line): boolean {
  const level = Math.abs(a.y - b.y) < 1e-9 ? ([a, b] as const) : ([c, d] as const)
  const upright = level[0] === a ? ([c, d] as const) : ([a, b] as const)
  const [left, right] = [Math.min(level[0].x, level[1].x), Math.max(level[0].x, level[1].x)]
  const [low, high] = [Math.min(upright[0].y, upright[1].y), Math.max(upright[0].y, upright[1].y)]
  const { x } = upright[0]
  const { y } = level[0]
  return x > left + 1e-6 && x < right - 1e-6 && y > low + 1e-6 && y < high - 1e-6
}

const isLevel = ([a, b]: Line) => Math.abs(a.y - b.y) < 1e-9

describe('dimensions below a part', () => {
  const places = fc.uniqueArray(fc.integer({ min: 1, max: 120 }), { minLength: 1, maxLength: 12 })

  it('cross no extension line, whatever is dimensioned', () => {
    fc.assert(
      fc.property(places, (xs) => {
        const { shapes } = dimensions(
          part,
          'below',
          0,
          xs.map((at) => ({ at, text: `${at} 31/32` })),
        )
        const lines = straight(shapes)
        const [level, upright] = [lines.filter(isLevel), lines.filter((one) => !isLevel(one))]
        expect(level).toHaveLength(xs.length)
        expect(upright).toHaveLength(xs.length + 1)
        for (const one of level)
          for (const other of upright) {
            // The datum's own line may end at figures that stand behind it.
            if (Math.abs(other[0].x) < 1e-9) continue
            expect(cross(one, other), `${JSON.stringify(one)} ${JSON.stringify(other)}`).toBe(false)
          }
      }),
      { seed: 129, numRuns: 200 },
    )
  })

  it('keep figures clear of each other and of every extension line', () => {
    const { shapes } = dimensions(part, 'below', 0, [
      { at: 2, text: '3/16' },
      { at: 40, text: '2 1/2' },
      { at: 41, text: '2 9/16' },
      { at: 120, text: '10' },
    ])
    const texts = shapes.filter((one) => one.kind === 'text')
    expect(texts.map((one) => one.text)).toEqual(['3/16', '2 1/2', '2 9/16', '10'])
    // The short one stands behind the edge, the others in the middle of their line; each in a row of its own.
    expect(texts.map((one) => Math.sign(one.at.x))).toEqual([-1, 1, 1, 1])
    expect(new Set(texts.map((one) => one.at.y.toFixed(3))).size).toBe(4)
    const level = straight(shapes).filter(isLevel)
    for (const [index, one] of texts.entries())
      expect(one.at.y).toBeGreaterThan(level[index]?.[0].y ?? Number.NaN)
  })

  it('close their arrowheads with tips on the extension lines', () => {
    const { shapes } = dimensions(part, 'below', 0, [{ at: 60, text: '60' }])
    const heads = shapes.filter((one) => one.kind === 'area')
    const tips = heads.flatMap((one) =>
      one.contour.shape === 'chain' && one.contour.closed ? one.contour.vertices.map(({ x }) => x) : [],
    )
    expect(heads).toHaveLength(2)
    expect(Math.min(...tips)).toBeCloseTo(0, 9)
    expect(Math.max(...tips)).toBeCloseTo(60, 9)
  })
})

it('dimensions at the right are read from the right, and start from whichever edge is named', () => {
  const { shapes } = dimensions(part, 'right', 80, [{ at: 10, text: '70' }])
  const [text] = shapes.filter((one) => one.kind === 'text')
  expect(text).toMatchObject({ text: '70', upright: true })
  expect(text?.at.y).toBeCloseTo(45, 9)
  expect(text?.at.x).toBeGreaterThan(part.maxX)
})
