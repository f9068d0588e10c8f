/** The sample boxes and what is expected of them: the files on disk, and the same made anew. */
import { createHash } from 'node:crypto'
import { readdirSync, readFileSync } from 'node:fs'
import { templates } from '../../exporters/index.ts'
import { type Design, partsOf, readDesign, solve } from '../../geometry/index.ts'

const folder = new URL('../../sample-boxes/', import.meta.url)

export interface Sample {
  /** File name without its ending. */
  readonly name: string
  readonly design: Design
}

export const expectedFolder = (name: string) => new URL(`expected/${name}/`, folder)

/** Every finished design in the folder, by name. Throws for one that cannot be read: samples are never broken. */
export function samples(): Sample[] {
  return readdirSync(folder)
    .filter((file) => file.endsWith('.lidwright.json'))
    .sort()
    .map((file) => {
      const read = readDesign(readFileSync(new URL(file, folder), 'utf8'))
      if (!read.ok)
        throw new Error(`${file}: ${read.faults.map((one) => `${one.path} ${one.sentence}`).join('; ')}`)
      return { name: file.replace('.lidwright.json', ''), design: read.design }
    })
}

/** All exported files of a sample: every part in both formats, and the two sheets with all parts. */
export const exportsOf = ({ design }: Sample) =>
  templates(partsOf(solve(design)), { title: design.title, formats: ['svg', 'dxf'] })

/**
 * What is kept on disk for a sample: the two sheets whole, so that a person can look at a change, and a digest of
 * every other file, so that none changes unnoticed.
 */
export function expectedOf(sample: Sample): Map<string, string> {
  const files = exportsOf(sample)
  const sheets = files.filter((file) => file.name.includes('-all-parts.'))
  const digests = files.map((file) => `${createHash('sha256').update(file.text).digest('hex')}  ${file.name}`)
  return new Map([
    ...sheets.map((file): [string, string] => [file.name, file.text]),
    ['digests.txt', `${digests.join('\n')}\n`],
  ])
}
