/** Packs what it is sent, beside the command that goes on writing. */
import { parentPort } from 'node:worker_threads'
import { type BundleFile, packed } from '../bundle/zip.ts'

parentPort?.on('message', (file: BundleFile) => {
  parentPort?.postMessage(packed(file))
})
