/** Crosses to punch on holes: one for each place that is drilled. */
import { expect, test } from 'vitest'
import type { Layer } from '../../../exporters/drawing/drawing.ts'
import { crossAt, drillCrosses } from '../../../exporters/drawing/drilled.ts'
import { type Contour, circle, line } from '../../../geometry/index.ts'

const layer = (kind: Layer['kind'], ...contours: Contour[]): Layer => ({
  name: kind,
  kind,
  meaning: '',
  contours,
  words: [],
})

test('arms reach as far as they are long, both ways', () => {
  expect(crossAt({ x: 5, y: 2 }, 3)).toEqual([
    [
      { x: 2, y: 2 },
      { x: 8, y: 2 },
    ],
    [
      { x: 5, y: -1 },
      { x: 5, y: 5 },
    ],
  ])
})

test('a pilot inside a wider hole shares its cross, a millimetre longer than the wider one', () => {
  const place = { x: 10, y: 4 }
  const layers = [
    layer('drill', circle(place, 1), circle({ x: 30, y: 4 }, 2)),
    layer('drill', circle({ x: 10.0002, y: 4 }, 3)),
  ]
  const arms = drillCrosses(layers)
  expect(arms).toHaveLength(4)
  // 3 mm of hole and a millimetre beyond it.
  expect(arms[0]?.map(({ x }) => x.toFixed(3))).toEqual(['6.000', '14.000'])
  expect(arms[2]?.map(({ x }) => x)).toEqual([27, 33])
})

test('what is cut or marked has none, nor has a line among the holes', () => {
  const round = circle({ x: 0, y: 0 }, 5)
  expect(drillCrosses([layer('cut-inside', round), layer('datum', round)])).toEqual([])
  expect(drillCrosses([layer('drill', line({ x: 0, y: 0 }, { x: 1, y: 0 }))])).toEqual([])
})
