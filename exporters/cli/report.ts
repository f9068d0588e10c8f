/** `lidwright report`: everything that follows from a design, as text or JSON. */
import type { Command } from 'commander'
import { reportOf } from '../report.ts'
import { readInputs, tellTroubles } from './inputs.ts'
import { EXIT, type Io } from './io.ts'
import { reportText } from './report-text.ts'
import { settingOption } from './shared-help.ts'

interface Options {
  readonly json?: boolean
  readonly set: readonly string[]
}

export function addReport(program: Command, io: Io, end: (code: number) => void): void {
  program
    .command('report')
    .summary('every derived position, as text or JSON')
    .description(
      'Everything that follows from a design: frets, strings, heights, places, parts, findings. As text in the\n' +
        'unit of the design; with --json in millimetres and radians, with keys that stay (sample-boxes/README.md\n' +
        'says what each holds), every margin with its worst case.',
    )
    .argument('<file...>', 'designs, or folders that hold designs (*.lidwright.json)')
    .option('--json', 'as JSON: one object, or a list of them for folders and several files')
    .addOption(settingOption())
    .addHelpText(
      'after',
      `
Examples:
  lidwright report tea-box.lidwright.json
  lidwright report tea-box.lidwright.json --json > tea-box.json
  lidwright report boxes --json --set strings.count=4

Exit codes: 0 fine; 2 bad input, with the reason on stderr. A report is given whatever it finds: ask "lidwright check".`,
    )
    .action((paths: string[], options: Options) => {
      const { sources, troubles, many } = readInputs(paths, options.set, io)
      if (options.json) {
        const answers = sources.map(({ file, design }) => ({
          file,
          ...reportOf(design, { tolerances: true }),
        }))
        if (many || answers.length > 0) io.out(`${JSON.stringify(many ? answers : answers[0], null, 2)}\n`)
      } else
        io.out(
          sources.map(({ file, design }) => `${many ? `${file}\n` : ''}${reportText(design)}\n`).join('\n'),
        )
      tellTroubles(troubles, io, 'what could be read was reported')
      if (troubles.length > 0) end(EXIT.badInput)
    })
}
