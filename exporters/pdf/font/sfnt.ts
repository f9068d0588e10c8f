/**
 * TrueType files taken apart and put together (OpenType specification 1.9, "OpenType font file", `loca`,
 * `glyf`, `cmap` format 12). Only what a drawing needs: outlines, widths, and which sign has which outline.
 */

export type Tables = ReadonlyMap<string, Uint8Array>

const view = (bytes: Uint8Array) => new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength)

/** A table by its tag; throws where the font has none. */
export function table(tables: Tables, tag: string): Uint8Array {
  const found = tables.get(tag)
  if (found === undefined) throw new Error(`The font has no table "${tag}".`)
  return found
}

/** The tables of a font file, by tag. Throws when it is not a TrueType file. */
export function tablesOf(file: Uint8Array): Tables {
  const data = view(file)
  if (file.length < 12 || data.getUint32(0) !== 0x00010000) throw new Error('This is not a TrueType font.')
  const tables = new Map<string, Uint8Array>()
  for (let index = 0; index < data.getUint16(4); index++) {
    const at = 12 + 16 * index
    const tag = String.fromCharCode(...file.subarray(at, at + 4))
    const start = data.getUint32(at + 8)
    tables.set(tag, file.subarray(start, start + data.getUint32(at + 12)))
  }
  return tables
}

function checksum(bytes: Uint8Array): number {
  const data = view(bytes)
  const whole = bytes.length & ~3
  let sum = 0
  for (let at = 0; at < whole; at += 4) sum = (sum + data.getUint32(at)) >>> 0
  for (let at = whole; at < bytes.length; at++) sum = (sum + ((bytes[at] ?? 0) << (24 - 8 * (at & 3)))) >>> 0
  return sum
}

/** A font file of some tables, in order of tag, with their sums. */
export function fileOf(tables: Tables): Uint8Array {
  const sorted = [...tables].sort(([a], [b]) => (a < b ? -1 : 1))
  const count = sorted.length
  const power = 2 ** Math.floor(Math.log2(count))
  const size = sorted.reduce((sum, [, bytes]) => sum + ((bytes.length + 3) & ~3), 12 + 16 * count)
  const file = new Uint8Array(size)
  const data = view(file)
  data.setUint32(0, 0x00010000)
  data.setUint16(4, count)
  data.setUint16(6, 16 * power)
  data.setUint16(8, Math.log2(power))
  data.setUint16(10, 16 * (count - power))
  let start = 12 + 16 * count
  for (const [index, [tag, bytes]] of sorted.entries()) {
    const at = 12 + 16 * index
    for (let letter = 0; letter < 4; letter++) data.setUint8(at + letter, tag.charCodeAt(letter))
    data.setUint32(at + 4, checksum(bytes))
    data.setUint32(at + 8, start)
    data.setUint32(at + 12, bytes.length)
    file.set(bytes, start)
    start += (bytes.length + 3) & ~3
  }
  return file
}

/** Where each outline lies in `glyf`: one more entry than there are outlines. */
function offsetsOf(tables: Tables): Uint32Array {
  const count = view(table(tables, 'maxp')).getUint16(4) + 1
  const loca = view(table(tables, 'loca'))
  const long = view(table(tables, 'head')).getInt16(50) === 1
  const offsets = new Uint32Array(count)
  for (let glyph = 0; glyph < count; glyph++)
    offsets[glyph] = long ? loca.getUint32(4 * glyph) : 2 * loca.getUint16(2 * glyph)
  return offsets
}

/** Flags of a composite outline. */
const WORDS = 0x0001
const SCALE = 0x0008
const MORE = 0x0020
const TWO_SCALES = 0x0040
const FOUR_SCALES = 0x0080
const INSTRUCTIONS = 0x0100

/** Calls back with the place of each component's record, and gives the end of the last. */
function eachComponent(outline: Uint8Array, call: (at: number) => void): number {
  const data = view(outline)
  let at = 10
  for (;;) {
    const flags = data.getUint16(at)
    call(at)
    at += 4 + (flags & WORDS ? 4 : 2)
    at += flags & SCALE ? 2 : flags & TWO_SCALES ? 4 : flags & FOUR_SCALES ? 8 : 0
    if (!(flags & MORE)) return at
  }
}

