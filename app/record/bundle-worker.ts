/** Makes the bundle beside the page, which goes on answering meanwhile. One worker makes one; it is ended to cancel it. */
import { makeBundle } from '../../exporters/index.ts'
import type { BundleAnswer, BundleJob } from './bundle-messages.ts'

const say = (answer: BundleAnswer) => self.postMessage(answer)

self.addEventListener('message', ({ data: { design, options } }: MessageEvent<BundleJob>) => {
  makeBundle(design, { ...options, onStep: (done, of, what) => say({ kind: 'step', done, of, what }) }).then(
    (bundle) => say({ kind: 'made', bundle }),
    (error: unknown) =>
      say({ kind: 'failed', sentence: error instanceof Error ? error.message : String(error) }),
  )
})
