/** A PDF as poppler sees it: its boxes and flags, its words, its fonts, and pages as pictures. */
import { spawnSync } from 'node:child_process'

function poppler(pdf: Uint8Array, command: string, ...words: string[]): Buffer {
  const { status, stdout, stderr } = spawnSync(command, words, { input: pdf, maxBuffer: 1 << 28 })
  if (status !== 0 || stderr.length > 0) throw new Error(`${command} complains: ${stderr.toString()}`)
  return stdout
}

/** The sides of every page's box, mm, by the name of the box: `MediaBox`, `CropBox` … */
export function boxesOf(pdf: Uint8Array, name: string): number[][] {
  const text = poppler(pdf, 'pdfinfo', '-f', '1', '-l', '999', '-box', '-').toString()
  return [...text.matchAll(new RegExp(`Page +\\d+ ${name}: +(.*)`, 'g'))].map(([, numbers = '']) =>
    numbers
      .trim()
      .split(/ +/)
      .map((value) => (Number(value) * 25.4) / 72),
  )
}

/** The words of a page, in the order in which they stand in the file. */
export function wordsOf(pdf: Uint8Array, page: number): string {
  return poppler(pdf, 'pdftotext', '-f', String(page), '-l', String(page), '-raw', '-', '-').toString()
}

/** The table of fonts, one row each. */
export function fontsOf(pdf: Uint8Array): string[] {
  return poppler(pdf, 'pdffonts', '-').toString().trimEnd().split('\n').slice(2)
}

/** A page as poppler draws it: one byte a pixel, 0 black, 255 white, rows from the top. */
export interface GreyPicture {
  readonly width: number
  readonly height: number
  grey(x: number, y: number): number
}

/** A page as a grey picture. The format is netpbm's raw graymap, which needs no unpacking. */
export function pageOf(pdf: Uint8Array, page: number, dotsPerInch: number): GreyPicture {
  const number = String(page)
  const file = poppler(pdf, 'pdftoppm', '-r', String(dotsPerInch), '-gray', '-f', number, '-l', number, '-')
  const head = /^P5\s+(\d+)\s+(\d+)\s+255\s/.exec(file.toString('latin1', 0, 60))
  if (head === null) throw new Error('This is not a grey picture of 8 bits.')
  const [width, height, start] = [Number(head[1]), Number(head[2]), head[0].length]
  return { width, height, grey: (x, y) => file[start + y * width + x] ?? 255 }
}

export interface Run {
  /** First pixel and the one behind the last. */
  readonly from: number
  readonly to: number
}

/** The runs of dark pixels along a row or a column between two pixels. */
export function darkRuns(
  picture: GreyPicture,
  way: 'row' | 'column',
  at: number,
  from: number,
  to: number,
  threshold = 150,
): Run[] {
  const runs: Run[] = []
  let start = -1
  for (let index = from; index <= to; index++) {
    const grey = way === 'row' ? picture.grey(index, at) : picture.grey(at, index)
    const dark = index < to && grey < threshold
    if (dark && start < 0) start = index
    if (!dark && start >= 0) {
      runs.push({ from: start, to: index })
      start = -1
    }
  }
  return runs
}
