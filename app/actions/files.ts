/** Designs and templates come from and go to the builder's own files. */
import { forgetViews } from '../canvas/lookings.ts'
import { openDesign, openText, saveFile } from '../state/index.ts'
import { sayTrouble } from './dialogs.ts'
import { saveToDisk } from './disk.ts'
import { LARGEST_DESIGN, textOfFile } from './text-of-file.ts'

/** Hands a text, or bytes, to the browser as a file to keep. */
export function download(name: string, content: string | Uint8Array, type: string): void {
  const address = URL.createObjectURL(new Blob([content as BlobPart], { type }))
  const link = document.createElement('a')
  link.href = address
  link.download = name
  document.body.append(link)
  link.click()
  link.remove()
  // Some browsers read the address only after the click has returned.
  window.setTimeout(() => URL.revokeObjectURL(address), 10_000)
}

/** Browsers drop files that are handed over faster than this, milliseconds. */
const BETWEEN_FILES = 250

/** Several files, one after the other; settles when all have been handed over. */
export async function downloadAll(
  files: readonly { name: string; text: string; type: string }[],
): Promise<void> {
  for (const [index, file] of files.entries()) {
    if (index > 0) await new Promise((resolve) => setTimeout(resolve, BETWEEN_FILES))
    download(file.name, file.text, file.type)
  }
}

/** To the file on the disk that is kept up to date, or as a download. */
export function saveDesign(): void {
  if (saveToDisk()) return
  const { name, text } = saveFile()
  download(name, text, 'application/json')
}

/** Opens what the code on a label says; `null` when it is open, or what is wrong with it. */
export async function openLabelText(text: string): Promise<readonly string[] | null> {
  const { readCarried } = await import('../../exporters/index.ts')
  const reading = readCarried(text)
  if (!reading.ok)
    return reading.faults.map(({ path, sentence }) => (path ? `${path}: ${sentence}` : sentence))
  const outcome = openDesign(reading.design, 'Open from a label')
  if (!outcome.ok) return [outcome.sentence]
  forgetViews()
  return null
}

/** Opens a text as a design, or says what is wrong with it and leaves everything as it was. */
export function openDesignText(text: string, name: string): boolean {
  const faults = openText(text)
  if (faults === null) {
    forgetViews()
    return true
  }
  sayTrouble(
    `“${name}” could not be opened`,
    faults.slice(0, 8).map(({ path, sentence }) => (path ? `${path}: ${sentence}` : sentence)),
  )
  return false
}

/** Opens a file as a design, or says what is wrong with it and leaves everything as it was. */
export async function openDesignFile(file: File): Promise<boolean> {
  const read = await textOfFile(file, LARGEST_DESIGN)
  if (read.ok) return openDesignText(read.text, file.name)
  sayTrouble(`“${file.name}” could not be opened`, [read.sentence])
  return false
}

/** Asks for a file and opens it. */
export function chooseFile(): void {
  const input = document.createElement('input')
  input.type = 'file'
  input.accept = '.json,application/json'
  input.hidden = true
  // In the page while the choice is open: an input that hangs nowhere may be swept away before it answers.
  document.body.append(input)
  input.addEventListener('cancel', () => input.remove())
  input.addEventListener('change', async () => {
    input.remove()
    const file = input.files?.[0]
    if (file) await openDesignFile(file)
  })
  input.click()
}

export interface Sample {
  readonly name: string
  readonly title: string
  load(): Promise<string>
}

const files = import.meta.glob<string>('../../sample-boxes/*.lidwright.json', {
  query: '?raw',
  import: 'default',
})

/** The sample instruments; each is fetched only when it is opened. */
export const SAMPLES: readonly Sample[] = Object.entries(files).map(([path, load]) => {
  const name = path.split('/').at(-1)?.replace('.lidwright.json', '') ?? path
  return { name, title: name.charAt(0).toUpperCase() + name.slice(1).replaceAll('-', ' '), load }
})

export async function openSample(sample: Sample): Promise<void> {
  openDesignText(await sample.load(), sample.title)
}
