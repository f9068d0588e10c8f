/** A print job on its way: sheets drawn so far, the file at the end, and a way to stop it. */
import type { MadePdf } from '../../exporters/index.ts'
import type { Answer, PrintJob } from './messages.ts'

export interface Printing {
  /** Rejects with a sentence where it fails, and never settles once it is stopped. */
  readonly made: Promise<MadePdf>
  stop(): void
}

/** @param onSheet told after every sheet how many are done */
export function startPrinting(job: PrintJob, onSheet: (done: number, of: number) => void): Printing {
  const worker = new Worker(new URL('./print-worker.ts', import.meta.url), { type: 'module' })
  const made = new Promise<MadePdf>((resolve, reject) => {
    worker.addEventListener('message', ({ data }: MessageEvent<Answer>) => {
      if (data.kind === 'sheet') {
        onSheet(data.done, data.of)
        return
      }
      worker.terminate()
      if (data.kind === 'made') resolve(data.made)
      else reject(new Error(data.sentence))
    })
    worker.addEventListener('error', () => {
      worker.terminate()
      reject(new Error('What prints could not be loaded. Load the page again while there is a network.'))
    })
  })
  worker.postMessage(job)
  return { made, stop: () => worker.terminate() }
}
