/** The command line: `lidwright check`, `templates`, `sheet`, `report`, `fit`, `place`, `schedule` and `new`. Needs nothing but files. */
import { Command, CommanderError } from 'commander'
import { addBundle } from './cli/bundle.ts'
import { addCheck } from './cli/check.ts'
import { addFit } from './cli/fit.ts'
import { EXIT, type Io, Trouble } from './cli/io.ts'
import { addNew } from './cli/new.ts'
import { addPlace } from './cli/place.ts'
import { addRecall } from './cli/recall.ts'
import { addReport } from './cli/report.ts'
import { addSchedule } from './cli/schedule.ts'
import { EXIT_CODES } from './cli/shared-help.ts'
import { addSheet } from './cli/sheet.ts'
import { addTemplates } from './cli/templates.ts'
import { PROGRAM_VERSION } from './cli/version.ts'

/**
 * Runs one command.
 *
 * @param argv the words behind the program's name
 * @param io where it writes, and the folder that relative paths start from
 * @returns the exit code: 0 fine, 1 a stop is open, 2 bad input. Throws only for a fault of the program itself
 * @example await run(['check', 'tea-box.lidwright.json'], { out, err, cwd })
 */
export async function run(argv: string[], io: Io): Promise<number> {
  let code: number = EXIT.fine
  const end = (ended: number) => {
    code = Math.max(code, ended)
  }
  try {
    await programFor(io, end).parseAsync(argv, { from: 'user' })
    return code
  } catch (error) {
    // Help and version are asked for; everything else that commander throws it has already told.
    if (error instanceof CommanderError) return error.exitCode === 0 ? EXIT.fine : EXIT.badInput
    if (!(error instanceof Trouble)) throw error
    io.err(`${error.message}\n`)
    return EXIT.badInput
  }
}

function programFor(io: Io, end: (code: number) => void): Command {
  // Set before the commands are added: they take these over from the program.
  const program = new Command('lidwright')
    .exitOverride()
    .configureOutput({
      writeOut: io.out,
      writeErr: io.err,
      outputError: (text, write) =>
        write(text.replace(/^error: (.)/, (_, first: string) => first.toUpperCase())),
      getOutHelpWidth: () => 110,
      getErrHelpWidth: () => 110,
      getOutHasColors: () => false,
      getErrHasColors: () => false,
    })
    .showHelpAfterError('Add --help to the command for what it takes, with examples.')
    .configureHelp({ sortSubcommands: false })
  program
    .description(
      'From a found box to a playable stringed instrument: lays out every cut, proves it, writes true templates.\n' +
        'Designs are files whose names end in .lidwright.json, in millimetres; sample-boxes/README.md explains them.',
    )
    .version(PROGRAM_VERSION, '--version', 'the version of this program')
    .helpOption('--help', 'this help; behind a command, help on it')
    .helpCommand(false)
    .addHelpText(
      'after',
      `
A first instrument:
  lidwright new --length 240 --width 180 --depth 55 --strings 3 --hand right --out box.lidwright.json
  lidwright check box.lidwright.json
  lidwright templates box.lidwright.json --out cut

${EXIT_CODES}`,
    )
  addCheck(program, io, end)
  addTemplates(program, io, end)
  addReport(program, io, end)
  addFit(program, io, end)
  addPlace(program, io, end)
  addSchedule(program, io, end)
  addSheet(program, io, end)
  addBundle(program, io, end)
  addRecall(program, io)
  addNew(program, io, end)
  return program
}