/** An outline without the instructions that fit it to the pixels of a screen, which paper does not need. */
function withoutInstructions(outline: Uint8Array): Uint8Array {
  if (outline.length === 0) return outline
  const data = view(outline)
  const contours = data.getInt16(0)
  if (contours < 0) {
    const copy = outline.slice()
    const end = eachComponent(copy, (at) => {
      const flags = view(copy)
      flags.setUint16(at, flags.getUint16(at) & ~INSTRUCTIONS)
    })
    return copy.subarray(0, end)
  }
  const at = 10 + 2 * contours
  const length = data.getUint16(at)
  if (length === 0) return outline
  const short = new Uint8Array(outline.length - length)
  short.set(outline.subarray(0, at))
  short.set(outline.subarray(at + 2 + length), at + 2)
  return short
}

/**
 * The same font with only some of its outlines; the others become empty and keep their numbers, so nothing that
 * names an outline by its number has to change. Screen instructions go.
 *
 * @param tables of a TrueType font
 * @param wanted numbers of outlines; what they are composed of comes along, and so does number 0
 */
export function onlyOutlines(tables: Tables, wanted: Iterable<number>): Tables {
  const offsets = offsetsOf(tables)
  const glyf = table(tables, 'glyf')
  const outlineOf = (glyph: number) => glyf.subarray(offsets[glyph] ?? 0, offsets[glyph + 1] ?? 0)
  const kept = withComponents(tables, wanted)
  const count = offsets.length - 1
  const outlines = new Map([...kept].map((glyph) => [glyph, withoutInstructions(outlineOf(glyph))]))
  const padded = (outline: Uint8Array) => (outline.length + 3) & ~3
  const loca = new Uint8Array(4 * (count + 1))
  const newGlyf = new Uint8Array([...outlines.values()].reduce((sum, one) => sum + padded(one), 0))
  const places = view(loca)
  let start = 0
  for (let glyph = 0; glyph < count; glyph++) {
    places.setUint32(4 * glyph, start)
    const outline = outlines.get(glyph)
    if (outline === undefined) continue
    newGlyf.set(outline, start)
    start += padded(outline)
  }
  places.setUint32(4 * count, start)
  const head = table(tables, 'head').slice()
  view(head).setInt16(50, 1)
  const hmtx = table(tables, 'hmtx').slice()
  const widths = view(hmtx)
  const measured = view(table(tables, 'hhea')).getUint16(34)
  for (let glyph = 0; glyph < measured; glyph++) {
    if (!kept.has(glyph)) widths.setUint32(4 * glyph, 0)
  }
  return new Map([
    ['head', head],
    ['hhea', table(tables, 'hhea')],
    ['maxp', table(tables, 'maxp')],
    ['hmtx', hmtx],
    ['loca', loca],
    ['glyf', newGlyf],
  ])
}

/**
 * The same font with its outlines numbered anew, without gaps, in the order of their old numbers.
 *
 * @param kept numbers of the outlines to keep; what they are composed of has to be among them
 * @returns the tables, and new numbers by old ones
 */
