/** Writing so that nothing is ever there by half: all texts first, then all names. */
import { mkdirSync, renameSync, rmSync, statSync, writeFileSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { reasonOf, Trouble } from './io.ts'

/** A file to be written. */
export interface Text {
  /** Absolute path. */
  readonly path: string
  /** Words as UTF-8, or bytes as they are. */
  readonly text: string | Uint8Array
}

/**
 * Writes every text to a short name beside its own, and only when all of them are on the disk gives them their names.
 * Folders that are missing are made; files of the same names are replaced. Throws a `Trouble` that says what failed,
 * after taking away what was begun.
 */
export function writeWhole(texts: readonly Text[]): void {
  const begun: { readonly temporary: string; readonly path: string }[] = []
  let at = ''
  try {
    for (const folder of new Set(texts.map(({ path }) => dirname(path)))) {
      at = folder
      mkdirSync(folder, { recursive: true })
    }
    for (const [index, { path, text }] of texts.entries()) {
      at = path
      if (isFolder(path))
        throw new Trouble(
          `${path}: a folder of that name lies where the file should go. Nothing was written; take it away or choose another place.`,
        )
      const temporary = join(dirname(path), `.${process.pid}-${index}.part`)
      begun.push({ temporary, path })
      writeFileSync(temporary, text, { encoding: 'utf8', flag: 'wx' })
    }
    for (const { temporary, path } of begun) {
      at = path
      renameSync(temporary, path)
    }
  } catch (error) {
    for (const { temporary } of begun) rmSync(temporary, { force: true })
    if (error instanceof Trouble) throw error
    throw new Trouble(
      `${at}: it cannot be written: ${reasonOf(error)}. Nothing is left half written; choose another place with --out.`,
    )
  }
}

function isFolder(path: string): boolean {
  try {
    return statSync(path).isDirectory()
  } catch {
    return false
  }
}

/** Does anything lie at this path? */
export function exists(path: string): boolean {
  try {
    statSync(path)
    return true
  } catch {
    return false
  }
}
