/** `lidwright bundle`: everything of an instrument in one zip. */
import { basename, dirname, join, resolve } from 'node:path'
import { type Command, Option } from 'commander'
import { makeBundle } from '../bundle/bundle.ts'
import { PAPER_NAMES, type PaperName } from '../pdf/index.ts'
import { readInputs, type Source, tellTroubles } from './inputs.ts'
import { EXIT, type Io, Trouble } from './io.ts'
import { EXIT_CODES, settingOption } from './shared-help.ts'
import { tellStops } from './templates.ts'
import { type Text, writeWhole } from './write-files.ts'

interface Options {
  readonly out: string
  readonly paper?: PaperName
  readonly inches?: boolean
  readonly despiteStops?: boolean
  readonly set: readonly string[]
}

export function addBundle(program: Command, io: Io, end: (code: number) => void): void {
  program
    .command('bundle')
    .summary('everything of an instrument in one zip')
    .description(
      'Writes one zip with the design, its templates (SVG, DXF, PDF), the build sheet, its tables, the label and one\n' +
        'JSON of everything. The same design gives the same bytes. Nothing is written while a stop is open, unless you\n' +
        'insist. With several designs --out is a folder, and each gets a zip of its own.',
    )
    .argument('<file...>', 'designs, or folders that hold designs (*.lidwright.json)')
    .requiredOption('--out <file>', 'the zip; of several designs, the folder they go to')
    .addOption(
      new Option('--paper <name>', 'paper of what is printed; A4 for millimetres, Letter for inches').choices(
        PAPER_NAMES,
      ),
    )
    .option('--inches', 'numbers in the DXF files are inches')
    .option('--despite-stops', 'write although a stop is open')
    .addOption(settingOption())
    .addHelpText(
      'after',
      `
Examples:
  lidwright bundle tea-box.lidwright.json --out tea-box.zip
  lidwright bundle boxes --out zips --paper a4

${EXIT_CODES}`,
    )
    .action(async (paths: string[], options: Options) => {
      const { sources, troubles, many } = readInputs(paths, options.set, io)
      tellTroubles(troubles, io, 'nothing was written')
      if (troubles.length > 0) return end(EXIT.badInput)
      if (!options.despiteStops && tellStops(sources, io)) return end(EXIT.stop)
      const out = resolve(io.cwd, options.out)
      const places = placesOf(sources, out, many)
      const texts: Text[] = []
      for (const source of sources) {
        const { bytes, cautions } = await bundled(source, options)
        for (const caution of cautions) io.err(`${basename(source.file)}: ${caution}\n`)
        texts.push({ path: places.get(source) ?? out, text: bytes })
      }
      writeWhole(texts)
      for (const { path, text } of texts)
        io.out(
          `Wrote ${many ? join(options.out, basename(path)) : options.out}, ${Math.ceil(text.length / 1024)} kB.\n`,
        )
    })
}

/** A design with open stops may hold parts without a size, which no exporter draws. */
async function bundled({ file, design }: Source, { paper, inches }: Options) {
  try {
    return await makeBundle(design, { paper, dxfUnits: inches ? 'inches' : 'mm' })
  } catch (error) {
    const why = error instanceof Error ? error.message : String(error)
    throw new Trouble(
      `${file}: it cannot be drawn: ${why} Nothing was written. "lidwright check" says what to mend.`,
    )
  }
}

/** One design writes the file named, several into a folder, each named after its own file. */
function placesOf(sources: readonly Source[], out: string, many: boolean): Map<Source, string> {
  const places = new Map<Source, string>()
  const taken = new Map<string, string>()
  for (const source of sources) {
    const name = `${basename(source.file).replace(/(\.lidwright)?\.json$/, '')}.zip`
    const place = many ? join(out, name) : join(dirname(out), basename(out))
    const other = taken.get(place.toLowerCase())
    if (other !== undefined)
      throw new Trouble(
        `${source.file} and ${other} would both be written to ${place}. Rename one, or write them one at a time.`,
      )
    taken.set(place.toLowerCase(), source.file)
    places.set(source, place)
  }
  return places
}
