import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { gzipSync } from 'node:zlib'

/** The scripts that a built page fetches before its first screen, each with its gzipped bytes. */
export function firstLoad(folder: string): { readonly file: string; readonly bytes: number }[] {
  const page = readFileSync(join(folder, 'index.html'), 'utf8')
  return [...page.matchAll(/(?:src|href)="\.\/([^"]+\.js)"/g)].map(([, file]) => ({
    file: file!,
    bytes: gzipSync(readFileSync(join(folder, file!)), { level: 9 }).length,
  }))
}
