/** Writes sample-boxes/README.md: `npm run docs`. The guard test beside it fails while the file is stale. */
import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs'
import { resolve } from 'node:path'
import { readDesign } from '../../geometry/index.ts'
import { type Sample, samplesReadme, stem } from './docs.ts'
import { project } from './project-files.ts'

/** The command that mends a stale page, for whoever finds it stale. */
export const MEND = 'npm run docs'

const folder = resolve(project, 'sample-boxes')
export const readmePath = resolve(folder, 'README.md')

/** The samples of a folder, in order of name; none where there is none. Throws for one that cannot be read. */
export function samplesIn(place: string): Sample[] {
  if (!existsSync(place)) return []
  const files = readdirSync(place)
    .filter((file) => file.endsWith('.lidwright.json'))
    .sort()
  return files.map((file) => {
    const reading = readDesign(readFileSync(resolve(place, file), 'utf8'))
    if (!reading.ok)
      throw new Error(
        `sample-boxes/${file}: ${reading.faults.map((one) => `${one.path}: ${one.sentence}`).join(' ')}`,
      )
    return { file, design: reading.design, expected: existsSync(resolve(place, 'expected', stem(file))) }
  })
}

/** The page as it should be now. */
export const readmeNow = () => samplesReadme(samplesIn(folder))

if (
  process.argv[1] !== undefined &&
  resolve(process.argv[1]) === resolve(import.meta.dirname, 'write-docs.ts')
) {
  mkdirSync(folder, { recursive: true })
  writeFileSync(readmePath, readmeNow())
  console.log('Wrote sample-boxes/README.md')
}
