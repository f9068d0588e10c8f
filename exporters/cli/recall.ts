/** `lidwright recall`: the design that a label carries, back as a file. */
import { readFileSync } from 'node:fs'
import { resolve } from 'node:path'
import type { Command } from 'commander'
import { designText } from '../../geometry/index.ts'
import { isCarried, readCarried } from '../label/carried.ts'
import { faultText } from './inputs.ts'
import { type Io, reasonOf, Trouble } from './io.ts'
import { exists, writeWhole } from './write-files.ts'

interface Options {
  readonly out: string
}

export function addRecall(program: Command, io: Io): void {
  program
    .command('recall')
    .summary('the design that a label in a box carries, as a file')
    .description(
      'Turns the text of the code on a label back into the design. The text is given as it was read, in quotes, or as\n' +
        'the name of a file that holds it. A text that was read wrongly is refused; a file that is there is left alone.',
    )
    .argument('<text>', 'the text of the code, which begins with LIDWRIGHT, or a file that holds it')
    .requiredOption('--out <file>', 'the design’s new file')
    .addHelpText(
      'after',
      `
Examples:
  lidwright recall "LIDWRIGHT1:4C1C…" --out box.lidwright.json
  lidwright recall label.txt --out box.lidwright.json

Exit codes: 0 fine; 2 bad input, with the reason on stderr.`,
    )
    .action((given: string, { out }: Options) => {
      const text = isCarried(given) ? given : textOf(given, io)
      const read = readCarried(text)
      if (!read.ok) throw new Trouble(read.faults.map(faultText).join('\n'))
      const path = resolve(io.cwd, out)
      if (exists(path)) throw new Trouble(`${out}: this file is there already; name another with --out.`)
      writeWhole([{ path, text: designText(read.design) }])
      io.out(`Wrote ${out}: ${read.design.title}.\n`)
    })
}

function textOf(file: string, io: Io): string {
  try {
    return readFileSync(resolve(io.cwd, file), 'utf8')
  } catch (error) {
    throw new Trouble(
      `${file}: neither the text of a label, which begins with LIDWRIGHT, nor a file that can be read: ${reasonOf(error)}.`,
    )
  }
}
