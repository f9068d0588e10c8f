/** Makes files beside the page, which goes on answering meanwhile. One worker makes one; it is ended to cancel it. */
import { buildSheet, makeBundle, paperFor, printLabel, printSheet, slug } from '../../exporters/index.ts'
import type { Answer, Job, MadeFile } from './bundle-messages.ts'

const say = (answer: Answer) => self.postMessage(answer)

async function madeBy({ make, design, options }: Job): Promise<MadeFile> {
  const start = slug(design.title, 'instrument')
  switch (make) {
    case 'everything':
      return makeBundle(design, {
        ...options,
        onStep: (done, of, what) => say({ kind: 'step', done, of, what }),
      })
    case 'sheet': {
      const paper = options.paper ?? paperFor(design)
      return { name: `${start}-build-sheet-${paper}.pdf`, ...(await printSheet(buildSheet(design), paper)) }
    }
    case 'label':
      return { name: `${start}-label.pdf`, ...(await printLabel(design)) }
  }
}

self.addEventListener('message', ({ data }: MessageEvent<Job>) => {
  madeBy(data).then(
    (file) => say({ kind: 'made', file }),
    (error: unknown) =>
      say({ kind: 'failed', sentence: error instanceof Error ? error.message : String(error) }),
  )
})
