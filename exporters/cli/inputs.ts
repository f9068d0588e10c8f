/** From the words of a command to designs: files and folders found, read, and changed as `--set` says. */
import { readdirSync, readFileSync, statSync } from 'node:fs'
import { basename, join, resolve } from 'node:path'
import { type Design, readDesign } from '../../geometry/index.ts'
import { counted, type Io, reasonOf, Trouble } from './io.ts'
import { applySettings } from './settings.ts'

/** No design is larger, its photographs included; bytes. */
const LARGEST_FILE = 50e6

export const SUFFIX = '.lidwright.json'

export interface Source {
  /** As the user would write it. */
  readonly file: string
  readonly design: Design
}

export interface Inputs {
  readonly sources: readonly Source[]
  /** Sentences about what could not be read, each with its file. */
  readonly troubles: readonly string[]
  /** Was more than one file, or a folder, named? Then answers are lists. */
  readonly many: boolean
}

/** Reads every design that the paths name. What cannot be read is told in `troubles`; nothing throws for it. */
export function readInputs(paths: readonly string[], settings: readonly string[], io: Io): Inputs {
  const troubles: string[] = []
  const files = new Map<string, string>()
  let folders = 0
  for (const path of paths) {
    const found = filesAt(path, io.cwd)
    if (found.folder) folders += 1
    if (found.trouble) troubles.push(found.trouble)
    for (const file of found.files) files.set(resolve(io.cwd, file), file)
  }
  const sources: Source[] = []
  for (const [place, file] of files) {
    const read = readSource(place, settings)
    if ('design' in read) sources.push({ file, design: read.design })
    else troubles.push(...read.faults.map((fault) => `${file}: ${fault}`))
  }
  return { sources, troubles, many: folders > 0 || files.size > 1 || paths.length > 1 }
}

interface Found {
  readonly files: readonly string[]
  readonly folder: boolean
  readonly trouble?: string
}

function filesAt(path: string, cwd: string): Found {
  const none = { files: [], folder: false }
  try {
    if (!statSync(resolve(cwd, path)).isDirectory()) return { files: [path], folder: false }
    const files = walk(path, cwd)
    if (files.length > 0) return { files, folder: true }
    const trouble = `${path}: this folder holds no design. Designs are files whose names end in ${SUFFIX}; "lidwright new --out box${SUFFIX}" makes one.`
    return { files: [], folder: true, trouble }
  } catch (error) {
    return {
      ...none,
      trouble: `${path}: it cannot be read: ${reasonOf(error)}. Check the path; it was taken from ${cwd}.`,
    }
  }
}

/** Designs below a folder, in order of name; hidden folders and installed packages hold none. */
function walk(folder: string, cwd: string): string[] {
  const entries = readdirSync(resolve(cwd, folder), { withFileTypes: true })
  const files: string[] = []
  for (const entry of entries.sort((a, b) => (a.name < b.name ? -1 : 1))) {
    const path = join(folder, entry.name)
    if (entry.isDirectory()) {
      if (!entry.name.startsWith('.') && entry.name !== 'node_modules') files.push(...walk(path, cwd))
    } else if (entry.name.endsWith(SUFFIX)) files.push(path)
  }
  return files
}

type Read = { readonly design: Design } | { readonly faults: readonly string[] }

function readSource(place: string, settings: readonly string[]): Read {
  let text: string
  try {
    const { size } = statSync(place)
    if (size > LARGEST_FILE)
      return {
        faults: [`it has ${Math.round(size / 1e6)} megabytes; no design has more than 50. It was not read.`],
      }
    text = readFileSync(place, 'utf8')
  } catch (error) {
    return { faults: [`it cannot be read: ${reasonOf(error)}.`] }
  }
  const reading = readDesign(text)
  if (!reading.ok) return { faults: reading.faults.map(faultText) }
  const set = applySettings(reading.design, settings)
  return set.ok ? { design: set.design } : { faults: set.sentences }
}

/** A fault with the field it is about. */
export const faultText = ({ path, sentence }: { path: string; sentence: string }): string =>
  path === '' ? sentence : `${path}: ${sentence}`

/** Says what could not be read, and how much. */
export function tellTroubles(troubles: readonly string[], io: Io, consequence: string): void {
  for (const trouble of troubles) io.err(`${trouble}\n`)
  if (troubles.length > 0) io.err(`${counted(troubles.length, 'fault')} in what was given; ${consequence}.\n`)
}

/** One design writes into the folder itself, several into a folder each, named after their files. */
export function foldersOf(sources: readonly Source[], out: string, many: boolean): Map<Source, string> {
  const folders = new Map<Source, string>()
  const taken = new Map<string, string>()
  for (const source of sources) {
    const name = basename(source.file).replace(/(\.lidwright)?\.json$/, '')
    const folder = many ? join(out, name) : out
    const other = taken.get(folder.toLowerCase())
    if (other !== undefined)
      throw new Trouble(
        `${source.file} and ${other} would both be written to ${folder}. Rename one, or write them one at a time.`,
      )
    taken.set(folder.toLowerCase(), source.file)
    folders.set(source, folder)
  }
  return folders
}
