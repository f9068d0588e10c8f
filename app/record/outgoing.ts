/** The sheet and the label leave the page: printed, or as files. */
import {
  buildSheet,
  paperFor,
  printLabel,
  printSheet,
  writeLabelHtml,
  writeSheetHtml,
} from '../../exporters/index.ts'
import type { Design } from '../../geometry/index.ts'
import { download } from '../actions/files.ts'
import { slug } from '../state/index.ts'

/** Prints a page of its own, whatever else is on the screen. */
function printPage(html: string, title: string): void {
  const frame = document.createElement('iframe')
  frame.title = title
  frame.className = 'printed'
  frame.srcdoc = html
  frame.addEventListener('load', () => {
    const shown = frame.contentWindow
    if (!shown) return frame.remove()
    shown.addEventListener('afterprint', () => frame.remove())
    shown.focus()
    shown.print()
  })
  document.body.append(frame)
}

export const printSheetPage = (design: Design): void =>
  printPage(writeSheetHtml(buildSheet(design)), 'Build sheet, to be printed')

export const printLabelSheet = (design: Design): void =>
  printPage(writeLabelHtml(design), 'Label, to be printed')

/** The build sheet as one page of HTML. */
export function saveSheet(design: Design): string {
  const name = `${slug(design.title)}-build-sheet.html`
  download(name, writeSheetHtml(buildSheet(design)), 'text/html')
  return `Saved ${name}.`
}

/** The build sheet as PDF, on the paper that goes with the builder's unit. */
export async function saveSheetPdf(design: Design): Promise<string> {
  const paper = paperFor(design.units.display)
  const { bytes, cautions } = await printSheet(buildSheet(design), paper)
  const name = `${slug(design.title)}-build-sheet-${paper}.pdf`
  download(name, bytes, 'application/pdf')
  return [`Saved ${name}.`, ...cautions].join(' ')
}

/** The label as PDF, on a page of just its size. */
export async function saveLabel(design: Design): Promise<string> {
  const { bytes, cautions } = await printLabel(design)
  const name = `${slug(design.title)}-label.pdf`
  download(name, bytes, 'application/pdf')
  return [`Saved ${name}.`, ...cautions].join(' ')
}
