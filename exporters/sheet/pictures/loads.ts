/** What the strings do, as pictures: pull against breaking, bow of the neck, cents over frets. */
import { formatFine, type Layout, limitOf, loadsOf } from '../../../geometry/index.ts'
import { cellText, pullWords } from '../../tables/cells.ts'
import type { Table } from '../model.ts'
import {
  area,
  box,
  PICTURE_WIDTH,
  type Picture,
  type Shape,
  scaleFor,
  segment,
  some,
  stroke,
  through,
  words,
} from './picture.ts'

const WIDE = 150

/** Each string's pull as a bar, whose whole length is the pull that breaks it; `null` until pulls are known. */
export function pullPicture(layout: Layout, table: Table): Picture | null {
  const loads = loadsOf(layout)
  if (loads.missing) return null
  const { units } = layout.design
  const limit = limitOf(layout.design)
  const strings = [...loads.strings]
    .reverse()
    .flatMap((one) => (one.atPitch ? [{ ...one, at: one.atPitch }] : []))
  if (strings.length === 0) return null
  const [label, row, bar, figures] = [22, 7, 3.4, 44]
  const long = WIDE - label - figures
  const tall = strings.length * row + 7
  const x = (share: number) => label + Math.min(Math.max(share, 0), 1) * long
  const shapes: Shape[] = strings.flatMap(({ number, at }, index) => {
    const y = tall - 7 - (index + 0.5) * row
    const whole = box(label, y - bar / 2, label + long, y + bar / 2)
    const part = box(label, y - bar / 2, x(at.shareOfBreaking), y + bar / 2)
    return some(
      whole && stroke(whole, 'thin'),
      part && area(part, 'dark'),
      part && stroke(part, 'thin'),
      words({ x: 0, y: y - 1.1 }, `${number}`, { bold: true }),
      words({ x: 6, y: y - 1.1 }, at.pitch.name),
      words(
        { x: label + long + 3, y: y - 1.1 },
        `${pullWords(at.tension, units)}, ${cellText(at.shareOfBreaking, { as: 'share' }, units)}`,
      ),
    )
  })
  const marks = (
    [
      ['care', limit('stringStrained')],
      ['stop', limit('stringBreaking')],
    ] as const
  ).flatMap(([name, share], index) => [
    segment({ x: x(share), y: 1 }, { x: x(share), y: tall - 5 }, 'hidden'),
    words({ x: x(share) + (index === 0 ? -0.8 : 0.8), y: tall - 4 }, name, {
      size: 2.8,
      anchor: index === 0 ? 'end' : 'start',
    }),
  ])
  return {
    id: 'pull',
    title: 'Pull of each string against what breaks it',
    description:
      'A bar for each string: its whole length is the pull that breaks the string, the dark part the pull at pitch.',
    width: WIDE,
    height: tall,
    shapes: [...shapes, ...marks],
    caption:
      'The whole bar is the pull that breaks the string, the dark part its pull at pitch. Broken lines: where care and stop begin. An estimate.',
    table,
  }
}

/** Highest a bent neck is drawn, mm on paper, and the factors it may be drawn with. */
const HIGHEST = 16
const FACTORS = [100, 50, 20, 10, 5, 2, 1]

/** The neck bent by the pull, exaggerated and saying so; `null` where it has no numbers. */
export function bowPicture(layout: Layout, table: Table): Picture | null {
  const { neck } = loadsOf(layout)
  const bent = neck?.curve() ?? []
  if (!neck || bent.length < 2) return null
  const xs = bent.map((one) => one.x)
  const rises = bent.map((one) => one.rise)
  const [x0, x1] = [Math.min(...xs), Math.max(...xs)]
  const scale = scaleFor(x1 - x0, PICTURE_WIDTH - 14)
  const most = Math.max(...rises.map(Math.abs), 1e-3)
  const factor = FACTORS.find((one) => (most * one) / scale <= HIGHEST) ?? 1
  const k = 1 / scale
  const low = Math.min(0, ...rises) * factor * k
  const high = Math.max(0, ...rises) * factor * k
  const base = 9 - low
  const at = (x: number, rise: number) => ({ x: (x - x0) * k + 7, y: base + rise * factor * k })
  const curve = through(bent.map((one) => at(one.x, one.rise)))
  const wall = layout.box.x0
  const fine = (mm: number) => formatFine(mm, layout.design.units, { unit: true })
  return {
    id: 'bow',
    title: 'How the pull bends the neck',
    description: 'The neck from the nut to the back wall as a line, straight without pull and bent with it.',
    width: (x1 - x0) * k + 14,
    height: base + high + 8,
    shapes: some(
      segment(at(x0, 0), at(x1, 0), 'centre'),
      curve && stroke(curve, 'strong'),
      words({ x: at(x0, 0).x, y: 2 }, 'nut', { anchor: 'middle' }),
      segment({ x: at(x0, 0).x, y: 6 }, { x: at(x0, 0).x, y: base + high + 2 }, 'thin'),
      ...(wall > x0 && wall < x1
        ? [
            words({ x: at(wall, 0).x, y: 2 }, 'neck-end wall', { anchor: 'middle' as const }),
            segment({ x: at(wall, 0).x, y: 6 }, { x: at(wall, 0).x, y: base + high + 2 }, 'thin'),
          ]
        : []),
      words(
        { x: at(x0, 0).x + 2, y: base + high + 3 },
        `nut lifted ${fine(rises[0] ?? 0)}, bow ${fine(neck.bow)}`,
      ),
    ),
    caption: `The full line is the neck under the pull, the broken one without it. Bent ${factor === 1 ? 'true to scale' : `${factor} times too far, to be seen`}; lengths 1 : ${scale}. An estimate: creep and the give of glue and walls are left out.`,
    table,
  }
}

