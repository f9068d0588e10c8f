/** Prints beside the page, which goes on answering meanwhile. One worker prints one job; it is ended to cancel it. */
import { planPrint, printBars, printPdf } from '../../exporters/index.ts'
import type { Answer, PrintJob } from './messages.ts'

const say = (answer: Answer) => self.postMessage(answer)

async function print({ parts, setup, title }: PrintJob): Promise<Answer> {
  if (parts.length === 0) return { kind: 'made', made: await printBars(setup) }
  const reading = planPrint(parts, setup)
  if (!reading.ok) return { kind: 'failed', sentence: reading.sentence }
  const onSheet = (done: number, of: number) => {
    say({ kind: 'sheet', done, of })
    return undefined
  }
  return { kind: 'made', made: await printPdf(reading.plan, { title, onSheet }) }
}

self.addEventListener('message', ({ data }: MessageEvent<PrintJob>) => {
  print(data).then(say, (error: unknown) =>
    say({ kind: 'failed', sentence: error instanceof Error ? error.message : String(error) }),
  )
})
