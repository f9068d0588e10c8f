/** Packing on a thread of its own: a machine with two cores writes and packs at once. */
import { join } from 'node:path'
import { Worker } from 'node:worker_threads'
import type { BundleFile, Packed } from '../bundle/zip.ts'

export interface PackThread {
  pack(file: BundleFile): Promise<Packed>
  /** Ends the thread; the process would wait for it. */
  end(): void
}

/** The name the worker has in the package, beside the file that holds this. */
const WORKER = 'pack-worker.mjs'

/**
 * Starts the thread, or gives `null` where the source runs as it is: a thread takes no TypeScript, and the bundle packs
 * for itself then. Bytes are the same either way.
 */
export function packThread(): PackThread | null {
  if (import.meta.url.endsWith('.ts')) return null
  // Whatever Node was started with is about the command, not about this file.
  const worker = new Worker(join(import.meta.dirname, WORKER), { execArgv: [] })
  const waiting: { done(packed: Packed): void; failed(error: Error): void }[] = []
  // Files come back in the order in which they were sent.
  worker.on('message', (packed: Packed) => waiting.shift()?.done(packed))
  worker.on('error', (error: Error) => {
    for (const one of waiting.splice(0)) one.failed(error)
  })
  return {
    pack: (file) =>
      new Promise((done, failed) => {
        waiting.push({ done, failed })
        worker.postMessage(file)
      }),
    end: () => void worker.terminate(),
  }
}
