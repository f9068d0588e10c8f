/** Printing on a thread of its own: a machine with two cores prints while it writes and packs. */
import { join } from 'node:path'
import { Worker } from 'node:worker_threads'
import type { Print, Printed } from '../bundle/print.ts'

export interface PrintThread {
  print(print: Print): Promise<Printed>
  /** Ends the thread; the process would wait for it. */
  end(): void
}

interface Answer {
  readonly id: number
  readonly done?: Printed
  readonly error?: unknown
}

/** The name the worker has in the package, beside the file that holds this. */
const WORKER = 'print-worker.mjs'

/**
 * Starts the thread, or gives `null` where the source runs as it is: a thread takes no TypeScript, and the bundle prints
 * for itself then. Bytes are the same either way.
 */
export function printThread(): PrintThread | null {
  if (import.meta.url.endsWith('.ts')) return null
  // Whatever Node was started with is about the command, not about this file.
  const worker = new Worker(join(import.meta.dirname, WORKER), { execArgv: [] })
  const waiting = new Map<number, { done(printed: Printed): void; failed(error: unknown): void }>()
  let broken: unknown
  worker.on('message', ({ id, done, error }: Answer) => {
    const one = waiting.get(id)
    waiting.delete(id)
    if (done) one?.done(done)
    else one?.failed(error)
  })
  worker.on('error', (error) => {
    broken = error
    for (const one of waiting.values()) one.failed(error)
    waiting.clear()
  })
  let count = 0
  return {
    print: (print) =>
      new Promise((done, failed) => {
        if (broken !== undefined) return failed(broken)
        const id = count++
        waiting.set(id, { done, failed })
        worker.postMessage({ id, print })
      }),
    end: () => void worker.terminate(),
  }
}
