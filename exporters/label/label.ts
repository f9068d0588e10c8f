/** The label for the inside of the box: what to string it with, and how to open its design again. */
import { encode } from 'uqr'
import { type Design, formatLength, notes, rectangle } from '../../geometry/index.ts'
import { pictureSvg } from '../sheet/html/picture-svg.ts'
import { type Picture, type Shape, stroke, words } from '../sheet/pictures/picture.ts'
import { sourceOf } from '../sheet/source.ts'
import { element, textNode } from '../svg/element.ts'
import { cellText } from '../tables/cells.ts'
import { plainLine } from '../words/plain.ts'
import { fitLine } from '../words/width.ts'
import { carry } from './carried.ts'
import { checksumOf } from './checksum.ts'
import { LABEL_SIZE } from './size.ts'

const { width: WIDTH, height: HEIGHT } = LABEL_SIZE
const MARGIN = 3.5

/** Room for the code, its white edge of four squares on each side counted in (ISO/IEC 18004). */
const CODE = 52
const WHITE = 4

/** A square smaller than this is read badly from a home print: four dots at 300 to the inch. Common practice, no source. */
const LEAST_SQUARE = 0.34

/** Height of the words at the foot. */
const BELOW = 8.4

/**
 * Any of the eight masks makes a sound code. Choosing the best looks at all of them, and compressed bytes are as good as
 * chance to begin with, so none is better by much.
 */
const MASK = 2

const OPTIONS = { ecc: 'L', border: 0, maskPattern: MASK } as const

/** A reader that many pages use looks for one pattern of this size in the wrong place: the next larger is read by all. */
const SKIPPED = 23

/** Rows of strings beside each other: more go into a second column. */
const ROWS = 6

/** The code for a design, or `null` where its squares would be too small to be read. */
function codeOf(
  design: Design,
): { readonly rows: readonly (readonly boolean[])[]; readonly side: number } | null {
  const text = carry(design)
  // A code holds 4,296 signs at most (ISO/IEC 18004, version 40, level L).
  if (text.length > 4296) return null
  const plainly = encode(text, OPTIONS)
  const { data, size } =
    plainly.version === SKIPPED ? encode(text, { ...OPTIONS, minVersion: SKIPPED + 1 }) : plainly
  const side = CODE / (size + 2 * WHITE)
  return side < LEAST_SQUARE ? null : { rows: data, side }
}

/**
 * The label, to be printed at true size: 106 × 60 mm. Where the whole design fits, a QR code carries it; else its checksum
 * names the file. The same design gives the same label. Never throws for a valid design.
 */
export function labelPicture(design: Design): Picture {
  const before = known.get(design)
  if (before) return before
  const picture = drawn(design)
  known.set(design, picture)
  return picture
}

const known = notes<Design, Picture>()

function drawn(design: Design): Picture {
  const { report } = sourceOf(design)
  const { units, record } = design
  const code = codeOf(design)
  const room = WIDTH - 2 * MARGIN - (code ? CODE : 0)
  const shapes: Shape[] = [stroke(rectangle(0.1, 0.1, WIDTH - 0.1, HEIGHT - 0.1), 'outline')]
  let y = HEIGHT - 2
  const write = (text: string, size: number, bold = false, smallest = 2) => {
    const fitted = fitLine(plainLine(text), size, Math.min(size, smallest), room / (bold ? 1.17 : 1))
    y -= size * 1.28
    shapes.push(words({ x: MARGIN, y: y + size * 0.28 }, fitted.text, { size: fitted.size, bold }))
  }
  write(design.title || 'Untitled box', 4.6, true, 2.8)
  const made = [record.maker, record.made].map((one) => plainLine(one)).filter((one) => one !== '')
  if (made.length > 0) write(made.join(', '), 2.9)
  const say = (mm: number) => formatLength(mm, units, { unit: true })
  y -= 1
  write(`Scale ${say(report.scale.length)}`, 3)
  write(`Saddle ${say(report.saddle.fromNut)} from the nut`, 3)
  write(design.hand === 'not stated' ? '' : `${design.hand}-handed`, 3)
  y -= 1
  const unit = units.display === 'mm' ? 'mm' : 'in'
  const strings = [...report.strings].reverse()
  strings.forEach((string, index) => {
    const x = MARGIN + Math.floor(index / ROWS) * (room / 2)
    const base = y - (index % ROWS) * 3.5 - 2.6
    const gauge = cellText(string.gauge, { as: 'gauge' }, units)
    shapes.push(
      words({ x, y: base }, `${string.number}`, { size: 2.9, bold: true }),
      words({ x: x + 4.5, y: base }, string.pitch?.name ?? '–', { size: 2.9 }),
      words({ x: x + 12, y: base }, index === 0 ? `${gauge} ${unit}` : gauge, { size: 2.9 }),
    )
  })
  const below = code
    ? ['The code holds the whole design: read it,', 'then open its text in Lidwright.']
    : ['The design is too large for a code:', 'look for the file with this number.']
  y = MARGIN + BELOW
  for (const line of below) write(line, 2.2, false, 1.9)
  write(`Design ${checksumOf(design)}`, 2.5, true)
  if (code)
    shapes.push({
      kind: 'squares',
      at: {
        x: WIDTH - CODE - 2 + WHITE * code.side,
        y: (HEIGHT + CODE) / 2 - WHITE * code.side,
      },
      side: code.side,
      rows: code.rows,
    })
  return {
    id: 'label',
    title: 'Label for the inside of the box',
    description: `${plainLine(design.title)}: scale, saddle, strings and ${code ? 'a code that holds the whole design' : 'the number of the design'}.`,
    width: WIDTH,
    height: HEIGHT,
    shapes,
    caption: `${WIDTH} × ${HEIGHT} mm. Print at 100 %.`,
  }
}

/** The label as an SVG file of its own, true to size. */
export const writeLabelSvg = (design: Design): string =>
  `<?xml version="1.0" encoding="UTF-8"?>\n${pictureSvg(labelPicture(design)).markup}\n`

/** The label alone on a page to print, true to size in its upper left corner; no script, no request. */
export const writeLabelHtml = (design: Design): string => {
  const picture = labelPicture(design)
  const head = element('head', {}, [
    { markup: '<meta charset="utf-8">' },
    {
      markup:
        '<meta http-equiv="Content-Security-Policy" content="default-src \'none\'; style-src \'unsafe-inline\'">',
    },
    element('title', {}, [textNode(`${design.title}: label`)]),
    {
      markup:
        '<style>@page{margin:12mm}html{background:#fff}body{margin:0;font:9pt sans-serif;color:#4d4d4d}svg{display:block;margin-bottom:4mm}</style>',
    },
  ])
  const body = element('body', {}, [
    pictureSvg(picture),
    element('p', {}, [textNode(`${picture.caption} The frame is ${WIDTH} mm long: measure it.`)]),
  ])
  return `<!doctype html>\n${element('html', { lang: 'en' }, [head, body]).markup}\n`
}
