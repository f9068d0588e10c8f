/** Prints and packs what it is sent, beside the command that goes on writing. */
import { parentPort } from 'node:worker_threads'
import { type Print, printed } from '../bundle/print.ts'

parentPort?.on('message', ({ id, print }: { readonly id: number; readonly print: Print }) => {
  printed(print).then(
    (done) => parentPort?.postMessage({ id, done }),
    (error: unknown) => parentPort?.postMessage({ id, error }),
  )
})
