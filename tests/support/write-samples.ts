/** `npm run samples`: rewrites the expected exports of the sample boxes, after a change that was meant. */
import { mkdirSync, rmSync, writeFileSync } from 'node:fs'
import { expectedFolder, expectedOf, samples } from './samples.ts'

for (const sample of samples()) {
  const folder = expectedFolder(sample.name)
  rmSync(folder, { recursive: true, force: true })
  mkdirSync(folder, { recursive: true })
  for (const [name, text] of expectedOf(sample)) writeFileSync(new URL(name, folder), text)
  console.log(`sample-boxes/expected/${sample.name}: ${expectedOf(sample).size} files`)
}
