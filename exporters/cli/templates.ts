/** `lidwright templates`: the files that a saw, a laser or a printer takes. */
import { join, relative, resolve } from 'node:path'
import type { Command } from 'commander'
import {
  blocks,
  check,
  type Design,
  FACES,
  mirrorPart,
  type Part,
  partsOf,
  sentenceOf,
  solve,
} from '../../geometry/index.ts'
import { paperFor } from '../pdf/index.ts'
import { TEMPLATE_FORMATS, type TemplateFormat, type TemplatesOptions } from '../templates.ts'
import { addCuttingOptions, type CuttingOptions, madeFor, writingOptions } from './cutting.ts'
import { foldersOf, readInputs, type Source, tellTroubles } from './inputs.ts'
import { counted, EXIT, type Io, Trouble } from './io.ts'
import { nearest } from './nearest.ts'
import { addPrintOptions, type PrintOptions, printed, setupFrom } from './print.ts'
import { EXIT_CODES, settingOption } from './shared-help.ts'
import { type Text, writeWhole } from './write-files.ts'

interface Options extends PrintOptions, CuttingOptions {
  readonly out: string
  readonly svg?: boolean
  readonly dxf?: boolean
  readonly inches?: boolean
  readonly inside?: boolean
  readonly part?: readonly string[]
  readonly despiteStops?: boolean
  readonly set: readonly string[]
}

export function addTemplates(program: Command, io: Io, end: (code: number) => void): void {
  const command = program
    .command('templates')
    .summary('SVG, DXF and PDF files of every part, at full size')
    .description(
      'Writes a file for each part and one sheet with all of them, at full size: SVG in millimetres, DXF in\n' +
        'millimetres or inches; with --pdf, one PDF with sheets of paper to print and join. All files are made before the first is written; files of the same names are\n' +
        'replaced, others in the folder are left alone. With several designs each gets a folder of its own.\n' +
        'Nothing is written while a stop is open, unless you insist.',
    )
    .argument('<file...>', 'designs, or folders that hold designs (*.lidwright.json)')
    .requiredOption('--out <folder>', 'where the files go; made if it is missing')
    .option('--svg', 'SVG files; SVG and DXF where no format is named')
    .option('--dxf', 'DXF files; SVG and DXF where no format is named')
    .option('--inches', 'numbers in the DXF files are inches')
    .option('--inside', 'only the faces of the box, mirrored: as seen from inside. Names end in -inside')
    .option('--part <names>', 'only these parts, with commas between: lid,board', partNames)
    .option('--despite-stops', 'write although a stop is open')
  addCuttingOptions(command).addOption(settingOption())
  addPrintOptions(command)
    .addHelpText(
      'after',
      `
Examples:
  lidwright templates tea-box.lidwright.json --out cut
  lidwright templates tea-box.lidwright.json --out cut --dxf --inches --part lid,board
  lidwright templates tea-box.lidwright.json --out cut --svg --inside --part lid
  lidwright templates tea-box.lidwright.json --out cut --sheets --for laser --set cutting.process=laser
  lidwright templates tea-box.lidwright.json --out cut --test-piece 4 --set cutting.process=laser
  lidwright templates tea-box.lidwright.json --out paper --pdf --paper letter --bar-x 99.4 --bar-y 100.2

${EXIT_CODES}`,
    )
    .action(async (paths: string[], options: Options) => {
      const { sources, troubles, many } = readInputs(paths, options.set, io)
      tellTroubles(troubles, io, 'nothing was written')
      if (troubles.length > 0) return end(EXIT.badInput)
      if (!options.despiteStops && tellStops(sources, io)) return end(EXIT.stop)
      const out = resolve(io.cwd, options.out)
      const folders = foldersOf(sources, out, many)
      const made = await Promise.all(
        sources.map((source) => textsOf(source, folders.get(source) ?? '', options)),
      )
      const texts = made.flatMap((one) => one.texts)
      texts.push(...(await sheetsOf(sources, folders, options, io)))
      writeWhole(texts)
      const more = made.flatMap((one) => (one.texts.length > 0 ? one.said : []))
      io.out(`${[said(texts, sources, out, options), ...more].join('\n')}\n`)
    })
}

function partNames(text: string, before: readonly string[] = []): string[] {
  return [
    ...before,
    ...text
      .split(',')
      .map((name) => name.trim())
      .filter(Boolean),
  ]
}

