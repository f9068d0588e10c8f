/** A file on the disk that is written again at every save, where the browser can do that; elsewhere files are downloaded. */
import { type Design, designText } from '../../geometry/index.ts'
import { announce } from '../parts/Announcer.tsx'
import { committed, saveFile, useBench } from '../state/index.ts'
import { sayTrouble } from './dialogs.ts'

/** As much of the File System Access API as is needed; not every browser has it. */
interface FileHandle {
  readonly name: string
  createWritable(): Promise<{
    write(text: string): Promise<void>
    close(): Promise<void>
    abort(): Promise<void>
  }>
}
interface Picker {
  showSaveFilePicker?(options: {
    suggestedName: string
    types: { description: string; accept: Record<string, string[]> }[]
  }): Promise<FileHandle>
}

let kept: { readonly handle: FileHandle; readonly title: string } | null = null

const picker = (): Picker => window as Picker

export const canKeepOnDisk = (): boolean => picker().showSaveFilePicker !== undefined

/** Asks for a file, writes the design into it, and from then on every save goes there. */
export async function keepOnDisk(): Promise<void> {
  const { name } = saveFile()
  try {
    const handle = await picker().showSaveFilePicker?.({
      suggestedName: name,
      types: [{ description: 'Lidwright design', accept: { 'application/json': ['.json'] } }],
    })
    if (!handle) return
    kept = { handle, title: useBench.getState().design.title }
    await writeKept()
  } catch (error) {
    // The builder thought better of it.
    if (error instanceof DOMException && error.name === 'AbortError') return
    told(error)
  }
}

/** Writes to the file on the disk, if this design has one; `false` where it has none and a download is wanted. */
export function saveToDisk(): boolean {
  // Another instrument on the bench must not overwrite the file of the one before.
  if (!kept || kept.title !== useBench.getState().design.title) return false
  writeKept().catch(told)
  return true
}

async function writeKept(): Promise<void> {
  if (!kept) return
  const design: Design = committed()
  // The file stays as it was until all of the new text is written.
  const stream = await kept.handle.createWritable()
  try {
    await stream.write(designText(design))
    await stream.close()
  } catch (error) {
    await stream.abort().catch(() => undefined)
    throw error
  }
  announce(`Saved in ${kept.handle.name}.`)
}

function told(error: unknown): void {
  sayTrouble('The file could not be written', [
    `${error instanceof Error ? error.message : String(error)} The design is kept in this browser as before; save it to a file from the menu.`,
  ])
}
