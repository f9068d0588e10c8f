/** The sheet leaves the page: printed, or as files. */
import { buildSheet, tableFiles, writeSheetHtml } from '../../exporters/index.ts'
import type { Design } from '../../geometry/index.ts'
import { download } from '../actions/files.ts'
import { slug } from '../state/index.ts'

/** Prints the build sheet alone, whatever else is on the page. */
export function printSheet(design: Design): void {
  const frame = document.createElement('iframe')
  frame.title = 'Build sheet, to be printed'
  frame.className = 'printed'
  frame.srcdoc = writeSheetHtml(buildSheet(design))
  frame.addEventListener('load', () => {
    const shown = frame.contentWindow
    if (!shown) return frame.remove()
    shown.addEventListener('afterprint', () => frame.remove())
    shown.focus()
    shown.print()
  })
  document.body.append(frame)
}

/** The build sheet as one page of HTML. */
export function saveSheet(design: Design): string {
  const name = `${slug(design.title)}-build-sheet.html`
  download(name, writeSheetHtml(buildSheet(design)), 'text/html')
  return name
}

export const tablesFor = (design: Design) => tableFiles(buildSheet(design))