/** Says which stops are open; `true` if any is. */
export function tellStops(sources: readonly Source[], io: Io): boolean {
  const open = sources.flatMap(({ file, design }) => {
    const layout = solve(design)
    return check(layout)
      .filter(blocks)
      .map((finding) => `${file}: ${sentenceOf(finding, layout)} [${finding.key}]`)
  })
  for (const line of open) io.err(`${line}\n`)
  if (open.length > 0)
    io.err(
      `${counted(open.length, 'stop is', 'stops are')} open, so nothing was written. Mend the design, overrule the stop in it with a reason, or add --despite-stops.\n`,
    )
  return open.length > 0
}

async function textsOf(
  { file, design }: Source,
  folder: string,
  options: Options,
): Promise<{ readonly texts: readonly Text[]; readonly said: readonly string[] }> {
  const { part: only = [], inside = false } = options
  const parts = partsFor(design, inside)
  const unknown = only.filter((name) => !parts.some((part) => part.id === name))
  if (unknown.length > 0) throw new Trouble(unknownPart(file, unknown, parts, inside))
  const writing: TemplatesOptions = {
    title: design.title,
    formats: formatsOf(options),
    dxfUnits: options.inches ? 'inches' : 'mm',
    ...writingOptions(options),
    ...(only.length > 0 ? { only } : {}),
  }
  const { files, said } = await drawn(file, () => madeFor(file, design, parts, options, writing))
  const texts = files.map(({ name, text }) => ({
    path: join(folder, nameFor(name, inside)),
    text,
  }))
  return { texts, said }
}

function formatsOf(options: Options): readonly TemplateFormat[] {
  const named = TEMPLATE_FORMATS.filter((format) => options[format])
  return named.length > 0 || options.pdf ? named : TEMPLATE_FORMATS
}

/** The PDFs, where they are asked for. */
async function sheetsOf(
  sources: readonly Source[],
  folders: ReadonlyMap<Source, string>,
  options: Options,
  io: Io,
): Promise<Text[]> {
  if (!options.pdf) return []
  const setup = setupFrom(options, io)
  const { part: only = [], inside = false } = options
  const files: Text[] = []
  for (const source of sources) {
    const { file, design } = source
    const all = partsFor(design, inside)
    const parts = only.length > 0 ? all.filter(({ id }) => only.includes(id)) : all
    const paper = options.paper ?? paperFor(design)
    const { name, text } = await drawn(file, () =>
      printed(file, parts, { ...setup, paper }, design.title, io),
    )
    files.push({ path: join(folders.get(source) ?? '', nameFor(name, inside)), text })
  }
  return files
}

const nameFor = (name: string, inside: boolean) => (inside ? name.replace(/\.[^.]+$/, '-inside$&') : name)

/** A design with open stops may hold parts without a size, which no exporter draws. */
async function drawn<T>(file: string, make: () => Promise<T>): Promise<T> {
  try {
    return await make()
  } catch (error) {
    if (error instanceof Trouble) throw error
    const why = error instanceof Error ? error.message : String(error)
    throw new Trouble(
      `${file}: it cannot be drawn: ${why} Nothing was written. "lidwright check" says what to mend.`,
    )
  }
}

function partsFor(design: Design, inside: boolean): readonly Part[] {
  const parts = partsOf(solve(design))
  const faces: readonly string[] = FACES
  return inside ? parts.filter((part) => faces.includes(part.id)).map(mirrorPart) : parts
}

function unknownPart(
  file: string,
  unknown: readonly string[],
  parts: readonly Part[],
  inside: boolean,
): string {
  const ids = parts.map((part) => part.id)
  const near = unknown.flatMap((name) => nearest(name, ids, 1))
  const which = inside ? 'The parts with an inside are' : 'The parts are'
  return [
    `${file}: there is no part called "${unknown.join('", "')}".`,
    ...(near.length > 0 ? [`Is ${near.join(', ')} meant?`] : []),
    `${which} ${ids.join(', ')}. Nothing was written.`,
  ].join(' ')
}

function said(texts: readonly Text[], sources: readonly Source[], out: string, options: Options): string {
  const hands = sources.filter(({ design }) => design.hand === 'not stated').map(({ file }) => file)
  const lines = [
    `Wrote ${counted(texts.length, 'file')} to ${options.out}:`,
    ...texts.map(({ path }) => `  ${relative(out, path)}`),
  ]
  if (options.inside)
    lines.push('These show the inside of the faces: they are mirrored, and each sheet says so.')
  if (options.inches && !formatsOf(options).includes('dxf'))
    lines.push('An SVG is in millimetres; --inches is for DXF files.')
  if (hands.length > 0)
    lines.push(`The hand is not stated in ${hands.join(', ')}: the sheets show a right-handed build.`)
  return lines.join('\n')
}