export function renumbered(
  tables: Tables,
  kept: Iterable<number>,
): { readonly tables: Tables; readonly numbers: ReadonlyMap<number, number> } {
  const old = [...new Set([0, ...kept])].sort((a, b) => a - b)
  const numbers = new Map(old.map((glyph, index) => [glyph, index]))
  const offsets = offsetsOf(tables)
  const glyf = table(tables, 'glyf')
  const newGlyf = new Uint8Array(glyf.length)
  const loca = new Uint8Array(4 * (old.length + 1))
  const hmtx = new Uint8Array(4 * old.length)
  let start = 0
  for (const [index, glyph] of old.entries()) {
    const outline = glyf.slice(offsets[glyph] ?? 0, offsets[glyph + 1] ?? 0)
    if (outline.length > 0 && view(outline).getInt16(0) < 0) {
      eachComponent(outline, (at) => {
        const number = numbers.get(view(outline).getUint16(at + 2))
        if (number === undefined)
          throw new RangeError(`Outline ${glyph} is composed of one that is not kept.`)
        view(outline).setUint16(at + 2, number)
      })
    }
    view(loca).setUint32(4 * index, start)
    newGlyf.set(outline, start)
    start += outline.length
    view(hmtx).setUint16(4 * index, advanceOf(tables, glyph))
    // The left bearing repeats what the outline says itself: its least x.
    if (outline.length > 0) view(hmtx).setInt16(4 * index + 2, view(outline).getInt16(2))
  }
  view(loca).setUint32(4 * old.length, start)
  const maxp = table(tables, 'maxp').slice()
  view(maxp).setUint16(4, old.length)
  const hhea = table(tables, 'hhea').slice()
  view(hhea).setUint16(34, old.length)
  const changed: [string, Uint8Array][] = [
    ['maxp', maxp],
    ['hhea', hhea],
    ['hmtx', hmtx],
    ['loca', loca],
    ['glyf', newGlyf.slice(0, start)],
  ]
  return { tables: new Map([...tables, ...changed]), numbers }
}

/** The numbers of some outlines and of all that they are composed of. */
export function withComponents(tables: Tables, wanted: Iterable<number>): Set<number> {
  const offsets = offsetsOf(tables)
  const glyf = table(tables, 'glyf')
  const kept = new Set<number>()
  const keep = (glyph: number): void => {
    if (kept.has(glyph)) return
    kept.add(glyph)
    const outline = glyf.subarray(offsets[glyph] ?? 0, offsets[glyph + 1] ?? 0)
    if (outline.length === 0 || view(outline).getInt16(0) >= 0) return
    eachComponent(outline, (at) => keep(view(outline).getUint16(at + 2)))
  }
  keep(0)
  for (const glyph of wanted) keep(glyph)
  return kept
}

/** The width of an outline's cell in units of the em: the last one measured holds for all behind it. */
export function advanceOf(tables: Tables, glyph: number): number {
  const measured = view(table(tables, 'hhea')).getUint16(34)
  return view(table(tables, 'hmtx')).getUint16(4 * Math.min(glyph, measured - 1))
}

/** Units in an em. */
export function unitsOf(tables: Tables): number {
  return view(table(tables, 'head')).getUint16(18)
}

/** Which sign (code point) has which outline, from the `cmap` subtable of format 12. Throws where there is none. */
export function outlinesBySign(tables: Tables): Map<number, number> {
  const cmap = table(tables, 'cmap')
  const data = view(cmap)
  const found = new Map<number, number>()
  for (let index = 0; index < data.getUint16(2); index++) {
    const start = data.getUint32(4 + 8 * index + 4)
    if (data.getUint16(start) !== 12) continue
    for (let group = 0; group < data.getUint32(start + 12); group++) {
      const at = start + 16 + 12 * group
      const first = data.getUint32(at)
      for (let sign = first; sign <= data.getUint32(at + 4); sign++)
        found.set(sign, data.getUint32(at + 8) + sign - first)
    }
    return found
  }
  throw new Error('The font has no list of signs in format 12.')
}

/** A `cmap` with one subtable of format 12, one group a sign. */
export function cmapOf(outlines: ReadonlyMap<number, number>): Uint8Array {
  const groups: [first: number, last: number, glyph: number][] = []
  for (const [sign, glyph] of [...outlines].sort(([a], [b]) => a - b)) {
    const before = groups.at(-1)
    if (before && before[1] + 1 === sign && before[2] + sign - before[0] === glyph) before[1] = sign
    else groups.push([sign, sign, glyph])
  }
  const cmap = new Uint8Array(12 + 16 + 12 * groups.length)
  const data = view(cmap)
  data.setUint16(2, 1)
  data.setUint16(4, 3)
  data.setUint16(6, 10)
  data.setUint32(8, 12)
  data.setUint16(12, 12)
  data.setUint32(16, 16 + 12 * groups.length)
  data.setUint32(24, groups.length)
  for (const [index, group] of groups.entries()) {
    for (const [field, value] of group.entries()) data.setUint32(28 + 12 * index + 4 * field, value)
  }
  return cmap
}
