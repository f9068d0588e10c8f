/** A file on its way: how far it is, its bytes at the end, and a way to stop it. */
import type { Answer, Job, MadeFile } from './bundle-messages.ts'

export interface Bundling {
  /** Rejects with a sentence where it fails, and never settles once it is stopped. */
  readonly made: Promise<MadeFile>
  stop(): void
}

/** @param onStep told before each group of files: how many are done, of how many, and what comes now */
export function startMaking(
  job: Job,
  onStep: (done: number, of: number, what: string) => void = () => undefined,
): Bundling {
  const worker = new Worker(new URL('./bundle-worker.ts', import.meta.url), { type: 'module' })
  const made = new Promise<MadeFile>((resolve, reject) => {
    worker.addEventListener('message', ({ data }: MessageEvent<Answer>) => {
      if (data.kind === 'step') return onStep(data.done, data.of, data.what)
      worker.terminate()
      if (data.kind === 'made') resolve(data.file)
      else reject(new Error(data.sentence))
    })
    worker.addEventListener('error', () => {
      worker.terminate()
      reject(new Error('What makes the files could not be started. Reload the page and try again.'))
    })
  })
  worker.postMessage(job)
  return { made, stop: () => worker.terminate() }
}
