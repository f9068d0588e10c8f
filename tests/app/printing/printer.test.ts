import { expect, test } from 'vitest'
import { setupFrom } from '../../../app/printing/printer.ts'
import { STANDARD_SETUP } from '../../../exporters/index.ts'

test('what was kept comes back', () => {
  const kept = { paper: 'letter', way: 'upright', margin: 6, overlap: 12, correction: { x: 1.004, y: 0.998 } }
  expect(setupFrom(JSON.stringify(kept))).toEqual(kept)
})

test.each([
  [null],
  ['no JSON'],
  ['[]'],
  ['null'],
  ['{"paper":"foolscap","way":3,"margin":-4,"overlap":"wide","correction":{"x":3,"y":1}}'],
  ['{"correction":{"x":null}}'],
])('%s: what makes no sense is as usual', (text) => {
  expect(setupFrom(text)).toEqual({ ...STANDARD_SETUP, paper: null })
})
