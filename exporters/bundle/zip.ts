/**
 * A zip (APPNOTE 6.3) whose bytes hang on nothing but its files: one compressor (DEFLATE, RFC 1951) everywhere, one date.
 * Files are packed one by one, in whatever place has time for it, and bound at the end. Small ones are stored as they are.
 */
import { deflateSync } from 'fflate'

/** A file of the bundle: its path inside, and its bytes. */
export interface BundleFile {
  readonly path: string
  readonly bytes: Uint8Array
}

/** A file as a zip holds it. */
export interface Packed {
  readonly path: string
  readonly size: number
  readonly crc: number
  readonly method: typeof STORED | typeof DEFLATED
  readonly content: Uint8Array
}

/**
 * Bytes from which a file is deflated. A usual instrument has none so large: its zip stays below a megabyte, and the
 * compressor, which would be a sixth of all the work where each thing is done once, is never started. A lid of a
 * thousand holes has many, and becomes a sixth.
 */
const LARGE = 256 * 1024

/** Levels differ little in time and size on texts such as these. */
const LEVEL = 6

/** 1 January 1980, midnight: the earliest date a zip can say (years from 1980, month, day; no hours). */
const NO_DATE = (1 << 5) | 1

/** Version 2.0 of the format: folders and DEFLATE. */
const VERSION = 20
const STORED = 0
const DEFLATED = 8
/** Bit 11: names are UTF-8. */
const UTF8 = 0x800

const LOCAL = 30
const CENTRAL = 46
const END = 22

const remainders = Uint32Array.from({ length: 256 }, (_, byte) => {
  let rest = byte
  for (let bit = 0; bit < 8; bit++) rest = rest & 1 ? (rest >>> 1) ^ 0xedb88320 : rest >>> 1
  return rest
})

/** CRC-32 as zips have it (ISO 3309). Example: of `123456789` it is `0xcbf43926`. */
export function crc32(bytes: Uint8Array): number {
  let rest = 0xffffffff
  for (let at = 0; at < bytes.length; at++)
    rest = (remainders[(rest ^ (bytes[at] ?? 0)) & 0xff] ?? 0) ^ (rest >>> 8)
  return (rest ^ 0xffffffff) >>> 0
}

/** Makes one file ready for its zip. The same bytes give the same bytes on any machine. */
export function packed({ path, bytes }: BundleFile): Packed {
  const facts = { path, size: bytes.length, crc: crc32(bytes) }
  return bytes.length < LARGE
    ? { ...facts, method: STORED, content: bytes }
    : { ...facts, method: DEFLATED, content: deflateSync(bytes, { level: LEVEL }) }
}

/** What local and central headers say alike, behind their signatures and versions: 26 bytes. */
function writeFacts(
  view: DataView,
  at: number,
  { size, crc, method, content }: Packed,
  name: Uint8Array,
): void {
  view.setUint16(at, VERSION, true)
  view.setUint16(at + 2, UTF8, true)
  view.setUint16(at + 4, method, true)
  view.setUint16(at + 8, NO_DATE, true)
  view.setUint32(at + 10, crc, true)
  view.setUint32(at + 14, content.length, true)
  view.setUint32(at + 18, size, true)
  view.setUint16(at + 22, name.length, true)
}

/** The zip of some packed files, in their order. Sizes stay far below the four gigabytes of the plain format. */
export function zipOf(files: readonly Packed[]): Uint8Array {
  const encoder = new TextEncoder()
  const named = files.map((file) => ({ file, name: encoder.encode(file.path) }))
  const sum = (of: (one: (typeof named)[number]) => number) =>
    named.reduce((total, one) => total + of(one), 0)
  const start = sum(({ file, name }) => LOCAL + name.length + file.content.length)
  const directory = sum(({ name }) => CENTRAL + name.length)
  const zip = new Uint8Array(start + directory + END)
  const view = new DataView(zip.buffer)
  let at = 0
  let entry = start
  for (const { file, name } of named) {
    view.setUint32(at, 0x04034b50, true)
    writeFacts(view, at + 4, file, name)
    zip.set(name, at + LOCAL)
    zip.set(file.content, at + LOCAL + name.length)
    view.setUint32(entry, 0x02014b50, true)
    view.setUint16(entry + 4, VERSION, true)
    writeFacts(view, entry + 6, file, name)
    view.setUint32(entry + 42, at, true)
    zip.set(name, entry + CENTRAL)
    at += LOCAL + name.length + file.content.length
    entry += CENTRAL + name.length
  }
  view.setUint32(entry, 0x06054b50, true)
  view.setUint16(entry + 8, files.length, true)
  view.setUint16(entry + 10, files.length, true)
  view.setUint32(entry + 12, directory, true)
  view.setUint32(entry + 16, start, true)
  return zip
}
