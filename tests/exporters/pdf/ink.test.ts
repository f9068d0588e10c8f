import { expect, test } from 'vitest'
import { openTypeface } from '../../../exporters/pdf/font/typeface.ts'
import { Ink } from '../../../exporters/pdf/ink.ts'
import { circle } from '../../../geometry/index.ts'

const inkWith = async () => new Ink(await openTypeface(), new Set())
const pen = { colour: '#000000', width: 0.2 }

test('no number that is not finite gets into a sheet', async () => {
  const ink = await inkWith()
  for (const bad of [Number.NaN, Number.POSITIVE_INFINITY]) {
    expect(() =>
      ink.lines(
        [
          [
            { x: bad, y: 0 },
            { x: 1, y: 1 },
          ],
        ],
        pen,
      ),
    ).toThrow(String(bad))
    expect(() => ink.contours([circle({ x: 0, y: bad }, 2)], pen)).toThrow(String(bad))
    expect(() => ink.words({ x: bad, y: 0 }, 3, 'Lid')).toThrow(String(bad))
    expect(() => ink.within({ scale: { x: bad, y: 1 } }, () => {})).toThrow(String(bad))
  }
})

test('no line is thinner than it can be drawn, no exponent is written', async () => {
  const ink = await inkWith()
  expect(() =>
    ink.lines(
      [
        [
          { x: 0, y: 0 },
          { x: 1, y: 1 },
        ],
      ],
      { ...pen, width: 0 },
    ),
  ).toThrow('0 mm wide')
  ink.lines(
    [
      [
        { x: 1e-7, y: -1e-9 },
        { x: 1, y: 1 },
      ],
    ],
    pen,
  )
  expect(ink.content).toContain('0 0 m 1 1 l')
  expect(ink.content).not.toMatch(/\de/i)
})

test.each([
  [50, 8],
  [150, 9],
  [2000, 13],
])('a circle of %d mm is %d curves that lie on it to a thousandth of a millimetre', async (radius, count) => {
  const ink = await inkWith()
  ink.contours([circle({ x: 0, y: 0 }, radius)], pen)
  const start = /^(\S+) (\S+) m$/m.exec(ink.content)
  let from = [Number(start?.[1]), Number(start?.[2])]
  const curves = [...ink.content.matchAll(/^(\S+) (\S+) (\S+) (\S+) (\S+) (\S+) c$/gm)]
  expect(curves).toHaveLength(count)
  for (const curve of curves) {
    const [x1 = 0, y1 = 0, x2 = 0, y2 = 0, x3 = 0, y3 = 0] = curve.slice(1).map(Number)
    const [x0 = 0, y0 = 0] = from
    for (const t of [0.1, 0.2, 0.35, 0.5, 0.65, 0.8, 0.9]) {
      // The polynomial of a cubic curve after its four points (Bernstein).
      const at = (a: number, b: number, c: number, d: number) =>
        (1 - t) ** 3 * a + 3 * t * (1 - t) ** 2 * b + 3 * t * t * (1 - t) * c + t ** 3 * d
      expect(Math.abs(Math.hypot(at(x0, x1, x2, x3), at(y0, y1, y2, y3)) - radius)).toBeLessThan(0.001)
    }
    from = [x3, y3]
  }
})
