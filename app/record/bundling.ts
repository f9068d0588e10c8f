/** A bundle on its way: how far it is, the zip at the end, and a way to stop it. */
import type { Bundle } from '../../exporters/index.ts'
import type { BundleAnswer, BundleJob } from './bundle-messages.ts'

export interface Bundling {
  /** Rejects with a sentence where it fails, and never settles once it is stopped. */
  readonly made: Promise<Bundle>
  stop(): void
}

/** @param onStep told before each group of files: how many are done, of how many, and what comes now */
export function startBundling(
  job: BundleJob,
  onStep: (done: number, of: number, what: string) => void,
): Bundling {
  const worker = new Worker(new URL('./bundle-worker.ts', import.meta.url), { type: 'module' })
  const made = new Promise<Bundle>((resolve, reject) => {
    worker.addEventListener('message', ({ data }: MessageEvent<BundleAnswer>) => {
      if (data.kind === 'step') return onStep(data.done, data.of, data.what)
      worker.terminate()
      if (data.kind === 'made') resolve(data.bundle)
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
