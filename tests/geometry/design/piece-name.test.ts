import { expect, test } from 'vitest'
import { namelessPiece } from '../../../geometry/index.ts'

test.each([
  ['corner block', 'block-2', 'corner block 2'],
  ['artwork', 'artwork-1', 'artwork 1'],
  ['artwork', 'artwork', 'artwork'],
  ['artwork', 'burnt-mark', 'artwork burnt mark'],
  ['corner block', 'blocked-off', 'corner block blocked off'],
])('a %s with the id %s is called %s', (sort, id, name) => {
  expect(namelessPiece(sort, id)).toBe(name)
})
