/** The drawer of strings as a builder would list it: `.010, .026w, .032w phosphor bronze, .028 nylon`. */
import {
  type Design,
  formatFine,
  MATERIALS,
  type MaterialName,
  readLength,
  type Stocked,
  usualMake,
} from '../../geometry/index.ts'
import type { Answer } from './field.ts'

type Units = Design['units']

/** What a string is called in the list: its gauge, `w` for wound, and what it is of where that is not the usual. */
export function nameStocked(row: Stocked, units: Units): string {
  const usual = usualMake(row.gauge)
  const letter = row.construction === 'wound' ? 'w' : row.construction === 'stated' ? 'm' : ''
  const core = row.material === usual.material ? [] : [row.material]
  const wrap = row.construction !== 'wound' || row.wrap === usual.wrap ? [] : [row.wrap]
  return [`${formatFine(row.gauge, units)}${letter}`, ...core, ...wrap].join(' ')
}

type Reading = { readonly ok: true; readonly rows: Stocked[] } | Extract<Answer, { ok: false }>

/** Each entry is a gauge, a `w` if wound, and any materials by name. Strings in `known` stay as they were made. */
export function readStock(text: string, units: Units, known: readonly Stocked[]): Reading {
  const rows: Stocked[] = []
  const entries = text.split(/[,;]|\s+(?=[.\d])/).map((entry) => entry.trim().replace(/\s+/g, ' '))
  for (const entry of entries.filter(Boolean)) {
    const before = known.find((row) => nameStocked(row, units) === entry)
    if (before) {
      rows.push(before)
      continue
    }
    const [, gaugeText = '', wound, words = ''] =
      /^([\d.,/]+(?:\s?(?:mm|in|"))?)(w)?(?:\s+(.+))?$/i.exec(entry) ?? []
    const reading = readLength(gaugeText || entry, units.display)
    if (!reading.ok) return reading
    const stuff = materialsIn(words)
    if (typeof stuff === 'string') return { ok: false, sentence: stuff }
    const gauge = Math.round(reading.mm * 1e4) / 1e4
    const construction = wound || stuff.wrap ? 'wound' : 'plain'
    rows.push({ ...usualMake(gauge), ...stuff, gauge, construction })
  }
  return { ok: true, rows }
}

const NAMES = Object.keys(MATERIALS) as MaterialName[]

/** The materials named, or a sentence for words that name none. */
function materialsIn(words: string): Partial<Pick<Stocked, 'material' | 'wrap'>> | string {
  let left = words.toLowerCase().trim()
  const found: { material?: Stocked['material']; wrap?: Stocked['wrap'] } = {}
  while (left) {
    const name = NAMES.filter((one) => left === one || left.startsWith(`${one} `)).sort(
      (a, b) => b.length - a.length,
    )[0]
    if (!name)
      return `“${words}” names no material that strings are reckoned with. These are: ${NAMES.join(', ')}.`
    if (MATERIALS[name].strength) found.material = name as Stocked['material']
    else found.wrap = name as Stocked['wrap']
    left = left.slice(name.length).trim()
  }
  return found
}
