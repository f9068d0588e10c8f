/** `lidwright sheet`: the paper that goes with the instrument. */
import { basename, join, relative, resolve } from 'node:path'
import { type Command, Option } from 'commander'
import { writeLabelSvg } from '../label/label.ts'
import { PAPER_NAMES, type PaperName, paperFor } from '../pdf/index.ts'
import { buildSheet } from '../sheet/build-sheet.ts'
import { sheetFiles } from '../sheet/files.ts'
import { printLabel, printSheet } from '../sheet/printing.ts'
import { slug } from '../words/plain.ts'
import { foldersOf, readInputs, tellTroubles } from './inputs.ts'
import { counted, EXIT, type Io } from './io.ts'
import { settingOption } from './shared-help.ts'
import { type Text, writeWhole } from './write-files.ts'

interface Options {
  readonly out: string
  readonly paper?: PaperName
  readonly set: readonly string[]
}

export function addSheet(program: Command, io: Io, end: (code: number) => void): void {
  program
    .command('sheet')
    .summary('the build sheet, its tables, the label and one JSON of everything')
    .description(
      'Writes the sheet that goes with the instrument: one HTML page that prints on A4 and Letter, the same as PDF, a CSV\n' +
        'of every table, the label for the inside of the box, and one JSON of everything. Findings that are open stand in it; ask "lidwright check" for them.\n' +
        'With several designs each gets a folder of its own.',
    )
    .argument('<file...>', 'designs, or folders that hold designs (*.lidwright.json)')
    .requiredOption('--out <folder>', 'where the files go; made if it is missing')
    .addOption(
      new Option('--paper <name>', 'paper of the PDF; A4 for millimetres, Letter for inches').choices(
        PAPER_NAMES,
      ),
    )
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
      const { sources, troubles, many } = readInputs(paths, options.set, io)
      tellTroubles(troubles, io, 'nothing was written')
      if (troubles.length > 0) return end(EXIT.badInput)
      const out = resolve(io.cwd, options.out)
      const folders = foldersOf(sources, out, many)
      const texts: Text[] = []
      for (const { file, design, folder } of sources.map((one) => ({
        ...one,
        folder: folders.get(one) ?? out,
      }))) {
        const paper = options.paper ?? paperFor(design)
        const start = slug(design.title, 'sheet')
        const printed = await printSheet(buildSheet(design), paper)
        for (const caution of printed.cautions) io.err(`${basename(file)}: ${caution}\n`)
        const files: readonly { name: string; text: string | Uint8Array }[] = [
          ...sheetFiles(design),
          { name: `${start}-build-sheet-${paper}.pdf`, text: printed.bytes },
          { name: `${start}-label.svg`, text: writeLabelSvg(design) },
          { name: `${start}-label.pdf`, text: (await printLabel(design)).bytes },
        ]
        for (const { name, text } of files) texts.push({ path: join(folder, name), text })
      }
      writeWhole(texts)
      io.out(
        `${[`Wrote ${counted(texts.length, 'file')} to ${options.out}:`, ...texts.map(({ path }) => `  ${relative(out, path)}`)].join('\n')}\n`,
      )
    })
}
