import { expect, test } from 'vitest'
import { type Strewing, strewn } from '../../../geometry/kinds/strewing.ts'
import { circle } from '../../../geometry/plane/index.ts'

const field = () => circle({ x: 0, y: 0 }, 40)
const PATTERNS: readonly Strewing['pattern'][] = ['rings', 'spiral', 'rows', 'staggered rows']

test.each(PATTERNS)('the wood left in %s is the least of every pair of holes', (pattern) => {
  for (const pitch of [3, 4.7, 9]) {
    const it = { pattern, hole: 2.5, pitch, inner: 12, flipped: false }
    const { centres, web } = strewn(it, `circle 80 ${pitch}`, field)
    let least = Number.POSITIVE_INFINITY
    centres.forEach((a, index) => {
      for (const b of centres.slice(index + 1)) least = Math.min(least, Math.hypot(a.x - b.x, a.y - b.y))
    })
    expect(centres.length).toBeGreaterThan(20)
    const found = web()
    expect(found?.wood).toBeCloseTo(least - 2.5, 9)
    if (found && found.wood > 0)
      expect(Math.hypot(found.from.x - found.to.x, found.from.y - found.to.y)).toBeCloseTo(found.wood, 9)
  }
})

test('one hole alone leaves no wood between holes', () => {
  const it = { pattern: 'rings', hole: 2, pitch: 200, inner: 0, flipped: false } as const
  expect(strewn(it, 'circle 80 alone', field).web()).toBeNull()
})
