/** `lidwright templates` for machines: paths instead of outlines, sheets of stock, the test piece, purposes. */
import { type Command, InvalidArgumentError, Option } from 'commander'
import { type Design, type Part, readLength } from '../../geometry/index.ts'
import { followed, pathWords } from '../cutting/cut-part.ts'
import { sheetTemplates } from '../cutting/sheets.ts'
import { testDesign, testPiece } from '../cutting/test-piece.ts'
import { SVG_PURPOSES, type SvgPurpose } from '../svg/purposes.ts'
import { type TemplateFile, type TemplatesOptions, templates } from '../templates.ts'
import { reasonOf, Trouble } from './io.ts'

export interface CuttingOptions {
  readonly asDrawn?: boolean
  readonly sheets?: boolean
  readonly for?: SvgPurpose
  readonly letters?: 'text' | 'lines'
  readonly r12?: boolean
  readonly testPiece?: string
}

/** The options, in the order in which the help shows them. */
export function addCuttingOptions(command: Command): Command {
  return command
    .option('--as-drawn', 'outlines as they come out, although the design is cut by a laser or router')
    .option(
      '--sheets',
      'the parts laid out on the sheets of stock that the design states, instead of one by one',
    )
    .addOption(
      new Option('--for <purpose>', 'what SVG files are for; sets layers, colours and line widths').choices(
        SVG_PURPOSES,
      ),
    )
    .addOption(
      new Option('--letters <kind>', 'words in SVG files: text, or lines drawn by single strokes').choices([
        'text',
        'lines',
      ]),
    )
    .option('--r12', 'DXF files of release 12, for old machines')
    .option(
      '--test-piece <thickness>',
      'instead of parts, a piece to find the real kerf by, of stock this thick',
      thick,
    )
}

function thick(text: string): string {
  if (readLength(text, 'mm').ok) return text
  throw new InvalidArgumentError('A length is wanted, such as 3 or 1/8in.')
}

/** How the files are to be written, as `templates` takes it. */
export function writingOptions(
  options: CuttingOptions,
): Pick<TemplatesOptions, 'dxfRelease' | 'svgPurpose' | 'svgWords'> {
  return {
    dxfRelease: options.r12 ? '12' : '2000',
    svgPurpose: options.for,
    svgWords: options.letters === 'lines' ? 'single lines' : options.letters,
  }
}

export interface Made {
  readonly files: readonly TemplateFile[]
  /** Sentences for the end: what is to be cut by hand, how full the sheets are. */
  readonly said: readonly string[]
}

/**
 * The files for the parts of a design, as its tool follows them unless they are wanted as drawn.
 * Throws a `Trouble` for an outline that a tool cannot follow and for a part larger than the stock.
 */
export async function madeFor(
  file: string,
  design: Design,
  parts: readonly Part[],
  options: CuttingOptions,
  writing: TemplatesOptions,
): Promise<Made> {
  if (options.testPiece !== undefined) return testFiles(file, design, options.testPiece, options, writing)
  const { only } = writing
  const wanted = only === undefined ? parts : parts.filter((part) => only.includes(part.id))
  const { cut, said } = cutOf(file, design, wanted, options)
  const words = pathWords(cut)
  const lines = [
    ...(words === undefined ? [] : [`Lines are the middle of the tool: ${words.short}.`]),
    ...said,
  ]
  if (!options.sheets) return { files: templates(cut, writing), said: lines }
  const made = await sheetTemplates(cut, design, writing)
  if (!made.ok) throw new Trouble(`${file}: ${made.sentences.join(' ')} Nothing was written.`)
  return { files: made.files, said: [...lines, ...made.said] }
}

/** Parts as their tools follow them, and what is left to be cut by hand. */
function cutOf(
  file: string,
  design: Design,
  parts: readonly Part[],
  { asDrawn = false }: CuttingOptions,
): { readonly cut: readonly Part[]; readonly said: readonly string[] } {
  if (asDrawn) return { cut: parts, said: [] }
  const { parts: cut, byHand, wrong } = followed(parts, design)
  if (wrong.length > 0)
    throw new Trouble(
      `${file}: ${wrong.join(' ')} Nothing was written; --as-drawn writes the outlines themselves.`,
    )
  return { cut, said: byHand }
}

function testFiles(
  file: string,
  design: Design,
  thickness: string,
  options: CuttingOptions,
  writing: TemplatesOptions,
): Made {
  const { process, cutter } = design.cutting
  if (process === 'by hand')
    throw new Trouble(
      `${file}: a test piece is for a laser or a router, and this design is cut by hand. Add --set cutting.process=laser.`,
    )
  const read = readLength(thickness, design.units.display)
  const piece = (() => {
    try {
      return testPiece(read.ok ? read.mm : Number.NaN, process, cutter)
    } catch (error) {
      throw new Trouble(`${file}: ${reasonOf(error)}`)
    }
  })()
  const { cut, said } = cutOf(file, testDesign(design), [piece], options)
  const { only, ...all } = writing
  return { files: templates(cut, all), said }
}
