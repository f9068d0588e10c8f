import { expect, test } from 'vitest'
import { unbroken } from '../../../geometry/index.ts'

/** U+00A0, after which no line is broken (Unicode Standard Annex 14, class GL). */
const NB = '\u00a0'

test.each([
  ['24 37/64 in', `24${NB}37/64${NB}in`],
  ['begins 15 53/64', `begins 15${NB}53/64`],
  ['11 1/2 in × 8 1/2 in', `11${NB}1/2${NB}in × 8${NB}1/2${NB}in`],
  ['12.0 mm left, 68 N, 15.2 lb', `12.0${NB}mm left, 68${NB}N, 15.2${NB}lb`],
  ['frets 3 and 5 on the lid', 'frets 3 and 5 on the lid'],
  ['2 inches', '2 inches'],
])('%s stays on one line where it has to', (text, whole) => {
  expect(unbroken(text)).toBe(whole)
})
