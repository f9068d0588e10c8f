import { expect, test } from 'vitest'
import { notes } from '../../../geometry/index.ts'

interface Box {
  readonly length: number
}

test('what is noted about a thing is there again, and nothing is there before', () => {
  const widths = notes<Box, number>()
  const box: Box = { length: 200 }
  expect(widths.get(box)).toBeUndefined()
  widths.set(box, 90)
  expect(widths.get(box)).toBe(90)
  expect(widths.get({ length: 200 })).toBeUndefined()
})

test('a later note takes the place of the one before', () => {
  const widths = notes<Box, number>()
  const box: Box = { length: 200 }
  widths.set(box, 90)
  widths.set(box, 95)
  expect(widths.get(box)).toBe(95)
})

test('notes of two kinds about one thing do not meet', () => {
  const [widths, names] = [notes<Box, number>(), notes<Box, string>()]
  const box: Box = { length: 200 }
  widths.set(box, 90)
  names.set(box, 'crate')
  expect([widths.get(box), names.get(box)]).toEqual([90, 'crate'])
})

test('no reader of the thing sees them: not its keys, not JSON, not a copy, not a comparison', () => {
  const widths = notes<Box, number>()
  const box: Box = { length: 200 }
  widths.set(box, 90)
  expect(Reflect.ownKeys(box)).toEqual(['length'])
  expect(JSON.stringify(box)).toBe('{"length":200}')
  expect(box).toStrictEqual({ length: 200 })
  for (const copy of [{ ...box }, structuredClone(box)]) expect(widths.get(copy)).toBeUndefined()
})

test('a thing that may not be changed can be noted about', () => {
  const widths = notes<Box, number>()
  const box: Box = Object.freeze({ length: 200 })
  widths.set(box, 90)
  expect(widths.get(box)).toBe(90)
})
