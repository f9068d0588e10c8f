/** Relations that a measure happens to be, on a lid of 200 by 120 mm whose places can be told by a pencil. */
import { expect, test, vi } from 'vitest'
import { intentAt } from '../../../app/parts/intents.ts'
import { type Layout, solve, thingCalled } from '../../../geometry/index.ts'
import { designOf, type Stated } from '../../support/designs.ts'

vi.mock('../../../geometry/index.ts', async (importActual) => {
  const actual = await importActual<typeof import('../../../geometry/index.ts')>()
  return { ...actual, solve: vi.fn(actual.solve) }
})

const lid = (...things: readonly Stated[]): Layout =>
  solve(designOf({ box: { length: 200, width: 120 }, neck: { width: 40 }, things }))

const hole = (id: string, along: number, across: number) => ({
  kind: 'sound-hole',
  id,
  along,
  across,
  diameter: 4,
})

const told = (layout: Layout, id: string, axis: 'along' | 'across') => {
  const thing = thingCalled(layout.design, id)
  if (!thing) throw new Error(`there is no ${id}`)
  return intentAt(layout, thing, axis, ['things', layout.design.things.indexOf(thing), axis])
}

test('across the centreline from another it is its mirror place, beside it in line', () => {
  const layout = lid(hole('a', 50, 33), hole('b', 50.004, -33))
  expect(told(layout, 'b', 'across')?.place).toEqual({ mirror: 'a' })
  expect(told(layout, 'b', 'across')?.words).toContain('the mirror place of')
  expect(told(layout, 'b', 'along')?.words).toContain('in line with')
})

test('a hundredth off it is neither', () => {
  const layout = lid(hole('a', 50, 33), hole('b', 50.02, -33.02))
  expect(told(layout, 'b', 'across')).toBeNull()
  expect(told(layout, 'b', 'along')).toBeNull()
})

test('between neck and edge comes before any partner', () => {
  // 20 to the side of the neck, 60 to the edge: 40 is half way.
  const layout = lid(hole('a', 50, 40), hole('b', 80, -40))
  expect(told(layout, 'b', 'across')?.place).toEqual({ midway: ['neck bass side', 'bass edge'] })
})

test('among hundreds that are not in line none is tried', () => {
  const many = Array.from({ length: 400 }, (_, index) =>
    hole(`h${index}`, 10.05 + index * 0.4, 25.1 + index * 0.05),
  )
  const layout = lid(...many)
  vi.mocked(solve).mockClear()
  expect(told(layout, 'h200', 'along')).toBeNull()
  expect(told(layout, 'h200', 'across')).toBeNull()
  // Only the eleven lines of the instrument itself.
  expect(vi.mocked(solve).mock.calls.length).toBeLessThanOrEqual(11)
})
