/** `lidwright sheet`: the paper that goes with the instrument. */
import { join, relative, resolve } from 'node:path'
import type { Command } from 'commander'
import { sheetFiles } from '../sheet/files.ts'
import { foldersOf, readInputs, tellTroubles } from './inputs.ts'
import { counted, EXIT, type Io } from './io.ts'
import { settingOption } from './shared-help.ts'
import { type Text, writeWhole } from './write-files.ts'

interface Options {
  readonly out: string
  readonly set: readonly string[]
}

export function addSheet(program: Command, io: Io, end: (code: number) => void): void {
  program
    .command('sheet')
    .summary('the build sheet, its tables and one JSON of everything')
    .description(
      'Writes the sheet that goes with the instrument: one HTML page that prints on A4 and Letter, a CSV of every\n' +
        'table, and one JSON of everything. Findings that are open stand in it; ask "lidwright check" for them.\n' +
        'With several designs each gets a folder of its own.',
    )
    .argument('<file...>', 'designs, or folders that hold designs (*.lidwright.json)')
    .requiredOption('--out <folder>', 'where the files go; made if it is missing')
    .addOption(settingOption())
    .addHelpText(
      'after',
      `
Examples:
  lidwright sheet tea-box.lidwright.json --out paper
  lidwright sheet tea-box.lidwright.json --out paper --set units.display=mm

Exit codes: 0 fine; 2 bad input, with the reason on stderr. A sheet is written whatever it finds.`,
    )
    .action(async (paths: string[], options: Options) => {
      const { sources, troubles, many } = await readInputs(paths, options.set, io)
      tellTroubles(troubles, io, 'nothing was written')
      if (troubles.length > 0) return end(EXIT.badInput)
      const out = resolve(io.cwd, options.out)
      const folders = foldersOf(sources, out, many)
      const texts = sources.flatMap((source): Text[] =>
        sheetFiles(source.design).map(({ name, text }) => ({
          path: join(folders.get(source) ?? out, name),
          text,
        })),
      )
      await writeWhole(texts)
      io.out(
        `${[`Wrote ${counted(texts.length, 'file')} to ${options.out}:`, ...texts.map(({ path }) => `  ${relative(out, path)}`)].join('\n')}\n`,
      )
    })
}
