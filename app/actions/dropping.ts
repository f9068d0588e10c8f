/** Files dropped anywhere on the page: a design is opened, anything else is told what it may be. */
import { sayTrouble } from './dialogs.ts'
import { openDesignFile } from './files.ts'

/** Listens on the whole window; returns how to stop. Places that take other files listen before it. */
export function listenForDrops(): () => void {
  const over = (event: DragEvent) => {
    if (event.dataTransfer?.types.includes('Files')) event.preventDefault()
  }
  const drop = (event: DragEvent) => {
    const file = event.dataTransfer?.files[0]
    if (!file || event.defaultPrevented) return
    event.preventDefault()
    void take(file)
  }
  addEventListener('dragover', over)
  addEventListener('drop', drop)
  return () => {
    removeEventListener('dragover', over)
    removeEventListener('drop', drop)
  }
}

async function take(file: File): Promise<void> {
  if (file.type.startsWith('image/'))
    return sayTrouble(`“${file.name}” is a picture`, [
      'Drop a photograph of the box in Survey, where its corners are put.',
    ])
  await openDesignFile(file)
}
