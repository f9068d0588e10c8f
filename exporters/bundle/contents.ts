/** What is in the bundle, in plain words, for whoever unpacks it in ten years. */
import type { Design } from '../../geometry/index.ts'
import { checksumOf } from '../label/checksum.ts'
import { plainLine } from '../words/plain.ts'

const ENDINGS: readonly (readonly [RegExp, string])[] = [
  [/\.lidwright\.json$/, 'the design itself: opens again in Lidwright'],
  [/build-sheet\.html$/, 'the build sheet: opens in any browser, prints on A4 and Letter'],
  [/build-sheet.*\.pdf$/, 'the build sheet, to print'],
  [/label\.svg$/, 'the label for the inside of the box, 106 by 60 mm'],
  [/label\.pdf$/, 'the same label, to print at 100 %'],
  [/everything\.json$/, 'all numbers for other programs'],
  [/^tables\//, 'a table of the build sheet'],
  [/^paths-.*\.svg$/, 'path for the machine, the middle of its tool'],
  [/^paths-.*\.dxf$/, 'path for the machine, the middle of its tool'],
  [/^sheets-of-stock\//, 'paths of the parts laid out on a sheet of stock'],
  [/\.svg$/, 'template, true to size in millimetres'],
  [/\.dxf$/, 'template for laser, router and drawing programs'],
  [/\.pdf$/, 'templates to print at 100 % and join'],
]

/** The text of `read-me.txt`; `said` is what else is to be known, a sentence each. */
export function contentsText(design: Design, paths: readonly string[], said: readonly string[] = []): string {
  const wide = Math.max(...paths.map((path) => path.length))
  const lines = paths.map((path) => {
    const what = ENDINGS.find(([ending]) => ending.test(path))?.[1] ?? ''
    return `${path.padEnd(wide)}  ${what}`.trimEnd()
  })
  return `${[
    plainLine(design.title) || 'Untitled box',
    `Design ${checksumOf(design)}`,
    '',
    'Measure the bars on every print before you cut. All loads are estimates.',
    '',
    ...lines,
    ...(said.length > 0 ? ['', ...said] : []),
  ].join('\r\n')}\r\n`
}
