/** Sheets and the drawings they share, bound to one PDF document. */
import type { Bounds } from '../../geometry/index.ts'
import { numberText } from '../numbers.ts'
import { array, dictionary, PdfFile, textString } from './file.ts'
import { embedTypeface } from './font/embed.ts'
import type { SetLine, Typeface } from './font/typeface.ts'
/** Points of a PDF in a millimetre (ISO 32000-1, 8.3.2.3: 72 to the inch). */
export const POINTS = 72 / 25.4

/** A drawing that several sheets show, by a name of its own. */
export interface Form {
  readonly name: string
  readonly content: string
  /** What it may fill, mm. */
  readonly box: Bounds
}

/** The sides of a page, mm of the file. */
export interface PaperSize {
  readonly width: number
  readonly height: number
}

/** One sheet: its paper, and what is drawn on it. */
export interface BoundPage extends PaperSize {
  readonly content: string
}

const side = (value: number) => numberText(value, 'The side of a paper', 4)

/**
 * Binds sheets to a document: real paper sizes, printing without scaling asked for, letters embedded, no date.
 * Streams are not compressed: that would take a third of the time for a tenth of a megabyte, and so the same bytes
 * do not hang on the version of a compressor.
 *
 * @param used lines written
 * @param title of the document, as its reader shows it
 * @returns the file; the same bytes for the same input
 */
export function bind(
  pages: readonly BoundPage[],
  forms: readonly Form[],
  typeface: Typeface,
  used: ReadonlySet<SetLine>,
  title: string,
): Uint8Array {
  const file = new PdfFile()
  const tree = file.reserve()
  const font = embedTypeface(file, typeface, used)
  const fonts = dictionary({ F0: font })
  const formResources = file.add(dictionary({ Font: fonts }))
  const drawings = Object.fromEntries(
    forms.map(({ name, content, box }) => {
      const corners = array([box.minX, box.minY, box.maxX, box.maxY].map(side))
      const entries = { Type: '/XObject', Subtype: '/Form', BBox: corners, Resources: formResources }
      return [name, file.stream(content, entries)]
    }),
  )
  const resources = file.add(dictionary({ Font: fonts, XObject: dictionary(drawings) }))
  const kids = pages.map(({ width, height, content }) =>
    file.add(
      dictionary({
        Type: '/Page',
        Parent: tree,
        MediaBox: array([0, 0, side(width * POINTS), side(height * POINTS)]),
        Resources: resources,
        Contents: file.stream(content),
      }),
    ),
  )
  file.fill(tree, dictionary({ Type: '/Pages', Count: String(kids.length), Kids: array(kids) }))
  const preferences = dictionary({
    PrintScaling: '/None',
    PickTrayByPDFSize: 'true',
    DisplayDocTitle: 'true',
  })
  const root = file.add(
    dictionary({ Type: '/Catalog', Pages: tree, ViewerPreferences: preferences, Lang: '(en)' }),
  )
  const info = file.add(dictionary({ Title: textString(title), Producer: '(Lidwright)' }))
  return file.bytes(root, info)
}