const LEAST_CENTS = 5
const TALL = 52
const LEFT = 13
const RIGHT = 24
const BELOW = 9

/** Cents off at every fret, a line for each string; `null` where there are none. */
export function centsPicture(
  numbers: readonly number[],
  strings: readonly { readonly number: number; readonly cents: readonly (number | null)[] }[],
  table: Table,
): Picture | null {
  const known = strings.flatMap(({ cents }) => cents.filter((one): one is number => one !== null))
  if (numbers.length < 2 || known.length === 0) return null
  const high = Math.ceil(Math.max(LEAST_CENTS, ...known) / 5) * 5
  const low = Math.floor(Math.min(-LEAST_CENTS, ...known) / 5) * 5
  const x = (index: number) => LEFT + ((index + 0.5) * (PICTURE_WIDTH - LEFT - RIGHT)) / numbers.length
  const y = (cents: number) => BELOW + ((cents - low) * TALL) / (high - low)
  const levels = [...new Set([high, LEAST_CENTS, 0, -LEAST_CENTS, low])]
  const far = levels.filter(
    (one) =>
      one === 0 ||
      levels.every(
        (other) => other === one || Math.abs(y(other) - y(one)) > 3.6 || Math.abs(other) <= Math.abs(one),
      ),
  )
  const shapes: Shape[] = [
    ...levels.map((cents) =>
      segment(
        { x: LEFT, y: y(cents) },
        { x: PICTURE_WIDTH - RIGHT, y: y(cents) },
        cents === 0 ? 'thin' : 'hidden',
      ),
    ),
    ...far.map((cents) =>
      words({ x: LEFT - 1.5, y: y(cents) - 1.1 }, cents > 0 ? `+${cents}` : cents < 0 ? `−${-cents}` : '0', {
        anchor: 'end',
      }),
    ),
    ...numbers.flatMap((number, index) =>
      index === 0 || number % 3 === 0
        ? [words({ x: x(index), y: BELOW - 5 }, `${number}`, { anchor: 'middle' as const })]
        : [],
    ),
  ]
  const ends: { y: number; at: number; x: number; number: number }[] = []
  strings.forEach(({ number, cents }, order) => {
    const points = cents.flatMap((one, index) => (one === null ? [] : [{ x: x(index), y: y(one) }]))
    const path = through(points)
    if (path) shapes.push(stroke(path, order % 2 === 0 ? 'strong' : 'dotted'))
    const end = points.at(-1)
    if (end) ends.push({ ...end, at: end.y, number })
  })
  ends.sort((a, b) => a.y - b.y)
  ends.forEach((end, index) => {
    const below = ends[index - 1]
    if (below && end.at - below.at < 3.6) end.at = below.at + 3.6
  })
  for (const end of ends)
    shapes.push(
      segment({ x: end.x + 0.8, y: end.y }, { x: PICTURE_WIDTH - RIGHT + 3, y: end.at }, 'thin'),
      words({ x: PICTURE_WIDTH - RIGHT + 4, y: end.at - 1.1 }, `string ${end.number}`),
    )
  const top = Math.max(BELOW + TALL, ...ends.map((one) => one.at)) + 4
  return {
    id: 'cents',
    title: 'Cents off at every fret',
    description: 'A line for each string: how far each fretted note lies over or under what it should be.',
    width: PICTURE_WIDTH,
    height: top,
    shapes,
    caption:
      'Over (+) or under (−) the intended note, saddle and nut as planned; most ears let 5 cents pass. An estimate, for a finger that presses straight down.',
    table,
  }
}
