/** The sheet and the label leave the page: printed, or as files. */
import { buildSheet, writeLabelHtml, writeSheetHtml } from '../../exporters/index.ts'
import type { Design } from '../../geometry/index.ts'
import { download } from '../actions/files.ts'
import { slug } from '../state/index.ts'
import { startMaking } from './bundling.ts'

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

/** Printed beside the page, and saved. */
async function savePdf(make: 'sheet' | 'label', design: Design): Promise<string> {
  const { name, bytes, cautions } = await startMaking({ make, design, options: {} }).made
  download(name, bytes, 'application/pdf')
  return [`Saved ${name}.`, ...cautions].join(' ')
}

/** The build sheet as PDF, on the paper that goes with the builder's unit. */
export const saveSheetPdf = (design: Design): Promise<string> => savePdf('sheet', design)

/** The label as PDF, on a page of just its size. */
export const saveLabel = (design: Design): Promise<string> => savePdf('label', design)
