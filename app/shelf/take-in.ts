/** Designs out of files: single ones, and whole shelves in a zip. */
import { type Design, printable, readDesign } from '../../geometry/index.ts'
import { LARGEST_DESIGN, textOfFile } from '../actions/text-of-file.ts'

export interface TakenIn {
  readonly designs: readonly Design[]
  /** One sentence for each file that holds no design. */
  readonly refused: readonly string[]
}

/** A zip may say anything of its sizes: what unpacks to more than this is no shelf of designs. */
const MOST_UNPACKED = 60e6
const MOST_FILES = 2000
/** Bytes of a zip that is looked into at all. */
const MOST_PACKED = 100e6

/** Reads files as designs. None is written anywhere by its name: a name in a zip is only ever said. */
export async function takeInFiles(files: readonly File[]): Promise<TakenIn> {
  const designs: Design[] = []
  const refused: string[] = []
  for (const file of files) {
    const texts = /\.zip$/i.test(file.name) ? await fromZip(file) : await alone(file)
    if (typeof texts === 'string') {
      refused.push(texts)
      continue
    }
    for (const [name, text] of texts) {
      const reading = readDesign(text)
      if (reading.ok) designs.push(reading.design)
      else refused.push(`${shown(name)}: ${reading.faults[0]?.sentence ?? 'This is no design.'}`)
    }
  }
  return { designs, refused }
}

/** A name out of a file or a zip, short, and without signs that would turn the words behind it over. */
const shown = (name: string): string => printable(name.length > 80 ? `${name.slice(0, 77)}…` : name)

async function alone(file: File): Promise<(readonly [string, string])[] | string> {
  const read = await textOfFile(file, LARGEST_DESIGN)
  return read.ok ? [[file.name, read.text]] : `${shown(file.name)}: ${read.sentence}`
}

async function fromZip(file: File): Promise<(readonly [string, string])[] | string> {
  const own = shown(file.name)
  if (file.size > MOST_PACKED)
    return `${own} has ${Math.round(file.size / 1e6)} megabytes, more than a shelf of designs could; it was not read.`
  const { unzipSync, strFromU8 } = await import('fflate')
  let whole = 0
  let count = 0
  try {
    const entries = unzipSync(new Uint8Array(await file.arrayBuffer()), {
      filter: ({ name, originalSize }) => {
        if (!name.endsWith('.lidwright.json')) return false
        whole += originalSize
        count += 1
        if (whole > MOST_UNPACKED || count > MOST_FILES) throw new RangeError('too much')
        return true
      },
    })
    const texts = Object.entries(entries).map(([name, bytes]) => [name, strFromU8(bytes)] as const)
    return texts.length > 0 ? texts : `${own} holds no design: none of its files ends in .lidwright.json.`
  } catch (error) {
    return error instanceof RangeError
      ? `${own} holds more than a shelf of designs could; nothing was taken from it.`
      : `${own} could not be opened as a zip.`
  }
}

/** All designs as one zip, named by their titles, two of one title told apart by a number. */
export async function shelfZip(
  files: readonly { readonly name: string; readonly text: string }[],
): Promise<Uint8Array> {
  const { zipSync, strToU8 } = await import('fflate')
  const entries: Record<string, Uint8Array> = {}
  for (const { name, text } of files) {
    const stem = name.replace(/\.lidwright\.json$/, '')
    let free = name
    for (let number = 2; entries[free]; number++) free = `${stem}-${number}.lidwright.json`
    entries[free] = strToU8(text)
  }
  return zipSync(entries)
}
